// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
import QtQuick
import Evenfall.Kiosk
import Evenfall.Ui

/// The window: one screen at a time, chosen by the kiosk. Values go in, signals go out; nothing is
/// decided here.
Window {
    id: root
    required property Kiosk kiosk
    /// The front desk; null where there is none.
    property QtObject desk: null
    readonly property bool atDesk: desk !== null && kiosk.screen === "desk"
    readonly property Item screenItem: (atDesk ? deskLoader.item : loader.item) as Item

    width: 1280
    height: 800
    visible: true
    color: Theme.ground
    title: "Evenfall"

    Binding { target: Theme; property: "windowWidth"; value: root.width }
    Binding { target: Theme; property: "windowHeight"; value: root.height }
    Binding { target: Theme; property: "textScale"; value: root.kiosk.textScale }
    Binding { target: Theme; property: "motion"; value: root.kiosk.motion }
    Binding { target: Theme; property: "tone"; value: root.kiosk.tone }

    Item {
        anchors.fill: parent
        LayoutMirroring.enabled: root.atDesk ? root.desk["rightToLeft"] : root.kiosk.rightToLeft
        LayoutMirroring.childrenInherit: true

        // What is said above every page: that this is practice; whose night somebody of the clinic
        // answers for, and the way back.
        Column {
            id: above
            width: parent.width
            PracticeBar {
                shown: root.kiosk.practice
                width: parent.width
                onEnded: root.kiosk.endPractice()
            }
            StaffBand {
                width: parent.width
                text: root.kiosk.staffLabel
                onBack: root.kiosk.leaveSitting()
            }
        }
        Loader {
            id: loader
            anchors { left: parent.left; right: parent.right; top: above.bottom; bottom: parent.bottom }
            focus: !root.atDesk
            active: !root.atDesk
            sourceComponent: root.componentFor(root.kiosk.screen)
            onLoaded: (item as Item).forceActiveFocus()
        }
        Loader {
            id: deskLoader
            anchors.fill: parent
            active: root.atDesk
            onActiveChanged: if (active) setSource("FrontDesk.qml", { desk: root.desk })
            onLoaded: (item as Item).forceActiveFocus()
        }
        // Reading aloud is alike on every page.
        Binding {
            target: loader.item as Page
            property: "voice"
            value: root.kiosk.voice
            when: loader.item instanceof Page
        }
        Connections {
            target: loader.item
            ignoreUnknownSignals: true
            function onSayAgain() { root.kiosk.sayAgain(); }
            function onStopReading() { root.kiosk.stopReading(); }
        }
    }

    function componentFor(screen: string): Component {
        switch (screen) {
        case "welcome": return welcome;
        case "first": return first;
        case "call": return call;
        case "bag": return bag;
        case "step": return step;
        case "help": return help;
        case "check": return check;
        case "light": return light;
        case "bed": return bed;
        case "night": return night;
        case "morning": return morning;
        case "time": return time;
        case "amount": return amount;
        case "events": return events;
        case "choice": return choice;
        case "comment": return comment;
        case "signal": return signalTask;
        case "review": return review;
        case "puzzle": return puzzle;
        case "result": return result;
        case "skin": return skin;
        case "pack": return bag;
        case "finished": return finished;
        case "ready":
        case "entered": return morning;
        case "practice": return practice;
        }
        return trouble;
    }

    Component {
        id: welcome
        WelcomeScreen {
            title: root.kiosk.welcome.title
            body: root.kiosk.welcome.body
            clinicName: root.kiosk.welcome.clinicName
            codeLabel: root.kiosk.welcome.codeLabel
            nightLabel: root.kiosk.welcome.nightLabel
            languages: root.kiosk.welcome.languages
            language: root.kiosk.language
            mainLabel: root.kiosk.welcome.mainLabel
            staffLabel: root.desk !== null ? root.kiosk.welcome.staffLabel : ""
            onStaff: root.kiosk.askDesk()
            onStart: root.kiosk.goOn()
            builds: root.kiosk.welcome.builds
            build: root.kiosk.welcome.build
            buildText: root.kiosk.welcome.buildText
            startText: root.kiosk.welcome.startText
            practiceLabel: root.kiosk.welcome.practiceLabel
            onPractise: root.kiosk.startPractice()
            onReadingChosen: (eachPage) => root.kiosk.chooseReading(eachPage)
            onLanguageChosen: (code) => root.kiosk.chooseLanguage(code)
            onBuildChosen: (id) => root.kiosk.chooseBuild(id)
        }
    }
    Component {
        id: first
        FirstQuestionsScreen {
            title: root.kiosk.first.title
            intro: root.kiosk.first.intro
            conditions: root.kiosk.first.conditions
            onNone: root.kiosk.firstNone()
            onSome: root.kiosk.firstSome()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: call
        CallScreen {
            title: root.kiosk.call.title
            body: root.kiosk.call.body
            phone: root.kiosk.call.phone
            hours: root.kiosk.call.hours
            afterHoursPhone: root.kiosk.call.afterHoursPhone
            afterHoursText: root.kiosk.call.afterHoursText
            emergencyText: root.kiosk.call.emergencyText
            goOnLabel: root.kiosk.call.goOnLabel
            onGoOn: root.kiosk.goOn()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: bag
        ListCheckScreen {
            title: root.kiosk.list.title
            body: root.kiosk.list.body
            items: root.kiosk.list.items
            mainLabel: root.kiosk.list.mainLabel
            mainEnabled: root.kiosk.list.mainEnabled
            secondLabel: root.kiosk.list.secondLabel
            onToggled: (id) => root.kiosk.toggle(id)
            onMain: root.kiosk.goOn()
            onSecond: root.kiosk.second()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: step
        StepScreen {
            label: root.kiosk.step.label
            title: root.kiosk.step.title
            body: root.kiosk.step.body
            rightWhen: root.kiosk.step.rightWhen
            caution: root.kiosk.step.caution
            why: root.kiosk.step.why
            figure: root.kiosk.step.figure
            figureText: root.kiosk.step.figureText
            personFigure: root.kiosk.step.personFigure
            mistakes: root.kiosk.step.mistakes
            paceText: root.kiosk.step.paceText
            mainLabel: root.kiosk.step.mainLabel
            backVisible: root.kiosk.step.backVisible
            canSpeak: root.kiosk.step.canSpeak
            speakReason: root.kiosk.step.speakReason
            breathing: root.kiosk.step.breathText !== ""
            breathText: root.kiosk.step.breathText
            // A calm breath: in for 2 seconds, out for 3.
            SequentialAnimation on breathPhase {
                running: root.kiosk.step.breathText !== "" && root.kiosk.motion
                loops: Animation.Infinite
                NumberAnimation { from: 0; to: 1; duration: 2000; easing.type: Easing.InOutSine }
                NumberAnimation { from: 1; to: 0; duration: 3000; easing.type: Easing.InOutSine }
                ScriptAction { script: root.kiosk.breathOut() }
            }
            // The same breath by sound alone, where nothing moves.
            Timer {
                interval: 5000
                repeat: true
                running: root.kiosk.voice.breathSound && !root.kiosk.motion
                onTriggered: root.kiosk.breathOut()
            }
            mirrorOffered: root.kiosk.step.mirrorOffered
            mirrorThere: root.kiosk.step.mirrorThere
            mirrorText: root.kiosk.step.mirrorText
            mirror: Component { MirrorItem { source: root.kiosk.mirror } }
            onMirrorOpened: root.kiosk.openMirror()
            onMirrorClosed: root.kiosk.closeMirror()
            breathSound: root.kiosk.voice.breathSound
            onBreathSoundChosen: (on) => root.kiosk.chooseBreathSound(on)
            onMain: root.kiosk.goOn()
            onBack: root.kiosk.goBack()
            onTrouble: root.kiosk.openHelp()
        }
    }
    Component {
        id: help
        HelpScreen {
            title: root.kiosk.help.title
            question: root.kiosk.help.question
            options: root.kiosk.help.options
            answer: root.kiosk.help.answer
            figure: root.kiosk.help.figure
            mistakes: root.kiosk.help.mistakes
            phone: root.kiosk.help.phone
            hours: root.kiosk.help.hours
            onChosen: (id) => root.kiosk.choose(id)
            onFixed: root.kiosk.solved()
            onStillNot: root.kiosk.notSolved()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: check
        SensorCheckScreen {
            title: root.kiosk.list.title
            body: root.kiosk.list.body
            items: root.kiosk.list.items
            mainLabel: root.kiosk.list.mainLabel
            mainEnabled: root.kiosk.list.mainEnabled
            onConfirmed: (id) => root.kiosk.toggle(id)
            onNotRight: (id) => root.kiosk.openHelp(id)
            onMain: root.kiosk.goOn()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: light
        LightScreen {
            title: root.kiosk.list.title
            body: root.kiosk.list.body
            lights: root.kiosk.list.items
            selected: root.kiosk.list.chosen
            answer: root.kiosk.list.answer
            mainLabel: root.kiosk.list.mainLabel
            mainEnabled: root.kiosk.list.mainEnabled
            onChosen: (id) => root.kiosk.choose(id)
            onTrouble: root.kiosk.openHelp()
            onMain: root.kiosk.goOn()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: bed
        LightsOutScreen {
            title: root.kiosk.bed.title
            lines: root.kiosk.bed.lines
            caution: root.kiosk.bed.caution
            mainLabel: root.kiosk.bed.mainLabel
            onNightSoundChosen: (on) => root.kiosk.chooseNightSound(on)
            onMain: root.kiosk.goOn()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: night
        NightScreen {
            face: root.kiosk.night.face
            awakeNow: root.kiosk.night.awakeNow
            outOfBed: root.kiosk.night.outOfBed
            somethingOff: root.kiosk.night.somethingOff
            watchText: root.kiosk.night.watchText
            notedText: root.kiosk.night.notedText
            items: root.kiosk.night.items
            title: root.kiosk.night.title
            body: root.kiosk.night.body
            figure: root.kiosk.night.figure
            figureText: root.kiosk.night.figureText
            phone: root.kiosk.night.phone
            voice: root.kiosk.voice
            onWake: root.kiosk.wake()
            onAwake: root.kiosk.noteAwake()
            onUp: root.kiosk.noteUp()
            onOff: root.kiosk.noteOff()
            onHelp: root.kiosk.askHelp()
            onUpForDay: root.kiosk.upForDay()
            onUpConfirmed: root.kiosk.upConfirmed()
            onUndo: root.kiosk.undo()
            onChosen: (id) => root.kiosk.choose(id)
            onYes: root.kiosk.yes()
            onNo: root.kiosk.no()
            onDone: root.kiosk.leaveFace()
        }
    }
    Component {
        id: morning
        MorningScreen {
            title: root.kiosk.message.title
            body: root.kiosk.message.body
            mainLabel: root.kiosk.message.mainLabel
            onMain: root.kiosk.screen === "ready" ? root.kiosk.askDesk() : root.kiosk.goOn()
        }
    }
    Component {
        id: practice
        PracticeScreen {
            title: root.kiosk.message.title
            body: root.kiosk.message.body
            caution: root.kiosk.message.caution
            figure: root.kiosk.message.figure
            mainLabel: root.kiosk.message.mainLabel
            onMain: root.kiosk.goOn()
        }
    }
    Component {
        id: time
        TimeQuestionScreen {
            progressText: root.kiosk.time.progressText
            title: root.kiosk.time.title
            hint: root.kiosk.time.hint
            timeText: root.kiosk.time.timeText
            dayText: root.kiosk.time.dayText
            sureness: root.kiosk.time.sureness
            giveOrTakeText: root.kiosk.time.giveOrTakeText
            earliestText: root.kiosk.time.earliestText
            earliestDayText: root.kiosk.time.earliestDayText
            latestText: root.kiosk.time.latestText
            latestDayText: root.kiosk.time.latestDayText
            noteText: root.kiosk.time.noteText
            mainLabel: root.kiosk.time.mainLabel
            mainEnabled: root.kiosk.time.mainEnabled
            onStep: (minutes, which) => root.kiosk.stepTime(minutes, which)
            onSurenessChosen: (word) => root.kiosk.chooseSureness(word)
            onWidthStep: (delta) => root.kiosk.stepWidth(delta)
            onMain: root.kiosk.goOn()
            onSkip: root.kiosk.skip()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: amount
        AmountQuestionScreen {
            progressText: root.kiosk.amount.progressText
            title: root.kiosk.amount.title
            hint: root.kiosk.amount.hint
            valueText: root.kiosk.amount.valueText
            unitText: root.kiosk.amount.unitText
            steps: root.kiosk.amount.steps
            mainLabel: root.kiosk.amount.mainLabel
            mainEnabled: root.kiosk.amount.mainEnabled
            onStep: (delta) => root.kiosk.stepAmount(delta)
            onMain: root.kiosk.goOn()
            onSkip: root.kiosk.skip()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: events
        EventsQuestionScreen {
            progressText: root.kiosk.list.progressText
            title: root.kiosk.list.title
            hint: root.kiosk.list.hint
            events: root.kiosk.list.items
            addLabel: root.kiosk.list.addLabel
            noneLabel: root.kiosk.list.noneLabel
            countLabel: root.kiosk.list.countLabel
            mainLabel: root.kiosk.list.mainLabel
            mainEnabled: root.kiosk.list.mainEnabled
            onEdit: (id) => root.kiosk.editEvent(id)
            onRemove: (id) => root.kiosk.removeEvent(id)
            onAdd: root.kiosk.addEvent()
            onNone: root.kiosk.noEvents()
            onCount: root.kiosk.countEvents()
            onMain: root.kiosk.goOn()
            onSkip: root.kiosk.skip()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: choice
        ChoiceQuestionScreen {
            progressText: root.kiosk.list.progressText
            title: root.kiosk.list.title
            hint: root.kiosk.list.hint
            options: root.kiosk.list.items
            selected: [root.kiosk.list.chosen]
            mainLabel: root.kiosk.list.mainLabel
            mainEnabled: root.kiosk.list.mainEnabled
            onChosen: (id) => root.kiosk.choose(id)
            onMain: root.kiosk.goOn()
            onSkip: root.kiosk.skip()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: comment
        CommentQuestionScreen {
            progressText: root.kiosk.comment.progressText
            title: root.kiosk.comment.title
            hint: root.kiosk.comment.hint
            text: root.kiosk.comment.text
            mainLabel: root.kiosk.comment.mainLabel
            onEdited: (text) => root.kiosk.editComment(text)
            onMain: root.kiosk.goOn()
            onSkip: root.kiosk.skip()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: signalTask
        SignalScreen {
            title: root.kiosk.signalTask.title
            body: root.kiosk.signalTask.body
            caution: root.kiosk.signalTask.caution
            figure: root.kiosk.signalTask.figure
            figureText: root.kiosk.signalTask.figureText
            secondsText: root.kiosk.signalTask.secondsText
            unitText: root.kiosk.signalTask.unitText
            runningText: root.kiosk.signalTask.runningText
            mainLabel: root.kiosk.signalTask.mainLabel
            mainEnabled: root.kiosk.signalTask.mainEnabled
            skipLabel: root.kiosk.signalTask.skipLabel
            onMain: root.kiosk.goOn()
            onSkip: root.kiosk.skip()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: review
        ReviewScreen {
            title: root.kiosk.review.title
            body: root.kiosk.review.body
            rows: root.kiosk.review.rows
            mainLabel: root.kiosk.review.mainLabel
            onChange: (id) => root.kiosk.change(id)
            onMain: root.kiosk.goOn()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: puzzle
        PuzzleScreen {
            title: root.kiosk.puzzle.title
            body: root.kiosk.puzzle.body
            first: ({ label: root.kiosk.puzzle.firstLabel, value: root.kiosk.puzzle.firstValue, canChange: root.kiosk.puzzle.firstCanChange })
            other: ({ label: root.kiosk.puzzle.secondLabel, value: root.kiosk.puzzle.secondValue, canChange: root.kiosk.puzzle.secondCanChange })
            onChangeFirst: root.kiosk.changeFirst()
            onChangeSecond: root.kiosk.changeSecond()
            onLeave: root.kiosk.leavePuzzle()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: result
        ResultScreen {
            sentence: root.kiosk.result.sentence
            rangeText: root.kiosk.result.rangeText
            explain: root.kiosk.result.explain
            picture: root.kiosk.picture
            pictureText: root.kiosk.result.pictureText
            clinicText: root.kiosk.result.clinicText
            mainLabel: root.kiosk.result.mainLabel
            onMain: root.kiosk.goOn()
        }
    }
    Component {
        id: skin
        SkinScreen {
            title: root.kiosk.skin.title
            body: root.kiosk.skin.body
            caution: root.kiosk.skin.caution
            figure: root.kiosk.skin.figure
            figureText: root.kiosk.skin.figureText
            remainingText: root.kiosk.skin.remainingText
            question: root.kiosk.skin.question
            laterLabel: root.kiosk.skin.laterLabel
            onFine: root.kiosk.skinFine()
            onHurt: root.kiosk.skinSore()
            onLater: root.kiosk.goOn()
            onBack: root.kiosk.goBack()
        }
    }
    Component {
        id: finished
        FinishedScreen {
            title: root.kiosk.message.title
            body: root.kiosk.message.body
            recordName: root.kiosk.message.recordName
            returnText: root.kiosk.message.returnText
            skinText: root.kiosk.message.skinText
            phone: root.kiosk.message.phone
            hours: root.kiosk.message.hours
            mainLabel: root.kiosk.message.mainLabel
            staffLabel: root.desk !== null ? root.kiosk.message.staffLabel : ""
            onStaff: root.kiosk.askDesk()
            onDone: root.kiosk.goOn()
        }
    }
    Component {
        id: trouble
        TroubleScreen {
            title: root.kiosk.message.title
            body: root.kiosk.message.body
            detail: root.kiosk.message.detail
            phone: root.kiosk.message.phone
            hours: root.kiosk.message.hours
            mainLabel: root.kiosk.message.mainLabel
            onMain: root.kiosk.goOn()
        }
    }
}
