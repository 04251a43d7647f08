// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A question with a few given answers.
///
/// progressText, title, hint
/// options  list of { id, text, figure }; with figures they stand as tiles beside each other; selected: list of the ids chosen; several: more than one may be
/// mainLabel, mainEnabled; chosen(id), main(), skip(), back()
QuestionPage {
    id: root
    required property var options
    property var selected: []
    property bool several: false
    signal chosen(string id)
    readonly property bool pictures: options.length > 0 && (options[0].figure ?? "") !== ""
    LongestWord { id: names; texts: root.options.map(option => option.text ?? "") }
    Flow {
        id: tiles
        visible: root.pictures
        width: parent.width
        spacing: Theme.px(14)
        readonly property int across: Theme.roomy || names.tile(Theme.px(96)) > (width - spacing) / 2 ? 1 : 2
        Repeater {
            model: root.pictures ? root.options.length : 0
            ItemTile {
                required property int index
                readonly property var item: root.options[index] ?? ({})
                objectName: "option-" + (item.id ?? "")
                single: true
                width: Math.floor((tiles.width - (tiles.across - 1) * tiles.spacing) / tiles.across)
                text: item.text ?? ""
                figure: item.figure ?? ""
                done: root.selected.indexOf(item.id) >= 0
                onClicked: root.chosen(item.id)
            }
        }
    }
    Repeater {
        model: root.pictures ? 0 : root.options.length
        ChoiceTile {
            required property int index
            readonly property var item: root.options[index] ?? ({})
            objectName: "option-" + (item.id ?? "")
            width: parent.width
            text: item.text ?? ""
            square: root.several
            chosen: root.selected.indexOf(item.id) >= 0
            onClicked: root.chosen(item.id)
        }
    }
}
