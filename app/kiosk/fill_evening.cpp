// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/fill.h"

#include "kiosk/figure_provider.h"

#include <algorithm>
#include <numeric>

namespace evenfall {
namespace {

QString url(const QString& id, const Session& session, const Look& look)
{
    return QStringLiteral("image://figure/%1?tone=%2&build=%3&hand=%4")
        .arg(id, look.tone, look.build,
             session.visit().hand == WritingHand::right ? QStringLiteral("right") : QStringLiteral("left"));
}

/// The button of a step says what the person confirms.
const char* main_text(const Step& step)
{
    if (step.stage == "plug")
        return "main.plugged";
    if (step.stage == "switch")
        return "main.switched";
    if (step.phase == Phase::put_on)
        return step.stage.starts_with("tape") ? "main.done" : "main.it_is_on";
    return step.phase == Phase::get_ready ? "main.done" : "main.next";
}

/// What the person cannot look at directly. Hands and legs need no mirror, and a plug is counted by
/// the thumb.
bool seen_in_mirror(const Session& session, const Step& step)
{
    const Part* part = session.kit().part(step.part);
    return part && step.phase == Phase::put_on && step.stage != "plug" && part->kind != PartKind::finger_probe && part->kind != PartKind::leg_electrodes;
}

QVariantList mistake_rows(const Session& session, const Words& words, const Look& look, const Step& step)
{
    QVariantList rows;
    for (const Mistake& mistake : step.mistakes) {
        ItemRow row = choice_row("", words(mistake.text));
        row.figure = figure_url(mistake.figure, session, look);
        rows << QVariant::fromValue(row);
    }
    return rows;
}

QString light_rgb(const std::string& colour)
{
    // The light as it looks in a dark room; the word stands beside it.
    if (colour == "white")
        return QStringLiteral("#fff4e0");
    if (colour == "green")
        return QStringLiteral("#009e73");
    if (colour == "amber")
        return QStringLiteral("#e69f00");
    if (colour == "red")
        return QStringLiteral("#d55e00");
    return colour == "blue" ? QStringLiteral("#56b4e9") : QStringLiteral("#000000");
}

} // namespace

ItemRow choice_row(const std::string& id, const QString& text)
{
    ItemRow row;
    row.id = QString::fromStdString(id);
    row.text = text;
    row.name = text;
    return row;
}

QString figure_url(const std::string& id, const Session& session, const Look& look, const std::string& part_id)
{
    const Part* part = session.kit().part(part_id);
    return figure_url(part ? marked(session.kit(), id, *part) : Depiction{id, {}, {}, {}}, session, look);
}

QString figure_url(const Depiction& what, const Session& session, const Look& look)
{
    const QString query = figure_query(what);
    return url(QString::fromStdString(what.id), session, look) + (query.isEmpty() ? QString() : QLatin1Char('&') + query);
}

QString person_url(const Session& session, const Look& look, const std::string& current)
{
    QStringList done, now, later;
    for (const Step& step : session.plan().steps) {
        if (step.layer.empty())
            continue;
        const QString layer = QString::fromStdString(step.layer);
        if (step.id == current)
            now << layer;
        else if (session.state().steps.contains(step.id))
            done << layer;
        else
            later << layer;
    }
    return figure_url(person_of(session.kit(), session.plan()), session, look) + QStringLiteral("&done=") + done.join(QLatin1Char(',')) +
           QStringLiteral("&current=") + now.join(QLatin1Char(',')) + QStringLiteral("&outline=") + later.join(QLatin1Char(','));
}

WelcomeValues fill_welcome(const Session& session, const Words& words, const Look& look)
{
    WelcomeValues values;
    values.title = words.of("welcome.title");
    values.body = words.of("welcome.body");
    values.mainLabel = words.of("main.next");
    values.staffLabel = words.of("desk.open");
    values.practiceLabel = words.of("practice.offer");
    if (const Instant start = session.planned_start(); start > session.now())
        values.startText = words.of("welcome.start_at", {words.clock(std::chrono::floor<std::chrono::duration<int, std::ratio<300>>>(start))});
    values.clinicName = QString::fromStdString(session.visit().clinic.name);
    values.codeLabel = words.of("welcome.code", {words.code(session.visit().code)});
    if (session.visit().nights > 1)
        values.nightLabel = words.of("welcome.night", {words.number(session.state().night), words.number(session.visit().nights)});
    for (const QString& language : Words::languages()) {
        LanguageRow row;
        row.code = language;
        row.name = Words::own_name(language);
        values.languages << QVariant::fromValue(row);
    }
    values.build = look.build;
    values.buildText = words.of("welcome.build");
    for (const char* build : {"slim", "medium", "broad"}) {
        ItemRow row = choice_row(build, words.of(std::string("welcome.build.") + build));
        row.figure = person_url(session, {look.tone, QString::fromLatin1(build)}, "");
        values.builds << QVariant::fromValue(row);
    }
    return values;
}

FirstValues fill_first(const Session& session, const Words& words)
{
    FirstValues values;
    values.title = words.of("first.title");
    values.intro = words.of("first.intro");
    for (const std::string& one : session.visit().ask_first)
        values.conditions << words.of("first.condition." + one);
    return values;
}

ListValues fill_evening(const Session& session, const Words& words, const EveningQuestion& question)
{
    const std::string id = std::string(evening_prefix) + std::string(question.id);
    const auto number = &question - evening_questions.data() + 1;
    ListValues values;
    values.progressText = words.of("q.progress", {words.number(number), words.number(std::ssize(evening_questions))});
    values.title = words.of(id + ".title");
    const auto found = session.state().answers.find(id);
    if (found != session.state().answers.end() && found->second.is_object() && found->second.contains("word"))
        values.chosen = QString::fromStdString(found->second["word"].get<std::string>());
    values.mainLabel = words.of("main.next");
    values.mainEnabled = !values.chosen.isEmpty();
    for (const std::string_view option : question.options)
        if (!option.empty())
            values.items << QVariant::fromValue(choice_row(std::string(option), words.of(id + "." + std::string(option))));
    return values;
}

std::optional<std::chrono::seconds> signal_left(const Session& session, const SignalTask& task)
{
    const std::vector<SignalNote>& notes = session.state().signal_notes;
    if (notes.empty() || notes.back().task != task.id || notes.back().ended)
        return std::nullopt;
    const auto gone = std::chrono::floor<std::chrono::seconds>(session.now() - notes.back().started);
    return std::clamp(std::chrono::seconds(task.seconds) - gone, std::chrono::seconds(0), std::chrono::seconds(task.seconds));
}

SignalValues fill_signal(const Session& session, const Words& words, const Look& look, const SignalTask& task)
{
    const std::string id = std::string(signal_prefix) + std::string(task.id);
    const std::optional<std::chrono::seconds> left = signal_left(session, task);
    SignalValues values;
    values.title = words.of(id + ".title");
    values.body = words.of(id + ".body");
    values.figure = figure_url(task.id == "finger" ? "probe_place" : "belt_breath", session, look);
    values.figureText = values.title;
    values.secondsText = words.number(left.value_or(std::chrono::seconds(task.seconds)).count());
    values.unitText = words.of("unit.seconds");
    values.runningText = left ? words.of("signal.now") : QString();
    values.mainLabel = words.of(left ? "signal.running" : "signal.start");
    values.mainEnabled = !left;
    values.skipLabel = words.of("signal.skip");
    return values;
}

CallValues fill_call(const Session& session, const Words& words, bool may_go_on)
{
    const Clinic& clinic = session.visit().clinic;
    CallValues values;
    values.title = words.of("call.title");
    values.body = words.of("call.body");
    values.phone = words.code(clinic.phone);
    values.hours = words.hours(clinic);
    values.afterHoursPhone = words.code(clinic.phone_outside_hours);
    values.afterHoursText = words.of("call.outside_hours");
    values.emergencyText = words.of("call.emergency", {words.code(clinic.emergency)});
    if (may_go_on)
        values.goOnLabel = words.of("call.go_on");
    return values;
}

ListValues fill_bag(const Session& session, const Words& words, const Look& look)
{
    ListValues values;
    values.title = words.of("kit.title");
    values.body = words.of("kit.body");
    values.mainLabel = words.of("kit.all_here");
    values.secondLabel = words.of("kit.missing");
    for (size_t i = 0; i < session.kit().packing.size(); ++i) {
        const PackedItem& item = session.kit().packing[i];
        ItemRow row;
        row.id = QString::number(i);
        if (item.count > 1)
            row.count = QChar(0x00D7) + words.number(item.count);
        row.done = session.state().items.contains(std::to_string(i));
        if (const Part* part = session.kit().part(item.part)) {
            row.name = words.part(*part);
            row.figure = figure_url(item_figure(part->kind), session, look, part->id);
        } else if (!item.item.empty()) {
            row.name = words.of("item." + item.item);
            if (const std::string figure = item_figure(item.item); !figure.empty())
                row.figure = figure_url(figure, session, look);
        } else {
            row.name = words.own(item.name);
        }
        values.items << QVariant::fromValue(row);
    }
    return values;
}

StepValues fill_step(const Session& session, const Words& words, const Look& look, const Step& step)
{
    StepValues values;
    values.label = words(step.label);
    values.title = words(step.title);
    values.body = words(step.body);
    values.rightWhen = words(step.right);
    values.caution = words(step.caution);
    for (const Caution& caution : session.kit().cautions) {
        const bool here = caution.at == step.part || (caution.at == "tape" && step.tape_strips > 0);
        if (here && !step.part.empty())
            values.caution += (values.caution.isEmpty() ? QString() : QStringLiteral(" ")) + words.own(caution.text);
    }
    if (session.is_practice()) {
        const char* id = session.starts_recorder(step) ? "practice.no_start" : uses_tape(step) ? "practice.no_tape" : nullptr;
        if (id)
            values.caution = words.of(id) + (values.caution.isEmpty() ? QString() : QStringLiteral(" ")) + values.caution;
    }
    values.why = words(step.why);
    values.figure = figure_url(depict(session.kit(), session.plan(), step), session, look);
    values.figureText = values.title + QStringLiteral(". ") + values.body;
    values.personFigure = person_url(session, look, step.id);
    values.mistakes = mistake_rows(session, words, look, step);
    values.mainLabel = words.of(session.is_practice() && session.starts_recorder(step) ? "main.next" : main_text(step));
    values.mirrorOffered = session.visit().options.mirror && seen_in_mirror(session, step);
    // A belt is closed at the end of a breath out.
    if (const Part* part = session.kit().part(step.part); part && part->kind == PartKind::effort_belt && step.stage == "wrap")
        values.breathText = words.of("step.breath_guide");
    if (session.is_practice())
        return values; // by day there is no time to keep

    const Instant bed = session.expected_bed();
    // Within ten minutes of the plan is on time; nobody is hurried for less (our own judgement).
    const bool late = bed > session.planned_bed() + std::chrono::minutes(10);
    const bool early = bed < session.planned_bed() - std::chrono::minutes(10);
    const auto rounded = std::chrono::round<std::chrono::duration<int, std::ratio<300>>>(bed);
    values.paceText = words.of(late ? "pace.later" : early ? "pace.early" : "pace.on_time", {words.clock(rounded)});
    return values;
}

HelpValues fill_help(const Session& session, const Words& words, const Look& look, const Step& step, const std::string& chosen)
{
    HelpValues values;
    values.title = words(step.title);
    values.figure = figure_url(depict(session.kit(), session.plan(), step), session, look);
    values.mistakes = mistake_rows(session, words, look, step);
    values.phone = words.code(session.visit().clinic.phone);
    values.hours = words.hours(session.visit().clinic);
    for (const Help& help : step.helps) {
        const ItemRow row = choice_row(help.id, words(help.question));
        values.options << QVariant::fromValue(row);
        if (help.id == chosen) {
            values.question = row.text;
            values.answer = words(help.fix);
        }
    }
    return values;
}

ListValues fill_check(const Session& session, const Words& words, const Look& look)
{
    ListValues values;
    values.title = words.of("check.title");
    values.body = words.of("check.body");
    values.mainLabel = words.of("check.all_right");
    for (const Part& part : session.kit().parts) {
        ItemRow row;
        row.id = QString::fromStdString(part.id);
        row.name = words.part(part);
        row.expect = words.of("check." + std::string(facts_of(part.kind).name) + ".expect");
        row.done = session.state().checked.contains(part.id);
        row.figure = figure_url(worn(session.kit(), session.plan(), part), session, look);
        values.mainEnabled = values.mainEnabled && row.done;
        values.items << QVariant::fromValue(row);
    }
    return values;
}

ListValues fill_light(const Session& session, const Words& words)
{
    ListValues values;
    values.title = words.of("light.title");
    values.body = words.of("light.body", {words.number(session.kit().start.to_light.count())});
    values.mainLabel = words.of("light.recording_button");
    values.chosen = QString::fromStdString(session.state().light);
    values.mainEnabled = false;
    for (const Light& light : session.kit().lights) {
        LightRow row;
        row.id = QString::fromStdString(light.id);
        row.name = words(light_text(light));
        row.blinks = light.blinks;
        row.onMs = static_cast<int>(light.on.count());
        row.offMs = static_cast<int>(light.off.count());
        row.pauseMs = static_cast<int>(light.pause.count());
        row.steady = light.blinks == 0 && light.colour != "off";
        row.colorName = light.colour == "off" ? QString() : words.of("colour." + light.colour);
        row.color = light_rgb(light.colour);
        values.items << QVariant::fromValue(row);
        if (light.id == session.state().light) {
            values.answer = words.of("light.then." + std::string(name_of(light.then)));
            values.mainEnabled = light.meaning == Light::Meaning::recording;
        }
    }
    if (session.is_practice()) {
        values.answer = words.of("practice.light");
        values.mainLabel = words.of("main.next");
        values.mainEnabled = true;
    }
    return values;
}

MessageValues fill_practice(const Session& session, const Words& words, const Look& look, bool over)
{
    MessageValues values;
    if (!over)
        values.figure = figure_url("practice", session, look);
    values.title = words.of(over ? "practice.over.title" : "practice.begin.title");
    values.body = words.of(over ? "practice.over.body" : "practice.begin.body");
    values.caution = over ? words.of("practice.over.caution", {words.code(session.visit().clinic.phone)}) : words.of("practice.begin.caution");
    values.mainLabel = words.of(over ? "practice.over.main" : "main.next");
    return values;
}

BedValues fill_bed(const Session& session, const Words& words, bool on_battery)
{
    BedValues values;
    values.title = words.of("bed.title");
    for (const char* line : {"bed.line.bathroom", "bed.line.phone", "bed.line.pets", on_battery ? "bed.line.plug_in" : "bed.line.tablet", "bed.line.touch"})
        values.lines << words.of(line);
    values.caution = words.of("bed.caution", {words.code(session.visit().clinic.emergency)});
    values.mainLabel = words.of("bed.main");
    return values;
}

} // namespace evenfall
