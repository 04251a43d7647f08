// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <filesystem>
#include <string>
#include <vector>

namespace evenfall {

/// A stick or card that is plugged in and mounted.
struct Stick {
    std::filesystem::path root;
    std::string device; ///< such as /dev/sdb1; empty where it is not known
    std::string name;   ///< as the desktop shows it
    bool operator==(const Stick&) const = default;
};

/// What is mounted where desktops put sticks (/media, /run/media, /mnt) and can be written.
std::vector<Stick> mounted_sticks();

/// Whether a stick may be pulled.
enum class LetGo {
    unmounted, ///< everything is on it, and the system has let it go
    synced,    ///< everything is on it, but it is still mounted: use the system's own way first
};

/// Writes out everything that is meant for the stick, then asks the system to unmount it. Io: it
/// could not be written out, so nothing may be taken for safe.
Result<LetGo> let_go(const Stick& stick);

} // namespace evenfall
