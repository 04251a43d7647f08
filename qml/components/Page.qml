// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The frame of every page but the night's: an optional pane with a picture, a body that scrolls
/// when it must, and below it the actions, which never leave the screen.
FocusScope {
    id: root
    default property alias content: body.content
    /// Items in the pane; they fill it themselves.
    property alias pane: paneItem.data
    /// Items over the whole page (panels).
    property alias over: overItem.data
    /// The pane's share of the width (landscape) or of the height (upright). 0: no pane.
    property real paneShare: 0
    property real paneShareUpright: paneShare
    property bool centred: false
    property real spacing: Theme.gap
    /// A panel lies over the page.
    property bool covered: false

    property string mainLabel: ""
    property bool mainEnabled: true
    /// "second" where the main action must not be nudged towards.
    property string mainKind: "main"
    property string secondLabel: ""
    /// The main action's share of the row when there are two.
    property real mainShare: 0.62
    signal main()
    signal second()
    signal back()

    /// Height the body has without scrolling.
    readonly property real room: body.height - 2 * body.edge
    readonly property bool upright: !Theme.landscape
    readonly property bool actions: mainLabel.length > 0 || secondLabel.length > 0

    Rectangle { anchors.fill: parent; color: Theme.ground }

    Item {
        id: base
        anchors.fill: parent
        visible: !root.covered

        Rectangle {
            id: paneItem
            anchors.left: parent.left
            anchors.top: parent.top
            width: root.paneShare === 0 ? 0 : root.upright ? parent.width : Math.round(parent.width * root.paneShare)
            height: root.paneShare === 0 ? 0 : root.upright ? Math.round(parent.height * root.paneShareUpright)
                                                            : parent.height
            color: Theme.pane
        }
        Item {
            anchors.left: root.upright ? parent.left : paneItem.right
            anchors.top: root.upright ? paneItem.bottom : parent.top
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            anchors.leftMargin: Theme.margin
            anchors.rightMargin: Theme.margin
            anchors.topMargin: Theme.px(18)
            anchors.bottomMargin: Theme.px(28)

            ScrollBody {
                id: body
                anchors { left: parent.left; right: parent.right; top: parent.top; bottom: foot.top }
                anchors.bottomMargin: root.actions ? Theme.px(14) : 0
                centred: root.centred
                spacing: root.spacing
            }
            Row {
                id: foot
                anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
                height: root.actions ? Math.max(mainAction.visible ? mainAction.implicitHeight : 0,
                                                secondAction.visible ? secondAction.implicitHeight : 0) : 0
                spacing: Theme.gap
                Action {
                    id: mainAction
                    objectName: "main"
                    kind: root.mainKind
                    visible: root.mainLabel.length > 0
                    enabled: root.mainEnabled
                    width: secondAction.visible ? Math.round((parent.width - foot.spacing) * root.mainShare) : parent.width
                    height: parent.height
                    text: root.mainLabel
                    onClicked: root.main()
                }
                Action {
                    id: secondAction
                    objectName: "second"
                    kind: "second"
                    visible: root.secondLabel.length > 0
                    width: mainAction.visible ? parent.width - foot.spacing - mainAction.width : parent.width
                    height: parent.height
                    text: root.secondLabel
                    onClicked: root.second()
                }
            }
        }
    }
    Item { id: overItem; anchors.fill: parent }
}
