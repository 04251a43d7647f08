// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "journal/timeline.h"

#include <chrono>
#include <map>

namespace evenfall {
namespace {

// A clock that is steered (NTP) drifts by less than this between two taps of one night.
constexpr Span steady = std::chrono::seconds(2);

Span boot_began(const Stamp& stamp) { return stamp.utc.time_since_epoch() - stamp.since_boot; }

} // namespace

Timeline timeline_of(const std::vector<Entry>& entries)
{
    std::map<std::string, Span> began; // the last entry of each boot wins
    for (const Entry& entry : entries)
        began[entry.stamp.boot] = boot_began(entry.stamp);

    Timeline timeline;
    std::map<std::string, Span> before;
    for (const Entry& entry : entries) {
        const Stamp& stamp = entry.stamp;
        timeline.at.push_back(Instant(began[stamp.boot] + stamp.since_boot));
        if (const auto last = before.find(stamp.boot); last != before.end()) {
            const Span moved = boot_began(stamp) - last->second;
            if (moved > steady || moved < -steady)
                timeline.jumps.push_back({entry.number, moved});
        }
        before[stamp.boot] = boot_began(stamp);
    }
    return timeline;
}

} // namespace evenfall
