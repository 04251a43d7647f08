// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The night as a picture: one lane per sensor, one for sleep, over an axis of hours. Where a time
/// is not certain the lane fades from one state to the other.
///
/// picture: { from, to: seconds;
///            lanes: [{ name, spans: [{ from, to, kind, soft }] }];
///            ticks: [{ at, label, mark }] }
/// kind: "on", "off", "asleep", "awake"; soft: "" (certain), "out" (less and less so towards the
/// end), "in" (more and more so). mark: a tick that says more than an hour (a clock change).
Item {
    id: root
    property var picture: ({})
    property string description: ""
    readonly property var lanes: picture.lanes ?? []
    readonly property var ticks: picture.ticks ?? []
    readonly property real from: picture.from ?? 0
    readonly property real length: Math.max(1, (picture.to ?? 1) - from)
    // Names stand before their lanes where the longest one has room there, else above them.
    FontMetrics {
        id: metrics
        font.family: Theme.family
        font.pixelSize: Theme.small
    }
    // A call alone would not be made again when the font comes after the lanes.
    readonly property real longest: metrics.font.pixelSize !== Theme.small ? 0
        : lanes.reduce((most, lane) => Math.max(most, metrics.advanceWidth(lane.name ?? "")), 0) * 1.04
    readonly property bool above: Theme.roomy || !Theme.landscape || longest > width * 0.27
    readonly property real nameWide: above ? 0 : Math.max(Math.round(width * 0.12), Math.ceil(longest) + Theme.px(14))
    readonly property real bar: Theme.px(26)
    readonly property real pitch: bar + Theme.px(8) + (above ? Math.round(Theme.small * 1.35) : 0)
    implicitHeight: lanes.length * pitch + Math.round(Theme.small * 1.7)
    height: implicitHeight
    Accessible.role: Accessible.Graphic
    Accessible.name: description

    Repeater {
        model: root.lanes.length
        Item {
            id: lane
            required property int index
            readonly property var item: root.lanes[index] ?? ({})
            width: root.width
            height: root.pitch
            y: index * root.pitch
            SmallWords {
                anchors.left: parent.left
                y: root.above ? 0 : (root.bar - height) / 2
                width: root.above ? parent.width : root.nameWide
                text: lane.item.name ?? ""
                leading: 1.0
                color: Theme.text
            }
            NightLane {
                anchors { left: parent.left; right: parent.right; leftMargin: root.nameWide }
                y: root.above ? Math.round(Theme.small * 1.35) : 0
                height: root.bar
                spans: lane.item.spans ?? []
                from: root.from
                length: root.length
            }
        }
    }
    Item {
        id: axis
        anchors { left: parent.left; right: parent.right; leftMargin: root.nameWide }
        y: root.lanes.length * root.pitch
        Repeater {
            model: root.ticks.length
            Item {
                id: tick
                required property int index
                readonly property var item: root.ticks[index] ?? ({})
                readonly property real share: ((item.at ?? 0) - root.from) / root.length
                anchors.left: parent?.left
                anchors.leftMargin: Math.max(0, Math.min(axis.width - label.width,
                                                         axis.width * share - label.width / 2))
                width: label.width
                Text {
                    id: label
                    text: (tick.item.mark ? "◆ " : "") + (tick.item.label ?? "")
                    color: tick.item.mark ? Theme.text : Theme.softText
                    font.family: Theme.family
                    font.pixelSize: Theme.small
                    font.weight: tick.item.mark ? Font.DemiBold : Font.Normal
                    Accessible.ignored: true
                }
            }
        }
    }
}
