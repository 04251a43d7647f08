// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "base/intervals.h"

#include <gtest/gtest.h>

#include <random>

namespace evenfall {
namespace {

Instant at(long t) { return Instant(Span(t)); }
Interval piece(long from, long to) { return {at(from), at(to)}; }

std::vector<Interval> random_pieces(std::mt19937_64& engine)
{
    std::vector<Interval> out(engine() % 8);
    for (Interval& one : out)
        one = piece(static_cast<long>(engine() % 60), static_cast<long>(engine() % 60));
    return out;
}

/// The same set as one bit for each unit of time: too simple to be wrong.
std::uint64_t bits(const std::vector<Interval>& pieces)
{
    std::uint64_t out = 0;
    for (const Interval& one : pieces)
        for (long t = 0; t < 60; ++t)
            if (one.from <= at(t) && at(t) < one.to)
                out |= std::uint64_t{1} << t;
    return out;
}

TEST(Intervals, MergeWhereTheyOverlapOrTouch)
{
    const IntervalSet set({piece(5, 7), piece(1, 3), piece(3, 4), piece(6, 9)});
    EXPECT_EQ(set.intervals(), (std::vector<Interval>{piece(1, 4), piece(5, 9)}));
    EXPECT_EQ(set.measure(), Span(7));
}

TEST(Intervals, EmptyAndReversedAddNothing)
{
    EXPECT_TRUE(IntervalSet({piece(3, 3), piece(5, 1)}).empty());
    EXPECT_TRUE(IntervalSet(piece(5, 1)).empty());
}

TEST(Intervals, AreHalfOpen)
{
    const IntervalSet set(piece(1, 3));
    EXPECT_TRUE(set.contains(at(1)));
    EXPECT_FALSE(set.contains(at(3)));
}

TEST(Intervals, EndsFartherThanAnyNightDoNotOverflow)
{
    const IntervalSet all(Interval{distant_past, distant_future});
    EXPECT_EQ(all.measure_within(piece(0, 10)), Span(10));
    EXPECT_GT(all.measure(), Span(0));
}

TEST(IntervalLaws, HoldForRandomSets)
{
    std::mt19937_64 engine(1);
    for (int round = 0; round < 20000; ++round) {
        const std::vector<Interval> pa = random_pieces(engine), pb = random_pieces(engine);
        const std::uint64_t a_bits = bits(pa), b_bits = bits(pb);
        const IntervalSet a(pa), b(pb);
        ASSERT_EQ(bits(a.intervals()), a_bits);
        ASSERT_EQ(bits(unite(a, b).intervals()), a_bits | b_bits);
        ASSERT_EQ(bits(intersect(a, b).intervals()), a_bits & b_bits);
        ASSERT_EQ(bits(subtract(a, b).intervals()), a_bits & ~b_bits);
        ASSERT_EQ(unite(a, b), unite(b, a));
        ASSERT_EQ(intersect(a, b), intersect(b, a));
        ASSERT_EQ(unite(subtract(a, b), intersect(a, b)), a);
        ASSERT_EQ(unite(a, b).measure() + intersect(a, b).measure(), a.measure() + b.measure());
        const Interval where =
            piece(static_cast<long>(engine() % 60), static_cast<long>(engine() % 60));
        ASSERT_EQ(a.measure_within(where), intersect(a, IntervalSet(where)).measure());
        for (const IntervalSet& result : {a, unite(a, b), intersect(a, b), subtract(a, b)})
            for (std::size_t i = 1; i < result.intervals().size(); ++i)
                ASSERT_LT(result.intervals()[i - 1].to,
                          result.intervals()[i].from); // sorted, apart
    }
}

} // namespace
} // namespace evenfall
