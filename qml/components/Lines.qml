// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Short lines below each other, each with a dot at its start.
Column {
    id: root
    property var lines: []
    property bool large: false
    spacing: Theme.px(12)
    Repeater {
        model: root.lines.length
        Item {
            id: line
            required property int index
            width: root.width
            height: words.height
            Rectangle {
                anchors.left: parent.left
                y: Math.round(words.font.pixelSize * 0.45)
                width: Math.round(words.font.pixelSize * 0.42)
                height: width
                radius: width / 2
                color: Theme.accent
            }
            Words {
                id: words
                anchors { left: parent.left; right: parent.right; leftMargin: Math.round(words.font.pixelSize * 1.15) }
                text: root.lines[line.index] ?? ""
                font.pixelSize: root.large ? Theme.label : Theme.body
            }
        }
    }
}
