// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <chrono>
#include <optional>
#include <span>
#include <string_view>

namespace evenfall {

/// What can be in a kit: the trade's own kinds.
enum class PartKind {
    effort_belt,          ///< respiratory effort belt, round the chest or the abdomen
    effort_sensor,        ///< snaps on to an effort belt
    recorder,             ///< with its pouch or clip; on a belt or harness
    nasal_cannula,        ///< nasal pressure cannula
    breath_sensor,        ///< oronasal thermal sensor
    finger_probe,         ///< pulse oximeter probe
    ecg_electrodes,
    body_position_sensor,
    snore_microphone,
    leg_electrodes,
};

/// What is common to all parts of one kind. Seconds and strips are what a kit file gets when it says
/// nothing; the numbers are our own estimates except where noted.
struct KindFacts {
    PartKind kind;
    std::string_view name;                    ///< as in kit files
    std::span<const std::string_view> places; ///< allowed values of "where"
    bool must_sit_on_part;                    ///< "on" has to name another part
    bool needs_plug;                          ///< useless without a way into the recorder
    int tape_strips;                          ///< of the kit's strip length
    std::chrono::seconds seconds;             ///< for one person, all its steps without the plug
};

/// Facts of a kind; every kind has them.
const KindFacts& facts_of(PartKind kind);
/// By the name used in kit files; nothing when there is no such kind.
std::optional<PartKind> kind_named(std::string_view name);
std::span<const KindFacts> all_kinds();

} // namespace evenfall
