// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/json.h"
#include "base/result.h"
#include "base/time.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// What the clinic needs of a night: at least `minutes` during which, in every group, at least one
/// sensor is on.
struct Need {
    Span minutes{
        std::chrono::minutes(240)}; // facts: at least 4 h of flow and oximetry, Kapur et al. 2017
    std::vector<std::vector<std::string>> groups;
    bool operator==(const Need&) const = default;
};

/// A time awake between falling asleep and the final waking. `to` or `length`, never both.
struct Awakening {
    TimeRange from;
    std::optional<TimeRange> to;
    std::optional<Span> length;
    bool operator==(const Awakening&) const = default;
};

/// Awakenings that the person counted without times; `total` is their time awake together.
struct UntimedAwakenings {
    long times = 0;
    Span total{0};
    bool operator==(const UntimedAwakenings&) const = default;
};

/// A sensor that was not in place. No `from`: off from the start. No `to`: never put back.
struct Removal {
    std::string sensor;
    std::optional<TimeRange> from;
    std::optional<TimeRange> to;
    bool operator==(const Removal&) const = default;
};

/// Whose night this is: the study code and the number of the night (1, 2, ...). No name.
struct NightOf {
    std::string code;
    long night = 1;
    bool operator==(const NightOf&) const = default;
};

/// What is known of one night (file format evenfall.night/1). An absent value was not answered; it
/// is never zero.
struct Night {
    std::optional<NightOf> of;
    ZonePtr zone;
    std::vector<std::string> sensors;
    Need need;
    std::optional<TimeRange> recording_from, recording_to;
    std::optional<TimeRange> into_bed, lights_out, final_waking, lights_on, out_of_bed;
    std::optional<Span> asleep_after;            ///< sleep latency as reported
    std::optional<Span> tried_after_waking;      ///< TASAFA as reported
    std::optional<Span> slept;                   ///< the person's own idea of their total sleep
    std::optional<std::vector<Awakening>> awake; ///< empty: none; absent: not answered
    std::optional<UntimedAwakenings> awake_untimed;
    std::vector<Removal> off;
    /// The offset that the first of its times was written with. Local time where there is no zone.
    std::optional<std::chrono::seconds> written_offset;

    /// Offset of local time at that moment: by the zone, else as written, else UTC.
    std::chrono::seconds offset_at(Instant when) const
    {
        return zone ? zone->offset_at(when) : written_offset.value_or(std::chrono::seconds(0));
    }
};

/// Reads evenfall.night/1. All faults with their pointers: malformed for the form, refused for
/// local times that happen twice or never. Contradictions between the values are not its business:
/// see estimate/contradictions.h.
Result<Night> read_night(std::string_view json_text);
Result<Night> night_from_json(const Json& json, const std::string& at);

/// Writes what read_night reads, with the same meaning: TIMEs exact or as earliest and latest, with
/// the offset of the night's local time.
Json night_to_json(const Night& night);

/// Reads one TIME: a time, {"about", "give_or_take_min"} or {"earliest", "latest"}. Adds every
/// fault. `offset`, where given, takes the first offset that it meets.
std::optional<TimeRange> read_time_range(const Json& json, const std::string& at, const Zone* zone,
                                         Problems& problems,
                                         std::optional<std::chrono::seconds>* offset = nullptr);

/// Writes one TIME.
Json time_range_json(const TimeRange& range, const Night& night);

} // namespace evenfall
