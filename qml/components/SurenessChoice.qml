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
    spacing: Theme.px(10)
    SmallWords {
        width: parent.width
        //: Heading over four answers: exactly, about, between two times, not sure.
        //% "How sure are you?"
        text: qsTrId("time.how_sure")
    }
    ChoiceTile {
        objectName: "exact"
        width: parent.width
        //: How sure the person is of a time: to the minute.
        //% "Exactly then"
        text: qsTrId("time.exact")
        chosen: root.sureness === "exact"
        onClicked: root.chosen("exact")
    }
    ChoiceTile {
        objectName: "about"
        width: parent.width
        //: How sure the person is of a time: give or take some minutes.
        //% "About then"
        text: qsTrId("time.about")
        chosen: root.sureness === "about"
        onClicked: root.chosen("about")
    }
    ChoiceTile {
        objectName: "between"
        width: parent.width
        //: How sure the person is of a time: it lay between two times.
        //% "Between two times"
        text: qsTrId("time.between")
        chosen: root.sureness === "between"
        onClicked: root.chosen("between")
    }
    ChoiceTile {
        objectName: "unsure"
        width: parent.width
        //: How sure the person is of a time: they do not know it.
        //% "I am not sure"
        text: qsTrId("time.unsure")
        chosen: root.sureness === "unsure"
        onClicked: root.chosen("unsure")
    }
}
