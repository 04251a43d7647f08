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

const Part* plug_of(const Kit& kit, std::string_view page)
{
    const auto first = [&kit](Joint joint) -> const Part* {
        const auto found = std::find_if(kit.parts.begin(), kit.parts.end(), [&](const Part& part) {
            const bool pulled_to_stop = kit.start.by == StartBy::last_plug && part.kind == PartKind::finger_probe;
            return part.plug && part.plug->joint == joint && !pulled_to_stop && !is_turned_tube(part);
        });
        return found == kit.parts.end() ? nullptr : &*found;
    };
    if (page == "unplug_snap")
        return first(Joint::snap);
    const Part* turned = first(Joint::twist); // the one of the two that asks more of a hand
    return turned ? turned : first(Joint::push);
}

std::vector<OffStep> off_steps(const Kit& kit)
{
    const std::string how = "off.stop." + std::string(name_of(kit.start.by));
    std::vector<OffStep> steps{{"stop", plain(how), plain(how + ".body")}};
    if (any_part(kit, [](const Part& part) { return part.tape_strips > 0; }))
        steps.push_back({"tape_off", plain("off.tape.title"), plain("off.tape.body"), plain("off.tape.caution")});
    const bool snapped = plug_of(kit, "unplug_snap") != nullptr;
    if (snapped)
        steps.push_back({"unplug_snap", plain("off.unplug.title"), plain("off.unplug.snap.body")});
    if (const Part* part = plug_of(kit, "unplug"); part)
        steps.push_back({"unplug", plain(snapped ? "off.unplug.other.title" : "off.unplug.title"),
                         plain("off.unplug." + std::string(name_of(part->plug->joint)) + ".body"), {}, part->plug->joint == Joint::push});
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
