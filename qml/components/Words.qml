// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Text for reading: wraps, never elides, and is named for screen readers.
ScriptText {
    property bool heading: false
    font.pixelSize: Theme.body
    font.weight: Theme.night && !Theme.roomy ? Font.Medium : Font.Normal
    leading: 1.12
    // Explicit, so that it turns round with the reading direction of the page.
    horizontalAlignment: Text.AlignLeft
    visible: text.length > 0
    Accessible.role: heading ? Accessible.Heading : Accessible.StaticText
    Accessible.name: text
}
