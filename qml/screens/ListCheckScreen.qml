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
    Grid {
        id: grid
        width: parent.width
        columns: Theme.roomy ? 1 : 2
        spacing: Theme.px(14)
        Repeater {
            model: root.items.length
            ItemTile {
                required property int index
                readonly property var item: root.items[index] ?? ({})
                objectName: "item-" + (item.id ?? "")
                width: Math.floor((grid.width - (grid.columns - 1) * grid.spacing) / grid.columns)
                height: Math.max(implicitHeight, Theme.mm(root.items.length > 6 ? 19 : 25))
                text: item.name ?? ""
                figure: item.figure ?? ""
                count: item.count ?? ""
                done: item.done ?? false
                onClicked: root.toggled(item.id)
            }
        }
    }
}
