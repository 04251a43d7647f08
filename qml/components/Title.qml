// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The one title of a page.
Words {
    heading: true
    font.pixelSize: Theme.night && Theme.roomy ? Math.round(Theme.label * 0.94) : Theme.title
    font.weight: Theme.night && Theme.roomy ? Font.Medium : Font.Bold
    font.letterSpacing: -0.4 * Theme.unit
    leading: 1.05
}
