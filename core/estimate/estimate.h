// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/night.h"
#include "estimate/diary_measures.h"

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace evenfall {

// The night's arithmetic. What is counted, in words:
//
// Recording time, monitoring time. A home study is judged by the time during which the signals that
// are needed were recorded. The AASM Scoring Manual (HSAT chapter, from memory) calls recording
// time less artefact and less time awake, the latter also from a patient diary, the monitoring
// time. We know nothing of artefact: a sensor counts as recording while it was worn. So these are
// upper limits to what the recording can show, from what a person remembers; the recording and the
// clinic decide. How much is needed is the clinic's own setting; where it sets nothing it is 240
// min of flow and oximetry together (Kapur et al. 2017, J Clin Sleep Med 13(3):479-504; the 4 h
// seen in secondary sources, "oximetry and flow" from memory).
//
// Worlds. Every time is known as a range [earliest, latest]. A world is one choice of every time
// within its range. The two ends of one interval (the recording, a removal, an awakening) bind each
// other: the end is not before the beginning. Nothing else binds. Intervals are half-open.
//
// - window: from the later of the start of the recording and lights out, to the earlier of the end
//   of the recording and lights on; whichever of the two is given. Empty when it ends before it
//   begins. Unknown when it has no beginning or no end: then nothing can be said, and every bound
//   below is absent.
// - sensor: the part of the window in which it is on. It is on except while it was off.
// - needed: the part of the window in which every needed group is on. A group is on while any of
//   its sensors is on.
// - needed_asleep: needed, less the reported wake: the time before falling asleep (sleep begins
//   asleep_after_min after lights out), the time after the final waking, and the awakenings. A wake
//   answer that is missing takes nothing away and is named in wake_missing.
//
// at_least and at_most are the minimum and the maximum over all worlds. They are exact, because
// every interval that takes time away can be at its widest (begin at its earliest, end at its
// latest) in one and the same world, and at its narrowest in another; where the ranges of its two
// ends overlap, its narrowest is nothing.
//
// Wake known by its length only. An awakening given by its beginning and its minutes lies somewhere
// in R = [from.earliest, from.latest + minutes). Awakenings without times lie somewhere in R = from
// sleep onset at its earliest to the final waking at its latest. (Without a sleep latency R begins
// at lights out, without lights out at bed time; without a final waking it ends at lights on,
// without lights on at rising; without any of them it has no end on that side.) With N the minutes
// and U the set that would count without them (every group on, wake of two ends removed), at most
// min(N, |U in R|) and at least max(0, N - |R outside U|) is taken away. Such wakes do not overlap
// one another, so that their removals add up; the sum is held between 0 and |U|. These bounds are
// sound, and exact for one awakening whose beginning is exact.
//
// best_guess: every time at the middle of its range; an interval whose ends then come in the wrong
// order is empty. An awakening with minutes begins at the middle of `from`. Only awakenings without
// times have no place: they count in proportion to how much of R, at middles, is in U.
//
// chance_enough: the share of worlds in which needed reaches the need, each time uniform over its
// range and pairs uniform over their ordered part, by 20,000 draws.

/// Three answers to "how long". Exact to the microsecond; rounding is for output.
struct Bounds {
    Span at_least{0};
    Span best_guess{0};
    Span at_most{0};
    bool operator==(const Bounds&) const = default;
};

/// Taken before rounding. `enough`: at_least reaches the need. `too_short`: at_most does not.
/// `borderline`: between. `unknown`: the window has no beginning or no end.
enum class Verdict { enough, too_short, borderline, unknown };

/// The word in files: enough, short, borderline, unknown.
std::string_view verdict_word(Verdict verdict);

/// Where time went. Causes: the id of a sensor; `late_start` (the recording began after lights
/// out); `early_end` (it ended before lights on).
struct Loss {
    std::string cause;
    Span minutes{0}; ///< best guess of its time off between lights out and lights on
    Span alone{0};   ///< what the best guess of needed would gain if only this cause were gone
    bool operator==(const Loss&) const = default;
};

struct Estimate {
    std::optional<Bounds> window;
    std::vector<std::pair<std::string, std::optional<Bounds>>> sensors; ///< in the night's order
    std::optional<Bounds> needed;
    std::optional<double> chance_enough; ///< 0 to 1; absent when not asked for or window unknown
    std::optional<Bounds> needed_asleep;
    std::vector<std::string> wake_missing; ///< of asleep_after_min, lights_out, final_waking, awake
    Verdict verdict = Verdict::unknown;
    std::vector<Loss> lost; ///< sensors in the night's order, then late_start, early_end; no zeros
    DiaryMeasures diary;
};

struct EstimateOptions {
    bool with_chance = true;
    int draws = 20000;
    std::uint64_t seed = 20000;
};

/// The estimate of a night without contradictions; ask estimate/contradictions.h first. A night
/// with contradictions gives numbers without meaning, never a crash.
Estimate estimate(const Night& night, const EstimateOptions& options = {});

} // namespace evenfall
