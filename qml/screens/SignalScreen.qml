// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// One thing to do while the recorder runs, timed by the page: breathe calmly, hold the breath.
///
/// title, body, caution; figure, figureText
/// secondsText "10" (still to come, or left while it runs); unitText "seconds"; runningText what to
/// do now, large, while it runs
/// mainLabel, mainEnabled, skipLabel; main(), skip(), back()
AskPage {
    id: root
    property string figure: ""
    property string figureText: ""
    required property string secondsText
    property string unitText: ""
    property string runningText: ""
    property string skipLabel: ""
    signal skip()
    mainShare: 0.66
    secondLabel: skipLabel
    onSecond: skip()
    answerShare: 0.46
    Card {
        width: parent.width
        spacing: Theme.px(8)
        FigureImage {
            visible: root.figure !== ""
            anchors.horizontalCenter: parent.horizontalCenter
            width: Math.min(parent.width, Theme.px(300))
            height: visible ? Math.round(width * 0.8) : 0
            figure: root.figure
            description: root.figureText
        }
        Words {
            width: parent.width
            text: root.runningText
            horizontalAlignment: Text.AlignHCenter
            font.weight: Font.DemiBold
        }
        Words {
            width: parent.width
            text: root.secondsText
            horizontalAlignment: Text.AlignHCenter
            font.pixelSize: Theme.huge
            font.weight: Font.Bold
            leading: 1.0
        }
        Words {
            width: parent.width
            text: root.unitText
            horizontalAlignment: Text.AlignHCenter
            font.weight: Font.Medium
        }
    }
}
