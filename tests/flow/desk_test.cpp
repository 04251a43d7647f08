// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// A member of the staff with a keyboard and nothing else: from a tablet without a PIN to a visit that is
// made, its sheet printed, used for a night, taken out, and gone without a trace.
#include "frontdesk/front_desk.h"
#include "stage/observer.h"
#include "stage/window.h"
#include "support/print_service.h"

#include "record/verify.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QKeyEvent>
#include <QTemporaryDir>
#include <qpa/qwindowsysteminterface.h>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

namespace {

using namespace evenfall;
namespace fs = std::filesystem;

class DeskByKeyboard : public testing::Test {
  protected:
    QTemporaryDir folder_;
    fs::path home_ = folder_.path().toStdString(), stick_ = home_ / "stick", printing_ = home_ / "printing";
    std::unique_ptr<test::PrintServer> server_;
    std::shared_ptr<SimulatedClock> clock_ = std::make_shared<SimulatedClock>(*resolve(*parse_time("2026-11-05T14:00:00-05:00"), nullptr));
    FrontDesk::Settings settings_;
    std::unique_ptr<Kiosk> kiosk_;
    std::unique_ptr<FrontDesk> desk_;
    std::unique_ptr<KioskWindow> window_;
    int keys_ = 0;

    void SetUp() override
    {
        fs::create_directories(stick_);
        settings_.data = home_ / "data";
        settings_.kit_folders = {fs::path(EVENFALL_SOURCE_DIR) / "assets" / "kits"};
        settings_.system_zone = "America/New_York";
        settings_.documents = home_;
        settings_.sticks = [this] { return std::vector<Stick>{{stick_, "", "Blue stick"}}; };
        settings_.let_go = [](const Stick&) -> Result<LetGo> { return LetGo::unmounted; };
        fs::create_directories(printing_);
        server_ = std::make_unique<test::PrintServer>(printing_);
        ASSERT_TRUE(server_->start(test::some_printers)) << server_->log();
        settings_.print_service = server_->service();
        kiosk_ = std::make_unique<Kiosk>([this] { return FrontDesk::open_tonight(settings_, clock_); }, Kiosk::Settings{});
        desk_ = std::make_unique<FrontDesk>(*kiosk_, settings_, clock_);
        wake_accessibility();
        window_ = std::make_unique<KioskWindow>(*kiosk_, QSize(1280, 800), desk_.get());
        ASSERT_TRUE(window_->ok()) << window_->take_warnings().join('\n').toStdString();
        settle();
    }
    void TearDown() override
    {
        if (window_) {
            const QStringList warnings = window_->take_warnings();
            EXPECT_TRUE(warnings.isEmpty()) << warnings.join('\n').toStdString();
        }
        window_.reset();
    }
    void settle()
    {
        desk_->wait();
        window_->settle();
        window_->settle();
    }
    void key(int code, const QString& text = {})
    {
        ++keys_;
        for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, code, Qt::NoModifier, text);
            QCoreApplication::sendEvent(&window_->window(), &event);
        }
        settle();
    }
    /// A key that is a shortcut: it goes through the map of shortcuts, as from a real keyboard.
    void function_key(int code)
    {
        ++keys_;
        QWindowSystemInterface::handleShortcutEvent(&window_->window(), 0, code, Qt::NoModifier, 0, 0, 0);
        settle();
    }
    void type(const QString& text)
    {
        for (const QChar letter : text)
            key(0, QString(letter));
    }
    QString focused() const
    {
        QStringList names;
        for (const QQuickItem* item = window_->window().activeFocusItem(); item; item = item->parentItem())
            if (!item->objectName().isEmpty())
                names << item->objectName();
        return names.join(QLatin1Char(' '));
    }
    bool has_focus(const QString& name) const { return focused().split(QLatin1Char(' ')).contains(name); }
    /// Tab until this has the keyboard.
    void tab_to(const QString& name)
    {
        for (int i = 0; i < 80; ++i) {
            if (has_focus(name))
                return;
            key(Qt::Key_Tab);
        }
        FAIL() << name.toStdString() << " cannot be reached by Tab; the keyboard is at " << focused().toStdString();
    }
    void enter() { key(Qt::Key_Return); }
    void press(const QString& action)
    {
        tab_to(QStringLiteral("act-") + action);
        enter();
    }
    static std::string bytes_of(const fs::path& file)
    {
        std::ostringstream all;
        all << std::ifstream(file, std::ios::binary).rdbuf();
        return all.str();
    }
    QString message() const { return desk_->page().message; }
    QString text(const char* id, const QStringList& args = {}) const { return desk_->words().of(id, args); }
};

