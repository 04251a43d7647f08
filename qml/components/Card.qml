// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A quiet ground for things that belong together.
Rectangle {
    id: root
    default property alias content: inner.data
    property alias spacing: inner.spacing
    property real inset: Theme.px(24)
    implicitHeight: inner.implicitHeight + 2 * inset
    height: implicitHeight
    radius: Theme.radius
    color: Theme.card
    Column {
        id: inner
        x: root.inset
        y: root.inset
        width: root.width - 2 * root.inset
        spacing: Theme.tight
    }
}
