// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "journal/entry.h"

#include <string>

namespace evenfall {

/// Where "now" comes from. Core has no clock: the kiosk passes one in.
class Clock {
  public:
    virtual ~Clock() = default;
    virtual Stamp now(const Zone& zone) const = 0;
};

/// CLOCK_REALTIME, CLOCK_BOOTTIME and the kernel's boot id.
class SystemClock final : public Clock {
  public:
    Stamp now(const Zone& zone) const override;
};

/// A clock that stands still until it is moved: for rehearsals, tours and tests.
class SimulatedClock final : public Clock {
  public:
    explicit SimulatedClock(Instant start, std::string boot = "rehearsal") : now_(start), boot_(std::move(boot)) {}
    Stamp now(const Zone& zone) const override;
    void pass(Span span)
    {
        now_ += span;
        since_boot_ += span;
    }
    /// Moves on to `when`; never backwards.
    void reach(Instant when)
    {
        if (when > now_)
            pass(when - now_);
    }
    Instant instant() const { return now_; }

  private:
    Instant now_;
    Span since_boot_{std::chrono::hours(1)};
    std::string boot_;
};

} // namespace evenfall
