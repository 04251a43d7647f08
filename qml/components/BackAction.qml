// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// "Back": the same word, sign and place on every page.
Action {
    kind: "small"
    sign: mirrored ? "→" : "←"
    //: Button, top of most pages: go to the page before. Nothing already noted is lost.
    //% "Back"
    text: qsTrId("common.back")
}
