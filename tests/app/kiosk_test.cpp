// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The kiosk without a window: what is said is on disk before the screen moves on, and a screen says
// what the journal says.
#include "kiosk/kiosk.h"

#include "estimate/estimate.h"
#include "journal/kinds.h"

#include <QCoreApplication>
#include <QThread>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace {

using namespace evenfall;
using std::chrono::hours;
using std::chrono::minutes;

VisitWithKit demo()
{
    Result<VisitWithKit> visit = load_visit(EVENFALL_SOURCE_DIR "/assets/visits/demo.json", {});
    EXPECT_TRUE(visit.ok());
    return *visit;
}

/// The evening of 31 October 2026, 21:30 in New York (invented).
Instant evening() { return *resolve(*parse_time("2026-10-31T21:30:00-04:00"), nullptr); }

/// A journal that can be made to fail, as a full disk does.
class FailingJournal final : public Journal {
  public:
    explicit FailingJournal(const bool& failing) : failing_(failing), inner_(make_memory_journal()) {}
    const std::vector<Entry>& entries() const override { return inner_->entries(); }
    Result<Entry> append(const Stamp& stamp, std::string_view kind, std::string_view subject, std::string_view value) override
    {
        if (failing_)
            return Problem{Fault::io, "disk_full", "", "journal: no space left"};
        return inner_->append(stamp, kind, subject, value);
    }

  private:
    const bool& failing_;
    std::unique_ptr<Journal> inner_;
};

class KioskTest : public testing::Test {
  protected:
    QTemporaryDir folder_;
    std::shared_ptr<SimulatedClock> clock_ = std::make_shared<SimulatedClock>(evening());
    bool failing_ = false;
    VisitWithKit visit_ = demo();

    Kiosk::Settings settings()
    {
        Kiosk::Settings settings;
        settings.clinic = demo().visit.clinic;
        return settings;
    }
    std::unique_ptr<Kiosk> on_disk()
    {
        return std::make_unique<Kiosk>(
            [this]() -> Result<std::unique_ptr<Session>> {
                Result<Opened> opened = open_journal(std::filesystem::path(folder_.path().toStdString()) / "journal.db");
                if (!opened)
                    return opened.problems();
                return Session::begin({visit_, std::move(opened->journal), folder_.path().toStdString()}, clock_);
            },
            settings());
    }
    std::unique_ptr<Kiosk> failing()
    {
        return std::make_unique<Kiosk>(
            [this]() -> Result<std::unique_ptr<Session>> { return Session::begin({demo(), std::make_unique<FailingJournal>(failing_), folder_.path().toStdString()}, clock_); },
            settings());
    }
    void to_night(Kiosk& kiosk)
    {
        ASSERT_TRUE(kiosk.open_page("light"));
        kiosk.choose("double_blink");
        ASSERT_TRUE(kiosk.open_page("bed"));
        clock_->pass(minutes(35));
        kiosk.goOn();
        ASSERT_EQ(kiosk.page(), "night");
    }
};

TEST_F(KioskTest, OpensOnTheSamePage_AfterEveryPage)
{
    const std::vector<std::string> pages = on_disk()->session()->pages().all();
    ASSERT_GT(pages.size(), 40u);
    for (const std::string& page : pages) {
        ASSERT_TRUE(on_disk()->open_page(page)); // and the power goes
        const std::unique_ptr<Kiosk> again = on_disk();
        EXPECT_EQ(again->page().toStdString(), page);
        EXPECT_TRUE(page != "night" || again->night().face == "dark");
    }
}

TEST_F(KioskTest, StaysWhereItIsAndSaysSo_WhenAnEntryCannotBeWritten)
{
    const std::unique_ptr<Kiosk> kiosk = failing();
    kiosk->goOn();
    ASSERT_EQ(kiosk->page(), "first");
    failing_ = true;
    kiosk->firstNone();
    EXPECT_EQ(kiosk->screen(), "trouble");
    EXPECT_EQ(kiosk->page(), "first");
    EXPECT_TRUE(kiosk->message().phone.contains("555-0142"));
    EXPECT_FALSE(kiosk->message().title.isEmpty());
}

