// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A calm breath to follow: the disc widens breathing in and narrows breathing out. `phase` is 0
/// (breathed out) to 1 (breathed in); the voice or a tone says the same. Moves only when told.
Rectangle {
    id: root
    property real phase: 0
    property string text: ""
    implicitHeight: Math.max(ring.height, words.implicitHeight) + Theme.px(8)
    height: implicitHeight
    radius: Theme.radius
    color: Theme.card
    Item {
        id: ring
        anchors { left: parent.left; leftMargin: Theme.px(12); verticalCenter: parent.verticalCenter }
        width: Theme.px(52)
        height: width
        Accessible.ignored: true
        Rectangle {
            anchors.fill: parent
            radius: width / 2
            color: "transparent"
            border.width: Theme.stroke
            border.color: Theme.edge
        }
        Rectangle {
            anchors.centerIn: parent
            width: ring.width * (0.34 + 0.52 * root.phase)
            height: width
            radius: width / 2
            color: Theme.accent
        }
    }
    SmallWords {
        id: words
        anchors { left: ring.right; right: parent.right; verticalCenter: parent.verticalCenter }
        anchors { leftMargin: Theme.px(16); rightMargin: Theme.px(12) }
        text: root.text
        Accessible.role: Accessible.StaticText
    }
}
