// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// Call the clinic, before going on or instead of it. The number is the largest thing on the page.
///
/// title, body, phone, hours, afterHoursText, afterHoursPhone, emergencyText (a caution)
/// goOnLabel   main action; empty hides it
AskPage {
    id: root
    required property string phone
    property string hours: ""
    property string afterHoursText: ""
    property string afterHoursPhone: ""
    property string emergencyText: ""
    property string goOnLabel: ""
    signal goOn()
    mainLabel: goOnLabel
    mainKind: "second"
    onMain: goOn()
    PhoneCard {
        width: parent.width
        //: Small heading over the clinic's phone number.
        //% "Call your clinic"
        heading: qsTrId("call.heading")
        phone: root.phone
        hours: root.hours
        afterHoursText: root.afterHoursText
        afterHoursPhone: root.afterHoursPhone
    }
    CautionBox { width: parent.width; text: root.emergencyText }
}
