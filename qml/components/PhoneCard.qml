// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The clinic's number in the largest type, its hours, and the number outside them.
Card {
    id: root
    property string heading: ""
    property string phone: ""
    property string hours: ""
    property string afterHoursText: ""
    property string afterHoursPhone: ""
    property bool large: true
    SmallWords { width: parent.width; text: root.heading }
    Words {
        width: parent.width
        text: root.phone
        font.pixelSize: root.large ? Theme.huge : Theme.title
        font.weight: Font.Bold
        leading: 1.0
        color: Theme.tone === "morning" ? Theme.accent : Theme.text
    }
    Words { width: parent.width; text: root.hours }
    Item { width: 1; height: Theme.px(8); visible: root.afterHoursPhone !== "" }
    SmallWords { width: parent.width; text: root.afterHoursText }
    Words {
        width: parent.width
        text: root.afterHoursPhone
        font.pixelSize: Theme.title
        font.weight: Font.Bold
        leading: 1.0
    }
}
