// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The first and the last page of the practice run by day.
///
/// title, body, caution, mainLabel; figure: empty shows none; main()
Page {
    id: root
    required property string title
    property string body: ""
    property string caution: ""
    property string figure: ""
    paneShare: Theme.roomy ? 0.24 : 0.4
    paneShareUpright: 0.3
    centred: true
    pane: Item {
        anchors.fill: parent
        Horizon { anchors.fill: parent; hour: "dusk"; visible: root.figure === "" }
        FigureImage {
            anchors { fill: parent; margins: Theme.gap }
            visible: root.figure !== ""
            figure: root.figure
            Accessible.ignored: true
        }
    }
    ReadBar { page: root; title: root.title; width: parent.width }
    Title { width: parent.width; text: root.title }
    Words { width: parent.width; text: root.body }
    CautionBox { width: parent.width; text: root.caution }
}
