// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "stage/player.h"

namespace evenfall {

/// Plays a whole invented night on the real screens, from the first page to the finished record, with
/// a picture of each screen passed, and checks the record. The faults found; empty when all is well.
QStringList rehearse(const Player::Setting& setting);

} // namespace evenfall