TEST_F(KioskTest, LeadsToTheClinic_WhenOneOfTheFirstQuestionsIsTrue)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    kiosk->goOn();
    kiosk->firstSome();
    EXPECT_EQ(kiosk->screen(), "call");
    kiosk->goBack();
    EXPECT_EQ(kiosk->screen(), "first");
    kiosk->firstSome();
    kiosk->goOn();
    EXPECT_EQ(kiosk->page(), "bag");
    EXPECT_TRUE(kiosk->session()->state().called);
}

TEST_F(KioskTest, HelpEndsInAFixOrInTheClinicsNumber_ForEveryStepThatHasHelp)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    int helped = 0;
    for (const Step& step : kiosk->session()->plan().steps) {
        ASSERT_TRUE(kiosk->open_page(step.id));
        kiosk->openHelp();
        for (const Help& help : step.helps) {
            kiosk->choose(QString::fromStdString(help.id));
            EXPECT_FALSE(kiosk->help().answer.isEmpty()) << help.id;
            EXPECT_TRUE(kiosk->help().phone.contains("555-0142")) << help.id;
            ++helped;
        }
        EXPECT_TRUE(!step.helps.empty() || kiosk->call().phone.contains("555-0142")) << step.id;
    }
    EXPECT_GT(helped, 30);
}

TEST_F(KioskTest, NotesNothing_WhenTheDarkPageIsTouchedFirst)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    const std::int64_t before = kiosk->session()->last_number();
    kiosk->wake();
    EXPECT_EQ(kiosk->session()->last_number(), before);
    EXPECT_EQ(kiosk->night().face, "areas");
}

TEST_F(KioskTest, TakesANoteBack_WhenUndone)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    kiosk->wake();
    kiosk->noteAwake();
    EXPECT_TRUE(kiosk->session()->state().awake_now());
    kiosk->undo();
    EXPECT_FALSE(kiosk->session()->state().awake_now());
    EXPECT_TRUE(kiosk->session()->state().notes.empty());
}

TEST_F(KioskTest, PutsARemovalBetweenTheLastTimeAllWasOnAndTheNoticing)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    clock_->pass(hours(2));
    kiosk->wake();
    kiosk->noteUp();
    clock_->pass(minutes(5));
    kiosk->noteUp(); // back in bed
    EXPECT_EQ(kiosk->night().face, "stillOn");
    kiosk->yes();
    const Instant known = clock_->instant();
    clock_->pass(hours(3));
    kiosk->wake();
    kiosk->noteOff();
    kiosk->choose("finger");
    const Instant noticed = clock_->instant();
    const Night night = kiosk->session()->night();
    ASSERT_EQ(night.off.size(), 1u);
    EXPECT_EQ(night.off[0].sensor, "finger");
    EXPECT_EQ(night.off[0].from, (TimeRange{known, noticed}));
    EXPECT_FALSE(night.off[0].to);
}

TEST_F(KioskTest, KeepsAHalfGivenAnswer_WhenThePowerGoes)
{
    {
        const std::unique_ptr<Kiosk> kiosk = on_disk();
        to_night(*kiosk);
        kiosk->upConfirmed();
        ASSERT_TRUE(kiosk->open_page("q.into_bed"));
        kiosk->stepTime(-10, "time");
        kiosk->chooseSureness("about");
    }
    const std::unique_ptr<Kiosk> again = on_disk();
    EXPECT_EQ(again->screen(), "time");
    EXPECT_EQ(again->time().sureness, "about");
    EXPECT_TRUE(again->time().mainEnabled);
}

