// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// One block of a page of the front desk, by its kind: text, heading, caution, field, secret, choice,
/// check, table, actions. `entry` is what can have the keyboard; null where nothing can.
Item {
    id: root
    required property var block
    property bool busy: false
    readonly property string kind: block.kind ?? ""
    readonly property bool typed: kind === "field" || kind === "secret"
    readonly property Item entry: findEntry(buttons.count)
    function findEntry(count: int): Item {
        switch (kind) {
        case "field":
        case "secret": return field.entry as Item;
        case "choice": return choice.entry as Item;
        case "check": return tile as Item;
        case "table": return table.entry as Item;
        case "actions": return count > 0 ? buttons.itemAt(0) as Item : null;
        }
        return null;
    }
    signal act(string id)
    signal edited(string field, string text)
    signal opened(string table, string row)
    signal entered()
    height: kind === "heading" ? heading.height + Theme.px(8) : kind === "caution" ? caution.height : typed ? field.height
            : kind === "choice" ? choice.height : kind === "check" ? check.height : kind === "table" ? table.height
            : kind === "actions" ? actions.height : words.height

    SmallWords {
        id: words
        visible: root.kind === "text"
        width: parent.width
        color: Theme.text
        text: visible ? root.block.text ?? "" : ""
    }
    Words {
        id: heading
        visible: root.kind === "heading"
        y: Theme.px(8)
        width: parent.width
        heading: true
        font.weight: Font.DemiBold
        text: visible ? root.block.text ?? "" : ""
    }
    CautionBox {
        id: caution
        width: parent.width
        text: root.kind === "caution" ? root.block.text ?? "" : ""
    }
    DeskField {
        id: field
        visible: root.typed
        width: parent.width
        objectName: "field-" + (root.block.id ?? "")
        secret: root.kind === "secret"
        label: root.block.label ?? ""
        value: root.typed ? root.block.text ?? "" : ""
        hint: root.block.hint ?? ""
        error: root.block.error ?? ""
        onEdited: (text) => root.edited(root.block.id, text)
        onEntered: root.entered()
    }
    DeskChoice {
        id: choice
        visible: root.kind === "choice"
        width: parent.width
        label: root.block.label ?? ""
        value: root.block.text ?? ""
        error: root.block.error ?? ""
        options: visible ? root.block.options ?? [] : []
        onChosen: (id) => root.edited(root.block.id, id)
    }
    Column {
        id: check
        visible: root.kind === "check"
        width: parent.width
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
            width: parent.width
            text: (root.block.error ?? "") === "" ? "" : "⚠ " + root.block.error
            color: Theme.text
            font.weight: Font.DemiBold
        }
    }
    DeskTable {
        id: table
        visible: root.kind === "table"
        width: parent.width
        columns: root.block.columns ?? []
        rows: visible ? root.block.rows ?? [] : []
        whenEmpty: visible ? root.block.text ?? "" : ""
        onOpened: (row) => root.opened(root.block.id, row)
    }
    Flow {
        id: actions
        visible: root.kind === "actions"
        width: parent.width
        spacing: Theme.px(12)
        Repeater {
            id: buttons
            model: root.kind === "actions" ? (root.block.options ?? []).length : 0
            Action {
                required property int index
                readonly property var item: (root.block.options ?? [])[index] ?? ({})
                objectName: "act-" + (item.id ?? "")
                kind: item.main ? "main" : "small"
                implicitHeight: Math.max(Theme.target, contentItem.implicitHeight + topPadding + bottomPadding)
                textSize: Theme.small
                width: Math.min(implicitWidth, actions.width)
                text: item.label ?? ""
                enabled: !root.busy
                onClicked: root.act(item.id)
            }
        }
    }
}
