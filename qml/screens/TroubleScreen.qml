// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The app itself is in trouble: the notes cannot be written, the disk is full, a second copy runs.
/// Plain words first, what was kept, then the detail for the clinic.
///
/// title, body, detail (for staff), phone, hours, mainLabel; main()
AskPage {
    id: root
    property string detail: ""
    property string phone: ""
    property string hours: ""
    backVisible: false
    PhoneCard {
        visible: root.phone !== ""
        width: parent.width
        //: Small heading over the clinic's number on a page that says the app is in trouble.
        //% "Call your clinic if you need help"
        heading: qsTrId("trouble.call")
        phone: root.phone
        hours: root.hours
    }
    Card {
        visible: root.detail !== ""
        width: parent.width
        SmallWords {
            width: parent.width
            //: Small heading over a technical message that only the clinic's staff needs.
            //% "For the clinic's staff"
            text: qsTrId("trouble.for_staff")
        }
        SmallWords { width: parent.width; text: root.detail; wrapMode: Text.WrapAnywhere }
    }
}
