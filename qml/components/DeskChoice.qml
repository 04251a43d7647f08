// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// One of a few, beside its label. The arrow keys move from one to the next.
Item {
    id: root
    property string label: ""
    property string value: ""
    property string error: ""
    property var options: []
    readonly property bool stacked: width < Theme.px(700) * Theme.textScale
    readonly property Item entry: {
        for (let i = 0; i < tiles.count; ++i)
            if ((root.options[i]?.id ?? "") === root.value)
                return tiles.itemAt(i);
        return tiles.count > 0 ? tiles.itemAt(0) : null;
    }
    signal chosen(string id)
    height: (stacked ? words.height + Theme.px(4) : 0) + flow.height + (below.visible ? below.height + Theme.px(4) : 0)

    Words {
        id: words
        anchors.left: parent.left
        width: root.stacked ? parent.width : Math.round(parent.width * 0.3)
        y: root.stacked ? 0 : Math.round((Theme.target - Theme.small * 1.2) / 2)
        font.pixelSize: Theme.small
        font.weight: Font.Medium
        text: root.label
    }
    Flow {
        id: flow
        anchors.right: parent.right
        y: root.stacked ? words.height + Theme.px(4) : 0
        width: root.stacked ? parent.width : Math.round(parent.width * 0.68)
        spacing: Theme.px(10)
        Repeater {
            id: tiles
            model: root.options.length
            ChoiceTile {
                id: tile
                required property int index
                readonly property var item: root.options[index] ?? ({})
                objectName: "option-" + (item.id ?? "")
                least: Theme.target
                leftPadding: Theme.px(14)
                rightPadding: Theme.px(14)
                topPadding: Theme.px(6)
                bottomPadding: Theme.px(6)
                width: Math.min(implicitWidth, flow.width)
                text: item.label ?? ""
                enabled: item.enabled ?? true
                chosen: item.id === root.value
                onClicked: root.chosen(item.id)
                function go(by: int) {
                    const next = tiles.itemAt((index + by + tiles.count) % tiles.count) as Item;
                    next.forceActiveFocus(Qt.TabFocusReason);
                }
                Keys.onRightPressed: go(tile.LayoutMirroring.enabled ? -1 : 1)
                Keys.onLeftPressed: go(tile.LayoutMirroring.enabled ? 1 : -1)
            }
        }
    }
    SmallWords {
        id: below
        anchors { top: flow.bottom; topMargin: Theme.px(4); right: parent.right }
        width: flow.width
        visible: text !== ""
        text: root.error === "" ? "" : "⚠ " + root.error
        color: Theme.text
        font.weight: Font.DemiBold
    }
}
