// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
import QtQuick
import Evenfall.FrontDesk
import Evenfall.Ui

/// Wires the front desk to its screen, as Main.qml does the kiosk. Loaded when somebody opens it.
DeskScreen {
    id: root
    required property FrontDesk desk
    title: desk.page.title
    message: desk.page.message
    fault: desk.page.fault
    sections: desk.page.sections
    section: desk.page.section
    blocks: desk.page.blocks
    focusBlock: desk.page.focus
    mainAction: desk.page.mainAction
    busy: desk.page.busy
    busyText: desk.page.busyText
    picture: desk.page.picture
    pictureText: desk.page.pictureText
    shown: desk.shown
    onAct: (id) => root.desk.act(id)
    onEdited: (field, text) => root.desk.edit(field, text)
    onOpened: (table, row) => root.desk.openRow(table, row)
}
