// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Texts of the morning's small pages, for the translations. Nothing here is called.
#include <QtCore/qobjectdefs.h>
#include <QtCore/qtranslator.h>

namespace {
[[maybe_unused]] const char* const texts[] = {
    //: Button: the time that the night notes say is right.
    //% "That is right"
    QT_TRID_NOOP("main.right"),
    //: Unit beside a number.
    //% "minutes"
    QT_TRID_NOOP("unit.minutes"),
    //: Unit beside a number that counts down.
    //% "seconds"
    QT_TRID_NOOP("unit.seconds"),
    //: Unit beside a number: how often.
    //% "times"
    QT_TRID_NOOP("unit.times"),
    //: Button: the person was awake some times but does not know when.
    //% "I was awake, but I do not know when"
    QT_TRID_NOOP("event.untimed.add"),
    //: Question after that button.
    //% "About how many times?"
    QT_TRID_NOOP("event.untimed.times"),
    //: Question after that one: all these times together.
    //% "How long were you awake, all in all?"
    QT_TRID_NOOP("event.untimed.minutes"),
    //: Times awake that nobody knows the hour of. %1: how many. %2: minutes together.
    //% "Awake, hour not known. How many times: %1. Minutes in all: %2"
    QT_TRID_NOOP("answer.untimed"),
    //: How sure a time is. %1: minutes.
    //% "give or take %1 minutes"
    QT_TRID_NOOP("answer.give_or_take"),
    //: Button: note one more time awake in the night.
    //% "Add a time awake"
    QT_TRID_NOOP("event.add_awake"),
    //: Button: note one more part that came off.
    //% "Add something that came off"
    QT_TRID_NOOP("event.add_off"),
    //: Question about one time awake.
    //% "When did you wake up?"
    QT_TRID_NOOP("event.awake_from"),
    //: Question about the same time awake.
    //% "When did you fall asleep again?"
    QT_TRID_NOOP("event.awake_to"),
    //: Question. %1: name of a part, such as "finger clip".
    //% "When did it come off: %1?"
    QT_TRID_NOOP("event.off_from"),
    //: Question. %1: name of a part.
    //% "When was it back on: %1?"
    QT_TRID_NOOP("event.off_to"),
    //: Question with two answers. %1: name of a part.
    //% "Did you put it back on: %1?"
    QT_TRID_NOOP("event.off_end"),
    //: Answer: it was put back on.
    //% "Yes, I put it back on"
    QT_TRID_NOOP("event.off_end.yes"),
    //: Answer: it stayed off.
    //% "No, it stayed off"
    QT_TRID_NOOP("event.off_end.no"),
    //: Half an hour and nothing more, in "about %1 hours".
    //% "a half"
    QT_TRID_NOOP("result.only_half"),
    //: The picture of the night, for screen readers. The same is said in words above it.
    //% "Picture of the night: one row for each part, and one for sleep"
    QT_TRID_NOOP("result.picture_text"),
    //: Question about the skin where tape was.
    //% "How does your skin look?"
    QT_TRID_NOOP("skin.question"),
    //: Button on a page of trouble: try once more.
    //% "Try again"
    QT_TRID_NOOP("trouble.again"),
    //: Said where the voice would be, when there is none.
    //% "There is no voice on this tablet. All the words are on the page."
    QT_TRID_NOOP("step.no_voice"),
    //: Answer to "Why no sound?": reading aloud is an option of the visit, and it is off.
    //% "Reading aloud is switched off for this visit. All the words are on the page."
    QT_TRID_NOOP("sound.off_for_visit"),
    //: Answer to "Why no sound?".
    //% "The tablet finds no speaker. All the words are on the page."
    QT_TRID_NOOP("sound.no_device"),
    //: Answer to "Why no sound?".
    //% "There is no recording of this page. All the words are on the page."
    QT_TRID_NOOP("sound.no_recording"),
    //: Answer to "Why no sound?": a recording was there, and could not be played.
    //% "The recording of this page cannot be played. All the words are on the page."
    QT_TRID_NOOP("sound.failed"),
};
} // namespace
