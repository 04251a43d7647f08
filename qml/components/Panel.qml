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
    /// Beneath the picture: what not to do, list of { text, figure }.
    property var mistakes: []
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
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.gap }
        anchors.bottom: notThis.visible ? notThis.top : close.top
        visible: root.body.length === 0
        figure: root.figure
        description: root.description
    }
    NotThis {
        id: notThis
        visible: root.body.length === 0 && root.mistakes.length > 0
        anchors { left: parent.left; right: parent.right; bottom: close.top; margins: Theme.margin }
        across: !Theme.roomy
        pictureSide: Theme.px(Theme.roomy ? 110 : 170)
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
