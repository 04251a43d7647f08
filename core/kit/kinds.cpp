// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kit/kinds.h"

#include <algorithm>
#include <array>

namespace evenfall {
namespace {

using std::chrono::seconds;

constexpr std::array<std::string_view, 2> belt_places{"chest", "abdomen"};
constexpr std::array<std::string_view, 3> recorder_places{"hip", "chest", "harness"};
constexpr std::array<std::string_view, 1> nose{"nose"};
constexpr std::array<std::string_view, 1> lip{"lip"};
constexpr std::array<std::string_view, 1> index_finger{"index_finger"};
constexpr std::array<std::string_view, 1> chest{"chest"};
constexpr std::array<std::string_view, 1> neck{"neck"};
constexpr std::array<std::string_view, 2> legs{"left_leg", "right_leg"};

// Strips of tape: two for the cheeks, one for the back of the hand, one for the forearm
// (common practice, no source). Electrodes stick by themselves.
constexpr std::array<KindFacts, 10> kinds{{
    {PartKind::effort_belt, "effort_belt", belt_places, false, false, 0, seconds(120)},
    {PartKind::effort_sensor, "effort_sensor", belt_places, true, true, 0, seconds(45)},
    {PartKind::recorder, "recorder", recorder_places, false, false, 0, seconds(90)},
    {PartKind::nasal_cannula, "nasal_cannula", nose, false, true, 2, seconds(195)},
    {PartKind::breath_sensor, "breath_sensor", lip, false, true, 0, seconds(45)},
    {PartKind::finger_probe, "finger_probe", index_finger, false, true, 2, seconds(165)},
    {PartKind::ecg_electrodes, "ecg_electrodes", chest, false, true, 0, seconds(120)},
    {PartKind::body_position_sensor, "body_position_sensor", chest, false, true, 0, seconds(45)},
    {PartKind::snore_microphone, "snore_microphone", neck, false, true, 1, seconds(60)},
    {PartKind::leg_electrodes, "leg_electrodes", legs, false, true, 1, seconds(120)},
}};

} // namespace

const KindFacts& facts_of(PartKind kind)
{
    return *std::find_if(kinds.begin(), kinds.end(),
                         [kind](const KindFacts& facts) { return facts.kind == kind; });
}

std::optional<PartKind> kind_named(std::string_view name)
{
    const auto found = std::find_if(kinds.begin(), kinds.end(),
                                    [name](const KindFacts& facts) { return facts.name == name; });
    if (found == kinds.end())
        return std::nullopt;
    return found->kind;
}

std::span<const KindFacts> all_kinds() { return kinds; }

} // namespace evenfall
