// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The words of an entry of the front desk's menu, and its key at the end.
Item {
    id: root
    property string text: ""
    property string key: ""
    property bool chosen: false
    implicitHeight: Math.max(words.implicitHeight, keyWords.implicitHeight)
    implicitWidth: Math.ceil(metrics.advanceWidth * 1.04) + keyWords.implicitWidth + Theme.px(52)
    TextMetrics {
        id: metrics
        text: root.text
        font.family: Theme.family
        font.pixelSize: Theme.small
        font.weight: Font.Bold
    }
    LabelText {
        id: words
        anchors { left: parent.left; right: keyWords.left; verticalCenter: parent.verticalCenter }
        anchors { leftMargin: Theme.px(14); rightMargin: Theme.px(8) }
        text: root.text
        size: Theme.small
        horizontalAlignment: Text.AlignLeft
        color: root.chosen ? Theme.accentText : Theme.text
        font.weight: root.chosen ? Font.Bold : Font.Medium
        Accessible.ignored: true
    }
    ScriptText {
        id: keyWords
        anchors { right: parent.right; rightMargin: Theme.px(14); verticalCenter: parent.verticalCenter }
        text: root.key
        wrapMode: Text.NoWrap
        font.pixelSize: Theme.small
        color: root.chosen ? Theme.accentText : Theme.softText
        Accessible.ignored: true
    }
}
