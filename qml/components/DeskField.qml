// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A line to be typed, with its label before it (above it where there is no room), a hint and what is
/// wrong. `secret`: what is typed is not shown.
Item {
    id: root
    property string label: ""
    property string value: ""
    property string hint: ""
    property string error: ""
    property bool secret: false
    readonly property Item entry: input
    readonly property bool stacked: width < Theme.px(700) * Theme.textScale
    signal edited(string text)
    signal entered()
    height: row.height + (below.visible ? below.height + Theme.px(4) : 0)

    Item {
        id: row
        width: parent.width
        height: root.stacked ? words.height + Theme.px(4) + box.height : box.height
        Words {
            id: words
            width: root.stacked ? parent.width : Math.round(parent.width * 0.3)
            anchors.left: parent.left
            y: root.stacked ? 0 : Math.round((box.height - height) / 2)
            font.pixelSize: Theme.small
            font.weight: Font.Medium
            text: root.label
        }
        Rectangle {
            id: box
            anchors { right: parent.right; bottom: parent.bottom }
            width: root.stacked ? parent.width : Math.round(parent.width * 0.68)
            height: Math.max(Theme.target, input.contentHeight + Theme.px(20), hinted.visible ? hinted.height + Theme.px(12) : 0)
            radius: Theme.px(10)
            color: Theme.card
            border.width: Theme.stroke
            border.color: root.error !== "" ? Theme.cautionEdge : Theme.edge
            FocusRing { shown: input.activeFocus; anchors.margins: -Theme.px(4); radius: Theme.px(14) }
            // The hint stands in the field until something is typed: a form stays one glance long.
            SmallWords {
                id: hinted
                anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
                anchors { leftMargin: Theme.px(16); rightMargin: Theme.px(16) }
                visible: root.value === "" && root.hint !== ""
                text: root.hint
                Accessible.ignored: true
            }
            TextInput {
                id: input
                objectName: "entry"
                anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
                anchors { leftMargin: Theme.px(16); rightMargin: Theme.px(16) }
                text: root.value
                echoMode: root.secret ? TextInput.Password : TextInput.Normal
                inputMethodHints: root.secret ? Qt.ImhDigitsOnly | Qt.ImhSensitiveData : Qt.ImhNone
                color: Theme.text
                selectionColor: Theme.accent
                selectedTextColor: Theme.accentText
                selectByMouse: true
                clip: true
                maximumLength: 400
                horizontalAlignment: TextInput.AlignLeft
                font.family: Theme.family
                font.pixelSize: Theme.small
                activeFocusOnTab: true
                Accessible.role: Accessible.EditableText
                Accessible.name: root.label
                Accessible.description: root.error !== "" ? root.error : root.hint
                onTextEdited: root.edited(text)
                onAccepted: root.entered()
            }
        }
    }
    SmallWords {
        id: below
        anchors { top: row.bottom; topMargin: Theme.px(4); right: parent.right }
        width: box.width
        visible: text !== ""
        text: root.error === "" ? "" : "⚠ " + root.error
        color: Theme.text
        font.weight: Font.DemiBold
    }
}
