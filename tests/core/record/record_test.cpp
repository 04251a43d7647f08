// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "core/record/diaries.h"
#include "crash/share.h"
#include "estimate/estimate_json.h"
#include "record/diary_edf.h"
#include "record/events.h"
#include "record/folder.h"
#include "record/verify.h"

#include <fstream>
#include <functional>
#include <sys/stat.h>

namespace evenfall {
namespace {

namespace fs = std::filesystem;
using test::diary_of;
using test::full_diary;
using test::min;
using test::RandomNights;
using test::slurp;
using test::TemporaryDirectory;

std::string told(const Problems& problems)
{
    std::string out;
    for (const Problem& problem : problems)
        out += problem.code + "@" + problem.at + " ";
    return out;
}

std::string told(const Verification& found)
{
    std::string out;
    for (const RecordProblem& each : found.problems)
        out += each.file + ":" + each.problem.code + " ";
    return out;
}

std::string json_of(const Diary& diary)
{
    const Result<std::string> json = diary_to_json(diary);
    EXPECT_TRUE(json.ok()) << told(json.problems());
    return json ? *json : "";
}

TEST(Diary, ReadsBackEverythingAndWritesTheSameBytes)
{
    const Diary diary = full_diary();
    const std::string json = json_of(diary);
    const Result<Diary> again = read_diary(json);
    ASSERT_TRUE(again.ok()) << told(again.problems());
    EXPECT_EQ(json_of(*again), json);
    EXPECT_EQ(again->events, diary.events);
    EXPECT_EQ(again->answers, diary.answers);
    EXPECT_EQ(again->notes, diary.notes);
    EXPECT_EQ(again->signal_checks, diary.signal_checks);
    EXPECT_EQ(again->journal, diary.journal);
    EXPECT_EQ(again->origins, diary.origins);
    EXPECT_EQ(diary_edf(*again).value(), diary_edf(diary).value());
}

TEST(Diary, RandomNightsReadBackTheSame)
{
    RandomNights random(81);
    for (int round = 0; round < 300; ++round) {
        Night night = random.night(true);
        night.of = NightOf{"SM-1", 1};
        const std::string json = json_of(diary_of(night));
        const Result<Diary> again = read_diary(json);
        ASSERT_TRUE(again.ok()) << told(again.problems()) << json;
        ASSERT_EQ(json_of(*again), json);
    }
}

TEST(Diary, MarksEveryValueOfTheNight)
{
    Diary diary = full_diary();
    const Json json = Json::parse(json_of(diary));
    EXPECT_EQ(json["night_origins"]["/lights_out"], "reported");
    EXPECT_EQ(json["night_origins"]["/off/0/from"], "derived");
    EXPECT_EQ(json["night_origins"]["/off/1/to"], "reported"); // null: never put back
    EXPECT_EQ(json["night_origins"].size(), value_pointers(diary.night).size());
    for (const std::string& at : value_pointers(diary.night))
        EXPECT_TRUE(json["night"].contains(Json::json_pointer(at))) << at;
    EXPECT_EQ(json["estimate"]["origin"], "derived");
}

TEST(Diary, DerivedValueThatDoesNotFollowIsRefusedWithItsPlace)
{
    Json json = Json::parse(json_of(full_diary()));
    json["estimate"]["needed"]["best_guess"] = 480;
    json["evening"]["value"] = "2026-11-01";
    EXPECT_EQ(told(read_diary(json.dump()).problems()),
              "not_derived@/evening/value not_derived@/estimate/needed/best_guess ");
    EXPECT_EQ(exit_status(read_diary(json.dump()).problems()), 1);
}

TEST(Diary, UnknownAndMissingKeysAreNamed)
{
    Json json = Json::parse(json_of(full_diary()));
    json["events"][0]["mood"] = "fine";
    json["night_origins"].erase("/lights_out");
    json["night_origins"]["/dreams"] = "reported";
    json["events"][1]["kind"] = "sleep_stage";
    EXPECT_EQ(told(read_diary(json.dump()).problems()),
              "missing_key@/night_origins/~1lights_out unknown_key@/night_origins/~1dreams "
              "unknown_key@/events/0/mood "
              "unknown_kind@/events/1/kind ");
    EXPECT_EQ(exit_status(read_diary(json.dump()).problems()), 2);
}

TEST(Diary, OpenContradictionIsCarriedInsteadOfAnEstimate)
{
    Night night = test::example_night();
    std::swap(night.lights_out, night.lights_on);
    const std::string text = json_of(diary_of(night));
    const Json json = Json::parse(text);
    EXPECT_FALSE(json.contains("estimate"));
    EXPECT_EQ(json["problems"][0]["code"], "lights_on_before_lights_out");
    const Result<Diary> again = read_diary(text);
    ASSERT_TRUE(again.ok()) << told(again.problems());
    EXPECT_TRUE(diary_edf(*again).ok());
}

TEST(Diary, NeedsToKnowWhoseNightAndOneTime)
{
    Night night = test::example_night();
    night.of = std::nullopt;
    EXPECT_EQ(told(diary_from_night(night).problems()), "no_visit@/visit ");
    Night empty;
    empty.of = NightOf{"SM-1", 1};
    empty.sensors = {"finger"};
    EXPECT_EQ(told(diary_from_night(empty).problems()), "no_dated_entry@ ");
}

TEST(Diary, StartsAtRecordingElseLightsOutElseFirstEntry)
{
    Night night = test::example_night();
    night.recording_from =
        TimeRange{night.recording_from->earliest,
                  night.recording_from->earliest + std::chrono::milliseconds(3001)};
    EXPECT_EQ(diary_start(diary_of(night))->at,
              night.recording_from->earliest + std::chrono::seconds(1)); // middle, whole second
    night.recording_from = std::nullopt;
    EXPECT_EQ(diary_start(diary_of(night))->at, night.lights_out->middle());
    night.lights_out = std::nullopt;
    EXPECT_EQ(diary_start(diary_of(night))->at, night.into_bed->earliest);
    EXPECT_EQ(diary_start(diary_of(night))->basis, "first_entry");
}

TEST(Diary, EveningRunsFromNoonToNoon)
{
    const auto evening = [](const std::string& when) {
        return *diary_evening(diary_of(test::night_of(
            "{'format':'evenfall.night/1','visit':{'code':'SM-1','night':1},'zone':'America/"
            "New_York','sensors':['f'],"
            "'need':{'minutes':1,'groups':[['f']]},'lights_out':'" +
            when + "'}")));
    };
    EXPECT_EQ(evening("2026-11-01T00:10"), "2026-10-31");
    EXPECT_EQ(evening("2026-11-01T11:59"), "2026-10-31");
    EXPECT_EQ(evening("2026-11-01T12:00"), "2026-11-01");
    EXPECT_EQ(evening("2027-01-01T02:00"), "2026-12-31");
}

TEST(Diary, TextWithControlCharactersOrNotUtf8IsRefused)
{
    Diary diary = full_diary();
    diary.notes[0].text = "a\x14"
                          "b";
    diary.events[1].comment = "\xff";
    EXPECT_EQ(told(diary_to_json(diary).problems()),
              "bad_text@/events/1/comment bad_text@/notes/0/text ");
}

/// What is wrong with the full diary after something in its file was changed.
std::string faults_after(const std::function<void(Json&)>& change, Derived derived = Derived::all_checked)
{
    static const Json whole = Json::parse(json_of(full_diary()));
    Json json = whole;
    change(json);
    return told(diary_from_json(json, derived).problems());
}

TEST(Diary, FormIsNamedWithItsPlace_WhereverItIsWrong)
{
    const struct {
        const char* told;
        std::function<void(Json&)> change;
    } faults[]{
        {"", [](Json&) {}},
        {"bad_text@/kit/label ", [](Json& j) { j["kit"]["label"] = "Bag\x01"; }},
        {"bad_text@/notes/0/text ", [](Json& j) { j["notes"][0]["text"] = "a\x7f"; }},
        {"wrong_type@/journal/0/zone ", [](Json& j) { j["journal"][0]["zone"] = 5; }},
        {"missing_key@/journal/0/zone ", [](Json& j) { j["journal"][0].erase("zone"); }},
        {"missing_key@/events/0/kind ", [](Json& j) { j["events"][0].erase("kind"); }},
        {"missing_key@/answers/0/answer ", [](Json& j) { j["answers"][0].erase("answer"); }},
        {"wrong_type@/answers/0/answer ", [](Json& j) { j["answers"][0]["answer"] = nullptr; }},
        {"bad_time@/signal_checks/0/at ",
         [](Json& j) { j["signal_checks"][0]["at"] = Json{{"earliest", "2026-10-31T21:00"}, {"latest", "2026-10-31T21:05"}}; }},
        {"unknown_word@/events/0/origin ", [](Json& j) { j["events"][0]["origin"] = "guessed"; }},
        {"both_given@/problems ", [](Json& j) { j["problems"] = Json::array(); }},
        {"missing_key@/estimate ", [](Json& j) { j.erase("estimate"); }},
    };
    for (const auto& [right, change] : faults)
        EXPECT_EQ(faults_after(change), right);
    EXPECT_EQ(told(read_diary("[1]").problems()), "wrong_type@ ");
    EXPECT_EQ(exit_status(read_diary("[1]").problems()), 2);
}

TEST(Diary, ChangesAfterwardsMayAddAValueOrTakeOneAway)
{
    Diary diary = full_diary();
    const Instant later = diary.night.lights_out->middle() + std::chrono::hours(40);
    diary.amendments.push_back({later, "KL", "misheard", {{"/night/slept_min", nullptr, 450}, {"/notes", "cold", nullptr}, {"/answers/compare", "usual", "worse"}}});
    const std::string text = json_of(diary);
    Json json = Json::parse(text);
    Json& changes = json["amendments"][0]["changes"];
    EXPECT_FALSE(changes[0].contains("before"));
    EXPECT_FALSE(changes[1].contains("after"));
    const Result<Diary> again = read_diary(text);
    ASSERT_TRUE(again.ok()) << told(again.problems());
    EXPECT_EQ(again->amendments, diary.amendments);
    changes = Json::array();
    EXPECT_EQ(told(read_diary(json.dump()).problems()), "empty@/amendments/0/changes ");
    json["amendments"][0].erase("changes");
    EXPECT_EQ(told(read_diary(json.dump()).problems()), "missing_key@/amendments/0/changes ");
}

TEST(Diary, KeepsThatAnEventWasDerived)
{
    Diary diary = full_diary();
    diary.events[0].origin = Origin::derived;
    const Result<Diary> again = read_diary(json_of(diary));
    ASSERT_TRUE(again.ok()) << told(again.problems());
    EXPECT_EQ(again->events, diary.events);
}

TEST(Diary, IsNotWritten_WhenItSaysWhatCannotBe)
{
    const auto faults = [](const std::function<void(Diary&)>& change) {
        Diary diary = full_diary();
        change(diary);
        return told(diary_to_json(diary).problems());
    };
    EXPECT_EQ(faults([](Diary&) {}), "");
    EXPECT_EQ(faults([](Diary& d) { d.of.code = ""; }), "no_visit@/visit ");
    EXPECT_EQ(faults([](Diary& d) { d.of.code = "../x"; }), "no_visit@/visit ");
    EXPECT_EQ(faults([](Diary& d) { d.of.night = 0; }), "no_visit@/visit ");
    EXPECT_EQ(faults([](Diary& d) { d.of.night = 2; }), "visit_differs@/night/visit ");
    EXPECT_EQ(faults([](Diary& d) { d.night.of = std::nullopt; }), "visit_differs@/night/visit ");
    EXPECT_EQ(faults([](Diary& d) { d.origins["/dreams"] = Origin::derived; }), "no_such_value@/night_origins ");
    EXPECT_EQ(faults([](Diary& d) { d.events[1].kind = "sleep_stage"; }), "unknown_kind@/events/1/kind ");
}

/// A night of which nothing is known but whose it is.
Diary undated()
{
    Diary diary;
    diary.of = {"SM-1", 1};
    diary.night.of = diary.of;
    diary.night.sensors = {"finger"};
    diary.night.need.groups = {{"finger"}};
    return diary;
}

TEST(Diary, StartsAtTheEarliestOfWhatElseHasATime)
{
    const Instant when = full_diary().night.lights_out->middle();
    const auto starts = [](const std::function<void(Diary&)>& add) {
        Diary diary = undated();
        add(diary);
        const Result<DiaryStart> start = diary_start(diary);
        EXPECT_TRUE(start.ok() && start->basis == "first_entry");
        return start ? start->at : Instant{};
    };
    EXPECT_EQ(starts([&](Diary& d) { d.events = {{{when, when + min(9)}, std::nullopt, "still_on", "", "", Origin::reported}}; }), when);
    EXPECT_EQ(starts([&](Diary& d) { d.notes = {{"no time", std::nullopt}, {"cold", TimeRange::exactly(when)}}; }), when);
    EXPECT_EQ(starts([&](Diary& d) { d.signal_checks = {{when + min(1), "light", "", ""}, {when, "light", "", ""}}; }), when);
    EXPECT_EQ(starts([&](Diary& d) {
                  Entry entry;
                  entry.stamp.utc = when;
                  d.journal = {entry};
              }),
              when);
    EXPECT_EQ(starts([&](Diary& d) {
                  d.signal_checks = {{when, "light", "", ""}};
                  d.notes = {{"cold", TimeRange::exactly(when - min(3))}};
                  d.night.off = {{"finger", std::nullopt, TimeRange::exactly(when - min(2))}};
              }),
              when - min(3));
}

TEST(Diary, WithoutAnyTimeIsNeitherNamedNorWrittenNorRead)
{
    const Diary diary = undated();
    EXPECT_EQ(told(diary_start(diary).problems()), "no_dated_entry@/night ");
    EXPECT_EQ(told(diary_evening(diary).problems()), "no_dated_entry@/night ");
    EXPECT_EQ(told(record_name(diary).problems()), "no_dated_entry@/night ");
    EXPECT_EQ(told(diary_to_json(diary).problems()), "no_dated_entry@/night ");
    // A file of it, as somebody else could make it.
    Json json{{"format", "evenfall.diary/1"}, {"visit", {{"code", "SM-1"}, {"night", 1}, {"origin", "reported"}}}};
    json["evening"] = Json{{"value", "2026-10-31"}, {"origin", "derived"}};
    json["start"] = Json{{"value", "2026-10-31T22:00:00+00:00"}, {"basis", "lights_out"}, {"origin", "derived"}};
    json["night"] = night_to_json(diary.night);
    for (const std::string& at : value_pointers(diary.night))
        json["night_origins"][at] = "reported";
    json["estimate"] = Json{{"origin", "derived"}};
    json["estimate"].update(estimate_to_json(estimate(diary.night)));
    EXPECT_EQ(told(read_diary(json.dump()).problems()), "no_dated_entry@/night ");
}

TEST(Diary, ChanceIsTakenAsItIsWritten_WhenItCanBeOne)
{
    const Json::json_pointer at("/estimate/needed/chance_enough");
    const auto with = [&at](const Json& chance) { return [&at, chance](Json& j) { j[at] = chance; }; };
    for (const Json& chance : {Json(0), Json(0.25), Json(1)})
        EXPECT_EQ(faults_after(with(chance), Derived::chance_as_written), "") << chance;
    EXPECT_EQ(faults_after(with(0.25)), "not_derived@/estimate/needed/chance_enough ") << "worked out again";
    for (const Json& chance : {Json(-0.25), Json(1.25), Json("0.5"), Json(nullptr)})
        EXPECT_EQ(faults_after(with(chance), Derived::chance_as_written), "not_derived@/estimate/needed/chance_enough ") << chance;
    for (const Json& needed : {Json(5), Json(nullptr), Json("x")})
        EXPECT_EQ(faults_after([&](Json& j) { j["estimate"]["needed"] = needed; }, Derived::chance_as_written), "not_derived@/estimate/needed ") << needed;
    for (const Json& estimate : {Json(5), Json("x")})
        EXPECT_EQ(faults_after([&](Json& j) { j["estimate"] = estimate; }, Derived::chance_as_written), "not_derived@/estimate ") << estimate;
}

TEST(Diary, ChanceIsNotTaken_WhereThereIsNothingItCouldBeOf)
{
    // Nobody knows when this recording began or ended.
    Diary unknown = undated();
    unknown.notes = {{"cold", TimeRange::exactly(full_diary().night.lights_out->middle())}};
    Json json = Json::parse(json_of(unknown));
    EXPECT_TRUE(json["estimate"]["needed"].empty());
    EXPECT_TRUE(diary_from_json(json, Derived::chance_as_written).ok());
    json["estimate"]["needed"]["chance_enough"] = 0.5;
    EXPECT_EQ(told(diary_from_json(json, Derived::chance_as_written).problems()), "not_derived@/estimate/needed/chance_enough ");
    // A night that contradicts itself has no estimate.
    Night night = test::example_night();
    std::swap(night.lights_out, night.lights_on);
    Json contradictory = Json::parse(json_of(diary_of(night)));
    contradictory.erase("problems");
    contradictory["estimate"] = Json{{"needed", {{"chance_enough", 0.5}}}};
    EXPECT_EQ(told(diary_from_json(contradictory, Derived::chance_as_written).problems()), "not_derived@/estimate not_derived@/problems ");
}

TEST(Record, IsWrittenWholeWithItsModes)
{
    TemporaryDirectory parent;
    const auto path = write_record(full_diary(), parent.path(), {{"summary.txt", "hello"}});
    ASSERT_TRUE(path.ok()) << told(path.problems());
    EXPECT_EQ(path->filename(), "SM-0417_night-1_2026-10-31");
    struct stat info {};
    ASSERT_EQ(::stat(path->c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 0777, 0700u);
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(*path)) {
        names.push_back(entry.path().filename());
        ASSERT_EQ(::stat(entry.path().c_str(), &info), 0);
        EXPECT_EQ(info.st_mode & 0777, 0600u);
    }
    std::sort(names.begin(), names.end());
    EXPECT_EQ(names, (std::vector<std::string>{"SHA256SUMS", "diary.edf", "diary.fhir.json",
                                               "diary.json", "summary.txt"}));
    EXPECT_EQ(told(verify_record(*path)), "");
    EXPECT_EQ(std::distance(fs::directory_iterator(parent.path()), fs::directory_iterator()),
              1); // nothing else is left
}

TEST(Record, ExistingFolderIsRefusedAndUntouched)
{
    TemporaryDirectory parent;
    fs::create_directory(parent.path() / "SM-0417_night-1_2026-10-31");
    const auto path = write_record(full_diary(), parent.path());
    ASSERT_FALSE(path.ok());
    EXPECT_EQ(path.problems()[0].code, "record_exists");
    EXPECT_EQ(exit_status(path.problems()), 1);
    EXPECT_TRUE(fs::is_empty(parent.path() / "SM-0417_night-1_2026-10-31"));
    EXPECT_EQ(std::distance(fs::directory_iterator(parent.path()), fs::directory_iterator()), 1);
}

TEST(Record, MissingParentIsAnIoProblemAndLeavesNothing)
{
    TemporaryDirectory parent;
    const auto path = write_record(full_diary(), parent.path() / "no" / "such");
    EXPECT_EQ(exit_status(path.problems()), 3);
    EXPECT_TRUE(fs::is_empty(parent.path()));
}

TEST(Record, LeftoverOfAKilledWriterIsCleared)
{
    TemporaryDirectory parent;
    // No process has this number: it is above the largest that Linux gives out.
    const fs::path leftover = parent.path() / ".SM-0417_night-1_2026-10-31.99999999.part";
    fs::create_directory(leftover);
    std::ofstream(leftover / "diary.json") << "half";
    ASSERT_TRUE(write_record(full_diary(), parent.path()).ok());
    EXPECT_FALSE(fs::exists(leftover));
}

TEST(Record, FileNamesOutsideTheFolderAreRefused)
{
    for (const char* name :
         {"../x", "", "SHA256SUMS", "diary.json", "diary.fhir.json", ".hidden", "a\nb"})
        EXPECT_EQ(exit_status(record_files(full_diary(), {{name, "x"}}).problems()), 1) << name;
}

class Verify : public testing::Test {
  protected:
    TemporaryDirectory parent;
    fs::path record;
    void SetUp() override { record = write_record(full_diary(), parent.path()).value(); }
    std::string found() { return told(verify_record(record)); }
    void put(const std::string& name, const std::string& bytes)
    {
        std::ofstream(record / name, std::ios::binary) << bytes;
    }
    /// Makes the sums right again, as somebody who changes a file on purpose would.
    void sum_again()
    {
        std::string command = "cd '" + record.string() +
                              "' && sha256sum diary.json diary.edf diary.fhir.json > SHA256SUMS";
        ASSERT_EQ(std::system(command.c_str()), 0);
    }
};

TEST_F(Verify, NamesMissingAndExtraFiles)
{
    fs::remove(record / "diary.edf");
    put("notes.txt", "x");
    fs::create_directory(record / "more");
    EXPECT_EQ(found(), "more:extra_file diary.edf:missing_file notes.txt:extra_file ");
}

TEST_F(Verify, NamesAChangedFile)
{
    put("diary.edf", slurp(record / "diary.edf").replace(600, 1, "#"));
    EXPECT_NE(found().find("diary.edf:wrong_sum"), std::string::npos);
}

TEST_F(Verify, NamesTheEventThatDiffersBetweenTheFiles)
{
    std::string edf = slurp(record / "diary.edf");
    const std::size_t at = edf.find("-480\x14Into bed");
    ASSERT_NE(at, std::string::npos);
    put("diary.edf", edf.replace(at, 4, "-420"));
    sum_again();
    const Verification result = verify_record(record);
    EXPECT_EQ(told(result), "diary.edf:not_from_diary ");
    EXPECT_NE(result.problems[0].problem.text.find("Into bed"), std::string::npos);
}

TEST_F(Verify, NamesTheValueThatDiffersInTheFhirFile)
{
    const std::string right = slurp(record / "diary.fhir.json");
    const auto spoilt = [&](const std::string& from, const std::string& to) {
        std::string fhir = right;
        const std::size_t at = fhir.find(from);
        EXPECT_NE(at, std::string::npos) << from;
        put("diary.fhir.json", fhir.replace(at, from.size(), to));
        sum_again();
        const Verification result = verify_record(record);
        std::string out;
        for (const RecordProblem& each : result.problems)
            out += each.file + ":" + each.problem.code + "@" + each.problem.at + " " +
                   each.problem.text + "\n";
        return out;
    };
    EXPECT_EQ(
        spoilt("\"value\":47.5", "\"value\":40.5"),
        "diary.fhir.json:not_from_diary@/entry/6/resource/valueQuantity/value 40.5; right, by "
        "diary.json, would be 47.5\n");
    EXPECT_EQ(spoilt("\"status\":\"final\"", "\"status\":\"amended\""),
              "diary.fhir.json:not_from_diary@/entry/4/resource/status \"amended\"; right, by "
              "diary.json, would be \"final\"\n");
    EXPECT_EQ(spoilt("\"status\":\"final\",", ""),
              "diary.fhir.json:not_from_diary@/entry/4/resource/status nothing; right, by "
              "diary.json, would be \"final\"\n");
    // The same values in another form.
    const std::string decimal = "\"value\":47.5";
    const std::string byte = std::to_string(right.find(decimal) + decimal.size());
    EXPECT_EQ(spoilt(decimal, decimal + "0")
                  .find("diary.fhir.json:not_from_diary@byte " + byte + " differs"),
              0u);
    // The own rules speak as well.
    EXPECT_NE(spoilt("\"valueInteger\":4", "\"valueInteger\":4.5").find("not_integer@/entry/7/"),
              std::string::npos);
    fs::remove(record / "diary.fhir.json");
    EXPECT_EQ(found(), "diary.fhir.json:missing_file ");
}

TEST_F(Verify, NamesAFolderThatWasRenamed)
{
    fs::rename(record, parent.path() / "SM-0418_night-1_2026-10-31");
    record = parent.path() / "SM-0418_night-1_2026-10-31";
    EXPECT_EQ(found(), ":wrong_name ");
}

TEST_F(Verify, RefusesABrokenListOfSums)
{
    put("SHA256SUMS", slurp(record / "SHA256SUMS") + "00  x");
    EXPECT_EQ(found(), "SHA256SUMS:bad_line ");
    put("SHA256SUMS", "");
    EXPECT_EQ(found(), "SHA256SUMS:not_listed SHA256SUMS:not_listed SHA256SUMS:not_listed "
                       "diary.edf:extra_file diary.fhir.json:extra_file diary.json:extra_file ");
}

TEST_F(Verify, FlippedByteOrCutAnywhereIsNoticed)
{
    for (const char* name : {"diary.json", "diary.edf", "SHA256SUMS"}) {
        const std::string right = slurp(record / name);
        for (std::size_t i = 0; i < right.size(); i += test::stride(7)) {
            std::string wrong = right;
            wrong[i] = static_cast<char>(wrong[i] ^ 1);
            put(name, wrong);
            ASSERT_NE(found(), "") << name << " byte " << i;
            put(name, right.substr(0, i));
            ASSERT_NE(found(), "") << name << " cut at " << i;
        }
        put(name, right);
    }
    EXPECT_EQ(found(), "");
}

TEST_F(Verify, FolderThatIsNotThereIsAnIoProblem)
{
    EXPECT_EQ(verify_record(parent.path() / "none").exit_status(), 3);
}

TEST(Events, EveryKindHasATextOfItsOwn)
{
    std::vector<std::string> texts;
    for (const char* kind : {"recording_starts",
                             "lights_off",
                             "lights_on",
                             "recording_ends",
                             "into_bed",
                             "out_of_bed",
                             "fell_asleep",
                             "asleep_again",
                             "final_waking",
                             "awake",
                             "awake_untimed",
                             "sensor_off",
                             "sensor_off_from_start",
                             "sensor_on_again",
                             "sensor_not_put_back",
                             "still_on",
                             "bathroom",
                             "refitted",
                             "note",
                             "signal_check"}) {
        ASSERT_TRUE(event_text(kind)) << kind;
        texts.emplace_back(*event_text(kind));
        EXPECT_EQ(texts.back().find("Sleep stage"), std::string::npos);
    }
    std::sort(texts.begin(), texts.end());
    EXPECT_EQ(std::adjacent_find(texts.begin(), texts.end()), texts.end());
    EXPECT_FALSE(event_text("sleep_stage"));
}

TEST(Events, OrderInWhichTheyWereToldDoesNotChangeTheFile)
{
    Diary diary = full_diary();
    const std::string before = diary_edf(diary).value();
    std::reverse(diary.events.begin(), diary.events.end());
    std::reverse(diary.notes.begin(), diary.notes.end());
    EXPECT_EQ(diary_edf(diary).value(), before);
}

} // namespace
} // namespace evenfall
