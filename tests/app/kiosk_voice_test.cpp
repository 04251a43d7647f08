// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Reading aloud, mirror and practice run of the kiosk, with a speaker and a camera that only write down
// what they are told.
#include "kiosk/kiosk.h"

#include "base/file.h"

#include <QCoreApplication>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <utility>

namespace {

using namespace evenfall;
using std::chrono::hours;

struct Told {
    QStringList read, tones;
    int stops = 0;
    bool device = true, camera = true, filming = false;
    Speaker* speaker = nullptr;
    Camera* lens = nullptr;
};

class ToldSpeaker final : public Speaker {
  public:
    explicit ToldSpeaker(Told& told) : told_(told) { told.speaker = this; }
    bool has_device() const override { return told_.device; }
    void read(const QStringList& files) override { told_.read = files; }
    void tone(const QString& file) override { told_.tones << file.section(QLatin1Char('/'), -1); }
    void stop() override
    {
        ++told_.stops;
        told_.read.clear();
    }

  private:
    Told& told_;
};

class ToldCamera final : public Camera {
  public:
    explicit ToldCamera(Told& told) : told_(told) { told.lens = this; }
    bool is_there() const override { return told_.camera; }
    void start() override { told_.filming = true; }
    void stop() override { told_.filming = false; }

  private:
    Told& told_;
};

class ToldMedia final : public Media {
  public:
    explicit ToldMedia(Told& told) : told_(told) {}
    std::unique_ptr<Speaker> make_speaker() override { return std::make_unique<ToldSpeaker>(told_); }
    std::unique_ptr<Camera> make_camera() override { return std::make_unique<ToldCamera>(told_); }

  private:
    Told& told_;
};

QString name_of_file(const QString& path) { return path.section(QLatin1Char('/'), -1); }

class KioskVoice : public testing::Test {
  protected:
    Told told;
    ToldMedia media{told};
    int opened = 0; ///< how often the module was asked for
    QTemporaryDir folder;
    VisitWithKit visit = [] {
        Result<VisitWithKit> found = load_visit(EVENFALL_SOURCE_DIR "/assets/visits/demo.json", {});
        EXPECT_TRUE(found.ok());
        found->visit.options = {.signal_check = true, .evening_questions = true, .mirror = true, .narration = true};
        return *found;
    }();
    // The evening of 31 October 2026, 21:30 in New York (invented).
    std::shared_ptr<SimulatedClock> clock = std::make_shared<SimulatedClock>(*resolve(*parse_time("2026-10-31T21:30:00-04:00"), nullptr));
    bool has_module = true;

    std::filesystem::path voices() const { return folder.path().toStdString() + "/voice"; }

