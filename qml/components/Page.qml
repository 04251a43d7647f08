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
    /// Reading aloud: { offered, canSpeak, speaking, readToMe, reason, ... }
    property var voice: ({})
    readonly property bool speakOffered: voice.offered ?? false
    /// Why there is no sound lies over the page.
    property bool silenceShown: false
    signal sayAgain()
    signal stopReading()

    /// Height the body has without scrolling.
    readonly property real room: body.height - 2 * body.edge
    readonly property bool upright: !Theme.landscape
    /// Large text on a wide page: the actions stand beside the body, so that it keeps its height.
    readonly property bool sideFoot: Theme.roomy && !upright && paneShare === 0 && actions
    readonly property bool actions: mainLabel.length > 0 || secondLabel.length > 0

    Rectangle { anchors.fill: parent; color: Theme.ground }

    Item {
        id: base
        anchors.fill: parent
        visible: !root.covered && !root.silenceShown

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
            anchors.bottomMargin: Theme.px(26)

            ScrollBody {
                id: body
                anchors { left: parent.left; top: parent.top }
                width: parent.width - (root.sideFoot ? foot.width + Theme.px(32) : 0)
                height: parent.height - (root.actions && !root.sideFoot ? foot.height + Theme.px(14) : 0)
                centred: root.centred
                spacing: root.spacing
            }
            Item {
                id: foot
                anchors { right: parent.right; bottom: parent.bottom }
                readonly property bool both: mainAction.visible && secondAction.visible
                readonly property bool split: both && !root.sideFoot
                readonly property real tallest: Math.max(mainAction.visible ? mainAction.implicitHeight : 0,
                                                         secondAction.visible ? secondAction.implicitHeight : 0)
                width: root.sideFoot ? Math.round(parent.width * 0.32) : parent.width
                height: !root.actions ? 0 : root.sideFoot && both
                        ? mainAction.height + Theme.gap + secondAction.height : tallest
                Action {
                    id: mainAction
                    objectName: "main"
                    anchors { left: parent.left; bottom: parent.bottom }
                    kind: root.mainKind
                    visible: root.mainLabel.length > 0
                    enabled: root.mainEnabled
                    width: foot.split ? Math.round((parent.width - Theme.gap) * root.mainShare) : parent.width
                    height: root.sideFoot ? Math.max(implicitHeight, Theme.mm(30)) : foot.tallest
                    text: root.mainLabel
                    onClicked: root.main()
                }
                Action {
                    id: secondAction
                    objectName: "second"
                    anchors { right: parent.right; top: parent.top }
                    kind: "second"
                    visible: root.secondLabel.length > 0
                    width: foot.split ? parent.width - Theme.gap - mainAction.width : parent.width
                    height: root.sideFoot ? implicitHeight : foot.tallest
                    text: root.secondLabel
                    onClicked: root.second()
                }
            }
        }
    }
    Item { id: overItem; anchors.fill: parent }
    Panel {
        visible: root.silenceShown
        title: qsTrId("step.no_sound")
        body: root.voice.reason ?? ""
        onClosed: root.silenceShown = false
    }
}
