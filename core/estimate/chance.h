// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "answers/night.h"

#include <cstdint>

namespace evenfall {

/// The share of worlds in which `needed` reaches the night's need (see estimate/estimate.h), by
/// `draws` draws of std::mt19937_64 seeded with `seed`. Needs a known window. Does not depend on
/// the order of the removals, nor on the platform.
double chance_enough(const Night& night, int draws, std::uint64_t seed);

} // namespace evenfall
