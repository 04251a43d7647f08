// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// English texts of the practice run by day and of the mirror, with notes for translators.
// Only the translation tools read this list; nothing uses it when the program runs.
#include <QtCore/qglobal.h>

namespace {

[[maybe_unused]] const char* const texts[] = {
    //: Button on the first page, smaller than the one that begins the evening: all steps for practice,
    //: by day.
    //% "Practice first"
    QT_TRID_NOOP("practice.offer"),
    //: Stands on top of each page of the practice run.
    //% "Practice: nothing is kept"
    QT_TRID_NOOP("practice.bar"),
    //: Small button on top of each page of the practice run: leaves it for the first page.
    //% "End practice"
    QT_TRID_NOOP("practice.end"),
    //: Title of the page that begins the practice run.
    //% "A practice run"
    QT_TRID_NOOP("practice.begin.title"),
    //: Under that title.
    //% "You see the same steps as tonight. Take your time. Nothing is noted, and you can stop at any "
    //% "step."
    QT_TRID_NOOP("practice.begin.body"),
    //: Caution on the page that begins the practice run.
    //% "Keep the tape for tonight. Leave the recorder off, and plug in nothing that starts it."
    QT_TRID_NOOP("practice.begin.caution"),
    //: Caution in the practice run, on a step that uses tape.
    //% "Practice: do not use the tape now. You need it tonight."
    QT_TRID_NOOP("practice.no_tape"),
    //: Caution in the practice run, on the step that sets the recorder going.
    //% "Practice: only look. Do not do this step now, for it starts the recorder."
    QT_TRID_NOOP("practice.no_start"),
    //: In the practice run, on the page about the recorder's light.
    //% "Practice: the recorder is off, so there is no light. Tonight you tap what you see."
    QT_TRID_NOOP("practice.light"),
    //: Title of the last page of the practice run.
    //% "Practice is over"
    QT_TRID_NOOP("practice.over.title"),
    //: Under that title.
    //% "Take the parts off and put them back into the bag. Tonight you begin again from the first page."
    QT_TRID_NOOP("practice.over.body"),
    //: Caution on the last page of the practice run. %1 is the clinic's phone number.
    //% "Does the recorder show a light now? Call your clinic before tonight: %1."
    QT_TRID_NOOP("practice.over.caution"),
    //: Button on the last page of the practice run.
    //% "Back to the first page"
    QT_TRID_NOOP("practice.over.main"),
    //: First page, small, while the time to start still lies ahead. %1 is a time such as 9:25 PM.
    //% "Time to start: about %1"
    QT_TRID_NOOP("welcome.start_at"),
    //: In the mirror page, under the camera's picture. It is a promise: nothing may be added.
    //% "You see yourself as in a mirror. No picture is kept, and none is sent."
    QT_TRID_NOOP("mirror.keeps_nothing"),
    //: In the mirror page, where the camera's picture would be.
    //% "The tablet finds no camera. Look at the drawing, or use a mirror."
    QT_TRID_NOOP("mirror.no_camera"),
};

} // namespace
