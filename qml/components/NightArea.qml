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
    property url figure: ""
    readonly property bool pictured: figure.toString() !== ""
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
    contentItem: Item {
        implicitHeight: (root.pictured ? Theme.px(110) : 0) + words.implicitHeight
                        + (below.visible ? below.implicitHeight + Theme.px(6) : 0)
        FigureImage {
            visible: root.pictured
            anchors { left: parent.left; right: parent.right; top: parent.top; bottom: stack.top }
            figure: root.figure
            Accessible.ignored: true
        }
        Column {
            id: stack
            width: parent.width
            anchors.verticalCenter: root.pictured ? undefined : parent.verticalCenter
            anchors.bottom: root.pictured ? parent.bottom : undefined
            spacing: Theme.px(6)
            Text {
                id: words
                width: parent.width
                text: root.text
                color: Theme.text
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.Wrap
                textFormat: Text.PlainText
                font.family: Theme.family
                font.pixelSize: root.kind === "note" && !root.pictured ? Theme.title : Theme.label
                font.weight: Font.DemiBold
                Accessible.ignored: true
            }
            Text {
                id: below
                width: parent.width
                visible: text.length > 0
                text: root.detail
                color: Theme.softText
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.Wrap
                textFormat: Text.PlainText
                font.family: Theme.family
                font.pixelSize: Theme.small
                font.weight: Font.Medium
                Accessible.ignored: true
            }
        }
    }
}
