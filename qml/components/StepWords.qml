// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The words of a step: which part, what to do, and how to know that it is right.
Column {
    id: root
    property string label: ""
    property string title: ""
    property string body: ""
    property string rightWhen: ""
    property bool breathing: false
    property real breathPhase: 0
    property string breathText: ""
    property bool breathSound: false
    signal breathSoundChosen(bool on)
    spacing: Theme.px(9)
    SmallWords { width: parent.width; text: root.label }
    Title { width: parent.width; text: root.title }
    Words { width: parent.width; text: root.body }
    BreathGuide {
        visible: root.breathing
        width: parent.width
        phase: root.breathPhase
        text: root.breathText
        sounding: root.breathSound
        onSoundChosen: (on) => root.breathSoundChosen(on)
    }
    Item {
        visible: root.rightWhen !== ""
        width: parent.width
        height: visible ? right.height + Theme.px(8) : 0
        Rectangle {
            width: Theme.px(6)
            radius: width / 2
            anchors { left: parent.left; top: right.top; bottom: right.bottom }
            color: Theme.done
        }
        Column {
            id: right
            anchors { left: parent.left; right: parent.right; leftMargin: Theme.px(22); bottom: parent.bottom }
            SmallWords {
                width: parent.width
                //: Small heading over the sentence that tells how to know the step is done right.
                //% "It is right when"
                text: qsTrId("step.right_when")
            }
            Words { width: parent.width; text: root.rightWhen }
        }
    }
}
