// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Over every page of a practice run: that it is one, and the way out. Without height otherwise.
Item {
    id: root
    property bool shown: false
    signal ended()
    visible: shown
    height: shown ? Math.max(words.height, end.height) + Theme.px(12) : 0
    Rectangle { anchors.fill: parent; color: Theme.caution }
    LongestWord { id: bold; texts: [words.text]; font.weight: Font.DemiBold }
    Words {
        id: words
        anchors { left: parent.left; right: end.left; verticalCenter: parent.verticalCenter }
        anchors { leftMargin: Theme.margin; rightMargin: Theme.gap }
        font.weight: Font.DemiBold
        text: qsTrId("practice.bar")
    }
    Action {
        id: end
        objectName: "endPractice"
        anchors { right: parent.right; rightMargin: Theme.margin; verticalCenter: parent.verticalCenter }
        width: Math.min(implicitWidth, Math.round(Math.min(root.width * 0.5, root.width - bold.widest - 2 * Theme.margin - Theme.gap)))
        text: qsTrId("practice.end")
        onClicked: root.ended()
    }
}
