// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The recorder's lamp as it blinks: `blinks` times on and off, then a pause. Slower than it was
/// told where that would be more than three flashes a second. Still (lit) when motion is off.
Item {
    id: root
    /// { blinks, onMs, offMs, pauseMs, steady, color }
    property var light: ({})
    readonly property bool steady: light.steady === true || (light.blinks ?? 0) < 1
    readonly property bool dark: light.steady !== true && (light.blinks ?? 0) < 1
    readonly property int onMs: Math.max(40, light.onMs ?? 200)
    // At most 3 flashes a second (WCAG 2.3.1): a flash and its gap last 334 ms or more.
    readonly property int offMs: Math.max(light.offMs ?? 200, 334 - onMs)
    readonly property int pauseMs: Math.max(offMs, light.pauseMs ?? 1000)
    readonly property bool running: Theme.motion && !steady && visible
    /// 2n: the n-th flash is lit; 2n + 1: the gap after it.
    property int beat: 0
    readonly property bool lit: !dark && (!running || beat % 2 === 0)
    width: Theme.px(76)
    height: width
    Accessible.ignored: true
    onRunningChanged: beat = 0
    Timer {
        running: root.running
        repeat: true
        interval: root.beat % 2 === 0 ? root.onMs : root.beat === 2 * root.light.blinks - 1 ? root.pauseMs : root.offMs
        onTriggered: root.beat = (root.beat + 1) % (2 * root.light.blinks)
    }
    Rectangle {
        anchors.fill: parent
        radius: width / 2
        color: Theme.ground
        border.width: Theme.stroke
        border.color: Theme.edge
    }
    Rectangle {
        anchors.fill: parent
        anchors.margins: Theme.px(12)
        radius: width / 2
        visible: root.lit
        color: root.light.color ?? Theme.accent
    }
}
