// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Evenfall.Ui

/// One drawn person to choose as one's own. The picture says it; its name is for screen readers.
T.AbstractButton {
    id: root
    property string figure: ""
    property bool chosen: false
    focusPolicy: Qt.StrongFocus
    padding: Theme.px(6)
    Accessible.role: Accessible.RadioButton
    Accessible.name: text
    Accessible.checkable: true
    Accessible.checked: chosen
    Keys.onReturnPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    Keys.onEnterPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    background: Rectangle {
        radius: Theme.px(18)
        color: Theme.card
        border.width: root.chosen ? Theme.px(5) : Theme.stroke
        border.color: root.chosen ? Theme.accent : Theme.edge
        FocusRing { shown: root.visualFocus }
    }
    contentItem: Item {
        FigureImage {
            anchors.fill: parent
            figure: root.figure
            Accessible.ignored: true
        }
        // Beside the colour, a mark.
        Mark {
            anchors { right: parent.right; top: parent.top }
            visible: root.chosen
            on: true
        }
    }
}
