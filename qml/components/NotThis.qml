// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// What not to do: small pictures, each with a cross in it and a few words beside it.
///
/// items    list of { text, figure }; across: beside each other where their words have room, else one below
///          the other
Grid {
    id: root
    property var items: []
    property bool across: false
    property real pictureSide: Theme.px(104)
    visible: items.length > 0
    readonly property real share: (width - (items.length - 1) * spacing) / Math.max(1, items.length)
    columns: across && names.widest + pictureSide + Theme.px(12) <= share ? Math.max(1, items.length) : 1
    LongestWord { id: names; texts: root.items.map(item => item.text ?? "") }
    spacing: Theme.tight
    Repeater {
        model: root.items.length
        Item {
            id: one
            required property int index
            readonly property var item: root.items[index] ?? ({})
            width: Math.floor((root.width - (root.columns - 1) * root.spacing) / root.columns)
            height: Math.max(picture.height, words.height)
            FigureImage {
                id: picture
                anchors { left: parent.left; verticalCenter: parent.verticalCenter }
                width: root.pictureSide
                height: width
                figure: one.item.figure ?? ""
                Accessible.ignored: true
            }
            SmallWords {
                id: words
                anchors { left: picture.right; leftMargin: Theme.px(12); right: parent.right }
                anchors.verticalCenter: parent.verticalCenter
                text: one.item.text ?? ""
            }
        }
    }
}
