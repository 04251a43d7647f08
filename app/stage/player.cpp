// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "stage/player.h"

#include "base/file.h"
#include "stage/observer.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QJsonObject>
#include <QKeyEvent>
#include <QMouseEvent>

namespace evenfall {
namespace {

/// A speaker without sound: pictures and rehearsals come out alike on machines with a device and
/// without.
class MuteSpeaker final : public Speaker {
  public:
    bool has_device() const override { return true; }
    void read(const QStringList&) override {}
    void tone(const QString&) override {}
    void stop() override {}
};

class MuteMedia final : public Media {
  public:
    std::unique_ptr<Speaker> make_speaker() override { return std::make_unique<MuteSpeaker>(); }
    std::unique_ptr<Camera> make_camera() override { return nullptr; }
};

void finger(QQuickWindow& window, QPointF at)
{
    for (const QEvent::Type type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
        const Qt::MouseButtons held = type == QEvent::MouseButtonPress ? Qt::LeftButton : Qt::NoButton;
        QMouseEvent event(type, at, window.mapToGlobal(at), Qt::LeftButton, held, Qt::NoModifier);
        QCoreApplication::sendEvent(&window, &event);
        QCoreApplication::processEvents();
    }
}

} // namespace

bool save_bytes(const QString& file, const QByteArray& bytes, QStringList& faults)
{
    const Status written = write_file(file.toStdString(), std::string_view(bytes.constData(), static_cast<size_t>(bytes.size())));
    if (!written)
        faults << QString::fromStdString(written.problems()[0].text);
    return written.ok();
}

Player::Player(Setting setting) : setting_(std::move(setting)) {}

Player::~Player() = default;

bool Player::start()
{
    const Zone& zone = *setting_.visit.visit.zone;
    const LocalTime begin = LocalTime(std::chrono::local_days(std::chrono::year(2026) / 10 / 31).time_since_epoch()) + std::chrono::hours(21) + std::chrono::minutes(30);
    clock_ = std::make_shared<SimulatedClock>(zone.read(begin).first);
    Kiosk::Settings settings;
    settings.language = setting_.language;
    settings.clinic = setting_.visit.visit.clinic;
    settings.text_scale = setting_.text_scale;
    settings.motion = false; // pictures of moving things would differ from run to run
    static MuteMedia mute;
    settings.sound.media = [] { return &mute; };
    settings.sound.voices = {std::filesystem::path(QCoreApplication::applicationDirPath().toStdString()) / ".." / "voice"};
    const auto open = [this]() -> Result<std::unique_ptr<Session>> {
        if (fail_opening_)
            return *fail_opening_;
        const std::filesystem::path records = records_.empty() ? setting_.data : records_;
        if (setting_.data.empty())
            return Session::begin({setting_.visit, make_memory_journal(), records}, clock_);
        Result<Opened> opened = open_journal(setting_.data / "journal.db");
        if (!opened)
            return opened.problems();
        return Session::begin({setting_.visit, std::move(opened->journal), records}, clock_);
    };
    kiosk_ = std::make_unique<Kiosk>(open, settings);
    if (!kiosk_->session()) {
        faults_ << QStringLiteral("no session: ") + kiosk_->message().detail;
        return false;
    }
    if (!records_.empty()) {
        FrontDesk::Settings desk;
        desk.data = desk_data();
        desk.kit_folders = setting_.kit_folders;
        desk.system_zone = setting_.visit.visit.zone->name();
        desk.documents = records_;
        desk.language = setting_.language;
        // The same pictures on every machine: no stick of its own, and no printer.
        desk.sticks = [this] { return std::vector<Stick>{{records_, "", "Blue stick"}}; };
        desk.let_go = [](const Stick&) -> Result<LetGo> { return LetGo::unmounted; };
        desk.print_service.server = (records_ / "no-print-service").string();
        desk_ = std::make_unique<FrontDesk>(*kiosk_, desk, clock_);
    }
    wake_accessibility();
    window_ = std::make_unique<KioskWindow>(*kiosk_, setting_.size, desk_.get());
    if (!window_->ok()) {
        faults_ << window_->take_warnings();
        return false;
    }
    settle();
    return true;
}

void Player::settle()
{
    window_->settle();
    for (const QString& warning : window_->take_warnings())
        faults_ << QStringLiteral("QML: ") + warning;
}

void Player::press(const SeenControl& control)
{
    if (!control.enabled) {
        faults_ << QStringLiteral("on %1, \"%2\" is disabled").arg(kiosk_->screen(), control.name);
        return;
    }
    QRectF rect = control.rect;
    const QRectF whole = control.item->mapRectToScene(QRectF(0, 0, control.item->width(), control.item->height()));
    if (rect.height() < whole.height() - 1) {
        // Scrolled away: the page brings into sight what gets the focus.
        control.item->forceActiveFocus(Qt::TabFocusReason);
        settle();
        rect = control.item->mapRectToScene(QRectF(0, 0, control.item->width(), control.item->height()));
    }
    ++touches_;
    finger(window_->window(), rect.center());
    settle();
}

void Player::tap(const QString& name)
{
    QStringList there;
    for (const SeenControl& control : seen_controls(window_->window(), true)) {
        if (control.name == name)
            return press(control);
        there << control.name;
    }
    faults_ << QStringLiteral("on %1 (%2) there is no \"%3\"; there are: %4")
                   .arg(kiosk_->screen(), kiosk_->page(), name, there.join(QStringLiteral(" | ")));
}

void Player::tap_object(const QString& object_name)
{
    for (const SeenControl& control : seen_controls(window_->window(), true)) {
        if (control.item->objectName() == object_name)
            return press(control);
    }
    faults_ << QStringLiteral("on %1 there is no control %2").arg(kiosk_->screen(), object_name);
}

void Player::tap_main()
{
    tap(window_->screen_property("mainLabel"));
}

void Player::tap_second()
{
    tap(window_->screen_property("secondLabel"));
}

void Player::tap_anywhere()
{
    ++touches_;
    finger(window_->window(), QPointF(window_->window().width() / 2.0, window_->window().height() / 3.0));
    settle();
}

void Player::type(const QString& text)
{
    for (const SeenControl& control : seen_controls(window_->window())) {
        if (control.role == QLatin1String("editabletext"))
            finger(window_->window(), control.rect.center());
    }
    for (const QChar letter : text) {
        for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, 0, Qt::NoModifier, QString(letter));
            QCoreApplication::sendEvent(&window_->window(), &event);
        }
    }
    settle();
}

