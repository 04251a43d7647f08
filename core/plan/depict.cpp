// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "plan/depict.h"

#include <algorithm>
#include <iterator>

namespace evenfall {
namespace {

constexpr int most_strips_drawn = 8; // as the drawing has room

std::map<std::string, int> marks(const Part& part)
{
    const int ridges = part.mark.ridges;
    return {{"mark", ridges}, {"mark-plug", ridges}, {"mark-port", ridges}};
}

/// The ports in one row with this plug's own: joined in the same way, so that they could be mistaken
/// for it. The stub of the nose tube stands apart and takes no plug.
std::vector<std::string> ports_beside(const Kit& kit, Joint joint)
{
    std::vector<std::string> layers;
    for (const Port& port : kit.ports) {
        const bool tube = std::any_of(kit.parts.begin(), kit.parts.end(), [&](const Part& part) {
            return part.kind == PartKind::nasal_cannula && part.plug && part.plug->port == port.id;
        });
        if (port.joint == joint && !tube)
            layers.push_back("port_" + std::to_string(port.mark.ridges));
    }
    return layers;
}

/// The plugs of that row that are in by then: before `step`, or all but this part's own.
std::vector<std::string> plugs_in(const Kit& kit, const Plan& plan, const Part& part, const Step* step)
{
    std::vector<std::string> layers;
    for (const Step& one : plan.steps) {
        if (step && one.id == step->id)
            break;
        const Part* other = kit.part(one.part);
        if (one.stage == "plug" && other != &part && other->kind != PartKind::nasal_cannula && other->plug->joint == part.plug->joint)
            layers.push_back("in_" + std::to_string(other->mark.ridges));
    }
    return layers;
}

void append(std::vector<std::string>& to, std::vector<std::string> more)
{
    to.insert(to.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

} // namespace

Depiction depict(const Kit& kit, const Plan& plan, const Step& step)
{
    Depiction out{step.figure, {}, {}};
    const Part* part = kit.part(step.part);
    if (part)
        out.ridges = marks(*part);
    if (step.id == "ready.tape")
        out.ridges["strips"] = std::min(most_strips_drawn, plan.tape_strips);
    if (step.id == "check") {
        // Seen in a mirror; the same person beside the other steps has none round it.
        out.layers.push_back("mirror");
        for (const Step& one : plan.steps)
            if (!one.layer.empty())
                out.layers.push_back(one.layer);
    }
    if (part && part->plug && step.stage == "plug" && part->kind != PartKind::nasal_cannula) {
        out.layers = ports_beside(kit, part->plug->joint);
        append(out.layers, plugs_in(kit, plan, *part, &step));
        const auto worn = std::find_if(plan.steps.begin(), plan.steps.end(), [&](const Step& one) { return one.part == part->id && !one.layer.empty(); });
        if (worn != plan.steps.end())
            out.layers.push_back(worn->layer);
    }
    if (part && part->kind == PartKind::nasal_cannula && step.stage == "tape") {
        // What sits on the tube by then is seen to stay there.
        for (const Step& one : plan.steps) {
            if (one.id == step.id)
                break;
            if (one.layer == "breath")
                out.layers.push_back(one.layer);
        }
    }
    return out;
}

Depiction depict_stop(const Kit& kit, const Plan& plan)
{
    switch (kit.start.by) {
    case StartBy::switch_on: return {"switch_off", {}, {}};
    case StartBy::set_time: return {"stops_itself", {}, {}};
    case StartBy::last_plug: break;
    }
    Depiction out{"plug_out", {}, {}};
    for (const Part& part : kit.parts) {
        if (part.kind == PartKind::finger_probe && part.plug) {
            out.ridges = marks(part);
            out.layers = ports_beside(kit, part.plug->joint);
            append(out.layers, plugs_in(kit, plan, part, nullptr));
        }
    }
    return out;
}

Depiction depict_rest(const Kit& kit)
{
    Depiction out{"rest_off", {}, {}};
    long belts = 0;
    for (const Part& part : kit.parts) {
        belts += part.kind == PartKind::effort_belt ? 1 : 0;
        if (part.kind == PartKind::breath_sensor)
            out.layers.push_back("breath");
    }
    // One belt is being opened in the drawing.
    if (belts > 1)
        out.layers.push_back("belt_abdomen");
    return out;
}

std::string item_figure(PartKind kind)
{
    switch (kind) {
    case PartKind::effort_belt: return "item_belt";
    case PartKind::effort_sensor: return "item_sensor";
    case PartKind::recorder: return "item_recorder";
    case PartKind::nasal_cannula: return "item_cannula";
    case PartKind::breath_sensor: return "item_breath";
    case PartKind::finger_probe: return "item_probe";
    case PartKind::ecg_electrodes: return "item_ecg";
    case PartKind::body_position_sensor: return "item_position";
    case PartKind::snore_microphone: return "item_snore";
    case PartKind::leg_electrodes: return "item_leg";
    }
    return "";
}

std::string item_figure(const std::string& item)
{
    if (item == "tape_roll")
        return "item_tape";
    if (item == "charger")
        return "item_charger";
    if (item == "return_box")
        return "return_box";
    return item == "pouch" ? "pack_bag" : "";
}

Text light_text(const Light& light)
{
    const auto with = [](const char* id, std::vector<TextArg> args) { return Text{id, std::move(args), {}}; };
    if (light.colour == "off")
        return with("light.look.dark", {});
    const TextArg colour{TextArg::Word{"colour." + light.colour}};
    if (light.blinks == 0)
        return with("light.look.steady", {colour});
    if (light.pause.count() == 0)
        return with(light.on >= std::chrono::seconds(1) ? "light.look.long" : "light.look.even", {colour});
    if (light.blinks == 1)
        return with("light.look.one_short", {colour});
    return with("light.look.short", {colour, TextArg{TextArg::Count{light.blinks}}});
}

} // namespace evenfall
