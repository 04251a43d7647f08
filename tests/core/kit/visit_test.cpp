// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kit/visit.h"

#include "core/kit/samples.h"

#include <set>

namespace evenfall {
namespace {

using test::bytes_of;
using test::Sample;
using test::ScratchFolder;

const std::filesystem::path demo = std::filesystem::path(EVENFALL_SOURCE_DIR) / "assets" / "visits" / "demo.json";

Json demo_json() { return Json::parse(bytes_of(demo)); }

void write(const std::filesystem::path& file, const Json& json) { std::ofstream(file) << json.dump(2); }

TEST(Visit, LoadsWithItsKit_ForTheDemo)
{
    const VisitWithKit found = test::demo_visit();
    EXPECT_EQ(found.visit.code, "SM-0417");
    EXPECT_EQ(found.kit.id, "marram");
    EXPECT_EQ(found.visit.hand, WritingHand::right);
    EXPECT_EQ(found.visit.bed_time, std::chrono::minutes(22 * 60 + 5));
    ASSERT_NE(found.visit.zone, nullptr);
    EXPECT_EQ(found.visit.zone->name(), "America/New_York");
    EXPECT_EQ(found.visit.clinic.name, "Saltmarsh Sleep Clinic");
    EXPECT_EQ(found.visit.clinic.phone, "555-0142");
    EXPECT_EQ(found.visit.clinic.emergency, "911");
    ASSERT_EQ(found.visit.clinic.hours.size(), 1u);
    EXPECT_EQ(found.visit.clinic.hours[0].days.size(), 5u);
    EXPECT_EQ(found.visit.clinic.hours[0].to, std::chrono::hours(17));
    EXPECT_EQ(found.visit.return_by, "2026-11-03");
    EXPECT_TRUE(found.visit.options.mirror);
    EXPECT_FALSE(found.visit.options.signal_check);
}

TEST(Visit, NeedsFourHoursOfFlowAndOximetry_WhereTheFileSaysNothing)
{
    // At least 4 h: Kapur et al. 2017, J Clin Sleep Med 13(3):479-504; "oximetry and flow" from memory.
    Json json = demo_json();
    json.erase("need");
    const Result<Visit> visit = read_visit(json.dump());
    ASSERT_TRUE(visit.ok()) << test::all_told(visit.problems());
    EXPECT_EQ(visit->need, std::chrono::minutes(240));
    EXPECT_EQ(visit->need_signals, (std::vector<std::string>{"flow", "oximetry"}));
}

TEST(Visit, HasOptionalPartsOff_WhereTheFileSaysNothing)
{
    Json json = demo_json();
    json.erase("options");
    const Result<Visit> visit = read_visit(json.dump());
    ASSERT_TRUE(visit.ok()) << test::all_told(visit.problems());
    EXPECT_FALSE(visit->options.signal_check);
    EXPECT_FALSE(visit->options.narration);
}

class VisitSample : public testing::TestWithParam<Sample> {};

TEST_P(VisitSample, IsRefusedWithTheFaultOfItsName)
{
    test::expect_fault(GetParam(), read_visit(bytes_of(GetParam().file)).problems());
}

INSTANTIATE_TEST_SUITE_P(Invalid, VisitSample, testing::ValuesIn(test::invalid_samples("visit")), test::sample_name);

TEST(Visit, HasNoPlaceForANameOrABirthDate)
{
    for (const char* key : {"name", "patient", "birth_date", "address"}) {
        Json json = demo_json();
        json[key] = "x";
        const Problems problems = read_visit(json.dump()).problems();
        ASSERT_EQ(problems.size(), 1u) << key;
        EXPECT_EQ(problems[0].code, "unknown_key") << key;
    }
}

TEST(Visit, FindsItsKit_BesideItInKitsOrInAGivenFolder)
{
    ScratchFolder folder;
    for (const char* sub : {"visits", "kits", "more"})
        std::filesystem::create_directory(folder / sub);
    const std::filesystem::path visit = folder / "visits/one.json";
    write(visit, demo_json());
    EXPECT_EQ(load_visit(visit, {folder / "more"}).problems()[0].code, "missing_kit");
    for (const char* where : {"more", "kits", "visits"}) {
        const std::filesystem::path kit = folder / where / "marram.json";
        std::filesystem::copy_file(test::kit_path("marram"), kit);
        EXPECT_TRUE(load_visit(visit, {folder / "more"}).ok()) << where;
        std::filesystem::remove(kit);
    }
}

TEST(Visit, IsNotTakenForItsOwnKit_WhenItIsNamedLikeIt)
{
    ScratchFolder folder;
    write(folder / "marram.json", demo_json());
    const Result<VisitWithKit> found = load_visit(folder / "marram.json", {test::kit_path("marram").parent_path()});
    ASSERT_TRUE(found.ok()) << found.problems()[0].text;
    EXPECT_EQ(found->kit.id, "marram");
}

TEST(Visit, IsRefused_WhenThereIsNoSuchKit)
{
    ScratchFolder folder;
    Json json = demo_json();
    json["kit"] = "gannet";
    write(folder / "one.json", json);
    const Problems problems = load_visit(folder / "one.json", {test::kit_path("marram").parent_path()}).problems();
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].code, "missing_kit");
    EXPECT_EQ(problems[0].at, "/kit");
    EXPECT_EQ(exit_status(problems), 1);
}

TEST(Visit, IsRefused_WhenTheKitLacksASignalThatIsNeeded)
{
    ScratchFolder folder;
    Json json = demo_json();
    json["need"]["signals"] = {"flow", "brain_waves"};
    write(folder / "one.json", json);
    const Problems problems = load_visit(folder / "one.json", {test::kit_path("marram").parent_path()}).problems();
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].code, "missing_signal");
    EXPECT_EQ(problems[0].at, "/need/signals");
    EXPECT_NE(problems[0].text.find("brain_waves"), std::string::npos);
}

