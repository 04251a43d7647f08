// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <array>
#include <string_view>

/// The morning questions by their ids, in the order of the night. The wording is ours and stands in
/// the translations; the items are those of the consensus sleep diary (Carney et al. 2012, Sleep
/// 35:287-302).
namespace evenfall::questions {

inline constexpr std::string_view into_bed = "into_bed";
inline constexpr std::string_view lights_out = "lights_out";
inline constexpr std::string_view asleep_after = "asleep_after";
inline constexpr std::string_view awake = "awake";
inline constexpr std::string_view off = "off";
inline constexpr std::string_view final_waking = "final_waking";
/// Time spent trying to sleep after the final waking (TASAFA).
inline constexpr std::string_view tried_after_waking = "tried_to_sleep_after_waking";
inline constexpr std::string_view lights_on = "lights_on";
inline constexpr std::string_view out_of_bed = "out_of_bed";
inline constexpr std::string_view slept = "slept"; ///< the person's own idea of their total sleep
inline constexpr std::string_view compare = "compare"; ///< better, usual, worse than a usual night
inline constexpr std::string_view comment = "comment";

inline constexpr std::array all{into_bed,   lights_out, asleep_after, awake, off,     final_waking, tried_after_waking,
                                lights_on,  out_of_bed, slept,        compare, comment};

/// Is the answer a point in time?
constexpr bool asks_time(std::string_view question)
{
    return question == into_bed || question == lights_out || question == final_waking || question == lights_on ||
           question == out_of_bed;
}

/// Is the answer a length of time?
constexpr bool asks_amount(std::string_view question)
{
    return question == asleep_after || question == tried_after_waking || question == slept;
}

} // namespace evenfall::questions
