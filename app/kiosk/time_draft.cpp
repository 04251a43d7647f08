// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/time_draft.h"

#include <algorithm>
#include <utility>

namespace evenfall {
namespace {

using Sureness = TimeDraft::Sureness;
using Kind = LocalReading::Kind;

constexpr std::array<std::pair<Sureness, const char*>, 5> names{{
    {Sureness::none, ""},
    {Sureness::exact, "exact"},
    {Sureness::about, "about"},
    {Sureness::between, "between"},
    {Sureness::unsure, "unsure"},
}};

// How far from a known time "between" begins to be given.
constexpr std::chrono::minutes around{15};

Json wall_json(const WallTime& time)
{
    Json out{{"shown", time.shown.time_since_epoch().count()}};
    if (time.meant)
        out["meant"] = {time.meant->earliest.time_since_epoch().count(), time.meant->latest.time_since_epoch().count()};
    return out;
}

WallTime parse_wall(const Json& json)
{
    const auto span = [](const Json& one) { return Span(one.get<std::int64_t>()); };
    WallTime time;
    time.shown = LocalTime(span(json.at("shown")));
    if (json.contains("meant"))
        time.meant = TimeRange{Instant(span(json.at("meant").at(0))), Instant(span(json.at("meant").at(1)))};
    return time;
}

} // namespace

std::array<Instant, 2> two_moments(const LocalReading& reading)
{
    return {std::min(reading.first, reading.second), std::max(reading.first, reading.second)};
}

WallTime WallTime::of(Instant when, const Zone& zone) { return {zone.local(when), TimeRange::exactly(when)}; }

WallTime WallTime::moved(std::chrono::minutes by, const Zone& zone) const
{
    WallTime out{shown + by, std::nullopt};
    const LocalReading there = zone.read(out.shown);
    if (there.kind == Kind::unique) {
        out.meant = TimeRange::exactly(there.first);
    } else if (there.kind == Kind::ambiguous && meant && zone.read(shown).kind == Kind::ambiguous) {
        // Within the same hour the answer to "which of the two" still holds.
        const TimeRange same{meant->earliest + by, meant->latest + by};
        if (zone.local(same.earliest) == out.shown && zone.local(same.latest) == out.shown)
            out.meant = same;
    }
    return out;
}

void WallTime::forget_doubtful(const Zone& zone)
{
    if (zone.read(shown).kind != Kind::unique)
        meant.reset();
}

std::string name_of(Sureness sureness)
{
    return std::find_if(names.begin(), names.end(), [sureness](const auto& one) { return one.first == sureness; })->second;
}

Sureness sureness_named(const std::string& word)
{
    const auto found = std::find_if(names.begin(), names.end(), [&word](const auto& one) { return one.second == word; });
    return found == names.end() ? Sureness::none : found->first;
}

TimeDraft TimeDraft::from(const TimeRange& known, const Zone& zone)
{
    // Taps carry seconds; a person thinks in minutes.
    const auto minute = [&zone](Instant when) { return WallTime::of(std::chrono::floor<std::chrono::minutes>(when), zone); };
    TimeDraft draft;
    draft.time = minute(known.middle());
    draft.earliest = minute(known.earliest);
    draft.latest = minute(known.latest);
    if (known.exact()) {
        draft.earliest = draft.earliest.moved(-around, zone);
        draft.latest = draft.latest.moved(around, zone);
        draft.earliest.forget_doubtful(zone);
        draft.latest.forget_doubtful(zone);
    }
    return draft;
}

TimeDraft TimeDraft::guess(Instant near, const Zone& zone)
{
    TimeDraft draft = from(TimeRange::exactly(near), zone);
    draft.time.forget_doubtful(zone);
    return draft;
}

WallTime TimeDraft::* TimeDraft::member(Which which)
{
    return which == Which::time ? &TimeDraft::time : which == Which::earliest ? &TimeDraft::earliest : &TimeDraft::latest;
}

/// The two ends never change places: the one that was moved stops at the other.
void TimeDraft::keep_order(Which moved)
{
    const bool wrong = earliest.meant && latest.meant ? earliest.meant->earliest > latest.meant->latest
                                                      : earliest.shown > latest.shown;
    if (wrong)
        this->*member(moved) = moved == Which::earliest ? latest : earliest;
}

void TimeDraft::step(std::chrono::minutes by, Which which, const Zone& zone)
{
    touched = true;
    this->*member(which) = of(which).moved(by, zone);
    if (which == Which::time) {
        earliest = earliest.moved(by, zone);
        latest = latest.moved(by, zone);
    } else {
        keep_order(which);
    }
}

void TimeDraft::choose(Sureness how)
{
    touched = true;
    sureness = how;
}

void TimeDraft::widen(std::chrono::minutes by)
{
    touched = true;
    width = std::clamp(width + by, std::chrono::minutes(5), std::chrono::minutes(120));
}

std::optional<TimeDraft::Which> TimeDraft::doubt() const
{
    if ((sureness == Sureness::exact || sureness == Sureness::about) && !time.meant)
        return Which::time;
    if (sureness == Sureness::between && !earliest.meant)
        return Which::earliest;
    if (sureness == Sureness::between && !latest.meant)
        return Which::latest;
    return std::nullopt;
}

void TimeDraft::settle(Which which, Meant meant, const Zone& zone)
{
    touched = true;
    const std::array<Instant, 2> moments = two_moments(zone.read(of(which).shown));
    if (meant == Meant::either)
        (this->*member(which)).meant = TimeRange{moments[0], moments[1]};
    else // a time that was skipped is shown as what was meant by it
        this->*member(which) = WallTime::of(moments[meant == Meant::first ? 0 : 1], zone);
    if (which != Which::time)
        keep_order(which);
}

std::optional<TimeRange> TimeDraft::range() const
{
    if (doubt())
        return std::nullopt;
    switch (sureness) {
    case Sureness::exact: return time.meant;
    case Sureness::about: return TimeRange{time.meant->earliest - width, time.meant->latest + width};
    case Sureness::between: return TimeRange{earliest.meant->earliest, latest.meant->latest};
    case Sureness::none:
    case Sureness::unsure: break;
    }
    return std::nullopt;
}

Json TimeDraft::json() const
{
    return Json{{"time", wall_json(time)}, {"earliest", wall_json(earliest)}, {"latest", wall_json(latest)},
                {"width", width.count()}, {"sureness", name_of(sureness)}, {"touched", touched}};
}

std::optional<TimeDraft> TimeDraft::parse(const Json& json)
{
    try {
        TimeDraft draft;
        draft.time = parse_wall(json.at("time"));
        draft.earliest = parse_wall(json.at("earliest"));
        draft.latest = parse_wall(json.at("latest"));
        draft.width = std::chrono::minutes(json.at("width").get<long>());
        draft.sureness = sureness_named(json.at("sureness").get<std::string>());
        draft.touched = json.at("touched").get<bool>();
        return draft;
    } catch (const nlohmann::json::exception&) {
        return std::nullopt; // a draft that cannot be read is begun again: the answer itself is not lost
    }
}

} // namespace evenfall
