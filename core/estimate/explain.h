// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "estimate/estimate.h"

#include <string>
#include <vector>

namespace evenfall {

/// Where each minute went, line by line in plain English for the clinic's staff: window, each
/// removal with its times and what is uncertain about them, what is left for each sensor and for
/// the need, the wake that was reported, what was not answered, and what the figures do not say.
std::vector<std::string> explain(const Night& night, const Estimate& estimate);

} // namespace evenfall
