// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "narration/spoken.h"

#include "answers/questions.h"
#include "base/hash.h"
#include "estimate/estimate.h"

#include <algorithm>
#include <map>

namespace evenfall {
namespace {

constexpr char16_t isolate_first = 0x2066, isolate_last = 0x2069;

bool is_mark(QChar c) { return (c >= QChar(isolate_first) && c <= QChar(isolate_last)) || c == QChar(0x200E) || c == QChar(0x200F); }

std::string plain(const QString& text)
{
    QString out;
    for (const QChar c : text) {
        if (!is_mark(c))
            out += c;
    }
    return out.simplified().toStdString();
}

/// A telephone number is isolated by Words, and so is a clock time: only what has nothing but digits
/// and dashes in it is said digit by digit.
std::string as_said(const QString& text)
{
    QString out, inside;
    bool isolated = false;
    for (const QChar c : text) {
        if (c == QChar(0x2066)) {
            isolated = true;
        } else if (c == QChar(isolate_last)) {
            const bool number = std::all_of(inside.begin(), inside.end(), [](QChar one) { return one.isDigit() || one == QLatin1Char('-') || one == QLatin1Char(' '); });
            for (const QChar one : inside) {
                if (!number)
                    out += one;
                else if (one.isDigit())
                    out += one + QStringLiteral(" ");
                else
                    out += QStringLiteral(", ");
            }
            inside.clear();
            isolated = false;
        } else if (!is_mark(c)) {
            (isolated ? inside : out) += c;
        }
    }
    return (out + inside).simplified().toStdString();
}

} // namespace

std::string SpokenUnit::key() const { return id + "-" + sha256_hex(words).substr(0, 8); }

void Teller::add(Spoken& out, const Text& text) const
{
    const QString said = words(text);
    if (said.trimmed().isEmpty())
        return;
    out.push_back({text.id, plain(said), as_said(said), text.args.empty() && text.own.empty()});
}

void Teller::add_own(Spoken& out, const std::string& id, const LocalText& text) const { add(out, Text{id, {}, text}); }

Spoken Teller::title_and_body(const std::string& base) const
{
    Spoken out;
    add(out, base + ".title");
    add(out, base + ".body");
    return out;
}

Spoken Teller::welcome() const { return title_and_body("welcome"); }

Spoken Teller::practice(bool over) const
{
    Spoken out;
    add(out, over ? "practice.over.title" : "practice.begin.title");
    add(out, over ? "practice.over.body" : "practice.begin.body");
    if (over)
        add(out, Text{"practice.over.caution", {TextArg{TextArg::Code{visit.clinic.phone}}}, {}});
    else
        add(out, "practice.begin.caution");
    return out;
}

Spoken Teller::first() const
{
    Spoken out;
    add(out, "first.title");
    add(out, "first.intro");
    for (const std::string& one : visit.ask_first)
        add(out, "first.condition." + one);
    return out;
}

Spoken Teller::call() const
{
    Spoken out;
    add(out, "call.title");
    add(out, "call.body");
    add(out, Text{"call.emergency", {TextArg{TextArg::Code{visit.clinic.emergency}}}, {}});
    return out;
}

Spoken Teller::bag() const
{
    Spoken out;
    add(out, "kit.title");
    add(out, "kit.body");
    return out;
}

Spoken Teller::evening_question(const EveningQuestion& question) const
{
    const std::string id = std::string(evening_prefix) + std::string(question.id);
    Spoken out;
    add(out, id + ".title");
    for (const std::string_view option : question.options) {
        if (!option.empty())
            add(out, id + "." + std::string(option));
    }
    return out;
}

Spoken Teller::step(const Step& step) const
{
    Spoken out;
    add(out, step.title);
    add(out, step.body);
    if (!step.right.empty()) {
        add(out, "step.right_when");
        add(out, step.right);
    }
    for (const Mistake& mistake : step.mistakes)
        add(out, mistake.text);
    if (practice_of && starts_recorder(kit, *practice_of, step))
        add(out, "practice.no_start");
    else if (practice_of && uses_tape(step))
        add(out, "practice.no_tape");
    add(out, step.caution);
    for (const Caution& caution : kit.cautions) {
        const bool here = caution.at == step.part || (caution.at == "tape" && step.tape_strips > 0);
        if (here && !step.part.empty())
            add_own(out, "kit.caution." + caution.at, caution.text);
    }
    return out;
}

Spoken Teller::help(const Step& step, const std::string& chosen) const
{
    Spoken out;
    if (chosen.empty())
        add(out, step.title);
    for (const Help& help : step.helps) {
        if (chosen.empty())
            add(out, help.question);
        else if (help.id == chosen)
            add(out, help.fix);
    }
    return out;
}

Spoken Teller::check() const
{
    Spoken out;
    add(out, "check.title");
    add(out, "check.body");
    for (const Part& part : kit.parts) {
        const TextArg name = part_name(part);
        add(out, Text{std::get<TextArg::Part>(name.value).id, {}, part.name});
        add(out, "check." + std::string(facts_of(part.kind).name) + ".expect");
    }
    return out;
}

Spoken Teller::light(const std::string& chosen) const
{
    Spoken out;
    if (practice_of) {
        add(out, "light.title");
        add(out, "practice.light");
        return out;
    }
    if (chosen.empty()) {
        add(out, "light.title");
        add(out, Text{"light.body", {TextArg{TextArg::Count{kit.start.to_light.count()}}}, {}});
    }
    for (const Light& light : kit.lights) {
        if (light.id == chosen)
            add(out, "light.then." + std::string(name_of(light.then)));
    }
    return out;
}

Spoken Teller::signal(const SignalTask& task) const
{
    const std::string id = std::string(signal_prefix) + std::string(task.id);
    Spoken out;
    add(out, id + ".title");
    add(out, id + ".body");
    return out;
}

Spoken Teller::bed() const
{
    Spoken out;
    add(out, "bed.title");
    add(out, Text{"bed.caution", {TextArg{TextArg::Code{visit.clinic.emergency}}}, {}});
    for (const char* line : {"bed.line.bathroom", "bed.line.phone", "bed.line.pets", "bed.line.tablet", "bed.line.touch"})
        add(out, line);
    return out;
}

Spoken Teller::night_help(const std::string& advice) const
{
    Spoken out;
    if (advice.empty()) {
        add(out, "night.help.title");
        for (const std::string_view id : night_help_ids)
            add(out, "night.help." + std::string(id));
    } else if (advice.starts_with("refit:")) {
        if (const Part* part = kit.part(advice.substr(6)); part) {
            const TextArg name = part_name(*part);
            add(out, Text{std::get<TextArg::Part>(name.value).id, {}, part->name});
            add(out, "night.refit." + std::string(facts_of(part->kind).name));
            add(out, "night.look_light");
        }
    } else {
        add(out, "night.help." + advice);
        add(out, Text{"night.help." + advice + ".advice", {TextArg{TextArg::Code{visit.clinic.emergency}}}, {}});
    }
    return out;
}

Spoken Teller::taking_off(const OffStep& step) const
{
    Spoken out;
    add(out, step.title);
    add(out, step.body);
    if (!step.caution.empty())
        add(out, step.caution);
    return out;
}

Spoken Teller::morning() const { return title_and_body("morning"); }

Spoken Teller::question(std::string_view id) const
{
    const std::string base = "q." + std::string(id);
    Spoken out;
    add(out, base + ".title");
    if (id == questions::compare) {
        for (const char* answer : {".better", ".usual", ".worse"})
            add(out, base + answer);
    }
    return out;
}

Spoken Teller::review() const { return title_and_body("review"); }

Spoken Teller::result(const std::string& verdict) const
{
    Spoken out;
    add(out, "result.sentence." + verdict);
    add(out, Text{"result.clinic", {TextArg{TextArg::Code{visit.clinic.phone}}}, {}});
    return out;
}

Spoken Teller::pack() const { return title_and_body("pack"); }

Spoken Teller::finished(bool more_nights) const
{
    Spoken out;
    if (more_nights) {
        add(out, "finished.next.body");
        return out;
    }
    for (const char* line : {"finished.title", "finished.body", "finished.keep"})
        add(out, line);
    return out;
}

Spoken Teller::skin(bool again, bool sore) const
{
    Spoken out;
    if (sore) {
        add(out, Text{again ? "skin.again.hurt" : "skin.hurt.advice", {TextArg{TextArg::Code{visit.clinic.phone}}}, {}});
        return out;
    }
    add(out, again ? "skin.again.title" : "skin.title");
    add(out, "skin.body");
    add(out, "skin.question");
    return out;
}

Spoken Teller::all(const Plan& plan) const
{
    std::map<std::string, SpokenUnit> units;
    const auto take = [&units](const Spoken& more) {
        for (const SpokenUnit& one : more)
            units.emplace(one.key(), one);
    };
    for (const Spoken& page : {welcome(), first(), call(), bag(), check(), light(""), bed(), night_help(""), skin(false, false), skin(false, true), skin(true, false), skin(true, true), practice(false), practice(true),
                               morning(), review(), pack(), finished(false), finished(true)})
        take(page);
    for (const OffStep& step : off_steps(kit))
        take(taking_off(step));
    for (const std::string_view id : questions::all)
        take(question(id));
    for (const Verdict verdict : {Verdict::enough, Verdict::borderline, Verdict::too_short, Verdict::unknown})
        take(result(std::string(verdict_word(verdict))));
    for (const EveningQuestion& question : evening_questions)
        take(evening_question(question));
    for (const SignalTask& task : signal_tasks)
        take(signal(task));
    for (const Light& one : kit.lights)
        take(light(one.id));
    take(Teller{visit, kit, words, &plan}.light(""));
    for (const Step& one : plan.steps) {
        take(step(one));
        take(Teller{visit, kit, words, &plan}.step(one));
        take(help(one, ""));
        for (const Help& help_of : one.helps)
            take(help(one, help_of.id));
    }
    for (const std::string_view id : night_help_ids) {
        if (id != "off") // has no advice of its own: it leads on to the part
            take(night_help(std::string(id)));
    }
    for (const Part& part : kit.parts) {
        if (part.kind != PartKind::recorder)
            take(night_help("refit:" + part.id));
    }
    Spoken out;
    for (auto& [key, unit] : units)
        out.push_back(std::move(unit));
    return out;
}

} // namespace evenfall
