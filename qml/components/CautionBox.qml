// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A caution, where the risk is: a box with a sign, not grey print.
Rectangle {
    id: root
    property string text: ""
    visible: text.length > 0
    implicitHeight: visible ? words.implicitHeight + Theme.px(28) : 0
    height: implicitHeight
    radius: Theme.px(14)
    color: Theme.caution
    Rectangle {
        anchors { left: parent.left; top: parent.top; bottom: parent.bottom }
        width: Theme.px(8)
        radius: width / 2
        color: Theme.cautionEdge
    }
    Text {
        id: mark
        anchors { left: parent.left; leftMargin: Theme.px(26); verticalCenter: words.verticalCenter }
        text: "⚠"
        color: Theme.cautionEdge
        font.family: Theme.family
        font.pixelSize: Math.round(Theme.small * 1.25)
        Accessible.ignored: true
    }
    Words {
        id: words
        anchors { left: mark.right; right: parent.right; verticalCenter: parent.verticalCenter }
        anchors { leftMargin: Theme.px(16); rightMargin: Theme.px(20) }
        text: root.text
        font.pixelSize: Theme.small
    }
}
