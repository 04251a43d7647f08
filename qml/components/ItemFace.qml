// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Picture, name and count, and the mark of a thing to tick off.
Item {
    id: root
    property string text: ""
    property string count: ""
    property string figure: ""
    property bool done: false
    property bool marked: true
    implicitHeight: Math.max(picture.visible ? Theme.px(96) : 0, words.implicitHeight)
    FigureImage {
        id: picture
        visible: root.figure !== ""
        anchors { left: parent.left; verticalCenter: parent.verticalCenter }
        width: visible ? Math.max(Theme.px(96), Math.min(Theme.px(132), root.height)) : 0
        height: width
        figure: root.figure
        Accessible.ignored: true
    }
    Column {
        id: words
        anchors { left: picture.right; leftMargin: Theme.px(14); right: mark.left; rightMargin: Theme.px(10) }
        anchors.verticalCenter: parent.verticalCenter
        Words { width: parent.width; text: root.text; leading: 1.0; font.weight: Font.Medium; Accessible.ignored: true }
        SmallWords { width: parent.width; text: root.count; Accessible.ignored: true }
    }
    Mark {
        id: mark
        visible: root.marked
        anchors { right: parent.right; verticalCenter: parent.verticalCenter }
        on: root.done
    }
}
