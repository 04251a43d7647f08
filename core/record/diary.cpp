// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "record/diary.h"

#include "estimate/contradictions.h"
#include "estimate/estimate_json.h"
#include "estimate/worlds.h"
#include "record/events.h"

#include <algorithm>
#include <limits>

namespace evenfall {
namespace {

constexpr const char* format_name = "evenfall.diary/1";

const char* origin_word(Origin origin)
{
    return origin == Origin::reported ? "reported" : "derived";
}

std::string time_text(Instant when, const Night& night)
{
    return format_time(when, night.offset_at(when));
}

/// A value beside its origin.
Json marked(Json value, Origin origin)
{
    return Json{{"value", std::move(value)}, {"origin", origin_word(origin)}};
}

Json start_json(const DiaryStart& start)
{
    return Json{{"value", format_time(start.at, start.offset)},
                {"basis", start.basis},
                {"origin", origin_word(Origin::derived)}};
}

std::string evening_text(const DiaryStart& start)
{
    const LocalTime local{start.at.time_since_epoch() + start.offset};
    return format_date(LocalTime(std::chrono::local_days(evening_of(local)).time_since_epoch()));
}

/// What follows from the night: its estimate, or its open contradictions. One of the two is empty.
struct Consequences {
    Json estimate;
    Json problems;
};

Consequences derive(const Night& night, bool with_chance = true)
{
    Consequences out;
    const Problems problems = contradictions(night);
    if (problems.empty()) {
        out.estimate = Json{{"origin", origin_word(Origin::derived)}};
        out.estimate.update(estimate_to_json(estimate(night, {.with_chance = with_chance})));
        return out;
    }
    out.problems = problems_to_json(problems)["problems"];
    for (Json& problem : out.problems)
        problem["origin"] = origin_word(Origin::derived);
    return out;
}

Json event_json(const DiaryEvent& event, const Night& night)
{
    Json json{{"at", time_range_json(event.at, night)}};
    if (event.length)
        json["minutes"] = minutes_json(*event.length);
    json["kind"] = event.kind;
    if (!event.subject.empty())
        json["subject"] = event.subject;
    if (!event.comment.empty())
        json["comment"] = event.comment;
    json["origin"] = origin_word(event.origin);
    return json;
}

Json entry_json(const Entry& entry)
{
    return Json{{"number", entry.number},
                {"utc", format_time(entry.stamp.utc, std::chrono::seconds(0))},
                {"offset_s", entry.stamp.offset.count()},
                {"zone", entry.stamp.zone},
                {"boot", entry.stamp.boot},
                {"since_boot_us", entry.stamp.since_boot.count()},
                {"kind", entry.kind},
                {"subject", entry.subject},
                {"value", entry.value},
                {"hash", entry.hash},
                {"origin", origin_word(Origin::reported)}};
}

Json amendment_json(const Amendment& amendment, const Night& night)
{
    Json changes = Json::array();
    for (const AmendedValue& one : amendment.changes) {
        Json change{{"at", one.at}};
        if (!one.before.is_null())
            change["before"] = one.before;
        if (!one.after.is_null())
            change["after"] = one.after;
        changes.push_back(std::move(change));
    }
    return Json{{"at", time_text(amendment.at, night)},
                {"by", amendment.by},
                {"why", amendment.why},
                {"changes", std::move(changes)},
                {"origin", origin_word(Origin::reported)}};
}

/// Checks what a type cannot: that every text can be carried and every kind is known.
class WriteCheck {
  public:
    explicit WriteCheck(const Diary& diary) : diary_(diary) {}

