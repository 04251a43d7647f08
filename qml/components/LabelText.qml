// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The words of a button: they wrap between words, and a word wider than its place makes all of
/// them smaller; it never breaks.
ScriptText {
    id: root
    property real size: Theme.small
    readonly property string longest: text.split(" ").reduce((a, b) => b.length > a.length ? b : a, "")
    readonly property TextMetrics word: TextMetrics {
        text: root.longest
        font.family: Theme.family
        font.pixelSize: root.size
        font.weight: root.font.weight
    }
    readonly property real wanted: word.advanceWidth * 1.03
    font.pixelSize: Math.max(1, width > 0 && wanted > width ? Math.floor(size * width / wanted) : size)
    wrapMode: Text.WordWrap
    Accessible.ignored: true
}
