// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The choice to have a soft tone with each note of the night. Off at first.
ChoiceTile {
    objectName: "night-sound"
    square: true
    //: Last page of the evening, a choice to tick, off at first: a soft tone answers each note of
    //: the night. Without it the night is silent.
    //% "Soft sound when I note something"
    text: qsTrId("bed.night_sound")
}
