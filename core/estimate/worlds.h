// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/night.h"
#include "base/intervals.h"

#include <optional>

namespace evenfall {

// The three worlds that the bounds and the best guess are taken from. See estimate/estimate.h.

/// How an interval with uncertain ends is read: as much as it can be, as little as it can be, or
/// with both ends at their middles.
enum class Reading { widest, narrowest, middle };

/// The interval between two ends; a missing end is further away than any night. May be empty.
inline Interval read_interval(const std::optional<TimeRange>& from,
                              const std::optional<TimeRange>& to, Reading reading)
{
    const auto pick = [](const TimeRange& range, bool early, bool late) {
        return early ? range.earliest : late ? range.latest : range.middle();
    };
    const bool widest = reading == Reading::widest;
    const bool narrowest = reading == Reading::narrowest;
    return {from ? pick(*from, widest, narrowest) : distant_past,
            to ? pick(*to, narrowest, widest) : distant_future};
}

/// A time at its earliest, latest or middle.
enum class Moment { earliest, latest, middle };

inline std::optional<Instant> moment_of(const std::optional<TimeRange>& range, Moment moment)
{
    if (!range)
        return std::nullopt;
    switch (moment) {
    case Moment::earliest:
        return range->earliest;
    case Moment::latest:
        return range->latest;
    case Moment::middle:
        break;
    }
    return range->middle();
}

/// The later, or the earlier, of two times; of one when the other is missing.
inline std::optional<Instant> later_of(std::optional<Instant> a, std::optional<Instant> b)
{
    return a && b ? std::max(*a, *b) : a ? a : b;
}
inline std::optional<Instant> earlier_of(std::optional<Instant> a, std::optional<Instant> b)
{
    return a && b ? std::min(*a, *b) : a ? a : b;
}

/// When the window begins and ends, as ranges; nothing where neither of its two times is known.
inline std::optional<TimeRange> window_from(const Night& night)
{
    const auto early = later_of(moment_of(night.recording_from, Moment::earliest),
                                moment_of(night.lights_out, Moment::earliest));
    const auto late = later_of(moment_of(night.recording_from, Moment::latest),
                               moment_of(night.lights_out, Moment::latest));
    return early ? std::optional(TimeRange{*early, *late}) : std::nullopt;
}
inline std::optional<TimeRange> window_to(const Night& night)
{
    const auto early = earlier_of(moment_of(night.recording_to, Moment::earliest),
                                  moment_of(night.lights_on, Moment::earliest));
    const auto late = earlier_of(moment_of(night.recording_to, Moment::latest),
                                 moment_of(night.lights_on, Moment::latest));
    return early ? std::optional(TimeRange{*early, *late}) : std::nullopt;
}

} // namespace evenfall