    Problems check()
    {
        if (!plain_study_code(diary_.of.code) || diary_.of.night < 1)
            add("no_visit", "/visit",
                "no study code and number of the night; right would be both, such as SM-0417 and "
                "1");
        else if (diary_.night.of != diary_.of)
            add("visit_differs", "/night/visit",
                "not the night of the diary; right would be the same code and number");
        const std::vector<std::string> pointers = value_pointers(diary_.night);
        for (const auto& [at, origin] : diary_.origins)
            if (std::find(pointers.begin(), pointers.end(), at) == pointers.end())
                add("no_such_value", "/night_origins", "the night has no value at " + at);
        if (diary_.kit)
            text(diary_.kit->label, "/kit/label");
        for (std::size_t i = 0; i < diary_.events.size(); ++i) {
            const std::string at = pointer("/events", i);
            if (!event_text(diary_.events[i].kind))
                add("unknown_kind", at + "/kind",
                    "\"" + diary_.events[i].kind + "\" is not a kind of event");
            text(diary_.events[i].subject, at + "/subject");
            text(diary_.events[i].comment, at + "/comment");
        }
        for (std::size_t i = 0; i < diary_.notes.size(); ++i)
            text(diary_.notes[i].text, pointer("/notes", i) + "/text");
        for (std::size_t i = 0; i < diary_.signal_checks.size(); ++i) {
            text(diary_.signal_checks[i].subject, pointer("/signal_checks", i) + "/subject");
            text(diary_.signal_checks[i].text, pointer("/signal_checks", i) + "/text");
        }
        if (diary_.paper)
            signature(diary_.paper->by, "/typed_from_paper/by");
        for (std::size_t i = 0; i < diary_.amendments.size(); ++i) {
            const Amendment& one = diary_.amendments[i];
            const std::string at = pointer("/amendments", i);
            signature(one.by, at + "/by");
            signature(one.why, at + "/why");
            if (one.changes.empty())
                add("empty", at + "/changes", "changes nothing; right would be at least one change");
        }
        return std::move(problems_);
    }

  private:
    const Diary& diary_;
    Problems problems_;

    void signature(const std::string& value, const std::string& at)
    {
        text(value, at);
        if (value.empty())
            add("empty", at, "empty; right would be who did this, and why");
    }

    void add(std::string code, std::string at, std::string text)
    {
        problems_.push_back({Fault::refused, std::move(code), std::move(at), std::move(text)});
    }
    void text(const std::string& value, const std::string& at)
    {
        if (!plain_text(value))
            add("bad_text", at,
                "not UTF-8, or a control character in it; right would be plain text");
    }
};

/// Reads evenfall.diary/1. What is derived is worked out again and compared at the end.
class DiaryReader {
  public:
    DiaryReader(const Json& json, Derived checked) : top_(json, "", problems_), checked_(checked) {}

    Result<Diary> read()
    {
        check_format(top_, format_name);
        read_visit();
        const Json* evening = top_.needed("evening");
        const Json* start = top_.needed("start");
        read_kit();
        const bool night_read = read_night_part();
        read_origins(night_read);
        read_events();
        read_answers();
        read_notes();
        read_signal_checks();
        read_journal();
        read_paper();
        read_amendments();
        const Json* estimate = top_.member("estimate");
        const Json* problems = top_.member("problems");
        if ((estimate != nullptr) == (problems != nullptr))
            top_.fault(estimate ? "problems" : "estimate", estimate ? "both_given" : "missing_key",
                       "right would be either an estimate or, for a night that contradicts itself, "
                       "its problems");
        top_.finish();
        if (!problems_.empty())
            return problems_;

        if (const Result<DiaryStart> begin = diary_start(diary_)) {
            compare(*evening, marked(evening_text(*begin), Origin::derived), "/evening");
            compare(*start, start_json(*begin), "/start");
        } else {
            problems_ = begin.problems(); // there was none before
        }
        Consequences derived = derive(diary_.night, checked_ == Derived::all_checked);
        if (checked_ == Derived::chance_as_written && estimate)
            take_chance(*estimate, derived.estimate);
        compare(estimate ? *estimate : Json(), derived.estimate, "/estimate");
        compare(problems ? *problems : Json(), derived.problems, "/problems");
        if (!problems_.empty())
            return problems_;
        return std::move(diary_);
    }

  private:
    Problems problems_;
    ObjectReader top_;
    Derived checked_;
    Diary diary_;

    /// A chance that can be one is taken over; anything else shows up as a difference.
    static void take_chance(const Json& given, Json& derived)
    {
        const Json::json_pointer at("/needed/chance_enough");
        if (given.contains(at) && given[at].is_number() && given[at].get<double>() >= 0 && given[at].get<double>() <= 1 &&
            derived.contains("needed") && !derived["needed"].empty())
            derived["needed"]["chance_enough"] = given[at];
    }

    void compare(const Json& given, const Json& derived, const std::string& at)
    {
        // The order of keys means nothing in JSON.
        const nlohmann::json difference =
            nlohmann::json::diff(nlohmann::json(given), nlohmann::json(derived));
        for (const auto& step : difference)
            problems_.push_back(
                {Fault::refused, "not_derived", at + step["path"].get<std::string>(),
                 "does not follow from what was reported; right would be " +
                     (step.contains("value") ? step["value"].dump() : "no such value")});
    }

