// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Evenfall.Ui

/// An entry of the front desk's menu, with its key.
T.AbstractButton {
    id: root
    property string key: ""
    property bool chosen: false
    implicitHeight: Math.max(Theme.target, face.implicitHeight + Theme.px(16))
    implicitWidth: words.implicitWidth + keyWords.implicitWidth + Theme.px(52)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.MenuItem
    Accessible.name: text
    Keys.onReturnPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    Keys.onEnterPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    background: Rectangle {
        radius: Theme.px(12)
        color: root.chosen ? Theme.accent : root.pressed ? Theme.card : "transparent"
        FocusRing { shown: root.visualFocus; anchors.margins: -Theme.px(3); radius: Theme.px(14) }
    }
    contentItem: Item {
        id: face
        implicitHeight: Math.max(words.implicitHeight, keyWords.implicitHeight)
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
}
