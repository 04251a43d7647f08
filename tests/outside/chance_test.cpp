// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// chance_enough against cases that can be solved on paper. The formula stands beside each check.
// Invented nights. 20,000 draws have a standard deviation of sqrt(p (1 - p) / 20000), at most
// 0.0036; the seed is fixed, and four of those are allowed.
#include "core/estimate/nights.h"
#include "estimate/chance.h"
#include "estimate/estimate.h"

#include <cmath>

namespace evenfall {
namespace {

using test::min;

constexpr int draws = 20000;

void expect_chance(const Night& night, double right)
{
    const double found = chance_enough(night, draws, 20000);
    EXPECT_NEAR(found, right, 4 * std::sqrt(right * (1 - right) / draws) + 1e-9);
    EXPECT_EQ(estimate(night).chance_enough, found);
}

const Instant t0 = Instant{std::chrono::sys_days{std::chrono::year{2026} / 11 / 4}};
TimeRange from_to(double earliest, double latest) { return {t0 + min(earliest), t0 + min(latest)}; }

/// Lights out at 0, lights on at 480 min; one sensor.
Night plain(double need)
{
    Night night;
    night.sensors = {"finger"};
    night.need = {min(need), {{"finger"}}};
    night.lights_out = from_to(0, 0);
    night.lights_on = from_to(480, 480);
    return night;
}

TEST(ChanceOnPaper, OneUncertainEndIsLinear)
{
    // Off from X uniform in [180, 300] to the end: needed = X, so P(X >= n) = (300 - n) / 120.
    for (const double need : {190.0, 240.0, 291.0}) {
        Night night = plain(need);
        night.off.push_back({"finger", from_to(180, 300), std::nullopt});
        expect_chance(night, (300 - need) / 120);
    }
}

TEST(ChanceOnPaper, TwoUncertainEndsAreTriangular)
{
    // Lights out X and lights on 240 + Y, both uniform over w = 60: needed = 240 + (Y - X), and Y -
    // X is triangular on [-w, w]: P(Y - X >= d) = (w - d)^2 / (2 w^2) for d >= 0, and 1 - (w + d)^2
    // / (2 w^2) for d < 0.
    const double w = 60;
    for (const double d : {-40.0, -10.0, 0.0, 20.0, 45.0}) {
        Night night = plain(240 + d);
        night.lights_out = from_to(0, w);
        night.lights_on = from_to(240, 240 + w);
        expect_chance(night, d >= 0 ? (w - d) * (w - d) / (2 * w * w)
                                    : 1 - (w + d) * (w + d) / (2 * w * w));
    }
}

TEST(ChanceOnPaper, EndsOfOneIntervalWithTheSameRangeComeInOrder)
{
    // Off from X to Y, (X, Y) uniform over the triangle X <= Y in [100, 160]^2, w = 60. The length
    // L = Y - X has P(L <= d) = 1 - (1 - d / w)^2, and needed = 480 - L.
    const double w = 60;
    for (const double d : {6.0, 20.0, 45.0}) {
        Night night = plain(480 - d);
        night.off.push_back({"finger", from_to(100, 160), from_to(100, 160)});
        expect_chance(night, 1 - (1 - d / w) * (1 - d / w));
    }
}

TEST(ChanceOnPaper, RangesThatOverlapInPartAreUniformOverTheirOrderedPart)
{
    // X in [0, 60], Y in [30, 90], X <= Y. In units of 30: X in [0, 2], Y in [1, 3]; the ordered
    // part has the area 4 - 1/2 = 7/2. Length Y - X <= 1/2: for X from 1/2 to 1 the strip is X -
    // 1/2 high (1/8 in all), for X from 1 to 2 it is 1/2 high (1/2 in all): P = (5/8) / (7/2) =
    // 5/28.
    Night night = plain(480 - 15);
    night.off.push_back({"finger", from_to(100, 160), from_to(130, 190)});
    expect_chance(night, 5.0 / 28);
}

TEST(ChanceOnPaper, AnExactEndLeavesTheOtherUniformBeforeIt)
{
    // X in [100, 200] but not after Y = 150: X uniform in [100, 150], length 150 - X, so that
    // P(150 - X <= d) = d / 50.
    Night night = plain(480 - 20);
    night.off.push_back({"finger", from_to(100, 200), from_to(150, 150)});
    expect_chance(night, 20.0 / 50);
    // Y in [100, 200] but not before X = 150: the same from the other side.
    Night other = plain(480 - 20);
    other.off.push_back({"finger", from_to(150, 150), from_to(100, 200)});
    expect_chance(other, 20.0 / 50);
}

TEST(ChanceOnPaper, IndependentSensorsMultiply)
{
    // Two sensors, each off from an X uniform in [180, 300] to the end: needed = min(X1, X2), so
    // that P(needed >= n) = ((300 - n) / 120)^2.
    Night night = plain(225);
    night.sensors = {"finger", "cannula"};
    night.need.groups = {{"finger"}, {"cannula"}};
    night.off.push_back({"finger", from_to(180, 300), std::nullopt});
    night.off.push_back({"cannula", from_to(180, 300), std::nullopt});
    expect_chance(night, 75.0 / 120 * 75.0 / 120);
    // As alternatives needed = max(X1, X2): 1 - (1 - (300 - n) / 120)^2.
    night.need.groups = {{"finger", "cannula"}};
    expect_chance(night, 1 - (1 - 75.0 / 120) * (1 - 75.0 / 120));
}

TEST(Chance, IsTheSameEverywhere)
{
    // The engine is fixed by the C++ standard ([rand.predef]: the 10000th value of a default
    // mt19937_64 is 9981545732273789042), the mapping is ours. The share is of our own making: it
    // stands here so that a change of the draws is seen.
    std::mt19937_64 engine;
    engine.discard(9999);
    EXPECT_EQ(engine(), 9981545732273789042ULL);
    Night night = plain(230);
    night.lights_out = from_to(0, 60);
    night.lights_on = from_to(230, 330);
    night.off.push_back({"finger", from_to(20, 70), from_to(40, 90)});
    EXPECT_EQ(chance_enough(night, draws, 20000), 0.47725);
}

} // namespace
} // namespace evenfall
