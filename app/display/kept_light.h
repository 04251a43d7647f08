// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <filesystem>
#include <map>
#include <string>

namespace evenfall {

/// What the backlights were before the night lowered them: name of the backlight, brightness in its
/// driver's steps (at least 1). Kept in a file so that a kill at night does not leave the tablet dark.
using KeptLight = std::map<std::string, long>;

/// The file's place in the data folder. It holds nothing of a patient:
///   {"format": "evenfall.display/1", "backlights": [{"name": "panel", "was": 600}]}
std::filesystem::path kept_light_file(const std::filesystem::path& data);

/// Empty where there is no file. Error (malformed, io): what is wrong with it.
Result<KeptLight> load_kept_light(const std::filesystem::path& data);

/// Durable, mode 0600; an empty one removes the file. Error (io): what failed.
Status save_kept_light(const std::filesystem::path& data, const KeptLight& kept);

} // namespace evenfall
