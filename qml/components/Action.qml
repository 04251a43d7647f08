// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Evenfall.Ui

/// A button. `kind`: "main" (filled, 20 mm), "second" (outlined, 20 mm), "small" (outlined, 12 mm),
/// "quiet" (filled softly, 12 mm).
T.AbstractButton {
    id: root
    property string kind: "small"
    /// A sign drawn before the words, from the text font; it says nothing the words do not say.
    property string sign: ""
    property real textSize: kind === "main" && !Theme.roomy ? Theme.label : tall ? Theme.body : Theme.small
    readonly property bool tall: kind === "main" || kind === "second"
    readonly property color ink: kind === "main" && enabled ? Theme.accentText
                                 : enabled ? Theme.text : Theme.softText

    implicitHeight: Math.max(tall ? Theme.mainTarget : Theme.target,
                             contentItem.implicitHeight + topPadding + bottomPadding)
    implicitWidth: Math.max(tall ? Theme.mainTarget : Theme.target,
                            contentItem.implicitWidth + leftPadding + rightPadding)
    leftPadding: Theme.px(Theme.roomy ? 14 : tall ? 24 : 22)
    rightPadding: leftPadding
    topPadding: Theme.px(8)
    bottomPadding: Theme.px(8)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: text
    // The templates know Space; Enter is expected as well. A key held down counts once.
    Keys.onReturnPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }
    Keys.onEnterPressed: (event) => { if (!event.isAutoRepeat) root.clicked(); }

    background: Rectangle {
        radius: root.tall ? Theme.radius : Math.min(height / 2, Theme.px(36))
        color: root.kind === "main" && root.enabled ? Theme.accent
               : root.kind === "quiet" || root.kind === "main" ? Theme.card : "transparent"
        border.width: root.kind === "main" || root.kind === "quiet" ? 0 : Theme.stroke
        border.color: Theme.edge
        // Pressed: the ground lightens or darkens, the size stays.
        Rectangle {
            anchors.fill: parent
            radius: parent.radius
            visible: root.pressed
            color: Theme.text
            opacity: 0.18
        }
        FocusRing { shown: root.visualFocus; radius: parent.radius + Theme.px(7) }
    }
    contentItem: ActionFace {
        text: root.text
        sign: root.sign
        ink: root.ink
        textSize: root.textSize
        weight: root.kind === "main" ? Font.Bold : Font.Medium
    }
}
