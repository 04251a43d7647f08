// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/result.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace evenfall {

/// One backlight of the kernel, as it stands in /sys/class/backlight/<name>. Brightness is in the
/// driver's own steps, 0 to max_brightness; 0 may be off (kernel: ABI/stable/sysfs-class-backlight).
struct Backlight {
    std::string name;
    long brightness = 0;
    long most = 0;
    bool operator==(const Backlight&) const = default;
};

/// The backlights to set, by name. Where one display has several interfaces the kernel's document
/// says which to prefer: firmware, then platform, then raw; so all of the best kind that is there.
/// Those that cannot be read, or have no steps, are left out. Empty: none, or no such folder.
std::vector<Backlight> backlights(const std::filesystem::path& folder);

/// One of them by name, of whatever kind; nothing where it is not there or cannot be read.
std::optional<Backlight> backlight(const std::filesystem::path& folder, const std::string& name);

/// The least step that still lights on every driver: 1, or 5 % of `most` rounded up, whichever is
/// greater. Below it some drivers show nothing, and the page must be readable when it is woken.
/// Source: systemd-backlight@.service(8) of systemd 252, which keeps to the same floor for that reason.
long least_light(long most);

/// True where this process may write the brightness itself.
bool may_write(const std::filesystem::path& folder, const std::string& name);

/// Writes the brightness into sysfs. Error (io): what the system said.
Status write_brightness(const std::filesystem::path& folder, const std::string& name, long value);

} // namespace evenfall
