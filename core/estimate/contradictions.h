// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/night.h"

#include <string>
#include <vector>

namespace evenfall {

/// Two answers that cannot both be true. The app shows both side by side and asks; the command line
/// refuses. Only what is impossible in every world is a contradiction: ranges that leave a way out
/// are none.
struct Contradiction {
    Problem problem;    ///< code, pointer, and plain English for staff
    std::string first;  ///< pointer of the one answer; always there
    std::string second; ///< pointer of the other; empty where there is only one (unknown_sensor)
};

/// Codes:
/// - unknown_sensor: a need or a removal names a sensor that the kit of this night does not have
/// - no_order: an interval whose end lies before its beginning
/// - lights_on_before_lights_out, out_of_bed_before_into_bed, final_waking_before_lights_out,
///   out_of_bed_before_final_waking
/// - awakening_outside_night, removal_outside_night: wholly before the first or after the last of
///   the night's own times (recording, bed, lights, final waking). Touching is not outside.
/// - sleep_longer_than_bed: falling asleep, awakenings, sleep (the person's own idea of it, where
///   given) and the time after the final waking add up to more than the time in bed; or trying to
///   sleep after the final waking to more than the time from there to rising
/// - night_over_24_h
std::vector<Contradiction> find_contradictions(const Night& night);

/// The same without the pairs.
Problems contradictions(const Night& night);

} // namespace evenfall
