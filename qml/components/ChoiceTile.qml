// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Evenfall.Ui

/// One answer of several. A round mark where one is chosen, a square one where several may be.
T.AbstractButton {
    id: root
    property bool chosen: false
    property bool square: false
    property real least: Theme.mm(14)
    implicitWidth: contentItem.implicitWidth + leftPadding + rightPadding
    implicitHeight: Math.max(least, contentItem.implicitHeight + topPadding + bottomPadding)
    leftPadding: Theme.px(20)
    rightPadding: Theme.px(20)
    topPadding: Theme.px(10)
    bottomPadding: Theme.px(10)
    focusPolicy: Qt.StrongFocus
    Accessible.role: square ? Accessible.CheckBox : Accessible.RadioButton
    Accessible.name: text
    Accessible.checkable: true
    Accessible.checked: chosen
    Keys.onReturnPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    Keys.onEnterPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    background: Rectangle {
        radius: Theme.px(18)
        color: root.chosen ? Theme.accent : Theme.card
        border.width: Theme.stroke
        border.color: root.chosen ? Theme.accent : Theme.edge
        Rectangle {
            anchors.fill: parent
            radius: parent.radius
            visible: root.pressed
            color: Theme.text
            opacity: 0.15
        }
        FocusRing { shown: root.visualFocus }
    }
    contentItem: ChoiceFace {
        text: root.text
        chosen: root.chosen
        square: root.square
    }
}
