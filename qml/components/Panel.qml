// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A sheet over the whole page: a larger picture, or a few words more. Its button and Escape close
/// it; the page below is not reached meanwhile.
FocusScope {
    id: root
    property string title: ""
    property string body: ""
    property string figure: ""
    property string description: ""
    /// Beside the picture, upright beneath it: what not to do, list of { text, figure }.
    property var mistakes: []
    readonly property bool beside: Theme.landscape && notThis.visible
    signal closed()

    anchors.fill: parent
    focus: visible
    Keys.onEscapePressed: root.closed()
    onVisibleChanged: if (visible) close.forceActiveFocus()

    Rectangle { anchors.fill: parent; color: Theme.ground }
    MouseArea { anchors.fill: parent }
    ScrollBody {
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: close.top; margins: Theme.margin }
        visible: root.body.length > 0
        centred: true
        Title { width: parent.width; text: root.title }
        Words { width: parent.width; text: root.body }
    }
    FigureImage {
        anchors { left: parent.left; top: parent.top; margins: Theme.gap }
        anchors.right: root.beside ? notThis.left : parent.right
        anchors.bottom: notThis.visible && !root.beside ? notThis.top : close.top
        visible: root.body.length === 0
        figure: root.figure
        description: root.description
    }
    NotThis {
        id: notThis
        visible: root.body.length === 0 && root.mistakes.length > 0
        anchors { right: parent.right; margins: Theme.margin }
        y: root.beside ? (close.y - height) / 2 : close.y - Theme.margin - height
        width: root.beside ? parent.width * 0.4 : parent.width - 2 * Theme.margin
        across: !Theme.roomy && !root.beside
        spacing: root.beside ? Theme.gap : Theme.tight
        pictureSide: Theme.px(Theme.roomy ? 110 : root.beside ? 190 : 170)
        items: root.mistakes
    }
    Action {
        id: close
        objectName: "close"
        kind: "main"
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        anchors { leftMargin: Theme.margin; rightMargin: Theme.margin; bottomMargin: Theme.px(28) }
        //: Button under a larger picture or an explanation: closes it and shows the page again.
        //% "Close this and go on"
        text: qsTrId("panel.close")
        onClicked: root.closed()
    }
}
