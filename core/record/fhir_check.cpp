// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/fhir_check.h"

#include "base/time.h"

#include <algorithm>
#include <array>
#include <limits>
#include <map>
#include <optional>
#include <regex>
#include <set>

namespace evenfall {
namespace {

// Elements of R4 that are an integer, an unsignedInt or a positiveInt, in the resources of a diary.
constexpr std::array<std::string_view, 8> integers{"valueInteger",
                                                   "valueUnsignedInt",
                                                   "valuePositiveInt",
                                                   "answerInteger",
                                                   "maxLength",
                                                   "count",
                                                   "total",
                                                   "rank"};
constexpr std::array<std::string_view, 7> times{"valueDateTime",     "authored", "recorded",
                                                "effectiveDateTime", "start",    "end",
                                                "effectiveInstant"};
constexpr std::array<std::string_view, 4> choices{"value", "effective", "occurred", "deceased"};

/// Type of a question, and the answers that it takes.
struct AnswerType {
    std::string_view question;
    std::string_view answer;
    Json::value_t json;
};
using Type = Json::value_t;
constexpr std::array answer_types{
    AnswerType{"boolean", "valueBoolean", Type::boolean},
    AnswerType{"decimal", "valueDecimal", Type::number_float},
    AnswerType{"integer", "valueInteger", Type::number_integer},
    AnswerType{"date", "valueDate", Type::string},
    AnswerType{"dateTime", "valueDateTime", Type::string},
    AnswerType{"time", "valueTime", Type::string},
    AnswerType{"string", "valueString", Type::string},
    AnswerType{"text", "valueString", Type::string},
    AnswerType{"url", "valueUri", Type::string},
    AnswerType{"choice", "valueCoding", Type::object},
    AnswerType{"open-choice", "valueCoding", Type::object},
    AnswerType{"open-choice", "valueString", Type::string},
    AnswerType{"attachment", "valueAttachment", Type::object},
    AnswerType{"reference", "valueReference", Type::object},
    AnswerType{"quantity", "valueQuantity", Type::object},
};

template <class List>
bool among(const List& list, std::string_view word)
{
    return std::find(list.begin(), list.end(), word) != list.end();
}

const std::string* text_of(const Json& json, const char* key)
{
    const auto found = json.is_object() ? json.find(key) : json.end();
    return found != json.end() && found->is_string() ? found->get_ptr<const std::string*>()
                                                     : nullptr;
}

const Json* list_of(const Json& json, const char* key)
{
    const auto found = json.is_object() ? json.find(key) : json.end();
    return found != json.end() && found->is_array() ? &*found : nullptr;
}

/// R4's dateTime (datatypes): a year, month, day, or a moment with seconds and a zone.
bool well_formed_time(const std::string& text)
{
    static const std::regex form("(?!0000)[0-9]{4}(-(0[1-9]|1[0-2])(-(0[1-9]|[12][0-9]|3[01])"
                                 "(T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?"
                                 "(Z|[+-](0[0-9]|1[0-3]):[0-5][0-9]|[+-]14:00))?)?)?");
    return text.size() < 60 && std::regex_match(text, form);
}

std::optional<Instant> moment(const std::string& text)
{
    const Result<WrittenTime> written = parse_time(text);
    if (!written || !written->offset)
        return std::nullopt;
    const Result<Instant> when = resolve(*written, nullptr);
    return when ? std::optional(*when) : std::nullopt;
}

class FhirChecker {
  public:
    explicit FhirChecker(const Json& bundle) : bundle_(bundle) {}

    Problems check()
    {
        const std::string* type = text_of(bundle_, "resourceType");
        const Json* entries = list_of(bundle_, "entry");
        if (!type || *type != "Bundle" || !entries) {
            add("no_resource", "", "not a Bundle with entries; right would be one");
            return std::move(problems_);
        }
        for (std::size_t i = 0; i < entries->size(); ++i)
            gather((*entries)[i], pointer("/entry", i));
        walk(bundle_, "", "");
        for (std::size_t i = 0; i < entries->size(); ++i)
            check_response((*entries)[i], pointer("/entry", i) + "/resource");
        return std::move(problems_);
    }

  private:
    const Json& bundle_;
    Problems problems_;
    std::set<std::string> urls_;
    std::map<std::string, const Json*> questionnaires_;                      // by url|version
    std::map<std::string, std::map<std::string, const Json*>> code_systems_; // by url, by code
    std::set<std::string> ids_;                                              // in this resource

    void add(std::string code, std::string at, std::string text)
    {
        problems_.push_back({Fault::refused, std::move(code), std::move(at), std::move(text)});
    }

