// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/fhir.h"

#include "base/hash.h"
#include "estimate/contradictions.h"
#include "estimate/estimate_json.h"
#include "estimate/worlds.h"
#include "record/events.h"
#include "record/fhir_names.h"

#include <algorithm>
#include <cstdlib>
#include <limits>

namespace evenfall {
namespace {

constexpr std::string_view ucum = "http://unitsofmeasure.org";
constexpr std::string_view loinc = "http://loinc.org";

Json quantity(Json value, std::string_view unit)
{
    return Json{{"value", std::move(value)}, {"unit", unit}, {"system", ucum}, {"code", unit}};
}

Json minutes(Span span)
{
    return quantity(minutes_json(span), "min");
}

Json reference(const std::string& url)
{
    return Json{{"reference", url}};
}

/// urn:uuid, see fhir.h.
std::string urn(const std::string& named)
{
    std::string hex = sha256_hex("evenfall.fhir/1|" + named).substr(0, 32);
    hex[12] = '8'; // version
    const char sixteen = hex[16];
    const int variant = (sixteen <= '9' ? sixteen - '0' : sixteen - 'a' + 10) & 3;
    hex[16] = "89ab"[variant];
    for (const std::size_t dash : {20u, 16u, 12u, 8u})
        hex.insert(dash, "-");
    return "urn:uuid:" + hex;
}

/// Can FHIR's string carry it? (R4, datatypes: not empty, no control characters but three.)
bool fits_string(const std::string& text)
{
    return plain_text(text) && text.find_first_not_of(" \t\r\n") != std::string::npos;
}

/// What the writers of the parts share.
class Scribe {
  public:
    explicit Scribe(const Diary& diary) : diary_(diary) {}

    const Diary& diary() const { return diary_; }
    const Problems& problems() const { return problems_; }

    void refuse(std::string code, const std::string& at, std::string text)
    {
        problems_.push_back({Fault::refused, std::move(code), at, std::move(text)});
    }

    /// Local time of the night. R4 knows offsets up to 14 h: beyond, the same instant in UTC.
    std::string time(Instant when, const std::string& at)
    {
        std::chrono::seconds offset = diary_.night.offset_at(when);
        if (offset > std::chrono::hours(14) || offset < -std::chrono::hours(14))
            offset = std::chrono::seconds(0);
        std::string text = format_time(when, offset);
        if (text.find('-', 1) != 4 || text.starts_with("0000"))
            refuse("bad_year", at,
                   text + " cannot be written; right would be a year from 1 to 9999");
        return text;
    }

    Json text(const std::string& value, const std::string& at)
    {
        constexpr std::size_t most = 1u << 20; // R4, datatypes: string
        if (value.size() > most)
            refuse("too_long", at, "longer than a mebibyte; right would be less");
        return value;
    }

  private:
    const Diary& diary_;
    Problems problems_;
};

/// The answers, in the order of the Questionnaire.
class Response {
  public:
    explicit Response(Scribe& scribe) : scribe_(scribe) {}

    Json items()
    {
        const Diary& diary = scribe_.diary();
        const Night& night = diary.night;
        put_derived();
        if (diary.kit) {
            Json kit = Json::array();
            put_text(kit, "kit.id", diary.kit->id, "/kit/id");
            put_text(kit, "kit.label", diary.kit->label, "/kit/label");
            put_group(items_, "kit", std::move(kit));
        }
        Json recording = Json::array();
        put_time(recording, "recording.from", night.recording_from, "/night/recording/from");
        put_time(recording, "recording.to", night.recording_to, "/night/recording/to");
        put_group(items_, "recording", std::move(recording));
        put_time(items_, "into_bed", night.into_bed, "/night/into_bed");
        put_time(items_, "lights_out", night.lights_out, "/night/lights_out");
        put_minutes(items_, "asleep_after", night.asleep_after, "/night/asleep_after_min");
        put_awake();
        for (std::size_t i = 0; i < night.off.size(); ++i)
            put_removal(night.off[i], pointer("/night/off", i));
        put_time(items_, "final_waking", night.final_waking, "/night/final_waking");
        put_minutes(items_, "tried_to_sleep_after_waking", night.tried_after_waking,
                    "/night/tried_to_sleep_after_waking_min");
        put_time(items_, "lights_on", night.lights_on, "/night/lights_on");
        put_time(items_, "out_of_bed", night.out_of_bed, "/night/out_of_bed");
        put_minutes(items_, "slept", night.slept, "/night/slept_min");
        for (std::size_t i = 0; i < diary.answers.size(); ++i)
            put_answer(diary.answers[i], pointer("/answers", i));
        for (std::size_t i = 0; i < diary.events.size(); ++i)
            put_event(diary.events[i], pointer("/events", i));
        for (std::size_t i = 0; i < diary.notes.size(); ++i) {
            const std::string at = pointer("/notes", i);
            Json note = Json::array();
            put_time(note, "note.when", diary.notes[i].at, at + "/at");
            put_text(note, "note.text", diary.notes[i].text, at + "/text");
            put_group(items_, "note", std::move(note));
        }
        for (std::size_t i = 0; i < diary.signal_checks.size(); ++i)
            put_signal_check(diary.signal_checks[i], pointer("/signal_checks", i));
        return std::move(items_);
    }

