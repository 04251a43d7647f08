// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Rows under their heads. A row with an id is a button; up and down move between rows.
///
/// columns: heads; rows: list of { id, cells, figure, marked }; whenEmpty; opened(row)
Column {
    id: root
    property var columns: []
    property var rows: []
    property string whenEmpty: ""
    readonly property Item entry: all.count > 0 && (rows[0]?.id ?? "") !== "" ? (all.itemAt(0) as DeskRow)?.opener ?? null : null
    readonly property bool pictures: rows.length > 0 && (rows[0].figure ?? "") !== ""
    readonly property real figureWidth: pictures ? Theme.px(120) : 0
    FontMetrics {
        id: metrics
        font.family: Theme.family
        font.pixelSize: Theme.small
        font.weight: Font.DemiBold
    }
    /// Each column has room for its longest word; what is left goes where whole cells would need it.
    readonly property var widths: {
        const pad = Theme.px(16), all = root.width - root.figureWidth - Theme.px(28);
        const least = [], wanted = [];
        for (let c = 0; c < columns.length; ++c) {
            let word = 0, whole = 0;
            for (const text of [columns[c], ...rows.map(row => row.cells[c] ?? "")]) {
                for (const one of text.split(/ (?!\/)/)) // no line begins with a stroke
                    word = Math.max(word, metrics.advanceWidth(one));
                whole = Math.max(whole, Math.min(metrics.advanceWidth(text), all * 0.6));
            }
            least.push(word + pad);
            wanted.push(Math.max(whole + pad, word + pad));
        }
        const sum = list => list.reduce((a, b) => a + b, 0);
        const lack = sum(wanted) - sum(least), spare = all - sum(least);
        if (spare <= 0) // narrower than its words: they break, all alike
            return least.map(one => one * all / sum(least));
        if (spare >= lack)
            return wanted.map(one => one * all / sum(wanted));
        return least.map((one, c) => one + (wanted[c] - one) * spare / lack);
    }
    function cellWidth(c: int): real { return Math.floor(widths[c] ?? 0); }
    signal opened(string row)

    SmallWords { width: parent.width; visible: root.rows.length === 0 && root.whenEmpty !== ""; text: root.whenEmpty }
    Item {
        visible: root.rows.length > 0
        width: parent.width
        height: visible ? heads.height + Theme.px(10) : 0
        Row {
            id: heads
            x: Theme.px(14) + root.figureWidth
            Repeater {
                model: root.columns.length
                SmallWords {
                    required property int index
                    width: root.cellWidth(index)
                    rightPadding: Theme.px(12)
                    font.weight: Font.DemiBold
                    text: root.columns[index] ?? ""
                }
            }
        }
        Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Theme.stroke; color: Theme.edge }
    }
    Repeater {
        id: all
        model: root.rows.length
        DeskRow {
            required property int index
            width: root.width
            item: root.rows[index] ?? ({})
            widths: root.widths
            figureWidth: root.figureWidth
            shaded: index % 2 === 0
            onOpened: root.opened(item.id)
            onUp: root.go(index - 1)
            onDown: root.go(index + 1)
        }
    }
    function go(to: int) {
        const row = all.itemAt(to) as DeskRow;
        if (row)
            row.opener.forceActiveFocus(Qt.TabFocusReason);
    }
}
