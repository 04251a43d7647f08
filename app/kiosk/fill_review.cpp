// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/fill.h"

#include "answers/questions.h"
#include "estimate/contradictions.h"
#include "kiosk/answer_words.h"

namespace evenfall {
namespace {

/// One of two answers that do not fit: what it is called, what was said, and what question asks it.
struct Side {
    QString label, value;
    std::string question;
};

/// The number in "/awake/3/from".
std::optional<size_t> number_after(const std::string& at, std::string_view list)
{
    if (!at.starts_with(list) || at.size() <= list.size() || at[list.size()] < '0' || at[list.size()] > '9')
        return std::nullopt;
    return std::stoul(at.substr(list.size()));
}

/// One awakening, or one end of it.
std::optional<Side> awakening_side(const Words& words, const Night& night, const std::string& at)
{
    const std::optional<size_t> number = number_after(at, "/awake/");
    if (!number || !night.awake || *number >= night.awake->size())
        return std::nullopt;
    const Awakening& one = (*night.awake)[*number];
    Side side{words.of("q.awake.short"), awakening_text(words, one), std::string(questions::awake)};
    if (at.ends_with("/from"))
        side = {words.of("event.awake_from"), range_text(words, one.from), side.question};
    else if (at.ends_with("/to") && one.to)
        side = {words.of("event.awake_to"), range_text(words, *one.to), side.question};
    return side;
}

std::optional<Side> removal_side(const Session& session, const Words& words, const Night& night, const std::string& at)
{
    const std::optional<size_t> number = number_after(at, "/off/");
    if (!number || *number >= night.off.size())
        return std::nullopt;
    const Removal& one = night.off[*number];
    const QString name = sensor_name(session, words, one.sensor);
    Side side{words.of("q.off.short"), removal_text(session, words, one), std::string(questions::off)};
    if (at.ends_with("/from") && one.from)
        side = {words.of("event.off_from", {name}), range_text(words, *one.from), side.question};
    else if (at.ends_with("/to") && one.to)
        side = {words.of("event.off_to", {name}), range_text(words, *one.to), side.question};
    return side;
}

/// What stands at a pointer of the night report; nothing where nobody said it (the needs, the sensors).
std::optional<Side> side_at(const Session& session, const Words& words, const Night& night, const std::string& at)
{
    if (at == "/recording/from" && night.recording_from)
        return Side{words.of("puzzle.recording_from"), range_text(words, *night.recording_from), ""};
    if (at == "/recording/to" && night.recording_to)
        return Side{words.of("puzzle.recording_to"), range_text(words, *night.recording_to), ""};
    if (std::optional<Side> side = awakening_side(words, night, at))
        return side;
    if (std::optional<Side> side = removal_side(session, words, night, at))
        return side;
    const Morning morning = session.morning();
    for (const std::string_view question : questions::all) {
        if (at.starts_with("/" + std::string(question)))
            return Side{words.of(question_text(question, "short")), answer_text(session, words, morning, question), std::string(question)};
    }
    return std::nullopt;
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

std::optional<Puzzle> find_puzzle(const Session& session, const Words& words, const std::set<std::string>& left_alone)
{
    const Night night = session.night();
    for (const Contradiction& one : find_contradictions(night)) {
        const std::string key = one.problem.code + one.problem.at;
        const std::optional<Side> first = side_at(session, words, night, one.first);
        if (left_alone.contains(key) || !first)
            continue;
        const Side second = side_at(session, words, night, one.second).value_or(Side{});
        Puzzle puzzle{key, first->question, second.question, {}};
        puzzle.values.title = words.of("puzzle.title");
        puzzle.values.firstLabel = first->label;
        puzzle.values.firstValue = first->value;
        puzzle.values.firstCanChange = !first->question.empty();
        puzzle.values.secondLabel = second.label;
        puzzle.values.secondValue = second.value;
        puzzle.values.secondCanChange = !second.question.empty();
        const std::string text = puzzle_text(one.problem.code);
        puzzle.values.body = text == "puzzle.order" ? words.of(text, {first->label, second.label}) : words.of(text);
        return puzzle;
    }
    return std::nullopt;
}

} // namespace evenfall
