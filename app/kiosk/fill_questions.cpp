// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/fill.h"

#include "answers/questions.h"
#include "kiosk/answer_words.h"
#include "plan/depict.h"

#include <algorithm>

namespace evenfall {
namespace {

QString hint_text(const Session& session, const Words& words, std::string_view question)
{
    const Morning morning = session.morning();
    if (questions::asks_time(question)) {
        const Answer<TimeRange>& answer = morning.time(question);
        if (answer.source == Source::notes && answer.value)
            return words.of("q.hint.notes", {words.clock(answer.value->middle())});
        return answer.source == Source::none ? words.of("q.hint.none") : QString();
    }
    if (question == questions::awake && !morning.forgotten_back.empty())
        return words.of("q.hint.forgot_back", {words.moment(morning.forgotten_back.front())});
    if (question == questions::off && !morning.unnamed_off.empty())
        return words.of("q.hint.unnamed_off", {words.moment(morning.unnamed_off.front())});
    if (const std::vector<TimeRange>& gaps = session.state().gaps; !gaps.empty())
        return words.of("q.hint.gap", {words.moment(gaps.front().earliest), words.moment(gaps.front().latest)});
    return QString();
}

/// Beside a time on the night of a clock change: which of two moments it is, or that it will be asked.
QString doubt_text(const Session& session, const Words& words, const WallTime& time)
{
    const LocalReading reading = session.visit().zone->read(time.shown);
    if (reading.kind == LocalReading::Kind::unique)
        return QString();
    if (time.meant && time.meant->exact())
        return words.moment(time.meant->earliest);
    if (time.meant)
        return words.of("hour.note_either", {words.clock(time.shown)});
    const bool twice = reading.kind == LocalReading::Kind::ambiguous;
    return words.of(twice ? "hour.note_twice" : "hour.note_never", {words.clock(time.shown)});
}

QString doubts_text(const Session& session, const Words& words, const TimeDraft& draft)
{
    if (draft.sureness != TimeDraft::Sureness::between)
        return doubt_text(session, words, draft.time);
    const QString earliest = doubt_text(session, words, draft.earliest);
    return earliest.isEmpty() ? doubt_text(session, words, draft.latest) : earliest;
}

TimeValues time_values(const Session& session, const Words& words, const TimeDraft& draft, bool from_notes)
{
    TimeValues values;
    values.timeText = words.clock(draft.time.shown);
    values.dayText = words.day_and_part(draft.time.shown);
    values.sureness = QString::fromStdString(name_of(draft.sureness));
    values.earliestText = words.clock(draft.earliest.shown);
    values.latestText = words.clock(draft.latest.shown);
    values.earliestDayText = words.day_and_part(draft.earliest.shown);
    values.latestDayText = words.day_and_part(draft.latest.shown);
    values.giveOrTakeText = words.of("answer.give_or_take", {words.number(draft.width.count())});
    values.noteText = doubts_text(session, words, draft);
    // What the notes say may be confirmed as it stands; after a change the person says how sure.
    const bool as_noted = from_notes && !draft.touched;
    values.mainEnabled = as_noted || draft.sureness != TimeDraft::Sureness::none;
    values.mainLabel = words.of(as_noted ? "main.right" : "main.next");
    return values;
}

} // namespace

QString progress_text(const Words& words, std::string_view question)
{
    const auto found = std::find(questions::all.begin(), questions::all.end(), question);
    return words.of("q.progress", {words.number(found - questions::all.begin() + 1), words.number(static_cast<long>(questions::all.size()))});
}

TimeDraft draft_for(const Session& session, std::string_view question)
{
    if (const Json* open = session.state().draft(question)) {
        if (std::optional<TimeDraft> draft = TimeDraft::parse(*open))
            return *draft;
    }
    const Morning morning = session.morning();
    if (const std::optional<TimeRange>& known = morning.time(question).value)
        return TimeDraft::from(*known, *session.visit().zone);
    // Nothing known: begin near the plan in the evening, and near now in the morning.
    const bool evening = question == questions::into_bed || question == questions::lights_out;
    return TimeDraft::guess(evening ? session.planned_bed() : session.some_morning(), *session.visit().zone);
}

TimeValues fill_time(const Session& session, const Words& words, std::string_view question, const TimeDraft& draft)
{
    const Answer<TimeRange>& answer = session.morning().time(question);
    TimeValues values = time_values(session, words, draft, answer.value.has_value());
    values.progressText = progress_text(words, question);
    values.title = words.of(question_text(question, "title"));
    values.hint = hint_text(session, words, question);
    return values;
}

TimeValues fill_event_time(const Session& session, const Words& words, const EventDraft& event, const TimeDraft& draft)
{
    TimeValues values = time_values(session, words, draft, false);
    values.progressText = progress_text(words, event.question);
    const bool from = event.stage == EventDraft::Stage::from;
    if (event.question == questions::awake)
        values.title = words.of(from ? "event.awake_from" : "event.awake_to");
    else
        values.title = words.of(from ? "event.off_from" : "event.off_to", {sensor_name(session, words, event.sensor)});
    return values;
}

ListValues fill_event_which(const Session& session, const Words& words, const Look& look, const EventDraft& event)
{
    ListValues values;
    values.progressText = progress_text(words, event.question);
    values.title = words.of("night.which.off");
    values.chosen = QString::fromStdString(event.sensor);
    values.mainLabel = words.of("main.next");
    values.mainEnabled = !event.sensor.empty();
    for (const std::string& id : session.kit().sensors()) {
        ItemRow row = choice_row(id, sensor_name(session, words, id));
        if (const Part* part = session.kit().part(id))
            row.figure = figure_url(item_figure(part->kind), session, look, id);
        values.items << QVariant::fromValue(row);
    }
    return values;
}

AmountValues fill_event_count(const Words& words, const EventDraft& event)
{
    const bool times = event.stage == EventDraft::Stage::times;
    const long value = times ? event.times : event.minutes;
    AmountValues values;
    values.progressText = progress_text(words, event.question);
    values.title = words.of(times ? "event.untimed.times" : "event.untimed.minutes");
    values.valueText = value > 0 ? words.number(value) : QStringLiteral("–");
    values.unitText = words.of(times ? "unit.times" : "unit.minutes");
    for (const int by : times ? std::vector<int>{1} : std::vector<int>{15, 5}) {
        for (const int delta : {-by, by}) {
            AmountStepRow row;
            row.delta = delta;
            row.label = (delta > 0 ? QStringLiteral("+ ") : QStringLiteral("− ")) +
                        (times ? words.number(by) : words.of("answer.minutes", {words.number(by)}));
            values.steps << QVariant::fromValue(row);
        }
    }
    values.mainLabel = words.of("main.next");
    values.mainEnabled = value > 0;
    return values;
}

ListValues fill_event_end(const Session& session, const Words& words, const EventDraft& event)
{
    ListValues values;
    values.progressText = progress_text(words, event.question);
    values.title = words.of("event.off_end", {sensor_name(session, words, event.sensor)});
    values.mainLabel = words.of("main.next");
    values.mainEnabled = false;
    for (const char* id : {"yes", "no"}) {
        values.items << QVariant::fromValue(choice_row(id, words.of(std::string("event.off_end.") + id)));
    }
    return values;
}

ListValues fill_which_moment(const Session& session, const Words& words, const WallTime& time, const std::string& chosen)
{
    const LocalReading reading = session.visit().zone->read(time.shown);
    const bool twice = reading.kind == LocalReading::Kind::ambiguous;
    const std::array<Instant, 2> moments = two_moments(reading);
    ListValues values;
    values.title = words.of(twice ? "hour.twice" : "hour.never", {words.clock(time.shown)});
    values.hint = words.of(twice ? "hour.twice_why" : "hour.never_why");
    values.chosen = QString::fromStdString(chosen);
    values.mainLabel = words.of("main.next");
    values.mainEnabled = !chosen.empty();
    values.items << QVariant::fromValue(choice_row("first", words.of(twice ? "hour.before_back" : "hour.before_forward", {words.clock(moments[0])})))
                 << QVariant::fromValue(choice_row("second", words.of(twice ? "hour.after_back" : "hour.after_forward", {words.clock(moments[1])})))
                 << QVariant::fromValue(choice_row("either", words.of("answer.unsure")));
    return values;
}

AmountValues fill_amount(const Words& words, std::string_view question, std::optional<long> minutes)
{
    const bool hours = question == questions::slept;
    AmountValues values;
    values.progressText = progress_text(words, question);
    values.title = words.of(question_text(question, "title"));
    values.valueText = !minutes ? QStringLiteral("–") : hours ? amount_text(words, question, *minutes) : words.number(*minutes);
    values.unitText = hours ? QString() : words.of("unit.minutes");
    for (const int by : {60, 15, 5}) {
        if (by == (hours ? 5 : 60))
            continue;
        for (const int delta : {-by, by}) {
            AmountStepRow row;
            row.delta = delta;
            const QString size = by == 60 ? words.of("amount.hour") : words.of("answer.minutes", {words.number(by)});
            row.label = (delta > 0 ? QStringLiteral("+ ") : QStringLiteral("− ")) + size;
            values.steps << QVariant::fromValue(row);
        }
    }
    values.mainLabel = words.of("main.next");
    values.mainEnabled = minutes.has_value();
    return values;
}

ListValues fill_events(const Session& session, const Words& words, std::string_view question)
{
    const Morning morning = session.morning();
    const bool awake = question == questions::awake;
    ListValues values;
    values.progressText = progress_text(words, question);
    values.title = words.of(question_text(question, "title"));
    values.hint = hint_text(session, words, question);
    values.addLabel = words.of(awake ? "event.add_awake" : "event.add_off");
    values.mainLabel = words.of("main.next");
    const auto add = [&values](const QString& text, bool soft) {
        ItemRow row = choice_row(std::to_string(values.items.size()), text);
        row.soft = soft;
        values.items << QVariant::fromValue(row);
    };
    if (awake && morning.awake.value) {
        for (const Awakening& one : *morning.awake.value)
            add(awakening_text(words, one), !one.from.exact() || (one.to && !one.to->exact()));
    }
    if (awake) {
        values.countLabel = words.of("event.untimed.add");
        if (const std::optional<UntimedAwakenings>& untimed = morning.awake_untimed.value) {
            ItemRow row = choice_row("untimed", untimed_text(words, *untimed));
            row.soft = true;
            values.items << QVariant::fromValue(row);
            values.countLabel.clear();
        }
    }
    if (!awake && morning.off.value) {
        for (const Removal& one : *morning.off.value)
            add(removal_text(session, words, one), one.from && !one.from->exact());
    }
    values.mainEnabled = !values.items.isEmpty();
    if (values.items.isEmpty())
        values.noneLabel = words.of(awake ? "q.none_awake" : "q.none_off");
    return values;
}

ListValues fill_compare(const Words& words, const std::string& chosen)
{
    ListValues values;
    values.progressText = progress_text(words, questions::compare);
    values.title = words.of(question_text(questions::compare, "title"));
    values.chosen = QString::fromStdString(chosen);
    values.mainLabel = words.of("main.next");
    values.mainEnabled = !chosen.empty();
    for (const char* id : {"better", "usual", "worse"}) {
        values.items << QVariant::fromValue(choice_row(id, words.of(std::string("q.compare.") + id)));
    }
    return values;
}

CommentValues fill_comment(const Words& words, const QString& text)
{
    CommentValues values;
    values.progressText = progress_text(words, questions::comment);
    values.title = words.of(question_text(questions::comment, "title"));
    values.text = text;
    values.mainLabel = words.of("main.next");
    return values;
}

} // namespace evenfall
