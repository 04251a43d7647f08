// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "estimate/estimate.h"

#include "core/estimate/nights.h"
#include "estimate/chance.h"
#include "estimate/contradictions.h"
#include "estimate/estimate_json.h"

namespace evenfall {
namespace {

using test::min;
using test::night_of;
using test::RandomNights;

const std::string head =
    "{'format':'evenfall.night/1','zone':'Europe/Berlin','sensors':['cannula','breath','finger'],";
const std::string both = "'need':{'minutes':240,'groups':[['cannula'],['finger']]},";

/// Invented: window 22:00 to 06:00, eight hours.
const std::string eight_hours =
    head + both + "'lights_out':'2026-11-04T22:00','lights_on':'2026-11-05T06:00'";

void expect_bounds(const std::optional<Bounds>& bounds, double least, double guess, double most)
{
    ASSERT_TRUE(bounds.has_value());
    EXPECT_EQ(bounds->at_least, min(least));
    EXPECT_EQ(bounds->best_guess, min(guess));
    EXPECT_EQ(bounds->at_most, min(most));
}

TEST(Estimate, CountsTheWholeWindowWhenNothingCameOff)
{
    const Estimate result = estimate(night_of(eight_hours + "}"));
    expect_bounds(result.window, 480, 480, 480);
    expect_bounds(result.needed, 480, 480, 480);
    EXPECT_EQ(result.verdict, Verdict::enough);
    EXPECT_EQ(result.chance_enough, 1.0);
    EXPECT_EQ(result.wake_missing,
              (std::vector<std::string>{"asleep_after_min", "final_waking", "awake"}));
    EXPECT_TRUE(result.lost.empty());
}

TEST(Estimate, WindowIsTheLaterStartAndTheEarlierEnd)
{
    const Estimate result = estimate(night_of(
        eight_hours + ",'recording':{'from':'2026-11-04T22:30','to':'2026-11-05T05:00'}}"));
    expect_bounds(result.window, 390, 390, 390);
    ASSERT_EQ(result.lost.size(), 2u);
    EXPECT_EQ(result.lost[0], (Loss{"late_start", min(30), min(30)}));
    EXPECT_EQ(result.lost[1], (Loss{"early_end", min(60), min(60)}));
}

TEST(Estimate, WindowWithoutAnEndIsUnknown)
{
    const Estimate result = estimate(night_of(head + both + "'lights_out':'2026-11-04T22:00'}"));
    EXPECT_FALSE(result.window || result.needed || result.needed_asleep || result.chance_enough);
    EXPECT_EQ(result.verdict, Verdict::unknown);
    const Json json = estimate_to_json(result);
    EXPECT_EQ(json["window"], Json::object());
    EXPECT_EQ(json["verdict"], "unknown");
    EXPECT_EQ(json["sensors"]["finger"], Json::object());
}

TEST(Estimate, EmptyWindowIsShort)
{
    const Estimate result = estimate(night_of(
        eight_hours + ",'recording':{'from':'2026-11-05T06:30','to':'2026-11-05T07:00'}}"));
    expect_bounds(result.needed, 0, 0, 0);
    EXPECT_EQ(result.verdict, Verdict::too_short);
}

TEST(Estimate, GroupIsOnWhileAnyOfItsSensorsIs)
{
    const std::string off = ",'off':[{'sensor':'cannula','from':'2026-11-05T00:00','to':null},"
                            "{'sensor':'breath','from':'2026-11-05T05:00','to':null}]}";
    const std::string either = "'need':{'minutes':240,'groups':[['cannula','breath'],['finger']]},";
    const Estimate result =
        estimate(night_of(head + either + eight_hours.substr((head + both).size()) + off));
    expect_bounds(result.needed, 420, 420, 420);
    EXPECT_EQ(result.lost[0], (Loss{"cannula", min(360), min(60)}));
    EXPECT_EQ(result.lost[1], (Loss{"breath", min(60), min(60)}));
}

TEST(Estimate, EachEndOfARemovalHasItsOwnRange)
{
    const Estimate result = estimate(night_of(
        eight_hours + ",'off':[{'sensor':'finger','from':{'earliest':'2026-11-05T00:00','latest':'"
                      "2026-11-05T01:00'},"
                      "'to':{'earliest':'2026-11-05T00:30','latest':'2026-11-05T03:00'}}]}"));
    // Widest 180 min; narrowest nothing, because the ranges overlap; middles 00:30 to 01:45.
    expect_bounds(result.needed, 300, 405, 480);
}

TEST(Estimate, LengthOnlyWakeWithExactBeginningIsExact)
{
    const Estimate result =
        estimate(night_of(eight_hours + ",'asleep_after_min':0,'final_waking':'2026-11-05T06:00',"
                                        "'awake':[{'from':'2026-11-05T03:00','minutes':12.5}]}"));
    expect_bounds(result.needed_asleep, 467.5, 467.5, 467.5);
}

TEST(Estimate, LengthOnlyWakeMayFallWhereNothingCountsAnyway)
{
    // 30 min awake from some time between 02:00 and 04:00, that is within R = [02:00, 04:30); the
    // probe was off from 02:00 to 03:00, so U in R is 90 min and R outside U is 60 min.
    const Estimate result = estimate(
        night_of(eight_hours +
                 ",'asleep_after_min':0,'final_waking':'2026-11-05T06:00',"
                 "'off':[{'sensor':'finger','from':'2026-11-05T02:00','to':'2026-11-05T03:00'}],"
                 "'awake':[{'from':{'earliest':'2026-11-05T02:00','latest':'2026-11-05T04:00'},'"
                 "minutes':30}]}"));
    // Best guess: from 03:00, all of it where it counts.
    expect_bounds(result.needed_asleep, 390, 390, 420);
}

TEST(Estimate, UntimedWakeCountsInProportion)
{
    // R is the whole 480 min, of which 360 count: 40 min take 40 * 360 / 480 = 30 by best guess, at
    // most 40, and none at least, as 120 min of R do not count.
    const Estimate result = estimate(
        night_of(eight_hours +
                 ",'asleep_after_min':0,'final_waking':'2026-11-05T06:00','awake':[],"
                 "'awake_untimed':{'times':2,'minutes':40},"
                 "'off':[{'sensor':'finger','from':'2026-11-05T02:00','to':'2026-11-05T04:00'}]}"));
    expect_bounds(result.needed_asleep, 320, 330, 360);
}

TEST(Estimate, MissingWakeAnswersTakeNothingAwayAndAreNamed)
{
    const Estimate result = estimate(night_of(
        head + both +
        "'recording':{'from':'2026-11-04T22:00','to':'2026-11-05T06:00'},'asleep_after_min':30}"));
    expect_bounds(result.needed_asleep, 480, 480, 480);
    EXPECT_EQ(result.wake_missing,
              (std::vector<std::string>{"lights_out", "final_waking", "awake"}));
}

TEST(Estimate, RoundsAtLeastDownAndAtMostUp)
{
    // A third of a minute on each side: 20 s. 479.666.. down, 480.333.. up.
    const Estimate result = estimate(
        night_of(head + both +
                 "'lights_out':{'earliest':'2026-11-04T22:00:00','latest':'2026-11-04T22:00:20'},"
                 "'lights_on':{'earliest':'2026-11-05T06:00:00','latest':'2026-11-05T06:00:20'}}"));
    const Json json = estimate_to_json(result);
    EXPECT_EQ(json["needed"]["at_least"], 479.66);
    EXPECT_EQ(json["needed"]["best_guess"], 480);
    EXPECT_EQ(json["needed"]["at_most"], 480.34);
}

TEST(Estimate, VerdictIsTakenBeforeRounding)
{
    // 239.9999 min: rounded to two decimals it would reach 240.
    const std::string window =
        "'lights_out':'2026-11-04T22:00:00','lights_on':'2026-11-05T01:59:59.99'}";
    const Estimate result = estimate(night_of(head + both + window));
    EXPECT_EQ(estimate_to_json(result)["needed"]["at_most"], 240);
    EXPECT_EQ(result.verdict, Verdict::too_short);
}

bool within(const Bounds& inner, const Bounds& outer)
{
    return inner.at_least >= outer.at_least && inner.at_most <= outer.at_most;
}

/// Each bound of one estimate against the same of another.
template <class Check>
void each_bound(const Estimate& a, const Estimate& b, Check check)
{
    check(*a.window, *b.window);
    check(*a.needed, *b.needed);
    check(*a.needed_asleep, *b.needed_asleep);
    for (std::size_t i = 0; i < a.sensors.size(); ++i)
        check(*a.sensors[i].second, *b.sensors[i].second);
}

const EstimateOptions no_chance{false, 0, 0};

TEST(EstimateLaws, BestGuessLiesWithinItsBounds)
{
    RandomNights random(11);
    for (int round = 0; round < 20000; ++round) {
        const Night night = random.night(round % 2 == 0);
        const Estimate result = estimate(night, no_chance);
        each_bound(result, result, [&](const Bounds& one, const Bounds&) {
            ASSERT_LE(one.at_least, one.best_guess) << night_to_json(night).dump();
            ASSERT_LE(one.best_guess, one.at_most) << night_to_json(night).dump();
            ASSERT_GE(one.at_least, Span(0));
        });
        ASSERT_LE(result.needed_asleep->at_most, result.needed->at_most);
        ASSERT_LE(result.needed->at_most, result.window->at_most);
    }
}

TEST(EstimateLaws, AnotherRemovalNeverAddsMinutes)
{
    RandomNights random(12);
    for (int round = 0; round < 20000; ++round) {
        Night night = random.night(false);
        const Estimate before = estimate(night, no_chance);
        const auto [from, to] = random.interval(0, 44);
        night.off.push_back({night.sensors[static_cast<std::size_t>(random.pick(0, 2))], from, to});
        const Estimate after = estimate(night, no_chance);
        each_bound(after, before, [&](const Bounds& less, const Bounds& more) {
            ASSERT_LE(less.at_least, more.at_least) << night_to_json(night).dump();
            ASSERT_LE(less.best_guess, more.best_guess) << night_to_json(night).dump();
            ASSERT_LE(less.at_most, more.at_most) << night_to_json(night).dump();
        });
    }
}

/// Draws the range of one time in, from either side.
bool narrow(RandomNights& random, std::optional<TimeRange>& range)
{
    if (!range || range->exact())
        return false;
    if (random.chance(50))
        range->earliest += RandomNights::step;
    else
        range->latest -= RandomNights::step;
    return true;
}

TEST(EstimateLaws, NarrowingARangeNeverWidensABound)
{
    RandomNights random(13);
    int narrowed = 0;
    for (int round = 0; round < 20000; ++round) {
        Night night = random.night(round % 2 == 0);
        const Estimate before = estimate(night, no_chance);
        std::vector<std::optional<TimeRange>*> times{&night.recording_from, &night.recording_to,
                                                     &night.lights_out, &night.lights_on,
                                                     &night.final_waking};
        for (Removal& removal : night.off) {
            times.push_back(&removal.from);
            times.push_back(&removal.to);
        }
        if (night.awake)
            for (Awakening& awakening : *night.awake)
                times.push_back(&awakening.to);
        if (!narrow(random, *times[static_cast<std::size_t>(
                                random.pick(0, static_cast<long>(times.size()) - 1))]))
            continue;
        // Narrowing may leave an interval no order at all: that is a contradiction, not a night.
        bool ordered = !(night.recording_from && night.recording_to) ||
                       night.recording_from->earliest <= night.recording_to->latest;
        for (const Removal& removal : night.off)
            ordered = ordered && (!removal.from || !removal.to ||
                                  removal.from->earliest <= removal.to->latest);
        if (night.awake)
            for (const Awakening& awakening : *night.awake)
                ordered =
                    ordered && (!awakening.to || awakening.from.earliest <= awakening.to->latest);
        if (!ordered)
            continue;
        ++narrowed;
        const Estimate after = estimate(night, no_chance);
        each_bound(after, before, [&](const Bounds& inner, const Bounds& outer) {
            ASSERT_TRUE(within(inner, outer)) << night_to_json(night).dump();
        });
    }
    EXPECT_GT(narrowed, 2000);
}

TEST(EstimateLaws, OrderNeverMatters)
{
    RandomNights random(14);
    for (int round = 0; round < 300; ++round) {
        Night night = random.night(true);
        const EstimateOptions few{true, 500, 20000};
        const std::string before = estimate_to_json(estimate(night, few)).dump();
        std::shuffle(night.off.begin(), night.off.end(), random.engine);
        if (night.awake)
            std::shuffle(night.awake->begin(), night.awake->end(), random.engine);
        std::shuffle(night.need.groups.begin(), night.need.groups.end(), random.engine);
        ASSERT_EQ(estimate_to_json(estimate(night, few)).dump(), before);
    }
}

TEST(EstimateLaws, ChanceAgreesWithTheBounds)
{
    // Nothing but draws: the shortcut for a decided verdict is not taken here.
    RandomNights random(15);
    for (int round = 0; round < 1000; ++round) {
        const Night night = random.night(false);
        const Estimate result = estimate(night, no_chance);
        const double chance = chance_enough(night, 50, 20000);
        if (result.verdict == Verdict::enough) {
            ASSERT_EQ(chance, 1.0) << night_to_json(night).dump();
        }
        if (result.verdict == Verdict::too_short) {
            ASSERT_EQ(chance, 0.0) << night_to_json(night).dump();
        }
    }
}

} // namespace
} // namespace evenfall
