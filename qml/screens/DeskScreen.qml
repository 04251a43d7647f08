// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The front desk: a menu, and one page made of blocks. Everything works by keyboard: Tab from place
/// to place, the keys beside the menu, Enter for the main action.
///
/// title, message (what came of the last action; `fault`: it failed), sections and section (the menu),
/// blocks (see DeskBlock), focusBlock (has the keyboard first), mainAction, busy, busyText
/// shown: counts the pages that came up
/// picture, pictureText: beside the blocks, or below them where there is no room
/// act(id), edited(field, text), opened(table, row)
FocusScope {
    id: root
    required property string title
    property string message: ""
    property bool fault: false
    property var sections: []
    property string section: ""
    property var blocks: []
    property string focusBlock: ""
    property string mainAction: ""
    property bool busy: false
    property string busyText: ""
    property string picture: ""
    property string pictureText: ""
    property int shown: 0
    readonly property string mainLabel: ""
    signal act(string id)
    signal edited(string field, string text)
    signal opened(string table, string row)

    readonly property bool upright: !Theme.landscape || Theme.roomy

    onShownChanged: takeFocus.restart()
    Component.onCompleted: takeFocus.restart()
    // After the blocks have been made: not while they are.
    Timer {
        id: takeFocus
        interval: 0
        onTriggered: {
            let first = null;
            for (let i = 0; i < list.count; ++i) {
                const place = (list.itemAt(i) as DeskBlock)?.entry ?? null;
                if (place && !first)
                    first = place;
                if (place && (root.blocks[i]?.id ?? "") === root.focusBlock && root.focusBlock !== "")
                    first = place;
            }
            if (first)
                (first as Item).forceActiveFocus(Qt.TabFocusReason);
        }
    }

    Rectangle { anchors.fill: parent; color: Theme.ground }
    Rectangle {
        id: rail
        visible: root.sections.length > 0
        anchors { left: parent.left; top: parent.top }
        width: !visible ? 0 : root.upright ? parent.width : Theme.px(300)
        height: !visible ? 0 : root.upright ? menu.height + Theme.px(28) : parent.height
        color: Theme.pane
        Flow {
            id: menu
            anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.px(14) }
            spacing: Theme.px(8)
            Repeater {
                model: root.sections.length
                DeskMenuItem {
                    required property int index
                    readonly property var item: root.sections[index] ?? ({})
                    width: root.upright ? Math.min(implicitWidth, menu.width) : menu.width
                    text: item.label ?? ""
                    key: item.key ?? ""
                    chosen: item.id === "go." + root.section
                    enabled: !root.busy
                    onClicked: root.act(item.id)
                }
            }
        }
    }
    Repeater {
        model: root.sections.length
        Item {
            id: one
            required property int index
            readonly property var item: root.sections[index] ?? ({})
            Shortcut {
                sequence: one.item.key ?? ""
                enabled: !root.busy && (one.item.key ?? "") !== ""
                onActivated: root.act(one.item.id)
            }
        }
    }
    Item {
        id: side
        anchors { right: parent.right; bottom: parent.bottom }
        anchors.left: root.upright ? parent.left : rail.right
        anchors.top: root.upright ? rail.bottom : parent.top
        anchors { leftMargin: Theme.px(32); rightMargin: Theme.px(32); topMargin: Theme.px(18); bottomMargin: Theme.px(18) }
        Words {
            id: head
            anchors { left: parent.left; right: parent.right; top: parent.top }
            text: root.title
            heading: true
            font.pixelSize: Math.round(Theme.label * 1.05)
            font.weight: Font.Bold
        }
        Rectangle {
            id: said
            anchors { left: parent.left; right: parent.right; top: head.bottom; topMargin: Theme.px(8) }
            visible: root.busy || root.message !== ""
            height: visible ? saidWords.height + Theme.px(16) : 0
            radius: Theme.px(10)
            color: root.fault && !root.busy ? Theme.caution : Theme.pane
            border.width: Theme.stroke
            border.color: root.fault && !root.busy ? Theme.cautionEdge : Theme.done
            SmallWords {
                id: saidWords
                objectName: "message"
                anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
                anchors { leftMargin: Theme.px(16); rightMargin: Theme.px(16) }
                color: Theme.text
                text: root.busy ? root.busyText : root.message
                Accessible.role: Accessible.AlertMessage
            }
        }
        ScrollBody {
            id: body
            anchors { left: parent.left; top: said.bottom; bottom: parent.bottom }
            anchors.right: beside.visible ? beside.left : parent.right
            anchors.rightMargin: beside.visible ? Theme.px(24) : 0
            anchors.topMargin: Theme.px(10)
            spacing: Theme.px(14)
            Repeater {
                id: list
                model: root.blocks.length
                DeskBlock {
                    required property int index
                    width: parent.width
                    block: root.blocks[index] ?? ({})
                    busy: root.busy
                    onAct: (id) => root.act(id)
                    onEdited: (field, text) => root.edited(field, text)
                    onOpened: (table, row) => root.opened(table, row)
                    onEntered: if (root.mainAction !== "") root.act(root.mainAction)
                }
            }
            SheetPicture {
                visible: root.picture !== "" && root.upright
                width: parent.width
                height: visible ? Math.round(width * 1.42) : 0
                source: root.picture
                description: root.pictureText
            }
        }
        SheetPicture {
            id: beside
            visible: root.picture !== "" && !root.upright
            anchors { right: parent.right; top: said.bottom; bottom: parent.bottom; topMargin: Theme.px(10) }
            width: visible ? Math.round(height / 1.42) : 0
            source: root.picture
            description: root.pictureText
        }
    }
}
