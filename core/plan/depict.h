// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/text.h"
#include "kit/kit.h"

#include <string>

namespace evenfall {

// How a kit's things are shown, the same on screen and paper.

/// Id of the drawing of a part by itself.
std::string item_figure(PartKind kind);
/// The same for what is packed beside the parts ("tape_roll", "charger", ...); empty: no drawing.
std::string item_figure(const std::string& item);

/// What a light of the recorder looks like: "blinks green twice, then a pause".
Text light_text(const Light& light);

} // namespace evenfall
