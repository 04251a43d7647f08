// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The front desk without a window: what its pages show, and what comes of what is done on them.
#include "frontdesk/front_desk.h"

#include "base/file.h"
#include "journal/kinds.h"
#include "record/folder.h"
#include "support/print_service.h"

#include <QCoreApplication>
#include <QTemporaryDir>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

namespace {

using namespace evenfall;
namespace fs = std::filesystem;

const PinCost cheap{64, 1}; // for tests only: the real cost has its own test in core
const QString pin = QStringLiteral("271828");

class FrontDeskTest : public testing::Test {
  protected:
    QTemporaryDir folder_;
    fs::path home_ = folder_.path().toStdString(), stick_ = home_ / "stick";
    std::shared_ptr<SimulatedClock> clock_ = std::make_shared<SimulatedClock>(*resolve(*parse_time("2026-11-02T09:00:00-05:00"), nullptr));
    FrontDesk::Settings settings_;
    std::vector<Stick> sticks_;
    LetGo let_go_ = LetGo::unmounted;
    const fs::path printing_ = home_ / "printing";
    std::unique_ptr<test::PrintServer> server_;
    std::unique_ptr<Kiosk> kiosk_;
    std::unique_ptr<FrontDesk> desk_;

    void SetUp() override
    {
        fs::create_directories(stick_);
        sticks_ = {{stick_, "", "Blue stick"}};
        settings_.data = home_ / "data";
        settings_.kit_folders = {fs::path(EVENFALL_SOURCE_DIR) / "assets" / "kits"};
        settings_.system_zone = "America/New_York";
        settings_.pin_cost = cheap;
        settings_.documents = home_;
        settings_.sticks = [this] { return sticks_; };
        settings_.let_go = [this](const Stick&) -> Result<LetGo> { return let_go_; };
        start();
    }
    void start()
    {
        desk_.reset();
        kiosk_.reset();
        kiosk_ = std::make_unique<Kiosk>([this] { return FrontDesk::open_tonight(settings_, clock_); }, Kiosk::Settings{});
        desk_ = std::make_unique<FrontDesk>(*kiosk_, settings_, clock_);
    }
    Shelf shelf() const { return Shelf(settings_.data); }
    void act(const char* action)
    {
        desk_->act(QLatin1String(action));
        desk_->wait();
        QCoreApplication::processEvents();
    }
    void type(const char* field, const QString& text) { desk_->edit(QLatin1String(field), text); }
    QString message() const { return desk_->page().message; }
    DeskBlock block(const char* id) const
    {
        for (const QVariant& one : desk_->page().blocks)
            if (one.value<DeskBlock>().id == QLatin1String(id))
                return one.value<DeskBlock>();
        return {};
    }
    QString all_text() const
    {
        QStringList out{desk_->page().title};
        for (const QVariant& one : desk_->page().blocks) {
            const DeskBlock block = one.value<DeskBlock>();
            out << block.label << block.text << block.error;
            for (const QVariant& row : block.rows)
                out << row.value<DeskRow>().cells.join(QLatin1Char(' '));
        }
        QString text = out.join(QLatin1Char('\n'));
        return text.remove(QChar(0x2066)).remove(QChar(0x2069));
    }
    QStringList actions() const
    {
        QStringList out;
        for (const QVariant& one : desk_->page().blocks)
            if (one.value<DeskBlock>().kind == QLatin1String("actions"))
                for (const QVariant& option : one.value<DeskBlock>().options)
                    out << option.value<DeskOption>().id;
        return out;
    }
    QString text(const char* id, const QStringList& args = {}) const { return desk_->words().of(id, args); }

