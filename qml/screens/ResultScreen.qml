// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// What the night's notes say, and what to do now. Never a diagnosis, a score or a grade.
///
/// sentence     what it means ("Your notes show about 5 to 6 and a half hours with all parts on.")
/// whatNow      what to do next; rangeText: how many hours, rounded; explain: the soft edge in words
/// picture      see NightPicture; pictureText: the same in words, for screen readers
/// clinicText   "Your clinic decides from the recording."; mainLabel; main(), back()
Page {
    id: root
    required property string sentence
    property string whatNow: ""
    property string rangeText: ""
    property string explain: ""
    required property var picture
    property string pictureText: ""
    property string clinicText: ""
    property bool backVisible: false
    spacing: Theme.px(12)
    ReadBar { page: root; title: root.sentence; width: parent.width; backVisible: root.backVisible }
    Title { width: parent.width; text: root.sentence }
    Words { width: parent.width; text: root.rangeText; font.weight: Font.DemiBold }
    Words { width: parent.width; text: root.whatNow }
    Card {
        width: parent.width
        inset: Theme.px(20)
        NightPicture {
            width: parent.width
            picture: root.picture
            description: root.pictureText
        }
        SmallWords { width: parent.width; text: root.explain }
    }
    Words { width: parent.width; text: root.clinicText; font.weight: Font.DemiBold }
}