TEST(Visit, NamesThePlaceInTheKitFile_WhenThatIsWrong)
{
    ScratchFolder folder;
    write(folder / "one.json", demo_json());
    Json kit = Json::parse(bytes_of(test::kit_path("marram")));
    kit["parts"][0]["tape"] = 1;
    write(folder / "marram.json", kit);
    const Problems problems = load_visit(folder / "one.json", {}).problems();
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].at, "/kit");
    EXPECT_EQ(exit_status(problems), 2);
    for (const char* word : {"marram.json", "/parts/0/tape"})
        EXPECT_NE(problems[0].text.find(word), std::string::npos) << problems[0].text;
}

TEST(Visit, NamesTheKitFile_WhenThatIsNoObject)
{
    ScratchFolder folder;
    write(folder / "one.json", demo_json());
    std::ofstream(folder / "marram.json") << "{";
    const Problems problems = load_visit(folder / "one.json", {}).problems();
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].at, "/kit");
    EXPECT_EQ(problems[0].code, "not_json");
    EXPECT_NE(problems[0].text.find("marram.json at /: "), std::string::npos) << problems[0].text;
}

TEST(Visit, NamesItsOwnFault_BeforeAnyKitIsLookedFor)
{
    ScratchFolder folder;
    Json json = demo_json();
    json["nights"] = 0;
    json["kit"] = "gannet";
    write(folder / "one.json", json);
    const Problems problems = load_visit(folder / "one.json", {}).problems();
    ASSERT_EQ(problems.size(), 1u) << test::all_told(problems);
    EXPECT_EQ(problems[0].at, "/nights");
}

TEST(Visit, FindsItsKit_WhenItIsNamedWithoutAFolder)
{
    ScratchFolder folder;
    for (const char* sub : {"visits", "kits"})
        std::filesystem::create_directory(folder / sub);
    write(folder / "visits/one.json", demo_json());
    const test::InFolder here(folder / "visits");
    EXPECT_EQ(load_visit("one.json", {}).problems()[0].code, "missing_kit");
    for (const char* where : {"visits", "kits"}) {
        const std::filesystem::path kit = folder / where / "marram.json";
        std::filesystem::copy_file(test::kit_path("marram"), kit);
        EXPECT_TRUE(load_visit("one.json", {}).ok()) << where;
        std::filesystem::remove(kit);
    }
}

TEST(Visit, SaysThatItCannotBeRead_WhenTheFileIsNotThere)
{
    const Problems problems = load_visit(demo.parent_path() / "nowhere.json", {}).problems();
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].fault, Fault::io);
}

TEST(Visit, IsWrittenAsItIsRead)
{
    Visit visit = test::demo_visit().visit;
    visit.hand = WritingHand::left;
    visit.options.mirror = true;
    visit.ask_first = {"latex", "oxygen"};
    visit.need = std::chrono::minutes(300);
    const Result<Visit> back = read_visit(visit_to_json(visit).dump());
    ASSERT_TRUE(back) << back.problems()[0].text;
    EXPECT_EQ(visit_to_json(*back), visit_to_json(visit));
    EXPECT_EQ(back->hand, WritingHand::left);
    EXPECT_EQ(back->ask_first, visit.ask_first);
}

TEST(HoursLine, IsReadAsItIsWritten)
{
    for (const char* line : {"mon-fri 08:00-17:00", "mon-fri 08:00-17:00, sat 09:00-12:00", "sun 00:00-23:59", "tue 08:00-12:00, tue 13:00-17:00"}) {
        const Result<std::vector<OpenHours>> hours = parse_hours_line(line);
        ASSERT_TRUE(hours) << line;
        EXPECT_EQ(hours_line(*hours), line);
    }
    const Result<std::vector<OpenHours>> week = parse_hours_line(" mon-sun  07:30-20:00 ");
    ASSERT_TRUE(week);
    EXPECT_EQ(week->at(0).days.size(), 7u);
    EXPECT_EQ(week->at(0).from, std::chrono::minutes(7 * 60 + 30));
    EXPECT_TRUE(parse_hours_line("")->empty());
    // Days that do not follow each other are written one by one.
    EXPECT_EQ(hours_line({{{"mon", "wed", "thu"}, std::chrono::hours(8), std::chrono::hours(9)}}), "mon 08:00-09:00, wed-thu 08:00-09:00");
}

TEST(HoursLine, NamesWhatItCannotRead)
{
    for (const char* line : {"monday 08:00-17:00", "fri-mon 08:00-17:00", "mon 17:00-08:00", "mon 8-17", "mon", "mon-fri", "mon-friday 08:00-17:00", "mon 08:00", "mon 08:00-17", "08:00-17:00", "mon-fri 08:00-17:00; sat 09:00-12:00", "mon 08:00-08:00"}) {
        const Result<std::vector<OpenHours>> hours = parse_hours_line(line);
        ASSERT_FALSE(hours) << line;
        EXPECT_EQ(hours.problems()[0].code, "bad_hours");
        EXPECT_NE(hours.problems()[0].text.find("right would be"), std::string::npos);
    }
}

TEST(PlainPhone, IsOneThatCanBeDialled)
{
    for (const char* phone : {"555-0142", "+49 (0)30 5550142", "911", "11"})
        EXPECT_TRUE(plain_phone(phone)) << phone;
    for (const char* phone : {"", "1", "call us", "555-0142x", "5550142555014255501425550142555014"})
        EXPECT_FALSE(plain_phone(phone)) << phone;
}

} // namespace
} // namespace evenfall
