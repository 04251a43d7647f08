// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Things that happened in the night, each in its own row: awakenings, parts that came off.
///
/// progressText, title, hint
/// events     list of { id, text, soft }; soft: its time is not certain (drawn with a hollow dot)
/// emptyText  said in place of the list while it is empty
/// addLabel ("Add a time awake"), noneLabel ("I did not wake up"; empty hides it)
/// mainLabel, mainEnabled; edit(id), remove(id), add(), none(), main(), skip(), back()
QuestionPage {
    id: root
    required property var events
    property string emptyText: ""
    required property string addLabel
    property string noneLabel: ""
    property string countLabel: ""
    signal edit(string id)
    signal remove(string id)
    signal add()
    signal none()
    signal count()
    answerShare: 0.62
    Words { visible: root.events.length === 0 && text !== ""; width: parent.width; text: root.emptyText }
    Repeater {
        model: root.events.length
        EventRow {
            required property int index
            readonly property var item: root.events[index] ?? ({})
            width: parent.width
            rowId: item.id ?? ""
            text: item.text ?? ""
            soft: item.soft ?? false
            onEdit: root.edit(item.id)
            onRemove: root.remove(item.id)
        }
    }
    Action {
        objectName: "add"
        width: parent.width
        height: Math.max(implicitHeight, Theme.mm(14))
        sign: "+"
        textSize: Theme.body
        text: root.addLabel
        onClicked: root.add()
    }
    Action {
        objectName: "count"
        visible: root.countLabel !== ""
        width: parent.width
        height: Math.max(implicitHeight, Theme.mm(14))
        textSize: Theme.body
        text: root.countLabel
        onClicked: root.count()
    }
    Action {
        objectName: "none"
        visible: root.noneLabel !== "" && root.events.length === 0
        width: parent.width
        height: Math.max(implicitHeight, Theme.mm(14))
        textSize: Theme.body
        text: root.noneLabel
        onClicked: root.none()
    }
}
