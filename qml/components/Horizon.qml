// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick

/// The marsh at the edge of the day, drawn with plain shapes: "dusk" (the sun goes down), "moon"
/// (night has come) or "dawn" (the sun is up). A mood, not a message: screen readers pass over it.
Item {
    id: root
    property string hour: "dusk"
    readonly property bool dawn: hour === "dawn"
    readonly property bool moon: hour === "moon"
    readonly property real line: Math.round(height * 0.64)
    readonly property real disc: Math.round(Math.min(width * 0.52, height * 0.4))
    clip: true
    Accessible.ignored: true

    Rectangle {
        anchors { left: parent.left; right: parent.right; top: parent.top }
        height: root.line
        gradient: Gradient {
            GradientStop { position: 0; color: root.dawn ? "#f3e7d2" : "#1a130e" }
            GradientStop { position: 0.55; color: root.dawn ? "#f8dfb4" : root.moon ? "#1c150f" : "#3a2314" }
            GradientStop { position: 1; color: root.dawn ? "#f6c77f" : root.moon ? "#2a1c12" : "#8a4f22" }
        }
    }
    Rectangle {
        width: root.disc
        height: width
        radius: width / 2
        anchors.horizontalCenter: parent.horizontalCenter
        y: root.moon ? root.line * 0.18 : root.line - height * (root.dawn ? 1.15 : 0.56)
        color: root.dawn ? "#fff3d8" : root.moon ? "#d9bf95" : "#f2b35e"
        // A second disc in the colour of the sky leaves a crescent.
        Rectangle {
            visible: root.moon
            width: parent.width * 0.88
            height: width
            radius: width / 2
            x: parent.width * 0.26
            y: parent.height * -0.04
            color: "#1b140e"
        }
    }
    Rectangle {
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        height: root.height - root.line
        color: root.dawn ? "#a9b79b" : root.moon ? "#120d09" : "#1b120b"
    }
    // The light on the water, in strokes that grow shorter towards us.
    Repeater {
        model: 5
        Rectangle {
            required property int index
            anchors.horizontalCenter: parent.horizontalCenter
            anchors.horizontalCenterOffset: (index % 2 === 0 ? 1 : -1) * root.disc * 0.05
            y: root.line + root.height * (0.035 + 0.058 * index)
            width: root.disc * (0.92 - 0.15 * index)
            height: Math.max(2, Math.round(root.height * 0.009))
            radius: height / 2
            color: root.dawn ? "#f7e3bb" : root.moon ? "#4a3a28" : "#a8682f"
        }
    }
}
