// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/fill.h"

#include "estimate/contradictions.h"
#include "estimate/estimate.h"
#include "estimate/picture.h"
#include "kiosk/answer_words.h"
#include "plan/depict.h"

#include <algorithm>
#include <cmath>

namespace evenfall {
namespace {

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

/// None where answers speak against each other.
std::optional<Estimate> clear_estimate(const Session& session)
{
    const Night night = session.night();
    return contradictions(night).empty() ? std::optional(estimate(night, {.with_chance = false})) : std::nullopt;
}

std::string verdict_of(const std::optional<Estimate>& found)
{
    return std::string(verdict_word(found ? found->verdict : Verdict::unknown));
}

} // namespace

std::string result_verdict(const Session& session) { return verdict_of(clear_estimate(session)); }

ResultValues fill_result(const Session& session, const Words& words)
{
    const std::optional<Estimate> found = clear_estimate(session);
    ResultValues values;
    values.clinicText = words.of("result.clinic", {words.code(session.visit().clinic.phone)});
    values.mainLabel = words.of("result.main");
    values.sentence = words.of("result.sentence." + verdict_of(found));
    if (found && found->needed)
        values.rangeText = hours_text(words, *found->needed);
    values.pictureText = words.of("result.picture_text");
    values.explain = words.of("result.explain") + QStringLiteral(" ") + words.of("result.gaps");
    return values;
}

PictureValues fill_picture(const Session& session, const Words& words)
{
    const std::optional<NightPicture> drawn = picture(session.night());
    return drawn ? picture_values(session, words, *drawn) : PictureValues{};
}

StepValues fill_off_step(const Session& session, const Words& words, const Look& look, const OffStep& step)
{
    StepValues values;
    values.title = words(step.title);
    values.body = words(step.body);
    if (!step.caution.empty())
        values.caution = words(step.caution);
    values.figure = figure_url(depict(session.kit(), session.plan(), step), session, look);
    values.figureText = values.title + QStringLiteral(". ") + values.body;
    values.personFigure = person_url(session, look, "");
    values.mainLabel = words.of("main.done");
    return values;
}

SkinValues fill_skin(const Session& session, const Words& words, const Look& look, bool again)
{
    SkinValues values;
    values.title = words.of(again ? "skin.again.title" : "skin.title");
    values.body = words.of("skin.body");
    values.figure = figure_url("skin_look", session, look);
    values.figureText = values.body;
    if (!again)
        values.remainingText = words.of("skin.again");
    values.question = words.of("skin.question");
    if ((again ? session.state().skin_again : session.state().skin) == "sore") {
        values.caution = words.of(again ? "skin.again.hurt" : "skin.hurt.advice", {words.code(session.visit().clinic.phone)});
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
    const bool more = session.state().night < session.visit().nights;
    if (more) {
        values.title = words.of("finished.next.title", {words.number(session.state().night)});
        values.body = words.of("finished.next.body");
        const auto charger = [](const PackedItem& one) { return one.item == "charger"; };
        if (std::any_of(session.kit().packing.begin(), session.kit().packing.end(), charger))
            values.body += QLatin1Char('\n') + words.of("finished.next.charge");
    } else {
        values.title = words.of("finished.title");
        values.body = words.of("finished.body") + QLatin1Char('\n') + words.of("finished.keep");
    }
    values.recordName = words.of("finished.record", {words.code(session.state().record)});
    values.returnText = words.of("finished.return", {words.date(session.visit().return_by)});
    if (session.state().skin_at && session.state().skin_again.empty())
        values.skinText = words.of("finished.skin", {words.clock(*session.state().skin_at + skin_wait)});
    values.phone = words.code(session.visit().clinic.phone);
    values.hours = words.hours(session.visit().clinic);
    values.staffLabel = words.of("desk.open");
    values.mainLabel = words.of(more ? "finished.next.main" : "main.done");
    return values;
}

MessageValues fill_trouble(const Clinic& clinic, const Words& words, const Problem& problem)
{
    std::string kind = "read_only";
    for (const char* known : {"disk_full", "read_only", "no_place", "second_copy", "damaged", "sync"}) {
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
