// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A calm breath to follow: the drawn body and the belt around it widen breathing in and narrow
/// breathing out. `phase` is 0 (breathed out: now the belt is closed) to 1 (breathed in). Nobody can
/// watch it while looking down at a belt, so it sounds when asked to. Moves only when told.
Rectangle {
    id: root
    property real phase: 0
    property string text: ""
    property bool sounding: false
    signal soundChosen(bool on)
    //: Small button beside the breathing guide of a belt, short: a soft tone then says at the end of
    //: each breath out that the belt may be closed now.
    //% "With sound"
    readonly property string startLabel: qsTrId("breath.sound_on")
    //: The same button while the tone sounds, short: makes it silent.
    //% "Silent"
    readonly property string stopLabel: qsTrId("breath.sound_off")
    readonly property bool beside: !Theme.roomy
    readonly property real inset: Theme.px(10)
    implicitHeight: beside ? Math.max(body.height, words.height, sound.implicitHeight) + Theme.px(10)
                           : Math.max(body.height, words.height) + sound.implicitHeight + Theme.px(26)
    radius: Theme.radius
    color: Theme.card
    Item {
        id: body
        x: Math.round(root.LayoutMirroring.enabled ? root.width - width - root.inset : root.inset)
        y: Math.round((Math.max(height, words.height, root.beside ? sound.implicitHeight : 0) - height) / 2) + Theme.px(5)
        width: Theme.px(72)
        height: Theme.px(62)
        Accessible.ignored: true
        Rectangle {
            id: chest
            anchors.horizontalCenter: parent.horizontalCenter
            width: body.width * (0.66 + 0.22 * root.phase)
            height: body.height
            radius: Theme.px(18)
            color: Theme.edge
        }
        // The belt, open in front: its ends meet at the end of the breath out.
        Repeater {
            model: 2
            Rectangle {
                required property int index
                readonly property real gap: Theme.px(2) + body.width * 0.22 * root.phase
                width: (chest.width + Theme.px(8) - gap) / 2
                height: Theme.px(15)
                radius: Theme.px(4)
                y: Math.round(body.height * 0.46)
                x: chest.x - Theme.px(4) + index * (width + gap)
                color: Theme.accent
            }
        }
    }
    SmallWords {
        id: words
        width: root.width - body.width - 3 * root.inset - (root.beside ? sound.width + root.inset : 0)
        x: Math.round(root.LayoutMirroring.enabled ? body.x - root.inset - width : body.x + body.width + root.inset)
        y: Math.round((Math.max(body.height, height, root.beside ? sound.implicitHeight : 0) - height) / 2) + Theme.px(5)
        text: root.text
        Accessible.role: Accessible.StaticText
    }
    Action {
        id: sound
        objectName: "breathSound"
        anchors { right: parent.right; rightMargin: root.inset }
        anchors { bottom: parent.bottom; bottomMargin: root.beside ? Math.round((root.implicitHeight - implicitHeight) / 2) : root.inset }
        width: Math.min(implicitWidth, root.width - 2 * root.inset)
        text: root.sounding ? root.stopLabel : root.startLabel
        onClicked: root.soundChosen(!root.sounding)
    }
}
