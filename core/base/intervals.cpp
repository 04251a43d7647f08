// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "base/intervals.h"

#include <algorithm>

namespace evenfall {
namespace {

bool earlier(const Interval& a, const Interval& b) { return a.from < b.from; }

/// Adds to a sorted list of disjoint intervals one that does not begin before the last.
void append(std::vector<Interval>& list, const Interval& next)
{
    if (!list.empty() && next.from <= list.back().to)
        list.back().to = std::max(list.back().to, next.to);
    else
        list.push_back(next);
}

} // namespace

IntervalSet::IntervalSet(Interval one)
{
    if (!one.empty())
        intervals_.push_back(one);
}

IntervalSet::IntervalSet(std::vector<Interval> any) : intervals_(std::move(any))
{
    std::erase_if(intervals_, [](const Interval& one) { return one.empty(); });
    if (!std::is_sorted(intervals_.begin(), intervals_.end(), earlier))
        std::sort(intervals_.begin(), intervals_.end(), earlier);
    // Merges in place: what is merged never outgrows what was read.
    size_t kept = 0;
    for (size_t i = 0; i < intervals_.size(); ++i) {
        const Interval next = intervals_[i];
        if (kept > 0 && next.from <= intervals_[kept - 1].to)
            intervals_[kept - 1].to = std::max(intervals_[kept - 1].to, next.to);
        else
            intervals_[kept++] = next;
    }
    intervals_.resize(kept);
}

Span IntervalSet::measure() const
{
    Span total{0};
    for (const Interval& one : intervals_)
        total += one.to - one.from;
    return total;
}

Span IntervalSet::measure_within(Interval where) const
{
    Span total{0};
    auto one = std::partition_point(intervals_.begin(), intervals_.end(),
                                    [&](const Interval& each) { return each.to <= where.from; });
    for (; one != intervals_.end() && one->from < where.to; ++one)
        total += Interval{std::max(one->from, where.from), std::min(one->to, where.to)}.length();
    return total;
}

bool IntervalSet::contains(Instant when) const
{
    const auto one = std::partition_point(intervals_.begin(), intervals_.end(),
                                          [&](const Interval& each) { return each.to <= when; });
    return one != intervals_.end() && one->from <= when;
}

IntervalSet unite(const IntervalSet& a, const IntervalSet& b)
{
    IntervalSet out;
    out.intervals_.reserve(a.intervals_.size() + b.intervals_.size());
    auto left = a.intervals_.begin();
    auto right = b.intervals_.begin();
    while (left != a.intervals_.end() || right != b.intervals_.end()) {
        const bool take_left = right == b.intervals_.end() ||
                               (left != a.intervals_.end() && left->from <= right->from);
        append(out.intervals_, take_left ? *left++ : *right++);
    }
    return out;
}

IntervalSet intersect(const IntervalSet& a, const IntervalSet& b)
{
    IntervalSet out;
    auto left = a.intervals_.begin();
    auto right = b.intervals_.begin();
    while (left != a.intervals_.end() && right != b.intervals_.end()) {
        const Interval both{std::max(left->from, right->from), std::min(left->to, right->to)};
        if (!both.empty())
            out.intervals_.push_back(both);
        if (left->to < right->to)
            ++left;
        else
            ++right;
    }
    return out;
}

IntervalSet subtract(const IntervalSet& a, const IntervalSet& b)
{
    IntervalSet out;
    auto hole = b.intervals_.begin();
    for (Interval rest : a.intervals_) {
        while (hole != b.intervals_.end() && hole->to <= rest.from)
            ++hole;
        // The last hole that reaches into this interval may reach into the next: it stays.
        for (auto next = hole; next != b.intervals_.end() && next->from < rest.to; ++next) {
            if (next->from > rest.from)
                out.intervals_.push_back({rest.from, next->from});
            rest.from = std::max(rest.from, next->to);
            hole = next;
        }
        if (!rest.empty())
            out.intervals_.push_back(rest);
    }
    return out;
}

} // namespace evenfall
