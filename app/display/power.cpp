// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "display/power.h"

#include "base/file.h"

#include <algorithm>
#include <charconv>
#include <string>

namespace evenfall {
namespace {

std::string attribute(const std::filesystem::path& file)
{
    const Result<std::string> text = read_file_start(file, 4096);
    return text ? text->substr(0, text->find('\n')) : "";
}

std::optional<int> number(const std::string& text)
{
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool whole = error == std::errc() && end == text.data() + text.size() && !text.empty();
    return whole ? std::optional(value) : std::nullopt;
}

} // namespace

Power power(const std::filesystem::path& supplies)
{
    bool fed = false, filling = false, draining = false, battery_there = false;
    int sum = 0, counted = 0;
    std::error_code error;
    for (auto entry = std::filesystem::directory_iterator(supplies, error);
         !error && entry != std::filesystem::directory_iterator(); entry.increment(error)) {
        const std::filesystem::path& supply = entry->path();
        const std::string type = attribute(supply / "type");
        if (attribute(supply / "scope") == "Device")
            continue;
        if (type == "Battery") {
            if (attribute(supply / "present") == "0")
                continue; // an empty bay
            battery_there = true;
            const std::string status = attribute(supply / "status");
            filling = filling || status == "Charging" || status == "Full";
            draining = draining || status == "Discharging";
            const std::optional<int> percent = number(attribute(supply / "capacity"));
            if (percent && *percent >= 0 && *percent <= 100) {
                sum += *percent;
                ++counted;
            }
        } else if (type == "Mains" || type == "USB" || type == "Wireless") {
            // 1 is fixed, 2 programmable.
            fed = fed || number(attribute(supply / "online")).value_or(0) > 0;
        }
    }
    Power found;
    if (counted > 0)
        found.percent = (sum + counted / 2) / counted;
    // A driver of a charger may be missing; then the battery's own word counts. "Not charging" alone
    // says neither.
    if (fed || (filling && !draining))
        found.source = Power::Source::mains;
    else if (battery_there && draining)
        found.source = Power::Source::battery;
    return found;
}

} // namespace evenfall
