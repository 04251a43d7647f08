// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "plan/depict.h"

#include <algorithm>
#include <span>

namespace evenfall {
namespace {

constexpr int most_strips_drawn = 8; // as the drawing has room

void mark(Depiction& drawing, const std::string& slot, const Mark& with)
{
    drawing.counts[slot] = with.count;
    if (with.shape == Mark::Shape::dots)
        drawing.dots.insert(slot);
}

/// The steps that are done when `step` comes; all where none is given.
std::span<const Step> before(const Plan& plan, const Step* step)
{
    const auto end = std::find_if(plan.steps.begin(), plan.steps.end(),
                                  [step](const Step& one) { return step && one.id == step->id; });
    return {plan.steps.begin(), end};
}

/// What is on the body before `step`, or at the end, by its layers of the whole person.
std::vector<std::string> worn_before(const Plan& plan, const Step* step)
{
    std::vector<std::string> layers;
    for (const Step& one : before(plan, step))
        if (!one.layer.empty())
            layers.push_back(one.layer);
    return layers;
}

/// The layer of the whole person that shows this part; empty where it has none.
std::string layer_of(const Plan& plan, const Part& part)
{
    const auto found = std::find_if(plan.steps.begin(), plan.steps.end(),
                                    [&part](const Step& one) { return one.part == part.id && !one.layer.empty(); });
    return found == plan.steps.end() ? "" : found->layer;
}

constexpr int inset_room = 4; // from this count on the port stands under the corner at the right

/// The ports that stand in one row with this plug's own, because they are on the same edge, joined in
/// the same way and marked with the same shape, and the plugs that are in them by then: before `step`,
/// or all but this part's own. The stub of the nose tube stands apart and takes no plug (stub,
/// tube_in). Where both edges have ports, the recorder is seen small: which edge it is (edge_top, edge_bottom), and the
/// plugs in the other one (other_<count>).
std::vector<std::string> ports_seen(const Kit& kit, const Plan& plan, const Part& part, const Step* step)
{
    std::vector<std::string> layers;
    const Port& own = *kit.port(part.plug->port);
    const auto in_row = [&own](const Port& port) {
        return port.edge == own.edge && port.joint == own.joint && port.mark.shape == own.mark.shape;
    };
    bool both_edges = false;
    for (const Port& port : kit.ports)
        if (kit.takes_tube(port)) {
            if (port.edge == own.edge)
                layers.push_back("stub");
        } else {
            both_edges = both_edges || port.edge != own.edge;
            if (in_row(port))
                layers.push_back("port_" + std::to_string(port.mark.count));
        }
    if (own.edge == Port::Edge::top)
        layers.push_back("light");
    if (both_edges) {
        layers.push_back(own.edge == Port::Edge::top ? "edge_top" : "edge_bottom");
        layers.push_back(own.mark.smooth() || own.mark.count >= inset_room ? "rows_left" : "rows_right");
    }
    for (const Step& one : before(plan, step)) {
        const Part* other = kit.part(one.part);
        if (one.stage != "plug" || other == &part)
            continue;
        const Port& port = *kit.port(other->plug->port);
        if (kit.takes_tube(port) && port.edge == own.edge)
            layers.push_back("tube_in");
        else if (kit.takes_tube(port))
            continue;
        else if (in_row(port))
            layers.push_back("in_" + std::to_string(port.mark.count));
        else if (port.edge != own.edge)
            layers.push_back("other_" + std::to_string(port.mark.count));
    }
    return layers;
}

/// The ports of the recorder's upper edge that this kit uses, as its drawing as a whole has them.
std::vector<std::string> upper_ports(const Kit& kit)
{
    std::vector<std::string> layers;
    for (const Port& port : kit.ports)
        if (port.edge == Port::Edge::top && !port.spare && !kit.takes_tube(port))
            layers.push_back("port_" + std::to_string(port.mark.count));
    return layers;
}

/// The same with the plugs that are in before `step`, or all, and the nose tube on its stub.
std::vector<std::string> recorder_before(const Kit& kit, const Plan& plan, const Step* step)
{
    std::vector<std::string> layers = upper_ports(kit);
    for (const Step& one : before(plan, step)) {
        const Part* part = kit.part(one.part);
        if (one.stage != "plug")
            continue;
        const Port& port = *kit.port(part->plug->port);
        if (part->kind == PartKind::nasal_cannula)
            layers.push_back("tube_in");
        else if (port.edge == Port::Edge::top)
            layers.push_back("in_" + std::to_string(port.mark.count));
    }
    return layers;
}

Depiction depict_stop(const Kit& kit, const Plan& plan)
{
    switch (kit.start.by) {
    case StartBy::switch_on: return {"switch_off", {}, {}, recorder_before(kit, plan, nullptr)};
    case StartBy::set_time: return {"stops_itself", {}, {}, recorder_before(kit, plan, nullptr)};
    case StartBy::last_plug: break;
    }
    Depiction out{"plug_out", {}, {}, {}};
    for (const Part& part : kit.parts) {
        if (part.kind == PartKind::finger_probe && part.plug) {
            out = marked(kit, out.id, part);
            out.layers = ports_seen(kit, plan, part, nullptr);
        }
    }
    return out;
}

Depiction depict_unplug(const Kit& kit, const Plan& plan, const std::string& page)
{
    const Part* part = plug_of(kit, page);
    if (!part)
        return {};
    Depiction out = marked(kit, page, *part); // the drawings are called as the pages
    out.layers = ports_seen(kit, plan, *part, nullptr);
    for (std::string& layer : out.layers)
        if (layer.starts_with("in_"))
            layer = "out_" + layer.substr(3);
        else if (layer == "tube_in" && !off_step(kit, "untwist"))
            layer = "tube_out";
    return out;
}

Depiction depict_rest(const Plan& plan)
{
    Depiction out{"rest_off", {}, {}, {}};
    for (const std::string& layer : worn_before(plan, nullptr))
        if (layer == "belt_abdomen" || layer.starts_with("recorder_")) // the drawing itself opens a chest belt
            out.layers.push_back(layer);
    return out;
}

Depiction depict_unsnap(const Kit& kit, const Plan& plan)
{
    Depiction out{"sensor_unsnap", {}, {}, {}};
    for (const Part& part : kit.parts) {
        if (part.kind != PartKind::effort_sensor)
            continue;
        if (out.counts.empty())
            out = marked(kit, out.id, part); // one is drawn large, all of them small
        out.layers.push_back(layer_of(plan, part));
    }
    return out;
}

} // namespace

Depiction depict(const Kit& kit, const Plan& plan, const OffStep& step)
{
    if (step.page == "stop")
        return depict_stop(kit, plan);
    if (step.page == "tape_off")
        return {"tape_off_low", {}, {}, {}};
    if (step.page == "unplug" || step.page == "unplug_snap")
        return depict_unplug(kit, plan, step.page);
    if (step.page == "untwist")
        return {"tube_untwist", {}, {}, upper_ports(kit)};
    return step.page == "unsnap" ? depict_unsnap(kit, plan) : depict_rest(plan);
}

Depiction depict(const Kit& kit, const Plan& plan, const Step& step)
{
    const Part* part = kit.part(step.part);
    Depiction out{step.figure, {}, {}, {}};
    if (part)
        out = marked(kit, step.figure, *part);
    else if (step.id == "check")
        out = person_of(kit, plan);
    if (step.id == "ready.tape")
        out.counts["strips"] = std::min(most_strips_drawn, plan.tape_strips);
    if (step.id == "check") {
        // Seen in a mirror; the same person beside the other steps has none round it.
        out.layers = worn_before(plan, nullptr);
        out.layers.insert(out.layers.begin(), "mirror");
    }
    if (part && part->plug && step.stage == "plug" && part->kind != PartKind::nasal_cannula) {
        out.layers = ports_seen(kit, plan, *part, &step);
        if (std::string layer = layer_of(plan, *part); !layer.empty())
            out.layers.push_back(std::move(layer));
    }
    if (part && (step.stage == "wrap" || step.stage == "wear" || part->kind == PartKind::body_position_sensor) && step.stage != "plug") {
        // Nobody is to think that it came off again.
        for (std::string& layer : worn_before(plan, &step))
            out.layers.push_back(std::move(layer));
    }
    if ((part && part->kind == PartKind::nasal_cannula && step.stage == "plug") || step.id.starts_with("start.") || step.id == "light")
        out.layers = recorder_before(kit, plan, &step);
    if (part && part->kind == PartKind::effort_sensor && !step.layer.empty())
        out.layers.push_back(step.layer); // on which of two belts that look alike
    if (part && part->kind == PartKind::nasal_cannula && step.stage == "tape") {
        // What sits on the tube by then is seen to stay there.
        for (const Step& one : before(plan, &step))
            if (one.layer == "breath")
                out.layers.push_back(one.layer);
    }
    return out;
}

Depiction depict_getting_up(const Plan& plan) { return {"free_cables", {}, {}, worn_before(plan, nullptr)}; }

Depiction marked(const Kit& kit, std::string figure, const Part& part)
{
    Depiction out{std::move(figure), {}, {}, {}};
    for (const char* slot : {"mark", "mark-plug", "mark-port"})
        mark(out, slot, part.mark);
    if (part.kind == PartKind::recorder)
        out.layers = upper_ports(kit);
    if (part.kind == PartKind::body_position_sensor && part.plug)
        out.layers.push_back("cable"); // without it it would be taken for the recorder
    return out;
}

Depiction worn(const Kit& kit, const Plan& plan, const Part& part)
{
    Depiction out = marked(kit, "worn", part);
    std::erase(out.layers, "cable"); // it is plugged in by then
    if (std::string layer = layer_of(plan, part); !layer.empty())
        out.layers.push_back(std::move(layer));
    return out;
}

Depiction person_of(const Kit& kit, const Plan& plan)
{
    Depiction out{"person", {}, {}, {}};
    for (const Step& step : plan.steps) {
        const Part* part = kit.part(step.part);
        if (part && !step.layer.empty() && !part->mark.smooth())
            mark(out, "mark-" + step.layer, part->mark);
    }
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
