// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "answers/morning.h"

#include "answers/questions.h"
#include "core/journal/entries.h"
#include "core/kit/kits.h"
#include "journal/kinds.h"

#include <functional>

namespace evenfall {
namespace {

using std::chrono::minutes;
using test::minute;
using test::Story;

constexpr std::chrono::seconds est = -std::chrono::hours(5);

/// Lights out at 60, up for the day at 500 minutes into the evening; `tell` adds the night between.
Morning morning_with(const std::function<void(Story&)>& tell)
{
    Story story;
    story.tell(0, kinds::night, "SM-0417", R"({"night":1,"kit":"marram"})").tell(60, kinds::lights_out);
    tell(story);
    story.tell(500, kinds::up_for_day);
    return morning_of(replay(story.entries()));
}

/// The same with an answer given in the morning.
Morning answered(std::string_view question, const Json& answer, const std::function<void(Story&)>& tell = [](Story&) {})
{
    Story story;
    story.tell(0, kinds::night, "SM-0417", R"({"night":1,"kit":"marram"})").tell(60, kinds::lights_out);
    tell(story);
    story.tell(500, kinds::up_for_day).tell(510, kinds::answer, question, answer.dump());
    return morning_of(replay(story.entries()));
}

TimeRange at(double n) { return TimeRange::exactly(minute(n)); }
TimeRange between(double a, double b) { return {minute(a), minute(b)}; }
Awakening awake(TimeRange from, TimeRange to) { return {from, to, std::nullopt}; }

TEST(Morning, KnowsNothing_WithoutNotes)
{
    const Morning morning = morning_of(NightState{});
    for (const std::string_view question : questions::all) {
        if (questions::asks_time(question)) {
            EXPECT_EQ(morning.time(question).value, std::nullopt) << question;
            EXPECT_EQ(morning.time(question).source, Source::none) << question;
        }
    }
    EXPECT_EQ(morning.asleep_after.value, std::nullopt);
    EXPECT_EQ(morning.awake.value, std::nullopt) << "no note of an awakening is no answer that there was none";
    EXPECT_TRUE(morning.off.value->empty());
    EXPECT_TRUE(morning.forgotten_back.empty());
}

TEST(Morning, TakesLightsOutFromItsTap_Exactly)
{
    const Morning morning = morning_with([](Story&) {});
    EXPECT_EQ(morning.lights_out.value, at(60));
    EXPECT_EQ(morning.lights_out.source, Source::notes);
    EXPECT_FALSE(morning.lights_out.skipped);
    EXPECT_EQ(morning.into_bed.value, at(60));
}

TEST(Morning, TakesTheEndOfTheNightFromUpForTheDay)
{
    const Morning morning = morning_with([](Story&) {});
    for (const auto* answer : {&morning.final_waking, &morning.lights_on, &morning.out_of_bed}) {
        EXPECT_EQ(answer->value, at(500));
        EXPECT_EQ(answer->source, Source::notes);
    }
}

TEST(Morning, MakesAnAwakening_OfAwakeToAsleep)
{
    const Morning morning = morning_with([](Story& night) { night.tell(200, kinds::awake).tell(215, kinds::asleep); });
    EXPECT_EQ(morning.awake.value, (std::vector{awake(at(200), at(215))}));
    EXPECT_EQ(morning.awake.source, Source::notes);
}

TEST(Morning, MakesAnAwakening_OfUpToBack)
{
    const Morning morning = morning_with([](Story& night) { night.tell(200, kinds::up).tell(207, kinds::back); });
    EXPECT_EQ(morning.awake.value, (std::vector{awake(at(200), at(207))}));
    EXPECT_TRUE(morning.forgotten_back.empty());
}

TEST(Morning, MakesOneAwakening_OfThoseThatOverlapOrTouch)
{
    const Morning inside = morning_with([](Story& night) {
        night.tell(200, kinds::awake).tell(205, kinds::up).tell(210, kinds::back).tell(220, kinds::asleep);
    });
    EXPECT_EQ(inside.awake.value, (std::vector{awake(at(200), at(220))}));
    const Morning across = morning_with([](Story& night) {
        night.tell(200, kinds::awake).tell(205, kinds::up).tell(210, kinds::asleep).tell(220, kinds::back);
    });
    EXPECT_EQ(across.awake.value, (std::vector{awake(at(200), at(220))}));
    const Morning touching = morning_with([](Story& night) {
        night.tell(200, kinds::up).tell(205, kinds::back).tell(205, kinds::awake).tell(215, kinds::asleep);
    });
    EXPECT_EQ(touching.awake.value, (std::vector{awake(at(200), at(215))}));
}

TEST(Morning, KeepsAwakeningsApart_WhenThereWasSleepBetween)
{
    const Morning morning = morning_with([](Story& night) {
        night.tell(200, kinds::awake).tell(210, kinds::asleep).tell(300, kinds::up).tell(305, kinds::back);
    });
    EXPECT_EQ(morning.awake.value, (std::vector{awake(at(200), at(210)), awake(at(300), at(305))}));
}

TEST(Morning, LetsAnAwakeningEndBeforeTheNextNote_WhenItsEndWasNotNoted)
{
    const Morning morning = morning_with([](Story& night) { night.tell(200, kinds::awake).tell(320, kinds::off, "finger"); });
    EXPECT_EQ(morning.awake.value, (std::vector{awake(at(200), between(200, 320))}));
}

TEST(Morning, LetsAnAwakeningEndBeforeTheDay_WhenNothingMoreWasNoted)
{
    const Morning morning = morning_with([](Story& night) { night.tell(200, kinds::awake); });
    EXPECT_EQ(morning.awake.value, (std::vector{awake(at(200), between(200, 500))}));
}

TEST(Morning, CountsTwoAwakenings_WhenTheFirstHasNoNotedEnd)
{
    const Morning morning = morning_with([](Story& night) {
        night.tell(200, kinds::awake).tell(320, kinds::awake).tell(330, kinds::asleep);
    });
    EXPECT_EQ(morning.awake.value, (std::vector{awake(at(200), between(200, 320)), awake(at(320), at(330))}));
}

TEST(Morning, AsksAboutComingBack_WhenItWasNotNoted)
{
    const Morning last = morning_with([](Story& night) { night.tell(200, kinds::up); });
    EXPECT_EQ(last.forgotten_back, std::vector{minute(200)});
    EXPECT_EQ(last.awake.value, (std::vector{awake(at(200), between(200, 500))}));
    const Morning again = morning_with([](Story& night) {
        night.tell(200, kinds::up).tell(300, kinds::up).tell(306, kinds::back);
    });
    EXPECT_EQ(again.forgotten_back, std::vector{minute(200)}) << "the second time was noted whole";
}

TEST(Morning, TakesNothingFromANoteThatWasUndone)
{
    const Morning morning = morning_with([](Story& night) {
        night.tell(200, kinds::up).tell(201, kinds::undo, "", "3").tell(202, kinds::off, "finger").tell(203, kinds::undo, "", "5");
    });
    EXPECT_EQ(morning.awake.value, std::nullopt);
    EXPECT_TRUE(morning.off.value->empty());
    EXPECT_TRUE(morning.forgotten_back.empty());
}

TEST(Morning, LetsAPartComeOffSinceLightsOut_WhenNothingWasSaidBetween)
{
    const Morning morning = morning_with([](Story& night) { night.tell(200, kinds::off, "finger"); });
    EXPECT_EQ(morning.off.value, (std::vector{Removal{"finger", between(60, 200), std::nullopt}})) << "and it was never put back";
}

TEST(Morning, LetsAPartComeOffSinceAllWasOn)
{
    const Morning morning = morning_with([](Story& night) {
        night.tell(150, kinds::all_on).tell(200, kinds::off, "finger").tell(205, kinds::on, "finger");
    });
    EXPECT_EQ(morning.off.value, (std::vector{Removal{"finger", between(150, 200), at(205)}}));
}

TEST(Morning, LetsAPartComeOffAgainSinceItWasPutBack)
{
    const Morning morning = morning_with([](Story& night) {
        night.tell(150, kinds::all_on).tell(200, kinds::off, "finger").tell(205, kinds::on, "finger").tell(300, kinds::off, "finger")
            .tell(310, kinds::off, "cannula");
    });
    EXPECT_EQ(morning.off.value, (std::vector{Removal{"finger", between(150, 200), at(205)},
                                              Removal{"finger", between(205, 300), std::nullopt},
                                              Removal{"cannula", between(150, 310), std::nullopt}}))
        << "the cannula was last known to be on when all was";
}

TEST(Morning, LetsAPartBePutBackSomeTimeBetween_WhenAllWasOnLater)
{
    const Morning morning = morning_with([](Story& night) {
        night.tell(200, kinds::off, "finger").tell(300, kinds::all_on).tell(400, kinds::off, "finger");
    });
    EXPECT_EQ(morning.off.value, (std::vector{Removal{"finger", between(60, 200), between(200, 300)},
                                              Removal{"finger", between(300, 400), std::nullopt}}));
}

TEST(Morning, CountsOneRemoval_WhenItIsNotedTwice)
{
    const Morning morning = morning_with([](Story& night) {
        night.tell(200, kinds::off, "finger").tell(201, kinds::off, "finger").tell(205, kinds::on, "finger").tell(206, kinds::on, "finger");
    });
    EXPECT_EQ(morning.off.value, (std::vector{Removal{"finger", between(60, 200), at(205)}}));
}

// What the person answers.

TEST(Morning, LetsThePersonsAnswerWin)
{
    const Morning exact = answered(questions::lights_out, time_answer(at(55), est));
    EXPECT_EQ(exact.lights_out.value, at(55));
    EXPECT_EQ(exact.lights_out.source, Source::person);
    EXPECT_EQ(exact.into_bed.value, at(60)) << "only what was asked changes";
    const Morning range = answered(questions::final_waking, time_answer(between(470, 490), est));
    EXPECT_EQ(range.final_waking.value, between(470, 490));
    EXPECT_EQ(range.lights_on.value, at(500));
}

TEST(Morning, ReadsEachTimeItAsksFor)
{
    for (const std::string_view question : questions::all) {
        if (!questions::asks_time(question)) {
            continue;
        }
        const Morning morning = answered(question, time_answer(between(400, 410), est));
        EXPECT_EQ(morning.time(question).value, between(400, 410)) << question;
        int changed = 0;
        for (const std::string_view other : questions::all) {
            changed += questions::asks_time(other) && morning.time(other).source == Source::person ? 1 : 0;
        }
        EXPECT_EQ(changed, 1) << question;
    }
}

TEST(Morning, ReadsEachAmountItAsksFor)
{
    for (const std::string_view question : questions::all) {
        if (!questions::asks_amount(question))
            continue;
        const Morning morning = answered(question, minutes_answer(std::chrono::minutes(35)));
        EXPECT_EQ(morning.amount(question).value, std::chrono::minutes(35)) << question;
        int changed = 0;
        for (const std::string_view other : questions::all)
            changed += questions::asks_amount(other) && morning.amount(other).source == Source::person ? 1 : 0;
        EXPECT_EQ(changed, 1) << question;
    }
}

TEST(ChangedNotes, AreTheTapsThatTheMorningSaysOtherwise)
{
    Story night;
    night.tell(0, kinds::night, "SM-0417", R"({"night":1,"kit":"marram"})").tell(60, kinds::lights_out);
    night.tell(200, kinds::awake).tell(210, kinds::asleep).tell(300, kinds::off, "finger").tell(310, kinds::on, "finger");
    night.tell(500, kinds::up_for_day);
    EXPECT_TRUE(changed_notes(replay(night.entries())).empty()) << "nothing was answered";

    night.tell(510, kinds::answer, questions::lights_out, (time_answer(at(75), est)).dump());
    night.tell(510, kinds::answer, questions::awake, (awake_answer({}, std::nullopt, est)).dump());
    night.tell(510, kinds::answer, questions::off, (off_answer({}, est)).dump());
    night.tell(510, kinds::answer, questions::lights_on, (skipped_answer()).dump());
    const std::vector<ChangedNote> expected{{"lights_out", "", at(60)},
                                            {"awake", "", at(200)},
                                            {"off", "finger", between(60, 300)},
                                            {"lights_on", "", at(500)}};
    EXPECT_EQ(changed_notes(replay(night.entries())), expected);
}

TEST(ChangedNotes, AreNone_WhereTheAnswerHoldsTheTap)
{
    Story night;
    night.tell(0, kinds::night, "SM-0417", R"({"night":1,"kit":"marram"})").tell(60, kinds::lights_out);
    night.tell(200, kinds::awake).tell(210, kinds::asleep).tell(300, kinds::off, "finger").tell(500, kinds::up_for_day);
    night.tell(510, kinds::answer, questions::lights_out, (time_answer(between(50, 70), est)).dump());
    night.tell(510, kinds::answer, questions::awake, (awake_answer({Awakening{at(200), at(230), std::nullopt}}, std::nullopt, est)).dump());
    night.tell(510, kinds::answer, questions::off, (off_answer({Removal{"finger", at(250), std::nullopt}}, est)).dump());
    night.tell(510, kinds::answer, questions::lights_on, (time_answer(at(500), est)).dump());
    EXPECT_TRUE(changed_notes(replay(night.entries())).empty());
}

TEST(Morning, RemovesWhatTheNotesSay_WhenTheQuestionIsSkipped)
{
    const auto noted = [](Story& night) { night.tell(200, kinds::awake).tell(210, kinds::asleep); };
    const Morning time = answered(questions::lights_out, skipped_answer());
    EXPECT_EQ(time.lights_out.value, std::nullopt);
    EXPECT_TRUE(time.lights_out.skipped);
    EXPECT_EQ(time.lights_out.source, Source::person);
    const Morning wake = answered(questions::awake, skipped_answer(), noted);
    EXPECT_EQ(wake.awake.value, std::nullopt);
    EXPECT_TRUE(wake.awake.skipped);
}

TEST(Morning, LetsTheNotesStand_WhenAnAnswerCannotBeRead)
{
    for (const char* broken : {"null", "7", "\"quarter past ten\"", R"({"earliest":"2026-11-03T22:00-05:00"})",
                               R"({"earliest":"2026-11-03T23:00-05:00","latest":"2026-11-03T22:00-05:00"})",
                               "\"2026-11-03T22:00\""}) {
        const Morning morning = answered(questions::lights_out, Json::parse(broken));
        EXPECT_EQ(morning.lights_out.value, at(60)) << broken;
        EXPECT_EQ(morning.lights_out.source, Source::notes) << broken;
    }
}

TEST(Morning, TellsNoAwakeningsFromNoAnswer)
{
    const auto noted = [](Story& night) { night.tell(200, kinds::awake).tell(210, kinds::asleep); };
    const Morning none = answered(questions::awake, awake_answer({}, std::nullopt, est), noted);
    ASSERT_TRUE(none.awake.value.has_value());
    EXPECT_TRUE(none.awake.value->empty());
    EXPECT_EQ(none.awake.source, Source::person);
}

TEST(Morning, GivesBackEachAnswer_AsItWasWritten)
{
    const std::vector<Awakening> timed{awake(at(200), between(210, 220)), {between(300, 310), std::nullopt, Span(minutes(7)) + Span(30000000)}};
    const UntimedAwakenings untimed{2, minutes(25)};
    const Morning wake = answered(questions::awake, awake_answer(timed, untimed, est));
    EXPECT_EQ(wake.awake.value, timed);
    EXPECT_EQ(wake.awake_untimed.value, untimed);
    const std::vector<Removal> removals{{"finger", between(100, 120), at(130)}, {"cannula", std::nullopt, at(90)}, {"breath", at(300), std::nullopt}};
    EXPECT_EQ(answered(questions::off, off_answer(removals, est)).off.value, removals);
    EXPECT_EQ(answered(questions::asleep_after, minutes_answer(minutes(20))).asleep_after.value, Span(minutes(20)));
    EXPECT_EQ(answered(questions::asleep_after, minutes_answer(minutes(0))).asleep_after.value, Span(0)) << "zero is an answer";
    EXPECT_EQ(answered(questions::compare, word_answer("worse")).compare.value, "worse");
    EXPECT_EQ(answered(questions::comment, word_answer("Rain, طقم")).comment.value, "Rain, طقم");
}

// The night report.

TEST(NightReport, HoldsTheMorningAndWhatTheVisitNeeds)
{
    const VisitWithKit demo = test::demo_visit();
    Story story;
    story.tell(0, kinds::night, "SM-0417", R"({"night":2,"kit":"marram"})").tell(50, kinds::step, "start.switch")
        .tell(52, kinds::light, "double_blink").tell(60, kinds::lights_out).tell(200, kinds::off, "finger")
        .tell(203, kinds::on, "finger").tell(500, kinds::up_for_day).tell(505, kinds::stopped)
        .tell(510, kinds::answer, questions::asleep_after, R"({"minutes":20})")
        .tell(511, kinds::answer, questions::awake, awake_answer({awake(at(300), at(310))}, UntimedAwakenings{1, minutes(5)}, est).dump());
    const Night night = night_of(replay(story.entries()), demo.visit, demo.kit);
    EXPECT_EQ(night.of, (NightOf{"SM-0417", 2}));
    EXPECT_EQ(night.zone, demo.visit.zone);
    EXPECT_EQ(night.sensors, demo.kit.sensors());
    EXPECT_EQ(night.need.minutes, Span(minutes(240)));
    EXPECT_EQ(night.need.groups, (std::vector<std::vector<std::string>>{{"cannula", "breath"}, {"finger"}}));
    EXPECT_EQ(night.recording_from, between(50, 52)) << "between the switch and the light that shows it";
    EXPECT_EQ(night.recording_to, at(505));
    EXPECT_EQ(night.into_bed, at(60));
    EXPECT_EQ(night.lights_out, at(60));
    EXPECT_EQ(night.final_waking, at(500));
    EXPECT_EQ(night.lights_on, at(500));
    EXPECT_EQ(night.out_of_bed, at(500));
    EXPECT_EQ(night.asleep_after, Span(minutes(20)));
    EXPECT_EQ(night.awake, (std::vector{awake(at(300), at(310))}));
    EXPECT_EQ(night.awake_untimed, (UntimedAwakenings{1, minutes(5)}));
    EXPECT_EQ(night.off, (std::vector{Removal{"finger", between(60, 200), at(203)}}));
}

TEST(NightReport, LeavesOutWhatIsNotKnown)
{
    const VisitWithKit demo = test::demo_visit();
    Story story;
    story.tell(0, kinds::night, "SM-0417", R"({"night":1,"kit":"marram"})");
    const Night night = night_of(replay(story.entries()), demo.visit, demo.kit);
    EXPECT_EQ(night.recording_from, std::nullopt);
    EXPECT_EQ(night.recording_to, std::nullopt);
    EXPECT_EQ(night.lights_out, std::nullopt);
    EXPECT_EQ(night.asleep_after, std::nullopt);
    EXPECT_EQ(night.awake, std::nullopt);
    EXPECT_EQ(night.awake_untimed, std::nullopt);
    EXPECT_TRUE(night.off.empty());
}

TEST(NightReport, BeginsWithTheLight_WhenTheStartWasNotNoted)
{
    const VisitWithKit demo = test::demo_visit();
    Story story;
    story.tell(0, kinds::night, "SM-0417", R"({"night":1,"kit":"marram"})").tell(52, kinds::light, "double_blink");
    EXPECT_EQ(night_of(replay(story.entries()), demo.visit, demo.kit).recording_from, at(52));
}

TEST(NightReport, DoesNotBegin_WithALightThatShowsNoRecording)
{
    const VisitWithKit demo = test::demo_visit();
    Story story;
    story.tell(0, kinds::night, "SM-0417", R"({"night":1,"kit":"marram"})").tell(50, kinds::step, "start.switch")
        .tell(52, kinds::light, "dark");
    EXPECT_EQ(night_of(replay(story.entries()), demo.visit, demo.kit).recording_from, std::nullopt);
}

} // namespace
} // namespace evenfall
