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
/// languageChosen(code), start()
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
    signal languageChosen(string code)
    signal buildChosen(string id)
    /// For the clinic's staff: small, and away from what the patient needs.
    property string staffLabel: ""
    signal staff()

    paneShare: Theme.roomy ? 0.2 : 0.36
    paneShareUpright: 0.3
    centred: true
    spacing: Theme.px(18)
    pane: [
        Horizon { anchors.fill: parent; hour: "dusk" },
        StaffAction { text: root.staffLabel; onClicked: root.staff() }
    ]
    onMain: start()

    SmallWords { width: parent.width; text: root.clinicName }
    Title { width: parent.width; text: root.title }
    Words { width: parent.width; text: root.body; font.pixelSize: Theme.label }
    Column {
        width: parent.width
        SmallWords { width: parent.width; text: root.nightLabel }
        SmallWords { width: parent.width; text: root.codeLabel }
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
