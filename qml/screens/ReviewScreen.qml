// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Check your answers: every question with its answer and its own change.
///
/// title, body; rows: list of { id, question, answer, skipped }; a skipped answer says so
/// mainLabel; change(id), main(), back()
AskPage {
    id: root
    required property var rows
    signal change(string id)
    answerShare: 0.66
    answerSpacing: Theme.px(10)
    Repeater {
        model: root.rows.length
        AnswerRow {
            required property int index
            readonly property var item: root.rows[index] ?? ({})
            width: parent.width
            rowId: item.id ?? ""
            question: item.question ?? ""
            answer: item.answer ?? ""
            skipped: item.skipped ?? false
            onChange: root.change(item.id)
        }
    }
}
