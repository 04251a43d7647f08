// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// English texts of the steps of the evening and the names of the parts, with notes for translators.
// Only the translation tools read this list; nothing uses it when the program runs.
#include <QtCore/qglobal.h>

namespace {

[[maybe_unused]] const char* const texts[] = {
    //: Small line over the title of a step. %1 is the name of a part, such as "chest belt".
    //% "Now: %1"
    QT_TRID_NOOP("part.label"),
    //: The same line for a part with a mark on its plug. %1 is the part, %2 the mark, such as
    //: "2 ridges".
    //% "Now: %1 (%2)"
    QT_TRID_NOOP("part.label.marked"),
    //: Beside a small picture with a cross, what not to do: a belt must not be twisted.
    //% "Not twisted"
    QT_TRID_NOOP("mistake.belt_twisted"),
    //: Beside a small picture with a cross: the prongs of the nose tube must not point down.
    //% "Not with the prongs pointing down"
    QT_TRID_NOOP("mistake.prongs_flipped"),
    //: Beside a small picture with a cross: the tube must not be wound around the neck.
    //% "Not around your neck"
    QT_TRID_NOOP("mistake.tube_front_neck"),
    //: Beside a small picture with a cross: the finger clip must not be on upside down, with its
    //: cable below the finger. The cable belongs on the side of the nail.
    //% "Not with the cable under your finger"
    QT_TRID_NOOP("mistake.probe_upside"),
    //: Beside a small picture with a cross: the finger must reach the end of the clip.
    //% "Not with your finger half in"
    QT_TRID_NOOP("mistake.probe_not_in"),
    //: Beside a small picture with a cross: the cable without tape catches on things.
    //% "Not loose: the cable can catch"
    QT_TRID_NOOP("mistake.cable_loose"),
    //: The mark of a plug and of its port, inside a sentence: raised bars that a thumb can count.
    //% "1 ridge"
    QT_TRID_NOOP("mark.ridges.1"),
    //: The mark of a plug and of its port, inside a sentence: raised bars that a thumb can count.
    //% "2 ridges"
    QT_TRID_NOOP("mark.ridges.2"),
    //: The mark of a plug and of its port, inside a sentence: raised bars that a thumb can count.
    //% "3 ridges"
    QT_TRID_NOOP("mark.ridges.3"),
    //: The mark of a plug and of its port, inside a sentence: raised bars that a thumb can count.
    //% "4 ridges"
    QT_TRID_NOOP("mark.ridges.4"),
    //: The mark of a plug and of its port, inside a sentence: raised round dots that a thumb can count.
    //% "1 dot"
    QT_TRID_NOOP("mark.dots.1"),
    //: The mark of a plug and of its port, inside a sentence: raised round dots that a thumb can count.
    //% "2 dots"
    QT_TRID_NOOP("mark.dots.2"),
    //: The mark of a plug and of its port, inside a sentence: raised round dots that a thumb can count.
    //% "3 dots"
    QT_TRID_NOOP("mark.dots.3"),
    //: The mark of a plug and of its port, inside a sentence: raised round dots that a thumb can count.
    //% "4 dots"
    QT_TRID_NOOP("mark.dots.4"),
    //: Name of a part of the kit (respiratory effort belt, chest), lower case, the same everywhere.
    //% "chest belt"
    QT_TRID_NOOP("part.effort_belt.chest"),
    //: Name of a part of the kit (respiratory effort belt, abdomen), lower case, the same
    //: everywhere.
    //% "waist belt"
    QT_TRID_NOOP("part.effort_belt.abdomen"),
    //: Name of a part of the kit (effort sensor on the chest belt), lower case, the same
    //: everywhere.
    //% "chest sensor"
    QT_TRID_NOOP("part.effort_sensor.chest"),
    //: Name of a part of the kit (effort sensor on the waist belt), lower case, the same
    //: everywhere.
    //% "waist sensor"
    QT_TRID_NOOP("part.effort_sensor.abdomen"),
    //: Name of a part of the kit (the small box that records), lower case, the same everywhere.
    //% "recorder"
    QT_TRID_NOOP("part.recorder"),
    //: Name of a part of the kit (nasal cannula), lower case, the same everywhere.
    //% "nose tube"
    QT_TRID_NOOP("part.nasal_cannula"),
    //: Name of a part of the kit (thermal airflow sensor), lower case, the same everywhere.
    //% "breath sensor"
    QT_TRID_NOOP("part.breath_sensor"),
    //: Name of a part of the kit (finger probe of the pulse oximeter), lower case, the same
    //: everywhere.
    //% "finger clip"
    QT_TRID_NOOP("part.finger_probe"),
    //: Name of a part of the kit (ECG electrodes), lower case, the same everywhere.
    //% "heart pads"
    QT_TRID_NOOP("part.ecg_electrodes"),
    //: Name of a part of the kit (body position sensor), lower case, the same everywhere.
    //% "position sensor"
    QT_TRID_NOOP("part.body_position_sensor"),
    //: Name of a part of the kit (snore microphone), lower case, the same everywhere.
    //% "snore sensor"
    QT_TRID_NOOP("part.snore_microphone"),
    //: Name of a part of the kit (EMG electrodes, left leg), lower case, the same everywhere.
    //% "left leg pads"
    QT_TRID_NOOP("part.leg_electrodes.left_leg"),
    //: Name of a part of the kit (EMG electrodes, right leg), lower case, the same everywhere.
    //% "right leg pads"
    QT_TRID_NOOP("part.leg_electrodes.right_leg"),
    //: Title of the page: getting ready: the tablet goes on its charger. Next to a picture of it.
    //: At most 45 characters.
    //% "Put the tablet on its charger"
    QT_TRID_NOOP("step.ready.charger.title"),
    //: What to do on this page, 1 or 2 short sentences: getting ready: the tablet goes on its
    //: charger.
    //% "Plug in the charger beside your bed. Leave the tablet on it all night."
    QT_TRID_NOOP("step.ready.charger.body"),
    //: Stands under the heading "It is right when": getting ready: the tablet goes on its charger.
    //% "The tablet shows that it is charging."
    QT_TRID_NOOP("step.ready.charger.right"),
    //: Answer to "Why this?": getting ready: the tablet goes on its charger.
    //% "The tablet keeps your notes all night. On its charger it will not run out of power."
    QT_TRID_NOOP("step.ready.charger.why"),
    //: Title of the page: getting ready: what to wear. Next to a picture of it. At most 45
    //: characters.
    //% "Put on loose nightwear"
    QT_TRID_NOOP("step.ready.clothes.title"),
    //: What to do on this page, 1 or 2 short sentences: getting ready: what to wear.
    //% "Wear what you like to sleep in, as long as it is loose. The kit goes over your clothes."
    QT_TRID_NOOP("step.ready.clothes.body"),
    //: Stands under the heading "It is right when": getting ready: what to wear.
    //% "You can raise both arms, and nothing is tight."
    QT_TRID_NOOP("step.ready.clothes.right"),
    //: Answer to "Why this?": getting ready: what to wear.
    //% "Tight clothes can shift the belts when you turn over. A thin layer of cloth also protects "
    //% "your skin."
    QT_TRID_NOOP("step.ready.clothes.why"),
    //: Title of the page: getting ready: the bathroom, before anything is connected. Next to a
    //: picture of it. At most 45 characters.
    //% "Go to the bathroom now"
    QT_TRID_NOOP("step.ready.bathroom.title"),
    //: What to do on this page, 1 or 2 short sentences: getting ready: the bathroom, before
    //: anything is connected.
    //% "Go before the kit is on. Wash your hands and face, and dry them well."
    QT_TRID_NOOP("step.ready.bathroom.body"),
    //: Stands under the heading "It is right when": getting ready: the bathroom, before anything is
    //: connected.
    //% "Your face and hands are clean and dry, with no cream on them."
    QT_TRID_NOOP("step.ready.bathroom.right"),
    //: Answer to "Why this?": getting ready: the bathroom, before anything is connected.
    //% "Getting up is harder with the kit on. Tape holds best on clean, dry skin."
    QT_TRID_NOOP("step.ready.bathroom.why"),
    //: Title of the page: getting ready: rings, watch and nail polish come off. Next to a picture
    //: of it. At most 45 characters.
    //% "Take off rings, watch and nail polish"
    QT_TRID_NOOP("step.ready.bare.title"),
    //: What to do on this page, 1 or 2 short sentences: getting ready: rings, watch and nail polish
    //: come off.
    //% "Take off necklaces too. Polish must be off the index finger of the hand you do not write "
    //% "with."
    QT_TRID_NOOP("step.ready.bare.body"),
    //: Stands under the heading "It is right when": getting ready: rings, watch and nail polish
    //: come off.
    //% "Your hands and neck are bare, and so is that nail."
    QT_TRID_NOOP("step.ready.bare.right"),
    //: Answer to "Why this?": getting ready: rings, watch and nail polish come off.
    //% "The finger clip shines a light through your nail. Polish can block it. Rings and chains "
    //% "can catch on the cables."
    QT_TRID_NOOP("step.ready.bare.why"),
    //: Title of the page: getting ready: strips of tape are torn off before they are needed. Next
    //: to a picture of it. At most 45 characters. %1 is the number of strips, %2 the length of each
    //: in cm.
    //% "Tape strips to tear off: %1 (%2 cm each)"
    QT_TRID_NOOP("step.ready.tape.title"),
    //: What to do on this page, 1 or 2 short sentences: getting ready: strips of tape are torn off
    //: before they are needed. %1 is the number of strips, %2 the length of each in cm.
    //% "Tear off this many strips: %1. Make each about %2 cm long. Hang them by one end on the "
    //% "edge of a table."
    QT_TRID_NOOP("step.ready.tape.body"),
    //: Stands under the heading "It is right when": getting ready: strips of tape are torn off
    //: before they are needed.
    //% "All strips hang ready, and you can reach them with ease."
    QT_TRID_NOOP("step.ready.tape.right"),
    //: Answer to "Why this?": getting ready: strips of tape are torn off before they are needed.
    //% "Later on you have only 1 free hand. It helps when the strips are ready."
    QT_TRID_NOOP("step.ready.tape.why"),
    //: Caution in a box on this page: getting ready: strips of tape are torn off before they are
    //: needed.
    //% "Does tape make your skin itch, sore or red? Do not use it. Call your clinic first. Never "
    //% "put tape on sore or broken skin."
    QT_TRID_NOOP("step.ready.tape.caution"),
    //: Title of the page: the chest belt is closed round the chest, at the end of a breath out.
    //: Next to a picture of it. At most 45 characters.
    //% "Close the belt around your chest"
    QT_TRID_NOOP("step.effort_belt.chest.wrap.title"),
    //: What to do on this page, 1 or 2 short sentences: the chest belt is closed round the chest,
    //: at the end of a breath out.
    //% "Put it under your armpits. Close it at the end of a slow breath out."
    QT_TRID_NOOP("step.effort_belt.chest.wrap.body"),
    //: Stands under the heading "It is right when": the chest belt is closed round the chest, at
    //: the end of a breath out.
    //% "It lies flat, 2 fingers fit under it, and it stays put."
    QT_TRID_NOOP("step.effort_belt.chest.wrap.right"),
    //: Answer to "Why this?": the chest belt is closed round the chest, at the end of a breath out.
    //% "This belt feels your chest move as you breathe. If it is loose, it slips. If it is tight, "
    //% "it is hard to breathe."
    QT_TRID_NOOP("step.effort_belt.chest.wrap.why"),
    //: Title of the page: the waist belt is closed round the waist, over the navel, at the end of a
    //: breath out. Next to a picture of it. At most 45 characters.
    //% "Close the belt over your navel"
    QT_TRID_NOOP("step.effort_belt.abdomen.wrap.title"),
    //: What to do on this page, 1 or 2 short sentences: the waist belt is closed round the waist,
    //: over the navel, at the end of a breath out.
    //% "Put it around your waist. Close it at the end of a slow breath out."
    QT_TRID_NOOP("step.effort_belt.abdomen.wrap.body"),
    //: Stands under the heading "It is right when": the waist belt is closed round the waist, over
    //: the navel, at the end of a breath out.
    //% "It lies flat, 2 fingers fit under it, and it stays put."
    QT_TRID_NOOP("step.effort_belt.abdomen.wrap.right"),
    //: Answer to "Why this?": the waist belt is closed round the waist, over the navel, at the end
    //: of a breath out.
    //% "This belt feels your belly move as you breathe. If it is loose, it slips. If it is tight, "
    //% "it is hard to breathe."
    QT_TRID_NOOP("step.effort_belt.abdomen.wrap.why"),
    //: Title of the page: a sensor is pressed on to the 2 studs of a belt (the label names which
    //: sensor). Next to a picture of it. At most 45 characters.
    //% "Snap the sensor on to its belt"
    QT_TRID_NOOP("step.effort_sensor.snap.title"),
    //: What to do on this page, 1 or 2 short sentences: a sensor is pressed on to the 2 studs of a
    //: belt (the label names which sensor).
    //% "Hold it in front of the 2 studs on the belt. Press each side until it snaps."
    QT_TRID_NOOP("step.effort_sensor.snap.body"),
    //: Stands under the heading "It is right when": a sensor is pressed on to the 2 studs of a belt
    //: (the label names which sensor).
    //% "You felt it snap, and a gentle pull does not move it."
    QT_TRID_NOOP("step.effort_sensor.snap.right"),
    //: Answer to "Why this?": a sensor is pressed on to the 2 studs of a belt (the label names
    //: which sensor).
    //% "The sensor feels how the belt stretches. If it is loose, it misses your breath."
    QT_TRID_NOOP("step.effort_sensor.snap.why"),
    //: Title of the page: the recorder goes on the waist belt, at the side of the hip. Next to a
    //: picture of it. At most 45 characters.
    //% "Put the recorder on your waist belt"
    QT_TRID_NOOP("step.recorder.hip.wear.title"),
    //: What to do on this page, 1 or 2 short sentences: the recorder goes on the waist belt, at the
    //: side of the hip.
    //% "Fasten it to the waist belt at your side, over the hip. The side with the ports (the "
    //% "openings for plugs) points up."
    QT_TRID_NOOP("step.recorder.hip.wear.body"),
    //: Stands under the heading "It is right when": the recorder goes on the waist belt, at the
    //: side of the hip.
    //% "It sits at your side and does not swing."
    QT_TRID_NOOP("step.recorder.hip.wear.right"),
    //: Answer to "Why this?": the recorder goes on the waist belt, at the side of the hip.
    //% "The recorder saves what the sensors feel. At your side it is least in your way."
    QT_TRID_NOOP("step.recorder.hip.wear.why"),
    //: Title of the page: the recorder goes on the front of the chest strap. Next to a picture of
    //: it. At most 45 characters.
    //% "Put the recorder on your chest strap"
    QT_TRID_NOOP("step.recorder.chest.wear.title"),
    //: What to do on this page, 1 or 2 short sentences: the recorder goes on the front of the chest
    //: strap.
    //% "Fasten it in front, beside the buckle. The side with the ports (the openings for plugs) "
    //% "points up."
    QT_TRID_NOOP("step.recorder.chest.wear.body"),
    //: Stands under the heading "It is right when": the recorder goes on the front of the chest
    //: strap.
    //% "It hangs in front and lies flat."
    QT_TRID_NOOP("step.recorder.chest.wear.right"),
    //: Answer to "Why this?": the recorder goes on the front of the chest strap.
    //% "The recorder saves what the sensors feel. On your chest it is close to them, so no cable "
    //% "has to pull."
    QT_TRID_NOOP("step.recorder.chest.wear.why"),
    //: Title of the page: the recorder sits in a harness of straps that is put on like a vest. Next
    //: to a picture of it. At most 45 characters.
    //% "Put the harness on like a vest"
    QT_TRID_NOOP("step.recorder.harness.wear.title"),
    //: What to do on this page, 1 or 2 short sentences: the recorder sits in a harness of straps
    //: that is put on like a vest.
    //% "Put 1 arm through, then the other. Close the strap in front. The recorder sits in the "
    //% "middle of your chest."
    QT_TRID_NOOP("step.recorder.harness.wear.body"),
    //: Stands under the heading "It is right when": the recorder sits in a harness of straps that
    //: is put on like a vest.
    //% "The recorder sits in the middle, and no strap rubs your neck."
    QT_TRID_NOOP("step.recorder.harness.wear.right"),
    //: Answer to "Why this?": the recorder sits in a harness of straps that is put on like a vest.
    //% "The harness holds the recorder still when you turn over in bed."
    QT_TRID_NOOP("step.recorder.harness.wear.why"),
    //: Title of the page: a plug goes into the port of the recorder that has the same mark (the
    //: plug is pushed in). Next to a picture of it. At most 45 characters. %1 is the mark, such as
    //: "2 ridges".
    //% "Find the port with %1"
    QT_TRID_NOOP("step.plug.push.title"),
    //: What to do on this page, 1 or 2 short sentences: a plug goes into the port of the recorder
    //: that has the same mark (the plug is pushed in). %1 is the mark, such as "2 ridges".
    //% "Feel the mark on the plug: %1. Find the port on the recorder with the same mark. Push "
    //% "the plug straight in."
    QT_TRID_NOOP("step.plug.push.body"),
    //: Stands under the heading "It is right when": a plug goes into the port of the recorder that
    //: has the same mark (the plug is pushed in). %1 is the mark, such as "2 ridges".
    //% "It is in all the way. Plug and port both have %1."
    QT_TRID_NOOP("step.plug.push.right"),
    //: Answer to "Why this?": a plug goes into the port of the recorder that has the same mark (the
    //: plug is pushed in).
    //% "Each plug has its own port. You can feel its mark with your thumb, even in the dark."
    QT_TRID_NOOP("step.plug.push.why"),
    //: Title of the page: a smooth plug, without a mark, goes into the port of the recorder that
    //: has none (the plug is pushed in). Next to a picture of it. At most 45 characters.
    //% "Push the smooth plug in"
    QT_TRID_NOOP("step.plug.push.smooth.title"),
    //: What to do on this page, 1 or 2 short sentences: a smooth plug, without a mark, goes into
    //: the port of the recorder that has none (the plug is pushed in).
    //% "This plug is smooth: it has no mark. Find the smooth port on the recorder. Push the plug "
    //% "straight in."
    QT_TRID_NOOP("step.plug.push.smooth.body"),
    //: Stands under the heading "It is right when": a smooth plug, without a mark, goes into the
    //: port of the recorder that has none (the plug is pushed in).
    //% "It is in all the way. Plug and port are both smooth."
    QT_TRID_NOOP("step.plug.push.smooth.right"),
    //: Answer to "Why this?": a smooth plug, without a mark, goes into the port of the recorder
    //: that has none (the plug is pushed in).
    //% "Each plug has its own port. This one is smooth, so you can feel it even in the dark."
    QT_TRID_NOOP("step.plug.push.smooth.why"),
    //: Title of the page: a plug goes into the port of the recorder that has the same mark (the
    //: plug is pushed in and turned clockwise). Next to a picture of it. At most 45 characters. %1
    //: is the mark, such as "2 ridges".
    //% "Find the port with %1"
    QT_TRID_NOOP("step.plug.twist.title"),
    //: What to do on this page, 1 or 2 short sentences: a plug goes into the port of the recorder
    //: that has the same mark (the plug is pushed in and turned clockwise). %1 is the mark, such as
    //: "2 ridges".
    //% "Feel the mark on the plug: %1. Find the port on the recorder with the same mark. Push "
    //% "the plug in and turn it clockwise until it stops."
    QT_TRID_NOOP("step.plug.twist.body"),
    //: Stands under the heading "It is right when": a plug goes into the port of the recorder that
    //: has the same mark (the plug is pushed in and turned clockwise). %1 is the mark, such as "2
    //: ridges".
    //% "It turns no further. Plug and port both have %1."
    QT_TRID_NOOP("step.plug.twist.right"),
    //: Answer to "Why this?": a plug goes into the port of the recorder that has the same mark (the
    //: plug is pushed in and turned clockwise).
    //% "Each plug has its own port. You can feel its mark with your thumb, even in the dark."
    QT_TRID_NOOP("step.plug.twist.why"),
    //: Title of the page: a smooth plug, without a mark, goes into the port of the recorder that
    //: has none (the plug is pushed in and turned clockwise). Next to a picture of it. At most 45
    //: characters.
    //% "Turn the smooth plug in"
    QT_TRID_NOOP("step.plug.twist.smooth.title"),
    //: What to do on this page, 1 or 2 short sentences: a smooth plug, without a mark, goes into
    //: the port of the recorder that has none (the plug is pushed in and turned clockwise).
    //% "This plug is smooth: it has no mark. Find the smooth port on the recorder. Push the plug in "
    //% "and turn it clockwise until it stops."
    QT_TRID_NOOP("step.plug.twist.smooth.body"),
    //: Stands under the heading "It is right when": a smooth plug, without a mark, goes into the
    //: port of the recorder that has none (the plug is pushed in and turned clockwise).
    //% "It turns no further. Plug and port are both smooth."
    QT_TRID_NOOP("step.plug.twist.smooth.right"),
    //: Answer to "Why this?": a smooth plug, without a mark, goes into the port of the recorder
    //: that has none (the plug is pushed in and turned clockwise).
    //% "Each plug has its own port. This one is smooth, so you can feel it even in the dark."
    QT_TRID_NOOP("step.plug.twist.smooth.why"),
    //: Title of the page: a plug goes into the port of the recorder that has the same mark (the
    //: plug is pressed until it snaps). Next to a picture of it. At most 45 characters. %1 is the
    //: mark, such as "2 ridges".
    //% "Find the port with %1"
    QT_TRID_NOOP("step.plug.snap.title"),
    //: What to do on this page, 1 or 2 short sentences: a plug goes into the port of the recorder
    //: that has the same mark (the plug is pressed until it snaps). %1 is the mark, such as "2
    //: ridges".
    //% "Feel the mark on the plug: %1. Find the port on the recorder with the same mark. Press "
    //% "the plug until it snaps."
    QT_TRID_NOOP("step.plug.snap.body"),
    //: Stands under the heading "It is right when": a plug goes into the port of the recorder that
    //: has the same mark (the plug is pressed until it snaps). %1 is the mark, such as "2 ridges".
    //% "You felt it snap. Plug and port both have %1."
    QT_TRID_NOOP("step.plug.snap.right"),
    //: Answer to "Why this?": a plug goes into the port of the recorder that has the same mark (the
    //: plug is pressed until it snaps).
    //% "Each plug has its own port. You can feel its mark with your thumb, even in the dark."
    QT_TRID_NOOP("step.plug.snap.why"),
    //: Title of the page: a smooth plug, without a mark, goes into the port of the recorder that
    //: has none (the plug is pressed until it snaps). Next to a picture of it. At most 45
    //: characters.
    //% "Snap the smooth plug in"
    QT_TRID_NOOP("step.plug.snap.smooth.title"),
    //: What to do on this page, 1 or 2 short sentences: a smooth plug, without a mark, goes into
    //: the port of the recorder that has none (the plug is pressed until it snaps).
    //% "This plug is smooth: it has no mark. Find the smooth port on the recorder. Press the plug "
    //% "until it snaps."
    QT_TRID_NOOP("step.plug.snap.smooth.body"),
    //: Stands under the heading "It is right when": a smooth plug, without a mark, goes into the
    //: port of the recorder that has none (the plug is pressed until it snaps).
    //% "You felt it snap. Plug and port are both smooth."
    QT_TRID_NOOP("step.plug.snap.smooth.right"),
    //: Answer to "Why this?": a smooth plug, without a mark, goes into the port of the recorder
    //: that has none (the plug is pressed until it snaps).
    //% "Each plug has its own port. This one is smooth, so you can feel it even in the dark."
    QT_TRID_NOOP("step.plug.snap.smooth.why"),
    //: Title of the page: the 2 soft prongs of the nose tube (nasal cannula) go into the nostrils.
    //: Next to a picture of it. At most 45 characters.
    //% "Put the 2 prongs in your nose"
    QT_TRID_NOOP("step.nasal_cannula.prongs.title"),
    //: What to do on this page, 1 or 2 short sentences: the 2 soft prongs of the nose tube (nasal
    //: cannula) go into the nostrils.
    //% "Turn the soft prongs of the nose tube up, so that they curve toward you. Put 1 into each "
    //% "nostril."
    QT_TRID_NOOP("step.nasal_cannula.prongs.body"),
    //: Stands under the heading "It is right when": the 2 soft prongs of the nose tube (nasal
    //: cannula) go into the nostrils.
    //% "Both prongs sit in your nose, and you breathe with ease."
    QT_TRID_NOOP("step.nasal_cannula.prongs.right"),
    //: Answer to "Why this?": the 2 soft prongs of the nose tube (nasal cannula) go into the
    //: nostrils.
    //% "The nose tube feels the air as you breathe. Of all parts it slips the most, so take your "
    //% "time."
    QT_TRID_NOOP("step.nasal_cannula.prongs.why"),
    //: Title of the page: the tube is laid over both ears. Next to a picture of it. At most 45
    //: characters.
    //% "Put the tube over both ears"
    QT_TRID_NOOP("step.nasal_cannula.ears.title"),
    //: What to do on this page, 1 or 2 short sentences: the tube is laid over both ears.
    //% "Lead 1 side of the tube over each ear, from front to back. Keep the prongs in your nose."
    QT_TRID_NOOP("step.nasal_cannula.ears.body"),
    //: Stands under the heading "It is right when": the tube is laid over both ears.
    //% "The tube lies behind both ears and does not pull."
    QT_TRID_NOOP("step.nasal_cannula.ears.right"),
    //: Caution in a box on this page: the tube is laid over both ears.
    //% "The tube must never go around your neck. From your ears it comes down in front, under "
    //% "your chin."
    QT_TRID_NOOP("step.nasal_cannula.ears.caution"),
    //: Title of the page: the small ring on the tube is slid up under the chin. Next to a picture
    //: of it. At most 45 characters.
    //% "Slide the tube snug under your chin"
    QT_TRID_NOOP("step.nasal_cannula.chin.title"),
    //: What to do on this page, 1 or 2 short sentences: the small ring on the tube is slid up under
    //: the chin.
    //% "Slide the small ring up until it sits under your chin. Leave room to swallow."
    QT_TRID_NOOP("step.nasal_cannula.chin.body"),
    //: Stands under the heading "It is right when": the small ring on the tube is slid up under the
    //: chin.
    //% "You can swallow and talk with ease."
    QT_TRID_NOOP("step.nasal_cannula.chin.right"),
    //: Answer to "Why this?": the small ring on the tube is slid up under the chin.
    //% "A snug tube keeps the prongs in your nose when you turn over."
    QT_TRID_NOOP("step.nasal_cannula.chin.why"),
    //: Caution in a box on this page: the small ring on the tube is slid up under the chin.
    //% "Too tight can hurt you. Keep the tube under your chin, not around your throat, and lead "
    //% "it down under your clothes."
    QT_TRID_NOOP("step.nasal_cannula.chin.caution"),
    //: Title of the page: the tube is taped to both cheeks. Next to a picture of it. At most 45
    //: characters.
    //% "Tape the tube to your cheeks"
    QT_TRID_NOOP("step.nasal_cannula.tape.title"),
    //: What to do on this page, 1 or 2 short sentences: the tube is taped to both cheeks.
    //% "Lay 1 strip across the tube on each cheek. Press it down for a few seconds."
    QT_TRID_NOOP("step.nasal_cannula.tape.body"),
    //: Stands under the heading "It is right when": the tube is taped to both cheeks.
    //% "Both strips lie flat, and the prongs stay in when you smile."
    QT_TRID_NOOP("step.nasal_cannula.tape.right"),
    //: Answer to "Why this?": the tube is taped to both cheeks.
    //% "The tape holds the tube when your cheek rubs on the pillow."
    QT_TRID_NOOP("step.nasal_cannula.tape.why"),
    //: Caution in a box on this page: the tube is taped to both cheeks.
    //% "Do not put tape on sore or broken skin, or if you are allergic to it. Call your clinic."
    QT_TRID_NOOP("step.nasal_cannula.tape.caution"),
    //: Title of the page: the end of the nose tube is pushed on to the recorder. Next to a picture
    //: of it. At most 45 characters.
    //% "Push the tube on to the recorder"
    QT_TRID_NOOP("step.nasal_cannula.join.push.title"),
    //: What to do on this page, 1 or 2 short sentences: the end of the nose tube is pushed on to
    //: the recorder.
    //% "Find the short round nozzle on the recorder. Push the end of the tube on to it as far as "
    //% "it goes."
    QT_TRID_NOOP("step.nasal_cannula.join.push.body"),
    //: Stands under the heading "It is right when": the end of the nose tube is pushed on to the
    //: recorder.
    //% "It sits tight, and a gentle pull does not move it."
    QT_TRID_NOOP("step.nasal_cannula.join.push.right"),
    //: Answer to "Why this?": the end of the nose tube is pushed on to the recorder.
    //% "Your breath is felt through this tube. If it is loose, air gets out and your breath is "
    //% "missed."
    QT_TRID_NOOP("step.nasal_cannula.join.push.why"),
    //: Title of the page: the end of the nose tube is turned on to the recorder, clockwise. Next to
    //: a picture of it. At most 45 characters.
    //% "Turn the tube on to the recorder"
    QT_TRID_NOOP("step.nasal_cannula.join.twist.title"),
    //: What to do on this page, 1 or 2 short sentences: the end of the nose tube is turned on to
    //: the recorder, clockwise.
    //% "Put the end of the tube on the recorder. Turn it clockwise until it stops."
    QT_TRID_NOOP("step.nasal_cannula.join.twist.body"),
    //: Stands under the heading "It is right when": the end of the nose tube is turned on to the
    //: recorder, clockwise.
    //% "It turns no further, and a gentle pull does not move it."
    QT_TRID_NOOP("step.nasal_cannula.join.twist.right"),
    //: Answer to "Why this?": the end of the nose tube is turned on to the recorder, clockwise.
    //% "Your breath is felt through this tube. If it is loose, air gets out and your breath is "
    //% "missed."
    QT_TRID_NOOP("step.nasal_cannula.join.twist.why"),
    //: Title of the page: the end of the nose tube is pressed on to the recorder until it snaps.
    //: Next to a picture of it. At most 45 characters.
    //% "Snap the tube on to the recorder"
    QT_TRID_NOOP("step.nasal_cannula.join.snap.title"),
    //: What to do on this page, 1 or 2 short sentences: the end of the nose tube is pressed on to
    //: the recorder until it snaps.
    //% "Press the end of the tube on to the recorder until it snaps."
    QT_TRID_NOOP("step.nasal_cannula.join.snap.body"),
    //: Stands under the heading "It is right when": the end of the nose tube is pressed on to the
    //: recorder until it snaps.
    //% "You felt it snap, and a gentle pull does not move it."
    QT_TRID_NOOP("step.nasal_cannula.join.snap.right"),
    //: Answer to "Why this?": the end of the nose tube is pressed on to the recorder until it
    //: snaps.
    //% "Your breath is felt through this tube. If it is loose, air gets out and your breath is "
    //% "missed."
    QT_TRID_NOOP("step.nasal_cannula.join.snap.why"),
    //: Title of the page: the breath (thermal) sensor sits on the nose tube, above the lip, in the
    //: breath of nose and mouth. Next to a picture of it. At most 45 characters.
    //% "Put the breath sensor under your nose"
    QT_TRID_NOOP("step.breath_sensor.place.title"),
    //: What to do on this page, 1 or 2 short sentences: the breath (thermal) sensor sits on the
    //: nose tube, above the lip, in the breath of nose and mouth.
    //% "It sits on the nose tube, above your upper lip. Its tips point to your nose and mouth, "
    //% "and touch no skin."
    QT_TRID_NOOP("step.breath_sensor.place.body"),
    //: Stands under the heading "It is right when": the breath (thermal) sensor sits on the nose
    //: tube, above the lip, in the breath of nose and mouth.
    //% "Its tips are in your breath, and none touches your skin."
    QT_TRID_NOOP("step.breath_sensor.place.right"),
    //: Answer to "Why this?": the breath (thermal) sensor sits on the nose tube, above the lip, in
    //: the breath of nose and mouth.
    //% "This sensor feels the warmth of each breath. On the skin it would feel only your skin."
    QT_TRID_NOOP("step.breath_sensor.place.why"),
    //: Title of the page: the finger clip goes on the index finger of the left hand. Next to a
    //: picture of it. At most 45 characters.
    //% "Put the clip on your left index finger"
    QT_TRID_NOOP("step.finger_probe.place.left.title"),
    //: What to do on this page, 1 or 2 short sentences: the finger clip goes on the index finger of
    //: the left hand.
    //% "Hold your left hand nail side up. Push the index finger all the way into the clip. The "
    //% "cable runs along the back of your hand."
    QT_TRID_NOOP("step.finger_probe.place.left.body"),
    //: Stands under the heading "It is right when": the finger clip goes on the index finger of the
    //: left hand.
    //% "The nail is up, and your fingertip touches the end of the clip."
    QT_TRID_NOOP("step.finger_probe.place.left.right"),
    //: Answer to "Why this?": the finger clip goes on the index finger of the left hand.
    //% "The clip uses light to see how much oxygen is in your blood. It does not hurt. Your right "
    //% "hand stays free."
    QT_TRID_NOOP("step.finger_probe.place.left.why"),
    //: Caution in a box on this page: the finger clip goes on the index finger of the left hand.
    //% "The hand must be warm and the nail bare. Cold fingers and nail polish can spoil the "
    //% "reading. No clip on sore skin."
    QT_TRID_NOOP("step.finger_probe.place.left.caution"),
    //: Title of the page: the cable of the finger clip is taped to the back of the left hand while
    //: making a fist. Next to a picture of it. At most 45 characters.
    //% "Tape the cable to your left hand"
    QT_TRID_NOOP("step.finger_probe.tape_hand.left.title"),
    //: What to do on this page, 1 or 2 short sentences: the cable of the finger clip is taped to
    //: the back of the left hand while making a fist.
    //% "Make a fist with your left hand. Press 1 strip over the cable on the back of the hand."
    QT_TRID_NOOP("step.finger_probe.tape_hand.left.body"),
    //: Stands under the heading "It is right when": the cable of the finger clip is taped to the
    //: back of the left hand while making a fist.
    //% "You can make a fist, and the cable does not pull on the clip."
    QT_TRID_NOOP("step.finger_probe.tape_hand.left.right"),
    //: Answer to "Why this?": the cable of the finger clip is taped to the back of the left hand
    //: while making a fist.
    //% "The fist leaves some slack in the cable. So the clip stays on when your hand moves."
    QT_TRID_NOOP("step.finger_probe.tape_hand.left.why"),
    //: Caution in a box on this page: the cable of the finger clip is taped to the back of the left
    //: hand while making a fist.
    //% "Do not put tape on sore or broken skin, or if you are allergic to it. Do not wrap tape "
    //% "around the hand or finger."
    QT_TRID_NOOP("step.finger_probe.tape_hand.left.caution"),
    //: Title of the page: the cable of the finger clip is taped to the left forearm. Next to a
    //: picture of it. At most 45 characters.
    //% "Tape the cable to your left forearm"
    QT_TRID_NOOP("step.finger_probe.tape_arm.left.title"),
    //: What to do on this page, 1 or 2 short sentences: the cable of the finger clip is taped to
    //: the left forearm.
    //% "Lay the cable along your left arm. Press 1 strip over it, half way to the elbow."
    QT_TRID_NOOP("step.finger_probe.tape_arm.left.body"),
    //: Stands under the heading "It is right when": the cable of the finger clip is taped to the
    //: left forearm.
    //% "You can bend your arm, and the cable does not pull."
    QT_TRID_NOOP("step.finger_probe.tape_arm.left.right"),
    //: Answer to "Why this?": the cable of the finger clip is taped to the left forearm.
    //% "A cable that lies flat is less likely to catch on the bed or on you."
    QT_TRID_NOOP("step.finger_probe.tape_arm.left.why"),
    //: Title of the page: last of all, the plug of the finger clip on the left hand goes into the
    //: recorder. Next to a picture of it. At most 45 characters.
    //% "Plug in the finger clip last"
    QT_TRID_NOOP("step.finger_probe.plug.left.title"),
    //: What to do on this page, 1 or 2 short sentences: last of all, the plug of the finger clip on
    //: the left hand goes into the recorder.
    //% "Sit down on your bed. With your right hand, put the plug of the clip into its port on the "
    //% "recorder."
    QT_TRID_NOOP("step.finger_probe.plug.left.body"),
    //: Stands under the heading "It is right when": last of all, the plug of the finger clip on the
    //: left hand goes into the recorder.
    //% "The plug is in all the way, and the cable does not pull."
    QT_TRID_NOOP("step.finger_probe.plug.left.right"),
    //: Answer to "Why this?": last of all, the plug of the finger clip on the left hand goes into
    //: the recorder.
    //% "This plug goes in last, so that both hands stay free until now."
    QT_TRID_NOOP("step.finger_probe.plug.left.why"),
    //: Caution in a box on this page: last of all, the plug of the finger clip on the left hand
    //: goes into the recorder.
    //% "Keep the cable along your left arm, never around your neck. Leave some slack."
    QT_TRID_NOOP("step.finger_probe.plug.left.caution"),
    //: Title of the page: the finger clip goes on the index finger of the right hand. Next to a
    //: picture of it. At most 45 characters.
    //% "Put the clip on your right index finger"
    QT_TRID_NOOP("step.finger_probe.place.right.title"),
    //: What to do on this page, 1 or 2 short sentences: the finger clip goes on the index finger of
    //: the right hand.
    //% "Hold your right hand nail side up. Push the index finger all the way into the clip. The "
    //% "cable runs along the back of your hand."
    QT_TRID_NOOP("step.finger_probe.place.right.body"),
    //: Stands under the heading "It is right when": the finger clip goes on the index finger of the
    //: right hand.
    //% "The nail is up, and your fingertip touches the end of the clip."
    QT_TRID_NOOP("step.finger_probe.place.right.right"),
    //: Answer to "Why this?": the finger clip goes on the index finger of the right hand.
    //% "The clip uses light to see how much oxygen is in your blood. It does not hurt. Your left "
    //% "hand stays free."
    QT_TRID_NOOP("step.finger_probe.place.right.why"),
    //: Caution in a box on this page: the finger clip goes on the index finger of the right hand.
    //% "The hand must be warm and the nail bare. Cold fingers and nail polish can spoil the "
    //% "reading. No clip on sore skin."
    QT_TRID_NOOP("step.finger_probe.place.right.caution"),
    //: Title of the page: the cable of the finger clip is taped to the back of the right hand while
    //: making a fist. Next to a picture of it. At most 45 characters.
    //% "Tape the cable to your right hand"
    QT_TRID_NOOP("step.finger_probe.tape_hand.right.title"),
    //: What to do on this page, 1 or 2 short sentences: the cable of the finger clip is taped to
    //: the back of the right hand while making a fist.
    //% "Make a fist with your right hand. Press 1 strip over the cable on the back of the hand."
    QT_TRID_NOOP("step.finger_probe.tape_hand.right.body"),
    //: Stands under the heading "It is right when": the cable of the finger clip is taped to the
    //: back of the right hand while making a fist.
    //% "You can make a fist, and the cable does not pull on the clip."
    QT_TRID_NOOP("step.finger_probe.tape_hand.right.right"),
    //: Answer to "Why this?": the cable of the finger clip is taped to the back of the right hand
    //: while making a fist.
    //% "The fist leaves some slack in the cable. So the clip stays on when your hand moves."
    QT_TRID_NOOP("step.finger_probe.tape_hand.right.why"),
    //: Caution in a box on this page: the cable of the finger clip is taped to the back of the
    //: right hand while making a fist.
    //% "Do not put tape on sore or broken skin, or if you are allergic to it. Do not wrap tape "
    //% "around the hand or finger."
    QT_TRID_NOOP("step.finger_probe.tape_hand.right.caution"),
    //: Title of the page: the cable of the finger clip is taped to the right forearm. Next to a
    //: picture of it. At most 45 characters.
    //% "Tape the cable to your right forearm"
    QT_TRID_NOOP("step.finger_probe.tape_arm.right.title"),
    //: What to do on this page, 1 or 2 short sentences: the cable of the finger clip is taped to
    //: the right forearm.
    //% "Lay the cable along your right arm. Press 1 strip over it, half way to the elbow."
    QT_TRID_NOOP("step.finger_probe.tape_arm.right.body"),
    //: Stands under the heading "It is right when": the cable of the finger clip is taped to the
    //: right forearm.
    //% "You can bend your arm, and the cable does not pull."
    QT_TRID_NOOP("step.finger_probe.tape_arm.right.right"),
    //: Answer to "Why this?": the cable of the finger clip is taped to the right forearm.
    //% "A cable that lies flat is less likely to catch on the bed or on you."
    QT_TRID_NOOP("step.finger_probe.tape_arm.right.why"),
    //: Title of the page: last of all, the plug of the finger clip on the right hand goes into the
    //: recorder. Next to a picture of it. At most 45 characters.
    //% "Plug in the finger clip last"
    QT_TRID_NOOP("step.finger_probe.plug.right.title"),
    //: What to do on this page, 1 or 2 short sentences: last of all, the plug of the finger clip on
    //: the right hand goes into the recorder.
    //% "Sit down on your bed. With your left hand, put the plug of the clip into its port on the "
    //% "recorder."
    QT_TRID_NOOP("step.finger_probe.plug.right.body"),
    //: Stands under the heading "It is right when": last of all, the plug of the finger clip on the
    //: right hand goes into the recorder.
    //% "The plug is in all the way, and the cable does not pull."
    QT_TRID_NOOP("step.finger_probe.plug.right.right"),
    //: Answer to "Why this?": last of all, the plug of the finger clip on the right hand goes into
    //: the recorder.
    //% "This plug goes in last, so that both hands stay free until now."
    QT_TRID_NOOP("step.finger_probe.plug.right.why"),
    //: Caution in a box on this page: last of all, the plug of the finger clip on the right hand
    //: goes into the recorder.
    //% "Keep the cable along your right arm, never around your neck. Leave some slack."
    QT_TRID_NOOP("step.finger_probe.plug.right.caution"),
    //: Title of the page: 2 heart pads (ECG electrodes) stick on the bare chest: under the right
    //: collarbone and on the lowest rib on the left. Next to a picture of it. At most 45
    //: characters.
    //% "Stick the 2 heart pads on your chest"
    QT_TRID_NOOP("step.ecg_electrodes.place.title"),
    //: What to do on this page, 1 or 2 short sentences: 2 heart pads (ECG electrodes) stick on the
    //: bare chest: under the right collarbone and on the lowest rib on the left.
    //% "Stick 1 under your right collarbone and 1 on your lowest left rib. The skin must be bare "
    //% "and dry."
    QT_TRID_NOOP("step.ecg_electrodes.place.body"),
    //: Stands under the heading "It is right when": 2 heart pads (ECG electrodes) stick on the bare
    //: chest: under the right collarbone and on the lowest rib on the left.
    //% "Both pads stick flat all around."
    QT_TRID_NOOP("step.ecg_electrodes.place.right"),
    //: Answer to "Why this?": 2 heart pads (ECG electrodes) stick on the bare chest: under the
    //: right collarbone and on the lowest rib on the left.
    //% "The heart pads pick up your heartbeat through the skin."
    QT_TRID_NOOP("step.ecg_electrodes.place.why"),
    //: Caution in a box on this page: 2 heart pads (ECG electrodes) stick on the bare chest: under
    //: the right collarbone and on the lowest rib on the left.
    //% "Do not put pads on sore or broken skin, or if you are allergic to tape. Call your clinic."
    QT_TRID_NOOP("step.ecg_electrodes.place.caution"),
    //: Title of the page: the body position sensor goes on the chest belt, arrow up. Next to a
    //: picture of it. At most 45 characters.
    //% "Put the position sensor on your chest belt"
    QT_TRID_NOOP("step.body_position_sensor.place.title"),
    //: What to do on this page, 1 or 2 short sentences: the body position sensor goes on the chest
    //: belt, arrow up.
    //% "Fasten it in the middle of the belt. Its arrow points up to your head."
    QT_TRID_NOOP("step.body_position_sensor.place.body"),
    //: Stands under the heading "It is right when": the body position sensor goes on the chest
    //: belt, arrow up.
    //% "It lies flat, and the arrow points to your head."
    QT_TRID_NOOP("step.body_position_sensor.place.right"),
    //: Answer to "Why this?": the body position sensor goes on the chest belt, arrow up.
    //% "It shows if you lie on your back, your side or your belly."
    QT_TRID_NOOP("step.body_position_sensor.place.why"),
    //: Title of the page: the snore sensor (microphone) is taped to the side of the neck, next to
    //: the voice box. Next to a picture of it. At most 45 characters.
    //% "Tape the snore sensor to your neck"
    QT_TRID_NOOP("step.snore_microphone.place.title"),
    //: What to do on this page, 1 or 2 short sentences: the snore sensor (microphone) is taped to
    //: the side of the neck, next to the voice box.
    //% "Hum and feel for your voice box. Put the sensor beside it, on the side of your neck. "
    //% "Press 1 strip over it."
    QT_TRID_NOOP("step.snore_microphone.place.body"),
    //: Stands under the heading "It is right when": the snore sensor (microphone) is taped to the
    //: side of the neck, next to the voice box.
    //% "It stays flat when you hum and turn your head."
    QT_TRID_NOOP("step.snore_microphone.place.right"),
    //: Answer to "Why this?": the snore sensor (microphone) is taped to the side of the neck, next
    //: to the voice box.
    //% "It picks up the sound of snoring through the skin of your neck."
    QT_TRID_NOOP("step.snore_microphone.place.why"),
    //: Caution in a box on this page: the snore sensor (microphone) is taped to the side of the
    //: neck, next to the voice box.
    //% "Lead its cable straight down under your clothes, never around your neck. No tape on sore "
    //% "skin or with a tape allergy."
    QT_TRID_NOOP("step.snore_microphone.place.caution"),
    //: Title of the page: 2 pads (leg electrodes) stick on the outer front of the left lower leg;
    //: tape holds their cable. Next to a picture of it. At most 45 characters.
    //% "Stick the 2 pads on your left leg"
    QT_TRID_NOOP("step.leg_electrodes.left_leg.place.title"),
    //: What to do on this page, 1 or 2 short sentences: 2 pads (leg electrodes) stick on the outer
    //: front of the left lower leg; tape holds their cable.
    //% "Stick 1 above the other on the outer front of your left lower leg. Tape their cable flat "
    //% "with 1 strip."
    QT_TRID_NOOP("step.leg_electrodes.left_leg.place.body"),
    //: Stands under the heading "It is right when": 2 pads (leg electrodes) stick on the outer
    //: front of the left lower leg; tape holds their cable.
    //% "Both pads stick flat, and the cable does not pull when you bend your knee."
    QT_TRID_NOOP("step.leg_electrodes.left_leg.place.right"),
    //: Answer to "Why this?": 2 pads (leg electrodes) stick on the outer front of the left lower
    //: leg; tape holds their cable.
    //% "The pads pick up when the muscles of your left leg move in your sleep."
    QT_TRID_NOOP("step.leg_electrodes.left_leg.place.why"),
    //: Caution in a box on this page: 2 pads (leg electrodes) stick on the outer front of the left
    //: lower leg; tape holds their cable.
    //% "Do not put pads or tape on sore or broken skin, or if you are allergic to tape. Call your "
    //% "clinic."
    QT_TRID_NOOP("step.leg_electrodes.left_leg.place.caution"),
    //: Title of the page: 2 pads (leg electrodes) stick on the outer front of the right lower leg;
    //: tape holds their cable. Next to a picture of it. At most 45 characters.
    //% "Stick the 2 pads on your right leg"
    QT_TRID_NOOP("step.leg_electrodes.right_leg.place.title"),
    //: What to do on this page, 1 or 2 short sentences: 2 pads (leg electrodes) stick on the outer
    //: front of the right lower leg; tape holds their cable.
    //% "Stick 1 above the other on the outer front of your right lower leg. Tape their cable flat "
    //% "with 1 strip."
    QT_TRID_NOOP("step.leg_electrodes.right_leg.place.body"),
    //: Stands under the heading "It is right when": 2 pads (leg electrodes) stick on the outer
    //: front of the right lower leg; tape holds their cable.
    //% "Both pads stick flat, and the cable does not pull when you bend your knee."
    QT_TRID_NOOP("step.leg_electrodes.right_leg.place.right"),
    //: Answer to "Why this?": 2 pads (leg electrodes) stick on the outer front of the right lower
    //: leg; tape holds their cable.
    //% "The pads pick up when the muscles of your right leg move in your sleep."
    QT_TRID_NOOP("step.leg_electrodes.right_leg.place.why"),
    //: Caution in a box on this page: 2 pads (leg electrodes) stick on the outer front of the right
    //: lower leg; tape holds their cable.
    //% "Do not put pads or tape on sore or broken skin, or if you are allergic to tape. Call your "
    //% "clinic."
    QT_TRID_NOOP("step.leg_electrodes.right_leg.place.caution"),
    //: Title of the page: after the last plug: each sensor is looked at once more. Next to a
    //: picture of it. At most 45 characters.
    //% "Look at each part once more"
    QT_TRID_NOOP("step.check.title"),
    //: What to do on this page, 1 or 2 short sentences: after the last plug: each sensor is looked
    //: at once more.
    //% "Look at each sensor from head to toe. Fix what is loose."
    QT_TRID_NOOP("step.check.body"),
    //: Stands under the heading "It is right when": after the last plug: each sensor is looked at
    //: once more.
    //% "Each part looks like its picture, and no plug is loose."
    QT_TRID_NOOP("step.check.right"),
    //: Caution in a box on this page: after the last plug: each sensor is looked at once more.
    //% "No tube or cable may lie around your neck. Keep children and pets away from the cables."
    QT_TRID_NOOP("step.check.caution"),
    //: Title of the page: the recorder is started with a sliding switch. Next to a picture of it.
    //: At most 45 characters.
    //% "Turn the recorder on"
    QT_TRID_NOOP("step.start.switch.title"),
    //: What to do on this page, 1 or 2 short sentences: the recorder is started with a sliding
    //: switch.
    //% "Slide the switch on the recorder until it stops."
    QT_TRID_NOOP("step.start.switch.body"),
    //: Stands under the heading "It is right when": the recorder is started with a sliding switch.
    //% "The switch is at its end and stays there."
    QT_TRID_NOOP("step.start.switch.right"),
    //: Answer to "Why this?": the recorder is started with a sliding switch.
    //% "From now on the recorder saves your night."
    QT_TRID_NOOP("step.start.switch.why"),
    //: Title of the page: the recorder starts by itself at a set time. Next to a picture of it. At
    //: most 45 characters.
    //% "The recorder starts by itself"
    QT_TRID_NOOP("step.start.set_time.title"),
    //: What to do on this page, 1 or 2 short sentences: the recorder starts by itself at a set
    //: time.
    //% "It starts at a set time. You do not have to press anything."
    QT_TRID_NOOP("step.start.set_time.body"),
    //: Stands under the heading "It is right when": the recorder starts by itself at a set time.
    //% "All plugs are in. You pressed nothing."
    QT_TRID_NOOP("step.start.set_time.right"),
    //: Answer to "Why this?": the recorder starts by itself at a set time.
    //% "Your clinic has set the time, so this is 1 thing less for you to do."
    QT_TRID_NOOP("step.start.set_time.why"),
    //: Title of the page: the person looks at the recorder's light and says what it does. Next to a
    //: picture of it. At most 45 characters.
    //% "See what the light does"
    QT_TRID_NOOP("step.light.title"),
    //: What to do on this page, 1 or 2 short sentences: the person looks at the recorder's light
    //: and says what it does.
    //% "Look at the light on the recorder for a few seconds. Then tap what you see."
    QT_TRID_NOOP("step.light.body"),
    //: Stands under the heading "It is right when": the person looks at the recorder's light and
    //: says what it does.
    //% "The light shows that the recorder is recording."
    QT_TRID_NOOP("step.light.right"),
};

} // namespace
