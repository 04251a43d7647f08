// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A question with a few given answers.
///
/// progressText, title, hint
/// options  list of { id, text }; selected: list of the ids chosen; several: more than one may be
/// mainLabel, mainEnabled; chosen(id), main(), skip(), back()
QuestionPage {
    id: root
    required property var options
    property var selected: []
    property bool several: false
    signal chosen(string id)
    Repeater {
        model: root.options.length
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
