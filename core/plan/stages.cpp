// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "plan/stages.h"

namespace evenfall {
namespace {

using std::chrono::seconds;

// Our own estimates for one person alone.
constexpr seconds plug_time{30};
constexpr seconds tube_time{45};

seconds share(seconds whole, int part, int of) { return whole * part / of; }

std::string on_hand(std::string texts, WritingHand writes_with)
{
    // The probe goes on the hand the person does not write with (common practice, no source).
    return texts + (writes_with == WritingHand::right ? ".left" : ".right");
}

Stage plug_stage(const Part& part, WritingHand writes_with)
{
    const std::string joint(name_of(part.plug->joint));
    Stage stage{"plug", "plug." + joint, "plug_match", "", plug_time, 2, 0, true, false, 2};
    if (part.mark.smooth())
        stage.texts += ".smooth";
    if (part.plug->joint == Joint::snap)
        stage.figure = "snap_press";
    if (part.kind == PartKind::nasal_cannula) {
        stage.texts = "nasal_cannula.join." + joint;
        stage.figure = part.plug->joint == Joint::twist  ? "tube_twist"
                       : part.plug->joint == Joint::snap ? "tube_snap"
                                                         : "tube_push";
        stage.seconds = tube_time;
    }
    if (part.kind == PartKind::finger_probe) {
        stage.texts = on_hand("finger_probe.plug", writes_with);
        stage.figure = "probe_plug";
        stage.layer = "cable_probe";
        stage.hands = 1;
        stage.has_caution = true;
    }
    return stage;
}

} // namespace

std::vector<Stage> stages_of(const Part& part, WritingHand writes_with)
{
    std::vector<Stage> stages;
    const seconds all = part.seconds;
    const int tape = part.tape_strips;
    switch (part.kind) {
    case PartKind::effort_belt: {
        const std::string belt = "belt_" + part.where;
        stages.push_back({"wrap", "effort_belt." + part.where + ".wrap", belt, belt, all, 2, tape, true, false, 3, {"belt_twisted"}});
        break;
    }
    case PartKind::effort_sensor:
        stages.push_back({"snap", "effort_sensor.snap", "sensor_snap", "sensor_" + part.where, all, 2, tape, true, false, 2});
        break;
    case PartKind::recorder: {
        const std::string worn = "recorder_" + part.where;
        stages.push_back({"wear", "recorder." + part.where + ".wear", worn, worn, all, 2, tape, true, false, 2});
        break;
    }
    case PartKind::nasal_cannula:
        stages.push_back({"prongs", "nasal_cannula.prongs", "cannula_prongs", "cannula", share(all, 4, 13), 2, 0, true, false, 3, {"prongs_flipped"}});
        stages.push_back({"ears", "nasal_cannula.ears", "cannula_ears", "", share(all, 3, 13), 2, 0, false, true, 2, {"tube_front_neck"}});
        stages.push_back({"chin", "nasal_cannula.chin", "cannula_chin", "", share(all, 2, 13), 2, 0, true, true, 2});
        if (tape > 0)
            stages.push_back({"tape", "nasal_cannula.tape", "cannula_tape", "tape_cheeks", share(all, 4, 13), 2, tape, true, true, 2});
        break;
    case PartKind::breath_sensor:
        stages.push_back({"place", "breath_sensor.place", "breath_place", "breath", all, 2, tape, true, false, 2});
        break;
    case PartKind::finger_probe:
        stages.push_back({"place", on_hand("finger_probe.place", writes_with), "probe_place", "probe", share(all, 4, 11), 1, 0, true, true, 3, {"probe_upside", "probe_not_in"}});
        if (tape > 0)
            stages.push_back({"tape_hand", on_hand("finger_probe.tape_hand", writes_with), "probe_tape_hand", "tape_hand", share(all, 4, 11), 1, 1, true, true, 2, {"cable_loose"}});
        if (tape > 1)
            stages.push_back({"tape_arm", on_hand("finger_probe.tape_arm", writes_with), "probe_tape_arm", "", share(all, 3, 11), 1, tape - 1, true, false, 2});
        break;
    case PartKind::ecg_electrodes:
        stages.push_back({"place", "ecg_electrodes.place", "ecg_place", "ecg", all, 2, tape, true, true, 2});
        break;
    case PartKind::body_position_sensor:
        stages.push_back({"place", "body_position_sensor.place", "position_place", "position", all, 2, tape, true, false, 2});
        break;
    case PartKind::snore_microphone:
        stages.push_back({"place", "snore_microphone.place", "snore_place", "snore", all, 2, tape, true, true, 2});
        break;
    case PartKind::leg_electrodes:
        stages.push_back({"place", "leg_electrodes." + part.where + ".place",
                          part.where == "left_leg" ? "leg_left" : "leg_right", part.where == "left_leg" ? "leg_left" : "leg_right", all, 2, tape, true, true, 2});
        break;
    }
    if (part.plug)
        stages.push_back(plug_stage(part, writes_with));
    return stages;
}

std::vector<Stage> ready_stages(int tape_strips)
{
    std::vector<Stage> stages{
        {"charger", "ready.charger", "charger", "", seconds(60), 2, 0, true, false, 1},
        {"clothes", "ready.clothes", "clothes", "", seconds(150), 2, 0, true, false, 1},
        {"bathroom", "ready.bathroom", "bathroom", "", seconds(180), 2, 0, true, false, 1},
        {"bare", "ready.bare", "bare_hands", "", seconds(90), 2, 0, true, false, 2},
    };
    if (tape_strips > 0)
        stages.push_back({"tape", "ready.tape", "tape_strips", "", seconds(90), 2, 0, true, true, 2});
    return stages;
}

std::vector<Stage> finish_stages(const Kit& kit)
{
    const std::string how(name_of(kit.start.by));
    std::vector<Stage> stages{{"check", "check", "person", "", seconds(150), 1, 0, false, true, 0}};
    if (kit.start.by == StartBy::switch_on)
        stages.push_back({how, "start.switch", "switch_slide", "", seconds(20), 1, 0, true, false, 2});
    if (kit.start.by == StartBy::set_time)
        stages.push_back({how, "start.set_time", "set_time", "", seconds(20), 1, 0, true, false, 2});
    stages.push_back({"light", "light", "light_look", "", kit.start.to_light + seconds(30), 1, 0, false, false, 0});
    return stages;
}

} // namespace evenfall
