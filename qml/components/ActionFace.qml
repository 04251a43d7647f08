// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The words of a button, with an optional sign before them, in the middle of their place.
Item {
    id: root
    property string text: ""
    property string sign: ""
    property color ink: Theme.text
    property real textSize: Theme.small
    property int weight: Font.Medium
    readonly property real signRoom: sign === "" ? 0 : mark.implicitWidth + Theme.tight
    readonly property real natural: Math.ceil(metrics.advanceWidth * 1.03) + 2
    implicitWidth: Math.ceil(natural + signRoom)
    implicitHeight: words.implicitHeight
    // Measured apart from the words, whose own size follows their place.
    TextMetrics {
        id: metrics
        text: root.text
        font.family: Theme.family
        font.pixelSize: root.textSize
        font.weight: root.weight
    }
    Row {
        anchors.centerIn: parent
        spacing: Theme.tight
        ScriptText {
            id: mark
            visible: root.sign !== ""
            anchors.verticalCenter: parent.verticalCenter
            text: root.sign
            color: root.ink
            font.pixelSize: root.textSize
            Accessible.ignored: true
        }
        LabelText {
            id: words
            width: root.sign === "" ? root.width : Math.min(root.natural, root.width - root.signRoom)
            text: root.text
            color: root.ink
            horizontalAlignment: Text.AlignHCenter
            leading: 1.05
            size: root.textSize
            font.weight: root.weight
        }
    }
}
