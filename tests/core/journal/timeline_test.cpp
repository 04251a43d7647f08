// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "journal/timeline.h"

#include "core/journal/entries.h"

#include <gtest/gtest.h>

namespace evenfall {
namespace {

using std::chrono::hours;
using std::chrono::milliseconds;
using std::chrono::minutes;
using std::chrono::seconds;
using test::minute;
using test::stamp_at;
using test::Story;

/// The same moment with the wall clock wrong by so much.
Stamp wrong_by(double minute_of_evening, Span by, const std::string& boot = "boot-1")
{
    Stamp stamp = stamp_at(minute_of_evening * 60, boot);
    stamp.utc += by;
    return stamp;
}

TEST(Timeline, IsEmpty_WithoutEntries)
{
    const Timeline timeline = timeline_of({});
    EXPECT_TRUE(timeline.at.empty());
    EXPECT_TRUE(timeline.jumps.empty());
}

TEST(Timeline, IsTheWallClock_WhenThatRunsAsItShould)
{
    Story story;
    story.tell(0, "a").tell(10, "b").tell(400, "c");
    const Timeline timeline = timeline_of(story.entries());
    EXPECT_EQ(timeline.at, (std::vector{minute(0), minute(10), minute(400)}));
    EXPECT_TRUE(timeline.jumps.empty());
}

TEST(Timeline, IsRightBeforeTheCorrectionToo_WhenAFastClockIsCorrected)
{
    Story story;
    story.tell(wrong_by(0, hours(1)), "a").tell(wrong_by(10, hours(1)), "b").tell(20, "c").tell(30, "d");
    const Timeline timeline = timeline_of(story.entries());
    EXPECT_EQ(timeline.at, (std::vector{minute(0), minute(10), minute(20), minute(30)}));
    ASSERT_EQ(timeline.jumps.size(), 1u);
    EXPECT_EQ(timeline.jumps[0].entry, 3);
    EXPECT_EQ(timeline.jumps[0].by, -hours(1));
}

TEST(Timeline, IsRightBeforeTheCorrectionToo_WhenASlowClockIsCorrected)
{
    Story story;
    story.tell(wrong_by(0, -minutes(7)), "a").tell(20, "b");
    const Timeline timeline = timeline_of(story.entries());
    EXPECT_EQ(timeline.at, (std::vector{minute(0), minute(20)}));
    ASSERT_EQ(timeline.jumps.size(), 1u);
    EXPECT_EQ(timeline.jumps[0].by, minutes(7));
}

TEST(Timeline, KeepsElapsedTime_WhenTheClockJumpsSeveralTimes)
{
    Story story;
    story.tell(0, "a").tell(wrong_by(5, hours(3)), "b").tell(wrong_by(6, -hours(3)), "c").tell(7, "d");
    const Timeline timeline = timeline_of(story.entries());
    EXPECT_EQ(timeline.at, (std::vector{minute(0), minute(5), minute(6), minute(7)}));
    EXPECT_EQ(timeline.jumps.size(), 3u);
}

TEST(Timeline, NamesNoJump_WhenTheClockIsOnlySteered)
{
    Story story;
    story.tell(0, "a").tell(wrong_by(5, milliseconds(2000)), "b").tell(wrong_by(9, milliseconds(0)), "c");
    EXPECT_TRUE(timeline_of(story.entries()).jumps.empty());
    Story jumping;
    jumping.tell(0, "a").tell(wrong_by(5, milliseconds(2001)), "b");
    EXPECT_EQ(timeline_of(jumping.entries()).jumps.size(), 1u);
}

TEST(Timeline, TakesEachBootByItself_WhenTheMachineWasStartedAgain)
{
    Story story;
    story.tell(wrong_by(0, minutes(30)), "a").tell(1, "b"); // corrected within the first boot
    Stamp later = stamp_at(120 * 60.0, "boot-2");
    later.since_boot = seconds(40);
    story.tell(later, "c");
    const Timeline timeline = timeline_of(story.entries());
    EXPECT_EQ(timeline.at, (std::vector{minute(0), minute(1), minute(120)}));
    ASSERT_EQ(timeline.jumps.size(), 1u) << "a new boot is no jump";
    EXPECT_EQ(timeline.jumps[0].entry, 2);
}

TEST(Timeline, NeverRunsBackwardsWithinABoot_WhateverTheWallClockSays)
{
    Story story;
    std::uint64_t state = 4;
    for (int i = 0; i < 500; ++i) {
        state = state * 6364136223846793005u + 1442695040888963407u;
        story.tell(wrong_by(i, seconds(static_cast<long>(state >> 48) - 32768)), "x");
    }
    const Timeline timeline = timeline_of(story.entries());
    for (size_t i = 1; i < timeline.at.size(); ++i)
        ASSERT_EQ(timeline.at[i] - timeline.at[i - 1], minutes(1)) << i;
}

} // namespace
} // namespace evenfall
