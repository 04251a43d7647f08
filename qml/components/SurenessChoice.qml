// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// How sure the person is of a time. Nothing is chosen until they choose.
Column {
    id: root
    property string sureness: ""
    signal chosen(string word)
    readonly property real tile: Theme.roomy ? width : Math.floor((width - grid.spacing) / 2)
    spacing: Theme.px(10)
    SmallWords {
        width: parent.width
        //: Heading over four answers: exactly, about, between two times, not sure.
        //% "How sure are you?"
        text: qsTrId("time.how_sure")
    }
    Grid {
        id: grid
        readonly property real tall: Math.max(exact.implicitHeight, about.implicitHeight,
                                              between.implicitHeight, unsure.implicitHeight)
        columns: Theme.roomy ? 1 : 2
        spacing: Theme.tight
        ChoiceTile {
            id: exact
            objectName: "exact"
            width: root.tile
            height: grid.tall
            least: Theme.target
            //: How sure the person is of a time: to the minute.
            //% "Exactly then"
            text: qsTrId("time.exact")
            chosen: root.sureness === "exact"
            onClicked: root.chosen("exact")
        }
        ChoiceTile {
            id: about
            objectName: "about"
            width: root.tile
            height: grid.tall
            least: Theme.target
            //: How sure the person is of a time: give or take some minutes.
            //% "About then"
            text: qsTrId("time.about")
            chosen: root.sureness === "about"
            onClicked: root.chosen("about")
        }
        ChoiceTile {
            id: between
            objectName: "between"
            width: root.tile
            height: grid.tall
            least: Theme.target
            //: How sure the person is of a time: it lay between two times.
            //% "Between two times"
            text: qsTrId("time.between")
            chosen: root.sureness === "between"
            onClicked: root.chosen("between")
        }
        ChoiceTile {
            id: unsure
            objectName: "unsure"
            width: root.tile
            height: grid.tall
            least: Theme.target
            //: How sure the person is of a time: they do not know it.
            //% "I am not sure"
            text: qsTrId("time.unsure")
            chosen: root.sureness === "unsure"
            onClicked: root.chosen("unsure")
        }
    }
}
