// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Above the questions while somebody of the clinic answers them. No height where there is no text.
Rectangle {
    id: root
    property string text: ""
    signal back()
    visible: text !== ""
    height: visible ? Math.max(words.height, action.height) + Theme.px(12) : 0
    color: Theme.pane
    Words {
        id: words
        anchors { left: parent.left; right: action.left; verticalCenter: parent.verticalCenter }
        anchors { leftMargin: Theme.margin; rightMargin: Theme.px(16) }
        font.pixelSize: Theme.small
        font.weight: Font.DemiBold
        text: root.text
    }
    Action {
        id: action
        anchors { right: parent.right; verticalCenter: parent.verticalCenter; rightMargin: Theme.px(16) }
        kind: "small"
        text: qsTrId("desk.back")
        onClicked: root.back()
    }
}
