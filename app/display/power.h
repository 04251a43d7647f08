// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include <filesystem>
#include <optional>

namespace evenfall {

/// Where the tablet has its power from.
struct Power {
    enum class Source {
        not_known, ///< nothing here says it: a desktop computer, a virtual machine, a silent driver
        mains,     ///< a charger is plugged in, even one too weak to fill the battery
        battery,   ///< on its own battery
    };
    Source source = Source::not_known;
    std::optional<int> percent; ///< charge of the battery, 0 to 100; the mean where there are several
    bool operator==(const Power&) const = default;
};

/// What the kernel says (ABI/testing/sysfs-class-power). A pen's or a keyboard's own battery
/// (scope Device) does not count. Reads a handful of small files: some firmware takes tens of
/// milliseconds for it, so ask once for a page and not for every frame.
Power power(const std::filesystem::path& supplies = "/sys/class/power_supply");

} // namespace evenfall