TEST_F(KioskTest, AsksHowSure_AfterATimeWasChanged)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    clock_->pass(hours(8));
    kiosk->upConfirmed();
    ASSERT_TRUE(kiosk->open_page("q.lights_out"));
    EXPECT_TRUE(kiosk->time().mainEnabled);
    EXPECT_TRUE(kiosk->time().sureness.isEmpty());
    kiosk->stepTime(10, "time");
    EXPECT_FALSE(kiosk->time().mainEnabled);
    kiosk->goOn();
    EXPECT_EQ(kiosk->page(), "q.lights_out");
}

TEST_F(KioskTest, ShowsBothAnswers_WhenTheyContradictEachOther)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    clock_->pass(hours(8));
    kiosk->upConfirmed();
    ASSERT_TRUE(kiosk->open_page("q.final_waking"));
    kiosk->stepTime(-600, "time");
    kiosk->chooseSureness("exact");
    kiosk->goOn();
    ASSERT_TRUE(kiosk->open_page("review"));
    kiosk->goOn();
    EXPECT_EQ(kiosk->screen(), "puzzle");
    EXPECT_FALSE(kiosk->puzzle().firstValue.isEmpty());
    EXPECT_FALSE(kiosk->puzzle().secondValue.isEmpty());
    for (int left = 0; left < 10 && kiosk->screen() == "puzzle"; ++left)
        kiosk->leavePuzzle();
    EXPECT_EQ(kiosk->page(), "result");
}

/// Answers a time question anew: so many minutes away from what stands there.
void change_by(Kiosk& kiosk, const char* question, int by)
{
    ASSERT_TRUE(kiosk.open_page(std::string("q.") + question));
    kiosk.stepTime(by, "time");
    kiosk.chooseSureness("exact");
    kiosk.goOn();
}

TEST_F(KioskTest, AsksAboutEachPairOfAnswersThatDoNotFit_OneAfterTheOther)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    clock_->pass(hours(8));
    kiosk->upConfirmed();
    change_by(*kiosk, "lights_on", -600);  // before lights out
    change_by(*kiosk, "out_of_bed", -620); // before into bed
    ASSERT_TRUE(kiosk->open_page("review"));
    kiosk->goOn();
    std::set<QString> asked;
    while (kiosk->screen() == "puzzle" && asked.size() < 10) {
        EXPECT_TRUE(asked.insert(kiosk->puzzle().body).second) << "asked twice";
        EXPECT_FALSE(kiosk->puzzle().firstValue.isEmpty());
        EXPECT_FALSE(kiosk->puzzle().secondValue.isEmpty());
        kiosk->leavePuzzle();
    }
    EXPECT_GE(asked.size(), 2u);
    EXPECT_EQ(kiosk->page(), "result");
}

TEST_F(KioskTest, ShowsAnAwakeningOutsideTheNight_BesideTheTimeThatBoundsIt)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    clock_->pass(hours(8));
    kiosk->upConfirmed();
    ASSERT_TRUE(kiosk->open_page("q.awake"));
    kiosk->addEvent();
    kiosk->stepTime(-600, "time");
    kiosk->chooseSureness("exact");
    kiosk->goOn();
    kiosk->chooseSureness("exact");
    kiosk->goOn();
    ASSERT_EQ(kiosk->session()->morning().awake.value->size(), 1u);
    ASSERT_TRUE(kiosk->open_page("review"));
    kiosk->goOn();
    ASSERT_EQ(kiosk->screen(), "puzzle");
    EXPECT_TRUE(kiosk->puzzle().firstCanChange);
    EXPECT_FALSE(kiosk->puzzle().firstValue.contains(QLatin1Char('\n'))) << "that awakening alone";
    EXPECT_FALSE(kiosk->puzzle().secondLabel.isEmpty()) << "the recorder's start, though nobody was asked";
    EXPECT_FALSE(kiosk->puzzle().secondValue.isEmpty());
    EXPECT_FALSE(kiosk->puzzle().secondCanChange);
    kiosk->changeFirst();
    EXPECT_EQ(kiosk->page(), "q.awake");
}

