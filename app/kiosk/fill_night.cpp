// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "kiosk/fill.h"

#include "plan/depict.h"

namespace evenfall {
namespace {

/// The parts a sleeper can lose or put back, as rows with their pictures.
void add_parts(NightValues& values, const Session& session, const Words& words, const Look& look, bool only_off)
{
    const std::set<std::string> off = session.state().off_now();
    for (const std::string& id : session.kit().sensors()) {
        if (only_off != off.contains(id))
            continue;
        const Part& part = *session.kit().part(id);
        ItemRow row = choice_row(id, words.part(part));
        row.figure = figure_url(item_figure(part.kind), session, look, id);
        values.items << QVariant::fromValue(row);
    }
}

const char* refit_figure(const Part& part)
{
    switch (part.kind) {
    case PartKind::effort_belt: return part.where == "abdomen" ? "belt_abdomen" : "belt_chest";
    case PartKind::effort_sensor: return "sensor_snap";
    case PartKind::nasal_cannula: return "cannula_prongs";
    case PartKind::breath_sensor: return "breath_place";
    case PartKind::finger_probe: return "probe_place";
    case PartKind::ecg_electrodes: return "ecg_place";
    case PartKind::body_position_sensor: return "position_place";
    case PartKind::snore_microphone: return "snore_place";
    case PartKind::leg_electrodes: return part.where == "left_leg" ? "leg_left" : "leg_right";
    case PartKind::recorder: break;
    }
    return "light_look";
}

void add_advice(NightValues& values, const Session& session, const Words& words, const Look& look, const std::string& advice)
{
    if (advice.starts_with("refit:")) {
        const Part* part = session.kit().part(advice.substr(6));
        if (!part)
            return;
        values.title = words.part(*part);
        values.body = words.of("night.refit." + std::string(facts_of(part->kind).name)) + QStringLiteral("\n") +
                      words.of("night.look_light");
        values.figure = figure_url(refit_figure(*part), session, look, part->id);
        values.figureText = values.body;
        return;
    }
    values.title = words.of("night.help." + advice);
    values.body = words.of("night.help." + advice + ".advice", {words.code(session.visit().clinic.emergency)});
    if (advice == "light")
        values.figure = figure_url(depict(session.kit(), session.plan(), *session.plan().step("light")), session, look);
    if (advice == "skin" || advice == "stop")
        values.figure = figure_url("tape_off_low", session, look);
    values.figureText = values.body;
    values.phone = words.code(advice == "unwell" ? session.visit().clinic.emergency : session.visit().clinic.phone_outside_hours);
}

} // namespace

const std::vector<std::string>& night_helps()
{
    static const std::vector<std::string> ids{"off", "light", "skin", "unwell", "stop"};
    return ids;
}

NightValues fill_night(const Session& session, const Words& words, const Look& look, const NightFace& face)
{
    using Face = NightFace::Face;
    NightValues values;
    values.awakeNow = session.state().awake_now();
    values.outOfBed = session.state().out_of_bed();
    values.somethingOff = !session.state().off_now().empty();
    if (face.face != Face::dark)
        values.watchText = words.of("night.watch", {words.code(session.visit().clinic.emergency)});
    switch (face.face) {
    case Face::dark: break;
    case Face::areas: values.face = QStringLiteral("areas"); break;
    case Face::noted:
        values.face = QStringLiteral("noted");
        values.notedText = face.noted;
        break;
    case Face::up_confirm:
        values.face = QStringLiteral("upConfirm");
        values.title = words.of("night.up_confirm");
        break;
    case Face::which_off:
    case Face::which_on:
        values.face = QStringLiteral("which");
        values.title = words.of(face.face == Face::which_off ? "night.which.off" : "night.which.on");
        add_parts(values, session, words, look, face.face == Face::which_on);
        break;
    case Face::still_on:
        values.face = QStringLiteral("stillOn");
        values.title = words.of("night.still_on");
        break;
    case Face::help:
        values.face = QStringLiteral("help");
        values.title = words.of("night.help.title");
        for (const std::string& id : night_helps()) {
            values.items << QVariant::fromValue(choice_row(id, words.of("night.help." + id)));
        }
        break;
    case Face::advice:
        values.face = QStringLiteral("advice");
        add_advice(values, session, words, look, face.advice);
        break;
    }
    return values;
}

} // namespace evenfall
