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
/// mistakes     list of { text, figure }: what not to do
/// personFigure, personFigureText  the whole person who gathers parts
/// paceText     "In bed by about 10:05 - on time"
/// canSpeak, speakReason           whether it can be read aloud, and if not, why
/// breathing, breathPhase (0..1), breathText   the breathing guide of belts; it sounds while
/// breathSound, which breathSoundChosen(on) asks for
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
    property var mistakes: []
    property string paceText: ""
    property bool backVisible: true
    property bool canSpeak: true
    property string speakReason: ""
    property bool breathing: false
    property real breathPhase: 0
    property string breathText: ""
    property bool breathSound: false
    signal breathSoundChosen(bool on)
    /// The mirror: offered on this step; there is a camera; what it promises; the item that paints it.
    property bool mirrorOffered: false
    property bool mirrorThere: true
    property string mirrorText: ""
    property Component mirror: null
    signal mirrorOpened()
    signal mirrorClosed()
    signal trouble()

    /// What lies over the page: "", "figure", "why", "sound" or "mirror".
    property string shown: ""
    covered: shown !== ""
    onTitleChanged: shown = ""
    onShownChanged: if (shown === "mirror") mirrorOpened(); else mirrorClosed()

    //: Small button on a step: explains why this part is needed.
    //% "Why this?"
    readonly property string whyLabel: qsTrId("step.why")
    /// Upright and with large text the step's picture stands in the pane, with the person.
    readonly property bool together: upright || Theme.roomy
    spacing: Theme.px(15)
    paneShare: together ? 0.32 : 0.215
    paneShareUpright: Theme.roomy ? 0.26 : 0.33
    //: Button on each step: opens questions that help when the step does not work out.
    //% "This isn't working"
    secondLabel: qsTrId("step.trouble")
    onSecond: trouble()

    pane: StepPane {
        anchors { fill: parent; margins: Theme.px(16) }
        together: root.together
        upright: root.upright
        figure: root.figure
        figureText: root.figureText
        personFigure: root.personFigure
        personFigureText: root.personFigureText
        paceText: root.paceText
        breath: root.breathing ? root.breathPhase : 0
        onEnlarge: root.shown = "figure"
    }
    over: [MirrorPanel {
        visible: root.shown === "mirror"
        title: root.title
        hasCamera: root.mirrorThere
        picture: root.mirror
        figure: root.figure
        description: root.figureText
        words: root.mirrorText
        onClosed: root.shown = ""
    }, Panel {
        visible: root.shown !== "" && root.shown !== "mirror"
        title: root.title
        body: root.shown === "why" ? root.why : root.shown === "sound" ? root.speakReason : ""
        figure: root.shown === "figure" ? root.figure : ""
        description: root.figureText
        mistakes: root.mistakes
        onClosed: root.shown = ""
    }]

    TopBar {
        id: bar
        width: parent.width
        backVisible: root.backVisible
        onBack: root.back()
        Action {
            objectName: "why"
            visible: root.why !== "" && !Theme.roomy
            text: root.whyLabel
            onClicked: root.shown = "why"
        }
        Action {
            objectName: "mirror"
            visible: root.mirrorOffered
            //: Small button on a step: shows the person by the camera as in a mirror, beside the
            //: drawing. Nothing of it is kept.
            //% "Mirror"
            text: qsTrId("step.mirror")
            onClicked: root.shown = "mirror"
        }
        SayAction {
            objectName: "say"
            canSpeak: root.canSpeak
            speaking: root.voice.speaking ?? false
            onSay: root.sayAgain()
            onStop: root.stopReading()
            onWhy: root.shown = "sound"
        }
    }
    Item {
        id: middle
        // As tall as leaves the caution in sight.
        readonly property real spare: root.room - bar.height - 2 * root.spacing
                                      - (caution.visible ? caution.height + root.spacing : 0)
        width: parent.width
        height: root.together ? words.height : Math.max(words.height, Math.min(card.width * 1.18 + card.mistakeHeight, spare))
        FigureCard {
            id: card
            objectName: "larger"
            visible: !root.together
            anchors { left: parent.left; top: parent.top }
            width: Math.round(middle.width * 0.36)
            // All of the picture stays in sight where the words are longer than the page.
            height: Math.min(middle.height, Math.max(middle.spare, width))
            figure: visible ? root.figure : ""
            description: root.figureText
            mistakes: visible ? root.mistakes : []
            breath: root.breathing ? root.breathPhase : 0
            onClicked: root.shown = "figure"
        }
        StepWords {
            id: words
            anchors { left: root.together ? parent.left : card.right; right: parent.right }
            anchors.leftMargin: root.together ? 0 : Theme.px(28)
            label: root.label
            title: root.title
            body: root.body
            rightWhen: root.rightWhen
            breathing: root.breathing
            breathPhase: root.breathPhase
            breathText: root.breathText
            breathSound: root.breathSound
            onBreathSoundChosen: (on) => root.breathSoundChosen(on)
        }
    }
    CautionBox { id: caution; width: parent.width; text: root.caution }
    NotThis {
        id: notThis
        // Only where nothing else is pushed out of sight for it; the larger picture always has it.
        readonly property real needed: bar.height + middle.height + pictureSide + 3 * root.spacing
                                       + (caution.visible ? caution.height + root.spacing : 0)
        width: parent.width
        across: !Theme.roomy
        items: root.together && (Theme.roomy || needed <= root.room) ? root.mistakes : []
    }
    // With large text the words come first, and these after them.
    Action {
        objectName: "whyBelow"
        visible: root.why !== "" && Theme.roomy
        text: root.whyLabel
        onClicked: root.shown = "why"
    }
    SmallWords {
        width: parent.width
        visible: Theme.roomy && text !== ""
        text: root.paceText
    }
}
