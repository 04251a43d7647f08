// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Chosen or not, done or not: an empty ring or box, or one with a tick. A shape, not a colour.
Rectangle {
    id: root
    property bool on: false
    property bool square: false
    /// Lies on the accent colour.
    property bool overAccent: false
    width: Math.round(Theme.small * 1.5)
    height: width
    radius: square ? Theme.px(8) : width / 2
    color: on && !overAccent ? Theme.done : "transparent"
    border.width: on && !overAccent ? 0 : Theme.stroke
    border.color: overAccent ? Theme.accentText : Theme.edge
    Text {
        anchors.centerIn: parent
        visible: root.on
        text: "✓"
        color: root.overAccent ? Theme.accentText : Theme.ground
        font.family: Theme.family
        font.pixelSize: Math.round(Theme.small * 1.05)
        font.weight: Font.Black
        Accessible.ignored: true
    }
}
