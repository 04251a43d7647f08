// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Evenfall.Ui

/// One pattern of the recorder's light, to be compared with the real one and chosen.
T.AbstractButton {
    id: root
    /// { blinks, onMs, offMs, pauseMs, steady, color, colorName }
    required property var light
    property bool chosen: false
    implicitHeight: Math.max(Theme.mm(20), contentItem.implicitHeight + topPadding + bottomPadding)
    padding: Theme.px(14)
    leftPadding: Theme.px(20)
    rightPadding: Theme.px(20)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.RadioButton
    Accessible.name: text
    Accessible.description: light.colorName ?? ""
    Accessible.checkable: true
    Accessible.checked: chosen
    Keys.onReturnPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    Keys.onEnterPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    background: Rectangle {
        radius: Theme.radius
        color: Theme.card
        border.width: root.chosen ? Theme.px(5) : Theme.stroke
        border.color: root.chosen ? Theme.accent : Theme.edge
        FocusRing { shown: root.visualFocus }
    }
    contentItem: LightFace {
        text: root.text
        light: root.light
        chosen: root.chosen
    }
}
