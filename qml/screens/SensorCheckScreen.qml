// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// One look at each sensor before the light: is it as it should be?
///
/// title, body
/// items   list of { id, name, figure, expect, done }; expect: "Snug, over the navel"
/// mainLabel, mainEnabled; confirmed(id), notRight(id), main(), back()
AskPage {
    id: root
    required property var items
    signal confirmed(string id)
    signal notRight(string id)
    answerShare: 0.66
    Repeater {
        model: root.items.length
        SensorRow {
            required property int index
            readonly property var item: root.items[index] ?? ({})
            width: parent.width
            rowId: item.id ?? ""
            name: item.name ?? ""
            figure: item.figure ?? ""
            expect: item.expect ?? ""
            done: item.done ?? false
            onConfirmed: root.confirmed(item.id)
            onNotRight: root.notRight(item.id)
        }
    }
}
