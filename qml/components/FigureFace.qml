// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A drawing over the words of its button.
Item {
    id: root
    property string text: ""
    property string figure: ""
    property string description: ""
    property real breath: 0
    FigureImage {
        id: drawing
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: words.top }
        anchors.bottomMargin: Theme.px(6)
        figure: root.figure
        description: root.description
        // A calm breath widens the chest by a few hundredths; more would look like a balloon.
        transform: Scale { origin.x: drawing.width / 2; xScale: 1 + 0.035 * root.breath }
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