TEST_F(KioskTest, AsksWhichOfTwoEqualTimes_OnTheNightWhenTheClocksGoBack)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk); // 31 October 2026, New York
    clock_->pass(hours(6)); // 03:05 after the change
    kiosk->upConfirmed();
    ASSERT_TRUE(kiosk->open_page("q.final_waking"));
    kiosk->stepTime(-90, "time");
    kiosk->chooseSureness("exact");
    EXPECT_FALSE(kiosk->time().noteText.isEmpty());
    kiosk->goOn();
    ASSERT_EQ(kiosk->screen(), "choice");
    EXPECT_EQ(kiosk->page(), "q.final_waking");
    EXPECT_FALSE(kiosk->list().mainEnabled) << "none is chosen for the person";
    ASSERT_EQ(kiosk->list().items.size(), 3);
    kiosk->goOn();
    EXPECT_EQ(kiosk->screen(), "choice");
    kiosk->goBack();
    EXPECT_EQ(kiosk->screen(), "time");
    kiosk->goOn();
    kiosk->choose("second");
    kiosk->goOn();
    EXPECT_NE(kiosk->page(), "q.final_waking");
    ASSERT_TRUE(kiosk->session()->night().final_waking);
    const Instant second = kiosk->session()->night().final_waking->earliest;
    EXPECT_EQ(kiosk->session()->offset_at(second), std::chrono::hours(-5)) << "after the clocks went back";
}

TEST_F(KioskTest, AsksForTheAmountsOfTheDiary)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    clock_->pass(hours(8));
    kiosk->upConfirmed();
    for (const char* page : {"q.tried_to_sleep_after_waking", "q.slept"}) {
        ASSERT_TRUE(kiosk->open_page(page));
        ASSERT_EQ(kiosk->screen(), "amount");
        EXPECT_FALSE(kiosk->amount().mainEnabled);
        kiosk->stepAmount(15);
        kiosk->goOn();
    }
    EXPECT_EQ(kiosk->session()->night().tried_after_waking, minutes(15));
    EXPECT_EQ(kiosk->session()->night().slept, minutes(15));
}

TEST_F(KioskTest, TakesATickBack)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    for (const char* page : {"bag", "check", "pack"}) {
        ASSERT_TRUE(kiosk->open_page(page));
        const QString id = kiosk->list().items.front().value<ItemRow>().id;
        const auto ticked = [&] { return kiosk->list().items.front().value<ItemRow>().done; };
        kiosk->toggle(id);
        EXPECT_TRUE(ticked()) << page;
        kiosk->toggle(id);
        EXPECT_FALSE(ticked()) << page;
    }
}

TEST_F(KioskTest, OpensTheHelpOfThePartThatIsNotRight_AtTheCheck)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    ASSERT_TRUE(kiosk->open_page("check"));
    for (const Part& part : kiosk->session()->kit().parts) {
        kiosk->openHelp(QString::fromStdString(part.id));
        ASSERT_TRUE(kiosk->screen() == "help" || kiosk->screen() == "call") << part.id;
        if (kiosk->screen() == "help") {
            EXPECT_FALSE(kiosk->help().options.isEmpty()) << part.id;
            kiosk->solved();
        } else {
            kiosk->goBack();
        }
        EXPECT_EQ(kiosk->page(), "check");
    }
    kiosk->openHelp(QStringLiteral("cannula"));
    EXPECT_EQ(kiosk->screen(), "help") << "this one has questions that help";
}

TEST_F(KioskTest, DrawsThePersonThatWasChosen_AlsoAfterwards)
{
    on_disk()->chooseBuild(QStringLiteral("broad"));
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    EXPECT_EQ(kiosk->welcome().build, "broad");
    ASSERT_TRUE(kiosk->open_page("chest_belt.wrap"));
    EXPECT_TRUE(kiosk->step().personFigure.contains("build=broad"));
    EXPECT_FALSE(kiosk->step().breathText.isEmpty()) << "a belt is closed at the end of a breath out";
}

