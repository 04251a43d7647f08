// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Evenfall.Ui

/// A row of a table of the front desk. One with an id is a button.
///
/// item: { id, cells, figure, marked }; widths of the cells; opened(), up(), down()
Item {
    id: root
    property var item: ({})
    property var widths: []
    property real figureWidth: 0
    property bool shaded: false
    readonly property bool opens: (item.id ?? "") !== ""
    readonly property alias opener: button
    signal opened()
    signal up()
    signal down()
    height: Math.max(opens ? Theme.target : Theme.px(40), cells.height + Theme.px(12), figureWidth)

    Rectangle {
        anchors.fill: parent
        color: root.item.marked ? Theme.caution : root.shaded ? Theme.card : "transparent"
        radius: Theme.px(6)
    }
    FigureImage {
        visible: root.figureWidth > 0
        width: root.figureWidth - Theme.px(14)
        height: width
        x: Theme.px(8)
        anchors.verticalCenter: parent.verticalCenter
        figure: visible && (root.item.figure ?? "") !== "" ? "image://figure/" + root.item.figure + (root.item.figure.indexOf("?") < 0 ? "?" : "&") + "tone=light" : ""
    }
    Row {
        id: cells
        x: Theme.px(14) + root.figureWidth
        anchors.verticalCenter: parent.verticalCenter
        Repeater {
            model: (root.item.cells ?? []).length
            SmallWords {
                required property int index
                width: Math.floor(root.widths[index] ?? 0)
                rightPadding: Theme.px(12)
                color: Theme.text
                font.weight: index === 0 && root.opens ? Font.DemiBold : Font.Normal
                text: root.item.cells[index] ?? ""
                visible: true
                Accessible.ignored: root.opens
            }
        }
    }
    T.AbstractButton {
        id: button
        objectName: "row-" + (root.item.id ?? "")
        anchors.fill: parent
        visible: root.opens
        focusPolicy: Qt.StrongFocus
        text: (root.item.cells ?? []).join(", ")
        Accessible.role: Accessible.Button
        Accessible.name: text
        onClicked: root.opened()
        Keys.onReturnPressed: (event) => { if (!event.isAutoRepeat) button.clicked(); }
        Keys.onEnterPressed: (event) => { if (!event.isAutoRepeat) button.clicked(); }
        Keys.onDownPressed: root.down()
        Keys.onUpPressed: root.up()
        background: Item {
            FocusRing { shown: button.visualFocus; anchors.margins: 0; radius: Theme.px(8) }
        }
    }
}