void Player::expect(const QString& screen)
{
    const QString now = kiosk_->screen();
    if (now != screen)
        faults_ << QStringLiteral("expected the screen %1, but %2 is up (page %3)").arg(screen, now, kiosk_->page());
}

void Player::expect_true(bool fact, const QString& otherwise)
{
    if (!fact)
        faults_ << otherwise;
}

void Player::until(const char* time_of_day)
{
    const Zone& zone = *setting_.visit.visit.zone;
    const LocalTime now = zone.local(clock_->instant());
    const Result<std::chrono::minutes> wanted = parse_time_of_day(time_of_day);
    const auto today = std::chrono::floor<std::chrono::days>(now);
    LocalTime target = LocalTime(today.time_since_epoch()) + *wanted;
    if (target <= now)
        target += std::chrono::hours(24);
    clock_->reach(zone.read(target).first);
}

void Player::trouble_picture(const char* code)
{
    fail_opening_ = Problem{Fault::io, code, "", "journal: shown for the tour"};
    kiosk_->reopen();
    expect(QLatin1String(code) == QLatin1String(no_visit) ? QStringLiteral("ready") : QStringLiteral("trouble"));
    picture(QStringLiteral("trouble-") + QString::fromLatin1(code).replace(QLatin1Char('_'), QLatin1Char('-')));
}

QImage Player::picture(const QString& name)
{
    settle();
    const QImage image = window_->window().grabWindow();
    const QString file = QStringLiteral("%1-%2.png").arg(++number_, 2, 10, QLatin1Char('0')).arg(name);
    if (image.isNull()) {
        faults_ << QStringLiteral("no picture of ") + name;
        return image;
    }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    image.save(&buffer, "PNG");
    save_bytes(setting_.pictures.filePath(file), bytes, faults_);
    QJsonObject screen = describe_screen(window_->window(), image);
    screen["name"] = name;
    screen["image"] = file;
    screen["language"] = kiosk_->language();
    screen["size"] = QJsonArray{image.width(), image.height()};
    screens_ << screen;
    return image;
}

} // namespace evenfall
