// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The row over a page that can be read aloud: back, and the sound control. Why there is no sound is
/// said over the page, until another one comes.
TopBar {
    id: root
    required property Page page
    /// The page's title: a new one is another page.
    required property string title
    backVisible: false
    visible: backVisible || page.speakOffered
    onTitleChanged: page.silenceShown = false
    onBack: page.back()
    SayAction {
        objectName: "say"
        visible: root.page.speakOffered
        canSpeak: root.page.voice.canSpeak ?? false
        speaking: root.page.voice.speaking ?? false
        onSay: root.page.sayAgain()
        onStop: root.page.stopReading()
        onWhy: root.page.silenceShown = true
    }
}
