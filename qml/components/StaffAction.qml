// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Opens the front desk: at the foot of a page's picture, small, for staff only.
Action {
    objectName: "staff"
    anchors { left: parent?.left; bottom: parent?.bottom; margins: Theme.px(24) }
    visible: text !== ""
    kind: "small"
    width: Math.min(implicitWidth, (parent?.width ?? 0) - Theme.px(48))
}
