// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Evenfall.Ui

/// A thing to find and tick off: its picture, its name, how many, and a mark.
T.AbstractButton {
    id: root
    property string figure: ""
    property string count: ""
    property bool done: false
    /// One of several, rather than one to tick off.
    property bool single: false
    implicitHeight: Math.max(Theme.mm(19), contentItem.implicitHeight + topPadding + bottomPadding)
    padding: Theme.px(10)
    rightPadding: Theme.px(20)
    leftPadding: Theme.px(12)
    focusPolicy: Qt.StrongFocus
    Accessible.role: single ? Accessible.RadioButton : Accessible.CheckBox
    Accessible.name: count === "" ? text : text + ", " + count
    Accessible.checkable: true
    Accessible.checked: done
    Keys.onReturnPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    Keys.onEnterPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    background: Rectangle {
        radius: Theme.radius
        color: Theme.card
        border.width: Theme.stroke
        border.color: root.done ? Theme.done : Theme.edge
        Rectangle {
            anchors.fill: parent
            radius: parent.radius
            visible: root.pressed
            color: Theme.text
            opacity: 0.15
        }
        FocusRing { shown: root.visualFocus }
    }
    contentItem: ItemFace {
        text: root.text
        count: root.count
        figure: root.figure
        done: root.done
    }
}
