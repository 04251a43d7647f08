// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The last page of the evening. What to have done, and that the page will go dark.
///
/// title, lines (list of short sentences), caution, mainLabel; main(), back(), nightSoundChosen(on)
Page {
    id: root
    required property string title
    required property var lines
    property string caution: ""
    property bool backVisible: true
    paneShare: Theme.roomy ? 0.2 : 0.28
    paneShareUpright: Theme.roomy ? 0.14 : 0.22
    readonly property bool tileInPane: !upright && !Theme.roomy
    pane: [
        Horizon { anchors.fill: parent; hour: "moon" },
        NightSound {
            visible: root.tileInPane
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Theme.px(26) }
            chosen: root.voice.nightSound ?? false
            onClicked: root.nightSoundChosen(!chosen)
        }
    ]
    signal nightSoundChosen(bool on)
    ReadBar { page: root; title: root.title; width: parent.width; backVisible: root.backVisible }
    Title { width: parent.width; text: root.title }
    CautionBox { width: parent.width; text: root.caution }
    Lines { width: parent.width; lines: root.lines }
    Flow {
        visible: !root.tileInPane
        width: parent.width
        NightSound {
            width: Math.min(implicitWidth, parent.width)
            chosen: root.voice.nightSound ?? false
            onClicked: root.nightSoundChosen(!chosen)
        }
    }
}