    std::optional<Origin> origin(ObjectReader& reader, bool only_reported = false)
    {
        const auto word = only_reported ? reader.word("origin", {"reported"})
                                        : reader.word("origin", {"reported", "derived"});
        if (!word)
            return std::nullopt;
        return *word == "derived" ? Origin::derived : Origin::reported;
    }

    /// Free text; may be absent.
    std::string text(ObjectReader& reader, std::string_view key, bool must)
    {
        const std::string value = reader.text(key, must).value_or("");
        if (!plain_text(value))
            reader.fault(key, "bad_text", "a control character; right would be plain text");
        return value;
    }

    /// A string that may be empty.
    std::string any_string(ObjectReader& reader, std::string_view key)
    {
        const Json* json = reader.needed(key);
        if (json && !json->is_string())
            reader.fault(key, "wrong_type",
                         std::string("a ") + json->type_name() + "; right would be a string");
        return json && json->is_string() ? json->get<std::string>() : "";
    }

    std::optional<TimeRange> time(ObjectReader& reader, std::string_view key, bool must)
    {
        const Json* json = must ? reader.needed(key) : reader.member(key);
        return json ? read_time_range(*json, reader.at(key), diary_.night.zone.get(), problems_)
                    : std::nullopt;
    }

    void read_visit()
    {
        const Json* json = top_.needed("visit");
        if (!json)
            return;
        ObjectReader reader(*json, "/visit", problems_);
        diary_.of.code = reader.text("code").value_or("");
        diary_.of.night = reader.integer("night", 1, 99).value_or(1);
        origin(reader, true);
        reader.finish();
    }

    void read_kit()
    {
        const Json* json = top_.member("kit");
        if (!json)
            return;
        ObjectReader reader(*json, "/kit", problems_);
        KitOfNight kit;
        kit.id = reader.id("id").value_or("");
        kit.label = any_string(reader, "label");
        if (!plain_text(kit.label))
            reader.fault("label", "bad_text", "a control character; right would be plain text");
        origin(reader, true);
        reader.finish();
        diary_.kit = kit;
    }

    bool read_night_part()
    {
        const Json* json = top_.needed("night");
        if (!json)
            return false;
        Result<Night> night = night_from_json(*json, "/night");
        if (!night) {
            const Problems found = night.problems();
            problems_.insert(problems_.end(), found.begin(), found.end());
            return false;
        }
        diary_.night = *night;
        if (diary_.night.of != diary_.of)
            problems_.push_back(
                {Fault::refused, "visit_differs", "/night/visit",
                 "not the night of the diary; right would be the same code and number "
                 "as in /visit"});
        return true;
    }

    void read_origins(bool night_read)
    {
        const Json* json = top_.needed("night_origins");
        if (!json)
            return;
        ObjectReader reader(*json, "/night_origins", problems_);
        if (!night_read)
            return;
        for (const std::string& at : value_pointers(diary_.night)) {
            const auto word = reader.word(at, {"reported", "derived"});
            if (word && *word == "derived")
                diary_.origins[at] = Origin::derived;
        }
        reader.finish();
    }

    void read_events()
    {
        for (const auto& [json, at] : top_.elements("events", false)) {
            ObjectReader reader(*json, at, problems_);
            DiaryEvent event;
            event.at = time(reader, "at", true).value_or(TimeRange{});
            event.length = reader.minutes("minutes", false);
            event.kind = reader.id("kind").value_or("");
            if (!event.kind.empty() && !event_text(event.kind))
                reader.fault("kind", "unknown_kind",
                             "\"" + event.kind + "\" is not a kind of event");
            event.subject = text(reader, "subject", false);
            event.comment = text(reader, "comment", false);
            event.origin = origin(reader).value_or(Origin::reported);
            reader.finish();
            diary_.events.push_back(event);
        }
    }