TEST_F(KioskTest, AsksFirstWhatTheVisitSays)
{
    visit_.visit.ask_first = {"oxygen", "latex"};
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    ASSERT_TRUE(kiosk->open_page("first"));
    EXPECT_EQ(kiosk->first().conditions.size(), 2);
}

TEST_F(KioskTest, AsksInTheEvening_OnlyWhereTheVisitSaysSo_AndKeepsTheAnswers)
{
    EXPECT_FALSE(on_disk()->session()->pages().has("evening.nap"));
    visit_.visit.options.evening_questions = true;
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    ASSERT_TRUE(kiosk->open_page("evening.day"));
    EXPECT_FALSE(kiosk->list().mainEnabled);
    kiosk->skip();
    EXPECT_EQ(kiosk->page(), "evening.nap");
    kiosk->choose(QStringLiteral("short"));
    kiosk->goOn();
    EXPECT_EQ(kiosk->page(), "evening.caffeine");
    to_night(*kiosk);
    const Result<Diary> diary = kiosk->session()->diary();
    ASSERT_TRUE(diary.ok());
    const auto answer = [&](const char* question) {
        return std::count_if(diary->answers.begin(), diary->answers.end(), [question](const DiaryAnswer& one) { return one.question == question; });
    };
    EXPECT_EQ(answer("evening.nap"), 1);
    EXPECT_EQ(answer("evening.day"), 0) << "skipped is no answer";
}

TEST_F(KioskTest, TimesTheSignalCheck_AndWritesItIntoTheRecord)
{
    visit_.visit.options.signal_check = true;
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    ASSERT_TRUE(kiosk->open_page("signal.calm"));
    EXPECT_EQ(kiosk->screen(), "signal");
    kiosk->goOn();
    EXPECT_FALSE(kiosk->signal_task_values().mainEnabled) << "it runs";
    clock_->pass(std::chrono::seconds(30));
    kiosk->let_time_pass();
    EXPECT_EQ(kiosk->page(), "signal.deep");
    kiosk->skip(); // never begun
    EXPECT_EQ(kiosk->page(), "signal.hold");
    kiosk->goOn();
    clock_->pass(std::chrono::seconds(4));
    kiosk->skip(); // stopped at once when it did not feel good
    EXPECT_EQ(kiosk->page(), "signal.finger");
    to_night(*kiosk);
    const Result<Diary> diary = kiosk->session()->diary();
    ASSERT_TRUE(diary.ok());
    ASSERT_EQ(diary->signal_checks.size(), 2u);
    EXPECT_EQ(diary->signal_checks[0].kind, "calm");
    EXPECT_EQ(diary->signal_checks[0].at, evening());
    EXPECT_EQ(diary->signal_checks[0].text, "asked to breathe calmly for 30 s");
    EXPECT_EQ(diary->signal_checks[1].text, "asked to hold the breath for 10 s; ended before that");
}

TEST_F(KioskTest, EndsATaskOfTheSignalCheck_ThatWasUnderWayWhenThePowerWent)
{
    visit_.visit.options.signal_check = true;
    {
        const std::unique_ptr<Kiosk> kiosk = on_disk();
        ASSERT_TRUE(kiosk->open_page("signal.calm"));
        kiosk->goOn();
    }
    clock_->pass(minutes(2));
    const std::unique_ptr<Kiosk> again = on_disk();
    EXPECT_EQ(again->page(), "signal.calm");
    for (int wait = 0; wait < 100 && again->page() == "signal.calm"; ++wait) {
        QThread::msleep(50);
        QCoreApplication::processEvents();
    }
    EXPECT_EQ(again->page(), "signal.deep");
}

