// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A few words of one's own for the clinic.
///
/// progressText, title, hint, text; edited(text) at each change, main(), skip(), back()
QuestionPage {
    id: root
    property string text: ""
    signal edited(string text)
    Rectangle {
        width: parent.width
        height: Math.max(Theme.px(330), entry.contentHeight + Theme.px(48))
        radius: Theme.radius
        color: Theme.card
        border.width: Theme.stroke
        border.color: Theme.edge
        FocusRing { shown: entry.activeFocus }
        TextEdit {
            id: entry
            objectName: "entry"
            anchors { fill: parent; margins: Theme.px(24) }
            text: root.text
            color: Theme.text
            selectionColor: Theme.accent
            selectedTextColor: Theme.accentText
            wrapMode: TextEdit.Wrap
            textFormat: TextEdit.PlainText
            horizontalAlignment: TextEdit.AlignLeft
            font.family: Theme.family
            font.pixelSize: Theme.body
            activeFocusOnTab: true
            // Tab leaves the text: a person without a mouse must get out again.
            Keys.onTabPressed: nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
            Keys.onBacktabPressed: nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)
            Accessible.role: Accessible.EditableText
            Accessible.name: root.title
            Accessible.multiLine: true
            onTextChanged: if (text !== root.text) root.edited(text)
        }
    }
}
