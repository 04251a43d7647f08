// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "estimate/diary_measures.h"

#include "base/intervals.h"

namespace evenfall {
namespace {

/// Time awake as reported, between falling asleep and the final waking.
Span reported_wake(const Night& night)
{
    Interval sleep{distant_past, distant_future};
    if (night.lights_out)
        sleep.from = night.lights_out->middle() + night.asleep_after.value_or(Span(0));
    if (night.final_waking)
        sleep.to = night.final_waking->middle();
    Span total{0};
    std::vector<Interval> timed;
    for (const Awakening& awakening : *night.awake) {
        if (awakening.to)
            timed.push_back({awakening.from.middle(), awakening.to->middle()});
        else
            total += awakening.length.value_or(Span(0));
    }
    total += IntervalSet(std::move(timed)).measure_within(sleep);
    if (night.awake_untimed)
        total += night.awake_untimed->total;
    return total;
}

/// part / whole in hundredths of a percent, rounded half up.
std::optional<long> share(const std::optional<Span>& part, const std::optional<Span>& whole)
{
    // Answers that speak against each other can lie thousands of years apart.
    constexpr Span longest = std::chrono::hours(24 * 366);
    if (!part || !whole || *whole <= Span(0) || *whole > longest || *part > longest)
        return std::nullopt;
    return static_cast<long>((part->count() * 20000 / whole->count() + 1) / 2);
}

/// Where ranges are wide their middles can come in the wrong order: then there is no measure.
std::optional<Span> not_negative(Span value)
{
    return value < Span(0) ? std::nullopt : std::optional(value);
}

} // namespace

DiaryMeasures diary_measures(const Night& night)
{
    DiaryMeasures out;
    if (night.into_bed && night.out_of_bed)
        out.tib = not_negative(night.out_of_bed->middle() - night.into_bed->middle());
    out.sol = night.asleep_after;
    if (night.awake) {
        out.waso = reported_wake(night);
        const long untimed = night.awake_untimed ? night.awake_untimed->times : 0;
        out.awakenings = static_cast<long>(night.awake->size()) + untimed;
    }
    if (night.lights_out && night.final_waking && out.sol && out.waso)
        out.tst = not_negative(night.final_waking->middle() - night.lights_out->middle() -
                               *out.sol - *out.waso);
    out.tasafa = night.tried_after_waking;
    if (out.tst && out.tasafa)
        out.dse = *out.sol + *out.tst + *out.waso + *out.tasafa;
    out.se_tib = share(out.tst, out.tib);
    out.se_dse = share(out.tst, out.dse);
    return out;
}

} // namespace evenfall
