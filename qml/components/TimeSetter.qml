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
    readonly property int per: Theme.roomy ? 2 : 3
    inset: Theme.px(compact ? 14 : 22)
    spacing: Theme.px(compact ? 4 : 8)

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
    readonly property var steps: [
        { text: hourLess, minutes: -60 }, { text: hourMore, minutes: 60 },
        { text: tenLess, minutes: -10 }, { text: tenMore, minutes: 10 },
        { text: oneLess, minutes: -1 }, { text: oneMore, minutes: 1 }
    ]

    SmallWords { width: parent.width; text: root.heading; horizontalAlignment: Text.AlignHCenter }
    Words {
        width: parent.width
        text: root.timeText
        color: root.dimmed ? Theme.softText : Theme.text
        horizontalAlignment: Text.AlignHCenter
        font.pixelSize: root.compact ? Theme.title : Theme.huge
        font.weight: Font.Bold
        lineHeight: 1.0
    }
    Words {
        width: parent.width
        text: root.dayText
        horizontalAlignment: Text.AlignHCenter
        font.weight: Font.Medium
    }
    Grid {
        id: grid
        width: parent.width
        columns: root.compact && !Theme.roomy ? 6 : 2
        spacing: Theme.tight
        Repeater {
            model: root.steps.length
            Action {
                required property int index
                objectName: "step" + root.steps[index].minutes
                width: Math.floor((grid.width - (grid.columns - 1) * grid.spacing) / grid.columns)
                leftPadding: Theme.px(4)
                rightPadding: Theme.px(4)
                autoRepeat: true
                autoRepeatDelay: 600
                text: root.steps[index].text
                Accessible.description: root.heading
                onClicked: root.step(root.steps[index].minutes)
            }
        }
    }
}