  private:
    Scribe& scribe_;
    Json items_ = Json::array();

    static void put(Json& where, const std::string& link, const char* type, Json value,
                    const std::string& at)
    {
        where.push_back(Json{{"id", at},
                             {"linkId", link},
                             {"answer", Json::array({Json{{type, std::move(value)}}})}});
    }

    /// A group that nothing was answered in is absent.
    static void put_group(Json& where, const std::string& link, Json items)
    {
        if (!items.empty())
            where.push_back(Json{{"linkId", link}, {"item", std::move(items)}});
    }

    void put_text(Json& where, const std::string& link, const std::string& value,
                  const std::string& at)
    {
        if (!value.empty())
            put(where, link, "valueString", scribe_.text(value, at), at);
    }

    void put_minutes(Json& where, const std::string& link, const std::optional<Span>& value,
                     const std::string& at)
    {
        if (value)
            put(where, link, "valueQuantity", minutes(*value), at);
    }

    void put_time(Json& where, const std::string& link, const std::optional<TimeRange>& value,
                  const std::string& at)
    {
        if (!value)
            return;
        Json times = Json::array();
        const auto one = [&](const char* end, Instant when, const std::string& there) {
            put(times, link + end, "valueDateTime", scribe_.time(when, there), there);
        };
        if (value->exact()) {
            one(".at", value->earliest, at);
        } else {
            one(".earliest", value->earliest, at + "/earliest");
            one(".latest", value->latest, at + "/latest");
        }
        put_group(where, link, std::move(times));
    }

    void put_derived()
    {
        const Diary& diary = scribe_.diary();
        Json answers = Json::array();
        const auto add = [&](const std::string& at) {
            answers.push_back(Json{{"valueString", at}});
        };
        for (const std::string& at : value_pointers(diary.night))
            if (const auto found = diary.origins.find(at);
                found != diary.origins.end() && found->second == Origin::derived)
                add("/night" + at);
        for (std::size_t i = 0; i < diary.answers.size(); ++i)
            if (diary.answers[i].origin == Origin::derived)
                add(pointer("/answers", i));
        for (std::size_t i = 0; i < diary.events.size(); ++i)
            if (diary.events[i].origin == Origin::derived)
                add(pointer("/events", i));
        if (!answers.empty())
            items_.push_back(Json{{"linkId", "derived"}, {"answer", std::move(answers)}});
    }

    void put_awake()
    {
        const Night& night = scribe_.diary().night;
        Json awake = Json::array();
        if (night.awake)
            put(awake, "awake.timed", "valueBoolean", !night.awake->empty(), "/night/awake");
        for (std::size_t i = 0; night.awake && i < night.awake->size(); ++i) {
            const Awakening& one = (*night.awake)[i];
            const std::string at = pointer("/night/awake", i);
            Json awakening = Json::array();
            put_time(awakening, "awake.awakening.from", one.from, at + "/from");
            put_time(awakening, "awake.awakening.to", one.to, at + "/to");
            put_minutes(awakening, "awake.awakening.minutes", one.length, at + "/minutes");
            put_group(awake, "awake.awakening", std::move(awakening));
        }
        if (night.awake_untimed) {
            Json untimed = Json::array();
            put(untimed, "awake.untimed.times", "valueInteger", night.awake_untimed->times,
                "/night/awake_untimed/times");
            put_minutes(untimed, "awake.untimed.minutes", night.awake_untimed->total,
                        "/night/awake_untimed/minutes");
            put_group(awake, "awake.untimed", std::move(untimed));
        }
        put_group(items_, "awake", std::move(awake));
    }

