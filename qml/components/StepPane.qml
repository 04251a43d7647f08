// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The pane of a step: the person who gathers the parts with the time beneath; or, upright and with
/// large text, the person and the step's picture together.
Item {
    id: root
    property bool together: false
    property bool upright: false
    property string figure: ""
    property string figureText: ""
    property string personFigure: ""
    property string personFigureText: ""
    property string paceText: ""
    property real breath: 0
    signal enlarge()
    PersonPane {
        anchors { left: parent.left; bottom: parent.bottom }
        width: root.together && root.upright ? Math.round(parent.width * 0.36) : parent.width
        height: root.together && !root.upright ? Math.round(parent.height * 0.46) : parent.height
        figure: root.personFigure
        description: root.personFigureText
        paceText: Theme.roomy ? "" : root.paceText
    }
    FigureCard {
        objectName: "larger"
        visible: root.together
        anchors { right: parent.right; top: parent.top }
        width: root.upright ? Math.round(parent.width * 0.62) : parent.width
        height: root.upright ? parent.height : Math.round(parent.height * 0.52)
        figure: visible ? root.figure : ""
        description: root.figureText
        breath: root.breath
        onClicked: root.enlarge()
    }
}
