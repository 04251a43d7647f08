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
    implicitHeight: Math.max(Theme.target, contentItem.implicitHeight + Theme.px(16))
    implicitWidth: contentItem.implicitWidth
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
    contentItem: DeskMenuFace {
        text: root.text
        key: root.key
        chosen: root.chosen
    }
}
