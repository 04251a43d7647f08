// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "answers/pages.h"

#include "answers/evening.h"
#include "answers/questions.h"
#include "plan/taking_off.h"

#include <algorithm>
#include <array>

namespace evenfall {
namespace {

// From these there is no way back: the evening is over, or the answers are in.
constexpr std::array<std::string_view, 7> one_way{"welcome", "night", "morning", "result", "stop", "finished", "entered"};

} // namespace

Pages::Pages(const Plan& plan, const Kit& kit, const VisitOptions& options)
{
    pages_ = {"welcome", "first", "bag"};
    if (options.evening_questions)
        for (const EveningQuestion& question : evening_questions)
            pages_.push_back(std::string(evening_prefix) + std::string(question.id));
    for (const Step& step : plan.steps)
        pages_.push_back(step.id);
    if (options.signal_check) {
        const bool probe = std::any_of(kit.parts.begin(), kit.parts.end(), [](const Part& one) { return one.kind == PartKind::finger_probe; });
        for (const SignalTask& task : signal_tasks)
            if (task.id != "finger" || probe)
                pages_.push_back(std::string(signal_prefix) + std::string(task.id));
    }
    pages_.insert(pages_.end(), {"bed", "night", "morning"});
    for (const std::string_view question : questions::all)
        pages_.push_back(std::string(question_prefix) + std::string(question));
    pages_.insert(pages_.end(), {"review", "result"});
    for (const OffStep& step : off_steps(kit))
        pages_.push_back(step.page);
    pages_.insert(pages_.end(), {"skin", "pack", "finished"});
}

Pages Pages::of_staff()
{
    Pages pages;
    for (const std::string_view question : questions::all)
        pages.pages_.push_back(std::string(question_prefix) + std::string(question));
    pages.pages_.insert(pages.pages_.end(), {"review", "entered"});
    return pages;
}

bool Pages::has(std::string_view page) const { return std::find(pages_.begin(), pages_.end(), page) != pages_.end(); }

std::string Pages::after(std::string_view page) const
{
    const auto found = std::find(pages_.begin(), pages_.end(), page);
    if (found == pages_.end())
        return pages_.front();
    return std::next(found) == pages_.end() ? *found : *std::next(found);
}

std::string Pages::before(std::string_view page) const
{
    const auto found = std::find(pages_.begin(), pages_.end(), page);
    const bool stays = std::find(one_way.begin(), one_way.end(), page) != one_way.end();
    if (found == pages_.end() || found == pages_.begin() || stays)
        return "";
    return *std::prev(found);
}

Pages::Stretch Pages::stretch_of(std::string_view page) const
{
    const auto here = std::find(pages_.begin(), pages_.end(), page);
    const auto night = std::find(pages_.begin(), pages_.end(), "night");
    if (night == pages_.end())
        return Stretch::morning; // staff's pages
    if (here == night)
        return Stretch::night;
    return here < night ? Stretch::evening : Stretch::morning;
}

} // namespace evenfall