    void put_removal(const Removal& removal, const std::string& at)
    {
        Json off = Json::array();
        put_text(off, "off.sensor", removal.sensor, at + "/sensor");
        // A missing end means something: it is said, not left out.
        if (!removal.from)
            put(off, "off.from_start", "valueBoolean", true, at + "/from");
        put_time(off, "off.from", removal.from, at + "/from");
        put_time(off, "off.to", removal.to, at + "/to");
        if (!removal.to)
            put(off, "off.not_put_back", "valueBoolean", true, at + "/to");
        put_group(items_, "off", std::move(off));
    }

    void put_answer(const DiaryAnswer& given, const std::string& at)
    {
        Json answer = Json::array();
        put_text(answer, "answer.question", given.question, at + "/question");
        const Json& value = given.answer;
        const std::string there = at + "/answer";
        // FHIR's integer has 32 bits.
        const auto whole = [&] {
            if (value.is_number_unsigned() &&
                value.get<std::uint64_t>() > std::numeric_limits<std::int32_t>::max())
                return false;
            return value.is_number_integer() &&
                   value.get<std::int64_t>() >= std::numeric_limits<std::int32_t>::min() &&
                   value.get<std::int64_t>() <= std::numeric_limits<std::int32_t>::max();
        };
        if (value.is_boolean())
            put(answer, "answer.boolean", "valueBoolean", value, there);
        else if (whole())
            put(answer, "answer.integer", "valueInteger", value, there);
        else if (value.is_number())
            put(answer, "answer.decimal", "valueDecimal", value, there);
        else if (value.is_string() && fits_string(value.get_ref<const std::string&>()))
            put_text(answer, "answer.text", value.get<std::string>(), there);
        else
            put_text(answer, "answer.json",
                     value.dump(-1, ' ', false, Json::error_handler_t::replace), there);
        put_group(items_, "answer", std::move(answer));
    }

    void put_event(const DiaryEvent& event, const std::string& at)
    {
        Json items = Json::array();
        put_text(items, "event.kind", event.kind, at + "/kind");
        put_time(items, "event.when", event.at, at + "/at");
        put_minutes(items, "event.minutes", event.length, at + "/minutes");
        put_text(items, "event.subject", event.subject, at + "/subject");
        put_text(items, "event.comment", event.comment, at + "/comment");
        put_group(items_, "event", std::move(items));
    }

    void put_signal_check(const SignalCheck& check, const std::string& at)
    {
        Json items = Json::array();
        put(items, "signal_check.at", "valueDateTime", scribe_.time(check.at, at + "/at"),
            at + "/at");
        put_text(items, "signal_check.kind", check.kind, at + "/kind");
        put_text(items, "signal_check.subject", check.subject, at + "/subject");
        put_text(items, "signal_check.text", check.text, at + "/text");
        put_group(items_, "signal_check", std::move(items));
    }
};

/// The Bundle and the resources around the answers.
class Bundler {
  public:
    Bundler(const Diary& diary, DiaryStart start, std::string record)
        : scribe_(diary), diary_(diary), record_(std::move(record)),
          whole_(TimeRange::exactly(start.at))
    {
        for (const DiaryEvent& event : all_events(diary)) {
            whole_.earliest = std::min(whole_.earliest, event.at.earliest);
            whole_.latest =
                std::max(whole_.latest, event.at.latest + event.length.value_or(Span(0)));
        }
    }

    Result<std::string> write()
    {
        try {
            return lines();
        } catch (const Json::exception&) {
            return Problem{Fault::refused, "bad_text", "",
                           "a text that is not UTF-8; right would be UTF-8 everywhere"};
        }
    }

