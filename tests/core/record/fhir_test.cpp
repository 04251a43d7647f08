// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/fhir.h"

#include "base/hash.h"
#include "core/record/diaries.h"
#include "estimate/contradictions.h"
#include "record/fhir_check.h"
#include "record/fhir_names.h"

#include <functional>
#include <map>
#include <set>

namespace evenfall {
namespace {

using test::diary_of;
using test::full_diary;
using test::min;
using test::RandomNights;

std::string told(const Problems& problems)
{
    std::string out;
    for (const Problem& problem : problems)
        out += problem.code + "@" + problem.at + " ";
    return out;
}

std::string text_of(const Diary& diary)
{
    const Result<std::string> text = diary_fhir(diary);
    EXPECT_TRUE(text.ok()) << told(text.problems());
    return text ? *text : "{}";
}

Json bundle_of(const Diary& diary)
{
    return Json::parse(text_of(diary));
}
Json json_of(const Diary& diary)
{
    return Json::parse(diary_to_json(diary).value());
}

std::vector<Json> resources(const Json& bundle, const std::string& type)
{
    std::vector<Json> out;
    for (const Json& entry : bundle["entry"])
        if (entry["resource"]["resourceType"] == type)
            out.push_back(entry["resource"]);
    return out;
}

/// The first Observation with this code of ours; null where there is none.
Json observation(const Json& bundle, const std::string& code)
{
    for (const Json& each : resources(bundle, "Observation"))
        for (const Json& coding : each["code"]["coding"])
            if (coding["system"] == fhir::code_system_url && coding["code"] == code)
                return each;
    return Json();
}

Json component(const Json& observation, const std::string& code)
{
    for (const Json& each : observation["component"])
        if (each["code"]["coding"][0]["code"] == code)
            return each;
    return Json();
}

/// Does `visit` with every object below, and itself.
void each_object(const Json& json, const std::function<void(const Json&)>& visit)
{
    if (json.is_object())
        visit(json);
    if (json.is_structured())
        for (const Json& each : json)
            each_object(each, visit);
}

/// Every value that says where it comes from, by its pointer in diary.json.
std::map<std::string, Json> traced(const Json& bundle)
{
    std::map<std::string, Json> out;
    const auto value_of = [](const Json& holder) {
        for (const auto& [key, value] : holder.items())
            if (key.starts_with("value"))
                return key == "valueQuantity"          ? value["value"]
                       : key == "valueCodeableConcept" ? value["coding"][0]["code"]
                                                       : value;
        return Json();
    };
    for (const Json& entry : bundle["entry"]) {
        each_object(entry, [&](const Json& json) {
            if (!json.contains("id") || json.contains("severity"))
                return;
            const Json value = value_of(json.contains("answer") ? json["answer"][0] : json);
            EXPECT_FALSE(value.is_null()) << json;
            out[json["id"].get<std::string>()] = value;
        });
        const Json& resource = entry["resource"];
        if (resource["resourceType"] != "Observation")
            continue;
        const std::string name = resource["identifier"][0]["value"].get<std::string>();
        const Json value = value_of(resource);
        if (!value.is_null())
            out[name.substr(name.find('#') + 1)] = value;
    }
    return out;
}

/// Pointers of all values below, leaves only.
void leaves(const Json& json, const std::string& at, std::set<std::string>& out)
{
    if (!json.is_structured()) {
        out.insert(at);
        return;
    }
    for (const auto& [key, value] : json.items())
        leaves(value, json.is_array() ? at + "/" + key : pointer(at, std::string_view(key)), out);
}

/// What the file says is what diary.json says at the place that it names, in the same form; and
/// nothing of the night or its estimate is left out.
void expect_traced(const Diary& diary)
{
    const Json bundle = bundle_of(diary);
    const Json json = json_of(diary);
    const std::map<std::string, Json> found = traced(bundle);
    for (const auto& [at, value] : found) {
        const Json::json_pointer place(at);
        ASSERT_TRUE(json.contains(place)) << at;
        const Json& right = json[place];
        if (value.is_boolean() && !right.is_boolean()) { // an empty end, or awakenings or none
            EXPECT_EQ(value.get<bool>(), right.is_null() || !right.empty()) << at;
            continue;
        }
        const bool as_text = right.is_structured() && value.is_string();
        EXPECT_EQ(value.dump(), as_text ? Json(right.dump()).dump() : right.dump()) << at;
    }
    std::set<std::string> all;
    leaves(json["night"], "/night", all);
    for (const char* list : {"events", "answers", "notes", "signal_checks", "estimate"})
        if (json.contains(list))
            leaves(json[list], pointer("", std::string_view(list)), all);
    for (const std::string& at : all) {
        const bool kept = at.ends_with("/format") || at.ends_with("/origin") ||
                          at == "/night/zone" || at.starts_with("/night/visit/") ||
                          at.starts_with("/night/need/groups") ||
                          at.starts_with("/night/sensors") ||
                          (at == "/night/need/minutes" && !json.contains("estimate")) ||
                          at.starts_with("/answers/");
        EXPECT_TRUE(kept || found.contains(at)) << at;
    }
}

TEST(Fhir, ExampleNightHasItsResourcesInOrder)
{
    const Json bundle = bundle_of(diary_of(test::example_night()));
    EXPECT_EQ(bundle["resourceType"], "Bundle");
    EXPECT_EQ(bundle["type"], "collection");
    std::string types;
    for (const Json& entry : bundle["entry"])
        types += entry["resource"]["resourceType"].get<std::string>().substr(0, 14) + " ";
    EXPECT_EQ(types.find("Patient CodeSystem Questionnaire QuestionnaireR Observation "), 0u)
        << types;
    EXPECT_TRUE(types.ends_with("Observation Provenance ")) << types;
    EXPECT_EQ(told(check_fhir(bundle)), "");
    // Nothing of the person but the study code.
    EXPECT_EQ(resources(bundle, "Patient")[0],
              (Json{{"resourceType", "Patient"},
                    {"identifier", Json::array({Json{{"system", fhir::study_code_system},
                                                     {"value", "SM-0417"}}})}}));
}

TEST(Fhir, ExampleNightHasItsMeasuresWithUnitsAndDenominators)
{
    const Json bundle = bundle_of(diary_of(test::example_night()));
    const auto quantity = [&](const std::string& code) {
        const Json value = observation(bundle, code)["valueQuantity"];
        EXPECT_EQ(value["system"], "http://unitsofmeasure.org");
        return value["value"].dump() + " " + value["code"].get<std::string>();
    };
    // The values of assets/schemas/examples/diary.json; its demo data is invented.
    EXPECT_EQ(quantity("tib"), "590 min");
    EXPECT_EQ(quantity("sol"), "20 min");
    EXPECT_EQ(quantity("waso"), "47.5 min");
    EXPECT_EQ(quantity("tst"), "485 min");
    EXPECT_EQ(quantity("tasafa"), "5 min");
    EXPECT_EQ(quantity("dse"), "557.5 min");
    EXPECT_EQ(quantity("se_tib"), "82.2 %");
    EXPECT_EQ(quantity("se_dse"), "87 %");
    EXPECT_EQ(observation(bundle, "awakenings")["valueInteger"], 4);
    EXPECT_EQ(observation(bundle, "se_tib")["code"]["coding"][0]["display"],
              "Sleep efficiency, TST / TIB");
    EXPECT_EQ(observation(bundle, "se_dse")["code"]["coding"][0]["display"],
              "Sleep efficiency, TST / DSE");
    // LOINC 93832-4 "Sleep duration": as in the value set pcd-sleep-observation-code of HL7's
    // Personal Health Records guide (1.0.0-ballot2).
    const Json tst = observation(bundle, "tst");
    EXPECT_EQ(
        tst["code"]["coding"][0],
        (Json{{"system", "http://loinc.org"}, {"code", "93832-4"}, {"display", "Sleep duration"}}));
    EXPECT_NE(tst["method"]["text"].get<std::string>().find("(Final waking - lights out) - SOL"),
              std::string::npos);
    EXPECT_EQ(tst["effectivePeriod"],
              (Json{{"start", "2026-10-31T22:00:00-04:00"}, {"end", "2026-11-01T06:25:00-05:00"}}));
    const Json usable = observation(bundle, "usable");
    EXPECT_EQ(component(usable, "at_least")["valueQuantity"]["value"], 365);
    EXPECT_EQ(component(usable, "at_most")["valueQuantity"]["value"], 545);
    EXPECT_EQ(component(usable, "need")["valueQuantity"]["value"], 240);
    EXPECT_EQ(component(usable, "chance_enough")["valueQuantity"]["value"], 1.0);
    EXPECT_EQ(observation(bundle, "verdict")["valueCodeableConcept"]["coding"][0]["code"],
              "enough");
    EXPECT_EQ(component(observation(bundle, "sensor_on"), "sensor")["valueString"], "chest");
    EXPECT_EQ(component(observation(bundle, "lost"), "cause")["valueString"], "cannula");
}

TEST(Fhir, EveryValueIsTheDiarysAtThePlaceThatItNames)
{
    expect_traced(diary_of(test::example_night()));
    expect_traced(full_diary());
    for (const auto& sample : test::samples("night/valid")) {
        Night night = read_night(test::slurp(sample)).value();
        night.of = NightOf{"SM-1", 1};
        if (sample.stem() != "least") // it has no time at all
            expect_traced(diary_of(night));
    }
}

TEST(Fhir, RandomNightsAreTracedCheckedAndTheSameFromTheirOwnDiary)
{
    RandomNights random(417);
    int estimated = 0;
    for (int round = 0; round < 400 && !HasFailure(); ++round) {
        Night night = random.night(true);
        night.of = NightOf{"SM-1", 1};
        // Off the grid of whole minutes, so that decimals are seen.
        if (night.asleep_after)
            *night.asleep_after += min(0.25) * random.pick(0, 7);
        if (random.chance(50))
            night.tried_after_waking = min(2.5) * random.pick(0, 9);
        if (random.chance(30))
            night.slept = min(7.125) * random.pick(0, 50);
        if (random.chance(60)) {
            night.into_bed = random.time(-12, -1, 40);
            night.out_of_bed = random.time(45, 50, 40);
        }
        const Diary diary = diary_of(night);
        const std::string text = text_of(diary);
        ASSERT_EQ(told(check_fhir_text(text)), "") << text;
        ASSERT_EQ(text_of(read_diary(diary_to_json(diary).value()).value()), text);
        expect_traced(diary);
        estimated += !resources(Json::parse(text), "Observation").empty();
        EXPECT_EQ(resources(Json::parse(text), "Observation").empty(),
                  !contradictions(night).empty());
    }
    EXPECT_GT(estimated, 100); // both kinds were seen
    EXPECT_LT(estimated, 400);
}

TEST(Fhir, ContradictoryNightHasNoObservationsButNamesWhy)
{
    Night night = test::example_night();
    std::swap(night.lights_out, night.lights_on);
    const Json bundle = bundle_of(diary_of(night));
    EXPECT_EQ(told(check_fhir(bundle)), "");
    EXPECT_TRUE(resources(bundle, "Observation").empty());
    EXPECT_EQ(resources(bundle, "OperationOutcome")[0]["issue"][0]["details"]["text"],
              "lights_on_before_lights_out");
    EXPECT_EQ(resources(bundle, "Provenance")[0]["target"].size(), 1u); // the response
}

TEST(Fhir, SkippedAnswerAndUnknownMeasureAreAbsent)
{
    const Json bundle = bundle_of(diary_of(test::night_of(
        "{'format':'evenfall.night/1','visit':{'code':'SM-1','night':1},'zone':'Europe/Berlin',"
        "'sensors':['f'],'need':{'minutes':1,'groups':[['f']]},'lights_out':'2026-11-04T22:00'}")));
    EXPECT_EQ(told(check_fhir(bundle)), "");
    const Json items = resources(bundle, "QuestionnaireResponse")[0]["item"];
    ASSERT_EQ(items.size(), 1u);
    EXPECT_EQ(items[0]["linkId"], "lights_out");
    ASSERT_EQ(resources(bundle, "Observation").size(), 1u); // and no zero anywhere
    EXPECT_EQ(observation(bundle, "verdict")["valueCodeableConcept"]["coding"][0]["code"],
              "unknown");
}

TEST(Fhir, NoAwakeningIsAnAnswerAndNoneAtAllIsNot)
{
    Night night = test::example_night();
    night.awake_untimed = std::nullopt;
    night.awake.emplace();
    EXPECT_EQ(traced(bundle_of(diary_of(night)))["/night/awake"], false);
    EXPECT_EQ(observation(bundle_of(diary_of(night)), "awakenings")["valueInteger"], 0);
    night.awake = std::nullopt;
    EXPECT_FALSE(traced(bundle_of(diary_of(night))).contains("/night/awake"));
    EXPECT_TRUE(observation(bundle_of(diary_of(night)), "awakenings").is_null());
    EXPECT_TRUE(observation(bundle_of(diary_of(night)), "waso").is_null());
}

TEST(Fhir, UncertainTimeIsNeverAnExactOne)
{
    const Json bundle = bundle_of(diary_of(test::example_night()));
    std::map<std::string, std::string> answers;
    each_object(resources(bundle, "QuestionnaireResponse")[0], [&](const Json& json) {
        if (json.contains("answer") && json["answer"][0].contains("valueDateTime"))
            answers[json["linkId"].get<std::string>()] =
                json["answer"][0]["valueDateTime"].get<std::string>();
    });
    EXPECT_FALSE(answers.contains("lights_out.at"));
    EXPECT_EQ(answers["lights_out.earliest"], "2026-10-31T22:00:00-04:00");
    EXPECT_EQ(answers["lights_out.latest"], "2026-10-31T22:10:00-04:00");
    EXPECT_EQ(answers["into_bed.at"], "2026-10-31T21:50:00-04:00");
    EXPECT_FALSE(answers.contains("into_bed.earliest"));
}

TEST(Fhir, WhatWasWorkedOutIsToldFromWhatWasAnswered)
{
    const Json items = resources(bundle_of(full_diary()), "QuestionnaireResponse")[0]["item"];
    EXPECT_EQ(items[0]["linkId"], "derived");
    EXPECT_EQ(items[0]["answer"], (Json::array({Json{{"valueString", "/night/off/0/from"}}})));
}

TEST(Fhir, AnswersKeepTheirTypes)
{
    Diary diary = diary_of(test::example_night());
    const std::vector<std::pair<Json, std::string>> cases{
        {true, "answer.boolean"},
        {2, "answer.integer"},
        {-3, "answer.integer"},
        {4000000000, "answer.decimal"}, // more than 32 bits
        {18446744073709551615u, "answer.decimal"},
        {-4000000000, "answer.decimal"},
        {2.5, "answer.decimal"},
        {"coffee", "answer.text"},
        {"", "answer.json"},      // FHIR has no empty string
        {"a\x01", "answer.json"}, // nor control characters
        {Json{{"cups", 2}}, "answer.json"},
        {Json::array(), "answer.json"},
    };
    for (const auto& [answer, link] : cases)
        diary.answers.push_back({"q", answer, Origin::reported});
    const Json bundle = bundle_of(diary);
    EXPECT_EQ(told(check_fhir(bundle)), "");
    std::vector<Json> given;
    each_object(bundle, [&](const Json& json) {
        if (json.contains("linkId") && json.contains("answer") &&
            json["linkId"].get<std::string>().starts_with("answer.") &&
            json["linkId"] != "answer.question")
            given.push_back(json);
    });
    ASSERT_EQ(given.size(), cases.size());
    for (std::size_t i = 0; i < cases.size(); ++i) {
        EXPECT_EQ(given[i]["linkId"], cases[i].second) << i;
        EXPECT_EQ(given[i]["id"], pointer("/answers", i) + "/answer");
    }
}

TEST(Fhir, NamesAreUuidsOfVersionEightMadeFromCodeNightAndRole)
{
    // printf 'evenfall.fhir/1|SM-0417|patient' | sha256sum, and the others likewise, with version
    // and variant set (RFC 9562, section 5.8).
    const Json bundle = bundle_of(diary_of(test::example_night()));
    EXPECT_EQ(bundle["entry"][0]["fullUrl"], "urn:uuid:7827bb80-51c3-8116-82dd-e3decd32d812");
    EXPECT_EQ(bundle["entry"][1]["fullUrl"], "urn:uuid:d268cbbb-1861-8282-9edd-d6ac180e9abe");
    EXPECT_EQ(bundle["entry"][3]["fullUrl"], "urn:uuid:d2fdeff0-3975-821c-95b3-c76edc4902ed");

    Diary next = diary_of(test::example_night());
    next.of.night = 2;
    next.night.of->night = 2;
    const Json second = bundle_of(next);
    std::set<std::string> same;
    for (const Json& one : bundle["entry"])
        for (const Json& other : second["entry"])
            if (one["fullUrl"] == other["fullUrl"]) {
                same.insert(one["resource"]["resourceType"].get<std::string>());
                EXPECT_EQ(one, other); // one name, one content
            }
    EXPECT_EQ(same, (std::set<std::string>{"Patient", "CodeSystem", "Questionnaire"}));
}

TEST(Fhir, TimesOfTheRecordAreTheJournalsElseTheLatestOfTheDiary)
{
    Diary diary = full_diary(); // its one entry: 30 min before the middle of lights out, 22:05
    Json bundle = bundle_of(diary);
    EXPECT_EQ(resources(bundle, "QuestionnaireResponse")[0]["authored"],
              "2026-10-31T21:35:00-04:00");
    EXPECT_EQ(resources(bundle, "Provenance")[0]["recorded"], "2026-10-31T21:35:00-04:00");
    diary.journal.clear();
    bundle = bundle_of(diary);
    EXPECT_EQ(resources(bundle, "QuestionnaireResponse")[0]["authored"], "2026-11-01");
    EXPECT_EQ(resources(bundle, "Provenance")[0]["recorded"], "2026-11-01T06:45:00-05:00");
}

TEST(Fhir, OffsetThatFhirDoesNotKnowIsWrittenInUtc)
{
    // R4, datatypes: an offset is at most 14:00.
    const auto out = [](const std::string& when) {
        return traced(bundle_of(diary_of(test::night_of(
            "{'format':'evenfall.night/1','visit':{'code':'SM-1','night':1},'sensors':['f'],"
            "'need':{'minutes':1,'groups':[['f']]},'lights_out':'" +
            when + "'}"))))["/night/lights_out"];
    };
    EXPECT_EQ(out("2026-11-04T22:00:00+14:00"), "2026-11-04T22:00:00+14:00");
    EXPECT_EQ(out("2026-11-04T22:00:00+15:00"), "2026-11-04T07:00:00+00:00");
    EXPECT_EQ(out("2026-11-04T22:00:00-14:30"), "2026-11-05T12:30:00+00:00");
}

TEST(Fhir, WhatFhirCannotCarryIsRefusedWithItsPlace)
{
    Diary diary = diary_of(test::example_night());
    diary.notes.push_back({std::string((1u << 20) + 1, 'x'), std::nullopt});
    EXPECT_EQ(told(diary_fhir(diary).problems()), "too_long@/notes/0/text ");
    diary.notes[0].text = "x";
    diary.notes[0].at =
        TimeRange::exactly(Instant(std::chrono::sys_days{std::chrono::year{10000} / 1 / 2}));
    EXPECT_EQ(told(diary_fhir(diary).problems()).find("bad_year@/"), 0u);
}

TEST(Fhir, EveryCodeOfOursIsUsedOrAVerdict)
{
    std::set<std::string> used{"enough", "short", "borderline", "unknown", "wake_missing"};
    each_object(bundle_of(full_diary()), [&](const Json& json) {
        if (json.contains("system") && json["system"] == fhir::code_system_url)
            used.insert(json["code"].get<std::string>());
    });
    const Json codes = fhir::code_system();
    for (const Json& each : codes["concept"])
        EXPECT_TRUE(used.contains(each["code"].get<std::string>())) << each;
    EXPECT_EQ(codes["concept"].size(), used.size());
    EXPECT_EQ(codes["count"], used.size());
}

} // namespace
} // namespace evenfall
