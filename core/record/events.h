// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "record/diary.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// Everything in the diary that has a time, in order of time: the night's own times, removals and
/// awakenings, then events, notes and signal checks. Journal entries are the raw log behind them
/// and are not repeated.
std::vector<DiaryEvent> all_events(const Diary& diary);

/// English text of an event kind in diary.edf, the same for every event of the kind (EDF+ 2.2.4);
/// the subject follows after ": ". Nothing for a kind that is not listed.
///
/// Standard texts of EDF+: recording_starts, lights_off, lights_on, recording_ends. Ours: into_bed,
/// out_of_bed, fell_asleep, final_waking, awake, awake_untimed, sensor_off, sensor_off_from_start,
/// sensor_on_again, sensor_not_put_back, still_on, something_off, bathroom, refitted, note,
/// changed_note, signal_check.
std::optional<std::string_view> event_text(std::string_view kind);

} // namespace evenfall
