// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The drawn person who gathers the parts: the progress of the evening. Below, the time.
Item {
    id: root
    property string figure: ""
    property string description: ""
    property string paceText: ""
    // The person stands within the middle 65 % of the square drawing.
    readonly property real side: Math.max(0, Math.min(place.height, place.width / 0.65))
    Item {
        id: place
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: pace.top }
        anchors.bottomMargin: Theme.tight
        clip: true
        FigureImage {
            width: root.side
            height: root.side
            anchors.centerIn: parent
            figure: root.figure
            description: root.description
        }
    }
    Words {
        id: pace
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        horizontalAlignment: Text.AlignHCenter
        text: root.paceText
        font.pixelSize: Theme.small
    }
}
