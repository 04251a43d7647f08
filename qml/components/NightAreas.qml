// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// What can be noted in the night: three very large areas. Apart from them, beyond a line: what to
/// do right now, and the end of the night. No clock: people who watch the clock sleep worse.
FocusScope {
    id: root
    property bool awakeNow: false
    property bool outOfBed: false
    property bool somethingOff: false
    property string watchText: ""
    signal awake()
    signal up()
    signal off()
    signal help()
    signal upForDay()

    //: Night page, a very large area: notes that the person lies awake.
    //% "I am awake"
    readonly property string awakeLabel: qsTrId("night.awake")
    //: Night page, the same area later: notes that the person tries to sleep again.
    //% "Going back to sleep"
    readonly property string asleepLabel: qsTrId("night.back_to_sleep")
    //: Night page, a very large area: notes that the person gets out of bed for a while.
    //% "Getting up"
    readonly property string upLabel: qsTrId("night.getting_up")
    //: Night page, the same area later: notes that the person is in bed again.
    //% "Back in bed"
    readonly property string bedLabel: qsTrId("night.back_in_bed")
    //: Night page, a caution under "Getting up": cables can catch on the bed and trip the person.
    //% "Free the cables first, then walk"
    readonly property string cables: qsTrId("night.cables_first")
    //: Night page, a very large area: notes that a part of the kit came off.
    //% "Something came off"
    readonly property string offLabel: qsTrId("night.came_off")
    //: Night page, the same area later: notes that the part is in place again.
    //% "It is back on"
    readonly property string onLabel: qsTrId("night.back_on")

    readonly property bool wide: Theme.landscape
    // Heights: the foot apart from the notes, and "Getting up" a little taller for its caution.
    readonly property real high: watch.y - Theme.px(18) - Theme.px(28)
    readonly property real foot: Math.max(Theme.mm(21), ask.implicitHeight, day.implicitHeight)
    readonly property real notes: high - foot * (wide ? 1 : 2) - Theme.gap * (wide ? 0 : 1) - Theme.px(45)
    readonly property real rows: notes - Theme.gap * (wide ? 1 : 2)
    readonly property real otherHigh: Math.max(Theme.mm(20), offArea.implicitHeight,
                                               wide ? 0 : awakeArea.implicitHeight,
                                               rows * (Theme.roomy ? 0 : wide ? 0.44 : 0.3))
    readonly property real upHigh: rows - otherHigh * (wide ? 1 : 2)

    Item {
        id: place
        x: Theme.margin
        y: Theme.px(28)
        width: root.width - 2 * x
        height: root.high
        readonly property real half: (width - Theme.gap) / 2
        NightArea {
            id: awakeArea
            objectName: "awake"
            anchors { left: parent.left; top: parent.top }
            width: root.wide ? place.half : parent.width
            height: root.wide ? root.upHigh : root.otherHigh
            text: root.awakeNow ? root.asleepLabel : root.awakeLabel
            onClicked: root.awake()
        }
        NightArea {
            objectName: "up"
            anchors { right: parent.right; top: parent.top }
            anchors.topMargin: root.wide ? 0 : root.otherHigh + Theme.gap
            width: root.wide ? place.half : parent.width
            height: root.upHigh
            text: root.outOfBed ? root.bedLabel : root.upLabel
            detail: root.outOfBed ? "" : root.cables
            onClicked: root.up()
        }
        NightArea {
            id: offArea
            objectName: "off"
            anchors { left: parent.left; right: parent.right; bottom: line.top; bottomMargin: Theme.px(22) }
            height: root.otherHigh
            text: root.somethingOff ? root.onLabel : root.offLabel
            onClicked: root.off()
        }
        Rectangle {
            id: line
            anchors { left: parent.left; right: parent.right; bottom: ask.top; bottomMargin: Theme.px(22) }
            height: Math.max(1, Theme.px(1))
            color: Theme.edge
        }
        NightArea {
            id: ask
            objectName: "help"
            anchors { left: parent.left; bottom: parent.bottom }
            anchors.bottomMargin: root.wide ? 0 : root.foot + Theme.gap
            width: root.wide ? Math.round(place.width * (Theme.roomy ? 0.52 : 0.6)) : parent.width
            height: root.foot
            kind: "ask"
            //: Night page, apart from what is noted: opens help for what to do right now.
            //% "What should I do?"
            text: qsTrId("night.what_should_i_do")
            onClicked: root.help()
        }
        NightArea {
            id: day
            objectName: "day"
            anchors { right: parent.right; bottom: parent.bottom }
            width: root.wide ? parent.width - ask.width - Theme.gap : parent.width
            height: root.foot
            kind: "small"
            //: Night page, smaller area: ends the night. It asks once more before it does.
            //% "Up for the day"
            text: qsTrId("night.up_for_day")
            onClicked: root.upForDay()
        }
    }
    SmallWords {
        id: watch
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        anchors { leftMargin: Theme.margin; rightMargin: Theme.margin; bottomMargin: Theme.px(22) }
        horizontalAlignment: Text.AlignHCenter
        text: root.watchText
    }
}
