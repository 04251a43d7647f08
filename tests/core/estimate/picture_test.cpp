// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "estimate/picture.h"

#include "base/intervals.h"
#include "core/estimate/nights.h"
#include "estimate/estimate.h"

namespace evenfall {
namespace {

using test::min;
using test::night_of;
using test::RandomNights;

const std::string head = "{'format':'evenfall.night/1','sensors':['cannula','finger'],"
                         "'need':{'minutes':240,'groups':[['finger']]},";

TEST(Picture, UncertainEndIsASoftSpanBetweenOnAndOff)
{
    const Night night = night_of(
        head +
        "'zone':'Europe/Berlin','lights_out':'2026-11-04T22:00','lights_on':'2026-11-05T06:00',"
        "'off':[{'sensor':'finger','from':{'earliest':'2026-11-05T01:00','latest':'2026-11-05T02:"
        "00'},'to':'2026-11-05T03:00'}]}");
    const auto drawn = picture(night);
    ASSERT_TRUE(drawn);
    const Instant t = drawn->from;
    EXPECT_EQ(drawn->lanes[1].id, "finger");
    EXPECT_EQ(
        drawn->lanes[1].spans,
        (std::vector<PictureSpan>{{t, t + min(180), SpanKind::on, Certainty::solid},
                                  {t + min(180), t + min(240), SpanKind::off, Certainty::soft},
                                  {t + min(240), t + min(300), SpanKind::off, Certainty::solid},
                                  {t + min(300), t + min(480), SpanKind::on, Certainty::solid}}));
    EXPECT_EQ(drawn->lanes[0].spans.size(), 1u);
    EXPECT_TRUE(drawn->lanes[2].spans.empty()); // nothing was said about sleep
}

TEST(Picture, SleepLaneShowsWake)
{
    const Night night = night_of(
        head +
        "'zone':'Europe/"
        "Berlin','lights_out':'2026-11-04T22:00','asleep_after_min':30,'lights_on':'2026-11-05T06:"
        "00',"
        "'final_waking':'2026-11-05T05:30','awake':[{'from':'2026-11-05T01:00','minutes':15}]}");
    const auto drawn = picture(night);
    ASSERT_TRUE(drawn);
    const Instant t = drawn->from;
    EXPECT_EQ(drawn->lanes[2].spans,
              (std::vector<PictureSpan>{
                  {t, t + min(30), SpanKind::awake, Certainty::solid},
                  {t + min(30), t + min(180), SpanKind::asleep, Certainty::solid},
                  {t + min(180), t + min(195), SpanKind::awake, Certainty::solid},
                  {t + min(195), t + min(450), SpanKind::asleep, Certainty::solid},
                  {t + min(450), t + min(480), SpanKind::awake, Certainty::solid}}));
}

/// Local hours of the ticks; a clock change as "from>to" in hours of the offset.
std::string ticks_of(const NightPicture& drawn)
{
    std::string out;
    for (const PictureTick& tick : drawn.ticks) {
        out += std::to_string(tick.local.count() / 60) + (tick.local.count() % 60 ? ":30" : "");
        if (tick.clock_change)
            out += "(" + std::to_string(tick.offset_before.count() / 60) + ">" +
                   std::to_string(tick.offset.count() / 60) + ")";
        out += " ";
    }
    return out;
}

Night night_in(const std::string& zone, const std::string& from, const std::string& to)
{
    return night_of(head + "'zone':'" + zone + "','lights_out':'" + from + "','lights_on':'" + to +
                    "'}");
}

TEST(Picture, TicksStandAtLocalHoursAndMarkTheClockChange)
{
    EXPECT_EQ(ticks_of(*picture(night_in("Asia/Kolkata", "2026-11-04T22:05", "2026-11-05T06:00"))),
              "23 0 1 2 3 4 5 ");
    // The hour that happens twice stands there twice.
    EXPECT_EQ(
        ticks_of(*picture(night_in("America/New_York", "2026-10-31T23:00", "2026-11-01T04:30"))),
        "23 0 1 1(-240>-300) 2 3 4 ");
    EXPECT_EQ(
        ticks_of(*picture(night_in("America/New_York", "2026-03-07T23:30", "2026-03-08T05:30"))),
        "0 1 3(-300>-240) 4 5 ");
    // Half an hour: at 02:00 clocks go back to 01:30.
    EXPECT_EQ(
        ticks_of(*picture(night_in("Australia/Lord_Howe", "2026-04-04T23:30", "2026-04-05T04:30"))),
        "0 1 1:30(660>630) 2 3 4 ");
}

TEST(Picture, LanesCoverTheAxisAndAgreeWithTheEstimate)
{
    RandomNights random(31);
    for (int round = 0; round < 5000; ++round) {
        Night night = random.night(true);
        if (!night.lights_out || !night.lights_on)
            continue;
        const auto drawn = picture(night);
        if (!drawn)
            continue;
        ASSERT_LE(drawn->ticks.size(), 13u);
        // The surely-on part and the perhaps-on part of the window are the estimate's bounds when
        // the window is exact.
        night.lights_out->latest = night.lights_out->earliest;
        night.lights_on->latest = night.lights_on->earliest;
        night.recording_from = night.recording_to = std::nullopt;
        const Interval window{night.lights_out->earliest, night.lights_on->earliest};
        const Estimate result = estimate(night, {false, 0, 0});
        for (std::size_t i = 0; i < drawn->lanes.size(); ++i) {
            const auto& spans = drawn->lanes[i].spans;
            if (spans.empty())
                continue;
            Span solid_on{0}, soft{0};
            ASSERT_EQ(spans.front().from, drawn->from);
            ASSERT_EQ(spans.back().to, drawn->to);
            for (std::size_t k = 0; k < spans.size(); ++k) {
                ASSERT_LT(spans[k].from, spans[k].to);
                ASSERT_TRUE(k == 0 || spans[k].from == spans[k - 1].to);
                const Span inside =
                    Interval{std::max(spans[k].from, window.from), std::min(spans[k].to, window.to)}
                        .length();
                if (spans[k].certainty == Certainty::soft)
                    soft += inside;
                else if (spans[k].kind == SpanKind::on)
                    solid_on += inside;
            }
            if (i < night.sensors.size()) {
                ASSERT_EQ(solid_on, result.sensors[i].second->at_least);
                ASSERT_EQ(solid_on + soft, result.sensors[i].second->at_most);
            }
        }
    }
}

TEST(Picture, IsNothingWithoutAnAxis)
{
    EXPECT_FALSE(picture(night_of(head + "'zone':'UTC','lights_out':'2026-10-31T23:00'}")));
}

} // namespace
} // namespace evenfall
