// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/fill.h"

#include "answers/questions.h"
#include "estimate/contradictions.h"
#include "estimate/estimate.h"
#include "estimate/picture.h"

#include <algorithm>
#include <cmath>

namespace evenfall {
namespace {

std::string question_text(std::string_view question, const char* slot)
{
    return "q." + std::string(question) + "." + slot;
}

QString range_text(const Words& words, const TimeRange& range)
{
    if (range.exact())
        return words.of("answer.exact", {words.clock(range.earliest)});
    return words.of("answer.between", {words.clock(range.earliest), words.clock(range.latest)});
}

QString awakening_text(const Words& words, const Awakening& one)
{
    if (one.to)
        return words.of("answer.awake_from_to", {words.clock(one.from.middle()), words.clock(one.to->middle())});
    return words.of("answer.awake_from", {words.clock(one.from.middle()),
                                          words.number(std::chrono::round<std::chrono::minutes>(one.length.value_or(Span{0})).count())});
}

QString sensor_name(const Session& session, const Words& words, const std::string& sensor)
{
    const Part* part = session.kit().part(sensor);
    return part ? words.part(*part) : QString::fromStdString(sensor);
}

QString removal_text(const Session& session, const Words& words, const Removal& one)
{
    const QString name = sensor_name(session, words, one.sensor);
    if (one.from && one.to)
        return words.of("answer.off_from_to", {name, words.clock(one.from->latest), words.clock(one.to->middle())});
    if (one.from && !one.from->exact())
        return words.of("answer.off_soon", {name, words.clock(one.from->earliest), words.clock(one.from->latest)});
    return words.of("answer.off_from", {name, one.from ? words.clock(one.from->middle()) : QString()});
}

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
        return words.of("q.hint.forgot_back", {words.clock(morning.forgotten_back.front())});
    return QString();
}

/// The answer as it stands, for the list of answers.
QString answer_text(const Session& session, const Words& words, const Morning& morning, std::string_view question)
{
    QStringList lines;
    if (questions::asks_time(question)) {
        if (const std::optional<TimeRange>& value = morning.time(question).value)
            return range_text(words, *value);
    } else if (question == questions::asleep_after) {
        if (morning.asleep_after.value)
            return words.of("answer.minutes", {words.number(std::chrono::round<std::chrono::minutes>(*morning.asleep_after.value).count())});
    } else if (question == questions::awake && morning.awake.value) {
        for (const Awakening& one : *morning.awake.value)
            lines << awakening_text(words, one);
        return lines.isEmpty() ? words.of("q.none_awake") : lines.join(QLatin1Char('\n'));
    } else if (question == questions::off && morning.off.value && !morning.off.skipped) {
        for (const Removal& one : *morning.off.value)
            lines << removal_text(session, words, one);
        return lines.isEmpty() ? words.of("q.none_off") : lines.join(QLatin1Char('\n'));
    } else if (question == questions::compare && morning.compare.value) {
        return words.of("q.compare." + *morning.compare.value);
    } else if (question == questions::comment && morning.comment.value) {
        return QString::fromStdString(*morning.comment.value);
    }
    return words.of("answer.skipped");
}

/// A local time that happens twice this night is said to be so.
QString twice_text(const Session& session, const Words& words, Instant when)
{
    const LocalReading reading = session.visit().zone->read(session.visit().zone->local(when));
    if (reading.kind != LocalReading::Kind::ambiguous)
        return QString();
    return words.of("puzzle.twice", {words.clock(when)});
}

TimeValues time_values(const Session& session, const Words& words, const TimeDraft& draft, bool from_notes)
{
    TimeValues values;
    values.timeText = words.clock(draft.time);
    values.dayText = words.day_and_part(draft.time);
    values.sureness = QString::fromStdString(name_of(draft.sureness));
    values.earliestText = words.clock(draft.earliest);
    values.latestText = words.clock(draft.latest);
    values.earliestDayText = words.day_and_part(draft.earliest);
    values.latestDayText = words.day_and_part(draft.latest);
    values.giveOrTakeText = words.of("answer.give_or_take", {words.number(draft.width.count())});
    values.noteText = twice_text(session, words, draft.time);
    // What the notes say may be confirmed as it stands; after a change the person says how sure.
    const bool as_noted = from_notes && !draft.touched;
    values.mainEnabled = as_noted || draft.sureness != TimeDraft::Sureness::none;
    values.mainLabel = words.of(as_noted ? "main.right" : "main.next");
    return values;
}

QString half_hours(const Words& words, long halves)
{
    const QString whole = words.number(halves / 2);
    if (halves % 2 == 0)
        return whole;
    return halves == 1 ? words.of("result.only_half") : words.of("result.half", {whole});
}

QString hours_text(const Words& words, const Bounds& needed)
{
    // Half hours: the least rounded down, so that nothing is promised; the most to the nearest.
    const double least = std::chrono::duration<double, std::ratio<1800>>(needed.at_least).count();
    const double most = std::chrono::duration<double, std::ratio<1800>>(needed.at_most).count();
    const long low = static_cast<long>(std::floor(least));
    const long high = std::max(low, std::lround(most));
    if (high < 2)
        return words.of("result.under_one");
    if (low == high)
        return words.of("result.range_one", {half_hours(words, low)});
    return words.of("result.range", {half_hours(words, low), half_hours(words, high)});
}

const char* kind_name(SpanKind kind)
{
    switch (kind) {
    case SpanKind::on: return "on";
    case SpanKind::off: return "off";
    case SpanKind::asleep: return "asleep";
    case SpanKind::awake: break;
    }
    return "awake";
}

bool is_full(const PictureSpan& span)
{
    return span.certainty == Certainty::solid && (span.kind == SpanKind::on || span.kind == SpanKind::asleep);
}

/// What may be so is drawn as a fade of the full bar between its neighbours: out of a full one, into
/// a full one, or out and in again.
void add_fade(QVariantList& rows, const PictureSpan& span, bool before_full, bool after_full, const NightPicture& picture)
{
    const auto seconds = [&picture](Instant when) { return std::chrono::duration<double>(when - picture.from).count(); };
    const bool sleep = span.kind == SpanKind::asleep || span.kind == SpanKind::awake;
    SpanRow row;
    row.kind = sleep ? QStringLiteral("asleep") : QStringLiteral("on");
    row.from = seconds(span.from);
    row.to = seconds(span.to);
    if (before_full != after_full) {
        row.soft = before_full ? QStringLiteral("out") : QStringLiteral("in");
        rows << QVariant::fromValue(row);
        return;
    }
    const double middle = (row.from + row.to) / 2;
    SpanRow second = row;
    row.to = middle;
    second.from = middle;
    row.soft = before_full ? QStringLiteral("out") : QStringLiteral("in");
    second.soft = before_full ? QStringLiteral("in") : QStringLiteral("out");
    rows << QVariant::fromValue(row) << QVariant::fromValue(second);
}

PictureValues picture_values(const Session& session, const Words& words, const NightPicture& picture)
{
    const auto seconds = [&picture](Instant when) { return std::chrono::duration<double>(when - picture.from).count(); };
    PictureValues values;
    values.to = seconds(picture.to);
    for (const PictureLane& lane : picture.lanes) {
        LaneRow row;
        row.name = lane.id == "sleep" ? words.of("result.lane.sleep") : sensor_name(session, words, lane.id);
        for (size_t i = 0; i < lane.spans.size(); ++i) {
            const PictureSpan& span = lane.spans[i];
            if (span.certainty == Certainty::soft) {
                add_fade(row.spans, span, i > 0 && is_full(lane.spans[i - 1]), i + 1 < lane.spans.size() && is_full(lane.spans[i + 1]), picture);
                continue;
            }
            SpanRow one;
            one.from = seconds(span.from);
            one.to = seconds(span.to);
            one.kind = QString::fromLatin1(kind_name(span.kind));
            row.spans << QVariant::fromValue(one);
        }
        values.lanes << QVariant::fromValue(row);
    }
    // Room for about seven labels: of many hours every other one is named, and none beside the mark
    // of a clock change, which names its own.
    const auto change = std::find_if(picture.ticks.begin(), picture.ticks.end(), [](const PictureTick& tick) { return tick.clock_change; });
    const bool crowded = picture.ticks.size() > 7;
    for (const PictureTick& tick : picture.ticks) {
        TickRow row;
        row.at = seconds(tick.at);
        const bool beside = change != picture.ticks.end() && !tick.clock_change && std::chrono::abs(tick.at - change->at) < std::chrono::minutes(90);
        const bool odd = tick.local.count() / 60 % 2 != 0;
        if (tick.clock_change)
            row.label = words.clock(tick.local);
        else if (!beside && !(crowded && odd))
            row.label = words.hour(tick.local);
        if (tick.clock_change)
            row.mark = words.of(tick.offset < tick.offset_before ? "result.clock_back" : "result.clock_forward");
        values.ticks << QVariant::fromValue(row);
    }
    return values;
}

/// The question that an answer at this pointer of the night report belongs to.
std::string question_at(const std::string& at)
{
    for (const std::string_view question : questions::all) {
        if (at.starts_with("/" + std::string(question)))
            return std::string(question);
    }
    if (at.starts_with("/asleep_after"))
        return std::string(questions::asleep_after);
    return at.starts_with("/awake") ? std::string(questions::awake) : at.starts_with("/off") ? std::string(questions::off) : "";
}

std::string puzzle_text(const std::string& code)
{
    if (code == "lights_on_before_lights_out")
        return "puzzle.lights_on_before_lights_out";
    if (code == "awakening_outside_night" || code == "removal_outside_night")
        return "puzzle.outside_night";
    if (code == "sleep_longer_than_bed")
        return "puzzle.longer_than_bed";
    return code == "night_over_24_h" ? "puzzle.too_long" : "puzzle.order";
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
        return TimeDraft::from(*known);
    // Nothing known: begin near the plan in the evening, and near now in the morning.
    const bool evening = question == questions::into_bed || question == questions::lights_out;
    return TimeDraft::from(TimeRange::exactly(evening ? session.planned_bed() : session.now()));
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

ListValues fill_event_which(const Session& session, const Words& words, const EventDraft& event)
{
    ListValues values;
    values.progressText = progress_text(words, event.question);
    values.title = words.of("night.which.off");
    values.chosen = QString::fromStdString(event.sensor);
    values.mainLabel = words.of("main.next");
    values.mainEnabled = !event.sensor.empty();
    for (const std::string& id : session.kit().sensors()) {
        values.items << QVariant::fromValue(choice_row(id, sensor_name(session, words, id)));
    }
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

AmountValues fill_asleep_after(const Words& words, std::optional<long> minutes)
{
    AmountValues values;
    values.progressText = progress_text(words, questions::asleep_after);
    values.title = words.of(question_text(questions::asleep_after, "title"));
    values.valueText = minutes ? words.number(*minutes) : QStringLiteral("–");
    values.unitText = words.of("unit.minutes");
    for (int delta : {-15, -5, 5, 15}) {
        AmountStepRow row;
        row.delta = delta;
        row.label = (delta > 0 ? QStringLiteral("+") : QStringLiteral("−")) + words.number(std::abs(delta));
        values.steps << QVariant::fromValue(row);
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

ReviewValues fill_review(const Session& session, const Words& words)
{
    const Morning morning = session.morning();
    ReviewValues values;
    values.title = words.of("review.title");
    values.body = words.of("review.body");
    values.mainLabel = words.of("review.main");
    for (const std::string_view question : questions::all) {
        ReviewRow row;
        row.id = QString::fromStdString(std::string(question));
        row.question = words.of(question_text(question, "short"));
        row.answer = answer_text(session, words, morning, question);
        row.skipped = row.answer == words.of("answer.skipped");
        values.rows << QVariant::fromValue(row);
    }
    return values;
}

std::optional<PuzzleValues> fill_puzzle(const Session& session, const Words& words, std::string& first_question,
                                        std::string& second_question, const std::set<std::string>& left_alone)
{
    const Morning morning = session.morning();
    for (const Contradiction& one : find_contradictions(session.night())) {
        if (left_alone.contains(one.problem.code + one.problem.at))
            continue;
        first_question = question_at(one.first);
        second_question = question_at(one.second);
        if (first_question.empty())
            continue; // between things that nobody was asked about: the record carries it
        PuzzleValues values;
        values.title = words.of("puzzle.title");
        values.firstLabel = words.of(question_text(first_question, "short"));
        values.firstValue = answer_text(session, words, morning, first_question);
        if (!second_question.empty()) {
            values.secondLabel = words.of(question_text(second_question, "short"));
            values.secondValue = answer_text(session, words, morning, second_question);
        }
        const std::string text = puzzle_text(one.problem.code);
        values.body = text == "puzzle.order" ? words.of(text, {values.firstLabel, values.secondLabel}) : words.of(text);
        return values;
    }
    return std::nullopt;
}

ResultValues fill_result(const Session& session, const Words& words)
{
    const Night night = session.night();
    ResultValues values;
    values.clinicText = words.of("result.clinic", {words.code(session.visit().clinic.phone)});
    values.mainLabel = words.of("result.main");
    // With answers that speak against each other no figure would mean anything.
    if (contradictions(night).empty()) {
        const Estimate found = estimate(night, {.with_chance = false});
        values.sentence = words.of("result.sentence." + std::string(verdict_word(found.verdict)));
        if (found.needed)
            values.rangeText = hours_text(words, *found.needed);
    } else {
        values.sentence = words.of("result.sentence.unknown");
    }
    values.pictureText = words.of("result.picture_text");
    values.explain = words.of("result.explain") + QStringLiteral(" ") + words.of("result.gaps");
    return values;
}

PictureValues fill_picture(const Session& session, const Words& words)
{
    const std::optional<NightPicture> drawn = picture(session.night());
    return drawn ? picture_values(session, words, *drawn) : PictureValues{};
}

StepValues fill_off_step(const Session& session, const Words& words, const Look& look, const std::string& page)
{
    StepValues values;
    std::string base = page == "stop" ? "off.stop." + std::string(name_of(session.kit().start.by)) : page == "tape_off" ? "off.tape" : "off.rest";
    values.title = words.of(page == "stop" ? base : base + ".title");
    values.body = words.of(base + ".body");
    if (page == "tape_off")
        values.caution = words.of("off.tape.caution");
    const char* figure = page == "stop" ? "switch_slide" : page == "tape_off" ? "tape_off_low" : "free_cables";
    if (page == "stop" && session.kit().start.by != StartBy::switch_on)
        figure = session.kit().start.by == StartBy::last_plug ? "probe_plug" : "light_look";
    values.figure = figure_url(figure, session, look);
    values.figureText = values.title + QStringLiteral(". ") + values.body;
    values.personFigure = person_url(session, look, "");
    values.mainLabel = words.of("main.done");
    return values;
}

SkinValues fill_skin(const Session& session, const Words& words, const Look& look)
{
    SkinValues values;
    values.title = words.of("skin.title");
    values.body = words.of("skin.body");
    values.figure = figure_url("skin_look", session, look);
    values.figureText = values.body;
    values.remainingText = words.of("skin.again");
    values.question = words.of("skin.question");
    if (session.state().skin == "sore") {
        values.caution = words.of("skin.hurt.advice", {words.code(session.visit().clinic.phone)});
        values.question.clear();
        values.laterLabel = words.of("main.next");
    }
    return values;
}

ListValues fill_pack(const Session& session, const Words& words, const Look& look)
{
    const ListValues bag = fill_bag(session, words, look);
    ListValues values;
    values.title = words.of("pack.title");
    values.body = words.of("pack.body");
    values.mainLabel = words.of("pack.main");
    for (const QVariant& one : bag.items) {
        ItemRow row = one.value<ItemRow>();
        const size_t index = row.id.toULong();
        if (!session.kit().packing[index].comes_back)
            continue;
        row.done = session.state().packed.contains(std::to_string(index));
        values.mainEnabled = values.mainEnabled && row.done;
        values.items << QVariant::fromValue(row);
    }
    return values;
}

MessageValues fill_finished(const Session& session, const Words& words)
{
    MessageValues values;
    values.title = words.of("finished.title");
    values.body = words.of("finished.body");
    values.recordName = words.of("finished.record", {words.code(session.state().record)});
    values.returnText = words.of("finished.return", {words.date(session.visit().return_by)});
    values.phone = words.code(session.visit().clinic.phone);
    values.hours = words.hours(session.visit().clinic);
    values.mainLabel = words.of("main.done");
    return values;
}

MessageValues fill_trouble(const Clinic& clinic, const Words& words, const Problem& problem)
{
    std::string kind = "read_only";
    for (const char* known : {"disk_full", "read_only", "second_copy", "damaged", "sync"}) {
        if (problem.code == known)
            kind = known;
    }
    MessageValues values;
    values.phone = words.code(clinic.phone);
    values.hours = words.hours(clinic);
    values.title = words.of("trouble." + kind + ".title");
    values.body = words.of("trouble." + kind + ".body", {values.phone});
    values.detail = QString::fromStdString(problem.text);
    values.mainLabel = words.of("trouble.again");
    return values;
}

} // namespace evenfall
