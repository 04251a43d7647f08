// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// A time of the night. It can be given as exact, about, between two times, or not sure; none of
/// these is chosen beforehand.
///
/// progressText, title, hint (where the value came from), noteText (said beneath: a repeated hour)
/// timeText "6:10", dayText "Sunday morning"
/// sureness "" | "exact" | "about" | "between" | "unsure"
/// giveOrTakeText "give or take 15 minutes" (about)
/// earliestText, earliestDayText, latestText, latestDayText (between)
/// mainLabel, mainEnabled
/// step(minutes, which) with which "time" | "earliest" | "latest"; surenessChosen(word)
/// widthStep(delta) in minutes; main(), skip(), back()
QuestionPage {
    id: root
    required property string timeText
    property string dayText: ""
    property string sureness: ""
    property string giveOrTakeText: ""
    property string earliestText: ""
    property string earliestDayText: dayText
    property string latestText: ""
    property string latestDayText: dayText
    property string noteText: ""
    signal step(int minutes, string which)
    signal surenessChosen(string word)
    signal widthStep(int delta)
    answerShare: 0.6
    answerSpacing: Theme.px(12)
    beside: Words { width: parent.width; text: root.noteText; font.weight: Font.Medium }

    TimeSetter {
        objectName: "time"
        visible: root.sureness !== "between"
        width: parent.width
        timeText: root.timeText
        dayText: root.dayText
        dimmed: root.sureness === "unsure"
        onStep: (minutes) => root.step(minutes, "time")
    }
    TimeSetter {
        objectName: "earliest"
        visible: root.sureness === "between"
        compact: true
        width: parent.width
        //: Heading over the earlier of two times: it was not before this.
        //% "Not before"
        heading: qsTrId("time.not_before")
        timeText: root.earliestText
        dayText: root.earliestDayText
        onStep: (minutes) => root.step(minutes, "earliest")
    }
    TimeSetter {
        objectName: "latest"
        visible: root.sureness === "between"
        compact: true
        width: parent.width
        //: Heading over the later of two times: it was not after this.
        //% "Not after"
        heading: qsTrId("time.not_after")
        timeText: root.latestText
        dayText: root.latestDayText
        onStep: (minutes) => root.step(minutes, "latest")
    }
    SurenessChoice {
        width: parent.width
        sureness: root.sureness
        onChosen: (word) => root.surenessChosen(word)
    }
    Card {
        visible: root.sureness === "about"
        width: parent.width
        inset: Theme.px(14)
        StepRow {
            width: parent.width
            text: root.giveOrTakeText
            //: Button beside "give or take 15 minutes": makes the span 5 minutes smaller.
            //% "5 min less"
            lessText: qsTrId("time.width_less")
            //: Button beside "give or take 15 minutes": makes the span 5 minutes larger.
            //% "5 min more"
            moreText: qsTrId("time.width_more")
            onLess: root.widthStep(-5)
            onMore: root.widthStep(5)
        }
    }
}
