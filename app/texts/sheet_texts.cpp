// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// English texts of the printed sheet that no screen has.
// Only the translation tools read this list; nothing uses it when the program runs.
#include <QtCore/qglobal.h>

namespace {

[[maybe_unused]] const char* const texts[] = {
    //: Title of the printed sheet that goes home with the kit.
    //% "Your sleep test at home"
    QT_TRID_NOOP("sheet.title"),
    //: Sheet, over the clinic's phone number in very large type.
    //% "Questions or trouble? Call"
    QT_TRID_NOOP("sheet.call"),
    //: Sheet, small, over the study code, such as SM-0417.
    //% "Study code"
    QT_TRID_NOOP("sheet.code"),
    //: Sheet: said by a screen reader in place of the square code. %1 is the study code.
    //% "QR code with the study code %1"
    QT_TRID_NOOP("sheet.qr"),
    //: Heading on the sheet, over the list of the things in the bag.
    //% "What is in the bag"
    QT_TRID_NOOP("sheet.bag.title"),
    //: Sheet, under that list. %1 is the clinic's phone number.
    //% "Is something missing? Call your clinic: %1."
    QT_TRID_NOOP("sheet.bag.missing"),
    //: Heading on the sheet: what to do before the kit is put on.
    //% "Before bed"
    QT_TRID_NOOP("sheet.before.title"),
    //: Sheet, under that heading. %1 and %2 are times of day.
    //% "Start at %1. Then you are in bed by about %2."
    QT_TRID_NOOP("sheet.before.start"),
    //: Heading on the sheet, over the numbered steps with pictures.
    //% "Put the kit on"
    QT_TRID_NOOP("sheet.on.title"),
    //: Sheet: a step that is done in the same way as one before it. %1 is the number of that step.
    //% "Do it as in step %1."
    QT_TRID_NOOP("sheet.like"),
    //: Heading on the sheet: what the recorder's light can look like and what it means.
    //% "The light on the recorder"
    QT_TRID_NOOP("sheet.light.title"),
    //: Sheet, under that heading. %1 is a number of seconds.
    //% "Look at the light for a few seconds. It may take %1 seconds to come on."
    QT_TRID_NOOP("sheet.light.body"),
    //: Sheet, under the list of what the light can look like. %1 is the clinic's phone number.
    //% "Does the light do something else? Call your clinic: %1."
    QT_TRID_NOOP("sheet.light.other"),
    //: Sheet: what to do when the light shows that the recorder did not start.
    //% "Start the recorder once more. Then look at the light again."
    QT_TRID_NOOP("sheet.light.start_again"),
    //: Sheet: what to do when the light shows a fault. %1 is the clinic's phone number.
    //% "Call your clinic: %1."
    QT_TRID_NOOP("sheet.light.call_clinic"),
    //: Heading on the sheet.
    //% "In the night"
    QT_TRID_NOOP("sheet.night.title"),
    //: Sheet, in the night, as the person would say it.
    //% "I have to get up"
    QT_TRID_NOOP("sheet.night.up"),
    //: Sheet: what to do then.
    //% "Free the cables first, then walk. Back in bed, see that each part is still on."
    QT_TRID_NOOP("sheet.night.up.advice"),
    //: Sheet: what to do when something came off in the night. "Its step" is the numbered step with
    //: the picture of that part.
    //% "Put it back on as in its step. Then look at the light on the recorder."
    QT_TRID_NOOP("sheet.night.off.advice"),
    //: Sheet: what to do when the light looks wrong in the night. %1 is the clinic's phone number.
    //% "Push each plug in once more and look again. Still wrong? Call %1, or keep the kit on and "
    //% "sleep."
    QT_TRID_NOOP("sheet.night.light.advice"),
    //: Heading on the sheet: the diary, then taking the kit off.
    //% "In the morning"
    QT_TRID_NOOP("sheet.morning.title"),
    //: Sheet, under that heading. The diary is the last page of the sheet.
    //% "Leave the kit on for now. Fill in the paper diary on the last page first. Then take the "
    //% "kit off."
    QT_TRID_NOOP("sheet.morning.diary"),
    //: Sheet, over the list of what goes back to the clinic; each has a box to tick.
    //% "Put each part in the bag and tick it here."
    QT_TRID_NOOP("sheet.pack.body"),
    //: Sheet: one more thing in that list, lower case.
    //% "this sheet with the paper diary"
    QT_TRID_NOOP("sheet.pack.diary"),
    //: Title of the page on which the person writes down the night.
    //% "Paper diary"
    QT_TRID_NOOP("sheet.diary.title"),
    //: Paper diary: stands before a line on which the person writes the date of the evening.
    //% "Date of the evening"
    QT_TRID_NOOP("sheet.diary.evening"),
    //: Paper diary, over a grid with one row for each thing and the hours of the night across.
    //% "Fill this in when you wake up. In each row, draw a line from start to end. Your best guess "
    //% "is fine. Leave out what you do not know."
    QT_TRID_NOOP("sheet.diary.how"),
    //: Paper diary, name of a row of the grid: from lights out to lights on. At most 20 characters.
    //% "Light was out"
    QT_TRID_NOOP("sheet.diary.lights_out"),
    //: Paper diary, name of a row of the grid: times awake. At most 20 characters.
    //% "Awake"
    QT_TRID_NOOP("sheet.diary.awake"),
    //: Paper diary, name of a row of the grid: while this part was off. %1 is a part.
    //% "Off: %1"
    QT_TRID_NOOP("sheet.diary.off"),
    //: Paper diary: unit after the line on which the person writes how long they slept.
    //% "hours"
    QT_TRID_NOOP("sheet.diary.hours"),
    //: Short sheet, title of a box: the questions of the first page in short. Each yes means: call.
    //% "Call your clinic first if one of these is true"
    QT_TRID_NOOP("sheet.brief.first.title"),
    //: Short sheet, under that: what the clinic must know, each in a few words.
    //% "Allergy to tape or latex. Sore or broken skin. Pacemaker or implant. Oxygen or a breathing "
    //% "machine. Pregnant or under 18. A small child or a confused person in your bed who could get "
    //% "caught in cords. Do not change your treatment on your own."
    QT_TRID_NOOP("sheet.brief.first"),
    //: Short sheet, over the steps: it holds for each belt. One line, at most 65 characters.
    //% "Close a belt at the end of a breath out: 2 fingers fit under it."
    QT_TRID_NOOP("sheet.brief.belts"),
    //: Short sheet, over the steps: it holds for each plug. One line, at most 65 characters.
    //% "Each plug goes into the port with the same mark."
    QT_TRID_NOOP("sheet.brief.plugs"),
    //: Sheet, title of a step: the plug of a part goes into its port. %1 is the part, such as
    //: "waist belt", %2 the mark of plug and port, such as "2 ridges". At most 45 characters.
    //% "Plug in the %1: %2"
    QT_TRID_NOOP("sheet.plug"),
    //: Short sheet: one caution for all steps with tape or pads; their numbers stand before it.
    //% "Never on sore or broken skin, or if tape makes it itch, sore or red: call your clinic. "
    //% "Never around a hand or finger."
    QT_TRID_NOOP("sheet.brief.tape"),
    //: Short sheet: one caution for all steps with the nose tube; their numbers stand before it.
    //% "Never lead the tube around your neck: down in front, under your chin and clothes. Not too "
    //% "tight: leave room to swallow."
    QT_TRID_NOOP("sheet.brief.tube"),
    //: Short sheet: one caution for all steps with cables; their numbers stand before it.
    //% "No cable or tube around your neck: along your arm or under your clothes, with some slack. "
    //% "Keep children and pets away."
    QT_TRID_NOOP("sheet.brief.cable"),
    //: Short sheet: what to do when the person has to get up in the night.
    //% "Free the cables first, then walk. Then look at each part."
    QT_TRID_NOOP("sheet.brief.up"),
    //: Short sheet: what to do when something came off in the night. "Its step" is the numbered step
    //: with the picture of that part.
    //% "Put it back on as in its step. Then look at the light."
    QT_TRID_NOOP("sheet.brief.off"),
    //: Short sheet: what to do when the light looks wrong in the night. %1 is the clinic's phone
    //: number.
    //% "Push in each plug. Still wrong? Call %1, or keep the kit on and sleep."
    QT_TRID_NOOP("sheet.brief.light"),
    //: Short sheet: what to do when the skin itches or hurts. %1 is the local emergency number.
    //% "Take that part off slowly and leave it off. Swollen face or hard to breathe? Call %1."
    QT_TRID_NOOP("sheet.brief.skin"),
    //: Short sheet: what to do when the person wants to stop. %1 is the local emergency number.
    //% "Take the tape off slowly, then the rest. Call your clinic in the morning. Very ill? Call %1."
    QT_TRID_NOOP("sheet.brief.stop"),
    //: Short sheet, beside the heading "In the morning": before the kit comes off.
    //% "First fill in the paper diary. Keep the kit on."
    QT_TRID_NOOP("sheet.brief.diary"),
    //: Short sheet, beside the heading "The light on the recorder". %1 is a number of seconds. One
    //: line, at most 45 characters.
    //% "It may take %1 seconds. Watch it for a while."
    QT_TRID_NOOP("sheet.brief.watch"),
    //: Short sheet: what to do when the recorder's light shows that a plug is not in.
    //% "Push each plug in. Then look again."
    QT_TRID_NOOP("sheet.brief.check_plugs"),
    //: Short sheet: what to do when the light shows that the recorder did not start.
    //% "Start it once more. Then look again."
    QT_TRID_NOOP("sheet.brief.start_again"),
    //: Short sheet: caution for taking off the tape; the number of that step stands before it. One
    //: line, at most 65 characters.
    //% "Do not tear it off. It sticks hard? Wet it with warm water."
    QT_TRID_NOOP("sheet.brief.tape_off"),
    //: Short sheet: after the kit is off; the number of that step stands before it. %1 is the
    //: clinic's phone number.
    //% "Look once more in 30 minutes. Still red, torn or blistered? Call %1. Do not rub or cover it."
    QT_TRID_NOOP("sheet.brief.look"),
    //: Short sheet: packing.
    //% "Pack all that was in the bag, and this sheet with the diary."
    QT_TRID_NOOP("sheet.brief.pack"),
    //: Short sheet, under that: a thing of the bag that is used up. %1 is its name, such as "roll of
    //: tape".
    //% "This need not come back: %1."
    QT_TRID_NOOP("sheet.brief.stays"),
};

} // namespace
