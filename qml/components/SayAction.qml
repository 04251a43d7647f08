// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The sound control of a page: reads it aloud, stops reading, or says why there is no sound.
///
/// say(), stop(), why()
Action {
    id: root
    property bool canSpeak: true
    property bool speaking: false
    signal say()
    signal stop()
    signal why()
    //: Small button on a step: reads the page aloud once more.
    //% "Say it again"
    readonly property string again: qsTrId("step.say_again")
    //: Small button in place of "Say it again" when there is no sound: explains why.
    //% "Why no sound?"
    readonly property string silent: qsTrId("step.no_sound")
    //: Small button in place of "Say it again" while the page is read aloud. Nothing is read by
    //: itself after it.
    //% "Stop reading"
    readonly property string enough: qsTrId("step.stop_reading")
    text: speaking ? enough : canSpeak ? again : silent
    onClicked: {
        if (speaking)
            root.stop();
        else if (canSpeak)
            root.say();
        // Only when it is to sound may it turn out that there is no device.
        if (!canSpeak)
            root.why();
    }
}
