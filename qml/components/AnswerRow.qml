// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A question, its answer, and its change.
Card {
    id: root
    property string rowId: ""
    property string question: ""
    property string answer: ""
    property bool skipped: false
    signal change()
    inset: Theme.px(14)
    Grid {
        id: row
        readonly property bool one: !Theme.roomy
        width: parent.width
        columns: one ? 2 : 1
        spacing: Theme.px(14)
        verticalItemAlignment: Grid.AlignVCenter
        Column {
            width: row.one ? row.width - action.width - row.spacing : row.width
            SmallWords { width: parent.width; text: root.question }
            Words {
                width: parent.width
                text: root.answer
                color: root.skipped ? Theme.softText : Theme.text
                font.weight: root.skipped ? Font.Normal : Font.DemiBold
            }
        }
        Action {
            id: action
            objectName: "change-" + root.rowId
            text: qsTrId("common.change")
            Accessible.description: root.question
            onClicked: root.change()
        }
    }
}
