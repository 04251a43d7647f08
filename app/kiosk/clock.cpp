// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/clock.h"

#include "base/file.h"

#include <ctime>

namespace evenfall {
namespace {

Span read_clock(clockid_t id)
{
    timespec time{};
    clock_gettime(id, &time);
    return std::chrono::seconds(time.tv_sec) + std::chrono::duration_cast<Span>(std::chrono::nanoseconds(time.tv_nsec));
}

std::string boot_id()
{
    const Result<std::string> text = read_file("/proc/sys/kernel/random/boot_id", 64);
    // Without it every start counts as a boot of its own: elapsed time then comes from the wall clock.
    static const std::string own = "start-" + std::to_string(read_clock(CLOCK_REALTIME).count());
    if (!text)
        return own;
    return text->substr(0, text->find('\n'));
}

} // namespace

Stamp SystemClock::now(const Zone& zone) const
{
    static const std::string boot = boot_id();
    const Instant utc{read_clock(CLOCK_REALTIME)};
    return {utc, zone.offset_at(utc), zone.name(), boot, read_clock(CLOCK_BOOTTIME)};
}

Stamp SimulatedClock::now(const Zone& zone) const { return {now_, zone.offset_at(now_), zone.name(), boot_, since_boot_}; }

} // namespace evenfall