  private:
    Result<std::string> lines()
    {
        patient_ = urn(diary_.of.code + "|patient");
        response_ = own_urn("response");
        Json patient{{"resourceType", "Patient"},
                     {"identifier", Json::array({Json{{"system", fhir::study_code_system},
                                                      {"value", diary_.of.code}}})}};
        add(patient_, patient);
        static const std::string codes = fhir::code_system().dump(); // the same in every record
        static const std::string questions = fhir::questionnaire().dump();
        add_line(Json{{"fullUrl", urn("codes")}}, codes);
        add_line(Json{{"fullUrl", urn("questionnaire")}}, questions);
        add_response();
        const Problems contradictory = contradictions(diary_.night);
        if (contradictory.empty())
            add_observations();
        else
            add_contradictions(contradictory);
        add_provenance();
        if (!scribe_.problems().empty())
            return scribe_.problems();
        const Json name{{"system", "urn:ietf:rfc:3986"}, {"value", own_urn("bundle")}};
        return R"({"resourceType":"Bundle","identifier":)" + name.dump() +
               R"(,"type":"collection","entry":[)" + entries_ + "\n]}\n";
    }

    Scribe scribe_;
    const Diary& diary_;
    std::string record_;
    TimeRange whole_; ///< holds everything in the diary that has a time
    std::string patient_, response_;
    std::vector<std::string> observations_;
    std::string entries_; ///< one on a line: small, and two files still compare line by line

    std::string own_urn(const std::string& role) const
    {
        return urn(diary_.of.code + "|" + std::to_string(diary_.of.night) + "|" + role);
    }

    void add(const std::string& url, const Json& resource)
    {
        add_line(Json{{"fullUrl", url}}, resource.dump());
    }

    void add_line(const Json& name, const std::string& resource)
    {
        std::string line = name.dump(); // {"fullUrl":"..."}
        line.pop_back();
        entries_ += (entries_.empty() ? "\n" : ",\n") + line + ",\"resource\":" + resource + "}";
    }

    Json identifier(const std::string& at) const
    {
        return Json{{"system", fhir::diary_value_system},
                    {"value", record_ + "/diary.json" + (at.empty() ? "" : "#" + at)}};
    }

    void add_response()
    {
        Json json{{"resourceType", "QuestionnaireResponse"},
                  {"identifier", identifier("")},
                  {"questionnaire", std::string(fhir::questionnaire_url) + "|" +
                                        std::string(fhir::questionnaire_version)},
                  {"status", diary_.amendments.empty() ? "completed" : "amended"},
                  {"subject", reference(patient_)},
                  {"authored", diary_.journal.empty() ? last_said().substr(0, 10) : last_said()}};
        if (Json items = Response(scribe_).items(); !items.empty())
            json["item"] = std::move(items);
        add(response_, json);
    }

    /// When the answers were given; without a journal, no earlier than this. See fhir.h.
    std::string last_said()
    {
        if (diary_.journal.empty())
            return scribe_.time(whole_.latest, "/night");
        const auto last =
            std::max_element(diary_.journal.begin(), diary_.journal.end(),
                             [](const Entry& a, const Entry& b) { return a.number < b.number; });
        return scribe_.time(
            last->stamp.utc,
            pointer("/journal", static_cast<std::size_t>(last - diary_.journal.begin())) + "/utc");
    }

    /// From the earliest beginning to the latest end; where one is unknown, or they come in the
    /// wrong order, everything that the diary holds.
    Json period(std::optional<TimeRange> from, std::optional<TimeRange> to)
    {
        Instant begin = from ? from->earliest : whole_.earliest;
        Instant end = to ? to->latest : whole_.latest;
        if (begin > end) {
            begin = whole_.earliest;
            end = whole_.latest;
        }
        return Json{{"start", scribe_.time(begin, "/night")}, {"end", scribe_.time(end, "/night")}};
    }

    /// An Observation without its value, and its name among the entries.
    Json observation(const std::string& role, std::string_view code, const std::string& at,
                     Json when, const std::vector<std::string>& from = {})
    {
        Json json{
            {"resourceType", "Observation"},
            {"identifier", Json::array({identifier(at)})},
            {"status", diary_.amendments.empty() ? "final" : "amended"},
            {"category",
             Json::array({Json{
                 {"coding",
                  Json::array({Json{
                      {"system", "http://terminology.hl7.org/CodeSystem/observation-category"},
                      {"code", "survey"},
                      {"display", "Survey"}}})}}})},
            {"code", Json{{"coding", Json::array({fhir::coding(code)})}}},
            {"subject", reference(patient_)},
            {"effectivePeriod", std::move(when)}};
        // No LOINC code was found for the other measures.
        if (code == "tst")
            json["code"]["coding"].insert(
                json["code"]["coding"].begin(),
                Json{{"system", loinc}, {"code", "93832-4"}, {"display", "Sleep duration"}});
        json["method"] = Json{{"text", fhir::definition(code)}};
        json["derivedFrom"] = Json::array({reference(response_)});
        for (const std::string& other : from)
            json["derivedFrom"].push_back(reference(own_urn(other)));
        observations_.push_back(own_urn(role));
        return json;
    }

