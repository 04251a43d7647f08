// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Which light does the recorder show? Each is drawn as it really blinks (never more than three
/// flashes a second), with its timing as bars and in words.
///
/// title, body
/// lights   list of { id, name, blinks, onMs, offMs, pauseMs, steady, color, colorName }
///          name: "Two short blinks, then a pause"; colorName: "green"; steady: does not blink
/// selected id of the chosen light; answer: what it means and what to do
/// mainLabel, mainEnabled; chosen(id), main(), trouble() (it looks different), back()
AskPage {
    id: root
    required property var lights
    property string selected: ""
    property string answer: ""
    signal chosen(string id)
    signal trouble()
    answerShare: 0.6
    //: Light page, button: the recorder's light looks like none of those shown; opens help.
    //% "It looks different"
    secondLabel: qsTrId("light.different")
    onSecond: trouble()
    beside: Card {
        visible: root.answer !== ""
        width: parent.width
        Words { width: parent.width; text: root.answer; font.weight: Font.Medium }
    }
    Repeater {
        model: root.lights.length
        LightTile {
            required property int index
            readonly property var item: root.lights[index] ?? ({})
            objectName: "light-" + (item.id ?? "")
            width: parent.width
            text: item.name ?? ""
            light: item
            chosen: root.selected !== "" && item.id === root.selected
            onClicked: root.chosen(item.id)
        }
    }
}
