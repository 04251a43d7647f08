// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "figure.h"

#include <array>
#include <string>
#include <string_view>

/// The colours of the figures by their role. Sources hold the literal colour of the first column;
/// the composer swaps it for the column of the tone. Any other colour in a source is a fault.
namespace evenfall::palette {

enum class Role {
    background,
    panel,
    skin,
    skin_shade,
    nail,
    hair,
    cloth,
    cloth_shade,
    cloth_line,
    part,
    part_shade,
    part_line,
    mark,
    accent,
    accent_shade,
    accent_line,
    accent_mark,
    tape,
    tape_line,
    wood,
    wood_shade,
    bedding,
    bedding_shade,
    ink,
    quiet,
    halo,
    wrong,
    wrong_mark,
    dark,
    lamp,
};

struct Colours {
    Role role;
    std::string_view name;
    std::string_view canonical; ///< as written in the sources; also the tone "dark"
    std::string_view light;
    std::string_view night;
    std::string_view print; ///< grey only, so that a greyscale printer changes nothing
};

/// One row for each role, in the order of the enumeration.
const std::array<Colours, 30>& table();

/// The row of a canonical colour such as "#c99b78", or null if the palette does not have it.
const Colours* find(std::string_view canonical);

/// The colour of a role in a tone, as #rrggbb.
std::string_view colour(Role role, Tone tone);

/// The role that stands in for `role` when a part is the one in question.
Role accented(Role role);

/// `share` of `over` laid on `under`; share 0..1.
std::string mix(std::string_view under, std::string_view over, double share);

} // namespace evenfall::palette
