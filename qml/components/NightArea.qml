// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Evenfall.Ui

/// A very large dim area of the night page. `kind`: "note" (something is written down), "ask"
/// (opens help: a long round shape, apart from what is noted), "choice" or "small".
T.AbstractButton {
    id: root
    property string kind: "note"
    property string detail: ""
    property string figure: ""
    readonly property bool pictured: figure !== ""
    implicitHeight: Math.max(Theme.mm(20), contentItem.implicitHeight + topPadding + bottomPadding)
    implicitWidth: Theme.mm(40)
    padding: Theme.px(10)
    leftPadding: Theme.px(18)
    rightPadding: Theme.px(18)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: text
    Accessible.description: detail
    Keys.onReturnPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    Keys.onEnterPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }

    background: Rectangle {
        radius: root.kind === "ask" ? height / 2 : Theme.px(28)
        color: root.pressed ? Theme.laneOff : root.kind === "note" ? Theme.card : "transparent"
        border.width: Theme.stroke
        border.color: Theme.edge
        FocusRing { shown: root.visualFocus; radius: parent.radius + Theme.px(7) }
    }
    contentItem: NightAreaFace {
        text: root.text
        detail: root.detail
        figure: root.figure
        textSize: root.kind === "note" && !root.pictured ? (Theme.roomy ? Math.round(Theme.label * 0.9) : Theme.title)
                                                       : Theme.roomy ? Theme.body : Theme.label
    }
}
