// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/json.h"
#include "estimate/estimate.h"

namespace evenfall {

/// evenfall.estimate/1. Minutes with at most two decimals: at_least rounded down, at_most up, all
/// else half up. Sleep efficiency in percent with at most two decimals. What is unknown is absent.
Json estimate_to_json(const Estimate& estimate);

/// at_least, best_guess and at_most, rounded as above.
Json bounds_json(const Bounds& bounds);

/// {"problems": [{"code", "at", "text"}]}
Json problems_to_json(const Problems& problems);

} // namespace evenfall
