// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A look at the skin under the tape, now and again after 30 minutes.
///
/// title, body, caution, figure, figureText
/// remainingText  "Look again in 24 minutes"; empty while no timer runs
/// question       "How does your skin look?"; its answers: fine(), hurt()
/// laterLabel     leaves the page while the timer runs; empty hides it; later()
AskPage {
    id: root
    property string figure: ""
    property string figureText: ""
    property string remainingText: ""
    property string question: ""
    property string laterLabel: ""
    signal fine()
    signal hurt()
    signal later()
    mainShare: 0.5
    mainKind: "second"
    //: Skin check, answer: the skin under the tape looks and feels as usual.
    //% "My skin is fine"
    mainLabel: qsTrId("skin.fine")
    //: Skin check, answer: the skin under the tape is not as usual; leads to what to do.
    //% "It is red or it hurts"
    secondLabel: qsTrId("skin.hurt")
    onMain: fine()
    onSecond: hurt()
    answerShare: 0.5
    beside: [
        Words { width: parent.width; text: root.question; font.weight: Font.DemiBold },
        Action {
            objectName: "later"
            visible: root.laterLabel !== ""
            width: Math.min(implicitWidth, parent.width)
            text: root.laterLabel
            onClicked: root.later()
        }
    ]
    Card {
        visible: root.remainingText !== ""
        width: parent.width
        Words { width: parent.width; text: root.remainingText; font.pixelSize: Theme.label; font.weight: Font.Bold }
    }
    Rectangle {
        visible: root.figure !== ""
        width: parent.width
        height: Math.min(width, Theme.px(440))
        radius: Theme.radius
        color: Theme.pane
        FigureImage {
            anchors.fill: parent
            anchors.margins: Theme.px(10)
            figure: root.figure
            description: root.figureText
        }
    }
}