    static void component(Json& where, std::string_view code, const char* type, Json value,
                          const std::string& at)
    {
        if (!where.contains("component"))
            where["component"] = Json::array();
        where["component"].push_back(
            Json{{"id", at},
                 {"code", Json{{"coding", Json::array({fhir::coding(code)})}}},
                 {type, std::move(value)}});
    }

    void add_observations()
    {
        const Json estimated = estimate_to_json(estimate(diary_.night));
        add_measures(estimated["diary"]);
        add_bounds(estimated);
        add_verdict(estimated["verdict"]);
        for (std::size_t i = 0; i < estimated["lost"].size(); ++i)
            add_lost(estimated["lost"][i], i);
    }

    struct Measure {
        const char* key;
        const char* code;
        const char* unit; ///< empty for a count
        std::optional<TimeRange> from, to;
        std::vector<std::string> of; ///< the measures that it is worked out from
    };

    void add_measures(const Json& measures)
    {
        const Night& night = diary_.night;
        std::optional<TimeRange> asleep = night.lights_out;
        std::optional<TimeRange> tried = night.final_waking;
        if (asleep && night.asleep_after)
            asleep = TimeRange{asleep->earliest, asleep->latest + *night.asleep_after};
        if (tried && night.tried_after_waking)
            tried = TimeRange{tried->earliest, tried->latest + *night.tried_after_waking};
        const auto& out = night.lights_out;
        const auto& woke = night.final_waking;
        for (const Measure& each : {
                 Measure{"TIB", "tib", "min", night.into_bed, night.out_of_bed, {}},
                 Measure{"SOL", "sol", "min", out, asleep, {}},
                 Measure{"WASO", "waso", "min", out, woke, {}},
                 Measure{"awakenings", "awakenings", "", out, woke, {}},
                 Measure{"TST", "tst", "min", out, woke, {"sol", "waso"}},
                 Measure{"TASAFA", "tasafa", "min", woke, tried, {}},
                 Measure{"DSE", "dse", "min", out, tried, {"sol", "tst", "waso", "tasafa"}},
                 Measure{"SE_TIB", "se_tib", "%", night.into_bed, night.out_of_bed, {"tst", "tib"}},
                 Measure{"SE_DSE", "se_dse", "%", out, tried, {"tst", "dse"}},
             }) {
            if (!measures.contains(each.key))
                continue;
            Json json = observation(each.code, each.code,
                                    pointer("/estimate/diary", std::string_view(each.key)),
                                    period(each.from, each.to), each.of);
            const Json& value = measures[each.key];
            if (*each.unit == '\0')
                json["valueInteger"] = value;
            else
                json["valueQuantity"] = quantity(value, each.unit);
            add(own_urn(each.code), json);
        }
    }

    Json window_period() { return period(window_from(diary_.night), window_to(diary_.night)); }

    Json bounds(const std::string& role, std::string_view code, const Json& found,
                const std::string& at)
    {
        Json json = observation(role, code, at, window_period());
        for (const char* key : {"at_least", "best_guess", "at_most"})
            component(json, key, "valueQuantity", quantity(found[key], "min"),
                      pointer(at, std::string_view(key)));
        return json;
    }

