// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/pin.h"
#include "frontdesk/desk_settings.h"
#include "frontdesk/desk_values.h"
#include "frontdesk/page_writer.h"
#include "frontdesk/sticks.h"
#include "frontdesk/visit_form.h"
#include "frontdesk/sheet_pages.h"
#include "kiosk/kiosk.h"
#include "print/queue.h"
#include "record/shelf.h"
#include "words/words.h"

#include <QObject>
#include <QPointer>
#include <QThread>
#include <QTimer>
#include <QtQml/qqmlregistration.h>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace evenfall {

/// The clinic's part of the app: what FrontDesk.qml knows. It has the tablet while it is open (the
/// patient's session is put down, and with it the journal), and gives it back when it is left.
///
/// Pages are filled anew at each change; what is typed is kept here in `typed_`, by the field's id.
/// What takes a moment (the PIN's hash, a stick, a printer) runs beside, in one thread at a time;
/// a print job that was sent is followed in another.
class FrontDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(evenfall::DeskPage page READ page NOTIFY changed)
    Q_PROPERTY(int shown READ shown NOTIFY pageShown)
    Q_PROPERTY(bool rightToLeft READ right_to_left NOTIFY languageChanged)

  public:
    struct Settings {
        std::filesystem::path data;
        std::vector<std::filesystem::path> kit_folders; ///< of the shipped kits
        std::string system_zone = "UTC";                ///< IANA name that the tablet is set to
        PinCost pin_cost;                               ///< another one for tests only
        std::function<std::vector<Stick>()> sticks = mounted_sticks;
        std::function<Result<LetGo>(const Stick&)> let_go = evenfall::let_go;
        print::PrintService print_service;
        std::filesystem::path documents; ///< where a sheet is saved without a stick
        QString language; ///< overrides that of the desk; empty: as the desk says
    };
    /// `kiosk` outlives the desk.
    FrontDesk(Kiosk& kiosk, Settings settings, std::shared_ptr<const Clock> clock, QObject* parent = nullptr);
    ~FrontDesk() override;

    /// The session for the bedside: of the visit that is on this tablet tonight. Refused (no_visit):
    /// none is.
    static Result<std::unique_ptr<Session>> open_tonight(const Settings& settings, const std::shared_ptr<const Clock>& clock);

    const DeskPage& page() const { return page_; }
    /// Counts the pages that came up: the keyboard's place is set when it changes.
    int shown() const { return shown_; }
    bool right_to_left() const { return words_ && words_->right_to_left(); }
    bool is_open() const { return place_ != Place::closed; }
    const Words& words() const { return *words_; }
    /// Pictures of the sheet that is to be printed; the engine that gets it owns it.
    QQuickImageProvider* page_pictures() const { return new SheetPageProvider(sheet_pages_); }
    /// For tests and tours: waits for what runs beside.
    void wait();
    /// For tests: does at once what the desk would do by itself after nobody has touched it for a while.
    void let_time_pass();

    Q_INVOKABLE void enter();
    Q_INVOKABLE void act(const QString& action);
    Q_INVOKABLE void edit(const QString& field, const QString& text);
    Q_INVOKABLE void openRow(const QString& table, const QString& row);

  signals:
    void changed();
    void pageShown();
    void languageChanged();
    /// What is on this tablet at the bedside was chosen anew, or wiped.
    void tonightChosen();

  private:
    enum class Place {
        closed, first_pin, pin, forgotten, visits, visit, form, out, wipe, amend, paper, print, kits, kit, languages, tablet,
    };
    using Filler = void (FrontDesk::*)(PageWriter&);
    using Actor = void (FrontDesk::*)(const QString&);
    struct PlaceRow {
        Place place;
        const char* title; ///< text id
        const char* section;
        Filler fill;
        Actor act;
    };
    static const std::vector<PlaceRow>& places();
    const PlaceRow& here() const;

    void show(Place place, const QString& focus = {});
    void fill();
    void say(const QString& message, bool fault = false);
    void say_fault(const Problems& problems);
    /// Errors beside their fields; what belongs to no field is said above the page.
    void show_errors(const Problems& problems);
    QString problem_text(const Problem& problem) const;
    QString typed(const QString& field) const;
    void type(const QString& field, const QString& text) { typed_[field] = text; }
    std::string typed_text(const QString& field) const { return typed(field).trimmed().toStdString(); }
    /// Runs `job` in a thread of its own, then `then` here with what it gave.
    template <class T> void run(QPointer<QThread>& thread, std::function<T()> job, std::function<void(T)> then);
    /// So, with the buttons off meanwhile: one thing at a time.
    template <class T> void beside(std::function<T()> job, std::function<void(T)> then);

    bool read_settings();
    bool save_settings();
    ZonePtr zone() const;
    BootTime boot_time() const;
    std::string now_text() const;
    std::vector<std::filesystem::path> kit_folders() const;
    void leave();
    void lock_again();
    void attended();
    void take_words();

    // The pages and what their actions do, by theme: pin_pages, visit_pages, form_pages, kit_pages.
    void fill_first_pin(PageWriter& page);
    void act_first_pin(const QString& action);
    void fill_pin(PageWriter& page);
    void act_pin(const QString& action);
    void pin_answered(const Result<PinAnswer>& answer);
    void fill_forgotten(PageWriter& page);
    void act_forgotten(const QString& action);
    void forget_everything_of_the_desk();

    void fill_visits(PageWriter& page);
    void act_visits(const QString& action);
    void fill_visit(PageWriter& page);
    void fill_records(PageWriter& page, const ShelfVisit& visit);
    void fill_record(PageWriter& page, const ShelfRecord& record);
    void act_visit(const QString& action);
    void give_up_night();
    void fill_out(PageWriter& page);
    void act_out(const QString& action);
    void take_out();
    void fill_wipe(PageWriter& page);
    void act_wipe(const QString& action);
    void fill_amend(PageWriter& page);
    void act_amend(const QString& action);
    void fill_paper(PageWriter& page);
    void act_paper(const QString& action);
    void sit(const OpenSession& session);
    void sitting_over(const QString& record);
    bool take_visit(const std::string& code);
    const ShelfRecord* record_in_hand() const;
    Result<SessionPlace> place_of(const std::string& code) const;

    void fill_form(PageWriter& page);
    void act_form(const QString& action);
    void fill_tablet(PageWriter& page);
    void act_tablet(const QString& action);
    void change_pin();
    void fill_print(PageWriter& page);
    void act_print(const QString& action);
    void begin_print();
    void look_for_printers();
    QString printer_name(const std::string& printer) const;
    QString reasons_text(const std::vector<print::PrinterReason>& reasons) const;
    QString printer_label(const print::Printer& printer) const;
    void follow_job();
    void job_seen(const Result<print::JobState>& state);
    Result<std::string> make_sheet_pdf() const;
    void draw_sheet();
    void save_sheet();

    void fill_kits(PageWriter& page);
    void act_kits(const QString& action);
    void fill_kit(PageWriter& page);
    void act_kit(const QString& action);
    void fill_languages(PageWriter& page);
    void act_languages(const QString& action);

    Kiosk& kiosk_;
    Settings settings_;
    std::shared_ptr<const Clock> clock_;
    Shelf shelf_;
    DeskLock lock_;
    DeskSettings desk_;
    std::unique_ptr<Words> words_;
    QPointer<QThread> beside_;
    QPointer<QThread> following_; ///< asks how far a print job is
    QTimer pin_wait_;
    QTimer unattended_; ///< runs while the desk is unlocked

    Place place_ = Place::closed;
    DeskPage page_;
    int shown_ = 0;
    QString message_;
    bool fault_ = false;
    std::map<QString, QString> typed_, errors_;
    PinAnswer pin_;
    std::optional<ShelfVisit> visit_; ///< in hand
    std::string record_;              ///< name of the record that is looked at
    std::filesystem::path kit_file_;
    std::string sheet_; ///< a finished PDF
    std::shared_ptr<SheetPages> sheet_pages_ = std::make_shared<SheetPages>();
    std::vector<print::Printer> printers_;
    struct SentJob {
        std::string printer;
        long id = 0;
    };
    std::optional<SentJob> sent_; ///< what the page to print still says something about
    QTimer follow_;
    Problems printer_problems_;
};

template <class T>
void FrontDesk::run(QPointer<QThread>& thread, std::function<T()> job, std::function<void(T)> then)
{
    auto result = std::make_shared<std::optional<T>>();
    QThread* made = QThread::create([job = std::move(job), result] { result->emplace(job()); });
    thread = made;
    connect(made, &QThread::finished, this, [&thread, made, result, then = std::move(then)] {
        thread = nullptr;
        made->deleteLater();
        then(std::move(**result));
    });
    made->start();
}

template <class T> void FrontDesk::beside(std::function<T()> job, std::function<void(T)> then)
{
    if (beside_)
        return;
    run<T>(beside_, std::move(job), std::move(then));
    fill();
}

} // namespace evenfall
