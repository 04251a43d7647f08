// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The words of a night area, with an optional picture over them.
Item {
    id: root
    property string text: ""
    property string detail: ""
    property string figure: ""
    property real textSize: Theme.title
    readonly property bool pictured: figure !== ""
    implicitHeight: (pictured ? Theme.px(120) : 0) + stack.implicitHeight
    FigureImage {
        visible: root.pictured
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: stack.top }
        figure: root.figure
        Accessible.ignored: true
    }
    Column {
        id: stack
        anchors { left: parent.left; right: parent.right }
        y: root.pictured ? root.height - height : Math.round((root.height - height) / 2)
        spacing: Theme.px(6)
        LabelText {
            width: parent.width
            text: root.text
            color: Theme.text
            horizontalAlignment: Text.AlignHCenter
            size: root.textSize
            // Large letters carry with less weight, and thin strokes keep the room dark.
            font.weight: Theme.roomy ? Font.Medium : Font.DemiBold
            Accessible.ignored: true
        }
        ScriptText {
            width: parent.width
            visible: text !== ""
            text: root.detail
            color: Theme.softText
            horizontalAlignment: Text.AlignHCenter
            // Beside much larger words; so it stays on the page in long languages too.
            font.pixelSize: Math.round(Theme.small * (Theme.roomy ? 0.85 : 1))
            font.weight: Theme.roomy ? Font.Normal : Font.Medium
            Accessible.ignored: true
        }
    }
}
