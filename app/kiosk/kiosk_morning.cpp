// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/kiosk.h"

#include "answers/questions.h"
#include "journal/kinds.h"

#include <algorithm>

namespace evenfall {
namespace {

using std::chrono::minutes;

// The longest that a person can give as the time to fall asleep, or as asleep, in minutes.
constexpr long longest_amount = 16 * 60;
// More awakenings without times than anybody counts.
constexpr long most_awakenings = 99;

} // namespace

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
    if (!session_)
        return std::nullopt;
    const std::string asked = question();
    if (const Json* open = session_->state().draft(asked); open && open->is_number_integer())
        return open->get<long>();
    if (const std::optional<Span> known = session_->morning().amount(asked).value)
        return std::chrono::round<minutes>(*known).count();
    return std::nullopt;
}

std::string Kiosk::comment_text() const
{
    if (!session_)
        return "";
    if (const Json* open = session_->state().draft(questions::comment); open && open->is_string())
        return open->get<std::string>();
    return session_->morning().comment.value.value_or("");
}

void Kiosk::stepAmount(int by)
{
    if (over_ == Over::event && event_) {
        long& value = event_->stage == EventDraft::Stage::times ? event_->times : event_->minutes;
        value = std::clamp(value + by, 0L, event_->stage == EventDraft::Stage::times ? most_awakenings : longest_amount);
        fill();
        return;
    }
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
    if (id == QLatin1String("untimed")) {
        countEvents();
        return;
    }
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
    if (event_->stage == Stage::times) {
        event_->stage = Stage::minutes;
        return;
    }
    if (event_->stage == Stage::minutes) {
        store_events(event_->question, session_->morning().awake.value.value_or(std::vector<Awakening>{}), {},
                     UntimedAwakenings{event_->times, std::chrono::minutes(event_->minutes)});
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
    store_events(event_->question, awake, off, morning.awake_untimed.value);
}

void Kiosk::countEvents()
{
    event_ = EventDraft{};
    event_->question = question();
    event_->stage = EventDraft::Stage::times;
    if (const std::optional<UntimedAwakenings> known = session_->morning().awake_untimed.value) {
        event_->times = known->times;
        event_->minutes = std::chrono::round<minutes>(known->total).count();
    }
    over_ = Over::event;
    fill();
}

void Kiosk::store_events(std::string_view asked, const std::vector<Awakening>& awake, const std::vector<Removal>& off,
                         const std::optional<UntimedAwakenings>& untimed)
{
    const std::chrono::seconds offset = session_->offset_at(session_->now());
    const Json value = asked == questions::awake ? awake_answer(awake, untimed, offset) : off_answer(off, offset);
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
    const bool untimed = id == QLatin1String("untimed");
    if (asked == questions::awake && !untimed && index < std::ssize(awake))
        awake.erase(awake.begin() + index);
    if (asked == questions::off && index < std::ssize(off))
        off.erase(off.begin() + index);
    store_events(asked, awake, off, untimed ? std::nullopt : morning.awake_untimed.value);
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
    if (over_ == Over::skin) {
        if (say(kinds::skin_again, "fine"))
            over_ = Over::nothing;
    } else if (say(kinds::skin, "fine")) {
        go_after();
    }
    fill();
}

void Kiosk::skinSore()
{
    say(over_ == Over::skin ? kinds::skin_again : kinds::skin, "sore");
    fill();
}

void Kiosk::watch_skin()
{
    skin_due_.stop();
    if (!session_ || !session_->state().skin_at || !session_->state().skin_again.empty() || page() != QLatin1String("finished"))
        return;
    const auto left = std::chrono::ceil<std::chrono::milliseconds>(*session_->state().skin_at + skin_wait - session_->now());
    skin_due_.start(static_cast<int>(std::max(std::chrono::milliseconds(1), left).count()));
}

void Kiosk::ask_skin_again()
{
    if (over_ != Over::nothing || page() != QLatin1String("finished"))
        return;
    over_ = Over::skin;
    ring_ = QStringLiteral("start"); // time to look again
    fill();
}

} // namespace evenfall
