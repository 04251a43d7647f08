// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A time with its day in words, and steps that say how far they go: earlier at the start side,
/// later at the end side.
Card {
    id: root
    property string heading: ""
    property string timeText: ""
    property string dayText: ""
    property bool dimmed: false
    /// Two of them on one page.
    property bool compact: false
    signal step(int minutes)
    inset: Theme.px(14)

    //: Button: sets the time 1 hour earlier.
    //% "− 1 h"
    readonly property string hourLess: qsTrId("time.minus_hour")
    //: Button: sets the time 10 minutes earlier.
    //% "− 10 min"
    readonly property string tenLess: qsTrId("time.minus_ten")
    //: Button: sets the time 1 minute earlier.
    //% "− 1 min"
    readonly property string oneLess: qsTrId("time.minus_one")
    //: Button: sets the time 1 hour later.
    //% "+ 1 h"
    readonly property string hourMore: qsTrId("time.plus_hour")
    //: Button: sets the time 10 minutes later.
    //% "+ 10 min"
    readonly property string tenMore: qsTrId("time.plus_ten")
    //: Button: sets the time 1 minute later.
    //% "+ 1 min"
    readonly property string oneMore: qsTrId("time.plus_one")
    readonly property bool wide: !Theme.roomy
    readonly property var lessSteps: compact ? [ { text: hourLess, minutes: -60 }, { text: tenLess, minutes: -10 } ]
        : [ { text: hourLess, minutes: -60 }, { text: tenLess, minutes: -10 }, { text: oneLess, minutes: -1 } ]
    readonly property var moreSteps: compact ? [ { text: hourMore, minutes: 60 }, { text: tenMore, minutes: 10 } ]
        : [ { text: hourMore, minutes: 60 }, { text: tenMore, minutes: 10 }, { text: oneMore, minutes: 1 } ]

    Item {
        width: parent.width
        height: root.wide ? Math.max(less.height, middle.height)
                          : middle.height + Theme.tight + less.height
        StepColumn {
            id: less
            anchors { left: parent.left; bottom: parent.bottom }
            width: Math.round(parent.width * (root.wide ? 0.26 : 0.485))
            steps: root.lessSteps
            about: root.heading
            onStep: (minutes) => root.step(minutes)
        }
        Column {
            id: middle
            anchors.horizontalCenter: parent.horizontalCenter
            y: root.wide ? (parent.height - height) / 2 : 0
            width: parent.width * (root.wide ? 0.42 : 1)
            spacing: Theme.px(2)
            SmallWords { width: parent.width; text: root.heading; horizontalAlignment: Text.AlignHCenter }
            Words {
                width: parent.width
                text: root.timeText
                color: root.dimmed ? Theme.softText : Theme.text
                horizontalAlignment: Text.AlignHCenter
                // "10:00 PM" stays on one line; where the clock has 12 hours it is a little smaller.
                wrapMode: Text.NoWrap
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: Theme.body
                font.pixelSize: root.compact ? Theme.title : Theme.huge
                font.weight: Font.Bold
                leading: 1.0
            }
            Words {
                width: parent.width
                text: root.dayText
                horizontalAlignment: Text.AlignHCenter
                font.weight: Font.Medium
            }
        }
        StepColumn {
            anchors { right: parent.right; bottom: parent.bottom }
            width: less.width
            steps: root.moreSteps
            about: root.heading
            onStep: (minutes) => root.step(minutes)
        }
    }
}
