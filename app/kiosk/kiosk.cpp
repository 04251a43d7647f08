// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/kiosk.h"

#include "answers/questions.h"
#include "journal/kinds.h"

#include <algorithm>

namespace evenfall {
namespace {

using std::chrono::minutes;

// Between two looks at a task of the signal check that runs.
constexpr int tick_ms = 500;

} // namespace

Kiosk::Kiosk(OpenSession open, Settings settings, QObject* parent)
    : QObject(parent), open_session_(std::move(open)), settings_(std::move(settings)), sound_(settings_.sound)
{
    sound_.ended = [this] { reading_ended(); };
    start_due_.setSingleShot(true);
    connect(&start_due_, &QTimer::timeout, this, &Kiosk::ring_start);
    dark_again_.setSingleShot(true);
    connect(&dark_again_, &QTimer::timeout, this, [this] { grow_dark(); });
    skin_due_.setSingleShot(true);
    connect(&skin_due_, &QTimer::timeout, this, &Kiosk::ask_skin_again);
    tick_.setInterval(tick_ms);
    connect(&tick_, &QTimer::timeout, this, &Kiosk::signal_ticked);
    words_ = std::make_unique<Words>(settings_.language.isEmpty() ? QStringLiteral("en") : settings_.language, nullptr);
    start();
    fill();
}

bool Kiosk::start()
{
    session_.reset(); // closes the journal before it is opened again
    night_session_.reset();
    help_step_ = nullptr;
    Result<std::unique_ptr<Session>> opened = staff_session_ ? staff_session_() : open_session_();
    if (!opened) {
        trouble_ = opened.problems().front();
        over_ = Over::trouble;
        return false;
    }
    session_ = std::move(opened.value());
    over_ = Over::nothing;
    face_ = NightFace{};
    QString language = QString::fromStdString(session_->state().language.empty() ? session_->visit().language : session_->state().language);
    if (!settings_.language.isEmpty())
        language = settings_.language;
    else if (session_->staff())
        language = words_->language(); // that of the desk
    words_.reset(); // one translator at a time
    words_ = std::make_unique<Words>(language, session_->visit().zone);
    begin_draft();
    watch_skin();
    if (const SignalTask* task = task_in_hand(); task && signal_left(*session_, *task))
        tick_.start(); // it was under way when the program ended
    emit languageChanged();
    return true;
}

void Kiosk::begin_draft()
{
    if (const std::string asked = question(); questions::asks_time(asked))
        draft_ = draft_for(*session_, asked);
}

QString Kiosk::page() const { return session_ ? QString::fromStdString(session_->state().page) : QString(); }

QString Kiosk::language() const { return words_->language(); }

bool Kiosk::right_to_left() const { return words_->right_to_left(); }

QString Kiosk::tone() const
{
    if (!session_)
        return screen_ == QLatin1String("desk") ? QStringLiteral("morning") : QStringLiteral("evening");
    switch (session_->pages().stretch_of(session_->state().page)) {
    case Pages::Stretch::evening: return QStringLiteral("evening");
    case Pages::Stretch::night: return over_ == Over::trouble ? QStringLiteral("evening") : QStringLiteral("night");
    case Pages::Stretch::morning: break;
    }
    return QStringLiteral("morning");
}

Look Kiosk::look() const
{
    const QString now = tone();
    Look look;
    if (session_ && !session_->state().build.empty())
        look.build = QString::fromStdString(session_->state().build);
    look.tone = now == QLatin1String("morning") ? QStringLiteral("light") : now == QLatin1String("night") ? now : QStringLiteral("dark");
    return look;
}

bool Kiosk::can_go_back() const
{
    return session_ && (over_ == Over::help || over_ == Over::call || over_ == Over::event || over_ == Over::puzzle || over_ == Over::skin || over_ == Over::practice_over ||
                        from_review_ || !session_->pages().before(session_->state().page).empty());
}

const Step* Kiosk::current_step() const { return session_ ? session_->plan().step(session_->state().page) : nullptr; }

std::string Kiosk::question() const
{
    const std::string page = session_ ? session_->state().page : "";
    return page.starts_with(question_prefix) ? page.substr(question_prefix.size()) : "";
}

bool Kiosk::said(const Status& status)
{
    if (status)
        return true;
    trouble_ = status.problems().front();
    over_ = Over::trouble;
    return false;
}

bool Kiosk::say(std::string_view kind, std::string_view subject, std::string_view value)
{
    return session_ && said(session_->say(kind, subject, value));
}

bool Kiosk::open(const std::string& page)
{
    if (!session_ || !said(session_->open(page)))
        return false;
    over_ = Over::nothing;
    event_.reset();
    which_moment_ = false;
    begin_draft();
    watch_skin();
    return true;
}

void Kiosk::go_after()
{
    if (!session_)
        return;
    if (from_review_) {
        from_review_ = false;
        open("review");
        return;
    }
    if (practice() && session_->state().page == "light") {
        over_ = Over::practice_over;
        return;
    }
    const std::string next = session_->pages().after(session_->state().page);
    if (next == "entered" && session_->changes_nothing()) {
        emit sittingOver(QString());
        return;
    }
    const bool record_due = next == "entered" || (next == "finished" && session_->state().record.empty());
    if (record_due && !said(session_->write_night()))
        return;
    open(next);
}

bool Kiosk::open_page(const std::string& page)
{
    const bool opened = open(page);
    face_ = NightFace{};
    fill();
    return opened;
}

void Kiosk::reopen()
{
    start();
    fill();
}

void Kiosk::put_down()
{
    for (QTimer* timer : {&dark_again_, &skin_due_, &tick_})
        timer->stop();
    session_.reset();
    help_step_ = nullptr;
    event_.reset();
    from_review_ = false;
    puzzles_left_.clear();
    over_ = Over::nothing;
    screen_ = QStringLiteral("desk");
    emit changed();
}

Status Kiosk::sit(OpenSession staff)
{
    staff_session_ = std::move(staff);
    if (start()) {
        fill();
        return Done{};
    }
    stand_up();
    put_down();
    return trouble_;
}

void Kiosk::askDesk() { emit deskWanted(); }

void Kiosk::leaveSitting()
{
    if (staff_session_)
        emit sittingOver(page() == QLatin1String("entered") ? QString::fromStdString(session_->state().record) : QString());
}

QString Kiosk::staff_label() const
{
    if (!session_ || !session_->staff())
        return QString();
    const std::string kind = !session_->state().amendments.empty() ? "sitting.amend" : "sitting.paper";
    return words_->of(kind, {words_->code(session_->visit().code), words_->number(session_->state().night)});
}

void Kiosk::goOn()
{
    if (over_ == Over::practice_over) {
        endPractice();
        return;
    } else if (over_ == Over::trouble) {
        start();
    } else if (over_ == Over::skin) {
        over_ = Over::nothing;
    } else if (const SignalTask* task = task_in_hand()) {
        if (!signal_left(*session_, *task) && say(kinds::signal, task->id, Json("started").dump()))
            tick_.start();
    } else if (which_moment_) {
        if (!moment_chosen_.empty())
            settle_moment();
    } else if (over_ == Over::call) {
        // From the first questions the person goes on only after calling; from a step, back to it.
        if (say(kinds::called)) {
            over_ = Over::nothing;
            if (page() == QLatin1String("first"))
                go_after();
        }
    } else if (over_ == Over::event) {
        confirm_event();
    } else if (const Step* step = current_step()) {
        if (say(kinds::step, step->id))
            go_after();
    } else if (page() == QLatin1String("bed")) {
        if (say(kinds::lights_out) && open("night"))
            face_ = NightFace{};
    } else if (const std::string asked = question(); !asked.empty()) {
        confirm_question(asked);
    } else if (page() == QLatin1String("review")) {
        over_ = Over::puzzle; // fill() finds out whether there is one
    } else if (page() == QLatin1String("entered")) {
        emit sittingOver(QString::fromStdString(session_->state().record));
        return;
    } else if (page() == QLatin1String("stop")) {
        if (say(kinds::stopped))
            go_after();
    } else if (page() == QLatin1String("finished")) {
        skin_due_.stop();
        if (session_->state().night < session_->visit().nights)
            said(session_->begin_night(session_->state().night + 1));
        else
            emit finished();
    } else {
        go_after();
    }
    fill();
}

void Kiosk::goBack()
{
    if (which_moment_) {
        which_moment_ = false; // back to the time itself
    } else if (over_ == Over::help || over_ == Over::call || over_ == Over::puzzle || over_ == Over::skin || over_ == Over::practice_over) {
        over_ = Over::nothing;
    } else if (over_ == Over::event) {
        over_ = Over::nothing;
        event_.reset();
    } else if (from_review_) {
        from_review_ = false;
        open("review");
    } else if (const std::string before = session_ ? session_->pages().before(session_->state().page) : ""; !before.empty()) {
        open(before);
    }
    fill();
}

void Kiosk::skip()
{
    which_moment_ = false;
    if (over_ == Over::event) {
        over_ = Over::nothing;
        event_.reset();
    } else if (const SignalTask* task = task_in_hand()) {
        end_signal(*task, "skipped");
    } else if (evening_question_in_hand()) {
        answered(page().toStdString(), skipped_answer());
    } else if (const std::string asked = question(); !asked.empty()) {
        answered(asked, skipped_answer());
    }
    fill();
}

void Kiosk::choose(const QString& id)
{
    const std::string chosen = id.toStdString();
    if (which_moment_) {
        moment_chosen_ = chosen;
    } else if (over_ == Over::help) {
        help_chosen_ = chosen;
        say(kinds::trouble, chosen);
    } else if (over_ == Over::event && event_) {
        if (event_->stage == EventDraft::Stage::which) {
            event_->sensor = chosen;
        } else if (event_->stage == EventDraft::Stage::has_end) {
            if (chosen == "no") {
                event_->to.reset();
                event_->stage = EventDraft::Stage::to;
                draft_.sureness = TimeDraft::Sureness::unsure;
                confirm_event();
            } else {
                event_->stage = EventDraft::Stage::to;
                set_draft(event_->to, event_->from->latest + minutes(10));
            }
        }
    } else if (evening_question_in_hand()) {
        say(kinds::answer, page().toStdString(), word_answer(chosen).dump());
    } else if (page() == QLatin1String("light")) {
        say(kinds::light, chosen);
    } else if (question() == questions::compare) {
        say(kinds::answer, questions::compare, word_answer(chosen).dump());
    } else if (page() == QLatin1String("night")) {
        using Face = NightFace::Face;
        if (face_.face == Face::which_off && session_->kit().part(chosen)) {
            const std::int64_t unnamed = unnamed_off_;
            noted(kinds::off, chosen, words_->of("noted.off", {words_->part(*session_->kit().part(chosen))}));
            last_noted_off_ = chosen;
            unnamed_off_ = unnamed;
            forget_unnamed_off();
        } else if (face_.face == Face::which_on && session_->kit().part(chosen)) {
            noted_on(chosen);
        } else if (face_.face == Face::which_on) {
            something_off(); // none of these: then something else came off
        } else if (face_.face == Face::which_off) {
            forget_unnamed_off();
            show_face(Face::areas);
        } else if (face_.face == Face::help && say(kinds::help, chosen)) {
            const std::set<std::string> off = session_->state().off_now();
            face_.advice = chosen == "off" && !off.empty() ? "refit:" + *off.begin() : chosen;
            if (chosen == "off" && off.empty())
                something_off();
            else
                show_face(Face::advice);
        }
    }
    fill();
}

// --- What the screen shows ---

void Kiosk::fill()
{
    if (!session_ && over_ != Over::trouble)
        return; // put down: the front desk has the screen
    if (over_ == Over::puzzle) {
        if (std::optional<Puzzle> puzzle = find_puzzle(*session_, *words_, puzzles_left_))
            puzzle_in_hand_ = std::move(*puzzle);
        else {
            over_ = Over::nothing;
            go_after();
        }
    }
    switch (over_) {
    case Over::trouble:
        if (trouble_.code == no_visit) {
            screen_ = QStringLiteral("ready");
            message_ = MessageValues{};
            message_.title = words_->of("ready.title");
            message_.body = words_->of("ready.body");
            message_.mainLabel = words_->of("desk.open");
            break;
        }
        screen_ = QStringLiteral("trouble");
        message_ = fill_trouble(settings_.clinic, *words_, trouble_);
        break;
    case Over::call:
        screen_ = QStringLiteral("call");
        call_ = fill_call(*session_, *words_, true);
        break;
    case Over::help:
        screen_ = QStringLiteral("help");
        help_ = fill_help(*session_, *words_, look(), *help_step_, help_chosen_);
        break;
    case Over::skin:
        screen_ = QStringLiteral("skin");
        skin_ = fill_skin(*session_, *words_, look(), true);
        break;
    case Over::puzzle: screen_ = QStringLiteral("puzzle"); break;
    case Over::practice_over:
        screen_ = QStringLiteral("practice");
        message_ = fill_practice(*session_, *words_, look(), true);
        break;
    case Over::event:
        if (which_moment_) {
            fill_moment();
        } else if (event_->stage == EventDraft::Stage::times || event_->stage == EventDraft::Stage::minutes) {
            screen_ = QStringLiteral("amount");
            amount_ = fill_event_count(*words_, *event_);
        } else if (event_->stage == EventDraft::Stage::which || event_->stage == EventDraft::Stage::has_end) {
            screen_ = QStringLiteral("choice");
            list_ = event_->stage == EventDraft::Stage::which ? fill_event_which(*session_, *words_, look(), *event_) : fill_event_end(*session_, *words_, *event_);
        } else {
            screen_ = QStringLiteral("time");
            time_ = fill_event_time(*session_, *words_, *event_, draft_);
        }
        break;
    case Over::nothing: fill_page(); break;
    }
    hear();
    emit changed();
}

void Kiosk::fill_page()
{
    const std::string page = session_->state().page;
    screen_ = QString::fromStdString(page);
    if (page == "welcome" && practice()) {
        screen_ = QStringLiteral("practice");
        message_ = fill_practice(*session_, *words_, look(), false);
    } else if (page == "welcome")
        welcome_ = fill_welcome(*session_, *words_, look());
    else if (page == "first")
        first_ = fill_first(*session_, *words_);
    else if (const EveningQuestion* asked = evening_question_in_hand()) {
        screen_ = QStringLiteral("choice");
        list_ = fill_evening(*session_, *words_, *asked);
    } else if (const SignalTask* task = task_in_hand()) {
        screen_ = QStringLiteral("signal");
        signal_ = fill_signal(*session_, *words_, look(), *task);
    } else if (page == "bag")
        list_ = fill_bag(*session_, *words_, look());
    else if (page == "check")
        list_ = fill_check(*session_, *words_, look());
    else if (page == "light")
        list_ = fill_light(*session_, *words_);
    else if (const Step* step = current_step()) {
        screen_ = QStringLiteral("step");
        step_ = fill_step(*session_, *words_, look(), *step);
        step_.backVisible = can_go_back();
        step_.mirrorText = words_->of(mirror_there_ ? "mirror.keeps_nothing" : "mirror.no_camera");
        step_.mirrorThere = mirror_there_;
    } else if (page == "bed")
        bed_ = fill_bed(*session_, *words_, settings_.on_battery && settings_.on_battery());
    else if (page == "night")
        night_ = fill_night(*session_, *words_, look(), face_);
    else if (page == "morning") {
        message_.title = words_->of("morning.title");
        message_.body = words_->of("morning.body");
        if (const std::vector<TimeRange>& gaps = session_->state().gaps; !gaps.empty())
            message_.body += QStringLiteral("\n") + words_->of("morning.gap", {words_->moment(gaps.front().earliest), words_->moment(gaps.front().latest)});
        message_.mainLabel = words_->of("main.next");
    } else if (page.starts_with(question_prefix))
        fill_question(question());
    else if (page == "review")
        review_ = fill_review(*session_, *words_);
    else if (page == "result") {
        result_ = fill_result(*session_, *words_);
        picture_ = fill_picture(*session_, *words_);
    } else if (const std::optional<OffStep> off = off_step(session_->kit(), page); off) {
        screen_ = QStringLiteral("step");
        step_ = fill_off_step(*session_, *words_, look(), *off);
        step_.backVisible = can_go_back();
    } else if (page == "skin")
        skin_ = fill_skin(*session_, *words_, look(), false);
    else if (page == "pack")
        list_ = fill_pack(*session_, *words_, look());
    else if (page == "finished")
        message_ = fill_finished(*session_, *words_);
    else if (page == "entered") {
        message_ = MessageValues{};
        message_.title = words_->of("entered.title");
        message_.body = words_->of("entered.body", {words_->code(session_->state().record)});
        message_.mainLabel = words_->of("desk.back");
    }
}

void Kiosk::fill_moment()
{
    screen_ = QStringLiteral("choice");
    list_ = fill_which_moment(*session_, *words_, draft_.of(*draft_.doubt()), moment_chosen_);
    list_.progressText = progress_text(*words_, question());
}

void Kiosk::fill_question(std::string_view asked)
{
    if (which_moment_) {
        fill_moment();
    } else if (questions::asks_time(asked)) {
        screen_ = QStringLiteral("time");
        time_ = fill_time(*session_, *words_, asked, draft_);
    } else if (questions::asks_amount(asked)) {
        screen_ = QStringLiteral("amount");
        amount_ = fill_amount(*words_, asked, amount_minutes());
    } else if (asked == questions::awake || asked == questions::off) {
        screen_ = QStringLiteral("events");
        list_ = fill_events(*session_, *words_, asked);
    } else if (asked == questions::compare) {
        screen_ = QStringLiteral("choice");
        list_ = fill_compare(*words_, session_->morning().compare.value.value_or(""));
    } else {
        screen_ = QStringLiteral("comment");
        comment_ = fill_comment(*words_, QString::fromStdString(comment_text()));
    }
}

} // namespace evenfall
