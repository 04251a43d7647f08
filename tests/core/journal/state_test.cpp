// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "journal/state.h"

#include "core/journal/entries.h"
#include "journal/kinds.h"

#include <gtest/gtest.h>

namespace evenfall {
namespace {

using test::minute;
using test::Story;

/// A night that has begun.
Story begun()
{
    Story story;
    story.tell(0, kinds::night, "SM-0417", R"({"night":2,"kit":"marram"})");
    return story;
}

TEST(NightState, HasNotBegun_WithoutEntries)
{
    const NightState state = replay({});
    EXPECT_FALSE(state.begun);
    EXPECT_EQ(state.page, "");
    EXPECT_FALSE(state.awake_now());
    EXPECT_FALSE(state.out_of_bed());
    EXPECT_TRUE(state.off_now().empty());
}

TEST(NightState, SaysWhoseNightItIs_WhenItHasBegun)
{
    const Story story = begun();
    const NightState state = replay(story.entries());
    EXPECT_TRUE(state.begun);
    EXPECT_EQ(state.begun_at, minute(0));
    EXPECT_EQ(state.code, "SM-0417");
    EXPECT_EQ(state.night, 2);
}

TEST(NightState, IsBackOnTheSamePage_WhenTheProgramIsOpenedAgain)
{
    Story story = begun();
    story.tell(1, kinds::page, "bag").tell(2, kinds::page, "chest_belt.wrap");
    const NightState state = replay(story.entries());
    EXPECT_EQ(state.page, "chest_belt.wrap");
    EXPECT_EQ(state.page_since, minute(2));
}

TEST(NightState, KeepsEverythingThatWasSaidInTheEvening)
{
    Story story = begun();
    story.tell(1, kinds::language, "es").tell(2, kinds::first, "some").tell(3, kinds::called)
        .tell(4, kinds::item, "recorder").tell(5, kinds::step, "chest_belt.wrap").tell(6, kinds::check, "chest")
        .tell(7, kinds::light, "double_blink");
    const NightState state = replay(story.entries());
    EXPECT_EQ(state.language, "es");
    EXPECT_EQ(state.first_some, true);
    EXPECT_TRUE(state.called);
    EXPECT_EQ(state.items, std::set<std::string>{"recorder"});
    EXPECT_EQ(state.steps, (std::map<std::string, Instant>{{"chest_belt.wrap", minute(5)}}));
    EXPECT_EQ(state.checked, std::set<std::string>{"chest"});
    EXPECT_EQ(state.light, "double_blink");
    EXPECT_EQ(state.lights.back().at, minute(7));
}

TEST(NightState, IsReadAndSounds_OnlyWhileThatIsChosen)
{
    Story story = begun();
    EXPECT_FALSE(replay(story.entries()).read_to_me);
    EXPECT_FALSE(replay(story.entries()).night_sound);
    story.tell(1, kinds::read_to_me, "on").tell(2, kinds::night_sound, "on");
    EXPECT_TRUE(replay(story.entries()).read_to_me);
    EXPECT_TRUE(replay(story.entries()).night_sound);
    story.tell(3, kinds::read_to_me, "off").tell(4, kinds::night_sound, "off");
    EXPECT_FALSE(replay(story.entries()).read_to_me);
    EXPECT_FALSE(replay(story.entries()).night_sound);
}

TEST(NightState, HasNoAnswerToTheFirstQuestions_UntilOneIsGiven)
{
    Story story = begun();
    EXPECT_EQ(replay(story.entries()).first_some, std::nullopt);
    story.tell(1, kinds::first, "none");
    EXPECT_EQ(replay(story.entries()).first_some, false);
}

TEST(NightState, KnowsWhenTheRecorderWasStarted_ByItsSwitchOrItsLastPlug)
{
    Story story = begun();
    story.tell(20, kinds::step, "finger.plug").tell(22, kinds::step, "start.switch");
    EXPECT_EQ(replay(story.entries()).started_at, minute(22));
    Story plugged = begun();
    plugged.tell(20, kinds::step, "finger.plug");
    EXPECT_EQ(replay(plugged.entries(), "finger.plug").started_at, minute(20));
    EXPECT_EQ(replay(plugged.entries(), "cannula.plug").started_at, std::nullopt) << "another plug";
    EXPECT_EQ(replay(plugged.entries()).started_at, std::nullopt);
}

TEST(NightState, FollowsAwakeAndAsleep)
{
    Story story = begun();
    story.tell(60, kinds::lights_out).tell(200, kinds::awake);
    EXPECT_TRUE(replay(story.entries()).awake_now());
    story.tell(210, kinds::asleep);
    const NightState state = replay(story.entries());
    EXPECT_FALSE(state.awake_now());
    EXPECT_EQ(state.lights_out, minute(60));
    ASSERT_EQ(state.notes.size(), 2u);
    EXPECT_EQ(state.notes[0], (NightNote{3, "awake", "", minute(200)}));
    EXPECT_EQ(state.notes[1].kind, "asleep");
}

TEST(NightState, FollowsUpAndBack)
{
    Story story = begun();
    story.tell(200, kinds::up);
    EXPECT_TRUE(replay(story.entries()).out_of_bed());
    story.tell(207, kinds::back);
    EXPECT_FALSE(replay(story.entries()).out_of_bed());
}

TEST(NightState, FollowsWhatIsOff)
{
    Story story = begun();
    story.tell(100, kinds::off, "finger").tell(101, kinds::off, "cannula");
    EXPECT_EQ(replay(story.entries()).off_now(), (std::set<std::string>{"finger", "cannula"}));
    story.tell(103, kinds::on, "finger");
    EXPECT_EQ(replay(story.entries()).off_now(), std::set<std::string>{"cannula"});
    story.tell(104, kinds::all_on);
    EXPECT_TRUE(replay(story.entries()).off_now().empty());
}

TEST(NightState, TakesBackOneNote_WhenItIsUndone)
{
    Story story = begun();
    story.tell(100, kinds::off, "finger").tell(101, kinds::off, "cannula").tell(102, kinds::undo, "", "3");
    const NightState state = replay(story.entries());
    EXPECT_EQ(state.off_now(), std::set<std::string>{"finger"});
    ASSERT_EQ(state.notes.size(), 1u);
    EXPECT_EQ(state.notes[0].number, 2);
    EXPECT_EQ(story.entries().size(), 4u) << "the journal itself forgets nothing";
}

TEST(NightState, TakesBackLightsOut_WhenItIsUndone)
{
    Story story = begun();
    story.tell(60, kinds::lights_out).tell(61, kinds::undo, "", "2");
    EXPECT_EQ(replay(story.entries()).lights_out, std::nullopt);
    story.tell(70, kinds::lights_out);
    EXPECT_EQ(replay(story.entries()).lights_out, minute(70));
}

TEST(NightState, UndoesNothing_WhenTheNumberIsNone)
{
    for (const char* value : {"", "null", "\"2\"", "99", "{", "2.5"}) {
        Story story = begun();
        story.tell(60, kinds::lights_out).tell(61, kinds::undo, "", value);
        EXPECT_EQ(replay(story.entries()).lights_out, minute(60)) << value;
    }
}

TEST(NightState, KeepsADraft_UntilTheAnswerIsConfirmed)
{
    Story story = begun();
    story.tell(500, kinds::draft, "lights_out", R"("2026-11-03T22:05-05:00")");
    NightState state = replay(story.entries());
    EXPECT_EQ(state.drafts.at("lights_out"), Json("2026-11-03T22:05-05:00"));
    EXPECT_TRUE(state.answers.empty()) << "a draft is not an answer";
    story.tell(501, kinds::draft, "lights_out", R"("2026-11-03T22:10-05:00")");
    EXPECT_EQ(replay(story.entries()).drafts.at("lights_out"), Json("2026-11-03T22:10-05:00"));
    story.tell(502, kinds::answer, "lights_out", R"("2026-11-03T22:15-05:00")");
    state = replay(story.entries());
    EXPECT_TRUE(state.drafts.empty());
    EXPECT_EQ(state.answers.at("lights_out"), Json("2026-11-03T22:15-05:00"));
}

TEST(NightState, LetsTheLastAnswerStand)
{
    Story story = begun();
    story.tell(500, kinds::answer, "asleep_after", R"({"minutes":20})").tell(510, kinds::answer, "asleep_after", R"({"minutes":35})");
    EXPECT_EQ(replay(story.entries()).answers.at("asleep_after"), Json::parse(R"({"minutes":35})"));
}

TEST(NightState, KeepsTheMorning)
{
    Story story = begun();
    story.tell(530, kinds::up_for_day).tell(540, kinds::stopped).tell(541, kinds::skin, "sore")
        .tell(542, kinds::packed, "recorder").tell(545, kinds::record, "SM-0417_night-2_2026-11-03");
    const NightState state = replay(story.entries());
    EXPECT_EQ(state.up_for_day, minute(530));
    EXPECT_EQ(state.stopped, minute(540));
    EXPECT_EQ(state.skin, "sore");
    EXPECT_EQ(state.packed, std::set<std::string>{"recorder"});
    EXPECT_EQ(state.record, "SM-0417_night-2_2026-11-03");
}

TEST(NightState, BeginsAfresh_WhenAnotherNightBegins)
{
    Story story = begun();
    story.tell(60, kinds::lights_out).tell(100, kinds::off, "finger").tell(500, kinds::answer, "comment", R"({"word":"x"})");
    story.tell(1440, kinds::night, "SM-0417", R"({"night":3,"kit":"marram"})");
    const NightState state = replay(story.entries());
    EXPECT_EQ(state.night, 3);
    EXPECT_EQ(state.begun_at, minute(1440));
    EXPECT_EQ(state.lights_out, std::nullopt);
    EXPECT_TRUE(state.notes.empty());
    EXPECT_TRUE(state.answers.empty());
}

TEST(NightState, PassesOverKindsOfALaterVersion)
{
    Story story = begun();
    story.tell(1, kinds::page, "bag").tell(2, "weather", "rain", "[1,2]");
    const NightState state = replay(story.entries());
    EXPECT_EQ(state.page, "bag");
    EXPECT_TRUE(state.notes.empty());
}

TEST(NightState, PassesOverWhatIsNotAsItShouldBe_WhenTheNightBegins)
{
    for (const char* value : {"", "null", "[2]", "{", R"({"kit":"marram"})", R"({"night":"2"})", R"({"night":2.5})"}) {
        Story story;
        story.tell(0, kinds::night, "SM-0417", value);
        const NightState state = replay(story.entries());
        EXPECT_TRUE(state.begun) << value;
        EXPECT_EQ(state.code, "SM-0417") << value;
        EXPECT_EQ(state.night, 0) << value;
        EXPECT_EQ(state.paper, std::nullopt) << value;
    }
}

TEST(NightState, KnowsWhoTypesItInFromPaper)
{
    const auto paper_of = [](const char* value) {
        Story story;
        story.tell(0, kinds::night, "SM-0417", value);
        return replay(story.entries()).paper;
    };
    EXPECT_EQ(paper_of(R"({"night":2,"paper":{"by":"nurse","evening":"2026-11-03"}})"), (PaperNight{"nurse", "2026-11-03"}));
    EXPECT_EQ(paper_of(R"({"night":2,"paper":{"by":5}})"), (PaperNight{"", ""})) << "on paper all the same";
    EXPECT_EQ(paper_of(R"({"night":2,"paper":"nurse"})"), std::nullopt);
    EXPECT_EQ(paper_of(R"({"night":2})"), std::nullopt);
}

TEST(NightState, TakesBackATick_OfTheListThatIsMeant)
{
    const std::set<std::string> ticked{"finger"};
    const auto left = [](const char* list) {
        Story more = begun();
        more.tell(1, kinds::item, "finger").tell(2, kinds::check, "finger").tell(3, kinds::packed, "finger");
        more.tell(4, kinds::not_yet, "finger", list);
        return replay(more.entries());
    };
    EXPECT_TRUE(left("\"item\"").items.empty());
    EXPECT_EQ(left("\"item\"").checked, ticked);
    EXPECT_EQ(left("\"item\"").packed, ticked);
    EXPECT_TRUE(left("\"check\"").checked.empty());
    EXPECT_EQ(left("\"check\"").items, ticked);
    EXPECT_EQ(left("\"check\"").packed, ticked);
    EXPECT_TRUE(left("\"packed\"").packed.empty());
    EXPECT_EQ(left("\"packed\"").items, ticked);
    EXPECT_EQ(left("\"packed\"").checked, ticked);
}

TEST(NightState, KeepsWhenEachTaskOfTheSignalCheckBeganAndEnded)
{
    Story story = begun();
    story.tell(29, kinds::signal, "breathe", R"("done")");
    EXPECT_TRUE(replay(story.entries()).signal_notes.empty()) << "what never began does not end";
    story.tell(30, kinds::signal, "breathe", R"("started")").tell(31, kinds::signal, "cough", R"("done")");
    EXPECT_EQ(replay(story.entries()).signal_notes, (std::vector<SignalNote>{{"breathe", minute(30), std::nullopt}}));
    story.tell(32, kinds::signal, "breathe", R"("done")").tell(33, kinds::signal, "cough", R"("started")");
    story.tell(34, kinds::signal, "cough", R"("skipped")");
    EXPECT_EQ(replay(story.entries()).signal_notes,
              (std::vector<SignalNote>{{"breathe", minute(30), minute(32)}, {"cough", minute(33), minute(34)}}));
}

TEST(NightState, KeepsTheBuildAndTheSkinHalfAnHourLater)
{
    Story story = begun();
    story.tell(1, kinds::build, "broad").tell(541, kinds::skin, "sore").tell(571, kinds::skin_again, "fine");
    const NightState state = replay(story.entries());
    EXPECT_EQ(state.build, "broad");
    EXPECT_EQ(state.skin, "sore");
    EXPECT_EQ(state.skin_at, minute(541));
    EXPECT_EQ(state.skin_again, "fine");
}

TEST(NightState, IsBeingAmended_UntilItsNextRecordIsWritten)
{
    Story story = begun();
    story.tell(545, kinds::record, "SM-0417_night-2_2026-11-03").tell(600, kinds::amend, "nurse", R"("misheard")");
    NightState state = replay(story.entries());
    EXPECT_TRUE(state.amending);
    EXPECT_EQ(state.amendments, (std::vector<AmendInHand>{{"nurse", "misheard", minute(600), 3}}));
    story.tell(610, kinds::record, "SM-0417_night-2_2026-11-03_amended-1");
    EXPECT_FALSE(replay(story.entries()).amending);
    story.tell(620, kinds::amend, "doctor", "5");
    state = replay(story.entries());
    EXPECT_TRUE(state.amending);
    ASSERT_EQ(state.amendments.size(), 2u);
    EXPECT_EQ(state.amendments[1], (AmendInHand{"doctor", "", minute(620), 5})) << "a reason that is no text is none";
}

TEST(NightState, IsGivenUp_OnlyWhenThatIsSaid)
{
    Story story = begun();
    EXPECT_FALSE(replay(story.entries()).given_up);
    story.tell(90, kinds::given_up);
    EXPECT_TRUE(replay(story.entries()).given_up);
}

TEST(NightState, NamesNoPart_WhenItIsNotSaidWhichCameOff)
{
    Story story = begun();
    story.tell(100, kinds::off);
    const NightState state = replay(story.entries());
    EXPECT_TRUE(state.off_now().empty());
    EXPECT_EQ(state.notes, (std::vector<NightNote>{{2, "off", "", minute(100)}}));
}

TEST(NightState, HasADraft_OnlyOfTheQuestionThatWasBegun)
{
    Story story = begun();
    story.tell(500, kinds::draft, "lights_out", R"("22:05")");
    const NightState state = replay(story.entries());
    ASSERT_NE(state.draft("lights_out"), nullptr);
    EXPECT_EQ(*state.draft("lights_out"), Json("22:05"));
    EXPECT_EQ(state.draft("lights_on"), nullptr);
}

/// The program was opened again so many minutes into the evening, under this boot.
Stamp opened_at(double minutes, const char* boot) { return test::stamp_at(minutes * 60, boot); }

TEST(NightState, HasAGap_WhenTheMachineStartedAgainInTheNight)
{
    Story story = begun();
    story.tell(60, kinds::lights_out).tell(200, kinds::awake).tell(opened_at(230, "boot-2"), kinds::opened);
    EXPECT_EQ(replay(story.entries()).gaps, (std::vector<TimeRange>{{minute(200), minute(230)}}));
}

TEST(NightState, HasNoGap_OutsideTheNightOrUnderTheSameBoot)
{
    Story before = begun();
    before.tell(opened_at(50, "boot-2"), kinds::opened).tell(opened_at(60, "boot-2"), kinds::lights_out);
    EXPECT_TRUE(replay(before.entries()).gaps.empty()) << "nobody was to sleep yet";
    Story after = begun();
    after.tell(60, kinds::lights_out).tell(500, kinds::up_for_day).tell(opened_at(510, "boot-2"), kinds::opened);
    EXPECT_TRUE(replay(after.entries()).gaps.empty()) << "the night was over";
    Story same = begun();
    same.tell(60, kinds::lights_out).tell(200, kinds::opened);
    EXPECT_TRUE(replay(same.entries()).gaps.empty()) << "only the program had ended";
    Story first;
    first.tell(0, kinds::opened);
    EXPECT_TRUE(replay(first.entries()).gaps.empty()) << "nothing was said before";
}

TEST(NightState, TellsTimesByTheCorrectedClock_WhenItJumped)
{
    Story story = begun();
    Stamp fast = test::stamp_at(60 * 60);
    fast.utc += std::chrono::hours(2);
    story.tell(fast, kinds::lights_out).tell(70, kinds::page, "night");
    EXPECT_EQ(replay(story.entries()).lights_out, minute(60));
}

} // namespace
} // namespace evenfall
