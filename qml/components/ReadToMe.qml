// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The choice to have each page read aloud when it comes up.
ChoiceTile {
    objectName: "read-to-me"
    square: true
    //: First page, a choice to tick: the tablet reads each page aloud when it comes up.
    //% "Read each page to me"
    text: qsTrId("welcome.read_to_me")
}
