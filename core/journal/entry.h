// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/time.h"

#include <chrono>
#include <cstdint>
#include <string>

namespace evenfall {

/// When something was said, as every clock at hand saw it. The wall clock can be corrected or jump;
/// within one boot the time since boot cannot, so elapsed time is taken from it.
struct Stamp {
    Instant utc;                       ///< wall clock
    std::chrono::seconds offset{0};    ///< of the visit's zone at that moment, east of Greenwich
    std::string zone;                  ///< IANA name
    std::string boot;                  ///< id of the boot (new after each start of the machine)
    Span since_boot{0};                ///< CLOCK_BOOTTIME: also counts while suspended
    bool operator==(const Stamp&) const = default;
};

/// One line of the journal: a point in time, never a range.
struct Entry {
    std::int64_t number = 0; ///< 1, 2, 3, ... without a gap
    Stamp stamp;
    std::string kind;    ///< what sort of thing was said: see journal/kinds.h
    std::string subject; ///< what it was said about: a step, a sensor, a question; may be empty
    std::string value;   ///< JSON text, or empty
    std::string hash;    ///< SHA-256 over this entry and the hash of the one before
    bool operator==(const Entry&) const = default;
};

} // namespace evenfall
