// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma Singleton
import QtQuick

/// Meanings of colour and size, for all screens. The root of the app sets the first block; nothing
/// else is set from outside.
///
/// Every size is taken from a window of 10 inches diagonal, whatever its pixels: at 1280x800 one
/// unit is one pixel and 20 mm are 119 px.
QtObject {
    property real windowWidth: 1280
    property real windowHeight: 800
    /// 1.0 to 2.0, chosen by the person.
    property real textScale: 1.0
    /// "evening" (dark, warm, low in blue), "night" (black, dim red-brown) or "morning" (light).
    property string tone: "evening"
    /// false: nothing moves, and what blinks is shown in a still form.
    property bool motion: true

    readonly property bool landscape: windowWidth >= windowHeight
    /// Text so large that columns of words stand below each other.
    readonly property bool roomy: textScale > 1.3
    readonly property real diagonal: Math.sqrt(windowWidth * windowWidth + windowHeight * windowHeight)
    readonly property real unit: diagonal / 1509.43

    function px(n: real): real { return Math.round(n * unit); }
    function mm(n: real): real { return Math.ceil(n * diagonal / 254); }

    // Text. Body sizes follow the scale in full; large titles grow a little less, and never fall
    // below the body.
    readonly property string family: "Inter"
    readonly property real small: Math.max(1, Math.round(24 * unit * textScale))
    readonly property real body: Math.max(1, Math.round(27 * unit * textScale))
    readonly property real label: Math.max(1, Math.round(32 * unit * textScale))
    readonly property real title: Math.max(1, Math.round(44 * unit * (1 + 0.7 * (textScale - 1))))
    readonly property real huge: Math.max(1, Math.round(84 * unit * (1 + 0.5 * (textScale - 1))))

    // Targets and distances.
    readonly property real mainTarget: mm(20)
    readonly property real target: mm(12)
    readonly property real margin: px(40)
    readonly property real gap: px(20)
    readonly property real tight: px(10)
    readonly property real radius: px(22)
    readonly property real stroke: Math.max(2, px(night ? 2 : 3))

    // Colours by role. Text on ground, pane and card: 7:1 at least; the night page 4.5:1.
    readonly property bool evening: tone === "evening"
    readonly property bool night: tone === "night"
    function pick(e: color, n: color, m: color): color { return evening ? e : night ? n : m; }

    readonly property color ground: pick("#14100c", "#000000", "#f8f2e7")
    readonly property color pane: pick("#1e1713", "#000000", "#efe7d7")
    readonly property color card: pick("#271e17", "#000000", "#fffbf3")
    readonly property color text: pick("#f7ebd9", "#b85b2b", "#231b14")
    readonly property color softText: pick("#d0bfa7", "#b85b2b", "#4e4033")
    /// Outlines of controls, 3:1 against their ground.
    readonly property color edge: pick("#9a8870", "#8e4420", "#7d6d5b")
    readonly property color accent: pick("#f2b35e", "#b85b2b", "#1f5548")
    readonly property color accentText: pick("#1d1207", "#000000", "#fdf8ee")
    readonly property color focus: pick("#fff4dc", "#d87038", "#101010")
    readonly property color caution: pick("#3b2413", "#000000", "#fbe3c6")
    readonly property color cautionEdge: pick("#e79a55", "#8e4420", "#9c4a12")
    readonly property color done: pick("#b3bd76", "#b85b2b", "#2d6a3c")
    // The picture of the night; told apart in greyscale too.
    readonly property color laneOn: pick("#e0a24e", "#8e4420", "#0b6a8f")
    readonly property color laneSleep: pick("#a58a68", "#8e4420", "#6d5a8a")
    readonly property color laneOff: pick("#3a2f26", "#1a0a03", "#c3b299")
}
