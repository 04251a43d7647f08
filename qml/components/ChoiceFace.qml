// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The mark and the words of an answer.
Item {
    id: root
    property string text: ""
    property bool chosen: false
    property bool square: false
    implicitWidth: Math.ceil(mark.width + Theme.px(18) + metrics.advanceWidth * 1.03) + 2
    TextMetrics {
        id: metrics
        text: root.text
        font.family: Theme.family
        font.pixelSize: Theme.body
        font.weight: Font.DemiBold
    }
    implicitHeight: Math.max(mark.height, words.implicitHeight)
    Mark {
        id: mark
        anchors.left: parent.left
        anchors.verticalCenter: parent.verticalCenter
        square: root.square
        on: root.chosen
        overAccent: root.chosen
    }
    LabelText {
        id: words
        anchors { left: mark.right; right: parent.right; verticalCenter: parent.verticalCenter }
        anchors.leftMargin: Theme.px(18)
        text: root.text
        color: root.chosen ? Theme.accentText : Theme.text
        horizontalAlignment: Text.AlignLeft
        leading: 1.05
        size: Theme.body
        font.weight: root.chosen ? Font.DemiBold : Font.Medium
        Accessible.ignored: true
    }
}