    void read_answers()
    {
        for (const auto& [json, at] : top_.elements("answers", false)) {
            ObjectReader reader(*json, at, problems_);
            DiaryAnswer answer;
            answer.question = reader.id("question").value_or("");
            if (const Json* value = reader.needed("answer")) {
                answer.answer = *value;
                if (value->is_null())
                    reader.fault("answer", "wrong_type",
                                 "null; right would be the answer, or no such entry");
            }
            answer.origin = origin(reader).value_or(Origin::reported);
            reader.finish();
            diary_.answers.push_back(answer);
        }
    }

    void read_notes()
    {
        for (const auto& [json, at] : top_.elements("notes", false)) {
            ObjectReader reader(*json, at, problems_);
            DiaryNote note;
            note.at = time(reader, "at", false);
            note.text = text(reader, "text", true);
            origin(reader, true);
            reader.finish();
            diary_.notes.push_back(note);
        }
    }

    void read_signal_checks()
    {
        for (const auto& [json, at] : top_.elements("signal_checks", false)) {
            ObjectReader reader(*json, at, problems_);
            SignalCheck check;
            check.at = instant(reader, "at");
            check.kind = reader.id("kind").value_or("");
            check.subject = text(reader, "subject", false);
            check.text = text(reader, "text", false);
            origin(reader, true);
            reader.finish();
            diary_.signal_checks.push_back(check);
        }
    }

    /// One time that is no range.
    Instant instant(ObjectReader& reader, std::string_view key)
    {
        const TimeRange when = time(reader, key, true).value_or(TimeRange{});
        if (!when.exact())
            reader.fault(key, "bad_time", "a range; right would be one time");
        return when.earliest;
    }

    void read_paper()
    {
        const Json* json = top_.member("typed_from_paper");
        if (!json)
            return;
        ObjectReader reader(*json, "/typed_from_paper", problems_);
        TypedFromPaper paper;
        paper.by = text(reader, "by", true);
        paper.at = instant(reader, "at");
        origin(reader, true);
        reader.finish();
        diary_.paper = paper;
    }

    void read_amendments()
    {
        for (const auto& [json, at] : top_.elements("amendments", false)) {
            ObjectReader reader(*json, at, problems_);
            Amendment amendment;
            amendment.at = instant(reader, "at");
            amendment.by = text(reader, "by", true);
            amendment.why = text(reader, "why", true);
            for (const auto& [change, change_at] : reader.elements("changes")) {
                ObjectReader one(*change, change_at, problems_);
                AmendedValue value;
                value.at = one.text("at").value_or("");
                if (const Json* before = one.member("before"))
                    value.before = *before;
                if (const Json* after = one.member("after"))
                    value.after = *after;
                if (value.before == value.after)
                    one.fault("after", "no_change", "the same as before; right would be a change",
                              Fault::refused);
                one.finish();
                amendment.changes.push_back(std::move(value));
            }
            if (reader.has("changes") && amendment.changes.empty())
                reader.fault("changes", "empty", "right would be at least one change");
            origin(reader, true);
            reader.finish();
            diary_.amendments.push_back(std::move(amendment));
        }
    }

