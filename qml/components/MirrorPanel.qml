// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The person as in a mirror beside the drawing of the step. Nothing of it is kept, and the page says
/// so. Without a camera the drawing stands alone.
///
/// picture   the item that paints the camera's frames; empty: no camera
/// figure, description   the drawing
/// words     what is promised, or why there is no picture
FocusScope {
    id: root
    property string title: ""
    property string figure: ""
    property string description: ""
    property string words: ""
    property bool hasCamera: false
    property Component picture: null
    signal closed()

    readonly property bool side: Theme.landscape
    anchors.fill: parent
    focus: visible
    Keys.onEscapePressed: root.closed()
    onVisibleChanged: if (visible) close.forceActiveFocus()

    Rectangle { anchors.fill: parent; color: Theme.ground }
    MouseArea { anchors.fill: parent }
    Item {
        id: area
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: promise.top; margins: Theme.gap }
        readonly property real share: root.hasCamera ? 0.6 : 0
        Rectangle {
            id: glass
            visible: root.hasCamera
            anchors { left: parent.left; top: parent.top }
            width: root.side ? Math.round(parent.width * area.share) : parent.width
            height: root.side ? parent.height : Math.round(parent.height * area.share)
            radius: Theme.radius
            color: Theme.card
            Loader {
                anchors { fill: parent; margins: Theme.px(8) }
                active: root.visible && root.hasCamera
                sourceComponent: root.picture
            }
        }
        FigureImage {
            anchors { right: parent.right; bottom: parent.bottom }
            width: root.side ? parent.width - (glass.visible ? glass.width + Theme.gap : 0) : parent.width
            height: root.side ? parent.height : parent.height - (glass.visible ? glass.height + Theme.gap : 0)
            figure: root.visible ? root.figure : ""
            description: root.description
        }
    }
    Words {
        id: promise
        anchors { left: parent.left; right: parent.right; bottom: close.top }
        anchors { leftMargin: Theme.margin; rightMargin: Theme.margin; bottomMargin: Theme.px(16) }
        horizontalAlignment: Text.AlignHCenter
        text: root.words
    }
    Action {
        id: close
        objectName: "close"
        kind: "main"
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        anchors { leftMargin: Theme.margin; rightMargin: Theme.margin; bottomMargin: Theme.px(28) }
        text: qsTrId("panel.close")
        onClicked: root.closed()
    }
}
