// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Evenfall.Ui

/// The picture of a step on its own ground. The whole card is the button that shows it larger.
T.AbstractButton {
    id: root
    property string figure: ""
    property string description: ""
    /// 0 (breathed out) to 1 (breathed in): the body in the picture widens with the breath.
    property real breath: 0
    /// What not to do, see FigureFace; how much height it asks for.
    property var mistakes: []
    property real mistakeHeight: 0
    focusPolicy: Qt.StrongFocus
    padding: Theme.px(10)
    //: Button with a picture in it: shows the same picture over the whole screen.
    //% "Larger picture"
    text: qsTrId("figure.larger")
    Accessible.role: Accessible.Button
    Accessible.name: text
    Accessible.description: description
    Keys.onReturnPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    Keys.onEnterPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    background: Rectangle {
        radius: Theme.radius
        color: Theme.card
        border.width: Math.max(1, Theme.px(2))
        border.color: Theme.edge
        Rectangle {
            anchors.fill: parent
            radius: parent.radius
            visible: root.pressed
            color: Theme.text
            opacity: 0.1
        }
        FocusRing { shown: root.visualFocus }
    }
    contentItem: FigureFace {
        mistakes: root.mistakes
        onMistakeHeightChanged: root.mistakeHeight = mistakeHeight
        text: root.text
        figure: root.figure
        description: root.description
        breath: root.breath
    }
}
