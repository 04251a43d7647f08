// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// "This isn't working": a question with a few answers, each leading on to a fix or to the clinic.
/// The clinic's number is always on the page, so that it is never a dead end.
///
/// title, question
/// options       list of { id, text }: what is wrong; shown while there is no answer
/// answer        the fix, in words; figure, figureText its picture; then fixed() or stillNot()
/// mistakes      list of { text, figure }: what not to do; shown while there is no answer
/// phone, hours  the clinic
AskPage {
    id: root
    property string question: ""
    property var options: []
    property string answer: ""
    property string figure: ""
    property string figureText: ""
    property var mistakes: []
    required property string phone
    property string hours: ""
    signal chosen(string id)
    signal fixed()
    signal stillNot()

    readonly property bool answered: answer !== ""
    body: answered ? answer : question
    answerShare: 0.52
    mainLabel: answered ? worksNow : ""
    //: Help page, button under advice: the trouble is gone, go on with the step.
    //% "It works now"
    readonly property string worksNow: qsTrId("help.works_now")
    //: Help page, button under advice: the trouble is still there; leads to more help.
    //% "Still not right"
    readonly property string notYet: qsTrId("help.still_not")
    secondLabel: answered ? notYet : ""
    onMain: fixed()
    onSecond: stillNot()

    beside: PhoneCard {
        width: parent.width
        large: false
        heading: root.callHeading
        phone: root.phone
        hours: root.hours
    }
    //: Small heading over the clinic's number on the help page.
    //% "Or call your clinic"
    readonly property string callHeading: qsTrId("help.or_call")

    Repeater {
        model: root.answered ? 0 : root.options.length
        Action {
            required property int index
            readonly property var item: root.options[index] ?? ({})
            objectName: "option-" + (item.id ?? "")
            kind: "second"
            width: parent.width
            text: item.text ?? ""
            onClicked: root.chosen(item.id)
        }
    }
    NotThis {
        width: parent.width
        items: root.answered ? [] : root.mistakes
    }
    Rectangle {
        visible: root.answered && root.figure !== ""
        width: parent.width
        height: Math.min(width, Theme.px(Theme.landscape ? 400 : 460))
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
