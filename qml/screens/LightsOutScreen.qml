// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The last page of the evening. What to have done, and that the page will go dark.
///
/// title, lines (list of short sentences), caution, mainLabel; main(), back()
Page {
    id: root
    required property string title
    required property var lines
    property string caution: ""
    property bool backVisible: true
    paneShare: Theme.roomy ? 0.2 : 0.28
    paneShareUpright: Theme.roomy ? 0.14 : 0.22
    pane: Horizon { anchors.fill: parent; hour: "moon" }
    BackAction {
        objectName: "back"
        visible: root.backVisible
        onClicked: root.back()
    }
    Title { width: parent.width; text: root.title }
    Lines { width: parent.width; lines: root.lines }
    CautionBox { width: parent.width; text: root.caution }
}
