// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick

/// The fixed words of the night page's faces.
QtObject {
    //: Night page, asked once more before the night ends.
    //% "Are you up for the day?"
    readonly property string upTitle: qsTrId("night.up_confirm_title")
    //: Night page, answer: the night ends now and the morning page comes.
    //% "Yes, end the night"
    readonly property string upYes: qsTrId("night.up_confirm_yes")
    //: Night page, answer: the night goes on.
    //% "No, go on with the night"
    readonly property string upNo: qsTrId("night.up_confirm_no")
    //: Night page, asked so that the part can be noted.
    //% "What came off?"
    readonly property string whichTitle: qsTrId("night.which_title")
    //: Night page, answer under the pictures of the parts.
    //% "None of these"
    readonly property string whichNone: qsTrId("night.which_none")
    //: Night page, asked once when the person is back in bed.
    //% "Is everything still on?"
    readonly property string stillTitle: qsTrId("night.still_on_title")
    //: Night page, answer: every part of the kit is in place.
    //% "Yes, all on"
    readonly property string stillYes: qsTrId("night.still_on_yes")
    //: Night page, answer: a part of the kit is off; the next page asks which.
    //% "Something is off"
    readonly property string stillNo: qsTrId("night.still_on_no")
    //: Night page, heading of the help for right now.
    //% "What is it?"
    readonly property string helpTitle: qsTrId("night.help_title")
    //: Night page, button: takes back what was just noted.
    //% "Undo"
    readonly property string undo: qsTrId("night.undo")
    //: Night page, button: leaves this page; the screen goes dark.
    //% "Close, go dark"
    readonly property string close: qsTrId("night.close")
    //: Night page, button under advice: the person has read it; the screen goes dark.
    //% "OK"
    readonly property string ok: qsTrId("night.ok")
    //: Night page, large button under advice: reads it aloud. Nothing is read at night without it.
    //% "Read this to me"
    readonly property string read: qsTrId("night.read")
    readonly property string enough: qsTrId("step.stop_reading")

    function title(face: string, given: string, noted: string): string {
        if (face === "noted")
            return noted;
        if (given !== "")
            return given;
        switch (face) {
        case "upConfirm": return upTitle;
        case "which": return whichTitle;
        case "stillOn": return stillTitle;
        case "help": return helpTitle;
        }
        return given;
    }
    function first(face: string): string {
        switch (face) {
        case "noted": return undo;
        case "upConfirm": return upYes;
        case "stillOn": return stillYes;
        case "advice": return ok;
        }
        return "";
    }
    function other(face: string): string {
        switch (face) {
        case "noted": return close;
        case "upConfirm": return upNo;
        case "which": return whichNone;
        case "stillOn": return stillNo;
        case "help": return close;
        }
        return "";
    }
}
