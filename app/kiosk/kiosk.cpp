// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/kiosk.h"

#include "answers/questions.h"
#include "journal/kinds.h"

#include <algorithm>

namespace evenfall {
namespace {

using std::chrono::minutes;

// How long the night page stays lit: long enough to read it twice, short enough not to wake anybody.
constexpr int lit_ms = 30000;
constexpr int noted_ms = 8000;

// The longest that a person can give as the time to fall asleep, or as asleep, in minutes.
constexpr long longest_amount = 16 * 60;

bool is_taking_off(std::string_view page) { return page == "stop" || page == "tape_off" || page == "rest_off"; }

} // namespace

Kiosk::Kiosk(OpenSession open, Settings settings, QObject* parent)
    : QObject(parent), open_session_(std::move(open)), settings_(std::move(settings))
{
    dark_again_.setSingleShot(true);
    connect(&dark_again_, &QTimer::timeout, this, [this] { show_face(NightFace::Face::dark); });
    words_ = std::make_unique<Words>(settings_.language.isEmpty() ? QStringLiteral("en") : settings_.language, nullptr);
    start();
    fill();
}

bool Kiosk::start()
{
    session_.reset(); // closes the journal before it is opened again
    Result<std::unique_ptr<Session>> opened = open_session_();
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
    words_.reset(); // one translator at a time
    words_ = std::make_unique<Words>(language, session_->visit().zone);
    begin_draft();
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
        return QStringLiteral("evening");
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
    look.tone = now == QLatin1String("morning") ? QStringLiteral("light") : now == QLatin1String("night") ? now : QStringLiteral("dark");
    return look;
}

bool Kiosk::can_go_back() const
{
    return session_ && (over_ == Over::help || over_ == Over::call || over_ == Over::event || over_ == Over::puzzle ||
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
    return true;
}

void Kiosk::go_after()
{
    if (from_review_) {
        from_review_ = false;
        open("review");
        return;
    }
    const std::string next = session_->pages().after(session_->state().page);
    if (next == "finished" && session_->state().record.empty()) {
        if (!said(session_->write_record_below(settings_.records)))
            return;
    }
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

void Kiosk::goOn()
{
    if (over_ == Over::trouble) {
        start();
    } else if (which_moment_) {
        if (!moment_chosen_.empty())
            settle_moment();
    } else if (over_ == Over::call) {
        // From the first questions the person goes on only after calling; from a step, back to it.
        if (page() == QLatin1String("first")) {
            if (say(kinds::called))
                go_after();
        } else if (say(kinds::called)) {
            over_ = Over::nothing;
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
    } else if (page() == QLatin1String("stop")) {
        if (say(kinds::stopped))
            go_after();
    } else if (page() == QLatin1String("finished")) {
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
    } else if (over_ == Over::help || over_ == Over::call || over_ == Over::puzzle) {
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
    } else if (page() == QLatin1String("light")) {
        say(kinds::light, chosen);
    } else if (question() == questions::compare) {
        say(kinds::answer, questions::compare, word_answer(chosen).dump());
    } else if (page() == QLatin1String("night")) {
        using Face = NightFace::Face;
        if (face_.face == Face::which_off && session_->kit().part(chosen)) {
            noted(kinds::off, chosen, words_->of("noted.off", {words_->part(*session_->kit().part(chosen))}));
            last_noted_off_ = chosen;
        } else if (face_.face == Face::which_on && session_->kit().part(chosen)) {
            noted(kinds::on, chosen, words_->of("noted.on", {words_->part(*session_->kit().part(chosen))}) + QLatin1Char('\n') + words_->of("night.look_light"));
        } else if (face_.face == Face::which_on) {
            show_face(Face::which_off); // none of these: then something else came off
        } else if (face_.face == Face::which_off) {
            show_face(Face::areas);
        } else if (face_.face == Face::help && say(kinds::help, chosen)) {
            const std::set<std::string> off = session_->state().off_now();
            face_.advice = chosen == "off" && !off.empty() ? "refit:" + *off.begin() : chosen;
            show_face(chosen == "off" && off.empty() ? Face::which_off : Face::advice);
        }
    }
    fill();
}

void Kiosk::toggle(const QString& id)
{
    const std::string item = id.toStdString();
    if (page() == QLatin1String("bag"))
        say(kinds::item, item);
    else if (page() == QLatin1String("pack"))
        say(kinds::packed, item);
    else if (page() == QLatin1String("check"))
        say(kinds::check, item);
    fill();
}

void Kiosk::chooseLanguage(const QString& code)
{
    if (say(kinds::language, code.toStdString())) {
        settings_.language.clear();
        words_->set_language(code);
        emit languageChanged();
    }
    fill();
}

void Kiosk::second()
{
    if (page() == QLatin1String("bag") && say(kinds::item_missing))
        over_ = Over::call;
    fill();
}

void Kiosk::firstNone()
{
    if (say(kinds::first, "none"))
        go_after();
    fill();
}

void Kiosk::firstSome()
{
    if (say(kinds::first, "some"))
        over_ = Over::call;
    fill();
}

void Kiosk::openHelp()
{
    help_chosen_.clear();
    over_ = current_step() && !current_step()->helps.empty() ? Over::help : Over::call;
    fill();
}

void Kiosk::solved()
{
    over_ = Over::nothing;
    fill();
}

void Kiosk::notSolved()
{
    over_ = Over::call;
    fill();
}

// --- Night ---

void Kiosk::show_face(NightFace::Face face)
{
    face_.face = face;
    if (face == NightFace::Face::dark)
        dark_again_.stop(); // nothing may wake the machine while the page is dark
    else
        dark_again_.start(face == NightFace::Face::noted ? noted_ms : lit_ms);
    if (face == NightFace::Face::dark)
        fill();
}

void Kiosk::let_time_pass()
{
    if (dark_again_.isActive())
        show_face(NightFace::Face::dark);
}

void Kiosk::noted(std::string_view kind, const std::string& subject, const QString& words)
{
    last_noted_off_.clear();
    if (!say(kind, subject))
        return;
    face_.noted = words;
    show_face(NightFace::Face::noted);
}

void Kiosk::wake()
{
    if (page() == QLatin1String("night") && face_.face == NightFace::Face::dark)
        show_face(NightFace::Face::areas);
    fill();
}

void Kiosk::noteAwake()
{
    const bool awake = session_ && session_->state().awake_now();
    noted(awake ? kinds::asleep : kinds::awake, "", words_->of(awake ? "noted.asleep" : "noted.awake"));
    fill();
}

void Kiosk::noteUp()
{
    if (session_ && session_->state().out_of_bed()) {
        if (say(kinds::back))
            show_face(NightFace::Face::still_on);
    } else {
        noted(kinds::up, "", words_->of("noted.up"));
    }
    fill();
}

void Kiosk::noteOff()
{
    const bool some_off = session_ && !session_->state().off_now().empty();
    show_face(some_off ? NightFace::Face::which_on : NightFace::Face::which_off);
    fill();
}

void Kiosk::askHelp()
{
    show_face(NightFace::Face::help);
    fill();
}

void Kiosk::upForDay()
{
    show_face(NightFace::Face::up_confirm);
    fill();
}

void Kiosk::upConfirmed()
{
    if (say(kinds::up_for_day) && open("morning")) {
        dark_again_.stop();
        face_ = NightFace{};
    }
    fill();
}

void Kiosk::undo()
{
    if (face_.face == NightFace::Face::noted && session_ && say(kinds::undo, "", std::to_string(session_->last_number()))) {
        last_noted_off_.clear();
        face_.noted = words_->of("noted.undone");
        show_face(NightFace::Face::areas);
    }
    fill();
}

void Kiosk::yes()
{
    if (face_.face == NightFace::Face::still_on)
        noted(kinds::all_on, "", words_->of("noted.all_on"));
    fill();
}

void Kiosk::no()
{
    show_face(face_.face == NightFace::Face::still_on ? NightFace::Face::which_off : NightFace::Face::areas);
    fill();
}

void Kiosk::leaveFace()
{
    using Face = NightFace::Face;
    if (face_.face == Face::noted && !last_noted_off_.empty()) {
        face_.advice = "refit:" + last_noted_off_;
        last_noted_off_.clear();
        show_face(Face::advice);
    } else {
        show_face(Face::dark);
    }
    fill();
}

// --- Morning ---

void Kiosk::write_draft(std::string_view question, const Json& value) { say(kinds::draft, question, value.dump()); }

void Kiosk::set_draft(const std::optional<TimeRange>& known, Instant near)
{
    const Zone& zone = *session_->visit().zone;
    draft_ = known ? TimeDraft::from(*known, zone) : TimeDraft::guess(near, zone);
}

bool Kiosk::asks_which_moment()
{
    which_moment_ = draft_.doubt().has_value();
    moment_chosen_.clear();
    return which_moment_;
}

void Kiosk::settle_moment()
{
    using Meant = TimeDraft::Meant;
    const Meant meant = moment_chosen_ == "first" ? Meant::first : moment_chosen_ == "second" ? Meant::second : Meant::either;
    which_moment_ = false;
    draft_.settle(*draft_.doubt(), meant, *session_->visit().zone);
    if (over_ != Over::event)
        write_draft(question(), draft_.json());
    if (over_ == Over::event)
        confirm_event();
    else if (over_ == Over::nothing)
        confirm_question(question());
}

/// An event is written whole when it is confirmed; a question's time at each tap.
void Kiosk::time_given()
{
    if (over_ != Over::event)
        write_draft(question(), draft_.json());
    fill();
}

void Kiosk::stepTime(int by, const QString& which)
{
    draft_.step(minutes(by), which == QLatin1String("earliest") ? TimeDraft::Which::earliest
                             : which == QLatin1String("latest") ? TimeDraft::Which::latest
                                                                : TimeDraft::Which::time,
                *session_->visit().zone);
    time_given();
}

void Kiosk::chooseSureness(const QString& word)
{
    draft_.choose(sureness_named(word.toStdString()));
    time_given();
}

void Kiosk::stepWidth(int by)
{
    draft_.widen(minutes(by));
    time_given();
}

std::optional<long> Kiosk::amount_minutes() const
{
    const std::string asked = question();
    if (const Json* open = session_->state().draft(asked); open && open->is_number_integer())
        return open->get<long>();
    if (const std::optional<Span> known = session_->morning().amount(asked).value)
        return std::chrono::round<minutes>(*known).count();
    return std::nullopt;
}

std::string Kiosk::comment_text() const
{
    if (const Json* open = session_->state().draft(questions::comment); open && open->is_string())
        return open->get<std::string>();
    return session_->morning().comment.value.value_or("");
}

void Kiosk::stepAmount(int by)
{
    const long value = amount_minutes().value_or(0);
    write_draft(question(), Json(std::clamp(value + by, 0L, longest_amount)));
    fill();
}

void Kiosk::answered(std::string_view question, const Json& value)
{
    if (say(kinds::answer, question, value.dump()))
        go_after();
}

void Kiosk::confirm_question(std::string_view asked)
{
    const Morning morning = session_->morning();
    const std::chrono::seconds offset = session_->offset_at(session_->now());
    if (questions::asks_time(asked)) {
        const std::optional<TimeRange>& known = morning.time(asked).value;
        if (!draft_.touched && known)
            answered(asked, time_answer(*known, offset));
        else if (asks_which_moment())
            return;
        else if (const std::optional<TimeRange> range = draft_.range())
            answered(asked, time_answer(*range, offset));
        else if (draft_.sureness == TimeDraft::Sureness::unsure)
            answered(asked, Json{{"skipped", true}, {"unsure", true}});
    } else if (questions::asks_amount(asked)) {
        if (const std::optional<long> value = amount_minutes())
            answered(asked, minutes_answer(minutes(*value)));
    } else if (asked == questions::awake) {
        answered(asked, awake_answer(morning.awake.value.value_or(std::vector<Awakening>{}), morning.awake_untimed.value, offset));
    } else if (asked == questions::off) {
        answered(asked, off_answer(morning.off.value.value_or(std::vector<Removal>{}), offset));
    } else if (asked == questions::comment) {
        const Json* open = session_->state().draft(asked);
        if (open && open->is_string() && !open->get_ref<const std::string&>().empty())
            answered(asked, word_answer(open->get<std::string>()));
        else if (morning.comment.value)
            go_after();
        else
            answered(asked, skipped_answer());
    } else {
        go_after(); // a choice is written when it is made
    }
}

void Kiosk::addEvent()
{
    event_ = EventDraft{};
    event_->question = question();
    event_->stage = event_->question == questions::off ? EventDraft::Stage::which : EventDraft::Stage::from;
    const Morning morning = session_->morning();
    const Instant from = morning.lights_out.value ? morning.lights_out.value->middle() : session_->planned_bed();
    set_draft(std::nullopt, from + minutes(180));
    over_ = Over::event;
    fill();
}

void Kiosk::editEvent(const QString& id)
{
    const size_t index = id.toULong();
    const Morning morning = session_->morning();
    event_ = EventDraft{};
    event_->question = question();
    event_->index = static_cast<int>(index);
    if (event_->question == questions::awake && morning.awake.value && index < morning.awake.value->size()) {
        event_->from = (*morning.awake.value)[index].from;
        event_->to = (*morning.awake.value)[index].to;
    } else if (event_->question == questions::off && morning.off.value && index < morning.off.value->size()) {
        event_->sensor = (*morning.off.value)[index].sensor;
        event_->from = (*morning.off.value)[index].from;
        event_->to = (*morning.off.value)[index].to;
    } else {
        event_.reset();
        return;
    }
    event_->stage = EventDraft::Stage::from;
    set_draft(event_->from, session_->planned_bed());
    over_ = Over::event;
    fill();
}

void Kiosk::confirm_event()
{
    using Stage = EventDraft::Stage;
    if (!event_)
        return;
    if (event_->stage == Stage::which) {
        event_->stage = Stage::from;
        return;
    }
    if (asks_which_moment())
        return;
    if (event_->stage == Stage::from) {
        event_->from = draft_.range();
        if (!event_->from) { // not sure when: any time of the night
            const Morning morning = session_->morning();
            const Instant begin = morning.lights_out.value ? morning.lights_out.value->earliest : session_->planned_bed();
            const Instant end = morning.lights_on.value ? morning.lights_on.value->latest : session_->now();
            event_->from = TimeRange{std::min(begin, end), end};
        }
        event_->stage = event_->question == questions::off ? Stage::has_end : Stage::to;
        set_draft(event_->to, event_->from->latest + minutes(10));
        return;
    }
    if (draft_.range())
        event_->to = draft_.range();
    else if (event_->question == questions::awake) // not sure how long: up to the final waking
        event_->to = TimeRange{event_->from->earliest, std::max(event_->from->latest, session_->morning().final_waking.value.value_or(TimeRange::exactly(session_->now())).latest)};

    const Morning morning = session_->morning();
    std::vector<Awakening> awake = morning.awake.value.value_or(std::vector<Awakening>{});
    std::vector<Removal> off = morning.off.value.value_or(std::vector<Removal>{});
    const size_t index = static_cast<size_t>(std::max(0, event_->index));
    if (event_->question == questions::awake) {
        const Awakening one{*event_->from, event_->to, std::nullopt};
        if (event_->index >= 0 && index < awake.size())
            awake[index] = one;
        else
            awake.push_back(one);
    } else {
        const Removal one{event_->sensor, event_->from, event_->to};
        if (event_->index >= 0 && index < off.size())
            off[index] = one;
        else
            off.push_back(one);
    }
    store_events(event_->question, awake, off);
}

void Kiosk::store_events(std::string_view asked, const std::vector<Awakening>& awake, const std::vector<Removal>& off)
{
    const std::chrono::seconds offset = session_->offset_at(session_->now());
    const Json value = asked == questions::awake ? awake_answer(awake, session_->morning().awake_untimed.value, offset) : off_answer(off, offset);
    if (say(kinds::answer, asked, value.dump())) {
        over_ = Over::nothing;
        event_.reset();
    }
}

void Kiosk::removeEvent(const QString& id)
{
    const auto index = static_cast<std::ptrdiff_t>(id.toULong());
    const Morning morning = session_->morning();
    std::vector<Awakening> awake = morning.awake.value.value_or(std::vector<Awakening>{});
    std::vector<Removal> off = morning.off.value.value_or(std::vector<Removal>{});
    const std::string asked = question();
    if (asked == questions::awake && index < std::ssize(awake))
        awake.erase(awake.begin() + index);
    if (asked == questions::off && index < std::ssize(off))
        off.erase(off.begin() + index);
    store_events(asked, awake, off);
    fill();
}

void Kiosk::noEvents()
{
    const std::string asked = question();
    const std::chrono::seconds offset = session_->offset_at(session_->now());
    answered(asked, asked == questions::awake ? awake_answer({}, std::nullopt, offset) : off_answer({}, offset));
    fill();
}

void Kiosk::editComment(const QString& text)
{
    // What a paste may bring along and no reader of the record could show becomes a space.
    QString plain = text;
    for (QChar& letter : plain) {
        if (letter.category() == QChar::Other_Control && letter != QLatin1Char('\n'))
            letter = QLatin1Char(' ');
    }
    // No fill(): the page keeps its own cursor.
    write_draft(questions::comment, Json(plain.toStdString()));
    if (over_ == Over::trouble)
        fill();
}

void Kiosk::change(const QString& asked)
{
    if (open(std::string(question_prefix) + asked.toStdString()))
        from_review_ = true;
    fill();
}

void Kiosk::changeFirst() { change(QString::fromStdString(puzzle_in_hand_.first_question)); }

void Kiosk::changeSecond() { change(QString::fromStdString(puzzle_in_hand_.second_question)); }

void Kiosk::leavePuzzle()
{
    puzzles_left_.insert(puzzle_in_hand_.key);
    fill();
}

void Kiosk::skinFine()
{
    if (say(kinds::skin, "fine"))
        go_after();
    fill();
}

void Kiosk::skinSore()
{
    say(kinds::skin, "sore");
    fill();
}

// --- What the screen shows ---

void Kiosk::fill()
{
    if (over_ == Over::puzzle) {
        if (std::optional<Puzzle> puzzle = find_puzzle(*session_, *words_, puzzles_left_))
            puzzle_in_hand_ = std::move(*puzzle);
        else
            open("result");
    }
    switch (over_) {
    case Over::trouble:
        screen_ = QStringLiteral("trouble");
        message_ = fill_trouble(settings_.clinic, *words_, trouble_);
        break;
    case Over::call:
        screen_ = QStringLiteral("call");
        call_ = fill_call(*session_, *words_, true);
        break;
    case Over::help:
        screen_ = QStringLiteral("help");
        help_ = fill_help(*session_, *words_, look(), *current_step(), help_chosen_);
        break;
    case Over::puzzle: screen_ = QStringLiteral("puzzle"); break;
    case Over::event:
        if (which_moment_) {
            fill_moment();
        } else if (event_->stage == EventDraft::Stage::which || event_->stage == EventDraft::Stage::has_end) {
            screen_ = QStringLiteral("choice");
            list_ = event_->stage == EventDraft::Stage::which ? fill_event_which(*session_, *words_, *event_) : fill_event_end(*session_, *words_, *event_);
        } else {
            screen_ = QStringLiteral("time");
            time_ = fill_event_time(*session_, *words_, *event_, draft_);
        }
        break;
    case Over::nothing: fill_page(); break;
    }
    emit changed();
}

void Kiosk::fill_page()
{
    const std::string page = session_->state().page;
    screen_ = QString::fromStdString(page);
    if (page == "welcome")
        welcome_ = fill_welcome(*session_, *words_);
    else if (page == "first")
        first_ = fill_first(*words_);
    else if (page == "bag")
        list_ = fill_bag(*session_, *words_, look());
    else if (page == "check")
        list_ = fill_check(*session_, *words_, look());
    else if (page == "light")
        list_ = fill_light(*session_, *words_);
    else if (const Step* step = current_step()) {
        screen_ = QStringLiteral("step");
        step_ = fill_step(*session_, *words_, look(), *step);
        step_.backVisible = can_go_back();
    } else if (page == "bed")
        bed_ = fill_bed(*session_, *words_);
    else if (page == "night")
        night_ = fill_night(*session_, *words_, look(), face_);
    else if (page == "morning") {
        message_.title = words_->of("morning.title");
        message_.body = words_->of("morning.body");
        message_.mainLabel = words_->of("main.next");
    } else if (page.starts_with(question_prefix))
        fill_question(question());
    else if (page == "review")
        review_ = fill_review(*session_, *words_);
    else if (page == "result") {
        result_ = fill_result(*session_, *words_);
        picture_ = fill_picture(*session_, *words_);
    } else if (is_taking_off(page)) {
        screen_ = QStringLiteral("step");
        step_ = fill_off_step(*session_, *words_, look(), page);
        step_.backVisible = can_go_back();
    } else if (page == "skin")
        skin_ = fill_skin(*session_, *words_, look());
    else if (page == "pack")
        list_ = fill_pack(*session_, *words_, look());
    else if (page == "finished")
        message_ = fill_finished(*session_, *words_);
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
