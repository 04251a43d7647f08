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
    paneShare: Theme.roomy ? 0.2 : 0.36
    paneShareUpright: 0.3
    centred: true
    pane: Horizon { anchors.fill: parent; hour: "dusk" }
    ReadBar { page: root; title: root.title; width: parent.width }
    Title { width: parent.width; text: root.title }
    Words { width: parent.width; text: root.body }
    CautionBox { width: parent.width; text: root.caution }
}
