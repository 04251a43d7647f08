// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A page with its words at the start side and what answers them at the end side; upright or with
/// large text, one below the other.
Page {
    id: root
    /// Small words over the title: where one is ("Question 4 of 9").
    property string label: ""
    required property string title
    property string body: ""
    /// Where a value came from, or how to answer.
    property string hint: ""
    property string caution: ""
    property bool backVisible: true
    /// The answering side's share of the width in landscape.
    property real answerShare: 0.58
    property real answerSpacing: Theme.px(14)
    default property alias answers: answerColumn.data
    /// More at the start side, below the words.
    property alias beside: wordColumn.data

    Grid {
        id: sides
        readonly property bool two: !root.upright && !Theme.roomy
        // Short answers begin beside the title, not beside the button over it.
        readonly property real titleTop: titleWords.y
        readonly property real drop: two && answerColumn.height + titleTop <= root.room ? titleTop : 0
        readonly property real answerWide: two ? Math.round(width * root.answerShare) : width
        width: parent.width
        columns: two ? 2 : 1
        columnSpacing: Theme.px(44)
        rowSpacing: Theme.px(24)
        Column {
            id: wordColumn
            width: sides.two ? sides.width - sides.answerWide - sides.columnSpacing : sides.width
            spacing: Theme.px(16)
            ReadBar {
                page: root
                title: root.title
                width: parent.width
                backVisible: root.backVisible
            }
            SmallWords { width: parent.width; text: root.label }
            Title { id: titleWords; width: parent.width; text: root.title }
            Words { width: parent.width; text: root.body }
            SmallWords { width: parent.width; text: root.hint }
            CautionBox { width: parent.width; text: root.caution }
        }
        Item {
            width: sides.answerWide
            height: answerColumn.height + sides.drop
            Column {
                id: answerColumn
                y: sides.drop
                width: parent.width
                spacing: root.answerSpacing
            }
        }
    }
}
