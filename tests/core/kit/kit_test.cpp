// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kit/kit.h"

#include "core/kit/samples.h"

#include <algorithm>
#include <set>

namespace evenfall {
namespace {

using test::bytes_of;
using test::demo_kit;
using test::kit_path;
using test::Sample;

TEST(Kit, Loads_ForEachDemoKit)
{
    for (const char* id : test::demo_kits) {
        const Kit kit = demo_kit(id);
        EXPECT_EQ(kit.id, id);
        ASSERT_NE(kit.recorder(), nullptr) << id;
        EXPECT_NE(kit.signal("flow"), nullptr) << id;
        EXPECT_NE(kit.signal("oximetry"), nullptr) << id;
        for (const char* language : {"en", "es", "ar"})
            EXPECT_TRUE(kit.name.contains(language)) << id << language;
    }
}

TEST(Kit, HoldsWhatTheFileSays)
{
    const Kit kit = demo_kit("marram");
    EXPECT_EQ(kit.parts.size(), 8u);
    EXPECT_EQ(kit.ports.size(), 5u);
    const Part* probe = kit.part("finger");
    ASSERT_NE(probe, nullptr);
    EXPECT_EQ(probe->kind, PartKind::finger_probe);
    EXPECT_EQ(probe->where, "index_finger") << "the only place of its kind needs no saying";
    EXPECT_EQ(probe->mark.count, 4);
    ASSERT_TRUE(probe->plug.has_value());
    EXPECT_EQ(probe->plug->port, "finger");
    EXPECT_EQ(probe->seconds, std::chrono::seconds(165));
    EXPECT_EQ(kit.recorder()->where, "hip");
    EXPECT_EQ(kit.start.by, StartBy::switch_on);
    EXPECT_EQ(kit.start.to_light, std::chrono::seconds(60));
    EXPECT_EQ(kit.lights[0].meaning, Light::Meaning::recording);
    EXPECT_EQ(kit.lights[0].blinks, 2);
    EXPECT_EQ(kit.lights[0].pause, std::chrono::milliseconds(2500));
    EXPECT_FALSE(kit.packing[8].comes_back);
    EXPECT_EQ(kit.sensors(), (std::vector<std::string>{"chest", "abdomen", "cannula", "breath", "finger"}));
    EXPECT_EQ(kit.part("nothing"), nullptr);
    EXPECT_EQ(kit.port("nothing"), nullptr);
    EXPECT_EQ(kit.signal("nothing"), nullptr);
}

TEST(Kit, DiffersFromTheOthers_InRecorderStartAndLight)
{
    std::set<std::string> recorders, tubes, starts, lights;
    for (const char* id : test::demo_kits) {
        const Kit kit = demo_kit(id);
        recorders.insert(kit.recorder()->where);
        for (const Part& part : kit.parts) {
            if (part.kind == PartKind::nasal_cannula) {
                tubes.insert(std::string(name_of(part.plug->joint)));
            }
        }
        starts.insert(std::string(name_of(kit.start.by)));
        const Light& good = *std::find_if(kit.lights.begin(), kit.lights.end(), [](const Light& one) {
            return one.meaning == Light::Meaning::recording;
        });
        lights.insert(good.colour + std::to_string(good.blinks));
    }
    EXPECT_EQ(recorders.size(), 3u);
    EXPECT_GE(tubes.size(), 2u) << "a tube pushed on and a tube twisted on"; // a third way has no drawing yet
    EXPECT_EQ(starts.size(), 3u);
    EXPECT_EQ(lights.size(), 3u);
}

TEST(Kit, HasNoMarkTwice_TheNoseTubeAside)
{
    for (const char* id : test::demo_kits) {
        const Kit kit = demo_kit(id);
        std::set<std::pair<Mark::Shape, int>> felt;
        for (const Port& port : kit.ports) {
            EXPECT_FALSE(port.mark.word.empty()) << id << " " << port.id;
            if (!kit.takes_tube(port)) {
                EXPECT_TRUE(felt.insert({port.mark.shape, port.mark.count}).second) << id << " " << port.id;
            }
        }
    }
}

TEST(Kit, TellsRidgesFromDots)
{
    const Kit kit = demo_kit("heron");
    const Mark& chest = kit.part("chest")->mark;
    const Mark& position = kit.part("position")->mark;
    EXPECT_EQ(chest.count, position.count);
    EXPECT_EQ(chest.shape, Mark::Shape::ridges);
    EXPECT_EQ(position.shape, Mark::Shape::dots);
    EXPECT_FALSE(chest.feels_like(position));
    EXPECT_TRUE(kit.part("finger")->mark.smooth());
}

TEST(Kit, TakesTheDefaultsOfTheKind_WhereTheFileSaysNothing)
{
    Json json = Json::parse(bytes_of(kit_path("marram")));
    json.erase("strip_length_mm");
    for (Json& part : json["parts"]) {
        part.erase("seconds");
        part.erase("tape_strips");
    }
    json["start"].erase("seconds_to_light");
    const Result<Kit> kit = read_kit(json.dump());
    ASSERT_TRUE(kit.ok()) << test::all_told(kit.problems());
    // Common practice, no source: 5 cm; two strips at the cheeks, two for the probe; a light after
    // about one minute. Seconds are our own estimates.
    EXPECT_EQ(kit->strip_length_mm, 50);
    EXPECT_EQ(kit->part("cannula")->tape_strips, 2);
    EXPECT_EQ(kit->part("finger")->tape_strips, 2);
    EXPECT_EQ(kit->part("chest_belt")->tape_strips, 0);
    EXPECT_EQ(kit->start.to_light, std::chrono::seconds(60));
    EXPECT_EQ(kit->part("finger")->seconds, facts_of(PartKind::finger_probe).seconds);
}

TEST(Kit, HasItsOwnTexts_WhereTheFileHasSome)
{
    Json json = Json::parse(bytes_of(kit_path("marram")));
    json["parts"][0]["texts"] = Json::parse(R"({"wrap":{"title":{"en":"Wrap it","es":"Envuelva"},"why":{"en":"It feels"}}})");
    const Result<Kit> kit = read_kit(json.dump());
    ASSERT_TRUE(kit.ok()) << test::all_told(kit.problems());
    const auto& texts = kit->parts[0].texts;
    ASSERT_EQ(texts.size(), 1u);
    ASSERT_TRUE(texts.contains("wrap"));
    EXPECT_EQ(texts.at("wrap").size(), 2u) << "what is not said is not there";
    EXPECT_EQ(texts.at("wrap").at("title"), (LocalText{{"en", "Wrap it"}, {"es", "Envuelva"}}));
    EXPECT_EQ(texts.at("wrap").at("why"), (LocalText{{"en", "It feels"}}));
}

TEST(Kit, MayCautionAboutAPartOrAPlaceInTheEvening)
{
    for (const char* at : {"finger", "tape", "neck", "bed", "hand", "night"}) {
        Json json = Json::parse(bytes_of(kit_path("marram")));
        json["cautions"] = Json::parse(R"([{"at":"x","text":{"en":"Mind this"}}])");
        json["cautions"][0]["at"] = at;
        const Result<Kit> kit = read_kit(json.dump());
        ASSERT_TRUE(kit.ok()) << at << test::all_told(kit.problems());
        ASSERT_EQ(kit->cautions.size(), 1u);
        EXPECT_EQ(kit->cautions[0].at, at);
    }
}

TEST(Kit, HasNoRecorder_BeforeOneIsRead)
{
    EXPECT_EQ(Kit{}.recorder(), nullptr);
}

TEST(Light, IsToldInTheWordsOfTheFile)
{
    Json json = Json::parse(bytes_of(kit_path("marram")));
    for (const char* meaning : {"not_recording", "battery", "fault"}) {
        for (const char* then : {"check_plugs", "start_again", "call_clinic"}) {
            json["lights"][1]["meaning"] = meaning;
            json["lights"][1]["then"] = then;
            const Result<Kit> kit = read_kit(json.dump());
            ASSERT_TRUE(kit.ok()) << test::all_told(kit.problems());
            EXPECT_EQ(name_of(kit->lights[1].meaning), meaning);
            EXPECT_EQ(name_of(kit->lights[1].then), then);
            EXPECT_EQ(name_of(kit->lights[0].meaning), "recording");
            EXPECT_EQ(name_of(kit->lights[0].then), "go_on");
        }
    }
}

TEST(Kit, AllowsThreeFlashesASecond_AndNotMore)
{
    // WCAG 2.3.1 (from memory): no more than three flashes in any one second.
    Json json = Json::parse(bytes_of(kit_path("marram")));
    json["lights"][0]["on_ms"] = 100;
    json["lights"][0]["off_ms"] = 234;
    EXPECT_TRUE(read_kit(json.dump()).ok());
    json["lights"][0]["off_ms"] = 233;
    EXPECT_FALSE(read_kit(json.dump()).ok());
}

TEST(Kit, NamesEveryFault_WhenThereAreSeveral)
{
    Json json = Json::parse(bytes_of(kit_path("marram")));
    json["colour"] = "blue";
    json["parts"][0]["kind"] = "band";
    json["lights"][1]["blinks"] = "two";
    const Problems problems = read_kit(json.dump()).problems();
    std::set<std::string> places;
    for (const Problem& problem : problems)
        places.insert(problem.at);
    EXPECT_EQ(places, (std::set<std::string>{"/colour", "/parts/0/kind", "/lights/1/blinks"}));
    EXPECT_EQ(exit_status(problems), 2);
}

class KitSample : public testing::TestWithParam<Sample> {};

TEST_P(KitSample, IsRefusedWithTheFaultOfItsName)
{
    test::expect_fault(GetParam(), read_kit(bytes_of(GetParam().file)).problems());
}

INSTANTIATE_TEST_SUITE_P(Invalid, KitSample, testing::ValuesIn(test::invalid_samples("kit")), test::sample_name);

TEST(KitSamples, CoverEveryCodeOfTheReader)
{
    std::set<std::string> covered;
    for (const Sample& sample : test::invalid_samples("kit"))
        covered.insert(sample.code);
    for (const char* code :
         {"not_json", "duplicate_key", "wrong_format", "wrong_type", "missing_key", "unknown_key", "unknown_kind",
          "unknown_place", "unknown_word", "out_of_range", "bad_id", "bad_text", "bad_time_of_day", "not_set_time",
          "which_item", "empty", "duplicate", "flashes_too_fast", "missing_part", "missing_port", "port_without_plug",
          "port_taken_twice", "spare_port", "mark_differs", "joint_differs", "same_mark", "two_shapes", "duplicate_id",
          "recorder_count", "wrong_carrier", "wrong_place", "recording_light", "light_advice", "not_packed"})
        EXPECT_TRUE(covered.contains(code)) << code;
}

TEST(Kit, SaysThatItCannotBeRead_WhenTheFileIsNotThere)
{
    const Problems problems = load_kit(kit_path("nowhere")).problems();
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].fault, Fault::io);
    EXPECT_NE(problems[0].text.find("nowhere.json"), std::string::npos);
}

TEST(Kinds, AreFoundByTheirNames)
{
    std::set<std::string_view> names;
    for (const KindFacts& facts : all_kinds()) {
        EXPECT_EQ(kind_named(facts.name), facts.kind);
        EXPECT_EQ(facts_of(facts.kind).name, facts.name);
        EXPECT_FALSE(facts.places.empty()) << facts.name;
        EXPECT_TRUE(names.insert(facts.name).second) << facts.name;
    }
    EXPECT_EQ(names.size(), 10u);
    EXPECT_EQ(kind_named("thermometer"), std::nullopt);
}

} // namespace
} // namespace evenfall
