// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "answers/morning.h"

#include "answers/questions.h"
#include "journal/kinds.h"

#include <algorithm>
#include <array>
#include <map>

namespace evenfall {
namespace {

/// The morning's own small language for ranges in the journal: always two ends.
Json range_json(const TimeRange& range, std::chrono::seconds offset)
{
    if (range.exact())
        return format_time(range.earliest, offset);
    return Json{{"earliest", format_time(range.earliest, offset)}, {"latest", format_time(range.latest, offset)}};
}

std::optional<Instant> instant_of(const Json& json)
{
    if (!json.is_string())
        return std::nullopt;
    const Result<WrittenTime> written = parse_time(json.get_ref<const std::string&>());
    if (!written)
        return std::nullopt;
    const Result<Instant> instant = resolve(*written, nullptr);
    return instant ? std::optional(*instant) : std::nullopt;
}

std::optional<TimeRange> range_of(const Json& json)
{
    if (json.is_string()) {
        const std::optional<Instant> point = instant_of(json);
        return point ? std::optional(TimeRange::exactly(*point)) : std::nullopt;
    }
    if (!json.is_object() || !json.contains("earliest") || !json.contains("latest"))
        return std::nullopt;
    const std::optional<Instant> earliest = instant_of(json["earliest"]);
    const std::optional<Instant> latest = instant_of(json["latest"]);
    if (!earliest || !latest || *earliest > *latest)
        return std::nullopt;
    return TimeRange{*earliest, *latest};
}

bool is_skipped(const Json& json) { return json.is_object() && json.contains("skipped"); }

std::optional<Span> span_of(const Json& object, const char* key)
{
    if (!object.is_object() || !object.contains(key) || !object[key].is_number())
        return std::nullopt;
    return std::chrono::round<Span>(std::chrono::duration<double, std::ratio<60>>(object[key].get<double>()));
}

/// Moments of the night at which the person is known to have done something, in order.
std::vector<Instant> moments(const NightState& state)
{
    std::vector<Instant> out;
    for (const NightNote& note : state.notes)
        out.push_back(note.at);
    if (state.up_for_day)
        out.push_back(*state.up_for_day);
    std::sort(out.begin(), out.end());
    return out;
}

/// An awakening that began and has no noted end lies between its beginning and the next sign of life.
TimeRange open_end(const NightState& state, Instant from)
{
    for (const Instant moment : moments(state)) {
        if (moment > from)
            return {from, moment};
    }
    return TimeRange::exactly(from);
}

/// Pairs the notes of one kind of beginning with those that end it.
struct Pairing {
    std::string_view begins, ends;
    std::vector<Instant> open; ///< at most one

