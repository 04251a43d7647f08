// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/time_draft.h"

#include <algorithm>
#include <array>
#include <utility>

namespace evenfall {
namespace {

using Sureness = TimeDraft::Sureness;

constexpr std::array<std::pair<Sureness, const char*>, 5> names{{
    {Sureness::none, ""},
    {Sureness::exact, "exact"},
    {Sureness::about, "about"},
    {Sureness::between, "between"},
    {Sureness::unsure, "unsure"},
}};

std::int64_t ticks(Instant when) { return when.time_since_epoch().count(); }

Instant instant(const Json& json, const char* key) { return Instant(Span(json.at(key).get<std::int64_t>())); }

} // namespace

std::string name_of(Sureness sureness)
{
    return std::find_if(names.begin(), names.end(), [sureness](const auto& one) { return one.first == sureness; })->second;
}

Sureness sureness_named(const std::string& word)
{
    const auto found = std::find_if(names.begin(), names.end(), [&word](const auto& one) { return one.second == word; });
    return found == names.end() ? Sureness::none : found->first;
}

TimeDraft TimeDraft::from(const TimeRange& known)
{
    // Taps carry seconds; a person thinks in minutes.
    const auto minute = [](Instant when) { return std::chrono::floor<std::chrono::minutes>(when); };
    TimeDraft draft;
    draft.time = minute(known.middle());
    draft.earliest = minute(known.earliest);
    draft.latest = minute(known.latest);
    if (known.exact()) {
        draft.earliest = draft.time - std::chrono::minutes(15);
        draft.latest = draft.time + std::chrono::minutes(15);
    }
    return draft;
}

void TimeDraft::step(std::chrono::minutes by, Which which)
{
    touched = true;
    if (which == Which::time) {
        time += by;
        earliest += by;
        latest += by;
    } else if (which == Which::earliest) {
        earliest = std::min(earliest + by, latest);
    } else {
        latest = std::max(latest + by, earliest);
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

std::optional<TimeRange> TimeDraft::range() const
{
    switch (sureness) {
    case Sureness::exact: return TimeRange::exactly(time);
    case Sureness::about: return TimeRange{time - width, time + width};
    case Sureness::between: return TimeRange{earliest, latest};
    case Sureness::none:
    case Sureness::unsure: break;
    }
    return std::nullopt;
}

Json TimeDraft::json() const
{
    return Json{{"time", ticks(time)}, {"earliest", ticks(earliest)}, {"latest", ticks(latest)},
                {"width", width.count()}, {"sureness", name_of(sureness)}, {"touched", touched}};
}

std::optional<TimeDraft> TimeDraft::parse(const Json& json)
{
    try {
        TimeDraft draft;
        draft.time = instant(json, "time");
        draft.earliest = instant(json, "earliest");
        draft.latest = instant(json, "latest");
        draft.width = std::chrono::minutes(json.at("width").get<long>());
        draft.sureness = sureness_named(json.at("sureness").get<std::string>());
        draft.touched = json.at("touched").get<bool>();
        return draft;
    } catch (const nlohmann::json::exception&) {
        return std::nullopt; // a draft that cannot be read is begun again: the answer itself is not lost
    }
}

} // namespace evenfall
