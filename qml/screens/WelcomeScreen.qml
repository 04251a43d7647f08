// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The first page of the evening: calm, and in the right language.
///
/// clinicName, codeLabel ("Study code SM-0417"), nightLabel ("Night of Saturday, 31 October")
/// title, body   a greeting, and how long it will take
/// languages     list of { code, name }, each name in its own language
/// language      the code now spoken
/// languageChosen(code), start(), practise(), readingChosen(eachPage)
Page {
    id: root
    required property string title
    property string body: ""
    required property string clinicName
    property string codeLabel: ""
    property string nightLabel: ""
    property var languages: []
    property string language: "en"
    signal start()
    /// Drawn persons: list of { id, name, figure }; the one that is drawn from now on.
    property var builds: []
    property string build: ""
    property string buildText: ""
    /// "Time to start: about 9:25"; empty once that is past
    property string startText: ""
    /// Small beside the main action: a practice run by day; empty hides it.
    property string practiceLabel: ""
    signal practise()
    secondLabel: practiceLabel
    onSecond: practise()
    mainShare: 0.6
    signal readingChosen(bool eachPage)
    signal languageChosen(string code)
    signal buildChosen(string id)
    /// For the clinic's staff: small, and away from what the patient needs.
    property string staffLabel: ""
    signal staff()

    paneShare: Theme.roomy ? 0.2 : 0.29
    paneShareUpright: 0.3
    centred: true
    spacing: Theme.px(18)
    /// Where the picture is large enough, the choice lies in it, so that the body need not scroll.
    readonly property bool tileInPane: !upright && !Theme.roomy
    pane: [
        Horizon { anchors.fill: parent; hour: "dusk" },
        StaffAction { text: root.staffLabel; above: root.speakOffered && root.tileInPane; onClicked: root.staff() },
        ReadToMe {
            visible: root.speakOffered && root.tileInPane
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Theme.px(26) }
            chosen: root.voice.readToMe ?? false
            onClicked: root.readingChosen(!chosen)
        }
    ]
    onMain: start()

    SmallWords { width: parent.width; text: root.clinicName }
    Title { width: parent.width; text: root.title }
    Words { width: parent.width; text: root.body; font.pixelSize: Theme.label }
    Column {
        width: parent.width
        SmallWords { width: parent.width; text: root.nightLabel }
        SmallWords { width: parent.width; text: root.codeLabel }
        SmallWords { width: parent.width; visible: text !== ""; text: root.startText }
    }
    Item { width: 1; height: Theme.px(6) }
    Flow {
        width: parent.width
        spacing: Theme.px(12)
        Repeater {
            model: root.languages.length
            ChoiceTile {
                required property int index
                readonly property var item: root.languages[index] ?? ({})
                objectName: "language-" + (item.code ?? "")
                least: Theme.target
                leftPadding: Theme.px(14)
                rightPadding: Theme.px(14)
                width: Math.min(implicitWidth, parent.width)
                text: item.name ?? ""
                chosen: item.code === root.language
                onClicked: root.languageChosen(item.code)
            }
        }
    }
    Flow {
        visible: root.speakOffered && !root.tileInPane
        width: parent.width
        ReadToMe {
            width: Math.min(implicitWidth, parent.width)
            chosen: root.voice.readToMe ?? false
            onClicked: root.readingChosen(!chosen)
        }
    }
    SmallWords {
        visible: root.speakOffered && (root.voice.readToMe ?? false) && text !== ""
        width: parent.width
        text: root.voice.reason ?? ""
    }
    SmallWords { visible: root.builds.length > 0; width: parent.width; text: root.buildText }
    Flow {
        visible: root.builds.length > 0
        width: parent.width
        spacing: Theme.px(12)
        Repeater {
            model: root.builds.length
            BuildTile {
                required property int index
                readonly property var item: root.builds[index] ?? ({})
                objectName: "build-" + (item.id ?? "")
                width: Math.max(Theme.mm(13), Theme.px(84))
                height: Math.round(width * 1.16)
                text: item.name ?? ""
                figure: item.figure ?? ""
                chosen: item.id === root.build
                onClicked: root.buildChosen(item.id)
            }
        }
    }
}
