// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A value between a button for less and a button for more; both say their step.
Item {
    id: root
    property string text: ""
    property string lessText: ""
    property string moreText: ""
    signal less()
    signal more()
    readonly property bool row: !Theme.roomy
    implicitHeight: row ? Math.max(words.height, lessAction.height)
                        : words.height + Theme.tight + lessAction.height
    height: implicitHeight
    Action {
        id: lessAction
        objectName: "less"
        anchors { left: parent.left; bottom: parent.bottom }
        width: root.row ? implicitWidth : (parent.width - Theme.tight) / 2
        text: root.lessText
        onClicked: root.less()
    }
    Words {
        id: words
        anchors { left: root.row ? lessAction.right : parent.left; right: root.row ? moreAction.left : parent.right }
        anchors { leftMargin: Theme.tight; rightMargin: Theme.tight }
        y: root.row ? (root.height - height) / 2 : 0
        horizontalAlignment: Text.AlignHCenter
        text: root.text
    }
    Action {
        id: moreAction
        objectName: "more"
        anchors { right: parent.right; bottom: parent.bottom }
        width: root.row ? implicitWidth : (parent.width - Theme.tight) / 2
        text: root.moreText
        onClicked: root.more()
    }
}
