// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// English texts of all pages that are not steps, from the first page to the last, by page.
// Only the translation tools read this list; nothing uses it when the program runs.
#include <QtCore/qglobal.h>

namespace {

[[maybe_unused]] const char* const texts[] = {
    //: Title of the first page in the evening.
    //% "Tonight: your sleep test at home"
    QT_TRID_NOOP("welcome.title"),
    //: First page, under the title: when to begin and what this page does.
    //% "Start about 30 minutes before bed. This page goes with you, step by step."
    QT_TRID_NOOP("welcome.body"),
    //: First page, small. %1 is the study code, such as SM-0417.
    //% "Study code %1"
    QT_TRID_NOOP("welcome.code"),
    //: First page, small, when the kit is used for more than one night. %1 is the night, %2 how
    //: many there are.
    //% "Night %1 of %2"
    QT_TRID_NOOP("welcome.night"),
    //: Title of the page with questions that the clinic must know about.
    //% "Before you start"
    QT_TRID_NOOP("first.title"),
    //: Stands over a list; each line of the list completes it.
    //% "Is one of these true for you?"
    QT_TRID_NOOP("first.intro"),
    //: Line in the list "Is one of these true for you?".
    //% "I am allergic to tape"
    QT_TRID_NOOP("first.condition.tape_allergy"),
    //: Line in the list "Is one of these true for you?".
    //% "My skin is sore or broken where tape or pads go"
    QT_TRID_NOOP("first.condition.broken_skin"),
    //: Line in the list. The machine may be CPAP or a ventilator.
    //% "I use oxygen or a breathing machine"
    QT_TRID_NOOP("first.condition.oxygen"),
    //: Line in the list "Is one of these true for you?".
    //% "I have a pacemaker or another implant"
    QT_TRID_NOOP("first.condition.implant"),
    //: Line in the list: the person's age in years.
    //% "I am under 18"
    QT_TRID_NOOP("first.condition.under_18"),
    //: Line in the list "Is one of these true for you?".
    //% "I am pregnant"
    QT_TRID_NOOP("first.condition.pregnant"),
    //: Line in the list "Is one of these true for you?".
    //% "I am allergic to latex"
    QT_TRID_NOOP("first.condition.latex"),
    //: Line in the list: someone in the bed who could get caught in cables and tubes.
    //% "Someone in my bed could get caught in cords: a small child, or a person who gets confused"
    QT_TRID_NOOP("first.condition.cords"),
    //: Title of the page that follows when one of the conditions is true.
    //% "Call your clinic before you go on"
    QT_TRID_NOOP("call.title"),
    //: Under that title. The clinic decides; the person changes nothing on their own.
    //% "Tell them what is true for you. They decide if you can use the kit tonight. Do not change "
    //% "your treatment on your own."
    QT_TRID_NOOP("call.body"),
    //: Small heading over a second phone number.
    //% "When the clinic is closed"
    QT_TRID_NOOP("call.outside_hours"),
    //: Caution. %1 is the local emergency number.
    //% "Chest pain, severe trouble breathing or fainting: take the kit off and call %1."
    QT_TRID_NOOP("call.emergency"),
    //: Button: the person has called the clinic and may go on.
    //% "I called. Go on"
    QT_TRID_NOOP("call.go_on"),
    //: Opening hours of the clinic. %1 is days and times, such as "Mon - Fri: 8:00 AM - 5:00 PM".
    //% "Open: %1"
    QT_TRID_NOOP("call.hours"),
    //: Title of the list of what is in the bag.
    //% "See that everything is here"
    QT_TRID_NOOP("kit.title"),
    //: Under that title.
    //% "Lay the parts on a table or on the bed. Compare them with the pictures. Somebody who helps "
    //% "you is welcome."
    QT_TRID_NOOP("kit.body"),
    //: Button: nothing is missing.
    //% "Everything is here"
    QT_TRID_NOOP("kit.all_here"),
    //: Button: leads to the clinic's number.
    //% "Something is missing"
    QT_TRID_NOOP("kit.missing"),
    //: A thing in the bag, lower case.
    //% "roll of tape"
    QT_TRID_NOOP("item.tape_roll"),
    //: A thing in the bag, lower case: a soft pouch that holds the kit.
    //% "pouch"
    QT_TRID_NOOP("item.pouch"),
    //: A thing in the bag, lower case.
    //% "charger"
    QT_TRID_NOOP("item.charger"),
    //: A thing in the bag, lower case: the box in which the kit goes back.
    //% "return box"
    QT_TRID_NOOP("item.return_box"),
    //: A thing in the bag, lower case.
    //% "batteries"
    QT_TRID_NOOP("item.batteries"),
    //: A thing in the bag, lower case: printed instructions.
    //% "leaflet"
    QT_TRID_NOOP("item.leaflet"),
    //: Under the drawn person. %1 is a time of day, the planned one.
    //% "In bed by about %1 - on time"
    QT_TRID_NOOP("pace.on_time"),
    //: Under the drawn person, when it gets later than planned. No blame. %1 is a time of day.
    //% "In bed by about %1. That is fine."
    QT_TRID_NOOP("pace.later"),
    //: Under the drawn person, when it goes faster than planned. %1 is a time of day.
    //% "In bed by about %1. No need to hurry."
    QT_TRID_NOOP("pace.early"),
    //: Large button of a step: the part is on the body.
    //% "It is on"
    QT_TRID_NOOP("main.it_is_on"),
    //: Large button of a step: it is done.
    //% "Done"
    QT_TRID_NOOP("main.done"),
    //: Large button of a step: the plug is in.
    //% "It is plugged in"
    QT_TRID_NOOP("main.plugged"),
    //: Large button: go on to the next page.
    //% "Go on"
    QT_TRID_NOOP("main.next"),
    //: Large button of the step that turns the recorder on.
    //% "I slid the switch"
    QT_TRID_NOOP("main.switched"),
    //: Title of the page on which each sensor is looked at once more.
    //% "Is each part right?"
    QT_TRID_NOOP("check.title"),
    //: Under that title. "Yes" is the button beside each part.
    //% "Look at each part in turn. Tap Yes if it is right."
    QT_TRID_NOOP("check.body"),
    //: How a part looks or feels when it is right; stands beside its name and picture.
    //% "Flat and snug, and 2 fingers fit under it"
    QT_TRID_NOOP("check.effort_belt.expect"),
    //: How a part looks or feels when it is right; stands beside its name and picture.
    //% "Snapped on to the belt on both sides"
    QT_TRID_NOOP("check.effort_sensor.expect"),
    //: How a part looks or feels when it is right; stands beside its name and picture.
    //% "Held tight, with all plugs in"
    QT_TRID_NOOP("check.recorder.expect"),
    //: How a part looks or feels when it is right; stands beside its name and picture.
    //% "Prongs in the nose, tube over the ears, loose enough to swallow"
    QT_TRID_NOOP("check.nasal_cannula.expect"),
    //: How a part looks or feels when it is right; stands beside its name and picture.
    //% "Above the lip, and its tips touch no skin"
    QT_TRID_NOOP("check.breath_sensor.expect"),
    //: How a part looks or feels when it is right; stands beside its name and picture.
    //% "Nail up, finger all the way in, cable flat"
    QT_TRID_NOOP("check.finger_probe.expect"),
    //: How a part looks or feels when it is right; stands beside its name and picture.
    //% "Both pads stick flat all around"
    QT_TRID_NOOP("check.ecg_electrodes.expect"),
    //: How a part looks or feels when it is right; stands beside its name and picture.
    //% "In the middle, with the arrow to your head"
    QT_TRID_NOOP("check.body_position_sensor.expect"),
    //: How a part looks or feels when it is right; stands beside its name and picture.
    //% "Flat on the side of your neck"
    QT_TRID_NOOP("check.snore_microphone.expect"),
    //: How a part looks or feels when it is right; stands beside its name and picture.
    //% "Both pads stick flat, and the cable has slack"
    QT_TRID_NOOP("check.leg_electrodes.expect"),
    //: Large button: every part was looked at and is right.
    //% "All parts are right"
    QT_TRID_NOOP("check.all_right"),
    //: Title of the page on which the person says what the recorder's light does.
    //% "What does the light do?"
    QT_TRID_NOOP("light.title"),
    //: Under that title. %1 is a number of seconds.
    //% "Look at the light on the recorder. It may take %1 seconds. Then tap what you see."
    QT_TRID_NOOP("light.body"),
    //: A way the light can look: it does not shine.
    //% "The light stays dark"
    QT_TRID_NOOP("light.look.dark"),
    //: A way the light can look. %1 is a colour, such as "green".
    //% "The %1 light stays on"
    QT_TRID_NOOP("light.look.steady"),
    //: A way the light can look. %1 is a colour.
    //% "The %1 light: 1 short blink, then a pause"
    QT_TRID_NOOP("light.look.one_short"),
    //: A way the light can look. %1 is a colour, %2 a number from 2 on.
    //% "The %1 light: %2 short blinks, then a pause"
    QT_TRID_NOOP("light.look.short"),
    //: A way the light can look. %1 is a colour.
    //% "The %1 light: 1 long blink, again and again"
    QT_TRID_NOOP("light.look.long"),
    //: A way the light can look: on and off for the same time. %1 is a colour.
    //% "The %1 light blinks evenly"
    QT_TRID_NOOP("light.look.even"),
    //: Colour of a light, lower case. Stands alone and in "The %1 light stays on".
    //% "white"
    QT_TRID_NOOP("colour.white"),
    //: Colour of a light, lower case. Stands alone and in "The %1 light stays on".
    //% "green"
    QT_TRID_NOOP("colour.green"),
    //: Colour of a light, lower case. Stands alone and in "The %1 light stays on". An orange
    //: yellow.
    //% "amber"
    QT_TRID_NOOP("colour.amber"),
    //: Colour of a light, lower case. Stands alone and in "The %1 light stays on".
    //% "red"
    QT_TRID_NOOP("colour.red"),
    //: Colour of a light, lower case. Stands alone and in "The %1 light stays on".
    //% "blue"
    QT_TRID_NOOP("colour.blue"),
    //: Said when the light that was tapped means that all is well.
    //% "The recorder is recording. You can go to bed."
    QT_TRID_NOOP("light.then.go_on"),
    //: Said when the light that was tapped means that a plug may be loose.
    //% "Push each plug in once more. Then look at the light again."
    QT_TRID_NOOP("light.then.check_plugs"),
    //: Said when the light that was tapped means that the recorder did not start.
    //% "Go back 1 page and start the recorder once more. Then look at the light again."
    QT_TRID_NOOP("light.then.start_again"),
    //: Said when the light that was tapped needs the clinic. "It looks different" is the button on
    //: the page that leads to the number.
    //% "Call your clinic. Tap \"It looks different\" to see the number."
    QT_TRID_NOOP("light.then.call_clinic"),
    //: Large button: the light shows that it is recording.
    //% "It is recording. Go on"
    QT_TRID_NOOP("light.recording_button"),
    //: Title of the last page before the night.
    //% "Lights out"
    QT_TRID_NOOP("bed.title"),
    //: Line on the page before the night.
    //% "Bathroom? Go now. Free the cables first, then walk."
    QT_TRID_NOOP("bed.line.bathroom"),
    //: Line on the page before the night: where the phone should be.
    //% "Put your phone away from your pillow, but within reach."
    QT_TRID_NOOP("bed.line.phone"),
    //: Line on the page before the night, a caution.
    //% "Keep pets and children out of the bed and off the cables."
    QT_TRID_NOOP("bed.line.pets"),
    //: Line on the page before the night.
    //% "Leave the tablet beside the bed, on its charger."
    QT_TRID_NOOP("bed.line.tablet"),
    //: In place of that line while the tablet has no charger.
    //% "The tablet is not charging. Plug in its charger now, so that it lasts the night."
    QT_TRID_NOOP("bed.line.plug_in"),
    //: Line on the page before the night: how the dark page works.
    //% "Touch the dark page once to wake it. Then tap to note."
    QT_TRID_NOOP("bed.line.touch"),
    //: Caution on the page before the night. %1 is the local emergency number.
    //% "Nobody is watching you tonight. Chest pain, severe trouble breathing or fainting: take "
    //% "the kit off and call %1."
    QT_TRID_NOOP("bed.caution"),
    //: Large button: the light goes out now and the page goes dark.
    //% "Lights out now"
    QT_TRID_NOOP("bed.main"),
    //: On every night page. %1 is the local emergency number. Short.
    //% "Nobody is watching. Chest pain, severe trouble breathing or fainting: take the kit off "
    //% "and call %1."
    QT_TRID_NOOP("night.watch"),
    //: Answer to a tap at night; says what was noted.
    //% "Noted: awake"
    QT_TRID_NOOP("noted.awake"),
    //: Answer to a tap at night; says what was noted.
    //% "Noted: going back to sleep"
    QT_TRID_NOOP("noted.asleep"),
    //: Answer to a tap at night; says what was noted.
    //% "Noted: getting up"
    QT_TRID_NOOP("noted.up"),
    //: Answer to a tap at night; says what was noted.
    //% "Noted: back in bed"
    QT_TRID_NOOP("noted.back"),
    //: Answer to a tap at night; says what was noted. %1 is a part, such as "finger clip".
    //% "Noted: %1 is off"
    QT_TRID_NOOP("noted.off"),
    //: Answer to a tap at night; says what was noted. %1 is a part, such as "finger clip".
    //% "Noted: %1 is back on"
    QT_TRID_NOOP("noted.on"),
    //: Answer to a tap at night; says what was noted.
    //% "Noted: everything is still on"
    QT_TRID_NOOP("noted.all_on"),
    //: Answer to "Undo" at night: the last note is taken back.
    //% "Taken back: the last note"
    QT_TRID_NOOP("noted.undone"),
    //: Heading over pictures of the parts.
    //% "What came off?"
    QT_TRID_NOOP("night.which.off"),
    //: Heading over pictures of the parts that are off.
    //% "What is back on?"
    QT_TRID_NOOP("night.which.on"),
    //: Asked once when the person is back in bed.
    //% "Is everything still on?"
    QT_TRID_NOOP("night.still_on"),
    //: Asked before the night ends.
    //% "Up for the day?"
    QT_TRID_NOOP("night.up_confirm"),
    //: Heading of the help at night.
    //% "What should I do?"
    QT_TRID_NOOP("night.help.title"),
    //: Choice in the help at night, as the person would say it.
    //% "Something came off"
    QT_TRID_NOOP("night.help.off"),
    //: Choice in the help at night, as the person would say it.
    //% "The light looks wrong"
    QT_TRID_NOOP("night.help.light"),
    //: Advice at night, after the choice before this one. The clinic's number for the time when it
    //: is closed stands below.
    //% "Push each plug in once more and look again. Still wrong? Call the number below, or keep "
    //% "the kit on and sleep."
    QT_TRID_NOOP("night.help.light.advice"),
    //: Choice in the help at night, as the person would say it.
    //% "My skin itches or hurts"
    QT_TRID_NOOP("night.help.skin"),
    //: Advice at night, after the choice before this one. The clinic's number for the time when it
    //: is closed stands below. %1 is the local emergency number.
    //% "Take that tape or part off slowly and leave it off. If your face swells or you cannot "
    //% "breathe well, call %1."
    QT_TRID_NOOP("night.help.skin.advice"),
    //: Choice in the help at night, as the person would say it.
    //% "I feel ill"
    QT_TRID_NOOP("night.help.unwell"),
    //: Advice at night after "I feel ill". %1 is the local emergency number, which also stands
    //: below.
    //% "Nobody is watching. Chest pain, severe trouble breathing or fainting: take the kit off "
    //% "and call %1 now."
    QT_TRID_NOOP("night.help.unwell.advice"),
    //: Choice in the help at night, as the person would say it.
    //% "I want to stop"
    QT_TRID_NOOP("night.help.stop"),
    //: Advice at night, after the choice before this one. The clinic's number for the time when it
    //: is closed stands below. %1 is the local emergency number.
    //% "You can stop at any time. Take tape off slowly, then the rest. Call your clinic in the "
    //% "morning. If you are very ill, call %1."
    QT_TRID_NOOP("night.help.stop.advice"),
    //: Night: how to put a part back. After it comes: "Now look at the recorder's light".
    //% "Put the belt back. Breathe out and close it. 2 fingers should fit under it."
    QT_TRID_NOOP("night.refit.effort_belt"),
    //: Night: how to put a part back. After it comes: "Now look at the recorder's light".
    //% "Press the sensor on to the belt until both sides snap."
    QT_TRID_NOOP("night.refit.effort_sensor"),
    //: Night: how to put a part back. After it comes: "Now look at the recorder's light".
    //% "Fasten the recorder where it was. Push in any plug that is loose."
    QT_TRID_NOOP("night.refit.recorder"),
    //: Night: how to put a part back. After it comes: "Now look at the recorder's light".
    //% "Put the prongs in your nose and the tube over your ears. Slide the ring under your chin, "
    //% "loose enough to swallow."
    QT_TRID_NOOP("night.refit.nasal_cannula"),
    //: Night: how to put a part back. After it comes: "Now look at the recorder's light".
    //% "Push it back to the middle of the nose tube. Its tips touch no skin."
    QT_TRID_NOOP("night.refit.breath_sensor"),
    //: Night: how to put a part back. After it comes: "Now look at the recorder's light".
    //% "Hold your nail side up and push the same finger all the way in."
    QT_TRID_NOOP("night.refit.finger_probe"),
    //: Night: how to put a part back. After it comes: "Now look at the recorder's light".
    //% "Dry the skin. Press the pad back on for 10 seconds."
    QT_TRID_NOOP("night.refit.ecg_electrodes"),
    //: Night: how to put a part back. After it comes: "Now look at the recorder's light".
    //% "Fasten it in the middle of the chest belt, with the arrow to your head."
    QT_TRID_NOOP("night.refit.body_position_sensor"),
    //: Night: how to put a part back. After it comes: "Now look at the recorder's light".
    //% "Put it back on the side of your neck. Press the tape down. Keep the cable off your neck."
    QT_TRID_NOOP("night.refit.snore_microphone"),
    //: Night: how to put a part back. After it comes: "Now look at the recorder's light".
    //% "Dry the skin. Press the pads and the tape back on for 10 seconds."
    QT_TRID_NOOP("night.refit.leg_electrodes"),
    //: Night: after a part was put back on.
    //% "Now look at the recorder's light. Does it show that it is recording? If not, push each "
    //% "plug in once more."
    QT_TRID_NOOP("night.look_light"),
    //: Title of the first page in the morning.
    //% "Good morning"
    QT_TRID_NOOP("morning.title"),
    //: Under that title: the kit stays on until the questions are done.
    //% "Leave the kit on for now. First come some short questions. Then you take it off, step by "
    //% "step."
    QT_TRID_NOOP("morning.body"),
    //: In the morning, when the tablet was off in the night. %1 and %2 are times.
    //% "This tablet was off for some time between %1 and %2. Please add what it could not note."
    QT_TRID_NOOP("morning.gap"),
    //: Under a question about the night, for the same reason. %1 and %2 are times.
    //% "The tablet was off for some time between %1 and %2. Did anything happen then?"
    QT_TRID_NOOP("q.hint.gap"),
    //: On the last page. %1 is a time.
    //% "Look at your skin once more at %1. Leave this page open and we will ask."
    QT_TRID_NOOP("finished.skin"),
    //: Title half an hour after the tape came off.
    //% "Look at your skin once more"
    QT_TRID_NOOP("skin.again.title"),
    //: Half an hour later, when the skin is still sore. %1 is the clinic's phone number.
    //% "Do not rub or cover the spot. Call your clinic: %1."
    QT_TRID_NOOP("skin.again.hurt"),
    //: Question in the morning, the title of its page. At most 45 characters.
    //% "When did you get into bed?"
    QT_TRID_NOOP("q.into_bed.title"),
    //: The same question in 2 or 3 words, for the list of answers.
    //% "Into bed"
    QT_TRID_NOOP("q.into_bed.short"),
    //: Question in the morning, the title of its page. At most 45 characters.
    //% "When did you put the light out to sleep?"
    QT_TRID_NOOP("q.lights_out.title"),
    //: The same question in 2 or 3 words, for the list of answers.
    //% "Lights out"
    QT_TRID_NOOP("q.lights_out.short"),
    //: Question in the morning, the title of its page. At most 45 characters.
    //% "How long after lights out did you sleep?"
    QT_TRID_NOOP("q.asleep_after.title"),
    //: The same question in 2 or 3 words, for the list of answers.
    //% "Time to fall asleep"
    QT_TRID_NOOP("q.asleep_after.short"),
    //: Question in the morning, the title of its page. At most 45 characters.
    //% "Were you awake in the night?"
    QT_TRID_NOOP("q.awake.title"),
    //: The same question in 2 or 3 words, for the list of answers.
    //% "Awake at night"
    QT_TRID_NOOP("q.awake.short"),
    //: Question in the morning, the title of its page. At most 45 characters.
    //% "Did any part come off in the night?"
    QT_TRID_NOOP("q.off.title"),
    //: The same question in 2 or 3 words, for the list of answers.
    //% "Parts that came off"
    QT_TRID_NOOP("q.off.short"),
    //: Question in the morning, the title of its page. At most 45 characters.
    //% "When was your final waking this morning?"
    QT_TRID_NOOP("q.final_waking.title"),
    //: The same question in 2 or 3 words, for the list of answers.
    //% "Final waking"
    QT_TRID_NOOP("q.final_waking.short"),
    //: Question in the morning, the title of its page. At most 45 characters. This is the time when
    //: the person turned the light on or gave up on more sleep.
    //% "When did you stop trying to sleep?"
    QT_TRID_NOOP("q.lights_on.title"),
    //: The same question in 2 or 3 words, for the list of answers.
    //% "Lights on"
    QT_TRID_NOOP("q.lights_on.short"),
    //: Question in the morning, the title of its page. At most 45 characters.
    //% "When did you get up for the day?"
    QT_TRID_NOOP("q.out_of_bed.title"),
    //: The same question in 2 or 3 words, for the list of answers.
    //% "Up for the day"
    QT_TRID_NOOP("q.out_of_bed.short"),
    //: Question in the morning, the title of its page. At most 45 characters. After the final waking:
    //: staying in bed and trying to sleep again.
    //% "How long did you try to sleep after that?"
    QT_TRID_NOOP("q.tried_to_sleep_after_waking.title"),
    //: The same question in 2 or 3 words, for the list of answers.
    //% "Trying to sleep after that"
    QT_TRID_NOOP("q.tried_to_sleep_after_waking.short"),
    //: Question in the morning, the title of its page. At most 45 characters. The person's own idea.
    //% "How long did you sleep, all in all?"
    QT_TRID_NOOP("q.slept.title"),
    //: The same question in 2 or 3 words, for the list of answers.
    //% "Sleep, all in all"
    QT_TRID_NOOP("q.slept.short"),
    //: Question in the morning, the title of its page. At most 45 characters.
    //% "How was it next to your usual nights?"
    QT_TRID_NOOP("q.compare.title"),
    //: The same question in 2 or 3 words, for the list of answers.
    //% "Next to usual nights"
    QT_TRID_NOOP("q.compare.short"),
    //: Question in the morning, the title of its page. At most 45 characters.
    //% "What else should your clinic know?"
    QT_TRID_NOOP("q.comment.title"),
    //: The same question in 2 or 3 words, for the list of answers.
    //% "Your comment"
    QT_TRID_NOOP("q.comment.short"),
    //: Under a question. %1 is a time from what was tapped at night.
    //% "Your night notes say %1."
    QT_TRID_NOOP("q.hint.notes"),
    //: Under a question: nothing was tapped about it.
    //% "We have no note of this."
    QT_TRID_NOOP("q.hint.none"),
    //: Under the question about being awake. %1 is a time.
    //% "You noted getting up at %1, but not coming back to bed. When was that?"
    QT_TRID_NOOP("q.hint.forgot_back"),
    //: Under the question what came off. %1 is a time.
    //% "At %1 you noted that something came off. Which part was it?"
    QT_TRID_NOOP("q.hint.unnamed_off"),
    //: Answer about this night.
    //% "Better than usual"
    QT_TRID_NOOP("q.compare.better"),
    //: Answer about this night.
    //% "Like a usual night"
    QT_TRID_NOOP("q.compare.usual"),
    //: Answer about this night.
    //% "Worse than usual"
    QT_TRID_NOOP("q.compare.worse"),
    //: Small line over a question. %1 is its number, %2 how many there are.
    //% "Question %1 of %2"
    QT_TRID_NOOP("q.progress"),
    //: Answer to "Were you awake in the night?".
    //% "No, I slept through"
    QT_TRID_NOOP("q.none_awake"),
    //: Answer to "Did any part come off in the night?".
    //% "Nothing came off"
    QT_TRID_NOOP("q.none_off"),
    //: An answer in the list of answers. %1 is a time.
    //% "%1"
    QT_TRID_NOOP("answer.exact"),
    //: An answer in the list of answers. %1 is a time, %2 a number of minutes.
    //% "About %1, give or take %2 min"
    QT_TRID_NOOP("answer.about"),
    //: An answer in the list of answers. %1 and %2 are times.
    //% "Between %1 and %2"
    QT_TRID_NOOP("answer.between"),
    //: An answer in the list of answers. %1 is a number of minutes.
    //% "%1 min"
    QT_TRID_NOOP("answer.minutes"),
    //: A length of time. %1 hours and %2 minutes; both may be 0.
    //% "%1 h %2 min"
    QT_TRID_NOOP("answer.hours_minutes"),
    //: On a button that makes a length of time longer or shorter by this much.
    //% "1 h"
    QT_TRID_NOOP("amount.hour"),
    //: In the list of answers: the question was skipped.
    //% "Skipped"
    QT_TRID_NOOP("answer.skipped"),
    //: In the list of answers: the person does not know.
    //% "Not sure"
    QT_TRID_NOOP("answer.unsure"),
    //: In the list of answers: there is nothing to tell.
    //% "None"
    QT_TRID_NOOP("answer.none"),
    //: A time awake. %1 and %2 are times.
    //% "Awake %1 to %2"
    QT_TRID_NOOP("answer.awake_from_to"),
    //: A time awake. %1 is a time, %2 a number of minutes.
    //% "Awake from %1, about %2 min"
    QT_TRID_NOOP("answer.awake_from"),
    //: A part that came off. %1 is the part, %2 and %3 are times.
    //% "%1: off %2 to %3"
    QT_TRID_NOOP("answer.off_from_to"),
    //: A part that came off and stayed off. %1 is the part, %2 a time.
    //% "%1: off from %2"
    QT_TRID_NOOP("answer.off_from"),
    //: A part that came off, nobody knows when. %1 is the part, %2 and %3 are times.
    //% "%1: off since some time between %2 and %3"
    QT_TRID_NOOP("answer.off_soon"),
    //: Beside a time, to tell which one is meant. %1 is a day of the week.
    //% "%1 evening"
    QT_TRID_NOOP("day.evening"),
    //: Beside a time from midnight to 5 AM. %1 is the day of the week that begins at that midnight.
    //% "%1, after midnight"
    QT_TRID_NOOP("day.night"),
    //: Beside a time, to tell which one is meant. %1 is a day of the week.
    //% "%1 morning"
    QT_TRID_NOOP("day.morning"),
    //: Beside a time, to tell which one is meant. %1 is a day of the week.
    //% "%1 afternoon"
    QT_TRID_NOOP("day.afternoon"),
    //: Title of the list of all answers.
    //% "Check your answers"
    QT_TRID_NOOP("review.title"),
    //: Under that title.
    //% "Change what is not right. It is fine to leave answers out."
    QT_TRID_NOOP("review.body"),
    //: Large button: the answers are right.
    //% "My answers are right"
    QT_TRID_NOOP("review.main"),
    //: Title of a page that shows 2 answers side by side. Kind, no blame.
    //% "2 answers do not fit together"
    QT_TRID_NOOP("puzzle.title"),
    //: On that page: why they do not fit. Buttons below change one of them or leave both.
    //% "Lights on would come before lights out. Which time should change?"
    QT_TRID_NOOP("puzzle.lights_on_before_lights_out"),
    //: On that page: why they do not fit. Buttons below change one of them or leave both.
    //% "This would be before or after your night. Which time should change?"
    QT_TRID_NOOP("puzzle.outside_night"),
    //: On that page: why they do not fit. Buttons below change one of them or leave both.
    //% "The times asleep and awake add up to more than the time in bed. Which should change?"
    QT_TRID_NOOP("puzzle.longer_than_bed"),
    //: On that page: why they do not fit. Buttons below change one of them or leave both.
    //% "The night would be longer than 24 hours. Which time should change?"
    QT_TRID_NOOP("puzzle.too_long"),
    //: On that page: why they do not fit. Buttons below change one of them or leave both. %1 and %2
    //: are names of questions, such as "Into bed".
    //% "These times are the wrong way around: %1, %2. Which time should change?"
    QT_TRID_NOOP("puzzle.order"),
    //: Name of a time that nobody asked about: the recorder's light showed that it records.
    //% "Recording seen to start"
    QT_TRID_NOOP("puzzle.recording_from"),
    //: Name of a time that nobody asked about: the person switched the recorder off.
    //% "Recorder stopped"
    QT_TRID_NOOP("puzzle.recording_to"),
    //: Note beside a time, on the night when the clocks go back. %1 is a time.
    //% "%1 came twice that night. We will ask which one."
    QT_TRID_NOOP("hour.note_twice"),
    //: Note beside a time, on the night when the clocks go forward. %1 is a time.
    //% "%1 did not come that night. We will ask what you mean."
    QT_TRID_NOOP("hour.note_never"),
    //: Note beside a time that came twice; the person does not know which of the two it was.
    //% "%1, the first or the second one"
    QT_TRID_NOOP("hour.note_either"),
    //: A time that came twice that night: the first of the two. %1 is a time.
    //% "%1 (the first)"
    QT_TRID_NOOP("hour.first"),
    //: A time that came twice that night: the second of the two. %1 is a time.
    //% "%1 (the second)"
    QT_TRID_NOOP("hour.second"),
    //: Question, on the night when the clocks go back. %1 is a time.
    //% "%1 came twice that night. Which one do you mean?"
    QT_TRID_NOOP("hour.twice"),
    //: Under that question.
    //% "The clocks went back, so one hour came 2 times."
    QT_TRID_NOOP("hour.twice_why"),
    //: Question, on the night when the clocks go forward. %1 is a time.
    //% "%1 did not come that night. Which time do you mean?"
    QT_TRID_NOOP("hour.never"),
    //: Under that question.
    //% "The clocks went forward and left it out."
    QT_TRID_NOOP("hour.never_why"),
    //: One of 2 answers: which of 2 equal times. %1 is a time.
    //% "%1, before the clocks went back"
    QT_TRID_NOOP("hour.before_back"),
    //: One of 2 answers: which of 2 equal times. %1 is a time.
    //% "%1, after the clocks went back"
    QT_TRID_NOOP("hour.after_back"),
    //: One of 2 answers. %1 is a time.
    //% "%1, before the clocks went forward"
    QT_TRID_NOOP("hour.before_forward"),
    //: One of 2 answers. %1 is a time.
    //% "%1, after the clocks went forward"
    QT_TRID_NOOP("hour.after_forward"),
    //: First sentence of the result: what the notes mean and what to do now. Never words like
    //: adequate, valid, normal; never a score.
    //% "From your notes, this looks like a long enough night. You can pack the kit."
    QT_TRID_NOOP("result.sentence.enough"),
    //: First sentence of the result: what the notes mean and what to do now. Never words like
    //: adequate, valid, normal; never a score.
    //% "From your notes, this night may be long enough. Pack the kit, and your clinic will look."
    QT_TRID_NOOP("result.sentence.borderline"),
    //: First sentence of the result: what the notes mean and what to do now. Never words like
    //: adequate, valid, normal; never a score.
    //% "From your notes, this looks like a short night. Pack the kit and ask your clinic what "
    //% "comes next."
    QT_TRID_NOOP("result.sentence.short"),
    //: First sentence of the result: what the notes mean and what to do now. Never words like
    //: adequate, valid, normal; never a score.
    //% "Your notes do not show how long the night was. Pack the kit, and your clinic will look."
    QT_TRID_NOOP("result.sentence.unknown"),
    //: Under that sentence. %1 and %2 are numbers of hours, such as "5" and "6 and a half".
    //% "Hours with the needed sensors in place: about %1 to %2"
    QT_TRID_NOOP("result.range"),
    //: Under that sentence. %1 is a number of hours, such as "6 and a half".
    //% "Hours with the needed sensors in place: about %1"
    QT_TRID_NOOP("result.range_one"),
    //: Under that sentence.
    //% "Hours with the needed sensors in place: less than 1"
    QT_TRID_NOOP("result.under_one"),
    //: A number of hours and a half. %1 is the whole number.
    //% "%1 and a half"
    QT_TRID_NOOP("result.half"),
    //: Under the picture of the night, in which some bars fade at their ends.
    //% "Where a bar fades, the time is not sure."
    QT_TRID_NOOP("result.explain"),
    //: After that sentence.
    //% "Short gaps are common and no one's fault."
    QT_TRID_NOOP("result.gaps"),
    //: Near the result. %1 is the clinic's phone number.
    //% "Your clinic decides from the recording. Questions? Call %1."
    QT_TRID_NOOP("result.clinic"),
    //: Name of the row for sleep in the picture of the night.
    //% "Asleep"
    QT_TRID_NOOP("result.lane.sleep"),
    //: Mark in the picture of the night.
    //% "Clocks go back"
    QT_TRID_NOOP("result.clock_back"),
    //: Mark in the picture of the night.
    //% "Clocks go forward"
    QT_TRID_NOOP("result.clock_forward"),
    //: Large button: the next pages say how to stop the recorder and take the kit off.
    //% "Stop the recorder and take off the kit"
    QT_TRID_NOOP("result.main"),
    //: Title of a page: the recorder is stopped with its switch.
    //% "Turn the recorder off"
    QT_TRID_NOOP("off.stop.switch"),
    //: Under that title.
    //% "Slide the switch back until it stops. The recording ends now."
    QT_TRID_NOOP("off.stop.switch.body"),
    //: Title of a page: the recorder stops when the last plug is pulled.
    //% "Stop the recorder"
    QT_TRID_NOOP("off.stop.last_plug"),
    //: Under that title.
    //% "Pull the plug of the finger clip out of the recorder. The recording ends now."
    QT_TRID_NOOP("off.stop.last_plug.body"),
    //: Title of a page: the recorder stops without being touched.
    //% "The recorder stops by itself"
    QT_TRID_NOOP("off.stop.set_time"),
    //: Under that title.
    //% "You do not have to press anything. Go on and take off the kit."
    QT_TRID_NOOP("off.stop.set_time.body"),
    //: Title of a page.
    //% "Take off the tape slowly"
    QT_TRID_NOOP("off.tape.title"),
    //: Under that title.
    //% "Fold the strip back along your skin. Pull it low and slow. Hold the skin with your other "
    //% "hand."
    QT_TRID_NOOP("off.tape.body"),
    //: Caution on that page.
    //% "Do not tear it off: that can hurt your skin. If it sticks hard, wet it with warm water "
    //% "first."
    QT_TRID_NOOP("off.tape.caution"),
    //: Title of a page.
    //% "Take off the rest of the kit"
    QT_TRID_NOOP("off.rest.title"),
    //: Under that title.
    //% "Take off the sensors, then the belts and the recorder."
    QT_TRID_NOOP("off.rest.body"),
    //: Title of a page: the plugs are pulled out of the recorder. Next to a picture of it. At most 45
    //: characters.
    //% "Pull out the plugs"
    QT_TRID_NOOP("off.unplug.title"),
    //: Title of a page: after the plugs that snapped in, the others are pulled out of the recorder. Next
    //: to a picture of it. At most 45 characters.
    //% "Pull out the other plugs"
    QT_TRID_NOOP("off.unplug.other.title"),
    //: Under that title, of plugs that were pushed in.
    //% "Hold each plug, not its cable. Pull it straight out of the recorder."
    QT_TRID_NOOP("off.unplug.push.body"),
    //: Under the first of those titles, of plugs that snapped in: they are pressed on both sides to let
    //: go.
    //% "Hold each plug, not its cable. Press it on both sides and pull it out of the recorder."
    QT_TRID_NOOP("off.unplug.snap.body"),
    //: Under that title, when the kit has plugs that were turned in, clockwise.
    //% "Hold each plug, not its cable. Turn it to the left and pull it out of the recorder."
    QT_TRID_NOOP("off.unplug.twist.body"),
    //: Title of a page: the end of the nose tube, which was turned on to the recorder in the evening,
    //: is turned off. Next to a picture of it. At most 45 characters.
    //% "Turn the tube off the recorder"
    QT_TRID_NOOP("off.untwist.title"),
    //: Under that title. "To the left" is against the clock.
    //% "Turn the ring of the tube to the left. Then pull the tube off the recorder."
    QT_TRID_NOOP("off.untwist.body"),
    //: Title of a page: the small sensors, which snapped on to studs of the belts in the evening, are
    //: pulled off. Next to a picture of it. At most 45 characters.
    //% "Pull the sensors off the belts"
    QT_TRID_NOOP("off.unsnap.title"),
    //: Under that title.
    //% "Hold the belt with 1 hand. Pull off the small sensor with the other."
    QT_TRID_NOOP("off.unsnap.body"),
    //: Title of a page.
    //% "Look at your skin"
    QT_TRID_NOOP("skin.title"),
    //: Under that title.
    //% "Look at each spot where tape or a pad was. Look for red skin, a blister or a tear."
    QT_TRID_NOOP("skin.body"),
    //: On the same page.
    //% "Look once more in 30 minutes."
    QT_TRID_NOOP("skin.again"),
    //: On the same page, when the person said that the skin is red or hurts. %1 is the clinic's
    //: phone number.
    //% "Do not rub or cover the spot. Is it still red, torn or blistered after 30 minutes? Call "
    //% "your clinic: %1."
    QT_TRID_NOOP("skin.hurt.advice"),
    //: Title of the list of what goes back.
    //% "Pack the kit"
    QT_TRID_NOOP("pack.title"),
    //: Under that title.
    //% "Put each part in the bag. Tap it when it is in."
    QT_TRID_NOOP("pack.body"),
    //: Large button: everything is in the bag.
    //% "Everything is packed"
    QT_TRID_NOOP("pack.main"),
    //: Title of the last page.
    //% "Thank you. You are done."
    QT_TRID_NOOP("finished.title"),
    //: Under that title.
    //% "Your diary is saved."
    QT_TRID_NOOP("finished.body"),
    //: Title of the last page of a night when another night follows. %1 is the number of the night.
    //% "Night %1 is saved"
    QT_TRID_NOOP("finished.next.title"),
    //: Under that title.
    //% "Keep the kit and the tablet here for the next night."
    QT_TRID_NOOP("finished.next.body"),
    //: Under that, when the kit has a charger for the recorder.
    //% "Charge the recorder today, so that it is ready tonight."
    QT_TRID_NOOP("finished.next.charge"),
    //: Large button on that page: opens the first page of the next night.
    //% "Begin the next night"
    QT_TRID_NOOP("finished.next.main"),
    //: On the last page, small. %1 is the name of the saved record.
    //% "Saved as %1"
    QT_TRID_NOOP("finished.record"),
    //: On the last page. %1 is a date.
    //% "Bring the kit back by %1."
    QT_TRID_NOOP("finished.return"),
    //: On the last page, when the record could not be written. %1 is the reason.
    //% "Your notes are safe, but the record could not be written: %1"
    QT_TRID_NOOP("finished.no_record"),
    //: On the last page, about the tablet.
    //% "Bring the tablet back too. Leave it as it is: your diary is on it."
    QT_TRID_NOOP("finished.keep"),
    //: Title of a page of trouble. No blame.
    //% "The tablet is full"
    QT_TRID_NOOP("trouble.disk_full.title"),
    //: Under that title. %1 is the clinic's phone number; it may be missing, so it stands alone at
    //: the end.
    //% "All your notes so far are safe. New ones cannot be saved. Keep the kit on, write your "
    //% "times on paper and call your clinic. %1"
    QT_TRID_NOOP("trouble.disk_full.body"),
    //: Title of a page of trouble. No blame.
    //% "The tablet cannot save notes"
    QT_TRID_NOOP("trouble.read_only.title"),
    //: Under that title. %1 is the clinic's phone number; it may be missing, so it stands alone at
    //: the end.
    //% "All your notes so far are safe. Keep the kit on, write your times on paper and call your "
    //% "clinic. %1"
    QT_TRID_NOOP("trouble.read_only.body"),
    //: Title of a page of trouble. No blame.
    //% "The place for your diary is missing"
    QT_TRID_NOOP("trouble.no_place.title"),
    //: Under that title. The place is a folder, or a memory stick. %1 is the clinic's phone number;
    //: it may be missing, so it stands alone at the end.
    //% "All your notes are safe. If there is a memory stick, put it in and try again. If not, call "
    //% "your clinic. %1"
    QT_TRID_NOOP("trouble.no_place.body"),
    //: Title of a page of trouble. No blame.
    //% "This page is open twice"
    QT_TRID_NOOP("trouble.second_copy.title"),
    //: Under that title. %1 is the clinic's phone number; it may be missing, so it stands alone at
    //: the end.
    //% "Nothing is lost. Close the other one, then try again. If that does not help, call your "
    //% "clinic. %1"
    QT_TRID_NOOP("trouble.second_copy.body"),
    //: Title of a page of trouble. No blame.
    //% "Some notes could not be read"
    QT_TRID_NOOP("trouble.damaged.title"),
    //: Under that title. %1 is the clinic's phone number; it may be missing, so it stands alone at
    //: the end.
    //% "What could be read is kept, and nothing was deleted. You can go on. Please tell your "
    //% "clinic. %1"
    QT_TRID_NOOP("trouble.damaged.body"),
    //: Title of a page of trouble. No blame.
    //% "Your last note may not be saved"
    QT_TRID_NOOP("trouble.sync.title"),
    //: Under that title. %1 is the clinic's phone number; it may be missing, so it stands alone at
    //: the end.
    //% "All notes before it are safe. Try again. If it comes back, write your times on paper and "
    //% "call your clinic. %1"
    QT_TRID_NOOP("trouble.sync.body"),
};

} // namespace