    /// True when this note left an earlier beginning without its end.
    bool take(const NightNote& note, const NightState& state, std::vector<Awakening>& found)
    {
        const bool again = note.kind == begins && !open.empty();
        if (again || (note.kind == ends && !open.empty())) {
            const Instant from = open.back();
            found.push_back({TimeRange::exactly(from), again ? open_end(state, from) : TimeRange::exactly(note.at), std::nullopt});
            open.clear();
        }
        if (note.kind == begins)
            open.push_back(note.at);
        return again;
    }
};

std::vector<Awakening> noted_awakenings(const NightState& state, std::vector<Instant>& forgotten_back)
{
    std::vector<Awakening> found;
    Pairing awake{kinds::awake, kinds::asleep, {}};
    Pairing up{kinds::up, kinds::back, {}};
    for (const NightNote& note : state.notes) {
        awake.take(note, state, found);
        const std::vector<Instant> before = up.open;
        if (up.take(note, state, found))
            forgotten_back.insert(forgotten_back.end(), before.begin(), before.end());
    }
    forgotten_back.insert(forgotten_back.end(), up.open.begin(), up.open.end());
    for (const Pairing& left : {awake, up}) {
        for (const Instant from : left.open)
            found.push_back({TimeRange::exactly(from), open_end(state, from), std::nullopt});
    }

    // Up while noted awake is one awakening, not two.
    std::sort(found.begin(), found.end(), [](const Awakening& a, const Awakening& b) { return a.from.earliest < b.from.earliest; });
    std::vector<Awakening> merged;
    for (const Awakening& one : found) {
        if (!merged.empty() && one.from.earliest <= merged.back().to->earliest) {
            merged.back().to->earliest = std::max(merged.back().to->earliest, one.to->earliest);
            merged.back().to->latest = std::max(merged.back().to->latest, one.to->latest);
        } else {
            merged.push_back(one);
        }
    }
    return merged;
}

std::vector<Removal> noted_removals(const NightState& state)
{
    std::vector<Removal> out;
    std::map<std::string, size_t> open;    // part -> its removal that has no end yet
    std::map<std::string, Instant> put_on; // part -> last known to be on, by itself
    std::optional<Instant> all_on = state.lights_out;
    for (const NightNote& note : state.notes) {
        if (note.kind == kinds::off && note.subject.empty())
            continue; // which one is for the morning to say
        if (note.kind == kinds::off && !open.contains(note.subject)) {
            Instant known = all_on.value_or(note.at);
            if (const auto own = put_on.find(note.subject); own != put_on.end())
                known = std::max(known, own->second);
            open[note.subject] = out.size();
            out.push_back({note.subject, TimeRange{std::min(known, note.at), note.at}, std::nullopt});
        } else if (note.kind == kinds::on && open.contains(note.subject)) {
            out[open[note.subject]].to = TimeRange::exactly(note.at);
            open.erase(note.subject);
            put_on[note.subject] = note.at;
        } else if (note.kind == kinds::all_on) {
            for (const auto& [part, index] : open)
                out[index].to = TimeRange{out[index].from->latest, note.at};
            open.clear();
            all_on = note.at;
        }
    }
    return out;
}

template <class T>
void from_notes(Answer<T>& answer, std::optional<T> value)
{
    if (value)
        answer = {std::move(value), Source::notes, false};
}

/// Lays the person's answer over what the notes say.
template <class T, class Read>
void from_person(Answer<T>& answer, const NightState& state, std::string_view question, Read read)
{
    const auto found = state.answers.find(std::string(question));
    if (found == state.answers.end())
        return;
    if (is_skipped(found->second))
        answer = {std::nullopt, Source::person, true};
    else if (std::optional<T> value = read(found->second))
        answer = {std::move(value), Source::person, false};
}

std::optional<std::vector<Awakening>> awakenings_of(const Json& json)
{
    if (!json.is_object() || !json.contains("events") || !json["events"].is_array())
        return std::nullopt;
    std::vector<Awakening> out;
    for (const Json& one : json["events"]) {
        const std::optional<TimeRange> from = one.is_object() && one.contains("from") ? range_of(one["from"]) : std::nullopt;
        if (!from)
            continue;
        Awakening awakening{*from, std::nullopt, std::nullopt};
        if (one.contains("to"))
            awakening.to = range_of(one["to"]);
        else
            awakening.length = span_of(one, "minutes");
        if (awakening.to || awakening.length)
            out.push_back(awakening);
    }
    return out;
}

std::optional<UntimedAwakenings> untimed_of(const Json& json)
{
    if (!json.is_object() || !json.contains("untimed") || !json["untimed"].is_object())
        return std::nullopt;
    const Json& untimed = json["untimed"];
    const std::optional<Span> total = span_of(untimed, "minutes");
    if (!total || !untimed.contains("times") || !untimed["times"].is_number_integer())
        return std::nullopt;
    return UntimedAwakenings{untimed["times"].get<long>(), *total};
}

std::optional<std::vector<Removal>> removals_of(const Json& json)
{
    if (!json.is_object() || !json.contains("events") || !json["events"].is_array())
        return std::nullopt;
    std::vector<Removal> out;
    for (const Json& one : json["events"]) {
        if (!one.is_object() || !one.contains("sensor") || !one["sensor"].is_string())
            continue;
        Removal removal{one["sensor"].get<std::string>(), std::nullopt, std::nullopt};
        if (one.contains("from"))
            removal.from = range_of(one["from"]);
        if (one.contains("to"))
            removal.to = range_of(one["to"]);
        out.push_back(std::move(removal));
    }
    return out;
}

using TimeMember = Answer<TimeRange> Morning::*;
constexpr std::array<std::pair<std::string_view, TimeMember>, 5> time_members{{
    {questions::into_bed, &Morning::into_bed},
    {questions::lights_out, &Morning::lights_out},
    {questions::final_waking, &Morning::final_waking},
    {questions::lights_on, &Morning::lights_on},
    {questions::out_of_bed, &Morning::out_of_bed},
}};

using AmountMember = Answer<Span> Morning::*;
constexpr std::array<std::pair<std::string_view, AmountMember>, 3> amount_members{{
    {questions::asleep_after, &Morning::asleep_after},
    {questions::tried_after_waking, &Morning::tried_after_waking},
    {questions::slept, &Morning::slept},
}};

std::optional<std::string> word_of(const Json& json)
{
    if (!json.is_object() || !json.contains("word") || !json["word"].is_string())
        return std::nullopt;
    return json["word"].get<std::string>();
}

/// What the taps alone say.
Morning morning_of_notes(const NightState& state)
{
    Morning morning;
    const auto exactly = [](const std::optional<Instant>& at) {
        return at ? std::optional(TimeRange::exactly(*at)) : std::nullopt;
    };
    from_notes(morning.lights_out, exactly(state.lights_out));
    from_notes(morning.into_bed, exactly(state.lights_out));
    from_notes(morning.final_waking, exactly(state.up_for_day));
    from_notes(morning.lights_on, exactly(state.up_for_day));
    from_notes(morning.out_of_bed, exactly(state.up_for_day));
    for (const NightNote& note : state.notes)
        if (note.kind == kinds::off && note.subject.empty())
            morning.unnamed_off.push_back(note.at);
    std::vector<Awakening> awakenings = noted_awakenings(state, morning.forgotten_back);
    if (!awakenings.empty())
        from_notes(morning.awake, std::optional(std::move(awakenings)));
    if (!state.paper) // on paper nothing was noted: that is not the same as nothing came off
        from_notes(morning.off, std::optional(noted_removals(state)));
    return morning;
}

bool within_a_minute(const TimeRange& answer, const TimeRange& tap)
{
    constexpr std::chrono::minutes minute{1};
    return answer.earliest - minute < tap.latest && tap.earliest < answer.latest + minute;
}

} // namespace

const Answer<TimeRange>& Morning::time(std::string_view question) const
{
    for (const auto& [id, member] : time_members) {
        if (id == question)
            return this->*member;
    }
    return out_of_bed;
}

const Answer<Span>& Morning::amount(std::string_view question) const
{
    for (const auto& [id, member] : amount_members) {
        if (id == question)
            return this->*member;
    }
    return asleep_after;
}

Morning morning_of(const NightState& state)
{
    Morning morning = morning_of_notes(state);
    for (const auto& [question, member] : time_members)
        from_person(morning.*member, state, question, range_of);
    for (const auto& [question, member] : amount_members)
        from_person(morning.*member, state, question, [](const Json& json) { return span_of(json, "minutes"); });
    from_person(morning.awake, state, questions::awake, awakenings_of);
    from_person(morning.awake_untimed, state, questions::awake, untimed_of);
    from_person(morning.off, state, questions::off, removals_of);
    from_person(morning.compare, state, questions::compare, word_of);
    from_person(morning.comment, state, questions::comment, word_of);
    return morning;
}

std::vector<ChangedNote> changed_notes(const NightState& state)
{
    const Morning noted = morning_of_notes(state);
    const Morning said = morning_of(state);
    std::vector<ChangedNote> out;
    const auto tap = [&](std::string_view question, const std::optional<Instant>& at) {
        const Answer<TimeRange>& answer = said.time(question);
        if (at && answer.source == Source::person &&
            !(answer.value && within_a_minute(*answer.value, TimeRange::exactly(*at))))
            out.push_back({std::string(question), "", TimeRange::exactly(*at)});
    };
    tap(questions::lights_out, state.lights_out);
    for (const Awakening& one : noted.awake.value.value_or(std::vector<Awakening>{})) {
        const std::vector<Awakening> answered = said.awake.value.value_or(std::vector<Awakening>{});
        const bool stands = std::any_of(answered.begin(), answered.end(), [&one](const Awakening& other) {
            return within_a_minute(other.from, one.from);
        });
        if (!stands)
            out.push_back({std::string(questions::awake), "", one.from});
    }
    for (const Removal& one : noted.off.value.value_or(std::vector<Removal>{})) {
        const std::vector<Removal> answered = said.off.value.value_or(std::vector<Removal>{});
        const bool stands = std::any_of(answered.begin(), answered.end(), [&one](const Removal& other) {
            return other.sensor == one.sensor && (!other.from || within_a_minute(*other.from, *one.from));
        });
        if (!stands)
            out.push_back({std::string(questions::off), one.sensor, *one.from});
    }
    tap(questions::lights_on, state.up_for_day);
    return out;
}

Night night_of(const NightState& state, const Visit& visit, const Kit& kit)
{
    const Morning morning = morning_of(state);
    Night night;
    night.of = NightOf{visit.code, state.night};
    night.zone = visit.zone;
    night.sensors = kit.sensors();
    night.need.minutes = visit.need;
    for (const std::string& id : visit.need_signals) {
        if (const Signal* signal = kit.signal(id))
            night.need.groups.push_back(signal->sensors);
    }
    // The light that shows recording was seen; it began no earlier than the start. Any other light
    // says nothing of a recording, and none that came later takes it back.
    const auto recording = std::find_if(state.lights.begin(), state.lights.end(), [&](const SeenLight& seen) {
        return std::any_of(kit.lights.begin(), kit.lights.end(), [&seen](const Light& one) {
            return one.meaning == Light::Meaning::recording && one.id == seen.light;
        });
    });
    if (recording != state.lights.end())
        night.recording_from = TimeRange{std::min(state.started_at.value_or(recording->at), recording->at), recording->at};
    if (state.stopped)
        night.recording_to = TimeRange::exactly(*state.stopped);
    night.into_bed = morning.into_bed.value;
    night.lights_out = morning.lights_out.value;
    night.final_waking = morning.final_waking.value;
    night.lights_on = morning.lights_on.value;
    night.out_of_bed = morning.out_of_bed.value;
    night.asleep_after = morning.asleep_after.value;
    night.tried_after_waking = morning.tried_after_waking.value;
    night.slept = morning.slept.value;
    night.awake = morning.awake.value;
    night.awake_untimed = morning.awake_untimed.value;
    if (morning.off.value)
        night.off = *morning.off.value;
    return night;
}

Json time_answer(const TimeRange& range, std::chrono::seconds offset) { return range_json(range, offset); }

Json minutes_answer(Span span) { return Json{{"minutes", minutes_json(span)}}; }

Json awake_answer(const std::vector<Awakening>& timed, const std::optional<UntimedAwakenings>& untimed, std::chrono::seconds offset)
{
    Json events = Json::array();
    for (const Awakening& one : timed) {
        Json event{{"from", range_json(one.from, offset)}};
        if (one.to)
            event["to"] = range_json(*one.to, offset);
        else if (one.length)
            event["minutes"] = minutes_json(*one.length);
        events.push_back(std::move(event));
    }
    Json out{{"events", std::move(events)}};
    if (untimed)
        out["untimed"] = Json{{"times", untimed->times}, {"minutes", minutes_json(untimed->total)}};
    return out;
}

Json off_answer(const std::vector<Removal>& removals, std::chrono::seconds offset)
{
    Json events = Json::array();
    for (const Removal& one : removals) {
        Json event{{"sensor", one.sensor}};
        if (one.from)
            event["from"] = range_json(*one.from, offset);
        if (one.to)
            event["to"] = range_json(*one.to, offset);
        events.push_back(std::move(event));
    }
    return Json{{"events", std::move(events)}};
}

Json word_answer(const std::string& word) { return Json{{"word", word}}; }

Json skipped_answer() { return Json{{"skipped", true}}; }

} // namespace evenfall
