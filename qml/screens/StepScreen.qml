// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// One step of putting the kit on. The page is right when the step is done right at first sight.
///
/// label        the part in question, small over the title ("Waist belt")
/// title, body  what to do; one or two short sentences
/// rightWhen    how to know that it is right; may be empty
/// caution      the risk of this step; may be empty
/// why          opens a panel when not empty
/// figure, figureText              the step's picture and its words for screen readers
/// personFigure, personFigureText  the whole person who gathers parts
/// paceText     "In bed by about 10:05 - on time"
/// canSpeak, speakReason           whether it can be read aloud, and if not, why
/// breathing, breathPhase (0..1), breathText   the breathing guide of belts
Page {
    id: root
    required property string label
    required property string title
    required property string body
    property string rightWhen: ""
    property string caution: ""
    property string why: ""
    required property string figure
    required property string figureText
    required property string personFigure
    property string personFigureText: ""
    property string paceText: ""
    property bool backVisible: true
    property bool canSpeak: true
    property string speakReason: ""
    property bool breathing: false
    property real breathPhase: 0
    property string breathText: ""
    signal sayAgain()
    signal trouble()

    /// What lies over the page: "", "figure", "why" or "sound".
    property string shown: ""
    covered: shown !== ""
    onTitleChanged: shown = ""

    paneShare: 0.23
    paneShareUpright: Theme.roomy ? 0.2 : 0.31
    //: Button on each step: opens questions that help when the step does not work out.
    //% "This isn't working"
    secondLabel: qsTrId("step.trouble")
    onSecond: trouble()

    pane: [
        PersonPane {
            anchors.fill: parent
            anchors.margins: Theme.px(16)
            anchors.rightMargin: root.upright ? parent.width * 0.62 : Theme.px(16)
            figure: root.personFigure
            description: root.personFigureText
            paceText: root.upright ? "" : root.paceText
        },
        FigureCard {
            visible: root.upright
            anchors { fill: parent; margins: Theme.px(16); leftMargin: parent.width * 0.4 }
            figure: visible ? root.figure : ""
            description: root.figureText
            onEnlarge: root.shown = "figure"
        }
    ]
    over: Panel {
        visible: root.shown !== ""
        title: root.title
        body: root.shown === "why" ? root.why : root.shown === "sound" ? root.speakReason : ""
        figure: root.shown === "figure" ? root.figure : ""
        description: root.figureText
        onClosed: root.shown = ""
    }

    TopBar {
        width: parent.width
        backVisible: root.backVisible
        onBack: root.back()
        Action {
            objectName: "why"
            visible: root.why !== ""
            //: Small button on a step: explains why this part is needed.
            //% "Why this?"
            text: qsTrId("step.why")
            onClicked: root.shown = "why"
        }
        Action {
            id: say
            objectName: "say"
            //: Small button on a step: reads the page aloud once more.
            //% "Say it again"
            readonly property string again: qsTrId("step.say_again")
            //: Small button in place of "Say it again" when there is no sound: explains why.
            //% "Why no sound?"
            readonly property string silent: qsTrId("step.no_sound")
            text: root.canSpeak ? say.again : say.silent
            onClicked: if (root.canSpeak) root.sayAgain(); else root.shown = "sound"
        }
    }
    SmallWords {
        width: parent.width
        visible: root.upright && text !== ""
        text: root.paceText
    }
    Grid {
        id: middle
        readonly property real pictureWidth: Math.round(width * 0.4)
        readonly property bool beside: !root.upright && !Theme.roomy
        width: parent.width
        columns: beside ? 2 : 1
        spacing: Theme.px(28)
        FigureCard {
            visible: !root.upright
            width: middle.beside ? middle.pictureWidth : middle.width
            height: Math.round(middle.beside ? width * 1.17 : Theme.px(420))
            figure: visible ? root.figure : ""
            description: root.figureText
            onEnlarge: root.shown = "figure"
        }
        StepWords {
            width: middle.beside ? middle.width - middle.spacing - middle.pictureWidth : middle.width
            label: root.label
            title: root.title
            body: root.body
            rightWhen: root.rightWhen
            caution: root.caution
            breathing: root.breathing
            breathPhase: root.breathPhase
            breathText: root.breathText
        }
    }
}
