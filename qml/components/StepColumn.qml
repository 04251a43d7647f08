// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Buttons that move a time, the largest step on top. Held down, they go on.
Column {
    id: root
    /// List of { text, minutes }.
    property var steps: []
    /// What is moved, for screen readers.
    property string about: ""
    signal step(int minutes)
    spacing: Theme.tight
    Repeater {
        model: root.steps.length
        Action {
            required property int index
            readonly property var item: root.steps[index] ?? ({})
            objectName: "step" + item.minutes
            width: root.width
            leftPadding: Theme.px(8)
            rightPadding: Theme.px(8)
            autoRepeat: true
            autoRepeatDelay: 600
            text: item.text ?? ""
            Accessible.description: root.about
            onClicked: root.step(item.minutes)
        }
    }
}
