// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/night.h"

#include <optional>

namespace evenfall {

/// The measures of a sleep diary. Items and definitions follow the consensus sleep diary (Carney et
/// al. 2012, Sleep 35:287-302) and, for DSE, Reed & Sacco 2016 (J Clin Sleep Med 12:263-6).
///
/// A time given as a range counts at its middle. A measure that lacks one of its answers is absent;
/// it is never zero. Everything is as reported: no signal has been looked at.
struct DiaryMeasures {
    /// Time in bed: out of bed - into bed.
    std::optional<Span> tib;
    /// Sleep onset latency: the reported time to fall asleep after lights out.
    std::optional<Span> sol;
    /// Wake after sleep onset: reported time awake between first falling asleep and the final
    /// waking, with and without times. Absent while the awakenings were not answered. Times given
    /// by both ends count once where they overlap, and not outside sleep onset and final waking.
    std::optional<Span> waso;
    /// Number of reported awakenings, with and without times. The final waking is not one.
    std::optional<long> awakenings;
    /// Total sleep time: (final waking - lights out) - SOL - WASO.
    std::optional<Span> tst;
    /// Time attempting to sleep after the final awakening. Asked, not computed.
    std::optional<Span> tasafa;
    /// Duration of the sleep episode: SOL + TST + WASO + TASAFA.
    std::optional<Span> dse;
    /// Sleep efficiency in hundredths of a percent, rounded half up. The name carries the
    /// denominator: TST / TIB, and TST / DSE. Absent for a denominator of zero, and where a length is over a
    /// year.
    std::optional<long> se_tib;
    std::optional<long> se_dse;
    bool operator==(const DiaryMeasures&) const = default;
};

/// The measures of a night without contradictions (see estimate/contradictions.h).
DiaryMeasures diary_measures(const Night& night);

} // namespace evenfall
