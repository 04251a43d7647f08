// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "kiosk/fill.h"
#include "kiosk/mirror.h"
#include "kiosk/session.h"
#include "kiosk/sound.h"
#include "kiosk/values.h"
#include "words/words.h"

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <string>

namespace evenfall {

/// Opens the session, or says why that cannot be: called at start, and again after a trouble.
using OpenSession = std::function<Result<std::unique_ptr<Session>>()>;

/// The code of the problem with which a session says that no visit is on this tablet: no fault.
inline constexpr const char* no_visit = "no_visit";

/// What Main.qml knows: which screen is up, its values, and what can be done. Every action is written
/// to the journal before the screen moves on; when that fails, the trouble page says so.
///
/// Beside the journal's state it holds only what may be lost with the power: an open help, the face
/// of the night page, an event of the morning that is being given.
class Kiosk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QString screen READ screen NOTIFY changed)
    Q_PROPERTY(QString page READ page NOTIFY changed)
    Q_PROPERTY(QString tone READ tone NOTIFY changed)
    Q_PROPERTY(bool canGoBack READ can_go_back NOTIFY changed)
    Q_PROPERTY(QString staffLabel READ staff_label NOTIFY changed)
    Q_PROPERTY(QString language READ language NOTIFY languageChanged)
    Q_PROPERTY(bool rightToLeft READ right_to_left NOTIFY languageChanged)
    Q_PROPERTY(double textScale READ text_scale CONSTANT)
    Q_PROPERTY(bool motion READ motion CONSTANT)
    Q_PROPERTY(evenfall::WelcomeValues welcome READ welcome NOTIFY changed)
    Q_PROPERTY(evenfall::FirstValues first READ first NOTIFY changed)
    Q_PROPERTY(evenfall::CallValues call READ call NOTIFY changed)
    Q_PROPERTY(evenfall::ListValues list READ list NOTIFY changed)
    Q_PROPERTY(evenfall::StepValues step READ step NOTIFY changed)
    Q_PROPERTY(evenfall::HelpValues help READ help NOTIFY changed)
    Q_PROPERTY(evenfall::BedValues bed READ bed NOTIFY changed)
    Q_PROPERTY(evenfall::NightValues night READ night NOTIFY changed)
    Q_PROPERTY(evenfall::TimeValues time READ time NOTIFY changed)
    Q_PROPERTY(evenfall::AmountValues amount READ amount NOTIFY changed)
    Q_PROPERTY(evenfall::CommentValues comment READ comment NOTIFY changed)
    Q_PROPERTY(evenfall::ReviewValues review READ review NOTIFY changed)
    Q_PROPERTY(evenfall::SignalValues signalTask READ signal_task_values NOTIFY changed)
    Q_PROPERTY(evenfall::PuzzleValues puzzle READ puzzle NOTIFY changed)
    Q_PROPERTY(evenfall::ResultValues result READ result NOTIFY changed)
    Q_PROPERTY(evenfall::PictureValues picture READ picture NOTIFY changed)
    Q_PROPERTY(evenfall::SkinValues skin READ skin NOTIFY changed)
    Q_PROPERTY(evenfall::MessageValues message READ message NOTIFY changed)
    Q_PROPERTY(evenfall::VoiceValues voice READ voice NOTIFY changed)
    Q_PROPERTY(bool practice READ practice NOTIFY changed)
    Q_PROPERTY(evenfall::Mirror* mirror READ mirror CONSTANT)

  public:
    struct Settings {
        Clinic clinic;                 ///< for the page that says that the journal cannot be opened
        QString language;              ///< overrides the visit's; empty: as the visit says
        double text_scale = 1.0;
        bool motion = true;
        Sound::Places sound; ///< none: silent
        std::function<bool()> on_battery; ///< the tablet has no charger now; none: not known
    };
    Kiosk(OpenSession open, Settings settings, QObject* parent = nullptr);

    const Session* session() const { return session_.get(); }
    const QString& screen() const { return screen_; }
    QString page() const;
    QString tone() const;
    bool can_go_back() const;
    QString language() const;
    bool right_to_left() const;
    /// Above the pages while somebody of the clinic answers: whose night this is; else empty.
    QString staff_label() const;
    double text_scale() const { return settings_.text_scale; }
    bool motion() const { return settings_.motion; }
    const Words& words() const { return *words_; }
    // What the screens show; only those of the screen that is up are current.
    const WelcomeValues& welcome() const { return welcome_; }
    const FirstValues& first() const { return first_; }
    const CallValues& call() const { return call_; }
    const ListValues& list() const { return list_; }
    const StepValues& step() const { return step_; }
    const HelpValues& help() const { return help_; }
    const BedValues& bed() const { return bed_; }
    const NightValues& night() const { return night_; }
    const TimeValues& time() const { return time_; }
    const AmountValues& amount() const { return amount_; }
    const CommentValues& comment() const { return comment_; }
    const ReviewValues& review() const { return review_; }
    const SignalValues& signal_task_values() const { return signal_; }
    const PuzzleValues& puzzle() const { return puzzle_in_hand_.values; }
    const ResultValues& result() const { return result_; }
    const SkinValues& skin() const { return skin_; }
    const MessageValues& message() const { return message_; }
    const PictureValues& picture() const { return picture_; }
    const VoiceValues& voice() const { return voice_; }
    /// A practice run is on: session() is not the night's.
    bool practice() const;
    Mirror* mirror() { return &mirror_; }

    /// For rehearsals: does at once what the page would do by itself after a while.
    void let_time_pass();
    /// For tours: opens any page as if the person had come there.
    bool open_page(const std::string& page);
    /// Opens the session again, as "Try again" does.
    void reopen();
    /// Closes the session, and with it the journal: the front desk has the tablet.
    void put_down();
    /// Somebody of the clinic answers from now on, in the session that this opens. What keeps it from
    /// being opened; then the kiosk is put down again.
    Status sit(OpenSession staff);
    /// The patient's session is the one to open again. put_down() or reopen() comes next.
    void stand_up() { staff_session_ = nullptr; }

    Q_INVOKABLE void askDesk(); ///< somebody of the clinic wants the front desk
    Q_INVOKABLE void leaveSitting(); ///< back to the desk without writing a record
    Q_INVOKABLE void goOn();
    Q_INVOKABLE void goBack();
    Q_INVOKABLE void skip();
    Q_INVOKABLE void choose(const QString& id);
    Q_INVOKABLE void toggle(const QString& id);
    Q_INVOKABLE void chooseLanguage(const QString& code);
    Q_INVOKABLE void chooseBuild(const QString& id);
    Q_INVOKABLE void second();              ///< the other button of a list: something is missing
    Q_INVOKABLE void firstNone();
    Q_INVOKABLE void firstSome();
    // Help at a step
    Q_INVOKABLE void openHelp(const QString& part = QString()); ///< of the step in hand, or of a part
    Q_INVOKABLE void solved();
    Q_INVOKABLE void notSolved();
    // Night
    Q_INVOKABLE void wake();
    Q_INVOKABLE void noteAwake();
    Q_INVOKABLE void noteUp();
    Q_INVOKABLE void noteOff();
    Q_INVOKABLE void askHelp();
    Q_INVOKABLE void upForDay();
    Q_INVOKABLE void upConfirmed();
    Q_INVOKABLE void undo();
    Q_INVOKABLE void yes();
    Q_INVOKABLE void no();
    Q_INVOKABLE void leaveFace();
    // Morning
    Q_INVOKABLE void stepTime(int minutes, const QString& which);
    Q_INVOKABLE void chooseSureness(const QString& word);
    Q_INVOKABLE void stepWidth(int minutes);
    Q_INVOKABLE void stepAmount(int minutes);
    Q_INVOKABLE void editEvent(const QString& id);
    Q_INVOKABLE void removeEvent(const QString& id);
    Q_INVOKABLE void addEvent();
    Q_INVOKABLE void noEvents();
    Q_INVOKABLE void countEvents(); ///< awakenings without times
    Q_INVOKABLE void editComment(const QString& text);
    Q_INVOKABLE void change(const QString& question);
    Q_INVOKABLE void changeFirst();
    Q_INVOKABLE void changeSecond();
    Q_INVOKABLE void leavePuzzle();
    Q_INVOKABLE void skinFine();
    Q_INVOKABLE void skinSore();

    // Practice run and mirror
    Q_INVOKABLE void startPractice();
    Q_INVOKABLE void endPractice();
    Q_INVOKABLE void openMirror();
    Q_INVOKABLE void closeMirror();
    // Sound
    Q_INVOKABLE void sayAgain();
    Q_INVOKABLE void stopReading(); ///< also the pages to come, where each is read by itself
    Q_INVOKABLE void chooseReading(bool each_page);
    Q_INVOKABLE void chooseNightSound(bool on);
    Q_INVOKABLE void chooseBreathSound(bool on);
    Q_INVOKABLE void breathOut(); ///< the drawn guide is at the end of a breath out

  signals:
    void changed();
    void languageChanged();
    /// The last page of the last night was left.
    void finished();
    void deskWanted();
    /// Somebody of the clinic is done; the record that was written, or empty for none.
    void sittingOver(const QString& record);

  private:
    enum class Over { nothing, help, call, event, puzzle, skin, trouble, practice_over };

    bool start();
    void begin_draft(); ///< of a time question: what was given so far, else what is known
    bool said(const Status& status);
    bool say(std::string_view kind, std::string_view subject = "", std::string_view value = "");
    bool open(const std::string& page);
    void go_after();
    void fill();
    void fill_page();
    void fill_question(std::string_view question);
    void fill_moment();
    void noted(std::string_view kind, const std::string& subject, const QString& words);
    void show_face(NightFace::Face face);
    void grow_dark(); ///< the night page has been lit for long enough
    void stay_lit();  ///< as long again from now
    void something_off();
    void forget_unnamed_off();
    void noted_on(const std::string& part);
    void confirm_question(std::string_view question);
    void answered(std::string_view question, const Json& value);
    void confirm_event();
    void store_events(std::string_view question, const std::vector<Awakening>& awake, const std::vector<Removal>& off,
                      const std::optional<UntimedAwakenings>& untimed);
    void write_draft(std::string_view question, const Json& value);
    void time_given();
    bool asks_which_moment(); ///< true when the page that asks comes up
    void settle_moment();
    void set_draft(const std::optional<TimeRange>& known, Instant near);
    std::string question() const; ///< of the page, or empty
    std::optional<long> amount_minutes() const; ///< as begun on the page, else as known
    std::string comment_text() const;           ///< the same for the comment
    const Step* current_step() const;
    const Step* step_to_help(const std::string& part) const;
    const SignalTask* task_in_hand() const; ///< of the page, or null
    const EveningQuestion* evening_question_in_hand() const;
    void end_signal(const SignalTask& task, std::string_view how);
    void signal_ticked();
    void watch_skin(); ///< sets the timer for the second look at the skin, where one is due
    void ask_skin_again();
    Look look() const;
    Spoken spoken() const; ///< what the page that is up can read aloud
    Spoken spoken_morning(const Teller& teller) const;
    std::string place() const; ///< what a reading belongs to: another place, and it stops
    void hear(); ///< after fill(): stops what was left, reads what is to be read
    void fill_voice(const Spoken& units);
    void show_silence(Sound::Silence why);
    void reading_ended();
    void watch_start(); ///< sets the timer for the planned start, on the first page
    void ring_start();

    OpenSession open_session_;
    OpenSession staff_session_; ///< while somebody of the clinic answers
    Settings settings_;
    std::unique_ptr<Session> session_;
    std::unique_ptr<Words> words_;
    QTimer dark_again_;
    QTimer skin_due_;
    QTimer tick_; ///< runs only while a task of the signal check does

    Over over_ = Over::nothing;
    Problem trouble_;
    std::string help_chosen_;
    const Step* help_step_ = nullptr; ///< of the plan
    NightFace face_;
    std::string last_noted_off_;
    std::int64_t noted_number_ = 0; ///< of the entry that "undo" takes back
    NightFace::Face after_undo_ = NightFace::Face::areas;
    std::int64_t unnamed_off_ = 0; ///< of the entry "something came off" while it is asked which
    std::optional<EventDraft> event_;
    TimeDraft draft_;
    bool which_moment_ = false; ///< the time in hand may mean two moments, and that is being asked
    std::string moment_chosen_;
    bool from_review_ = false;
    std::set<std::string> puzzles_left_;
    Puzzle puzzle_in_hand_;

    Sound sound_;
    std::string heard_place_;
    QString ring_;     ///< the tone that goes with what is being filled in
    bool breath_sound_ = false;
    QTimer start_due_;
    std::unique_ptr<Session> night_session_; ///< the night's own, while a practice run is on
    Mirror mirror_;
    std::unique_ptr<Camera> camera_;
    bool mirror_there_ = true;

    QString screen_;
    VoiceValues voice_;
    WelcomeValues welcome_;
    FirstValues first_;
    CallValues call_;
    ListValues list_;
    StepValues step_;
    HelpValues help_;
    BedValues bed_;
    NightValues night_;
    TimeValues time_;
    AmountValues amount_;
    CommentValues comment_;
    ReviewValues review_;
    ResultValues result_;
    PictureValues picture_;
    SignalValues signal_;
    SkinValues skin_;
    MessageValues message_;
};

} // namespace evenfall