    void read_journal()
    {
        constexpr long most = std::numeric_limits<long>::max();
        for (const auto& [json, at] : top_.elements("journal", false)) {
            ObjectReader reader(*json, at, problems_);
            Entry entry;
            entry.number = reader.integer("number", 1, most).value_or(1);
            entry.stamp.utc = instant(reader, "utc");
            entry.stamp.offset =
                std::chrono::seconds(reader.integer("offset_s", -86400, 86400).value_or(0));
            entry.stamp.zone = any_string(reader, "zone");
            entry.stamp.boot = any_string(reader, "boot");
            entry.stamp.since_boot = Span(reader.integer("since_boot_us", 0, most).value_or(0));
            entry.kind = any_string(reader, "kind");
            entry.subject = any_string(reader, "subject");
            entry.value = any_string(reader, "value");
            entry.hash = any_string(reader, "hash");
            origin(reader, true);
            reader.finish();
            diary_.journal.push_back(entry);
        }
    }
};

} // namespace

bool plain_text(std::string_view text)
{
    std::size_t i = 0;
    const auto follows = [&](std::size_t at, unsigned char least, unsigned char most) {
        return at < text.size() && static_cast<unsigned char>(text[at]) >= least &&
               static_cast<unsigned char>(text[at]) <= most;
    };
    while (i < text.size()) {
        const auto c = static_cast<unsigned char>(text[i]);
        if (c < 0x80) {
            if ((c < 0x20 && c != '\t' && c != '\n' && c != '\r') || c == 0x7f)
                return false;
            ++i;
            continue;
        }
        // Well-formed sequences only: no overlong forms, no surrogates (Unicode, table 3-7).
        const std::size_t more = c >= 0xc2 && c <= 0xdf   ? 1
                                 : c >= 0xe0 && c <= 0xef ? 2
                                 : c >= 0xf0 && c <= 0xf4 ? 3
                                                          : 0;
        if (more == 0)
            return false;
        const unsigned char least = c == 0xe0 ? 0xa0 : c == 0xf0 ? 0x90 : 0x80;
        const unsigned char most = c == 0xed ? 0x9f : c == 0xf4 ? 0x8f : 0xbf;
        if (!follows(i + 1, least, most))
            return false;
        for (std::size_t k = 2; k <= more; ++k)
            if (!follows(i + k, 0x80, 0xbf))
                return false;
        i += more + 1;
    }
    return true;
}

std::vector<std::string> value_pointers(const Night& night)
{
    std::vector<std::string> out;
    const auto add = [&](bool there, const std::string& at) {
        if (there)
            out.push_back(at);
    };
    add(night.zone != nullptr, "/zone");
    add(true, "/sensors");
    add(true, "/need/minutes");
    add(true, "/need/groups");
    add(night.recording_from.has_value(), "/recording/from");
    add(night.recording_to.has_value(), "/recording/to");
    add(night.into_bed.has_value(), "/into_bed");
    add(night.lights_out.has_value(), "/lights_out");
    add(night.asleep_after.has_value(), "/asleep_after_min");
    add(night.final_waking.has_value(), "/final_waking");
    add(night.lights_on.has_value(), "/lights_on");
    add(night.out_of_bed.has_value(), "/out_of_bed");
    add(night.tried_after_waking.has_value(), "/tried_to_sleep_after_waking_min");
    add(night.slept.has_value(), "/slept_min");
    add(night.awake && night.awake->empty(), "/awake"); // "none" is an answer too
    for (std::size_t i = 0; night.awake && i < night.awake->size(); ++i) {
        add(true, pointer("/awake", i) + "/from");
        add((*night.awake)[i].to.has_value(), pointer("/awake", i) + "/to");
        add((*night.awake)[i].length.has_value(), pointer("/awake", i) + "/minutes");
    }
    add(night.awake_untimed.has_value(), "/awake_untimed/times");
    add(night.awake_untimed.has_value(), "/awake_untimed/minutes");
    for (std::size_t i = 0; i < night.off.size(); ++i) {
        add(true, pointer("/off", i) + "/from"); // null means something here
        add(true, pointer("/off", i) + "/to");
    }
    return out;
}

Result<DiaryStart> diary_start(const Diary& diary)
{
    const Night& night = diary.night;
    std::optional<Instant> at;
    std::string basis = "first_entry";
    if (night.recording_from) {
        at = night.recording_from->middle();
        basis = "recording_from";
    } else if (night.lights_out) {
        at = night.lights_out->middle();
        basis = "lights_out";
    } else {
        const auto consider = [&](const std::optional<TimeRange>& when) {
            if (when)
                at = earlier_of(at, when->earliest);
        };
        for (const auto& when : {night.into_bed, night.recording_to, night.final_waking,
                                 night.lights_on, night.out_of_bed})
            consider(when);
        for (const Removal& removal : night.off) {
            consider(removal.from);
            consider(removal.to);
        }
        if (night.awake)
            for (const Awakening& awakening : *night.awake)
                consider(awakening.from);
        for (const DiaryEvent& event : diary.events)
            consider(event.at);
        for (const DiaryNote& note : diary.notes)
            consider(note.at);
        for (const SignalCheck& check : diary.signal_checks)
            consider(TimeRange::exactly(check.at));
        for (const Entry& entry : diary.journal)
            consider(TimeRange::exactly(entry.stamp.utc));
    }
    if (!at)
        return Problem{Fault::refused, "no_dated_entry", "/night",
                       "nothing in this night has a time; right would be at least one, such as "
                       "lights_out"};
    DiaryStart start;
    start.at = std::chrono::floor<std::chrono::seconds>(*at);
    start.offset = night.offset_at(start.at);
    start.basis = basis;
    return start;
}

Result<std::string> diary_evening(const Diary& diary)
{
    const Result<DiaryStart> start = diary_start(diary);
    if (!start)
        return start.problems();
    return evening_text(*start);
}

Result<std::string> record_name(const Diary& diary)
{
    const Result<std::string> evening = diary_evening(diary);
    if (!evening)
        return evening.problems();
    const std::string name = diary.of.code + "_night-" + std::to_string(diary.of.night) + "_" + *evening;
    return diary.amendments.empty() ? name : name + "_amended-" + std::to_string(diary.amendments.size());
}

Result<Diary> diary_from_night(const Night& night)
{
    if (!night.of)
        return Problem{Fault::refused, "no_visit", "/visit",
                       "a record needs to know whose night it is; right would be "
                       "{\"code\": \"SM-0417\", \"night\": 1}"};
    Diary diary;
    diary.of = *night.of;
    diary.night = night;
    const Result<DiaryStart> start = diary_start(diary);
    if (!start) {
        Problem problem = start.problems()[0];
        problem.at.clear();
        return problem;
    }
    return diary;
}

Result<Diary> read_diary(std::string_view json_text)
{
    const Result<Json> json = parse_json(json_text);
    if (!json)
        return json.problems();
    return diary_from_json(*json);
}

Result<Diary> diary_from_json(const Json& json, Derived derived)
{
    if (!json.is_object())
        return Problem{Fault::malformed, "wrong_type", "",
                       std::string("a ") + json.type_name() + "; right would be an object"};
    return DiaryReader(json, derived).read();
}

Result<std::string> diary_to_json(const Diary& diary)
{
    const Problems problems = WriteCheck(diary).check();
    if (!problems.empty())
        return problems;
    const Result<DiaryStart> start = diary_start(diary);
    if (!start)
        return start.problems();
    const Night& night = diary.night;
    const char* reported = origin_word(Origin::reported);

    Json json;
    json["format"] = format_name;
    json["visit"] = Json{{"code", diary.of.code}, {"night", diary.of.night}, {"origin", reported}};
    json["evening"] = marked(evening_text(*start), Origin::derived);
    json["start"] = start_json(*start);
    if (diary.kit)
        json["kit"] =
            Json{{"id", diary.kit->id}, {"label", diary.kit->label}, {"origin", reported}};
    json["night"] = night_to_json(night);
    json["night_origins"] = Json::object();
    for (const std::string& at : value_pointers(night)) {
        const auto found = diary.origins.find(at);
        json["night_origins"][at] =
            origin_word(found == diary.origins.end() ? Origin::reported : found->second);
    }
    const auto list = [&](const char* key, const auto& values, const auto& make) {
        if (values.empty())
            return;
        json[key] = Json::array();
        for (const auto& value : values)
            json[key].push_back(make(value));
    };
    list("events", diary.events, [&](const DiaryEvent& event) { return event_json(event, night); });
    list("answers", diary.answers, [&](const DiaryAnswer& answer) {
        return Json{{"question", answer.question},
                    {"answer", answer.answer},
                    {"origin", origin_word(answer.origin)}};
    });
    list("notes", diary.notes, [&](const DiaryNote& note) {
        Json one = Json::object();
        if (note.at)
            one["at"] = time_range_json(*note.at, night);
        one["text"] = note.text;
        one["origin"] = reported;
        return one;
    });
    list("signal_checks", diary.signal_checks, [&](const SignalCheck& check) {
        Json one{{"at", time_text(check.at, night)}, {"kind", check.kind}};
        if (!check.subject.empty())
            one["subject"] = check.subject;
        if (!check.text.empty())
            one["text"] = check.text;
        one["origin"] = reported;
        return one;
    });
    list("journal", diary.journal, entry_json);
    if (diary.paper)
        json["typed_from_paper"] = Json{{"by", diary.paper->by}, {"at", time_text(diary.paper->at, night)}, {"origin", reported}};
    list("amendments", diary.amendments, [&](const Amendment& one) { return amendment_json(one, night); });
    Consequences derived = derive(night);
    if (!derived.estimate.is_null())
        json["estimate"] = std::move(derived.estimate);
    else
        json["problems"] = std::move(derived.problems);
    try {
        return json.dump(2) + "\n";
    } catch (const Json::exception&) {
        return Problem{Fault::refused, "bad_text", "",
                       "a text that is not UTF-8; right would be UTF-8 everywhere"};
    }
}

} // namespace evenfall
