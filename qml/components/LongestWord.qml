// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
import QtQuick
import Evenfall.Ui

/// How wide the longest word of some texts is, set like the names of things: what is narrower breaks it.
FontMetrics {
    property var texts: []
    readonly property real widest: {
        let most = 0;
        if (font.family === "" || font.pixelSize <= 0 || font.weight <= 0)
            return most; // measured anew when the font changes, which a call of advanceWidth would not be
        for (const text of texts) {
            for (const word of text.split(" "))
                most = Math.max(most, advanceWidth(word));
        }
        return Math.ceil(most);
    }
    /// The width of a tile (ItemTile) whose words these are and whose picture is at most so wide.
    function tile(picture: real): real { return widest + picture + Theme.px(56) + Math.round(Theme.small * 1.5); }
    font.family: Theme.family
    font.pixelSize: Theme.body
    font.weight: Font.Medium
}
