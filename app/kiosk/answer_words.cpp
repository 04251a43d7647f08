// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/answer_words.h"

#include "answers/questions.h"

namespace evenfall {

std::string question_text(std::string_view question, const char* slot)
{
    return "q." + std::string(question) + "." + slot;
}

QString range_text(const Words& words, const TimeRange& range)
{
    if (range.exact())
        return words.of("answer.exact", {words.moment(range.earliest)});
    return words.of("answer.between", {words.moment(range.earliest), words.moment(range.latest)});
}

QString awakening_text(const Words& words, const Awakening& one)
{
    if (one.to)
        return words.of("answer.awake_from_to", {words.moment(one.from.middle()), words.moment(one.to->middle())});
    return words.of("answer.awake_from", {words.moment(one.from.middle()),
                                          words.number(std::chrono::round<std::chrono::minutes>(one.length.value_or(Span{0})).count())});
}

QString untimed_text(const Words& words, const UntimedAwakenings& untimed)
{
    return words.of("answer.untimed", {words.number(untimed.times), words.number(std::chrono::round<std::chrono::minutes>(untimed.total).count())});
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
        return words.of("answer.off_from_to", {name, words.moment(one.from->latest), words.moment(one.to->middle())});
    if (one.from && !one.from->exact())
        return words.of("answer.off_soon", {name, words.moment(one.from->earliest), words.moment(one.from->latest)});
    return words.of("answer.off_from", {name, one.from ? words.moment(one.from->middle()) : QString()});
}

QString amount_text(const Words& words, std::string_view question, long minutes)
{
    if (question == questions::slept)
        return words.of("answer.hours_minutes", {words.number(minutes / 60), words.number(minutes % 60)});
    return words.of("answer.minutes", {words.number(minutes)});
}

QString answer_text(const Session& session, const Words& words, const Morning& morning, std::string_view question)
{
    QStringList lines;
    if (questions::asks_time(question)) {
        if (const std::optional<TimeRange>& value = morning.time(question).value)
            return range_text(words, *value);
    } else if (questions::asks_amount(question)) {
        if (const std::optional<Span>& value = morning.amount(question).value)
            return amount_text(words, question, std::chrono::round<std::chrono::minutes>(*value).count());
    } else if (question == questions::awake && morning.awake.value) {
        for (const Awakening& one : *morning.awake.value)
            lines << awakening_text(words, one);
        if (morning.awake_untimed.value)
            lines << untimed_text(words, *morning.awake_untimed.value);
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

} // namespace evenfall
