// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "journal/entry.h"

#include <cstdint>
#include <vector>

namespace evenfall {

/// The wall clock moved against the time since boot between two entries of the same boot.
struct ClockJump {
    std::int64_t entry = 0; ///< number of the first entry after it
    Span by{0};             ///< forwards positive
};

/// When each entry really happened, as well as it can be known.
struct Timeline {
    std::vector<Instant> at;       ///< one for each entry
    std::vector<ClockJump> jumps;  ///< of more than two seconds
};

/// Within one boot elapsed time comes from the boot clock; the wall clock of the boot's last entry
/// says where that boot lies (a clock that was corrected is right after the correction, not before).
/// Times never run backwards within a boot.
Timeline timeline_of(const std::vector<Entry>& entries);

} // namespace evenfall
