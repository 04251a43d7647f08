// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "frontdesk/front_desk.h"
#include "kiosk/clock.h"
#include "kiosk/kiosk.h"
#include "stage/observer.h"
#include "stage/window.h"

#include <QDir>
#include <QJsonArray>
#include <QString>
#include <QStringList>
#include <functional>
#include <memory>

namespace evenfall {

/// Plays a person before the real screens: finds what a screen reader would find, and taps it with a
/// synthetic finger, on a clock that stands still until it is moved. Everything that is not as
/// expected is collected in faults().
class Player {
  public:
    struct Setting {
        VisitWithKit visit;
        QString language; ///< empty: as the visit says
        QSize size{1280, 800};
        double text_scale = 1.0;
        std::filesystem::path data; ///< journal and records; empty: the journal stays in memory
        QDir pictures;              ///< where the pictures go
        std::vector<std::filesystem::path> kit_folders; ///< for the front desk
    };
    explicit Player(Setting setting);
    ~Player();

    /// Shows the kiosk, in the evening of 31 October 2026 at 21:30 (invented; the clocks of New York go
    /// back in that night). False: faults() says why.
    bool start();

    Kiosk& kiosk() { return *kiosk_; }
    /// The front desk, where records_into() was said: its data folder is below that one.
    FrontDesk* desk() { return desk_.get(); }
    std::filesystem::path desk_data() const { return records_ / ".desk"; }
    const Session& session() const { return *kiosk_->session(); }
    SimulatedClock& clock() { return *clock_; }
    /// A label in the language that is spoken.
    QString label(const char* id) const { return kiosk_->words().of(id); }

    /// Taps the control with this name; a fault when there is none, or it is disabled.
    void tap(const QString& name);
    /// Taps the main action of the page, or its second one.
    void tap_main();
    void tap_second();
    /// Taps the control with this object name: for rows that share their words with other rows.
    void tap_object(const QString& object_name);
    /// Taps anywhere: the first touch of a dark page.
    void tap_anywhere();
    /// Types text into the field that has the focus, or the only one there is.
    void type(const QString& text);
    /// Where records go when that is not the data folder. Before start().
    void records_into(std::filesystem::path folder) { records_ = std::move(folder); }
    /// A picture of the page that says what is wrong with the journal, as it looks for this code.
    void trouble_picture(const char* code);
    /// Says what screen must be up now.
    void expect(const QString& screen);
    void expect_true(bool fact, const QString& otherwise);
    void pass(Span span) { clock_->pass(span); }
    /// The clock moves on to this local time of the next such moment.
    void until(const char* time_of_day);

    /// Takes a picture of the screen as NN-name.png, and keeps what is on it for the description.
    QImage picture(const QString& name);
    const QJsonArray& screens() const { return screens_; }
    QStringList& faults() { return faults_; }
    int touches() const { return touches_; } ///< so far
    const QDir& pictures() const { return setting_.pictures; }

  private:
    void settle();
    void press(const SeenControl& control);
    Setting setting_;
    std::shared_ptr<SimulatedClock> clock_;
    std::unique_ptr<Kiosk> kiosk_;
    std::unique_ptr<FrontDesk> desk_;
    std::unique_ptr<KioskWindow> window_;
    QJsonArray screens_;
    QStringList faults_;
    std::filesystem::path records_;
    std::optional<Problem> fail_opening_; ///< the next opening of the journal says so
    int number_ = 0;
    int touches_ = 0;
};

/// Writes bytes where they are whole or not at all; a fault otherwise.
bool save_bytes(const QString& file, const QByteArray& bytes, QStringList& faults);

} // namespace evenfall
