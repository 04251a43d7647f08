// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The night. Black, dim, no clock, nothing that moves; what is tapped is only reported.
///
/// face        "dark"       nothing is drawn; the first touch or key only wakes
///             "areas"      what can be noted, and what can be asked
///             "noted"      notedText ("Noted: getting up") and Undo; the page goes dark by itself
///             "upConfirm"  asks once more before the night ends
///             "which"      which part; items { id, name, figure }
///             "stillOn"    back in bed: is everything still on?
///             "help"       what should I do; items { id, text }
///             "advice"     title, body, figure, figureText, phone
/// awakeNow, outOfBed, somethingOff   what is under way; they turn the labels round
/// watchText   "Nobody is watching. Call 555-0142 if ..."; on every face but the dark one
/// chosen(id)  a part ("which", or "none") or a question ("help")
/// yes(), no() answers of "stillOn" (no: something is off); no() also leaves "upConfirm"
/// done()      leaves "noted", "which", "help", "advice" for the dark or the areas
FocusScope {
    id: root
    required property string face
    property bool awakeNow: false
    property bool outOfBed: false
    property bool somethingOff: false
    property string watchText: ""
    property string notedText: ""
    property var items: []
    property string title: ""
    property string body: ""
    property string figure: ""
    property string figureText: ""
    property string phone: ""
    /// Reading aloud, only on request: { offered, canSpeak, speaking }
    property var voice: ({})
    readonly property bool canRead: face === "advice" && (voice.offered ?? false) && (voice.canSpeak ?? false)
    signal sayAgain()
    signal stopReading()
    signal wake()
    signal awake()
    signal up()
    signal off()
    signal help()
    signal upForDay()
    signal upConfirmed()
    signal undo()
    signal chosen(string id)
    signal yes()
    signal no()
    signal done()

    readonly property bool dark: face === "dark"
    focus: true
    Keys.onPressed: (event) => {
        if (dark) {
            event.accepted = true;
            if (!event.isAutoRepeat)
                wake();
        }
    }
    onDarkChanged: if (dark) forceActiveFocus()

    Rectangle { anchors.fill: parent; color: "#000000" }
    MouseArea {
        anchors.fill: parent
        enabled: root.dark
        visible: root.dark
        onPressed: root.wake()
        Accessible.role: Accessible.Button
        //: Dark night page, read by screen readers: touching anywhere shows the page.
        //% "Wake the page"
        Accessible.name: qsTrId("night.wake")
        Accessible.onPressAction: root.wake()
    }
    NightAreas {
        anchors.fill: parent
        visible: root.face === "areas"
        awakeNow: root.awakeNow
        outOfBed: root.outOfBed
        somethingOff: root.somethingOff
        watchText: root.watchText
        onAwake: root.awake()
        onUp: root.up()
        onOff: root.off()
        onHelp: root.help()
        onUpForDay: root.upForDay()
    }
    NightWords { id: words }
    NightFace {
        anchors.fill: parent
        visible: !root.dark && root.face !== "areas"
        watchText: root.watchText
        title: words.title(root.face, root.title, root.notedText)
        body: root.face === "advice" || root.face === "upConfirm" ? root.body : ""
        phone: root.face === "advice" ? root.phone : ""
        figure: root.face === "advice" ? root.figure : ""
        figureText: root.figureText
        choices: root.face === "which" || root.face === "help" ? root.items : []
        first: words.first(root.face)
        other: !root.canRead ? words.other(root.face) : root.voice.speaking ? words.enough : words.read
        onChosen: (id) => root.chosen(id)
        onFirstChosen: {
            if (root.face === "stillOn")
                root.yes();
            else if (root.face === "upConfirm")
                root.upConfirmed();
            else if (root.face === "noted")
                root.undo();
            else
                root.done();
        }
        onOtherChosen: {
            if (root.face === "which")
                root.chosen("none");
            else if (root.face === "stillOn" || root.face === "upConfirm")
                root.no();
            else if (root.canRead && root.voice.speaking)
                root.stopReading();
            else if (root.canRead)
                root.sayAgain();
            else
                root.done();
        }
    }
}