    void gather(const Json& entry, const std::string& at)
    {
        static const std::regex form(
            "urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}");
        const std::string* url = text_of(entry, "fullUrl");
        if (!url || url->size() > 60 || !std::regex_match(*url, form))
            add("bad_url", at + "/fullUrl", "right would be urn:uuid: and a UUID");
        else if (!urls_.insert(*url).second)
            add("duplicate_url", at + "/fullUrl",
                *url + " stands here twice; right would be one of its own for each entry");
        const auto resource = entry.is_object() ? entry.find("resource") : entry.end();
        const std::string* type =
            resource != entry.end() ? text_of(*resource, "resourceType") : nullptr;
        if (!type) {
            add("no_resource", at, "an entry without a resource; right would be one");
            return;
        }
        const std::string* canonical = text_of(*resource, "url");
        if (*type == "Questionnaire" && canonical) {
            const std::string* version = text_of(*resource, "version");
            questionnaires_[*canonical + (version ? "|" + *version : "")] = &*resource;
            std::set<std::string> links;
            check_links(*resource, at + "/resource", links);
        }
        if (*type == "CodeSystem" && canonical) {
            auto& codes = code_systems_[*canonical];
            if (const Json* concepts = list_of(*resource, "concept"))
                for (const Json& each : *concepts)
                    if (const std::string* code = text_of(each, "code"))
                        codes[*code] = &each;
        }
    }

    void check_links(const Json& where, const std::string& at, std::set<std::string>& links)
    {
        const Json* items = list_of(where, "item");
        for (std::size_t i = 0; items && i < items->size(); ++i) {
            const std::string here = pointer(at + "/item", i);
            const std::string* link = text_of((*items)[i], "linkId");
            if (link && !links.insert(*link).second)
                add("duplicate_link", here + "/linkId",
                    *link + " stands in the Questionnaire twice; right would be once");
            check_links((*items)[i], here, links);
        }
    }

    void walk(const Json& json, const std::string& at, std::string_view key)
    {
        if (json.is_null())
            add("null_value", at, "null; right would be a value, or no such key");
        else if ((json.is_structured() && json.empty()) ||
                 (json.is_string() && json.get_ref<const std::string&>().empty()))
            add("empty_value", at, "empty; right would be a value, or no such key");
        if (among(integers, key))
            check_integer(json, at);
        if (among(times, key) && !json.is_object())
            check_time(json, at);
        if (json.is_array())
            for (std::size_t i = 0; i < json.size(); ++i)
                walk(json[i], pointer(at, i), "");
        if (!json.is_object())
            return;
        if (json.contains("resourceType"))
            ids_.clear();
        check_object(json, at);
        for (const auto& [name, value] : json.items())
            walk(value, pointer(at, std::string_view(name)), name);
    }

    void check_integer(const Json& json, const std::string& at)
    {
        using Int = std::numeric_limits<std::int32_t>;
        const bool fits = json.is_number_integer() &&
                          (!json.is_number_unsigned() ||
                           json.get<std::uint64_t>() <= static_cast<std::uint64_t>(Int::max())) &&
                          json.get<std::int64_t>() >= Int::min() &&
                          json.get<std::int64_t>() <= Int::max();
        if (!fits)
            add("not_integer", at, json.dump() + "; right would be a whole number of 32 bits");
    }

    void check_time(const Json& json, const std::string& at)
    {
        if (!json.is_string() || !well_formed_time(json.get_ref<const std::string&>()))
            add("bad_time", at,
                json.dump() + "; right would be a date, or a time with seconds and a zone, such "
                              "as 2026-10-31T22:05:00-04:00");
    }

    void check_object(const Json& json, const std::string& at)
    {
        for (const std::string_view choice : choices) {
            std::string first;
            for (const auto& [name, value] : json.items()) {
                if (!name.starts_with(choice) || name.size() == choice.size() ||
                    name[choice.size()] < 'A' || name[choice.size()] > 'Z' || name == "valueSet")
                    continue;
                if (!first.empty())
                    add("two_values", at,
                        first + " and " + name + " stand side by side; right would be one");
                first = name;
            }
        }
        const std::string* start = text_of(json, "start");
        const std::string* end = text_of(json, "end");
        if (start && end) {
            const auto from = moment(*start);
            const auto to = moment(*end);
            if (from && to && *from > *to)
                add("wrong_order", at, "ends before it begins; right would be the other way round");
        }
        if (json.contains("value") && json.contains("code") && !json.contains("system"))
            add("unit_without_system", at,
                "a coded unit and no system; right would be http://unitsofmeasure.org");
        if (const std::string* id = text_of(json, "id")) {
            if (id->find_first_of(" \t\r\n") != std::string::npos)
                add("bad_id", at + "/id", "an id with a space; right would be none");
            if (!ids_.insert(*id).second)
                add("duplicate_id", at + "/id",
                    *id + " stands in this resource twice; right would be once");
        }
        if (const std::string* target = text_of(json, "reference");
            target && !urls_.contains(*target))
            add("no_target", at + "/reference",
                *target + " is not in this Bundle; right would be the fullUrl of an entry");
        check_code(json, at);
    }

