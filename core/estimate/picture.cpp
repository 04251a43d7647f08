// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "estimate/picture.h"

#include "base/intervals.h"
#include "estimate/worlds.h"

#include <algorithm>
#include <array>

namespace evenfall {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

/// Covers [from, to) with spans: `solid` where the state surely holds, soft where it perhaps does,
/// `other` elsewhere.
std::vector<PictureSpan> cover(Interval axis, const IntervalSet& surely, const IntervalSet& perhaps,
                               SpanKind kind, SpanKind other)
{
    std::vector<PictureSpan> spans;
    const auto add = [&](const IntervalSet& set, SpanKind what, Certainty certainty) {
        for (const Interval& one : set.intervals())
            spans.push_back({one.from, one.to, what, certainty});
    };
    const IntervalSet whole(axis);
    const IntervalSet solid = intersect(whole, surely);
    add(solid, kind, Certainty::solid);
    add(subtract(intersect(whole, perhaps), solid), kind, Certainty::soft);
    add(subtract(subtract(whole, perhaps), solid), other, Certainty::solid);
    std::sort(spans.begin(), spans.end(),
              [](const PictureSpan& a, const PictureSpan& b) { return a.from < b.from; });
    return spans;
}

/// The sets of one kind of thing that may and that must be.
struct Possible {
    std::vector<Interval> surely, perhaps;

    void add(const std::optional<TimeRange>& from, const std::optional<TimeRange>& to)
    {
        surely.push_back(read_interval(from, to, Reading::narrowest));
        perhaps.push_back(read_interval(from, to, Reading::widest));
    }
};

std::vector<PictureSpan> sensor_spans(const Night& night, const std::string& id, Interval axis)
{
    Possible off;
    for (const Removal& removal : night.off)
        if (removal.sensor == id)
            off.add(removal.from, removal.to);
    return cover(axis, IntervalSet(std::move(off.surely)), IntervalSet(std::move(off.perhaps)),
                 SpanKind::off, SpanKind::on);
}

std::vector<PictureSpan> sleep_spans(const Night& night, Interval axis)
{
    if (!night.lights_out || !night.final_waking)
        return {};
    Possible awake;
    const Span latency = night.asleep_after.value_or(Span(0));
    awake.add(std::nullopt,
              TimeRange{night.lights_out->earliest + latency, night.lights_out->latest + latency});
    awake.add(night.final_waking, std::nullopt);
    if (night.awake) {
        for (const Awakening& awakening : *night.awake) {
            if (awakening.to) {
                awake.add(awakening.from, awakening.to);
                continue;
            }
            const Span length = awakening.length.value_or(Span(0));
            awake.perhaps.push_back({awakening.from.earliest, awakening.from.latest + length});
            awake.surely.push_back({awakening.from.latest, awakening.from.earliest + length});
        }
    }
    return cover(axis, IntervalSet(std::move(awake.surely)), IntervalSet(std::move(awake.perhaps)),
                 SpanKind::awake, SpanKind::asleep);
}

/// The first moment after `before`, up to `after`, at which the offset is no longer that of
/// `before`; clocks change at most once in between.
Instant change_between(const Night& night, Instant before, Instant after)
{
    const seconds old = night.offset_at(before);
    while (after - before > Span(seconds(1))) {
        const Instant middle = std::chrono::floor<seconds>(before + (after - before) / 2);
        (night.offset_at(middle) == old ? before : after) = middle;
    }
    return std::chrono::floor<seconds>(after);
}

std::vector<PictureTick> ticks(const Night& night, Interval axis)
{
    // Local hours are found by walking in quarters: no zone in use has an offset that is not a
    // multiple of them.
    constexpr Span quarter = minutes(15);
    const long step = axis.length() > Span(hours(12)) ? 2 : 1;
    std::vector<PictureTick> out;
    Instant at = std::chrono::floor<minutes>(axis.from);
    at -= at.time_since_epoch() % quarter;
    for (Instant before = at - quarter; at < axis.to; before = at, at += quarter) {
        const seconds offset = night.offset_at(at);
        const seconds offset_before = night.offset_at(before);
        const Instant change = offset == offset_before ? at : change_between(night, before, at);
        if (change < axis.from && at < axis.from)
            continue;
        const auto local_minutes = [&](Instant when, seconds of) {
            const LocalTime local{when.time_since_epoch() + of};
            return std::chrono::floor<minutes>(local -
                                               std::chrono::floor<std::chrono::days>(local));
        };
        if (offset != offset_before && change >= axis.from)
            out.push_back({change, local_minutes(change, offset), offset, true, offset_before});
        const minutes local = local_minutes(at, offset);
        const bool already = !out.empty() && out.back().at == at;
        if (local.count() % (60 * step) == 0 && at >= axis.from && !already)
            out.push_back({at, local, offset, false, offset});
    }
    return out;
}

} // namespace

std::optional<NightPicture> picture(const Night& night)
{
    const std::array times{&night.recording_from, &night.into_bed,     &night.lights_out,
                           &night.recording_to,   &night.final_waking, &night.lights_on,
                           &night.out_of_bed};
    NightPicture out;
    int known = 0;
    for (const auto* time : times) {
        if (!*time)
            continue;
        out.from = known ? std::min(out.from, (*time)->earliest) : (*time)->earliest;
        out.to = known ? std::max(out.to, (*time)->latest) : (*time)->latest;
        ++known;
    }
    const Interval axis{out.from, out.to};
    // Longer than two days is a contradiction that has not been settled, not a night to draw.
    if (known < 2 || axis.empty() || axis.length() > Span(hours(48)))
        return std::nullopt;
    out.window_from = window_from(night);
    out.window_to = window_to(night);
    out.recording_from = night.recording_from;
    out.recording_to = night.recording_to;
    out.lights_out = night.lights_out;
    out.lights_on = night.lights_on;
    for (const std::string& id : night.sensors)
        out.lanes.push_back({id, sensor_spans(night, id, axis)});
    out.lanes.push_back({"sleep", sleep_spans(night, axis)});
    out.ticks = ticks(night, axis);
    if (night.awake_untimed) {
        out.untimed_awakenings = night.awake_untimed->times;
        out.untimed_total = night.awake_untimed->total;
    }
    return out;
}

} // namespace evenfall
