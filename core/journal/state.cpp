// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "journal/state.h"

#include "journal/kinds.h"
#include "journal/timeline.h"

#include <algorithm>
#include <array>

namespace evenfall {
namespace {

constexpr std::array night_kinds{kinds::awake, kinds::asleep, kinds::up, kinds::back, kinds::off, kinds::on, kinds::all_on};

Json value_of(const Entry& entry)
{
    Result<Json> value = parse_json(entry.value);
    return value ? std::move(value.value()) : Json();
}

std::string text_of(const Json& object, const char* key)
{
    return object.contains(key) && object[key].is_string() ? object[key].get<std::string>() : "";
}

/// Numbers of entries that a later entry took back.
std::set<std::int64_t> undone(const std::vector<Entry>& entries)
{
    std::set<std::int64_t> out;
    for (const Entry& entry : entries) {
        if (entry.kind != kinds::undo)
            continue;
        if (const Json value = value_of(entry); value.is_number_integer())
            out.insert(value.get<std::int64_t>());
    }
    return out;
}

void begin_night(NightState& state, const Entry& entry, Instant at)
{
    state = NightState{};
    state.begun = true;
    state.begun_at = at;
    state.code = entry.subject;
    const Json value = value_of(entry);
    if (!value.is_object())
        return;
    if (value.contains("night") && value["night"].is_number_integer())
        state.night = value["night"].get<long>();
    if (value.contains("paper") && value["paper"].is_object())
        state.paper = PaperNight{text_of(value["paper"], "by"), text_of(value["paper"], "evening")};
}

void take_back_tick(NightState& state, const Entry& entry)
{
    const Json list = value_of(entry);
    std::set<std::string>& ticks = list == kinds::item ? state.items : list == kinds::check ? state.checked : state.packed;
    ticks.erase(entry.subject);
}

void take_signal(NightState& state, const Entry& entry, Instant at)
{
    if (value_of(entry) == "started")
        state.signal_notes.push_back({entry.subject, at, std::nullopt});
    else if (!state.signal_notes.empty() && state.signal_notes.back().task == entry.subject)
        state.signal_notes.back().ended = at;
}

void take(NightState& state, const Entry& entry, Instant at, const std::string& last_plug)
{
    const std::string& kind = entry.kind;
    if (kind == kinds::night)
        begin_night(state, entry, at);
    else if (kind == kinds::page) {
        state.page = entry.subject;
        state.page_since = at;
    } else if (kind == kinds::language)
        state.language = entry.subject;
    else if (kind == kinds::first)
        state.first_some = entry.subject == "some";
    else if (kind == kinds::called)
        state.called = true;
    else if (kind == kinds::item)
        state.items.insert(entry.subject);
    else if (kind == kinds::step) {
        state.steps[entry.subject] = at;
        if (entry.subject.starts_with("start.") || (!last_plug.empty() && entry.subject == last_plug))
            state.started_at = at;
    } else if (kind == kinds::check)
        state.checked.insert(entry.subject);
    else if (kind == kinds::light) {
        state.light = entry.subject;
        state.lights.push_back({entry.subject, at});
    } else if (kind == kinds::lights_out)
        state.lights_out = at;
    else if (kind == kinds::up_for_day)
        state.up_for_day = at;
    else if (kind == kinds::answer) {
        state.answers[entry.subject] = value_of(entry);
        state.drafts.erase(entry.subject);
    } else if (kind == kinds::draft)
        state.drafts[entry.subject] = value_of(entry);
    else if (kind == kinds::stopped)
        state.stopped = at;
    else if (kind == kinds::packed)
        state.packed.insert(entry.subject);
    else if (kind == kinds::skin) {
        state.skin = entry.subject;
        state.skin_at = at;
    } else if (kind == kinds::skin_again)
        state.skin_again = entry.subject;
    else if (kind == kinds::build)
        state.build = entry.subject;
    else if (kind == kinds::read_to_me)
        state.read_to_me = entry.subject == "on";
    else if (kind == kinds::night_sound)
        state.night_sound = entry.subject == "on";
    else if (kind == kinds::not_yet)
        take_back_tick(state, entry);
    else if (kind == kinds::signal)
        take_signal(state, entry, at);
    else if (kind == kinds::amend) {
        const Json why = value_of(entry);
        state.amendments.push_back({entry.subject, why.is_string() ? why.get<std::string>() : "", at, entry.number});
        state.amending = true;
    } else if (kind == kinds::given_up)
        state.given_up = true;
    else if (kind == kinds::record) {
        state.record = entry.subject;
        state.amending = false;
    }
    else if (std::find(night_kinds.begin(), night_kinds.end(), kind) != night_kinds.end())
        state.notes.push_back({entry.number, kind, entry.subject, at});
}

} // namespace

NightState replay(const std::vector<Entry>& entries, const std::string& last_plug)
{
    const Timeline timeline = timeline_of(entries);
    const std::set<std::int64_t> taken_back = undone(entries);
    NightState state;
    for (size_t i = 0; i < entries.size(); ++i) {
        if (taken_back.contains(entries[i].number))
            continue;
        const bool rebooted = i > 0 && entries[i].kind == kinds::opened && entries[i].stamp.boot != entries[i - 1].stamp.boot;
        if (rebooted && state.lights_out && !state.up_for_day)
            state.gaps.push_back({std::min(timeline.at[i - 1], timeline.at[i]), timeline.at[i]});
        take(state, entries[i], timeline.at[i], last_plug);
    }
    return state;
}

const Json* NightState::draft(std::string_view question) const
{
    const auto found = drafts.find(std::string(question));
    return found == drafts.end() ? nullptr : &found->second;
}

bool NightState::awake_now() const
{
    bool awake = false;
    for (const NightNote& note : notes) {
        if (note.kind == kinds::awake)
            awake = true;
        if (note.kind == kinds::asleep)
            awake = false;
    }
    return awake;
}

bool NightState::out_of_bed() const
{
    bool out = false;
    for (const NightNote& note : notes) {
        if (note.kind == kinds::up)
            out = true;
        if (note.kind == kinds::back)
            out = false;
    }
    return out;
}

std::set<std::string> NightState::off_now() const
{
    std::set<std::string> off;
    for (const NightNote& note : notes) {
        if (note.kind == kinds::off && !note.subject.empty())
            off.insert(note.subject);
        if (note.kind == kinds::on)
            off.erase(note.subject);
        if (note.kind == kinds::all_on)
            off.clear();
    }
    return off;
}

} // namespace evenfall
