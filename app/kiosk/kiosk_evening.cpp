// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/kiosk.h"

#include "journal/kinds.h"

#include <algorithm>

namespace evenfall {

// What the evening has of its own: help at a step, the questions before it, the signal check.

void Kiosk::toggle(const QString& id)
{
    const std::string item = id.toStdString();
    const NightState& state = session_->state();
    const auto tick = [&](std::string_view kind, const std::set<std::string>& ticks) {
        if (ticks.contains(item))
            say(kinds::not_yet, item, Json(kind).dump());
        else
            say(kind, item);
    };
    if (page() == QLatin1String("bag"))
        tick(kinds::item, state.items);
    else if (page() == QLatin1String("pack"))
        tick(kinds::packed, state.packed);
    else if (page() == QLatin1String("check"))
        tick(kinds::check, state.checked);
    fill();
}

void Kiosk::chooseBuild(const QString& id)
{
    say(kinds::build, id.toStdString());
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

const Step* Kiosk::step_to_help(const std::string& part) const
{
    const Step* current = current_step();
    if (part.empty())
        return current && !current->helps.empty() ? current : nullptr;
    const std::vector<Step>& steps = session_->plan().steps;
    const auto found = std::find_if(steps.begin(), steps.end(), [&part](const Step& step) {
        return step.part == part && step.phase == Phase::put_on && !step.helps.empty();
    });
    return found == steps.end() ? nullptr : &*found;
}

void Kiosk::openHelp(const QString& part)
{
    help_chosen_.clear();
    help_step_ = step_to_help(part.toStdString());
    over_ = help_step_ ? Over::help : Over::call;
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

const SignalTask* Kiosk::task_in_hand() const
{
    const std::string page = session_ && over_ == Over::nothing ? session_->state().page : "";
    return page.starts_with(signal_prefix) ? signal_task(std::string_view(page).substr(signal_prefix.size())) : nullptr;
}

const EveningQuestion* Kiosk::evening_question_in_hand() const
{
    const std::string page = session_ && over_ == Over::nothing ? session_->state().page : "";
    return page.starts_with(evening_prefix) ? evening_question(std::string_view(page).substr(evening_prefix.size())) : nullptr;
}

void Kiosk::end_signal(const SignalTask& task, std::string_view how)
{
    tick_.stop();
    // What was never begun is nothing to write down.
    if (!signal_left(*session_, task) || say(kinds::signal, task.id, Json(how).dump()))
        go_after();
}

void Kiosk::signal_ticked()
{
    const SignalTask* task = task_in_hand();
    const auto left = task ? signal_left(*session_, *task) : std::nullopt;
    if (!left)
        tick_.stop();
    else if (*left == std::chrono::seconds(0))
        end_signal(*task, "done");
    fill();
}

} // namespace evenfall
