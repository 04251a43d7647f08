// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "stage/player.h"

namespace evenfall {

/// Writes every screen in every state that matters as NN-name.png, every drawing as figure-<id>.png
/// (800x800, without its caption), and tour.json. The faults found on the way; empty when all is well.
QStringList make_tour(const Player::Setting& setting);

} // namespace evenfall
