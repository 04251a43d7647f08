// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A drawing over the words of its button, and between them, where there is room, what not to do.
Item {
    id: root
    property string text: ""
    property string figure: ""
    property string description: ""
    property real breath: 0
    /// List of { text, figure }; the first is shown where the drawing keeps most of its size.
    property var mistakes: []
    readonly property real mistakeHeight: mistakes.length > 0 ? notThis.height + Theme.px(10) : 0
    readonly property bool mistakeShown: mistakes.length > 0 && words.y - mistakeHeight >= 0.78 * width
    FigureImage {
        id: drawing
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: root.mistakeShown ? notThis.top : words.top }
        anchors.bottomMargin: Theme.px(6)
        figure: root.figure
        description: root.description
        // A calm breath widens the chest by a few hundredths; more would look like a balloon.
        transform: Scale { origin.x: drawing.width / 2; xScale: 1 + 0.035 * root.breath }
    }
    NotThis {
        id: notThis
        visible: root.mistakeShown
        anchors { left: parent.left; right: parent.right; bottom: words.top; bottomMargin: Theme.px(4) }
        items: root.mistakes.slice(0, 1)
    }
    ScriptText {
        id: words
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        text: root.text
        color: Theme.softText
        horizontalAlignment: Text.AlignHCenter
        font.pixelSize: Theme.small
        font.weight: Font.Medium
        Accessible.ignored: true
    }
}
