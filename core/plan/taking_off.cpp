// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "plan/taking_off.h"

#include <algorithm>

namespace evenfall {
namespace {

Text plain(std::string id) { return {std::move(id), {}, {}}; }

bool any_part(const Kit& kit, bool (*is)(const Part&)) { return std::any_of(kit.parts.begin(), kit.parts.end(), is); }

bool is_turned_tube(const Part& part)
{
    return part.kind == PartKind::nasal_cannula && part.plug && part.plug->joint == Joint::twist;
}

} // namespace

const Part* hardest_plug(const Kit& kit)
{
    for (const Joint joint : {Joint::snap, Joint::twist, Joint::push}) {
        const auto found = std::find_if(kit.parts.begin(), kit.parts.end(), [&](const Part& part) {
            const bool pulled_to_stop = kit.start.by == StartBy::last_plug && part.kind == PartKind::finger_probe;
            return part.plug && part.plug->joint == joint && !pulled_to_stop && !is_turned_tube(part);
        });
        if (found != kit.parts.end())
            return &*found;
    }
    return nullptr;
}

std::vector<OffStep> off_steps(const Kit& kit)
{
    const std::string how = "off.stop." + std::string(name_of(kit.start.by));
    std::vector<OffStep> steps{{"stop", plain(how), plain(how + ".body")}};
    if (any_part(kit, [](const Part& part) { return part.tape_strips > 0; }))
        steps.push_back({"tape_off", plain("off.tape.title"), plain("off.tape.body"), plain("off.tape.caution")});
    if (const Part* part = hardest_plug(kit); part)
        steps.push_back({"unplug", plain("off.unplug.title"), plain("off.unplug." + std::string(name_of(part->plug->joint)) + ".body"), {}, part->plug->joint == Joint::push});
    steps.push_back({"rest_off", plain("off.rest.title"), plain("off.rest.body")});
    // The tube leaves the face before it leaves the recorder.
    if (any_part(kit, is_turned_tube))
        steps.push_back({"untwist", plain("off.untwist.title"), plain("off.untwist.body")});
    if (any_part(kit, [](const Part& part) { return part.kind == PartKind::effort_sensor; }))
        steps.push_back({"unsnap", plain("off.unsnap.title"), plain("off.unsnap.body"), {}, true});
    return steps;
}

std::optional<OffStep> off_step(const Kit& kit, std::string_view page)
{
    for (OffStep& step : off_steps(kit))
        if (step.page == page)
            return std::move(step);
    return std::nullopt;
}

} // namespace evenfall