TEST_F(KioskTest, TellsTheMorningThatTheTabletRanFlat)
{
    to_night(*on_disk());
    clock_->pass(hours(2));
    on_disk(); // opened again under the same boot: a crash of a moment
    clock_ = std::make_shared<SimulatedClock>(clock_->instant() + hours(4), "another boot");
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    EXPECT_EQ(kiosk->page(), "night");
    ASSERT_EQ(kiosk->session()->state().gaps.size(), 1u);
    EXPECT_EQ(kiosk->session()->state().gaps[0].width(), hours(4));
    kiosk->upConfirmed();
    EXPECT_TRUE(kiosk->message().body.contains(QLatin1Char('\n'))) << "the gap is told";
    ASSERT_TRUE(kiosk->open_page("q.awake"));
    EXPECT_FALSE(kiosk->list().hint.isEmpty()) << "and asked about";
}

TEST_F(KioskTest, CountsAwakeningsWithoutTimes)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    clock_->pass(hours(8));
    kiosk->upConfirmed();
    ASSERT_TRUE(kiosk->open_page("q.awake"));
    EXPECT_FALSE(kiosk->list().countLabel.isEmpty());
    kiosk->countEvents();
    ASSERT_EQ(kiosk->screen(), "amount");
    EXPECT_FALSE(kiosk->amount().mainEnabled);
    kiosk->stepAmount(3);
    kiosk->goOn();
    kiosk->stepAmount(25);
    kiosk->goOn();
    EXPECT_EQ(kiosk->screen(), "events");
    ASSERT_TRUE(kiosk->session()->night().awake_untimed);
    EXPECT_EQ(*kiosk->session()->night().awake_untimed, (UntimedAwakenings{3, minutes(25)}));
    EXPECT_TRUE(kiosk->list().countLabel.isEmpty()) << "said once";
    kiosk->removeEvent(QStringLiteral("untimed"));
    EXPECT_FALSE(kiosk->session()->night().awake_untimed);
}

TEST_F(KioskTest, AsksAboutTheSkinOnceMore_HalfAnHourLater)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    clock_->pass(hours(8));
    kiosk->upConfirmed();
    ASSERT_TRUE(kiosk->open_page("skin"));
    kiosk->skinFine();
    ASSERT_TRUE(kiosk->open_page("finished"));
    EXPECT_FALSE(kiosk->message().skinText.isEmpty());
    kiosk->let_time_pass();
    EXPECT_EQ(kiosk->screen(), "skin");
    kiosk->skinSore();
    EXPECT_TRUE(kiosk->skin().caution.contains("555-0142"));
    EXPECT_EQ(kiosk->session()->state().skin, "fine") << "the first look stands";
    EXPECT_EQ(kiosk->session()->state().skin_again, "sore");
    kiosk->goOn();
    EXPECT_EQ(kiosk->screen(), "finished");
}

TEST_F(KioskTest, KeepsTheStartOfTheRecording_WhenAnotherLightIsSeenLater)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    ASSERT_TRUE(kiosk->open_page("light"));
    kiosk->choose("double_blink");
    const std::optional<TimeRange> start = kiosk->session()->night().recording_from;
    ASSERT_TRUE(start);
    clock_->pass(minutes(10));
    kiosk->choose("steady");
    EXPECT_EQ(kiosk->session()->night().recording_from, start);
}

TEST_F(KioskTest, ASkippedAnswerIsAbsent_NeverZero)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    clock_->pass(hours(8));
    kiosk->upConfirmed();
    ASSERT_TRUE(kiosk->open_page("q.asleep_after"));
    kiosk->skip();
    const Estimate found = estimate(kiosk->session()->night(), {.with_chance = false});
    EXPECT_FALSE(found.diary.sol);
    EXPECT_FALSE(found.diary.tst);
}

