// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/time.h"

#include <vector>

namespace evenfall {

/// Further back and further on than any night: the ends of an interval that has none.
inline constexpr Instant distant_past{Span(-(std::int64_t{1} << 60))};
inline constexpr Instant distant_future{Span(std::int64_t{1} << 60)};

/// From `from` up to, but not including, `to`. Empty when `to` is not after `from`.
struct Interval {
    Instant from;
    Instant to;

    bool empty() const { return to <= from; }
    Span length() const { return empty() ? Span(0) : to - from; }
    bool operator==(const Interval&) const = default;
};

/// A set of instants as sorted, disjoint, non-empty half-open intervals that do not touch: the same
/// set always has the same intervals. Building costs n log n, every operation is linear in both
/// sets.
class IntervalSet {
  public:
    IntervalSet() = default;
    IntervalSet(Interval one);
    /// Any order, overlaps and touching allowed; empty and reversed intervals add nothing.
    explicit IntervalSet(std::vector<Interval> any);

    const std::vector<Interval>& intervals() const { return intervals_; }
    bool empty() const { return intervals_.empty(); }
    Span measure() const;
    /// Measure of what lies inside `where`, without building the intersection.
    Span measure_within(Interval where) const;
    bool contains(Instant when) const;
    bool operator==(const IntervalSet&) const = default;

    friend IntervalSet unite(const IntervalSet& a, const IntervalSet& b);
    friend IntervalSet intersect(const IntervalSet& a, const IntervalSet& b);
    friend IntervalSet subtract(const IntervalSet& a, const IntervalSet& b);

  private:
    std::vector<Interval> intervals_;
};

IntervalSet unite(const IntervalSet& a, const IntervalSet& b);
IntervalSet intersect(const IntervalSet& a, const IntervalSet& b);
/// What is in `a` and not in `b`.
IntervalSet subtract(const IntervalSet& a, const IntervalSet& b);

} // namespace evenfall