    void check_code(const Json& json, const std::string& at)
    {
        const std::string* system = text_of(json, "system");
        const std::string* code = text_of(json, "code");
        const auto codes = system ? code_systems_.find(*system) : code_systems_.end();
        if (!code || codes == code_systems_.end())
            return;
        const auto found = codes->second.find(*code);
        if (found == codes->second.end()) {
            add("unknown_code", at + "/code", *code + " is not in its CodeSystem");
            return;
        }
        const std::string* display = text_of(json, "display");
        const std::string* right = text_of(*found->second, "display");
        if (display && right && *display != *right)
            add("unknown_code", at + "/display",
                *display + " is not what " + *code + " is called; right would be " + *right);
    }

    void check_response(const Json& entry, const std::string& at)
    {
        const auto resource = entry.is_object() ? entry.find("resource") : entry.end();
        const std::string* type =
            resource != entry.end() ? text_of(*resource, "resourceType") : nullptr;
        if (!type || *type != "QuestionnaireResponse")
            return;
        const std::string* canonical = text_of(*resource, "questionnaire");
        const auto found = canonical ? questionnaires_.find(*canonical) : questionnaires_.end();
        if (found == questionnaires_.end())
            add("no_target", at + "/questionnaire",
                "not a Questionnaire of this Bundle; right would be its url|version");
        else
            check_items(*resource, *found->second, at);
    }

    void check_items(const Json& given, const Json& asked, const std::string& at)
    {
        const Json* items = list_of(given, "item");
        const Json* questions = list_of(asked, "item");
        std::set<std::string> seen;
        for (std::size_t i = 0; items && i < items->size(); ++i) {
            const Json& item = (*items)[i];
            const std::string here = pointer(at + "/item", i);
            const std::string* link = text_of(item, "linkId");
            const Json* question = nullptr;
            for (std::size_t k = 0; link && questions && k < questions->size(); ++k)
                if (const std::string* asks = text_of((*questions)[k], "linkId");
                    asks && *asks == *link)
                    question = &(*questions)[k];
            if (!question) {
                add("unknown_link", here + "/linkId",
                    (link ? *link : std::string("nothing")) +
                        " is not asked here; right would be a linkId that the Questionnaire has at "
                        "this place");
                continue;
            }
            const bool repeats = question->value("repeats", Json(false)) == Json(true);
            if (!seen.insert(*link).second && !repeats)
                add("repeated", here, *link + " stands here twice; right would be once");
            check_answers(item, *question, repeats, here);
            check_items(item, *question, here);
        }
    }

    void check_answers(const Json& item, const Json& question, bool repeats, const std::string& at)
    {
        const std::string* asked = text_of(question, "type");
        const Json* answers = list_of(item, "answer");
        if (!answers)
            return;
        if (answers->size() > 1 && !repeats)
            add("repeated", at + "/answer", "several answers; right would be one");
        for (std::size_t i = 0; i < answers->size(); ++i) {
            const Json& answer = (*answers)[i];
            const std::string here = pointer(at + "/answer", i);
            const bool right =
                asked && answer.is_object() &&
                std::any_of(answer_types.begin(), answer_types.end(), [&](const AnswerType& each) {
                    const auto value = answer.find(std::string(each.answer));
                    return each.question == *asked && value != answer.end() &&
                           same_type(*value, each.json);
                });
            if (!right)
                add("wrong_answer", here,
                    "not an answer to a question of type " +
                        (asked ? *asked : std::string("none")));
            // Items below an answer are those of the question.
            check_items(answer, question, here);
        }
    }

    static bool same_type(const Json& value, Type type)
    {
        switch (type) {
        case Type::number_float: // a whole number is a decimal too
            return value.is_number();
        case Type::number_integer:
            return value.is_number_integer();
        default:
            return value.type() == type;
        }
    }
};

} // namespace

Problems check_fhir(const Json& bundle)
{
    return FhirChecker(bundle).check();
}

Problems check_fhir_text(std::string_view text)
{
    const Result<Json> json = parse_json(text);
    return json ? check_fhir(*json) : json.problems();
}

} // namespace evenfall
