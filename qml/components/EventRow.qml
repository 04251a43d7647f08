// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// One event of the night with its two actions. A hollow dot: the time is not certain.
Card {
    id: root
    property string rowId: ""
    property string text: ""
    property bool soft: false
    signal edit()
    signal remove()
    inset: Theme.px(12)
    Grid {
        id: row
        readonly property bool one: !Theme.roomy
        width: parent.width
        columns: one ? 2 : 1
        spacing: Theme.tight
        verticalItemAlignment: Grid.AlignVCenter
        Item {
            width: row.one ? row.width - actions.width - row.spacing : row.width
            height: words.height
            Rectangle {
                id: dot
                x: LayoutMirroring.enabled ? parent.width - width - Theme.px(8) : Theme.px(8)
                y: Math.round(words.font.pixelSize * 0.38)
                width: Theme.px(18)
                height: width
                radius: width / 2
                color: root.soft ? "transparent" : Theme.accent
                border.width: Theme.px(4)
                border.color: Theme.accent
            }
            Words {
                id: words
                anchors { left: parent.left; right: parent.right; leftMargin: Theme.px(42) }
                text: root.text
            }
        }
        Row {
            id: actions
            spacing: Theme.tight
            Action {
                objectName: "edit-" + root.rowId
                //: Button beside an answer: opens it to change it.
                //% "Change"
                text: qsTrId("common.change")
                Accessible.description: root.text
                onClicked: root.edit()
            }
            Action {
                objectName: "remove-" + root.rowId
                //: Button beside an event of the night: takes it off the list.
                //% "Remove"
                text: qsTrId("common.remove")
                Accessible.description: root.text
                onClicked: root.remove()
            }
        }
    }
}
