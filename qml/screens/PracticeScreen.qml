// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The first and the last page of the practice run by day.
///
/// title, body, caution, mainLabel; main()
Page {
    id: root
    required property string title
    property string body: ""
    property string caution: ""
    /// What lies over the page: "" or "sound", why there is none.
    property string shown: ""
    covered: shown !== ""
    onTitleChanged: shown = ""
    paneShare: Theme.roomy ? 0.2 : 0.36
    paneShareUpright: 0.3
    centred: true
    pane: Horizon { anchors.fill: parent; hour: "dusk" }
    over: Panel {
        visible: root.shown !== ""
        title: root.title
        body: root.voice.reason ?? ""
        onClosed: root.shown = ""
    }
    TopBar {
        visible: root.speakOffered
        width: parent.width
        backVisible: false
        SayAction {
            objectName: "say"
            canSpeak: root.voice.canSpeak ?? false
            speaking: root.voice.speaking ?? false
            onSay: root.sayAgain()
            onStop: root.stopReading()
            onWhy: root.shown = "sound"
        }
    }
    Title { width: parent.width; text: root.title }
    Words { width: parent.width; text: root.body }
    CautionBox { width: parent.width; text: root.caution }
}
