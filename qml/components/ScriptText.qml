// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Text in any of our scripts, wrapping and never elided. `leading` is the distance of lines as a
/// multiple of the Latin one. The Arabic font asks for lines of 2.1 em; set as it asks, a page of it
/// falls apart, so its lines come closer and the empty room over the first one is taken back.
Text {
    property real leading: 1.1
    readonly property bool arabic: /[\u0600-\u06ff]/.test(text)
    lineHeight: arabic ? leading * 0.66 : leading
    topPadding: arabic ? -Math.round(font.pixelSize * 0.26) : 0
    bottomPadding: arabic ? Math.round(font.pixelSize * 0.14) : 0
    color: Theme.text
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    font.family: Theme.family
}
