// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "plan/depict.h"

namespace evenfall {

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
