// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "estimate/estimate.h"
#include "record/diary.h"
#include "record/edf.h"

#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// A sensor of the night, the signals of the recording that carry it, and how long it was on by the
/// person's report (within the window of the estimate; absent where the window is unknown).
struct AlignedSensor {
    std::string sensor;
    std::vector<std::string> signals; ///< labels as in the recording; empty: none could be told
    std::optional<Bounds> on;
};

/// A diary laid over a recording. Both know one moment: the recording began. By the recorder's clock
/// it stands in the header of its file; by ours it lies in the diary's recording.from, between the
/// start of the recorder and the person seeing the light that says it records.
struct Alignment {
    EdfHeader recording;
    Instant recorder_start; ///< the header's local time, read in the diary's zone
    TimeRange our_start;    ///< the diary's recording.from
    /// Recorder's clock minus ours: positive when the recorder's clock is ahead. Whole seconds in the
    /// header, so no finer than one second.
    Span offset{0}, offset_at_least{0}, offset_at_most{0};
    std::vector<AlignedSensor> sensors;     ///< in the night's order
    std::vector<std::string> other_signals; ///< of the recording, of no sensor of this night
    Problems warnings; ///< nothing that stops the work; codes below, `at` empty
};

/// More than this apart, beyond the diary's own uncertainty, is a clock that was set wrong, or
/// another night's recording (our own judgement: a recorder's clock drifts by seconds in a day).
inline constexpr Span plausible_offset = std::chrono::minutes(15);

/// Lays the diary over a recording by its header. Warnings:
/// - offset_implausible: the clocks are further apart than plausible_offset; says when it looks like
///   a zone or summer time (whole hours) or another day
/// - start_twice, start_never: the recorder's local time comes twice (the reading nearer to the
///   diary is taken) or does not exist in the diary's zone (the zone's time before the change is)
/// - other_code: the recording's patient field begins with another code than the diary's
/// - ends_early: the recording ends more than plausible_offset before the diary's night does
/// - still_open: the recorder did not close its file; its length is unknown
/// Refused: a diary without recording.from: there is nothing to match.
Result<Alignment> align(const Diary& diary, const EdfHeader& recording);

/// R_diary.edf: the diary's annotations over the recording R. Start and patient field are the
/// recording's, byte for byte (EDF+ 2.3). An event that was noted t after the (middle of the) start
/// of the recording by our clock stands t after the start of the recording.
Result<std::string> aligned_edf(const Diary& diary, const Alignment& alignment);

/// For programs (evenfall.alignment/1): start, offset_s with its bounds, signals by sensor, warnings.
Json alignment_json(const Diary& diary, const Alignment& alignment);

} // namespace evenfall
