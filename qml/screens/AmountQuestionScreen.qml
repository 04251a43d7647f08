// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A number: minutes to fall asleep, how many times awake.
///
/// progressText, title, hint; valueText "20" ("–" when there is none yet), unitText "minutes"
/// steps   list of { label, delta }, falling and rising in pairs ("− 10", "+ 10"); labels say it
/// mainLabel, mainEnabled; step(delta), main(), skip(), back()
QuestionPage {
    id: root
    required property string valueText
    property string unitText: ""
    required property var steps
    signal step(int delta)
    Card {
        width: parent.width
        spacing: Theme.px(8)
        Words {
            width: parent.width
            text: root.valueText
            horizontalAlignment: Text.AlignHCenter
            font.pixelSize: Theme.huge
            font.weight: Font.Bold
            leading: 1.0
        }
        Words {
            width: parent.width
            text: root.unitText
            horizontalAlignment: Text.AlignHCenter
            font.weight: Font.Medium
        }
        Item { width: 1; height: Theme.tight }
        Grid {
            id: grid
            width: parent.width
            columns: 2
            spacing: Theme.px(14)
            Repeater {
                model: root.steps.length
                Action {
                    required property int index
                    readonly property var item: root.steps[index] ?? ({})
                    objectName: "step" + item.delta
                    width: Math.floor((grid.width - grid.spacing) / 2)
                    autoRepeat: true
                    autoRepeatDelay: 600
                    textSize: Theme.body
                    text: item.label ?? ""
                    onClicked: root.step(item.delta)
                }
            }
        }
    }
}
