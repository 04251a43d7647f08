// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Each rule of check_fhir against a good file that was spoilt in one place.
#include "record/fhir_check.h"

#include "core/record/diaries.h"
#include "record/fhir.h"

#include <functional>

namespace evenfall {
namespace {

std::string told(const Problems& problems)
{
    std::string out;
    for (const Problem& problem : problems)
        out += problem.code + "@" + problem.at + " ";
    return out;
}

/// The pointer of the first value below for which `fits`; empty where there is none.
std::string find(const Json& json, const std::function<bool(const Json&)>& fits,
                 const std::string& at = "")
{
    if (fits(json))
        return at;
    if (json.is_structured())
        for (const auto& [key, value] : json.items())
            if (std::string found = find(value, fits, pointer(at, std::string_view(key)));
                !found.empty())
                return found;
    return "";
}

class FhirCheck : public testing::Test {
  protected:
    Json bundle = Json::parse(diary_fhir(test::full_diary()).value());

    /// Pointer of the response's item with this linkId.
    std::string item(const std::string& link) const
    {
        return find(bundle, [&](const Json& json) {
            return json.is_object() && json.contains("linkId") && json["linkId"] == link &&
                   !json.contains("type");
        });
    }
    std::string entry(const std::string& type) const
    {
        for (std::size_t i = 0; i < bundle["entry"].size(); ++i)
            if (bundle["entry"][i]["resource"]["resourceType"] == type)
                return pointer("/entry", i);
        return "";
    }
    std::string observation(const char* value) const
    {
        return find(bundle, [&](const Json& json) {
            return json.is_object() && json.contains("resourceType") && json.contains(value);
        });
    }
    Json& at(const std::string& place)
    {
        EXPECT_TRUE(bundle.contains(Json::json_pointer(place))) << place;
        return bundle[Json::json_pointer(place)];
    }
    std::string found() const { return told(check_fhir(bundle)); }
};

TEST_F(FhirCheck, GoodFileIsFine)
{
    EXPECT_EQ(found(), "");
    EXPECT_EQ(told(check_fhir_text(bundle.dump())), "");
}

TEST_F(FhirCheck, TextThatIsNotJsonOrNoBundleIsRefused)
{
    EXPECT_EQ(told(check_fhir_text("{")), "not_json@ ");
    EXPECT_EQ(told(check_fhir_text("{\"a\":1,\"a\":1}")), "duplicate_key@/a ");
    EXPECT_EQ(told(check_fhir_text("[]")), "no_resource@ ");
    EXPECT_EQ(told(check_fhir_text("{\"resourceType\":\"Bundle\"}")), "no_resource@ ");
    at(entry("Provenance")).erase("resource");
    EXPECT_EQ(found().find("no_resource@" + pointer("/entry", bundle["entry"].size() - 1)), 0u);
}

TEST_F(FhirCheck, DecimalWhereAnIntegerBelongs)
{
    const std::string place = observation("valueInteger") + "/valueInteger";
    for (const Json& wrong : {Json(4.5), Json(4.0), Json("4"), Json(3000000000)}) {
        at(place) = wrong;
        EXPECT_EQ(found(), "not_integer@" + place + " ") << wrong;
    }
    at(place) = -2147483648;
    EXPECT_EQ(found(), "");
    const std::string times = item("awake.untimed.times");
    at(times)["answer"][0]["valueInteger"] = 2.0;
    EXPECT_EQ(found(), "not_integer@" + times + "/answer/0/valueInteger wrong_answer@" + times +
                           "/answer/0 ");
}

TEST_F(FhirCheck, TwoFormsOfOneValue)
{
    const std::string awake = item("awake.timed") + "/answer/0";
    at(awake)["valueString"] = "yes";
    EXPECT_EQ(found(), "two_values@" + awake + " ");
    at(awake).erase("valueString");
    const std::string place = observation("valueInteger");
    at(place)["valueQuantity"] = Json{{"value", 4}};
    at(place)["effectiveDateTime"] = "2026-11-01";
    EXPECT_EQ(found(), "two_values@" + place + " two_values@" + place + " ");
}

TEST_F(FhirCheck, EmptyAndNullValues)
{
    const std::string place = entry("Provenance") + "/resource";
    at(place)["policy"] = Json::array();
    EXPECT_EQ(found(), "empty_value@" + place + "/policy ");
    at(place)["policy"] = Json::array({""});
    EXPECT_EQ(found(), "empty_value@" + place + "/policy/0 ");
    at(place)["policy"] = Json::object();
    EXPECT_EQ(found(), "empty_value@" + place + "/policy ");
    at(place)["policy"] = nullptr;
    EXPECT_EQ(found(), "null_value@" + place + "/policy ");
}

TEST_F(FhirCheck, TimesWithoutSecondsOrZone)
{
    const std::string place = item("into_bed.at") + "/answer/0/valueDateTime";
    for (const char* wrong :
         {"2026-10-31T21:50", "2026-10-31T21:50-04:00", "2026-10-31T21:50:00", "2026-10-31T21",
          "2026-13-01", "2026-10-31T24:00:00Z", "2026-10-31T21:50:00+14:30", "0000-01-01",
          "2026-10-31 21:50:00Z", "21:50"}) {
        at(place) = wrong;
        EXPECT_EQ(found(), "bad_time@" + place + " ") << wrong;
    }
    for (const char* right : {"2026", "2026-10", "2026-10-31", "2026-10-31T21:50:00Z",
                              "2026-10-31T21:50:00.123456-04:00", "2026-10-31T21:50:00+14:00"}) {
        at(place) = right;
        EXPECT_EQ(found(), "") << right;
    }
}

TEST_F(FhirCheck, PeriodThatEndsBeforeItBegins)
{
    const std::string place = observation("valueInteger") + "/effectivePeriod";
    at(place)["start"] = "2026-11-01T06:25:01-05:00"; // its end is a second earlier
    EXPECT_EQ(found(), "wrong_order@" + place + " ");
    at(place)["start"] = "2026-11-01T07:25:00-04:00"; // the same instant
    EXPECT_EQ(found(), "");
}

TEST_F(FhirCheck, CodedUnitWithoutSystem)
{
    const std::string place = observation("valueQuantity") + "/valueQuantity";
    at(place).erase("system");
    EXPECT_EQ(found(), "unit_without_system@" + place + " ");
}

TEST_F(FhirCheck, ElementIdsOfOneResource)
{
    const std::string first = item("into_bed.at");
    at(first)["id"] = "/night/into bed";
    EXPECT_EQ(found(), "bad_id@" + first + "/id ");
    at(first)["id"] = "/night/lights_on";
    EXPECT_EQ(found(), "duplicate_id@" + item("lights_on.at") + "/id ");
}

TEST_F(FhirCheck, EntriesWithoutANameOfTheirOwn)
{
    const std::string last = pointer("/entry", bundle["entry"].size() - 1) + "/fullUrl";
    const std::string right = at(last);
    at(last) = "urn:uuid:" + std::string(36, 'A');
    EXPECT_EQ(found(), "bad_url@" + last + " ");
    at(last) = at("/entry/0/fullUrl");
    EXPECT_EQ(found(), "duplicate_url@" + last + " ");
    at(pointer("/entry", bundle["entry"].size() - 1)).erase("fullUrl");
    EXPECT_EQ(found(), "bad_url@" + last + " ");
}

TEST_F(FhirCheck, ReferenceThatLeadsNowhere)
{
    const std::string place = observation("valueInteger") + "/subject/reference";
    at(place) = "Patient/1";
    EXPECT_EQ(found(), "no_target@" + place + " ");
    at(place) = bundle["entry"][0]["fullUrl"];
    const std::string asked = entry("QuestionnaireResponse") + "/resource/questionnaire";
    for (const char* wrong : {"https://evenfall.example/fhir/Questionnaire/night-diary|9", "x"}) {
        at(asked) = wrong;
        EXPECT_EQ(found(), "no_target@" + asked + " ");
    }
}

TEST_F(FhirCheck, CodeThatIsNotOursOrNotCalledSo)
{
    const std::string place = observation("valueInteger") + "/code/coding/0";
    at(place)["display"] = "Naps";
    EXPECT_EQ(found(), "unknown_code@" + place + "/display ");
    at(place)["code"] = "naps";
    EXPECT_EQ(found(), "unknown_code@" + place + "/code ");
}

TEST_F(FhirCheck, ItemsThatWereNotAskedOrNotThere)
{
    const std::string place = item("into_bed.at");
    at(place)["linkId"] = "bed.at";
    EXPECT_EQ(found(), "unknown_link@" + place + "/linkId ");
    at(place)["linkId"] = "lights_out.at"; // asked, but within another group
    EXPECT_EQ(found(), "unknown_link@" + place + "/linkId ");
    at(place).erase("linkId");
    EXPECT_EQ(found(), "unknown_link@" + place + "/linkId ");
}

TEST_F(FhirCheck, LinkIdThatTheQuestionnaireHasTwice)
{
    const std::string place = entry("Questionnaire") + "/resource/item/1/item/1/linkId";
    at(place) = "kit.id";
    EXPECT_EQ(found().find("duplicate_link@" + place), 0u) << found();
}

TEST_F(FhirCheck, AnswersThatDoNotRepeat)
{
    const std::string place = item("into_bed.at");
    at(place)["answer"].push_back(at(place)["answer"][0]);
    EXPECT_EQ(found(), "repeated@" + place + "/answer ");
    at(place)["answer"].erase(1);
    const std::string group = place.substr(0, place.rfind("/item/"));
    Json twice = at(place);
    twice["id"] = "/twice";
    at(group)["item"].push_back(twice);
    EXPECT_EQ(found(), "repeated@" + group + "/item/1 ");
}

TEST_F(FhirCheck, AnswerOfAnotherTypeThanItsQuestion)
{
    const std::vector<std::pair<std::string, Json>> cases{
        {"into_bed.at", Json{{"valueString", "21:50"}}},
        {"into_bed.at", Json{{"valueDate", "2026-10-31"}}},
        {"asleep_after", Json{{"valueInteger", 20}}},
        {"asleep_after", Json{{"valueQuantity", 20}}},
        {"awake.timed", Json{{"valueString", "true"}}},
        {"awake.timed", Json{{"valueBoolean", "true"}}},
        {"awake.untimed.times", Json{{"valueDecimal", 2}}},
        {"off.sensor", Json{{"valueCoding", Json{{"code", "finger"}}}}},
        {"note.text", Json{{"valueString", 7}}},
        {"into_bed", Json{{"valueBoolean", true}}}, // a group is not answered
    };
    for (const auto& [link, answer] : cases) {
        const Json before = bundle;
        const std::string place = item(link);
        at(place)["answer"] = Json::array({answer});
        EXPECT_EQ(found(), "wrong_answer@" + place + "/answer/0 ") << answer;
        bundle = before;
    }
}

} // namespace
} // namespace evenfall
