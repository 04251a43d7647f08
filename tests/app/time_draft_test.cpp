// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// A time as a person sets it, on the nights when a clock on the wall says too little.
#include "kiosk/time_draft.h"

#include <gtest/gtest.h>

namespace {

using namespace evenfall;
using std::chrono::minutes;
using Meant = TimeDraft::Meant;
using Sureness = TimeDraft::Sureness;
using Which = TimeDraft::Which;

Instant at(const char* text) { return *resolve(*parse_time(text), nullptr); }

class TimeDraftTest : public testing::Test {
  protected:
    // IANA tz database 2025b: 1 Nov 2026 01:30 in New York is both 05:30Z and 06:30Z; 8 Mar 2026
    // 02:30 does not exist there.
    ZonePtr zone_ = *find_zone("America/New_York");

    TimeDraft at_two_in_autumn() const { return TimeDraft::from(TimeRange::exactly(at("2026-11-01T02:00:00-05:00")), *zone_); }
    TimeDraft before_two_in_spring() const { return TimeDraft::from(TimeRange::exactly(at("2026-03-08T01:55:00-05:00")), *zone_); }
};

TEST_F(TimeDraftTest, AsksWhichOne_OfTheHourThatComesTwice)
{
    TimeDraft draft = at_two_in_autumn();
    draft.step(minutes(-30), Which::time, *zone_);
    EXPECT_FALSE(draft.doubt()) << "before it is known how sure the person is";
    draft.choose(Sureness::exact);
    ASSERT_EQ(draft.doubt(), Which::time);
    EXPECT_FALSE(draft.range());

    TimeDraft first = draft, second = draft, either = draft;
    first.settle(Which::time, Meant::first, *zone_);
    second.settle(Which::time, Meant::second, *zone_);
    either.settle(Which::time, Meant::either, *zone_);
    EXPECT_EQ(first.range(), TimeRange::exactly(at("2026-11-01T05:30:00Z")));
    EXPECT_EQ(second.range(), TimeRange::exactly(at("2026-11-01T06:30:00Z")));
    EXPECT_EQ(either.range(), (TimeRange{at("2026-11-01T05:30:00Z"), at("2026-11-01T06:30:00Z")}));
    either.choose(Sureness::about);
    EXPECT_EQ(either.range(), (TimeRange{at("2026-11-01T05:15:00Z"), at("2026-11-01T06:45:00Z")}));
}

TEST_F(TimeDraftTest, KeepsTheAnswer_WithinThatHour_AndAsksAgainAfterLeavingIt)
{
    TimeDraft draft = at_two_in_autumn();
    draft.choose(Sureness::exact);
    draft.step(minutes(-30), Which::time, *zone_);
    draft.settle(Which::time, Meant::second, *zone_);
    draft.step(minutes(-20), Which::time, *zone_);
    EXPECT_EQ(draft.range(), TimeRange::exactly(at("2026-11-01T06:10:00Z")));
    draft.step(minutes(-20), Which::time, *zone_); // 00:50
    EXPECT_EQ(draft.range(), TimeRange::exactly(at("2026-11-01T04:50:00Z")));
    draft.step(minutes(20), Which::time, *zone_);
    EXPECT_TRUE(draft.doubt());
}

TEST_F(TimeDraftTest, KnowsWhichOne_OfATimeThatWasNoted)
{
    TimeDraft draft = TimeDraft::from(TimeRange::exactly(at("2026-11-01T06:40:12Z")), *zone_);
    draft.choose(Sureness::exact);
    EXPECT_FALSE(draft.doubt());
    EXPECT_EQ(draft.range(), TimeRange::exactly(at("2026-11-01T06:40:00Z")));
}

TEST_F(TimeDraftTest, AsksWhatIsMeant_ByATimeThatDoesNotExist)
{
    TimeDraft draft = before_two_in_spring();
    draft.step(minutes(35), Which::time, *zone_);
    draft.choose(Sureness::exact);
    EXPECT_EQ(format_time(Instant(draft.time.shown.time_since_epoch()), std::chrono::seconds(0)), "2026-03-08T02:30:00+00:00");
    ASSERT_EQ(draft.doubt(), Which::time);

    TimeDraft first = draft, second = draft;
    first.settle(Which::time, Meant::first, *zone_);
    second.settle(Which::time, Meant::second, *zone_);
    EXPECT_EQ(first.range(), TimeRange::exactly(at("2026-03-08T01:30:00-05:00")));
    EXPECT_EQ(second.range(), TimeRange::exactly(at("2026-03-08T03:30:00-04:00")));
    EXPECT_EQ(first.time, WallTime::of(at("2026-03-08T01:30:00-05:00"), *zone_)) << "shown as what was meant";
}

TEST_F(TimeDraftTest, AsksForEachEnd_AndKeepsThemInOrder)
{
    TimeDraft draft = at_two_in_autumn();
    draft.choose(Sureness::between);
    draft.step(minutes(-15), Which::earliest, *zone_); // 01:30
    draft.step(minutes(-45), Which::latest, *zone_);   // 01:30
    EXPECT_EQ(draft.doubt(), Which::earliest);
    draft.settle(Which::earliest, Meant::first, *zone_);
    EXPECT_EQ(draft.doubt(), Which::latest);
    draft.settle(Which::latest, Meant::second, *zone_);
    EXPECT_EQ(draft.range(), (TimeRange{at("2026-11-01T05:30:00Z"), at("2026-11-01T06:30:00Z")}));

    draft.step(minutes(20), Which::earliest, *zone_);
    draft.step(minutes(60), Which::earliest, *zone_); // past the other end: stops there
    ASSERT_TRUE(draft.range());
    EXPECT_LE(draft.range()->earliest, draft.range()->latest);
}

TEST_F(TimeDraftTest, ReadsBackWhatItWrote_WithAndWithoutDoubt)
{
    TimeDraft draft = at_two_in_autumn();
    draft.step(minutes(-30), Which::time, *zone_);
    draft.choose(Sureness::about);
    for (const bool settled : {false, true}) {
        if (settled)
            draft.settle(Which::time, Meant::either, *zone_);
        const std::optional<TimeDraft> again = TimeDraft::parse(draft.json());
        ASSERT_TRUE(again);
        EXPECT_EQ(again->json(), draft.json());
        EXPECT_EQ(again->doubt(), draft.doubt());
        EXPECT_EQ(again->range(), draft.range());
    }
    EXPECT_FALSE(TimeDraft::parse(Json{{"time", 1}}));
}

} // namespace
