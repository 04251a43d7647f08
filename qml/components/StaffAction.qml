// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Opens the front desk: in a page's picture, small, for staff only.
Action {
    objectName: "staff"
    /// At the head of the picture, where something else has its foot.
    property bool above: false
    anchors { left: parent?.left; leftMargin: Theme.px(24) }
    // Not by anchors to one edge or the other: they would keep the height between both.
    y: above ? Theme.px(24) : (parent?.height ?? 0) - height - Theme.px(24)
    visible: text !== ""
    kind: "small"
    width: Math.min(implicitWidth, (parent?.width ?? 0) - Theme.px(48))
}
