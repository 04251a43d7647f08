// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The picture of a step on its own ground, with a button that shows it larger.
Rectangle {
    id: root
    property string figure: ""
    property string description: ""
    property bool canEnlarge: true
    signal enlarge()
    color: Theme.card
    radius: Theme.radius

    FigureImage {
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: parent.bottom }
        anchors.margins: Theme.px(10)
        anchors.bottomMargin: root.canEnlarge ? button.height + Theme.px(16) : Theme.px(10)
        figure: root.figure
        description: root.description
    }
    Action {
        id: button
        objectName: "larger"
        visible: root.canEnlarge
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Theme.px(10) }
        //: Button under a picture: shows the same picture over the whole screen.
        //% "Larger picture"
        text: qsTrId("figure.larger")
        onClicked: root.enlarge()
    }
}
