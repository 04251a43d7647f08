// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The end: what was kept, how the kit goes back, and the clinic's number.
///
/// title, body; recordName: the record's folder (for staff, small); returnText; phone, hours
/// mainLabel; done(), back()
Page {
    id: root
    required property string title
    property string body: ""
    property string recordName: ""
    property string returnText: ""
    property string skinText: ""
    property string phone: ""
    property string hours: ""
    signal done()
    paneShare: Theme.roomy ? 0.2 : 0.32
    paneShareUpright: 0.26
    centred: true
    onMain: done()
    pane: [
        Horizon { anchors.fill: parent; hour: "dawn" },
        StaffAction { text: root.staffLabel; onClicked: root.staff() }
    ]
    property string staffLabel: ""
    signal staff()
    ReadBar { page: root; title: root.title; width: parent.width }
    Title { width: parent.width; text: root.title }
    Words { width: parent.width; text: root.body }
    Words { width: parent.width; text: root.returnText; font.weight: Font.DemiBold }
    Words { visible: text !== ""; width: parent.width; text: root.skinText }
    PhoneCard {
        visible: root.phone !== ""
        width: parent.width
        large: false
        //: Small heading over the clinic's number at the end.
        //% "Questions? Call your clinic"
        heading: qsTrId("finished.questions")
        phone: root.phone
        hours: root.hours
    }
    SmallWords { width: parent.width; text: root.recordName }
}