    /// Where the window is unknown there are no bounds.
    void add_bounds(const Json& estimated)
    {
        if (!estimated["window"].contains("best_guess"))
            return;
        add(own_urn("window"), bounds("window", "window", estimated["window"], "/estimate/window"));
        std::size_t index = 0;
        for (const auto& [sensor, found] : estimated["sensors"].items()) {
            const std::string role = "sensor_on|" + sensor;
            Json json = bounds(role, "sensor_on", found, pointer("/estimate/sensors", sensor));
            component(json, "sensor", "valueString", sensor, pointer("/night/sensors", index++));
            add(own_urn(role), json);
        }
        Json usable = bounds("usable", "usable", estimated["needed"], "/estimate/needed");
        if (estimated["needed"].contains("chance_enough"))
            component(usable, "chance_enough", "valueQuantity",
                      quantity(estimated["needed"]["chance_enough"], "1"),
                      "/estimate/needed/chance_enough");
        component(usable, "need", "valueQuantity", minutes(diary_.night.need.minutes),
                  "/night/need/minutes");
        add(own_urn("usable"), usable);
        Json asleep = bounds("usable_asleep", "usable_asleep", estimated["needed_asleep"],
                             "/estimate/needed_asleep");
        for (std::size_t i = 0; i < estimated["wake_missing"].size(); ++i)
            component(asleep, "wake_missing", "valueString", estimated["wake_missing"][i],
                      pointer("/estimate/wake_missing", i));
        add(own_urn("usable_asleep"), asleep);
    }

    void add_verdict(const Json& word)
    {
        std::vector<std::string> from;
        if (word != "unknown")
            from.emplace_back("usable");
        Json json = observation("verdict", "verdict", "/estimate/verdict", window_period(), from);
        json["valueCodeableConcept"] =
            Json{{"coding", Json::array({fhir::coding(word.get<std::string>())})}};
        component(json, "need", "valueQuantity", minutes(diary_.night.need.minutes),
                  "/night/need/minutes");
        add(own_urn("verdict"), json);
    }

    void add_lost(const Json& loss, std::size_t index)
    {
        const std::string at = pointer("/estimate/lost", index);
        // By number: a sensor may be called late_start as well.
        const std::string role = "lost|" + std::to_string(index);
        Json json =
            observation(role, "lost", at, period(diary_.night.lights_out, diary_.night.lights_on));
        component(json, "cause", "valueString", loss["cause"], at + "/cause");
        component(json, "lost_minutes", "valueQuantity", quantity(loss["minutes"], "min"),
                  at + "/minutes");
        component(json, "lost_alone", "valueQuantity", quantity(loss["alone"], "min"),
                  at + "/alone");
        add(own_urn(role), json);
    }

    void add_contradictions(const Problems& found)
    {
        Json json{{"resourceType", "OperationOutcome"}, {"issue", Json::array()}};
        for (std::size_t i = 0; i < found.size(); ++i)
            json["issue"].push_back(Json{{"id", pointer("/problems", i)},
                                         {"severity", "error"},
                                         {"code", "business-rule"},
                                         {"details", Json{{"text", found[i].code}}},
                                         {"diagnostics", found[i].at + ": " + found[i].text}});
        add(own_urn("contradictions"), json);
    }

    static Json agent(std::string_view type, Json who)
    {
        return Json{
            {"type",
             Json{{"coding",
                   Json::array(
                       {Json{{"system",
                              "http://terminology.hl7.org/CodeSystem/provenance-participant-type"},
                             {"code", type}}})}}},
            {"who", std::move(who)}};
    }

    void add_provenance()
    {
        Json targets = Json::array({reference(response_)});
        for (const std::string& each : observations_)
            targets.push_back(reference(each));
        Json json{{"resourceType", "Provenance"},
                  {"target", std::move(targets)},
                  {"occurredPeriod", period(std::nullopt, std::nullopt)},
                  {"recorded", last_said()},
                  {"activity",
                   Json{{"text",
                         "Made from diary.json by fixed rules. The time recorded is the last that "
                         "the diary knows; no clock was read."}}},
                  {"agent", Json::array({agent("informant", reference(patient_)),
                                         agent("assembler", Json{{"display", "Evenfall"}})})},
                  {"entity", Json::array({Json{{"role", "source"},
                                               {"what", Json{{"identifier", identifier("")},
                                                             {"display", "diary.json"}}}}})}};
        add(own_urn("provenance"), json);
    }
};

} // namespace

Result<std::string> diary_fhir(const Diary& diary)
{
    const Result<DiaryStart> start = diary_start(diary);
    const Result<std::string> record = record_name(diary);
    if (!start || !record)
        return start.problems();
    return Bundler(diary, *start, *record).write();
}

} // namespace evenfall
