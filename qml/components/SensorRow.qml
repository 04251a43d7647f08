// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// One sensor to look at: how it should be, and two answers.
Card {
    id: root
    property string rowId: ""
    property string name: ""
    property string figure: ""
    property string expect: ""
    property bool done: false
    signal confirmed()
    signal notRight()
    inset: Theme.px(14)
    readonly property bool beside: !Theme.roomy
    Grid {
        id: row
        width: parent.width
        columns: root.beside ? 2 : 1
        spacing: Theme.px(14)
        verticalItemAlignment: Grid.AlignVCenter
        ItemFace {
            width: root.beside ? row.width - answers.width - row.spacing : row.width
            height: implicitHeight
            text: root.name
            count: root.expect
            figure: root.figure
            done: root.done
            marked: root.done
        }
        Row {
            id: answers
            spacing: Theme.tight
            Action {
                objectName: "yes-" + root.rowId
                visible: !root.done
                //: Sensor check, answer: this sensor is as it should be.
                //% "Yes"
                text: qsTrId("check.yes")
                Accessible.description: root.name
                onClicked: root.confirmed()
            }
            Action {
                objectName: "no-" + root.rowId
                //: Sensor check, answer: this sensor is not as it should be; opens help for it.
                //% "Not right"
                text: qsTrId("check.not_right")
                Accessible.description: root.name
                onClicked: root.notRight()
            }
        }
    }
}
