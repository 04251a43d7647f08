// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The lamp, its name and colour in words, its timing in bars, and the mark.
Item {
    id: root
    property string text: ""
    property var light: ({})
    property bool chosen: false
    implicitHeight: Math.max(lamp.height, words.implicitHeight)
    BlinkLight {
        id: lamp
        anchors { left: parent.left; verticalCenter: parent.verticalCenter }
        light: root.light
    }
    Column {
        id: words
        anchors { left: lamp.right; leftMargin: Theme.px(22); right: mark.left; rightMargin: Theme.px(14) }
        anchors.verticalCenter: parent.verticalCenter
        spacing: Theme.px(6)
        Words { width: parent.width; text: root.text; font.weight: Font.Medium; Accessible.ignored: true }
        SmallWords { width: parent.width; text: root.light.colorName ?? ""; Accessible.ignored: true }
        LightBars { width: parent.width; light: root.light }
    }
    Mark {
        id: mark
        anchors { right: parent.right; verticalCenter: parent.verticalCenter }
        on: root.chosen
    }
}
