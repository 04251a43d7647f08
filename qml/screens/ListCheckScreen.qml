// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Things to find and tick off: what is in the bag; what goes back into it.
///
/// title, body, hint, caution
/// items        list of { id, name, figure, count, done }; count is a finished text ("4 strips")
/// mainLabel, mainEnabled, secondLabel ("Something is missing")
/// toggled(id), main(), second(), back()
AskPage {
    id: root
    required property var items
    signal toggled(string id)
    answerShare: 0.64
    readonly property bool low: items.length > 6
    LongestWord { id: names; texts: root.items.map(item => item.name ?? "") }
    Grid {
        id: grid
        width: parent.width
        columns: Theme.roomy || names.tile(Theme.px(root.low ? 96 : 132)) > (width - spacing) / 2 ? 1 : 2
        spacing: Theme.px(14)
        Repeater {
            model: root.items.length
            ItemTile {
                required property int index
                readonly property var item: root.items[index] ?? ({})
                objectName: "item-" + (item.id ?? "")
                width: Math.floor((grid.width - (grid.columns - 1) * grid.spacing) / grid.columns)
                height: Math.max(implicitHeight, Theme.mm(root.low ? 19 : 25))
                text: item.name ?? ""
                figure: item.figure ?? ""
                count: item.count ?? ""
                done: item.done ?? false
                onClicked: root.toggled(item.id)
            }
        }
    }
}
