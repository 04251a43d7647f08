// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// One question: its words, its answer, the main action and skip. A skipped answer is no answer.
AskPage {
    id: root
    property string progressText: ""
    signal skip()
    label: progressText
    mainShare: 0.66
    //: Button on each question: leaves the question without an answer.
    //% "Skip this question"
    secondLabel: qsTrId("question.skip")
    onSecond: skip()
}
