// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Worked values that others have published, each with its source.
#include "core/estimate/nights.h"
#include "estimate/contradictions.h"
#include "estimate/diary_measures.h"
#include "estimate/estimate_json.h"

namespace evenfall {
namespace {

using test::min;
using test::night_of;

const std::string head =
    "{'format':'evenfall.night/1','zone':'Europe/Amsterdam','sensors':['finger'],"
    "'need':{'minutes':240,'groups':[['finger']]},";

/// The day of a clock time of one night: evening on the 4th, morning on the 5th.
std::string clock(const std::string& time)
{
    return (time < "12:00" ? "'2026-11-05T" : "'2026-11-04T") + time + "'";
}

/// Bed and lights out at once, rising at once after the final waking unless it is given.
Night diary(const std::string& bed, const std::string& sol, const std::string& waking,
            const std::string& up, const std::string& awake)
{
    return night_of(head + "'into_bed':" + clock(bed) + ",'lights_out':" + clock(bed) +
                    ",'asleep_after_min':" + sol + ",'final_waking':" + clock(waking) +
                    ",'out_of_bed':" + clock(up) + ",'awake':" + awake + "}");
}

/// SE in percent with one decimal, as published.
double one_decimal(const std::optional<long>& hundredths)
{
    return static_cast<double>((hundredths.value_or(-1) + 5) / 10) / 10.0;
}

TEST(PublishedDiaries, OneTimedAwakening)
{
    // Open data set lcvriend/sleepanalysis, data/example.csv and readme: bed 21:18, asleep 23:47,
    // awake 03:12-03:49, up 07:01 -> TIB 583, SOL 149, WASO 37 (1 awakening), TST 397, SE(TIB) 68.1
    const Night night = diary("21:18", "149", "07:01", "07:01",
                              "[{'from':'2026-11-05T03:12','to':'2026-11-05T03:49'}]");
    EXPECT_TRUE(contradictions(night).empty());
    const DiaryMeasures m = diary_measures(night);
    EXPECT_EQ(m.tib, min(583));
    EXPECT_EQ(m.sol, min(149));
    EXPECT_EQ(m.waso, min(37));
    EXPECT_EQ(m.awakenings, 1);
    EXPECT_EQ(m.tst, min(397));
    EXPECT_EQ(one_decimal(m.se_tib), 68.1);
}

TEST(PublishedDiaries, NightsWithoutAwakening)
{
    // Same data set: bed 21:12, asleep 23:53, final waking 06:53, up 06:59
    // -> TIB 587, SOL 161, WASO 0, TST 420, SE(TIB) 71.6
    const DiaryMeasures second = diary_measures(diary("21:12", "161", "06:53", "06:59", "[]"));
    EXPECT_EQ(second.tib, min(587));
    EXPECT_EQ(second.sol, min(161));
    EXPECT_EQ(second.waso, min(0));
    EXPECT_EQ(second.awakenings, 0);
    EXPECT_EQ(second.tst, min(420));
    EXPECT_EQ(one_decimal(second.se_tib), 71.6);
    // Same data set: bed 21:29, asleep 23:25, final waking 06:19, up 07:00
    // -> TIB 571, SOL 116, WASO 0, TST 414, SE(TIB) 72.5
    const DiaryMeasures third = diary_measures(diary("21:29", "116", "06:19", "07:00", "[]"));
    EXPECT_EQ(third.tib, min(571));
    EXPECT_EQ(third.sol, min(116));
    EXPECT_EQ(third.waso, min(0));
    EXPECT_EQ(third.tst, min(414));
    EXPECT_EQ(one_decimal(third.se_tib), 72.5);
}

// HL7 PHR implementation guide, SleepEpisode: bed 21:35, up 06:15, SOL 17.5, WASO 10.3, 5.2 from
// final waking to rising (06:09:48)
const std::string episode =
    head + "'into_bed':'2026-11-04T21:35','lights_out':'2026-11-04T21:35','asleep_after_min':17.5,"
           "'final_waking':'2026-11-05T06:09:48','out_of_bed':'2026-11-05T06:15','awake':[],"
           "'awake_untimed':{'times':1,'minutes':10.3}";

TEST(PublishedDiaries, DecimalsOfAMinute)
{
    // Example 1 of that guide: TIB 520, TST 487, SE(TIB) 93.7
    const Night night = night_of(episode + "}");
    EXPECT_TRUE(contradictions(night).empty());
    const DiaryMeasures m = diary_measures(night);
    EXPECT_EQ(m.tib, min(520));
    EXPECT_EQ(m.tst, min(487));
    EXPECT_EQ(one_decimal(m.se_tib), 93.7);
}

TEST(PublishedDiaries, PartsLongerThanTimeInBedAreRefused)
{
    // Example 2 of that guide: the same with 510 min asleep: 17.5 + 10.3 + 510 + 5.2 = 543 > 520
    const Problems problems = contradictions(night_of(episode + ",'slept_min':510}"));
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].code, "sleep_longer_than_bed");
    EXPECT_EQ(problems[0].at, "/slept_min");
    EXPECT_NE(problems[0].text.find("543 min"), std::string::npos) << problems[0].text;
    EXPECT_NE(problems[0].text.find("520 min"), std::string::npos) << problems[0].text;
    // Up to the time in bed it is the person's own idea, and stands: 487 min is just what is left.
    EXPECT_TRUE(contradictions(night_of(episode + ",'slept_min':487}")).empty());
}

