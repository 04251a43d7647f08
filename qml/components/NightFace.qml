// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// One face of the night page: a title, a few words, perhaps a picture, and large areas to answer.
/// `choices` is a list of { id, text or name, figure }; `first` and `other` are two plain answers.
FocusScope {
    id: root
    property string title: ""
    property string body: ""
    property string phone: ""
    property string figure: ""
    property string figureText: ""
    property var choices: []
    property string first: ""
    property string other: ""
    property string watchText: ""
    signal chosen(string id)
    signal firstChosen()
    signal otherChosen()
    readonly property bool centred: choices.length === 0
    readonly property int columns: Theme.landscape ? (Theme.roomy ? 2 : 3) : (Theme.roomy ? 1 : 2)

    ScrollBody {
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: foot.top }
        anchors { leftMargin: Theme.margin; rightMargin: Theme.margin; topMargin: Theme.px(24) }
        anchors.bottomMargin: Theme.gap
        centred: root.centred
        Title {
            width: parent.width
            text: root.title
            horizontalAlignment: root.centred ? Text.AlignHCenter : Text.AlignLeft
        }
        FigureImage {
            anchors.horizontalCenter: parent.horizontalCenter
            visible: root.figure !== ""
            // Small enough that the words below it, and the number, are in sight.
            width: Theme.px(root.phone !== "" ? 150 : 220)
            height: width
            figure: root.figure
            description: root.figureText
        }
        Words {
            width: parent.width
            text: root.body
            horizontalAlignment: root.centred ? Text.AlignHCenter : Text.AlignLeft
        }
        Title {
            width: parent.width
            text: root.phone
            heading: false
            horizontalAlignment: Text.AlignHCenter
        }
        Grid {
            id: grid
            width: parent.width
            columns: root.columns
            spacing: Theme.gap
            Repeater {
                model: root.choices.length
                NightArea {
                    required property int index
                    readonly property var item: root.choices[index] ?? ({})
                    objectName: "choice-" + (item.id ?? "")
                    width: Math.floor((grid.width - (root.columns - 1) * grid.spacing) / root.columns)
                    height: Math.max(implicitHeight, Theme.px(item.figure ? 196 : 170))
                    kind: "choice"
                    text: item.text ?? item.name ?? ""
                    figure: item.figure ?? ""
                    onClicked: root.chosen(item.id)
                }
            }
        }
    }
    Column {
        id: foot
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        anchors { leftMargin: Theme.margin; rightMargin: Theme.margin; bottomMargin: Theme.px(22) }
        spacing: Theme.px(16)
        Row {
            id: answers
            width: parent.width
            spacing: Theme.gap
            readonly property int many: (one.visible ? 1 : 0) + (two.visible ? 1 : 0)
            readonly property real tallest: Math.max(one.visible ? one.implicitHeight : 0,
                                                     two.visible ? two.implicitHeight : 0, root.centred ? Theme.px(140) : 0)
            NightArea {
                id: one
                objectName: "first"
                visible: root.first !== ""
                width: Math.floor((answers.width - (answers.many - 1) * answers.spacing) / answers.many)
                height: answers.tallest
                text: root.first
                onClicked: root.firstChosen()
            }
            NightArea {
                id: two
                objectName: "other"
                visible: root.other !== ""
                width: one.visible ? one.width : answers.width
                height: answers.tallest
                kind: one.visible ? "note" : "choice"
                text: root.other
                onClicked: root.otherChosen()
            }
        }
        SmallWords { width: parent.width; horizontalAlignment: Text.AlignHCenter; text: root.watchText }
    }
}