    void first_pin()
    {
        kiosk_->askDesk();
        type("pin", pin);
        type("pin_again", pin);
        act("set");
    }
    void clinic()
    {
        type("name", "Saltmarsh Sleep Clinic");
        type("phone", "555-0142");
        type("hours", "mon-fri 08:00-17:00");
        type("phone_outside_hours", "555-0142");
        type("emergency", "911");
        act("save");
    }
    void visit(const char* code = "SM-0417", const char* nights = "1")
    {
        act("go.form");
        type("code", code);
        type("kit", "marram");
        type("kit_label", "Bag 12");
        type("nights", nights);
        type("writing_hand", "right");
        type("clock", "yes");
        act("make");
    }
    /// Everything that staff do before a visit's first evening.
    void prepared(const char* nights = "1")
    {
        first_pin();
        clinic();
        visit("SM-0417", nights);
    }
    /// The night itself, in short: on the kiosk, from the first page to the record.
    void play_night()
    {
        act("go.leave");
        ASSERT_EQ(kiosk_->screen(), "welcome");
        kiosk_->goOn();
        kiosk_->firstNone();
        ASSERT_TRUE(kiosk_->open_page("light"));
        kiosk_->choose("double_blink");
        ASSERT_TRUE(kiosk_->open_page("bed"));
        clock_->pass(std::chrono::minutes(30));
        kiosk_->goOn();
        clock_->pass(std::chrono::hours(7));
        kiosk_->upConfirmed();
        ASSERT_TRUE(kiosk_->open_page("stop"));
        kiosk_->goOn();
        ASSERT_TRUE(kiosk_->open_page("pack"));
        kiosk_->goOn();
        ASSERT_EQ(kiosk_->page(), "finished") << kiosk_->message().detail.toStdString();
    }
    /// To the page that prints the visit's sheet, beside a print service with these printers.
    void to_print(const char* printers)
    {
        fs::create_directories(printing_);
        server_ = std::make_unique<test::PrintServer>(printing_);
        ASSERT_TRUE(server_->start(printers)) << server_->log();
        settings_.print_service = server_->service();
        start();
        unlock();
        desk_->openRow("visits", "SM-0417");
        act("print");
        ASSERT_TRUE(block("printer").options.size() > 0) << all_text().toStdString();
    }
    QString name(const char* printer) const { return desk_->words().code(printer); }
    bool becomes(const QString& said)
    {
        return test::within(std::chrono::seconds(30), [&] {
            QCoreApplication::processEvents();
            return message() == said;
        });
    }
    static std::string read(const fs::path& file)
    {
        std::ostringstream out;
        out << std::ifstream(file, std::ios::binary).rdbuf();
        return out.str();
    }
    void unlock()
    {
        kiosk_->askDesk();
        type("pin", pin);
        act("open");
    }
    std::vector<std::string> holding(const std::string& bytes) const
    {
        std::vector<std::string> out;
        for (const auto& entry : fs::recursive_directory_iterator(settings_.data)) {
            std::ostringstream all;
            if (entry.is_regular_file())
                all << std::ifstream(entry.path(), std::ios::binary).rdbuf();
            if (entry.path().filename().string().find(bytes) != std::string::npos || all.str().find(bytes) != std::string::npos)
                out.push_back(entry.path().string());
        }
        return out;
    }
};

TEST_F(FrontDeskTest, ATabletWithoutAVisitSaysSo_AndOpensTheDesk)
{
    EXPECT_EQ(kiosk_->screen(), "ready");
    kiosk_->askDesk();
    EXPECT_TRUE(desk_->is_open());
    EXPECT_EQ(kiosk_->screen(), "desk");
    EXPECT_EQ(desk_->page().title, text("desk.first_pin.title"));
    EXPECT_TRUE(desk_->page().sections.isEmpty()) << "no way past the PIN";
    act("go.visits");
    EXPECT_EQ(desk_->page().title, text("desk.first_pin.title"));
    act("leave");
    EXPECT_EQ(kiosk_->screen(), "ready");
}

TEST_F(FrontDeskTest, TheFirstPinIsGivenTwice_AndHasSixDigits)
{
    kiosk_->askDesk();
    type("pin", "271828");
    type("pin_again", "271829");
    act("set");
    EXPECT_EQ(block("pin_again").error, text("desk.pin.differs"));
    type("pin", "12345");
    type("pin_again", "12345");
    act("set");
    EXPECT_EQ(block("pin").error, text("desk.problem.pin_form"));
    type("pin", pin);
    type("pin_again", pin);
    act("set");
    EXPECT_EQ(desk_->page().title, text("desk.tablet.title")) << "first of all: whose tablet it is";
    EXPECT_TRUE(holding(pin.toStdString()).empty());
}

TEST_F(FrontDeskTest, OnlyThePinOpensIt_AndWrongOnesWait)
{
    first_pin();
    act("go.leave");
    kiosk_->askDesk();
    for (int guess = 0; guess < 3; ++guess) {
        type("pin", "000000");
        act("open");
        EXPECT_TRUE(desk_->page().sections.isEmpty());
    }
    EXPECT_FALSE(actions().contains("open")) << "not yet: " << all_text().toStdString();
    EXPECT_FALSE(block("pin").kind == QLatin1String("secret"));
    // Leaving and coming back, and starting anew, gain nothing.
    act("leave");
    start();
    kiosk_->askDesk();
    EXPECT_FALSE(actions().contains("open"));
    act("leave");
    clock_->pass(std::chrono::seconds(31));
    unlock();
    EXPECT_FALSE(desk_->page().sections.isEmpty()) << all_text().toStdString();
}

TEST_F(FrontDeskTest, AVisitWithoutTheClinicsNumberIsNotMade)
{
    first_pin();
    visit();
    EXPECT_TRUE(message().contains(text("desk.problem.no_phone")));
    EXPECT_TRUE(shelf().codes()->empty());
}

TEST_F(FrontDeskTest, TheFormNamesEachFieldThatIsWrong)
{
    first_pin();
    clinic();
    act("go.form");
    type("code", "SM 0417");
    type("nights", "15");
    type("bed_time", "10 pm");
    type("return_by", "next week");
    act("make");
    EXPECT_EQ(block("kit_label").error, text("desk.problem.missing"));
    EXPECT_EQ(block("writing_hand").error, text("desk.problem.missing")) << "a hand is never taken for granted";
    EXPECT_EQ(block("clock").error, text("desk.problem.clock_not_confirmed"));
    type("kit", "marram");
    type("kit_label", "Bag 12");
    type("writing_hand", "left");
    type("clock", "yes");
    act("make");
    EXPECT_EQ(block("code").error, text("desk.problem.bad_code"));
    EXPECT_EQ(block("bed_time").error, text("desk.problem.bad_time_of_day"));
    EXPECT_EQ(block("return_by").error, text("desk.problem.bad_date"));
    EXPECT_EQ(desk_->page().focus, "code") << "the keyboard is at the first one";
    EXPECT_TRUE(shelf().codes()->empty());
    EXPECT_EQ(block("kit_label").text, "Bag 12") << "what was typed stays";
}

TEST_F(FrontDeskTest, AVisitIsMadeAndOnTheTablet)
{
    prepared();
    EXPECT_EQ(message(), text("desk.form.made_tonight", {desk_->words().code("SM-0417")}));
    EXPECT_TRUE(all_text().contains("Bag 12"));
    act("go.leave");
    EXPECT_EQ(kiosk_->screen(), "welcome");
    EXPECT_EQ(kiosk_->session()->visit().code, "SM-0417");
    EXPECT_EQ(kiosk_->session()->visit().clinic.phone, "555-0142");
    // And after the tablet was off.
    start();
    EXPECT_EQ(kiosk_->session()->visit().code, "SM-0417");
}

TEST_F(FrontDeskTest, ASecondVisitOfTheSameCodeIsRefused)
{
    prepared();
    visit();
    EXPECT_EQ(block("code").error, text("desk.problem.visit_exists"));
    EXPECT_EQ(shelf().codes()->size(), 1u);
}

TEST_F(FrontDeskTest, AnotherVisitIsPutOnTheTabletOnlyWhenSomebodySaysSo)
{
    prepared();
    visit("SM-0500");
    EXPECT_EQ(message(), text("desk.form.made", {desk_->words().code("SM-0500")}));
    act("tonight");
    act("go.leave");
    EXPECT_EQ(kiosk_->session()->visit().code, "SM-0500");
}

TEST_F(FrontDeskTest, ANightIsShownInExactMinutesWithItsLosses)
{
    prepared();
    play_night();
    unlock();
    act("go.visits");
    desk_->openRow("visits", "SM-0417");
    const QString page = all_text();
    EXPECT_TRUE(page.contains(text("desk.stand.recorded"))) << page.toStdString();
    EXPECT_TRUE(page.contains(text("desk.verdict.enough"))) << page.toStdString();
    EXPECT_TRUE(page.contains("420 420 420")) << page.toStdString();
    EXPECT_TRUE(page.contains(text("desk.record.only_here")));
}

TEST_F(FrontDeskTest, RecordsAreTakenOutAndCheckedThere)
{
    prepared();
    play_night();
    unlock();
    desk_->openRow("visits", "SM-0417");
    act("out");
    EXPECT_EQ(block("stick").text.toStdString(), stick_.string()) << "the only one is chosen";
    act("take");
    EXPECT_EQ(message(), text("desk.out.safe"));
    EXPECT_TRUE(verify_record(stick_ / shelf().look("SM-0417")->records.at(0).name).problems.empty());
    EXPECT_TRUE(shelf().look("SM-0417")->records.at(0).taken_out);
    let_go_ = LetGo::synced;
    act("take");
    EXPECT_EQ(message(), text("desk.out.synced")) << "still mounted: not called safe";
}

TEST_F(FrontDeskTest, WithoutAStickItSaysSo)
{
    prepared();
    play_night();
    unlock();
    desk_->openRow("visits", "SM-0417");
    sticks_.clear();
    act("out");
    EXPECT_TRUE(all_text().contains(text("desk.out.no_stick")));
    sticks_ = {{home_ / "pulled", "", "Gone"}};
    act("again");
    type("stick", QString::fromStdString((home_ / "pulled").string()));
    act("take");
    EXPECT_TRUE(desk_->page().fault);
    EXPECT_TRUE(message().contains(text("desk.problem.no_place")));
    EXPECT_FALSE(shelf().look("SM-0417")->records.at(0).taken_out);
}

TEST_F(FrontDeskTest, AfterAllIsSafeTheVisitGoesWithoutATrace)
{
    prepared();
    play_night();
    unlock();
    desk_->openRow("visits", "SM-0417");
    act("out");
    act("take");
    act("back");
    act("wipe");
    EXPECT_TRUE(all_text().contains(text("desk.wipe.safe")));
    act("wipe");
    EXPECT_EQ(message(), text("desk.wipe.done"));
    EXPECT_EQ(holding("SM-0417"), std::vector<std::string>{});
    EXPECT_EQ(holding("usual"), std::vector<std::string>{});
    act("go.leave");
    EXPECT_EQ(kiosk_->screen(), "ready");
}

TEST_F(FrontDeskTest, WithoutARecordAReasonIsAskedForAndKept)
{
    prepared();
    unlock();
    desk_->openRow("visits", "SM-0417");
    act("wipe");
    EXPECT_TRUE(all_text().contains(text("desk.wipe.against.nothing_done")));
    act("wipe");
    EXPECT_EQ(block("reason").error, text("desk.problem.reason_missing"));
    EXPECT_FALSE(shelf().codes()->empty());
    type("reason", "SM-0417 did not come");
    act("wipe");
    EXPECT_EQ(block("reason").error, text("desk.problem.reason_names_code"));
    type("reason", "the person did not come");
    act("wipe");
    EXPECT_TRUE(shelf().codes()->empty());
    EXPECT_EQ(holding("SM-0417"), std::vector<std::string>{});
    EXPECT_EQ(holding("the person did not come").size(), 1u);
}

TEST_F(FrontDeskTest, APaperDiaryIsTypedInThroughTheSameQuestions_AndMarked)
{
    prepared();
    desk_->openRow("visits", "SM-0417");
    act("paper");
    type("evening", "yesterday");
    act("begin");
    EXPECT_EQ(block("evening").error, text("desk.problem.bad_date"));
    EXPECT_EQ(block("by").error, text("desk.problem.missing"));
    type("evening", "2026-10-31");
    type("by", "KL");
    act("begin");
    EXPECT_EQ(kiosk_->page(), "q.into_bed");
    EXPECT_TRUE(kiosk_->staff_label().contains("SM-0417"));
    EXPECT_TRUE(kiosk_->can_go_back() == false);
    for (int i = 0; kiosk_->page() != QLatin1String("review") && i < 40; ++i) {
        if (kiosk_->screen() == QLatin1String("time") && (kiosk_->page() == QLatin1String("q.lights_out") || kiosk_->page() == QLatin1String("q.lights_on"))) {
            EXPECT_FALSE(kiosk_->time().mainEnabled) << "nothing is taken for granted";
            kiosk_->chooseSureness("exact");
            kiosk_->goOn();
            if (kiosk_->screen() == QLatin1String("choice")) { // the hour that comes twice
                kiosk_->choose("first");
                kiosk_->goOn();
            }
        } else {
            kiosk_->skip();
        }
    }
    ASSERT_EQ(kiosk_->page(), "review");
    kiosk_->goOn();
    ASSERT_EQ(kiosk_->page(), "entered") << kiosk_->screen().toStdString() << kiosk_->message().detail.toStdString();
    kiosk_->goOn();
    QCoreApplication::processEvents();
    EXPECT_TRUE(desk_->is_open());
    EXPECT_EQ(kiosk_->screen(), "desk");
    const ShelfVisit found = *shelf().look("SM-0417");
    ASSERT_EQ(found.records.size(), 1u);
    ASSERT_TRUE(found.records[0].found.problems.empty()) << found.records[0].found.problems[0].problem.text;
    EXPECT_EQ(found.records[0].name, "SM-0417_night-1_2026-10-31") << "the evening of the paper, not of the typing";
    ASSERT_TRUE(found.records[0].found.diary->paper);
    EXPECT_EQ(found.records[0].found.diary->paper->by, "KL");
}

TEST_F(FrontDeskTest, ARecordIsChangedBesideTheOldOne_WithWhoAndWhy)
{
    prepared();
    play_night();
    unlock();
    desk_->openRow("visits", "SM-0417");
    const std::string first = shelf().look("SM-0417")->records.at(0).name;
    act("amend");
    act("begin");
    EXPECT_EQ(block("by").error, text("desk.problem.missing"));
    type("by", "KL");
    type("why", "the patient called");
    act("begin");
    ASSERT_EQ(kiosk_->page(), "review");
    kiosk_->change("asleep_after");
    kiosk_->stepAmount(15);
    kiosk_->goOn();
    ASSERT_EQ(kiosk_->page(), "review");
    kiosk_->goOn();
    ASSERT_EQ(kiosk_->page(), "entered") << kiosk_->screen().toStdString() << kiosk_->message().detail.toStdString();
    kiosk_->goOn();
    QCoreApplication::processEvents();
    const ShelfVisit found = *shelf().look("SM-0417");
    ASSERT_EQ(found.records.size(), 2u);
    EXPECT_EQ(found.records[0].name, first);
    EXPECT_EQ(found.records[1].name, first + "_amended-1");
    const Diary& diary = *found.records[1].found.diary;
    ASSERT_EQ(diary.amendments.size(), 1u);
    EXPECT_EQ(diary.amendments[0].by, "KL");
    EXPECT_EQ(diary.amendments[0].changes.at(0).at, "/night/asleep_after_min");
    EXPECT_TRUE(found.records[0].found.problems.empty());
    EXPECT_TRUE(found.records[1].found.problems.empty());
}

TEST_F(FrontDeskTest, ASittingThatCannotBeOpenedStaysAtTheDeskAndSaysSo)
{
    prepared();
    desk_->openRow("visits", "SM-0417");
    act("paper");
    type("evening", "2026-10-31");
    type("by", "KL");
    // Somebody else has the journal.
    const Result<Opened> held = open_journal(shelf().journal("SM-0417"));
    ASSERT_TRUE(held);
    act("begin");
    EXPECT_TRUE(desk_->is_open());
    EXPECT_EQ(kiosk_->screen(), "desk");
    EXPECT_TRUE(desk_->page().fault);
    EXPECT_EQ(message(), text("desk.problem.second_copy"));
    kiosk_->goOn(); // and nothing of the kiosk moves meanwhile
    kiosk_->change("slept");
    EXPECT_EQ(kiosk_->screen(), "desk");
}

TEST_F(FrontDeskTest, WithoutAChangeNoRecordIsWritten)
{
    prepared();
    play_night();
    unlock();
    desk_->openRow("visits", "SM-0417");
    act("amend");
    type("by", "KL");
    type("why", "only looking");
    act("begin");
    kiosk_->goOn();
    QCoreApplication::processEvents();
    EXPECT_EQ(kiosk_->screen(), "desk");
    EXPECT_EQ(message(), text("desk.sitting.nothing"));
    EXPECT_EQ(shelf().look("SM-0417")->records.size(), 1u);
}

TEST_F(FrontDeskTest, ANightThatIsGivenUpIsKeptAndMarked)
{
    prepared("2");
    act("go.leave");
    kiosk_->goOn();
    kiosk_->firstNone();
    ASSERT_TRUE(kiosk_->open_page("bed"));
    kiosk_->goOn();
    ASSERT_EQ(kiosk_->page(), "night");
    unlock();
    desk_->openRow("visits", "SM-0417");
    ASSERT_TRUE(actions().contains("give_up"));
    act("give_up");
    EXPECT_EQ(message(), text("desk.visit.given_up"));
    const ShelfVisit found = *shelf().look("SM-0417");
    ASSERT_EQ(found.records.size(), 1u);
    const auto& answers = found.records[0].found.diary->answers;
    EXPECT_TRUE(std::any_of(answers.begin(), answers.end(), [](const DiaryAnswer& one) { return one.question == "night_given_up"; }));
    act("go.leave");
    EXPECT_EQ(kiosk_->page(), "finished") << "and the next night is offered";
    kiosk_->goOn();
    EXPECT_EQ(kiosk_->session()->state().night, 2);
}

TEST_F(FrontDeskTest, TheForgottenPinTakesTheDesksOwnData_NeverANight)
{
    prepared();
    act("go.leave");
    kiosk_->askDesk();
    act("forgotten");
    act("forget");
    EXPECT_EQ(message(), text("desk.forgotten.not_sure"));
    type("sure", "yes");
    act("forget");
    EXPECT_EQ(desk_->page().title, text("desk.first_pin.title"));
    EXPECT_EQ(shelf().codes()->size(), 1u) << "nothing of this visit is anywhere else";
    act("leave");
    EXPECT_EQ(kiosk_->screen(), "welcome") << "the patient still finds the night";
    EXPECT_EQ(load_desk_settings(shelf().desk(), "UTC")->clinic.phone, "");
}

TEST_F(FrontDeskTest, ADamagedLockOpensNothing)
{
    first_pin();
    act("go.leave");
    std::ofstream(shelf().desk() / "desk.lock") << "{}";
    kiosk_->askDesk();
    EXPECT_TRUE(all_text().contains(text("desk.pin.damaged")));
    EXPECT_FALSE(actions().contains("open"));
}

TEST_F(FrontDeskTest, ThePinIsChangedWithTheOldOne)
{
    first_pin();
    type("old_pin", "000000");
    type("pin", "314159");
    type("pin_again", "314159");
    act("change_pin");
    EXPECT_EQ(message(), text("desk.pin.wrong"));
    type("old_pin", pin);
    type("pin", "314159");
    type("pin_again", "314159");
    act("change_pin");
    EXPECT_EQ(message(), text("desk.pin.changed"));
    act("go.leave");
    kiosk_->askDesk();
    type("pin", "314159");
    act("open");
    EXPECT_FALSE(desk_->page().sections.isEmpty());
}

TEST_F(FrontDeskTest, KitsAreCheckedAsTheyAreListed)
{
    first_pin();
    const fs::path broken = stick_ / "broken.json";
    std::ofstream(broken) << R"({"format": "evenfall.kit/1", "id": "broken"})";
    std::ofstream(stick_ / "holiday.json") << R"({"pictures": []})";
    act("go.kits");
    const QString page = all_text();
    for (const char* kit : {"marram", "tern", "heron", "broken"})
        EXPECT_TRUE(page.contains(QLatin1String(kit))) << kit;
    EXPECT_FALSE(page.contains("holiday"));
    desk_->openRow("kits", QString::fromStdString(broken.string()));
    EXPECT_TRUE(all_text().contains("broken.json: /")) << all_text().toStdString();
    EXPECT_FALSE(actions().contains("take"));
    fs::copy_file(fs::path(EVENFALL_SOURCE_DIR) / "assets/kits/tern.json", stick_ / "ours.json");
    act("go.kits");
    desk_->openRow("kits", QString::fromStdString((stick_ / "ours.json").string()));
    ASSERT_TRUE(actions().contains("take")) << all_text().toStdString();
    act("take");
    EXPECT_TRUE(fs::exists(shelf().own_kits() / "ours.json"));
}

TEST_F(FrontDeskTest, LanguagesSayHowFarTheyAreReviewed)
{
    first_pin();
    act("go.languages");
    for (const QString& language : Words::languages())
        EXPECT_TRUE(all_text().contains(Words::own_name(language)));
    EXPECT_TRUE(all_text().contains(text("desk.languages.unreviewed")));
    type("desk_language", "es");
    act("use");
    EXPECT_EQ(desk_->words().language(), "es");
    start();
    kiosk_->askDesk();
    EXPECT_EQ(desk_->words().language(), "es");
}

TEST_F(FrontDeskTest, ASheetIsShownAndSaved)
{
    prepared();
    settings_.print_service.server = (home_ / "no such socket").string();
    start();
    unlock();
    desk_->openRow("visits", "SM-0417");
    act("print");
    // A leaf and the diary; with every text of every step it is more.
    EXPECT_EQ(block("sheet_page").options.size(), 3) << message().toStdString();
    type("length", "full");
    EXPECT_GT(block("sheet_page").options.size(), 5) << message().toStdString();
    type("length", "short");
    EXPECT_TRUE(all_text().contains(text("desk.problem.no_print_service")) || all_text().contains(text("desk.problem.no_printer"))) << all_text().toStdString();
    EXPECT_FALSE(actions().contains("print"));
    act("save");
    EXPECT_TRUE(fs::exists(stick_ / "SM-0417_sheet.pdf")) << message().toStdString();
    EXPECT_TRUE(holding("SM-0417_sheet").empty()) << "not in the data folder";
}

TEST_F(FrontDeskTest, ASheetIsPrinted_AndSaysWhenItIsThrough)
{
    prepared();
    to_print(test::some_printers);
    EXPECT_EQ(block("printer").text, "front");
    act("save");
    act("print");
    EXPECT_EQ(message(), text("desk.print.sent", {name("Front desk")}));
    EXPECT_TRUE(becomes(text("desk.job.printed", {name("Front desk")}))) << message().toStdString();
    EXPECT_FALSE(desk_->page().fault);
    EXPECT_EQ(read(printing_ / "came"), read(stick_ / "SM-0417_sheet.pdf"));
    EXPECT_EQ(read(printing_ / "told").find("SM-0417"), std::string::npos);
}

TEST_F(FrontDeskTest, APrinterInTroubleSaysWhatItIs_UntilSomebodyHasSeenToIt)
{
    prepared();
    to_print(test::some_printers);
    type("printer", "stuck");
    act("print");
    const QString jam = text("desk.printer_says", {name("stuck"), text("desk.printer.media-jam")});
    EXPECT_TRUE(becomes(text("desk.job.printing", {name("stuck")}) + "\n" + jam)) << message().toStdString();
    EXPECT_TRUE(desk_->page().fault);
    std::ofstream(printing_ / "cleared") << "";
    EXPECT_TRUE(becomes(text("desk.job.printed", {name("stuck")}))) << message().toStdString();
    EXPECT_FALSE(desk_->page().fault);
}

TEST_F(FrontDeskTest, APrinterThatCannotBeUsedSaysWhyInTheList)
{
    prepared();
    to_print(test::some_printers);
    std::map<QString, DeskOption> printers;
    for (const QVariant& one : block("printer").options)
        printers[one.value<DeskOption>().id] = one.value<DeskOption>();
    EXPECT_TRUE(printers["front"].enabled);
    EXPECT_EQ(printers["front"].label, name("Front desk"));
    EXPECT_FALSE(printers["still"].enabled);
    for (const char* why : {"desk.printer.media-empty", "desk.printer.toner-low"})
        EXPECT_TRUE(printers["still"].label.contains(text(why))) << printers["still"].label.toStdString();
    EXPECT_FALSE(printers["still"].label.contains(text("desk.printer.other"))) << "a mere report";
    EXPECT_FALSE(printers["full"].enabled);
    EXPECT_EQ(printers["full"].label, text("desk.printer_closed", {name("full")}));
    // What the queue refuses only when it is asked.
    type("printer", "full");
    act("print");
    EXPECT_EQ(message(), text("desk.problem.not_accepted"));
    EXPECT_FALSE(fs::exists(printing_ / "came"));
}

TEST_F(FrontDeskTest, WithoutAPrinterThatCanBeUsedThePdfIsOffered_AndThePrintersAreLookedForAgain)
{
    prepared();
    to_print("<Printer still>\nDeviceURI tray:/still\nState Stopped\nAccepting Yes\nOpPolicy default\n</Printer>\n");
    EXPECT_FALSE(actions().contains("print"));
    EXPECT_EQ(desk_->page().mainAction, "save");
    EXPECT_TRUE(block("printer").options.at(0).value<DeskOption>().label.contains(text("desk.printer.paused"))) << "CUPS says so of each stopped printer";
    server_.reset();
    act("look");
    EXPECT_TRUE(all_text().contains(text("desk.problem.no_print_service"))) << all_text().toStdString();
}

TEST(DeskWords, EachStateOfAPrinterHasItsWordsInEachLanguage)
{
    for (const QString& language : Words::languages()) {
        const Words words(language, *find_zone("UTC"));
        for (const std::string reason : print::printer_reasons)
            EXPECT_NE(words.of("desk.printer." + reason), QString::fromStdString("desk.printer." + reason)) << language.toStdString();
    }
}

TEST_F(FrontDeskTest, LeftAloneItLocksItself)
{
    prepared();
    desk_->openRow("visits", "SM-0417");
    ASSERT_TRUE(all_text().contains("Bag 12"));
    desk_->let_time_pass();
    EXPECT_TRUE(desk_->page().sections.isEmpty());
    EXPECT_FALSE(all_text().contains("Bag 12"));
    act("go.visits");
    EXPECT_TRUE(desk_->page().sections.isEmpty());
    type("pin", pin);
    act("open");
    EXPECT_FALSE(desk_->page().sections.isEmpty());
}

} // namespace