TEST(PublishedDiaries, EfficiencyByEitherDenominator)
{
    // Inputs and 59 from a public teaching page (low authority): bed 21:00, lights out 22:00, SOL
    // 90, WASO 60, final waking 07:00, up 08:00 -> TIB 660, TST 390, SE(TIB) 59.1. DSE worked from
    // the definition in Reed & Sacco 2016, J Clin Sleep Med 12:263-6: with TASAFA 0 540 ->
    // SE(DSE) 72.2; with TASAFA 60 600 -> 65.0
    const std::string night =
        head +
        "'into_bed':'2026-11-04T21:00','lights_out':'2026-11-04T22:00','asleep_after_min':90,"
        "'final_waking':'2026-11-05T07:00','out_of_bed':'2026-11-05T08:00','awake':[],"
        "'awake_untimed':{'times':2,'minutes':60},'tried_to_sleep_after_waking_min':";
    const DiaryMeasures none = diary_measures(night_of(night + "0}"));
    EXPECT_EQ(none.tib, min(660));
    EXPECT_EQ(none.tst, min(390));
    EXPECT_EQ(one_decimal(none.se_tib), 59.1);
    EXPECT_EQ(none.dse, min(540));
    EXPECT_EQ(one_decimal(none.se_dse), 72.2);
    const DiaryMeasures hour = diary_measures(night_of(night + "60}"));
    EXPECT_EQ(hour.dse, min(600));
    EXPECT_EQ(one_decimal(hour.se_dse), 65.0);
}

TEST(PublishedDiaries, EightOfNineHours)
{
    // Decision Analytics 1:7, table 3: 9 h in bed, 8 h asleep -> SE 0.89
    const DiaryMeasures m = diary_measures(diary("22:00", "60", "07:00", "07:00", "[]"));
    EXPECT_EQ(m.se_tib, 8889);
}

TEST(PublishedDiaries, LengthsOverMidnight)
{
    // Tests of the R package mctq (rOpenSci): 22:00 to 07:00 is 540; 02:00 to 10:00 480; 23:30 to
    // 12:00 750; 03:15 to 10:45 450 min
    const auto tib = [](const std::string& from, const std::string& to) {
        return diary_measures(night_of(head + "'into_bed':" + from + ",'out_of_bed':" + to + "}"))
            .tib;
    };
    EXPECT_EQ(tib("'2026-11-04T22:00'", "'2026-11-05T07:00'"), min(540));
    EXPECT_EQ(tib("'2026-11-05T02:00'", "'2026-11-05T10:00'"), min(480));
    EXPECT_EQ(tib("'2026-11-04T23:30'", "'2026-11-05T12:00'"), min(750));
    EXPECT_EQ(tib("'2026-11-05T03:15'", "'2026-11-05T10:45'"), min(450));
}

TEST(PublishedDiaries, FallingAsleepOverMidnight)
{
    // Same tests: 23:15 + 30 is 23:45; 02:45 + 60 03:45; 23:30 + 90 01:00; 23:45 + 70 00:55. What
    // is left until 06:00 is then 375, 135, 300 and 305 min.
    EXPECT_EQ(diary_measures(diary("23:15", "30", "06:00", "06:00", "[]")).tst, min(375));
    EXPECT_EQ(diary_measures(diary("02:45", "60", "06:00", "06:00", "[]")).tst, min(135));
    EXPECT_EQ(diary_measures(diary("23:30", "90", "06:00", "06:00", "[]")).tst, min(300));
    EXPECT_EQ(diary_measures(diary("23:45", "70", "06:00", "06:00", "[]")).tst, min(305));
}

TEST(DiaryMeasures, AnEfficiencyOverThousandsOfYearsIsAbsent)
{
    // Contradictory, and yet asked for by who explains what is wrong.
    const DiaryMeasures m = diary_measures(night_of(
        head + "'into_bed':'2026-11-04T22:00','lights_out':'2026-11-04T22:00','asleep_after_min':20,"
               "'final_waking':'4052-11-05T06:00','out_of_bed':'2026-11-05T06:30','awake':[]}"));
    ASSERT_TRUE(m.tst && m.tib);
    EXPECT_GT(*m.tst, Span(std::chrono::hours(24 * 365 * 2000)));
    EXPECT_FALSE(m.se_tib);
}

TEST(DiaryMeasures, WithoutItsAnswersAMeasureIsAbsentAndNeverZero)
{
    const DiaryMeasures m = diary_measures(
        night_of(head + "'lights_out':'2026-11-04T22:00','final_waking':'2026-11-05T06:00',"
                        "'awake_untimed':{'times':1,'minutes':5}}"));
    EXPECT_EQ(m,
              DiaryMeasures{}); // awakenings not answered: no WASO, no TST, even with untimed ones
}

} // namespace
} // namespace evenfall
