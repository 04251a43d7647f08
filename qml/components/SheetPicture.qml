// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A page of paper as it will be printed.
Item {
    id: root
    property string source: ""
    property string description: ""
    Rectangle {
        anchors.centerIn: parent
        width: image.paintedWidth + 2
        height: image.paintedHeight + 2
        visible: image.status === Image.Ready
        color: "#ffffff"
        border.color: Theme.edge
        border.width: 1
    }
    Image {
        id: image
        anchors { fill: parent; margins: 1 }
        source: root.visible ? root.source : ""
        fillMode: Image.PreserveAspectFit
        cache: false
        mipmap: true
        Accessible.role: Accessible.Graphic
        Accessible.name: root.description
    }
}
