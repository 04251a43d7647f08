// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The first page of the morning. The kit stays on for now.
///
/// title, body, caution, mainLabel; main()
Page {
    id: root
    required property string title
    required property string body
    property string caution: ""
    paneShare: Theme.roomy ? 0.2 : 0.4
    paneShareUpright: 0.34
    centred: true
    pane: Horizon { anchors.fill: parent; hour: "dawn" }
    ReadBar { page: root; title: root.title; width: parent.width }
    Title { width: parent.width; text: root.title }
    Words { width: parent.width; text: root.body; font.pixelSize: Theme.label }
    CautionBox { width: parent.width; text: root.caution }
}