TEST_F(KioskTest, SaysTheRecordCouldNotBeWritten_AndKeepsTheNight)
{
    Kiosk kiosk([this]() -> Result<std::unique_ptr<Session>> { return Session::begin({demo(), make_memory_journal(), "/proc/nowhere"}, clock_); }, settings());
    to_night(kiosk);
    clock_->pass(hours(8));
    kiosk.upConfirmed();
    ASSERT_TRUE(kiosk.open_page("pack"));
    for (size_t i = 0; i < kiosk.session()->kit().packing.size(); ++i)
        kiosk.toggle(QString::number(i));
    kiosk.goOn();
    EXPECT_EQ(kiosk.screen(), "trouble");
    EXPECT_EQ(kiosk.page(), "pack");
    EXPECT_EQ(kiosk.message().title, kiosk.words().of("trouble.no_place.title")) << "there is no such place";
    EXPECT_TRUE(kiosk.session()->state().record.empty());
}

TEST_F(KioskTest, WritesTheRecord_WhenACommentWasPastedWithControlCharacters)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    clock_->pass(hours(8));
    kiosk->upConfirmed();
    ASSERT_TRUE(kiosk->open_page("q.comment"));
    kiosk->editComment(QStringLiteral("first line\nsecond") + QChar(1) + QStringLiteral("line"));
    kiosk->goOn();
    ASSERT_TRUE(kiosk->open_page("pack"));
    kiosk->goOn();
    EXPECT_EQ(kiosk->page(), "finished");
    EXPECT_FALSE(kiosk->session()->state().record.empty());
}

TEST(Texts, AreThereInEveryLanguage_ForEveryStepOfEveryKit)
{
    for (const QString& language : Words::languages()) {
        const Words words(language, nullptr);
        EXPECT_EQ(words.language(), language);
        for (const std::string& id : all_step_texts())
            EXPECT_NE(words.of(id).toStdString(), id) << language.toStdString();
    }
}

TEST(Texts, KeepAPhoneNumberInItsOwnDirection)
{
    const Words words(QStringLiteral("ar"), nullptr);
    const QString number = words.code("555-0142");
    EXPECT_EQ(number.front(), QChar(0x2066));
    EXPECT_EQ(number.back(), QChar(0x2069));
}

// The rules of French spelling; from memory.
TEST(Texts, WriteFrenchDatesAndHoursAsFrenchDoes)
{
    const Words words(QStringLiteral("fr"), nullptr);
    EXPECT_EQ(words.date("2026-12-01").toStdString(), "mardi 1er décembre 2026");
    EXPECT_EQ(words.date("2026-12-11").toStdString(), "vendredi 11 décembre 2026");
    Clinic clinic;
    clinic.hours = {{{"mon"}, std::chrono::hours(8), std::chrono::hours(17)}};
    EXPECT_EQ(words.hours(clinic).toStdString(), "lun.\u202f: \u206608:00\u2069 - \u206617:00\u2069");
}

TEST_F(KioskTest, SomethingThatCameOffIsNotedBeforeItIsAskedWhich)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    clock_->pass(hours(2));
    kiosk->wake();
    kiosk->noteOff(); // the second touch
    ASSERT_EQ(kiosk->night().face, "which");
    ASSERT_EQ(kiosk->session()->state().notes.size(), 1u);
    // Asleep over the question: the page goes dark, the note stands, and the morning asks.
    kiosk->let_time_pass();
    EXPECT_EQ(kiosk->night().face, "dark");
    EXPECT_TRUE(kiosk->session()->state().off_now().empty());
    EXPECT_EQ(kiosk->session()->morning().unnamed_off.size(), 1u);
    clock_->pass(hours(5));
    kiosk->upConfirmed();
    ASSERT_TRUE(kiosk->open_page("q.off"));
    EXPECT_FALSE(kiosk->list().hint.isEmpty());
    const std::vector<DiaryEvent> events = kiosk->session()->diary()->events;
    EXPECT_TRUE(std::any_of(events.begin(), events.end(), [](const DiaryEvent& one) { return one.kind == "something_off"; }));
}

