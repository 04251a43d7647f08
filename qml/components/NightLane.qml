// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// One lane of the picture of the night. "on" and "asleep" are full bars, "off" and "awake" are
/// low: told apart by height as well as by colour.
Item {
    id: root
    property var spans: []
    property real from: 0
    property real length: 1
    Accessible.ignored: true
    Rectangle {
        anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
        height: Math.max(2, Theme.px(6))
        radius: height / 2
        color: Theme.laneOff
    }
    Repeater {
        model: root.spans.length
        Rectangle {
            id: span
            required property int index
            readonly property var item: root.spans[index] ?? ({})
            readonly property string kind: item.kind ?? ""
            readonly property string soft: item.soft ?? ""
            readonly property color full: kind === "asleep" ? Theme.laneSleep : Theme.laneOn
            readonly property color none: Qt.rgba(full.r, full.g, full.b, 0)
            // Left and right as seen: the axis turns round with the reading direction.
            readonly property bool fadesRight: (soft === "out") !== LayoutMirroring.enabled
            visible: kind === "on" || kind === "asleep"
            anchors.left: parent?.left
            anchors.leftMargin: Math.round(root.width * ((item.from ?? 0) - root.from) / root.length)
            width: Math.max(1, Math.round(root.width * ((item.to ?? 0) - root.from) / root.length)
                            - anchors.leftMargin)
            height: root.height
            radius: soft === "" ? Math.min(Theme.px(4), width / 2) : 0
            // Under the fade too: a rectangle whose colour is clear is not painted at all.
            color: full
            gradient: soft === "" ? null : fade
            Gradient {
                id: fade
                orientation: Gradient.Horizontal
                GradientStop { position: 0; color: span.fadesRight ? span.full : span.none }
                GradientStop { position: 1; color: span.fadesRight ? span.none : span.full }
            }
        }
    }
}