    /// Empty recordings of everything, as if they had been spoken.
    void record_all(const QString& language = QStringLiteral("en"))
    {
        const Result<Plan> plan = make_plan(visit.kit, visit.visit.hand);
        const Words words(language, visit.visit.zone);
        std::filesystem::create_directories(voices() / language.toStdString());
        for (const SpokenUnit& unit : Teller{visit.visit, visit.kit, words}.all(*plan))
            ASSERT_TRUE(write_file(voices() / language.toStdString() / (unit.key() + ".opus"), "").ok());
    }
    std::unique_ptr<Kiosk> kiosk()
    {
        Kiosk::Settings settings;
        settings.sound.voices = {folder.path().toStdString() + "/own", voices()};
        settings.sound.tones = EVENFALL_SOURCE_DIR "/assets/sounds";
        if (has_module)
            settings.sound.media = [this]() -> Media* {
                ++opened;
                return &media;
            };
        return std::make_unique<Kiosk>(
            [this]() -> Result<std::unique_ptr<Session>> {
                Result<Opened> journal = open_journal(std::filesystem::path(folder.path().toStdString()) / "journal.db");
                if (!journal)
                    return journal.problems();
                return Session::begin({visit, std::move(journal->journal), folder.path().toStdString()}, clock);
            },
            settings);
    }
};

TEST_F(KioskVoice, EveryPageOfTheEveningCanBeReadAndNothingIsLoadedForIt)
{
    record_all();
    const std::unique_ptr<Kiosk> one = kiosk();
    for (const std::string& page : one->session()->pages().all()) {
        if (page == "night")
            break;
        ASSERT_TRUE(one->open_page(page));
        EXPECT_TRUE(one->voice().offered) << page;
        EXPECT_TRUE(one->voice().canSpeak) << page << ": " << one->voice().reason.toStdString();
    }
    std::vector<std::string> off{"skin"};
    for (const OffStep& step : off_steps(one->session()->kit()))
        off.push_back(step.page);
    for (const std::string& page : off) {
        ASSERT_TRUE(one->open_page(page));
        EXPECT_TRUE(one->voice().canSpeak) << page;
    }
    EXPECT_EQ(opened, 0);
    EXPECT_TRUE(told.read.isEmpty());
}

TEST_F(KioskVoice, ReadsTitleBodyRightWhenAndCaution_WhenAsked)
{
    record_all();
    const std::unique_ptr<Kiosk> one = kiosk();
    const Step* found = nullptr;
    for (const Step& step : one->session()->plan().steps) {
        if (step.phase == Phase::put_on && !step.caution.empty() && !step.right.empty())
            found = &step;
    }
    ASSERT_NE(found, nullptr);
    ASSERT_TRUE(one->open_page(found->id));
    one->sayAgain();
    ASSERT_GE(told.read.size(), 5);
    const std::vector<std::string> wanted{found->title.id, found->body.id, "step.right_when", found->right.id, found->caution.id};
    for (size_t i = 0; i < wanted.size(); ++i)
        EXPECT_TRUE(name_of_file(told.read[static_cast<qsizetype>(i)]).startsWith(QString::fromStdString(wanted[i] + "-"))) << told.read[static_cast<qsizetype>(i)].toStdString();
    EXPECT_TRUE(one->voice().speaking);
    told.speaker->ended(true);
    EXPECT_FALSE(one->voice().speaking);
}

TEST_F(KioskVoice, ReadsEachPageByItself_OnlyWhenThatWasChosen_AndNeverTheNight)
{
    record_all();
    const std::unique_ptr<Kiosk> one = kiosk();
    one->goOn();
    EXPECT_TRUE(told.read.isEmpty());
    one->chooseReading(true);
    EXPECT_TRUE(name_of_file(told.read.value(0)).startsWith("first.title"));
    one->goBack();
    EXPECT_TRUE(name_of_file(told.read.value(0)).startsWith("welcome.title"));
    ASSERT_TRUE(one->open_page("bed"));
    one->goOn();
    ASSERT_EQ(one->page(), "night");
    EXPECT_TRUE(told.read.isEmpty());
    one->wake();
    one->askHelp();
    EXPECT_TRUE(told.read.isEmpty());
    EXPECT_TRUE(one->voice().canSpeak);
    one->sayAgain(); // on request
    EXPECT_TRUE(name_of_file(told.read.value(0)).startsWith("night.help.title"));
    one->leaveFace();
    EXPECT_TRUE(told.read.isEmpty());
}

TEST_F(KioskVoice, KeepsTheChoiceOverAKill)
{
    record_all();
    kiosk()->chooseReading(true);
    EXPECT_TRUE(kiosk()->voice().readToMe);
    kiosk()->stopReading();
    EXPECT_FALSE(kiosk()->voice().readToMe);
}

TEST_F(KioskVoice, StopsWhenThePageIsLeft_AndReadsHelpOnRequest)
{
    record_all();
    const std::unique_ptr<Kiosk> one = kiosk();
    ASSERT_TRUE(one->open_page("ready.bare"));
    one->sayAgain();
    EXPECT_FALSE(told.read.isEmpty());
    one->openHelp();
    EXPECT_TRUE(told.read.isEmpty());
    ASSERT_EQ(one->screen(), "help");
    one->sayAgain();
    EXPECT_TRUE(name_of_file(told.read.value(1)).startsWith("help.ready.bare.1.question"));
    one->choose("help.ready.bare.1");
    EXPECT_TRUE(told.read.isEmpty());
    one->sayAgain();
    EXPECT_TRUE(name_of_file(told.read.value(0)).startsWith("help.ready.bare.1.fix"));
}

TEST_F(KioskVoice, SaysWhyItIsSilent)
{
    record_all();
    const auto reason = [this] {
        const std::unique_ptr<Kiosk> one = kiosk();
        EXPECT_TRUE(one->open_page("ready.charger"));
        if (one->voice().canSpeak)
            one->sayAgain();
        EXPECT_FALSE(one->voice().canSpeak);
        EXPECT_EQ(one->step().speakReason, one->voice().reason);
        return one->voice().reason;
    };
    told.device = false;
    const QString device = reason();
    told.device = true;
    has_module = false;
    const QString module = reason();
    has_module = true;
    visit.visit.options.narration = false;
    const QString option = reason();
    visit.visit.options.narration = true;
    std::filesystem::remove_all(voices());
    const QString recording = reason();
    const std::set<QString> all{device, module, option, recording};
    EXPECT_EQ(all.size(), 4u) << "each has its own words";
    EXPECT_FALSE(all.contains(QString()));
}

TEST_F(KioskVoice, SaysThatARecordingCannotBePlayed_UntilThePageIsLeft)
{
    record_all();
    const std::unique_ptr<Kiosk> one = kiosk();
    ASSERT_TRUE(one->open_page("ready.charger"));
    one->sayAgain();
    told.speaker->ended(false);
    EXPECT_FALSE(one->voice().canSpeak);
    EXPECT_FALSE(one->voice().reason.isEmpty());
    one->goOn();
    EXPECT_TRUE(one->voice().canSpeak);
}

TEST_F(KioskVoice, ReadsNothing_WhereTheCautionHasNoRecording)
{
    record_all();
    for (const auto& file : std::filesystem::directory_iterator(voices() / "en")) {
        if (file.path().filename().string().starts_with("bed.caution-"))
            std::filesystem::remove(file.path());
    }
    const std::unique_ptr<Kiosk> one = kiosk();
    ASSERT_TRUE(one->open_page("bed"));
    EXPECT_FALSE(one->voice().canSpeak);
    one->sayAgain();
    EXPECT_TRUE(told.read.isEmpty());
}

TEST_F(KioskVoice, PlaysTheClinicsRecordingBeforeOurs_ByTextIdOnlyWhereTheTextHasNoValue)
{
    record_all();
    const std::filesystem::path own = std::filesystem::path(folder.path().toStdString()) / "own" / "en";
    std::filesystem::create_directories(own);
    for (const char* name : {"step.ready.tape.title.wav", "step.ready.tape.right.wav", "step.ready.tape.body.ogg"})
        ASSERT_TRUE(write_file(own / name, "").ok());
    const std::unique_ptr<Kiosk> one = kiosk();
    ASSERT_TRUE(one->open_page("ready.tape"));
    one->sayAgain();
    QStringList mine;
    for (const QString& file : told.read) {
        if (file.contains("/own/"))
            mine << name_of_file(file);
    }
    // Title and body name the number of strips: another kit has another number.
    EXPECT_EQ(mine, QStringList{"step.ready.tape.right.wav"});
}

TEST_F(KioskVoice, AChangedSentenceNeverPlaysItsOldRecording)
{
    record_all();
    visit.kit.parts[0].texts["wrap"]["body"] = {{"en", "Our own words (invented)."}};
    const std::unique_ptr<Kiosk> one = kiosk();
    ASSERT_TRUE(one->open_page(visit.kit.parts[0].id + ".wrap"));
    EXPECT_FALSE(one->voice().canSpeak);
    record_all();
    one->openHelp();
    one->goBack();
    EXPECT_TRUE(one->voice().canSpeak);
}

TEST_F(KioskVoice, SaysATelephoneNumberDigitByDigit)
{
    const Words words(QStringLiteral("en"), visit.visit.zone);
    const Spoken units = Teller{visit.visit, visit.kit, words}.bed();
    const SpokenUnit& caution = units.at(1); // before all else
    EXPECT_TRUE(caution.words.ends_with("call 911.")) << caution.words;
    EXPECT_TRUE(caution.sound.ends_with("call 9 1 1 .") || caution.sound.ends_with("call 9 1 1.")) << caution.sound;
    EXPECT_FALSE(caution.fixed);
    EXPECT_TRUE(units.front().fixed);
}

TEST_F(KioskVoice, TheNightIsSilent_UnlessSoundWasAskedFor)
{
    const std::unique_ptr<Kiosk> one = kiosk();
    ASSERT_TRUE(one->open_page("night"));
    one->wake();
    one->noteAwake();
    EXPECT_TRUE(told.tones.isEmpty());
    EXPECT_EQ(opened, 0);
    ASSERT_TRUE(one->open_page("bed"));
    one->chooseNightSound(true);
    EXPECT_EQ(told.tones, QStringList{"noted.wav"}); // how it will sound
    ASSERT_TRUE(one->open_page("night"));
    one->wake();
    one->noteAwake();
    EXPECT_EQ(told.tones.size(), 2);
}

TEST_F(KioskVoice, TheNightPageStaysLitWhileItsAdviceIsRead)
{
    record_all();
    const std::unique_ptr<Kiosk> one = kiosk();
    ASSERT_TRUE(one->open_page("night"));
    one->wake();
    one->askHelp();
    one->choose("unwell");
    ASSERT_EQ(one->night().face, "advice");
    one->sayAgain();
    ASSERT_FALSE(told.read.isEmpty());
    one->let_time_pass();
    EXPECT_EQ(one->night().face, "advice") << "it is still being read";
    EXPECT_FALSE(told.read.isEmpty());
    told.speaker->ended(true);
    EXPECT_EQ(one->night().face, "advice");
    one->let_time_pass();
    EXPECT_EQ(one->night().face, "dark");
}

TEST_F(KioskVoice, TheMorningCanBeReadToo_ButNoTimeAndNoAnswer)
{
    record_all();
    const std::unique_ptr<Kiosk> one = kiosk();
    bool after_night = false;
    int read = 0;
    for (const std::string& page : one->session()->pages().all()) {
        if (std::exchange(after_night, after_night || page == "night") == false)
            continue;
        ASSERT_TRUE(one->open_page(page)) << page;
        if (one->screen() == "puzzle")
            continue; // two answers with their times
        EXPECT_TRUE(one->voice().offered) << page;
        EXPECT_TRUE(one->voice().canSpeak) << page << ": " << one->voice().reason.toStdString();
        one->sayAgain();
        ASSERT_FALSE(told.read.isEmpty()) << page;
        if (page.starts_with("q.")) {
            EXPECT_TRUE(name_of_file(told.read.front()).startsWith(QString::fromStdString(page + ".title-"))) << told.read.front().toStdString();
        }
        ++read;
    }
    EXPECT_GE(read, 17);
}

TEST_F(KioskVoice, TheBreathingGuideSounds_OnlyWhileItIsAskedFor)
{
    record_all();
    const std::unique_ptr<Kiosk> one = kiosk();
    ASSERT_TRUE(one->open_page("chest_belt.wrap"));
    one->breathOut();
    EXPECT_TRUE(told.tones.isEmpty());
    one->chooseBreathSound(true);
    one->breathOut();
    one->breathOut();
    EXPECT_EQ(told.tones.size(), 2);
    one->goOn();
    EXPECT_FALSE(one->voice().breathSound);
    one->breathOut();
    EXPECT_EQ(told.tones.size(), 2);
    // Read by itself, the page goes on with the guide.
    one->chooseReading(true);
    ASSERT_TRUE(one->open_page("waist_belt.wrap"));
    EXPECT_FALSE(one->voice().breathSound);
    told.speaker->ended(true);
    EXPECT_TRUE(one->voice().breathSound);
}

// --- Mirror ---

TEST_F(KioskVoice, TheMirrorShowsFramesAndForgetsThem_WhenItIsClosedOrThePageIsLeft)
{
    const std::unique_ptr<Kiosk> one = kiosk();
    ASSERT_TRUE(one->open_page("cannula.prongs"));
    ASSERT_TRUE(one->step().mirrorOffered);
    EXPECT_EQ(opened, 0);
    for (const bool leave : {false, true}) {
        one->openMirror();
        EXPECT_TRUE(told.filming);
        told.lens->frame(QImage(4, 2, QImage::Format_RGB32));
        EXPECT_FALSE(one->mirror()->frame().isNull());
        if (leave)
            one->goOn();
        else
            one->closeMirror();
        EXPECT_FALSE(told.filming);
        EXPECT_TRUE(one->mirror()->frame().isNull());
    }
}

TEST_F(KioskVoice, TheMirrorIsForWhatOneCannotSee_AndAnAbsentCameraIsSaid)
{
    told.camera = false;
    const std::unique_ptr<Kiosk> one = kiosk();
    ASSERT_TRUE(one->open_page("finger.place"));
    EXPECT_FALSE(one->step().mirrorOffered);
    ASSERT_TRUE(one->open_page("cannula.ears"));
    const QString promise = one->step().mirrorText;
    one->openMirror();
    EXPECT_FALSE(one->step().mirrorThere);
    EXPECT_NE(one->step().mirrorText, promise);
}

TEST_F(KioskVoice, OffersNoMirror_WhereTheVisitHasNone)
{
    visit.visit.options.mirror = false;
    const std::unique_ptr<Kiosk> one = kiosk();
    ASSERT_TRUE(one->open_page("cannula.prongs"));
    EXPECT_FALSE(one->step().mirrorOffered);
}

TEST(MirrorItemTest, PaintsLeftAndRightAsInGlass)
{
    QImage frame(40, 20, QImage::Format_RGB32);
    frame.fill(Qt::blue);
    QPainter(&frame).fillRect(0, 0, 20, 20, Qt::red); // the left of the picture
    Mirror mirror;
    MirrorItem item;
    item.setSize({80, 60});
    item.set_source(&mirror);
    QImage shown(80, 60, QImage::Format_RGB32);
    shown.fill(Qt::black);
    mirror.show(frame);
    QPainter painter(&shown);
    item.paint(&painter);
    painter.end();
    EXPECT_EQ(shown.pixelColor(10, 30), QColor(Qt::blue));
    EXPECT_EQ(shown.pixelColor(70, 30), QColor(Qt::red));
    EXPECT_EQ(shown.pixelColor(40, 2), QColor(Qt::black)) << "its proportions are kept";
    shown.fill(Qt::black);
    mirror.forget();
    QPainter again(&shown);
    item.paint(&again);
    again.end();
    EXPECT_EQ(shown.pixelColor(70, 30), QColor(Qt::black));
}

// --- Practice run ---

TEST_F(KioskVoice, PracticeWalksEveryStepToTheLight_AndLeavesNoTrace)
{
    const std::unique_ptr<Kiosk> one = kiosk();
    const std::int64_t before = one->session()->last_number();
    one->startPractice();
    ASSERT_TRUE(one->practice());
    EXPECT_EQ(one->screen(), "practice");
    std::vector<std::string> seen;
    one->goOn();
    while (one->screen() != "practice" && seen.size() < 200) {
        seen.push_back(one->page().toStdString());
        if (one->page() == "first")
            one->firstNone();
        else
            one->goOn();
    }
    std::vector<std::string> wanted{"first", "bag"};
    for (const Step& step : one->session()->plan().steps)
        wanted.push_back(step.id);
    EXPECT_EQ(seen, wanted) << "without the questions about the day";
    EXPECT_EQ(one->message().title, one->words().of("practice.over.title"));
    EXPECT_TRUE(one->message().caution.contains("555-0142"));
    one->goOn();
    EXPECT_FALSE(one->practice());
    EXPECT_EQ(one->screen(), "welcome");
    EXPECT_EQ(one->session()->last_number(), before);
    EXPECT_TRUE(one->session()->state().steps.empty());
    EXPECT_FALSE(one->session()->state().started_at);
}

TEST_F(KioskVoice, PracticeKeepsTapeAndRecorderForTheNight)
{
    for (const char* kit : {"marram", "heron", "tern"}) {
        visit.kit = *load_kit(std::filesystem::path(EVENFALL_SOURCE_DIR "/assets/kits") / (std::string(kit) + ".json"));
        visit.visit.kit = kit;
        const std::unique_ptr<Kiosk> one = kiosk();
        ASSERT_TRUE(one->open_page("welcome"));
        one->startPractice();
        int starts = 0, tapes = 0;
        for (const Step& step : one->session()->plan().steps) {
            ASSERT_TRUE(one->open_page(step.id));
            starts += one->screen() == "step" && one->step().caution.contains(one->words().of("practice.no_start"));
            tapes += one->screen() == "step" && one->step().caution.contains(one->words().of("practice.no_tape"));
        }
        EXPECT_EQ(starts, 1) << kit;
        EXPECT_GE(tapes, 2) << kit;
        ASSERT_TRUE(one->open_page("light"));
        EXPECT_TRUE(one->list().mainEnabled) << "no light is there to be chosen";
    }
}

TEST_F(KioskVoice, AKillInPracticeComesBackToTheFirstPage_AndPracticeCanEndAnywhere)
{
    {
        const std::unique_ptr<Kiosk> one = kiosk();
        one->startPractice();
        one->goOn();
        one->firstNone();
        ASSERT_EQ(one->page(), "bag");
    }
    const std::unique_ptr<Kiosk> again = kiosk();
    EXPECT_EQ(again->screen(), "welcome");
    EXPECT_FALSE(again->practice());
    again->startPractice();
    again->goOn();
    again->firstSome();
    EXPECT_EQ(again->screen(), "call");
    again->endPractice();
    EXPECT_EQ(again->screen(), "welcome");
    EXPECT_FALSE(again->session()->state().first_some);
}

} // namespace
