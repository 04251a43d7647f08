// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// What the clinic must know before anything is put on. Neither answer is nudged: both look alike.
///
/// title, intro; conditions: list of sentences ("Tape makes my skin red or sore.")
/// none(): none of them; some(): one or more; back()
AskPage {
    id: root
    required property string intro
    required property var conditions
    signal none()
    signal some()
    body: intro
    mainKind: "second"
    mainShare: 0.5
    //: First page of questions, answer: none of the conditions listed is true for me.
    //% "None of these"
    mainLabel: qsTrId("first.none")
    //: First page of questions, answer: one or more of the conditions listed is true for me.
    //% "One or more of these"
    secondLabel: qsTrId("first.some")
    onMain: none()
    onSecond: some()
    Card {
        width: parent.width
        Lines { width: parent.width; lines: root.conditions; large: true; spacing: Theme.px(18) }
    }
}
