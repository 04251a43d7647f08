// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/night.h"

#include <optional>
#include <string>
#include <vector>

namespace evenfall {

/// The picture of the night as one neutral description, without colours, sizes or words. Screen,
/// summary and sheet draw from it, so that they can never show different nights.

enum class SpanKind { on, off, asleep, awake };

/// soft: it may be so (perhaps off, perhaps awake): a time was given as a range. Draw it as a fade
/// between its neighbours.
enum class Certainty { solid, soft };

struct PictureSpan {
    Instant from, to;
    SpanKind kind = SpanKind::on;
    Certainty certainty = Certainty::solid;
    bool operator==(const PictureSpan&) const = default;
};

/// One row. The spans cover it from one end of the picture to the other without gap or overlap;
/// the lane of sleep has none where nothing was said (no lights out, no final waking).
struct PictureLane {
    std::string id; ///< sensor id, or "sleep"
    std::vector<PictureSpan> spans;
};

/// A mark on the time axis: a full local hour, or the moment at which the clocks change.
struct PictureTick {
    Instant at;
    std::chrono::minutes local{0};  ///< local time of day, 0 to 1439 (after the change, if one)
    std::chrono::seconds offset{0}; ///< east of Greenwich (after the change, if one)
    bool clock_change = false;
    std::chrono::seconds offset_before{0}; ///< same as offset where the clocks do not change
    bool operator==(const PictureTick&) const = default;
};

struct NightPicture {
    Instant from, to; ///< ends of the axis: from the first to the last of the night's own times
    std::optional<TimeRange> window_from, window_to; ///< of the estimate's window, where known
    std::optional<TimeRange> recording_from, recording_to, lights_out, lights_on;
    std::vector<PictureLane> lanes; ///< sensors in the night's order, then "sleep"
    std::vector<PictureTick> ticks; ///< in order; hours every 1 or 2 h, so that at most 13 stand
    long untimed_awakenings = 0;    ///< reported without times: they have no place in the picture
    Span untimed_total{0};
};

/// Nothing when fewer than two times of the night are known: there is no axis to draw.
std::optional<NightPicture> picture(const Night& night);

} // namespace evenfall
