// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Two answers that cannot both be true, side by side, as a kind question.
///
/// title, body; first, other: { label, value, canChange }; without a value a card is left out
/// changeFirst(), changeSecond(), leave() (keep both; the clinic will see it), back()
AskPage {
    id: root
    required property var first
    required property var other
    signal changeFirst()
    signal changeSecond()
    signal leave()
    //: Two answers do not fit: keeps both as they are, for the clinic to see.
    //% "Leave both as they are"
    secondLabel: qsTrId("puzzle.leave")
    onSecond: leave()
    Repeater {
        model: 2
        Card {
            id: card
            required property int index
            readonly property var item: (index === 0 ? root.first : root.other) ?? ({})
            width: parent.width
            visible: (item.value ?? "") !== ""
            SmallWords { width: parent.width; text: card.item.label ?? "" }
            Title { width: parent.width; text: card.item.value ?? ""; heading: false }
            Action {
                visible: card.item.canChange ?? false
                objectName: card.index === 0 ? "changeFirst" : "changeSecond"
                //: Two answers do not fit: opens this one of the two to change it.
                //% "Change this one"
                text: qsTrId("puzzle.change")
                Accessible.description: card.item.label ?? ""
                onClicked: if (card.index === 0) root.changeFirst(); else root.changeSecond();
            }
        }
    }
}
