// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Sets of intervals against Boost.ICL, 100,000 random sets.
#if defined(__GNUC__) && !defined(__clang__)
// gcc 12 takes the header node of a std::set inside Boost's set for a pointer that is kept too
// long.
#pragma GCC diagnostic ignored "-Wdangling-pointer"
#endif

#include "base/intervals.h"

#include <boost/icl/interval_set.hpp>
#include <gtest/gtest.h>
#include <random>

namespace evenfall {
namespace {

namespace icl = boost::icl;
using Reference = icl::interval_set<long>;

std::vector<Interval> random_pieces(std::mt19937_64& engine)
{
    const std::size_t most = engine() % 10 == 0 ? 60 : 8;
    const long range = engine() % 2 ? 40 : 5000; // dense: much touching and overlap; or sparse
    std::vector<Interval> out(engine() % (most + 1));
    for (Interval& one : out) {
        const long from = static_cast<long>(engine() % static_cast<std::uint64_t>(range));
        const long length = static_cast<long>(engine() % static_cast<std::uint64_t>(range / 4)) -
                            2; // some empty, some reversed
        one = {Instant(Span(from)), Instant(Span(from + length))};
    }
    return out;
}

Reference reference(const std::vector<Interval>& pieces)
{
    Reference out;
    for (const Interval& one : pieces)
        out.add(icl::interval<long>::right_open(one.from.time_since_epoch().count(),
                                                one.to.time_since_epoch().count()));
    return out;
}

bool same(const IntervalSet& ours, const Reference& theirs)
{
    if (ours.intervals().size() != icl::interval_count(theirs))
        return false;
    auto own = ours.intervals().begin();
    for (const auto& one : theirs) {
        if (own->from.time_since_epoch().count() != one.lower() ||
            own->to.time_since_epoch().count() != one.upper())
            return false;
        ++own;
    }
    return ours.measure().count() == static_cast<long>(icl::length(theirs));
}

TEST(BoostIcl, AgreesOnRandomSets)
{
    std::mt19937_64 engine(51);
    int sets = 0;
    for (; sets < 100000; sets += 2) {
        const std::vector<Interval> pa = random_pieces(engine), pb = random_pieces(engine);
        const IntervalSet a(pa), b(pb);
        const Reference ra = reference(pa), rb = reference(pb);
        ASSERT_TRUE(same(a, ra)) << sets;
        ASSERT_TRUE(same(b, rb)) << sets;
        ASSERT_TRUE(same(unite(a, b), ra + rb)) << sets;
        ASSERT_TRUE(same(intersect(a, b), ra & rb)) << sets;
        ASSERT_TRUE(same(subtract(a, b), ra - rb)) << sets;
    }
    std::printf("%d sets\n", sets);
}

} // namespace
} // namespace evenfall
