// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// English texts of what the evening has beside its steps: the drawn person, the breathing guide, the
// questions of the evening, the signal check. Only the translation tools read this list.
#include <QtCore/qglobal.h>

namespace {

[[maybe_unused]] const char* const texts[] = {
    //: Small words on the first page, over 3 drawn persons to choose from. Optional.
    //% "Tap the drawing that is most like you, if you wish."
    QT_TRID_NOOP("welcome.build"),
    //: Name of a drawn person, for screen readers only.
    //% "Drawing 1, slim"
    QT_TRID_NOOP("welcome.build.slim"),
    //: Name of a drawn person, for screen readers only.
    //% "Drawing 2, in between"
    QT_TRID_NOOP("welcome.build.medium"),
    //: Name of a drawn person, for screen readers only.
    //% "Drawing 3, broad"
    QT_TRID_NOOP("welcome.build.broad"),
    //: Beside a shape that widens and narrows with a calm breath, on the pages of the belts.
    //% "Breathe with it. Close the belt when the air is out."
    QT_TRID_NOOP("step.breath_guide"),
    //: Question of the evening. It may be skipped.
    //% "Was today a usual day?"
    QT_TRID_NOOP("evening.day.title"),
    //: Answer to it.
    //% "Yes, a usual day"
    QT_TRID_NOOP("evening.day.usual"),
    //: Answer to it.
    //% "No, not usual"
    QT_TRID_NOOP("evening.day.unusual"),
    //: Question of the evening. It may be skipped.
    //% "Did you nap today?"
    QT_TRID_NOOP("evening.nap.title"),
    //: Answer to it.
    //% "No nap"
    QT_TRID_NOOP("evening.nap.none"),
    //: Answer to it.
    //% "Less than 30 minutes"
    QT_TRID_NOOP("evening.nap.short"),
    //: Answer to it.
    //% "30 minutes or more"
    QT_TRID_NOOP("evening.nap.long"),
    //: Question of the evening: the last drink of the day with caffeine. It may be skipped.
    //% "When was your last coffee, tea or cola?"
    QT_TRID_NOOP("evening.caffeine.title"),
    //: Answer to it.
    //% "None after noon"
    QT_TRID_NOOP("evening.caffeine.none"),
    //: Answer to it.
    //% "In the afternoon"
    QT_TRID_NOOP("evening.caffeine.afternoon"),
    //: Answer to it.
    //% "In the evening"
    QT_TRID_NOOP("evening.caffeine.evening"),
    //: Question of the evening. No blame. It may be skipped.
    //% "Did you drink alcohol this evening?"
    QT_TRID_NOOP("evening.alcohol.title"),
    //: Answer to it.
    //% "No"
    QT_TRID_NOOP("evening.alcohol.none"),
    //: Answer to it.
    //% "1 or 2 drinks"
    QT_TRID_NOOP("evening.alcohol.little"),
    //: Answer to it.
    //% "3 or more drinks"
    QT_TRID_NOOP("evening.alcohol.more"),
    //: Question of the evening. It advises nothing. It may be skipped.
    //% "Did you take your medicines as usual?"
    QT_TRID_NOOP("evening.medicines.title"),
    //: Answer to it. Also right for somebody who takes none.
    //% "Yes, or I take none"
    QT_TRID_NOOP("evening.medicines.usual"),
    //: Answer to it.
    //% "I left some out"
    QT_TRID_NOOP("evening.medicines.missed"),
    //: Answer to it.
    //% "I took something else"
    QT_TRID_NOOP("evening.medicines.other"),
    //: Signal check: title. The person does this for some seconds while the recorder runs.
    //% "Breathe calmly"
    QT_TRID_NOOP("signal.calm.title"),
    //: Under it.
    //% "A short check of the sensors. Sit or lie still and breathe as you like."
    QT_TRID_NOOP("signal.calm.body"),
    //: Signal check: title.
    //% "Take 3 deep breaths"
    QT_TRID_NOOP("signal.deep.title"),
    //: Under it.
    //% "Breathe in deep through your nose, then out. Do it 3 times."
    QT_TRID_NOOP("signal.deep.body"),
    //: Signal check: title.
    //% "Hold your breath"
    QT_TRID_NOOP("signal.hold.title"),
    //: Under it. Nobody is to hold the breath who does not feel well doing so.
    //% "Breathe out, then hold your breath. Stop at once if it does not feel good. You can skip this."
    QT_TRID_NOOP("signal.hold.body"),
    //: Signal check: title.
    //% "Move the finger with the clip"
    QT_TRID_NOOP("signal.finger.title"),
    //: Under it.
    //% "Bend and stretch that finger a few times. Leave the clip on."
    QT_TRID_NOOP("signal.finger.body"),
    //: Large button: begins that task; a number counts down.
    //% "Start"
    QT_TRID_NOOP("signal.start"),
    //: The same button while the number counts down; it cannot be tapped.
    //% "Keep going"
    QT_TRID_NOOP("signal.running"),
    //: Over the number that counts down.
    //% "Now"
    QT_TRID_NOOP("signal.now"),
    //: Button: leaves this task out.
    //% "Skip this"
    QT_TRID_NOOP("signal.skip"),
};

} // namespace
