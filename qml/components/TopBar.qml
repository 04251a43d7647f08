// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The row over a page: back at the start, small actions at the end, wrapping when text is large.
Item {
    id: root
    property bool backVisible: true
    default property alias actions: ends.data
    signal back()
    readonly property bool fits: backAction.implicitWidth + ends.natural + Theme.gap <= width
    implicitHeight: fits ? Math.max(backAction.visible ? backAction.height : 0, ends.height)
                         : (backAction.visible ? backAction.height + Theme.tight : 0) + ends.height
    height: implicitHeight
    BackAction {
        id: backAction
        objectName: "back"
        visible: root.backVisible
        anchors.left: parent.left
        anchors.top: parent.top
        onClicked: root.back()
    }
    Flow {
        id: ends
        readonly property real natural: {
            let sum = 0;
            for (let i = 0; i < children.length; ++i)
                if (children[i].visible)
                    sum += children[i].implicitWidth + spacing;
            return Math.max(0, sum - spacing);
        }
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        width: root.fits ? natural : parent.width
        spacing: Theme.tight
        layoutDirection: Qt.LeftToRight
    }
}
