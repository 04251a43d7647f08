// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The timing of a light as bars on a line: long bars are long flashes, gaps are dark.
Item {
    id: root
    property var light: ({})
    readonly property int blinks: light.blinks ?? 0
    readonly property real round: blinks * (light.onMs ?? 0) + Math.max(0, blinks - 1) * (light.offMs ?? 0)
                                  + (light.pauseMs ?? 0)
    /// Milliseconds shown: 4 seconds.
    readonly property real shown: 4000
    readonly property int rounds: blinks < 1 || round <= 0 ? 0 : Math.min(8, Math.ceil(shown / round))
    height: Theme.px(12)
    clip: true
    Accessible.ignored: true
    Rectangle {
        anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
        height: Math.max(1, Theme.px(2))
        color: Theme.edge
    }
    Rectangle {
        visible: root.light.steady === true
        anchors.fill: parent
        radius: height / 2
        color: Theme.softText
    }
    Repeater {
        model: root.light.steady === true ? 0 : root.rounds * root.blinks
        Rectangle {
            required property int index
            readonly property real at: Math.floor(index / root.blinks) * root.round
                                       + (index % root.blinks) * ((root.light.onMs ?? 0) + (root.light.offMs ?? 0))
            anchors.left: parent?.left
            anchors.leftMargin: root.width * at / root.shown
            width: Math.max(Theme.px(5), root.width * (root.light.onMs ?? 0) / root.shown)
            height: root.height
            radius: Theme.px(3)
            color: Theme.softText
        }
    }
}
