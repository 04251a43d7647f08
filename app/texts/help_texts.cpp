// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// English texts for "This isn't working": a fault as the person says it, and what to do.
// Only the translation tools read this list; nothing uses it when the program runs.
#include <QtCore/qglobal.h>

namespace {

[[maybe_unused]] const char* const texts[] = {
    //: A fault as the person would say it. On the page: getting ready: the tablet goes on its
    //: charger.
    //% "The tablet is not charging."
    QT_TRID_NOOP("help.ready.charger.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Press both ends of the cable in well. Then try another wall outlet."
    QT_TRID_NOOP("help.ready.charger.1.fix"),
    //: A fault as the person would say it. On the page: getting ready: what to wear.
    //% "I do not sleep in clothes."
    QT_TRID_NOOP("help.ready.clothes.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Put on a thin T-shirt for tonight. The belts can rub on bare skin."
    QT_TRID_NOOP("help.ready.clothes.1.fix"),
    //: A fault as the person would say it. On the page: getting ready: the bathroom, before
    //: anything is connected.
    //% "I often have to go at night."
    QT_TRID_NOOP("help.ready.bathroom.1.question"),
    //: What to do about the fault in the text before this one.
    //% "You can get up at any time with the kit on. Free the cables first, then walk."
    QT_TRID_NOOP("help.ready.bathroom.1.fix"),
    //: A fault as the person would say it. On the page: getting ready: rings, watch and nail polish
    //: come off.
    //% "A ring does not come off."
    QT_TRID_NOOP("help.ready.bare.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Leave it on if it is not tight. The clip needs only the tip of your finger."
    QT_TRID_NOOP("help.ready.bare.1.fix"),
    //: A fault as the person would say it. On the page: getting ready: rings, watch and nail polish
    //: come off.
    //% "I have gel or false nails."
    QT_TRID_NOOP("help.ready.bare.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Use a finger with a bare nail on the same hand. If no nail is bare, call your clinic "
    //% "first."
    QT_TRID_NOOP("help.ready.bare.2.fix"),
    //: A fault as the person would say it. On the page: getting ready: strips of tape are torn off
    //: before they are needed.
    //% "I do not know how long 5 cm is."
    QT_TRID_NOOP("help.ready.tape.1.question"),
    //: What to do about the fault in the text before this one.
    //% "5 cm is 2 inches. A little more or less is fine."
    QT_TRID_NOOP("help.ready.tape.1.fix"),
    //: A fault as the person would say it. On the page: getting ready: strips of tape are torn off
    //: before they are needed.
    //% "There is not enough tape."
    QT_TRID_NOOP("help.ready.tape.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Use medical tape for skin if you have some at home. Do not use any other tape."
    QT_TRID_NOOP("help.ready.tape.2.fix"),
    //: A fault as the person would say it. On the page: the chest belt is closed round the chest,
    //: at the end of a breath out.
    //% "The belt slips down."
    QT_TRID_NOOP("help.effort_belt.chest.wrap.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Open it and move it up, close to your armpits. Breathe out and close it a little tighter."
    QT_TRID_NOOP("help.effort_belt.chest.wrap.1.fix"),
    //: A fault as the person would say it. On the page: the chest belt is closed round the chest,
    //: at the end of a breath out.
    //% "The belt feels too tight."
    QT_TRID_NOOP("help.effort_belt.chest.wrap.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Open it and make it longer. You should breathe with ease, and 2 fingers should fit under "
    //% "it."
    QT_TRID_NOOP("help.effort_belt.chest.wrap.2.fix"),
    //: A fault as the person would say it. On the page: the chest belt is closed round the chest,
    //: at the end of a breath out.
    //% "The belt does not reach around me."
    QT_TRID_NOOP("help.effort_belt.chest.wrap.3.question"),
    //: What to do about the fault in the text before this one.
    //% "Make it as long as it goes. If it still does not reach, leave it off and call your clinic."
    QT_TRID_NOOP("help.effort_belt.chest.wrap.3.fix"),
    //: A fault as the person would say it. On the page: the waist belt is closed round the waist,
    //: over the navel, at the end of a breath out.
    //% "The belt slips or rolls up."
    QT_TRID_NOOP("help.effort_belt.abdomen.wrap.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Open it, smooth it flat and put it back over your navel. Breathe out and close it a "
    //% "little tighter."
    QT_TRID_NOOP("help.effort_belt.abdomen.wrap.1.fix"),
    //: A fault as the person would say it. On the page: the waist belt is closed round the waist,
    //: over the navel, at the end of a breath out.
    //% "The belt feels too tight."
    QT_TRID_NOOP("help.effort_belt.abdomen.wrap.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Open it and make it longer. You should breathe with ease, and 2 fingers should fit under "
    //% "it."
    QT_TRID_NOOP("help.effort_belt.abdomen.wrap.2.fix"),
    //: A fault as the person would say it. On the page: the waist belt is closed round the waist,
    //: over the navel, at the end of a breath out.
    //% "The belt does not reach around me."
    QT_TRID_NOOP("help.effort_belt.abdomen.wrap.3.question"),
    //: What to do about the fault in the text before this one.
    //% "Make it as long as it goes. If it still does not reach, leave it off and call your clinic."
    QT_TRID_NOOP("help.effort_belt.abdomen.wrap.3.fix"),
    //: A fault as the person would say it. On the page: a sensor is pressed on to the 2 studs of a
    //: belt (the label names which sensor).
    //% "It does not snap on."
    QT_TRID_NOOP("help.effort_sensor.snap.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Put 1 hand behind the belt and press with the other. If it still does not snap, turn the "
    //% "sensor around."
    QT_TRID_NOOP("help.effort_sensor.snap.1.fix"),
    //: A fault as the person would say it. On the page: a sensor is pressed on to the 2 studs of a
    //: belt (the label names which sensor).
    //% "It comes off again."
    QT_TRID_NOOP("help.effort_sensor.snap.2.question"),
    //: What to do about the fault in the text before this one.
    //% "See that no cloth is caught under the sensor. Then press each side until it snaps."
    QT_TRID_NOOP("help.effort_sensor.snap.2.fix"),
    //: A fault as the person would say it. On the page: the recorder goes on the waist belt, at the
    //: side of the hip.
    //% "I like to sleep on that side."
    QT_TRID_NOOP("help.recorder.hip.wear.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Put it on your other side. See that all cables still reach."
    QT_TRID_NOOP("help.recorder.hip.wear.1.fix"),
    //: A fault as the person would say it. On the page: the recorder goes on the waist belt, at the
    //: side of the hip.
    //% "It slides along the belt."
    QT_TRID_NOOP("help.recorder.hip.wear.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Close the waist belt a little tighter. 2 fingers should still fit under it."
    QT_TRID_NOOP("help.recorder.hip.wear.2.fix"),
    //: A fault as the person would say it. On the page: the recorder goes on the front of the chest
    //: strap.
    //% "It presses on my chest."
    QT_TRID_NOOP("help.recorder.chest.wear.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Smooth your shirt under it. Then make the strap a little longer."
    QT_TRID_NOOP("help.recorder.chest.wear.1.fix"),
    //: A fault as the person would say it. On the page: the recorder goes on the front of the chest
    //: strap.
    //% "It does not stay in the middle."
    QT_TRID_NOOP("help.recorder.chest.wear.2.question"),
    //: What to do about the fault in the text before this one.
    //% "See that both sides are fastened. Then close the strap a little tighter."
    QT_TRID_NOOP("help.recorder.chest.wear.2.fix"),
    //: A fault as the person would say it. On the page: the recorder sits in a harness of straps
    //: that is put on like a vest.
    //% "I do not know which way it goes."
    QT_TRID_NOOP("help.recorder.harness.wear.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Hold it up with the recorder facing away from you. The 2 long straps go over your "
    //% "shoulders."
    QT_TRID_NOOP("help.recorder.harness.wear.1.fix"),
    //: A fault as the person would say it. On the page: the recorder sits in a harness of straps
    //: that is put on like a vest.
    //% "The straps slip or rub."
    QT_TRID_NOOP("help.recorder.harness.wear.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Make them shorter if they slip, and longer if they rub. Keep them off your neck."
    QT_TRID_NOOP("help.recorder.harness.wear.2.fix"),
    //: A fault as the person would say it. On the page: a plug goes into the port of the recorder
    //: that has the same mark (the plug is pushed in).
    //% "The plug does not go in."
    QT_TRID_NOOP("help.plug.push.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Do not force it. Feel the mark again. Then turn the plug a little and try once more."
    QT_TRID_NOOP("help.plug.push.1.fix"),
    //: A fault as the person would say it. On the page: a plug goes into the port of the recorder
    //: that has the same mark (the plug is pushed in).
    //% "I cannot find the right port."
    QT_TRID_NOOP("help.plug.push.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Run your thumb along the recorder. Each port is an opening with its mark beside it."
    QT_TRID_NOOP("help.plug.push.2.fix"),
    //: A fault as the person would say it. On the page: a smooth plug, without a mark, goes into
    //: the port of the recorder that has none (the plug is pushed in).
    //% "The plug does not go in."
    QT_TRID_NOOP("help.plug.push.smooth.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Do not force it. Feel again for the smooth port. Then turn the plug a little and try once "
    //% "more."
    QT_TRID_NOOP("help.plug.push.smooth.1.fix"),
    //: A fault as the person would say it. On the page: a smooth plug, without a mark, goes into
    //: the port of the recorder that has none (the plug is pushed in).
    //% "I cannot find the smooth port."
    QT_TRID_NOOP("help.plug.push.smooth.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Run your thumb along the recorder. The smooth port is the opening with no mark beside "
    //% "it."
    QT_TRID_NOOP("help.plug.push.smooth.2.fix"),
    //: A fault as the person would say it. On the page: a plug goes into the port of the recorder
    //: that has the same mark (the plug is pushed in and turned clockwise).
    //% "The plug does not turn."
    QT_TRID_NOOP("help.plug.twist.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Take it out. Feel the mark again. Push it in all the way, then turn it clockwise."
    QT_TRID_NOOP("help.plug.twist.1.fix"),
    //: A fault as the person would say it. On the page: a plug goes into the port of the recorder
    //: that has the same mark (the plug is pushed in and turned clockwise).
    //% "I cannot find the right port."
    QT_TRID_NOOP("help.plug.twist.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Run your thumb along the recorder. Each port is an opening with its mark beside it."
    QT_TRID_NOOP("help.plug.twist.2.fix"),
    //: A fault as the person would say it. On the page: a smooth plug, without a mark, goes into
    //: the port of the recorder that has none (the plug is pushed in and turned clockwise).
    //% "The plug does not turn."
    QT_TRID_NOOP("help.plug.twist.smooth.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Take it out. Feel again for the smooth port. Push it in all the way, then turn it "
    //% "clockwise."
    QT_TRID_NOOP("help.plug.twist.smooth.1.fix"),
    //: A fault as the person would say it. On the page: a smooth plug, without a mark, goes into
    //: the port of the recorder that has none (the plug is pushed in and turned clockwise).
    //% "I cannot find the smooth port."
    QT_TRID_NOOP("help.plug.twist.smooth.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Run your thumb along the recorder. The smooth port is the opening with no mark beside "
    //% "it."
    QT_TRID_NOOP("help.plug.twist.smooth.2.fix"),
    //: A fault as the person would say it. On the page: a plug goes into the port of the recorder
    //: that has the same mark (the plug is pressed until it snaps).
    //% "The plug does not snap in."
    QT_TRID_NOOP("help.plug.snap.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Do not force it. Feel the mark again. Then turn the plug a little and press once more."
    QT_TRID_NOOP("help.plug.snap.1.fix"),
    //: A fault as the person would say it. On the page: a plug goes into the port of the recorder
    //: that has the same mark (the plug is pressed until it snaps).
    //% "I cannot find the right port."
    QT_TRID_NOOP("help.plug.snap.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Run your thumb along the recorder. Each port is an opening with its mark beside it."
    QT_TRID_NOOP("help.plug.snap.2.fix"),
    //: A fault as the person would say it. On the page: a smooth plug, without a mark, goes into
    //: the port of the recorder that has none (the plug is pressed until it snaps).
    //% "The plug does not snap in."
    QT_TRID_NOOP("help.plug.snap.smooth.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Do not force it. Feel again for the smooth port. Then turn the plug a little and press "
    //% "once more."
    QT_TRID_NOOP("help.plug.snap.smooth.1.fix"),
    //: A fault as the person would say it. On the page: a smooth plug, without a mark, goes into
    //: the port of the recorder that has none (the plug is pressed until it snaps).
    //% "I cannot find the smooth port."
    QT_TRID_NOOP("help.plug.snap.smooth.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Run your thumb along the recorder. The smooth port is the opening with no mark beside "
    //% "it."
    QT_TRID_NOOP("help.plug.snap.smooth.2.fix"),
    //: A fault as the person would say it. On the page: the 2 soft prongs of the nose tube (nasal
    //: cannula) go into the nostrils.
    //% "The prongs tickle or hurt."
    QT_TRID_NOOP("help.nasal_cannula.prongs.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Pull them out a little. They sit just inside the nose."
    QT_TRID_NOOP("help.nasal_cannula.prongs.1.fix"),
    //: A fault as the person would say it. On the page: the 2 soft prongs of the nose tube (nasal
    //: cannula) go into the nostrils.
    //% "The prongs slip out."
    QT_TRID_NOOP("help.nasal_cannula.prongs.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Hold them for now. They stay in once the tube is over your ears and under your chin."
    QT_TRID_NOOP("help.nasal_cannula.prongs.2.fix"),
    //: A fault as the person would say it. On the page: the 2 soft prongs of the nose tube (nasal
    //: cannula) go into the nostrils.
    //% "My nose is blocked."
    QT_TRID_NOOP("help.nasal_cannula.prongs.3.question"),
    //: What to do about the fault in the text before this one.
    //% "Blow your nose gently and go on. If no air gets through, call your clinic. Do not take "
    //% "anything new for it."
    QT_TRID_NOOP("help.nasal_cannula.prongs.3.fix"),
    //: A fault as the person would say it. On the page: the tube is laid over both ears.
    //% "It hurts behind my ears."
    QT_TRID_NOOP("help.nasal_cannula.ears.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Let the tube out a little. You can put a bit of soft cloth under it."
    QT_TRID_NOOP("help.nasal_cannula.ears.1.fix"),
    //: A fault as the person would say it. On the page: the tube is laid over both ears.
    //% "It slips off my ears."
    QT_TRID_NOOP("help.nasal_cannula.ears.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Take your glasses off. Hook the tube over again. On the next page you make it snug."
    QT_TRID_NOOP("help.nasal_cannula.ears.2.fix"),
    //: A fault as the person would say it. On the page: the small ring on the tube is slid up under
    //: the chin.
    //% "It feels tight when I swallow."
    QT_TRID_NOOP("help.nasal_cannula.chin.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Slide the ring down a little. Swallow again to test it."
    QT_TRID_NOOP("help.nasal_cannula.chin.1.fix"),
    //: A fault as the person would say it. On the page: the small ring on the tube is slid up under
    //: the chin.
    //% "The ring slides down."
    QT_TRID_NOOP("help.nasal_cannula.chin.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Hold both tubes with 1 hand and slide the ring up with the other. Turn your head to test "
    //% "it."
    QT_TRID_NOOP("help.nasal_cannula.chin.2.fix"),
    //: A fault as the person would say it. On the page: the tube is taped to both cheeks.
    //% "The tape does not stick."
    QT_TRID_NOOP("help.nasal_cannula.tape.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Dry your cheek and wipe off any cream. Then use a new strip."
    QT_TRID_NOOP("help.nasal_cannula.tape.1.fix"),
    //: A fault as the person would say it. On the page: the tube is taped to both cheeks.
    //% "I have a beard."
    QT_TRID_NOOP("help.nasal_cannula.tape.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Put the strip on bare skin above the beard."
    QT_TRID_NOOP("help.nasal_cannula.tape.2.fix"),
    //: A fault as the person would say it. On the page: the end of the nose tube is pushed on to
    //: the recorder.
    //% "The tube slides off."
    QT_TRID_NOOP("help.nasal_cannula.join.push.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Wipe both ends dry. Then push the tube on with a small turn, as far as it goes."
    QT_TRID_NOOP("help.nasal_cannula.join.push.1.fix"),
    //: A fault as the person would say it. On the page: the end of the nose tube is pushed on to
    //: the recorder.
    //% "I cannot find where it goes."
    QT_TRID_NOOP("help.nasal_cannula.join.push.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Look for a short round nozzle that is open in the middle. The tube fits only there."
    QT_TRID_NOOP("help.nasal_cannula.join.push.2.fix"),
    //: A fault as the person would say it. On the page: the end of the nose tube is turned on to
    //: the recorder, clockwise.
    //% "The tube does not turn."
    QT_TRID_NOOP("help.nasal_cannula.join.twist.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Take it off and set it on straight. Then turn it clockwise, the way the hands of a clock "
    //% "move."
    QT_TRID_NOOP("help.nasal_cannula.join.twist.1.fix"),
    //: A fault as the person would say it. On the page: the end of the nose tube is turned on to
    //: the recorder, clockwise.
    //% "I cannot find where it goes."
    QT_TRID_NOOP("help.nasal_cannula.join.twist.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Look for a short round nozzle that is open in the middle. The tube fits only there."
    QT_TRID_NOOP("help.nasal_cannula.join.twist.2.fix"),
    //: A fault as the person would say it. On the page: the end of the nose tube is pressed on to
    //: the recorder until it snaps.
    //% "The tube does not snap on."
    QT_TRID_NOOP("help.nasal_cannula.join.snap.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Take it off and set it on straight. Then press it until it snaps. Do not force it."
    QT_TRID_NOOP("help.nasal_cannula.join.snap.1.fix"),
    //: A fault as the person would say it. On the page: the end of the nose tube is pressed on to
    //: the recorder until it snaps.
    //% "I cannot find where it goes."
    QT_TRID_NOOP("help.nasal_cannula.join.snap.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Look for a short round nozzle that is open in the middle. The tube fits only there."
    QT_TRID_NOOP("help.nasal_cannula.join.snap.2.fix"),
    //: A fault as the person would say it. On the page: the breath (thermal) sensor sits on the
    //: nose tube, above the lip, in the breath of nose and mouth.
    //% "It touches my lip or nose."
    QT_TRID_NOOP("help.breath_sensor.place.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Bend the soft tips a little, away from your skin."
    QT_TRID_NOOP("help.breath_sensor.place.1.fix"),
    //: A fault as the person would say it. On the page: the breath (thermal) sensor sits on the
    //: nose tube, above the lip, in the breath of nose and mouth.
    //% "It does not stay in place."
    QT_TRID_NOOP("help.breath_sensor.place.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Push it back to the middle of the nose tube and press it on."
    QT_TRID_NOOP("help.breath_sensor.place.2.fix"),
    //: A fault as the person would say it. On the page: the finger clip goes on the index finger of
    //: the left hand.
    //% "My left hand is cold."
    QT_TRID_NOOP("help.finger_probe.place.left.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Hold it in warm water or rub it. Dry it well, then put the clip on."
    QT_TRID_NOOP("help.finger_probe.place.left.1.fix"),
    //: A fault as the person would say it. On the page: the finger clip goes on the index finger of
    //: the left hand.
    //% "The clip hurts or feels tight."
    QT_TRID_NOOP("help.finger_probe.place.left.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Take it off and put it on again, straight. If it still hurts, use the middle finger of "
    //% "your left hand."
    QT_TRID_NOOP("help.finger_probe.place.left.2.fix"),
    //: A fault as the person would say it. On the page: the finger clip goes on the index finger of
    //: the left hand.
    //% "The clip slides off."
    QT_TRID_NOOP("help.finger_probe.place.left.3.question"),
    //: What to do about the fault in the text before this one.
    //% "Dry your finger and push it all the way in. Lay the cable flat on the back of your left "
    //% "hand."
    QT_TRID_NOOP("help.finger_probe.place.left.3.fix"),
    //: A fault as the person would say it. On the page: the cable of the finger clip is taped to
    //: the back of the left hand while making a fist.
    //% "I cannot do it with 1 hand."
    QT_TRID_NOOP("help.finger_probe.tape_hand.left.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Rest your left hand on a table. Stick down 1 end of the strip, then smooth the rest over "
    //% "the cable."
    QT_TRID_NOOP("help.finger_probe.tape_hand.left.1.fix"),
    //: A fault as the person would say it. On the page: the cable of the finger clip is taped to
    //: the back of the left hand while making a fist.
    //% "The cable pulls on the clip."
    QT_TRID_NOOP("help.finger_probe.tape_hand.left.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Lift the strip slowly. Make a fist, let the cable hang loose and press the strip down "
    //% "again."
    QT_TRID_NOOP("help.finger_probe.tape_hand.left.2.fix"),
    //: A fault as the person would say it. On the page: the cable of the finger clip is taped to
    //: the left forearm.
    //% "The tape does not stick."
    QT_TRID_NOOP("help.finger_probe.tape_arm.left.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Dry the skin and wipe off any cream. Use a new strip where there is little hair."
    QT_TRID_NOOP("help.finger_probe.tape_arm.left.1.fix"),
    //: A fault as the person would say it. On the page: the cable of the finger clip is taped to
    //: the left forearm.
    //% "The cable pulls."
    QT_TRID_NOOP("help.finger_probe.tape_arm.left.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Lift the strip slowly. Bend your arm, let the cable hang loose and press the strip down "
    //% "again."
    QT_TRID_NOOP("help.finger_probe.tape_arm.left.2.fix"),
    //: A fault as the person would say it. On the page: last of all, the plug of the finger clip on
    //: the left hand goes into the recorder.
    //% "The cable does not reach."
    QT_TRID_NOOP("help.finger_probe.plug.left.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Bend your left arm. If it still does not reach, tape the cable again with less slack."
    QT_TRID_NOOP("help.finger_probe.plug.left.1.fix"),
    //: A fault as the person would say it. On the page: last of all, the plug of the finger clip on
    //: the left hand goes into the recorder.
    //% "The plug does not go in."
    QT_TRID_NOOP("help.finger_probe.plug.left.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Do not force it. See that it is the right port. Then turn the plug a little and try once "
    //% "more."
    QT_TRID_NOOP("help.finger_probe.plug.left.2.fix"),
    //: A fault as the person would say it. On the page: the finger clip goes on the index finger of
    //: the right hand.
    //% "My right hand is cold."
    QT_TRID_NOOP("help.finger_probe.place.right.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Hold it in warm water or rub it. Dry it well, then put the clip on."
    QT_TRID_NOOP("help.finger_probe.place.right.1.fix"),
    //: A fault as the person would say it. On the page: the finger clip goes on the index finger of
    //: the right hand.
    //% "The clip hurts or feels tight."
    QT_TRID_NOOP("help.finger_probe.place.right.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Take it off and put it on again, straight. If it still hurts, use the middle finger of "
    //% "your right hand."
    QT_TRID_NOOP("help.finger_probe.place.right.2.fix"),
    //: A fault as the person would say it. On the page: the finger clip goes on the index finger of
    //: the right hand.
    //% "The clip slides off."
    QT_TRID_NOOP("help.finger_probe.place.right.3.question"),
    //: What to do about the fault in the text before this one.
    //% "Dry your finger and push it all the way in. Lay the cable flat on the back of your right "
    //% "hand."
    QT_TRID_NOOP("help.finger_probe.place.right.3.fix"),
    //: A fault as the person would say it. On the page: the cable of the finger clip is taped to
    //: the back of the right hand while making a fist.
    //% "I cannot do it with 1 hand."
    QT_TRID_NOOP("help.finger_probe.tape_hand.right.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Rest your right hand on a table. Stick down 1 end of the strip, then smooth the rest over "
    //% "the cable."
    QT_TRID_NOOP("help.finger_probe.tape_hand.right.1.fix"),
    //: A fault as the person would say it. On the page: the cable of the finger clip is taped to
    //: the back of the right hand while making a fist.
    //% "The cable pulls on the clip."
    QT_TRID_NOOP("help.finger_probe.tape_hand.right.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Lift the strip slowly. Make a fist, let the cable hang loose and press the strip down "
    //% "again."
    QT_TRID_NOOP("help.finger_probe.tape_hand.right.2.fix"),
    //: A fault as the person would say it. On the page: the cable of the finger clip is taped to
    //: the right forearm.
    //% "The tape does not stick."
    QT_TRID_NOOP("help.finger_probe.tape_arm.right.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Dry the skin and wipe off any cream. Use a new strip where there is little hair."
    QT_TRID_NOOP("help.finger_probe.tape_arm.right.1.fix"),
    //: A fault as the person would say it. On the page: the cable of the finger clip is taped to
    //: the right forearm.
    //% "The cable pulls."
    QT_TRID_NOOP("help.finger_probe.tape_arm.right.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Lift the strip slowly. Bend your arm, let the cable hang loose and press the strip down "
    //% "again."
    QT_TRID_NOOP("help.finger_probe.tape_arm.right.2.fix"),
    //: A fault as the person would say it. On the page: last of all, the plug of the finger clip on
    //: the right hand goes into the recorder.
    //% "The cable does not reach."
    QT_TRID_NOOP("help.finger_probe.plug.right.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Bend your right arm. If it still does not reach, tape the cable again with less slack."
    QT_TRID_NOOP("help.finger_probe.plug.right.1.fix"),
    //: A fault as the person would say it. On the page: last of all, the plug of the finger clip on
    //: the right hand goes into the recorder.
    //% "The plug does not go in."
    QT_TRID_NOOP("help.finger_probe.plug.right.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Do not force it. See that it is the right port. Then turn the plug a little and try once "
    //% "more."
    QT_TRID_NOOP("help.finger_probe.plug.right.2.fix"),
    //: A fault as the person would say it. On the page: 2 heart pads (ECG electrodes) stick on the
    //: bare chest: under the right collarbone and on the lowest rib on the left.
    //% "A pad does not stick."
    QT_TRID_NOOP("help.ecg_electrodes.place.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Dry the skin and wipe off any cream. Press down the edge of the pad for 10 seconds."
    QT_TRID_NOOP("help.ecg_electrodes.place.1.fix"),
    //: A fault as the person would say it. On the page: 2 heart pads (ECG electrodes) stick on the
    //: bare chest: under the right collarbone and on the lowest rib on the left.
    //% "I have hair there."
    QT_TRID_NOOP("help.ecg_electrodes.place.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Move the pad a little, to a spot with less hair. Press it down well."
    QT_TRID_NOOP("help.ecg_electrodes.place.2.fix"),
    //: A fault as the person would say it. On the page: the body position sensor goes on the chest
    //: belt, arrow up.
    //% "The arrow points the wrong way."
    QT_TRID_NOOP("help.body_position_sensor.place.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Take the sensor off. Turn it so that the arrow points to your head, and put it back."
    QT_TRID_NOOP("help.body_position_sensor.place.1.fix"),
    //: A fault as the person would say it. On the page: the body position sensor goes on the chest
    //: belt, arrow up.
    //% "It slides to the side."
    QT_TRID_NOOP("help.body_position_sensor.place.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Move it back to the middle. Close the chest belt a little tighter. 2 fingers should still "
    //% "fit under it."
    QT_TRID_NOOP("help.body_position_sensor.place.2.fix"),
    //: A fault as the person would say it. On the page: the snore sensor (microphone) is taped to
    //: the side of the neck, next to the voice box.
    //% "The tape does not stick."
    QT_TRID_NOOP("help.snore_microphone.place.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Dry the skin and wipe off any cream. If you have a beard, go a little lower, to bare skin."
    QT_TRID_NOOP("help.snore_microphone.place.1.fix"),
    //: A fault as the person would say it. On the page: the snore sensor (microphone) is taped to
    //: the side of the neck, next to the voice box.
    //% "It bothers me when I swallow."
    QT_TRID_NOOP("help.snore_microphone.place.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Move it a little more to the side of your neck."
    QT_TRID_NOOP("help.snore_microphone.place.2.fix"),
    //: A fault as the person would say it. On the page: 2 pads (leg electrodes) stick on the outer
    //: front of the left lower leg; tape holds their cable.
    //% "A pad does not stick."
    QT_TRID_NOOP("help.leg_electrodes.left_leg.place.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Dry the skin and wipe off any cream. Pick a spot with little hair and press for 10 "
    //% "seconds."
    QT_TRID_NOOP("help.leg_electrodes.left_leg.place.1.fix"),
    //: A fault as the person would say it. On the page: 2 pads (leg electrodes) stick on the outer
    //: front of the left lower leg; tape holds their cable.
    //% "The cable pulls."
    QT_TRID_NOOP("help.leg_electrodes.left_leg.place.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Lift the strip slowly. Bend your knee, let the cable hang loose and press the strip down "
    //% "again."
    QT_TRID_NOOP("help.leg_electrodes.left_leg.place.2.fix"),
    //: A fault as the person would say it. On the page: 2 pads (leg electrodes) stick on the outer
    //: front of the right lower leg; tape holds their cable.
    //% "A pad does not stick."
    QT_TRID_NOOP("help.leg_electrodes.right_leg.place.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Dry the skin and wipe off any cream. Pick a spot with little hair and press for 10 "
    //% "seconds."
    QT_TRID_NOOP("help.leg_electrodes.right_leg.place.1.fix"),
    //: A fault as the person would say it. On the page: 2 pads (leg electrodes) stick on the outer
    //: front of the right lower leg; tape holds their cable.
    //% "The cable pulls."
    QT_TRID_NOOP("help.leg_electrodes.right_leg.place.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Lift the strip slowly. Bend your knee, let the cable hang loose and press the strip down "
    //% "again."
    QT_TRID_NOOP("help.leg_electrodes.right_leg.place.2.fix"),
    //: A fault as the person would say it. On the page: the recorder is started with a sliding
    //: switch.
    //% "The switch does not move."
    QT_TRID_NOOP("help.start.switch.1.question"),
    //: What to do about the fault in the text before this one.
    //% "Slide it, do not press it. Use your thumb and follow the arrow in the picture."
    QT_TRID_NOOP("help.start.switch.1.fix"),
    //: A fault as the person would say it. On the page: the recorder is started with a sliding
    //: switch.
    //% "Nothing happens."
    QT_TRID_NOOP("help.start.switch.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Slide it back. Wait 10 seconds and slide it again. Then go on and look at the light."
    QT_TRID_NOOP("help.start.switch.2.fix"),
    //: A fault as the person would say it. On the page: the recorder starts by itself at a set
    //: time.
    //% "I want to sleep before that time."
    QT_TRID_NOOP("help.start.set_time.1.question"),
    //: What to do about the fault in the text before this one.
    //% "You can. Keep the kit on. The recorder starts while you sleep."
    QT_TRID_NOOP("help.start.set_time.1.fix"),
    //: A fault as the person would say it. On the page: the recorder starts by itself at a set
    //: time.
    //% "I am late. Has it started yet?"
    QT_TRID_NOOP("help.start.set_time.2.question"),
    //: What to do about the fault in the text before this one.
    //% "Go on and look at the light. It shows if the recorder is recording."
    QT_TRID_NOOP("help.start.set_time.2.fix"),
};

} // namespace