TEST_F(DeskByKeyboard, AVisitIsMadePrintedUsedAndGone)
{
    ASSERT_EQ(kiosk_->screen(), "ready");
    tab_to("main");
    enter();
    ASSERT_TRUE(desk_->is_open());
    ASSERT_TRUE(has_focus("field-pin")) << focused().toStdString();
    type("271828");
    key(Qt::Key_Tab);
    type("271828");
    enter();
    ASSERT_EQ(desk_->page().title, text("desk.tablet.title")) << message().toStdString();
    ASSERT_TRUE(has_focus("field-name")) << focused().toStdString();
    for (const char* value : {"Saltmarsh Sleep Clinic", "555-0142", "mon-fri 08:00-17:00", "555-0142", "911"}) {
        type(QLatin1String(value));
        key(Qt::Key_Tab);
    }
    enter(); // in the field of the zone
    ASSERT_EQ(message(), text("desk.tablet.saved"));

    function_key(Qt::Key_F2);
    keys_ = 0;
    ASSERT_TRUE(has_focus("field-code")) << focused().toStdString();
    type("SM-0417");
    tab_to("option-marram");
    enter();
    tab_to("field-kit_label");
    type("Bag 12");
    tab_to("option-right");
    enter();
    tab_to("check-clock");
    enter();
    press("make");
    ASSERT_EQ(message(), text("desk.form.made_tonight", {desk_->words().code("SM-0417")})) << message().toStdString();
    // Somebody who types slowly has two keys a second.
    EXPECT_LT(keys_, 120) << "a visit takes longer than a minute";
    ::testing::Test::RecordProperty("keys_for_a_visit", keys_);
    std::printf("a new visit by keyboard: %d keys\n", keys_);

    keys_ = 0;
    press("print"); // of the visit: its sheet is shown
    press("print"); // of the sheet
    const QString through = text("desk.job.printed", {desk_->words().code("Front desk")});
    EXPECT_TRUE(test::within(std::chrono::seconds(30), [&] {
        settle();
        return message() == through;
    })) << message().toStdString();
    const std::string printed = bytes_of(printing_ / "came");
    EXPECT_TRUE(printed.starts_with("%PDF-")) << "what came out of the printer";
    std::printf("its sheet printed by keyboard: %d keys, %zu bytes at the printer\n", keys_, printed.size());
    press("save");
    EXPECT_EQ(bytes_of(stick_ / "SM-0417_sheet.pdf"), printed) << message().toStdString();
    function_key(Qt::Key_F9);

    // The patient's night, in short.
    ASSERT_EQ(kiosk_->screen(), "welcome");
    kiosk_->goOn();
    kiosk_->firstNone();
    ASSERT_TRUE(kiosk_->open_page("light"));
    kiosk_->choose("double_blink");
    ASSERT_TRUE(kiosk_->open_page("bed"));
    clock_->pass(std::chrono::hours(8));
    kiosk_->goOn();
    clock_->pass(std::chrono::hours(7));
    kiosk_->upConfirmed();
    ASSERT_TRUE(kiosk_->open_page("stop"));
    kiosk_->goOn();
    ASSERT_TRUE(kiosk_->open_page("pack"));
    kiosk_->goOn();
    ASSERT_EQ(kiosk_->page(), "finished");
    settle();

    tab_to("staff");
    enter();
    ASSERT_TRUE(has_focus("field-pin")) << focused().toStdString();
    type("271828");
    enter();
    ASSERT_EQ(desk_->page().title, text("desk.visits.title")) << message().toStdString();
    ASSERT_TRUE(has_focus("row-SM-0417")) << focused().toStdString();
    enter();
    press("out");
    press("take");
    ASSERT_EQ(message(), text("desk.out.safe"));
    press("back");
    press("wipe");
    press("wipe");
    ASSERT_EQ(message(), text("desk.wipe.done"));

    int records = 0;
    for (const auto& entry : fs::directory_iterator(stick_))
        if (entry.is_directory()) {
            ++records;
            EXPECT_TRUE(verify_record(entry.path()).problems.empty());
        }
    EXPECT_EQ(records, 1);
    for (const auto& entry : fs::recursive_directory_iterator(settings_.data)) {
        const std::string all = entry.is_regular_file() ? bytes_of(entry.path()) : std::string();
        for (const char* bytes : {"SM-0417", "lights_out", "double_blink", "Bag 12"}) {
            EXPECT_EQ(entry.path().string().find(bytes), std::string::npos) << entry.path();
            EXPECT_EQ(all.find(bytes), std::string::npos) << bytes << " in " << entry.path();
        }
    }
    function_key(Qt::Key_F9);
    EXPECT_EQ(kiosk_->screen(), "ready");
}

} // namespace