TEST_F(KioskTest, ThePartThatIsNamedTakesThePlaceOfTheNoteWithoutAName)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    kiosk->wake();
    kiosk->noteOff();
    kiosk->choose("finger");
    EXPECT_EQ(kiosk->session()->state().off_now(), std::set<std::string>{"finger"});
    EXPECT_TRUE(kiosk->session()->morning().unnamed_off.empty());
    kiosk->undo();
    EXPECT_TRUE(kiosk->session()->state().off_now().empty()) << "undo takes back the part, not the tidying up";
    EXPECT_TRUE(kiosk->session()->state().notes.empty());
    // None of these: then nothing came off.
    kiosk->noteOff();
    kiosk->choose("none");
    EXPECT_TRUE(kiosk->session()->morning().unnamed_off.empty());
}

TEST_F(KioskTest, TheOnePartThatIsOffIsBackOnWithOneTouch_AndUndoneAsksWhich)
{
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    to_night(*kiosk);
    kiosk->wake();
    kiosk->noteOff();
    kiosk->choose("finger");
    kiosk->let_time_pass();
    kiosk->wake();
    kiosk->noteOff();
    EXPECT_EQ(kiosk->night().face, "noted");
    EXPECT_TRUE(kiosk->session()->state().off_now().empty());
    kiosk->undo();
    EXPECT_EQ(kiosk->night().face, "which");
    EXPECT_EQ(kiosk->session()->state().off_now(), std::set<std::string>{"finger"});
    kiosk->choose("none"); // something else came off
    EXPECT_EQ(kiosk->night().face, "which");
    kiosk->choose("cannula");
    EXPECT_EQ(kiosk->session()->state().off_now(), (std::set<std::string>{"cannula", "finger"}));
    kiosk->noteOff();
    EXPECT_EQ(kiosk->night().face, "which") << "two are off: which one is asked";
}

TEST_F(KioskTest, AsksForTheChargerBeforeLightsOut_OnlyWhenThereIsNone)
{
    bool on_battery = true;
    Kiosk::Settings own = settings();
    own.on_battery = [&on_battery] { return on_battery; };
    Kiosk kiosk([this]() -> Result<std::unique_ptr<Session>> { return Session::begin({demo(), make_memory_journal(), {}}, clock_); }, own);
    ASSERT_TRUE(kiosk.open_page("bed"));
    EXPECT_TRUE(kiosk.bed().lines.contains(QVariant(kiosk.words().of("bed.line.plug_in"))));
    on_battery = false;
    ASSERT_TRUE(kiosk.open_page("bed"));
    EXPECT_FALSE(kiosk.bed().lines.contains(QVariant(kiosk.words().of("bed.line.plug_in"))));
    EXPECT_TRUE(kiosk.bed().lines.contains(QVariant(kiosk.words().of("bed.line.tablet"))));
}

TEST_F(KioskTest, BetweenTwoNightsTheRecorderIsCharged_AndTheKitStays)
{
    visit_.visit.nights = 2;
    visit_.kit.packing.push_back({"", "charger", {}, 1, true});
    const std::unique_ptr<Kiosk> kiosk = on_disk();
    ASSERT_TRUE(kiosk->open_page("finished"));
    const Words& words = kiosk->words();
    EXPECT_EQ(kiosk->message().title, words.of("finished.next.title", {words.number(1)}));
    EXPECT_TRUE(kiosk->message().body.contains(words.of("finished.next.charge")));
    kiosk->goOn();
    EXPECT_EQ(kiosk->session()->state().night, 2);
    ASSERT_TRUE(kiosk->open_page("finished"));
    EXPECT_EQ(kiosk->message().title, words.of("finished.title"));
    EXPECT_FALSE(kiosk->message().body.contains(words.of("finished.next.charge")));
}

} // namespace

int main(int argc, char** argv)
{
    QCoreApplication app(argc, argv);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
