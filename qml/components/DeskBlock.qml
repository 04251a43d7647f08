// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
import QtQuick
import Evenfall.Ui

/// One block of a page of the front desk, by its kind: text, heading, caution, field, secret, choice,
/// check, table, actions. `entry` is what can have the keyboard; null where nothing can.
Item {
    id: root
    required property var block
    property bool busy: false
    readonly property Item entry: (loader.item as Item)?.entry ?? null
    signal act(string id)
    signal edited(string field, string text)
    signal opened(string table, string row)
    signal entered()
    height: loader.item ? (loader.item as Item).height : 0

    Loader {
        id: loader
        width: parent.width
        sourceComponent: {
            switch (root.block.kind ?? "") {
            case "heading": return heading;
            case "caution": return caution;
            case "field":
            case "secret": return field;
            case "choice": return choice;
            case "check": return check;
            case "table": return table;
            case "actions": return actions;
            }
            return words;
        }
    }
    Component {
        id: words
        Item {
            readonly property Item entry: null
            width: root.width
            height: text.height
            SmallWords { id: text; width: parent.width; color: Theme.text; text: root.block.text ?? "" }
        }
    }
    Component {
        id: heading
        Item {
            readonly property Item entry: null
            width: root.width
            height: text.height + Theme.px(8)
            Words {
                id: text
                anchors.bottom: parent.bottom
                width: parent.width
                heading: true
                font.weight: Font.DemiBold
                text: root.block.text ?? ""
            }
        }
    }
    Component {
        id: caution
        Item {
            readonly property Item entry: null
            width: root.width
            height: box.height
            CautionBox { id: box; width: parent.width; text: root.block.text ?? "" }
        }
    }
    Component {
        id: field
        DeskField {
            width: root.width
            secret: root.block.kind === "secret"
            label: root.block.label ?? ""
            value: root.block.text ?? ""
            hint: root.block.hint ?? ""
            error: root.block.error ?? ""
            objectName: "field-" + (root.block.id ?? "")
            onEdited: (text) => root.edited(root.block.id, text)
            onEntered: root.entered()
        }
    }
    Component {
        id: choice
        DeskChoice {
            width: root.width
            label: root.block.label ?? ""
            value: root.block.text ?? ""
            error: root.block.error ?? ""
            options: root.block.options ?? []
            onChosen: (id) => root.edited(root.block.id, id)
        }
    }
    Component {
        id: check
        Item {
            readonly property Item entry: tile
            width: root.width
            height: tile.height + (error.visible ? error.height : 0)
            ChoiceTile {
                id: tile
                least: Theme.target
                objectName: "check-" + (root.block.id ?? "")
                width: Math.min(implicitWidth, parent.width)
                square: true
                text: root.block.label ?? ""
                chosen: root.block.text === "yes"
                onClicked: root.edited(root.block.id, chosen ? "no" : "yes")
            }
            SmallWords {
                id: error
                anchors.top: tile.bottom
                width: parent.width
                text: (root.block.error ?? "") === "" ? "" : "⚠ " + root.block.error
                color: Theme.text
                font.weight: Font.DemiBold
            }
        }
    }
    Component {
        id: table
        DeskTable {
            width: root.width
            columns: root.block.columns ?? []
            rows: root.block.rows ?? []
            whenEmpty: root.block.text ?? ""
            onOpened: (row) => root.opened(root.block.id, row)
        }
    }
    Component {
        id: actions
        Flow {
            readonly property Item entry: buttons.count > 0 ? buttons.itemAt(0) : null
            width: root.width
            spacing: Theme.px(12)
            Repeater {
                id: buttons
                model: (root.block.options ?? []).length
                Action {
                    required property int index
                    readonly property var item: root.block.options[index] ?? ({})
                    objectName: "act-" + (item.id ?? "")
                    kind: item.main ? "main" : "small"
                    implicitHeight: Math.max(Theme.target, contentItem.implicitHeight + topPadding + bottomPadding)
                    textSize: Theme.small
                    width: Math.min(implicitWidth, parent.width)
                    text: item.label ?? ""
                    enabled: !root.busy
                    onClicked: root.act(item.id)
                }
            }
        }
    }
}
