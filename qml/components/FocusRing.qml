// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A ring round the control that has the keyboard. A shape, not only a colour: it stands off.
Rectangle {
    property bool shown: false
    anchors.fill: parent
    anchors.margins: -Theme.px(7)
    visible: shown
    color: "transparent"
    radius: Theme.radius + Theme.px(7)
    border.color: Theme.focus
    border.width: Math.max(3, Theme.px(4))
}
