// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
pragma ComponentBehavior: Bound
import QtQuick
import Evenfall.Ui

/// The body of a page. When it is longer than its place, a strip below says so and moves it on;
/// the keyboard moves it too, and what gets the focus comes into view.
FocusScope {
    id: root
    default property alias content: column.data
    property alias spacing: column.spacing
    readonly property bool overflows: column.implicitHeight + 2 * edge > height + 1
    // Set, not bound: what it is worked out from changes in the middle of a layout.
    property bool atEnd: false
    function look() { atEnd = view.contentY >= view.contentHeight - view.height - 2; }
    /// Short pages may stand in the middle of their place.
    property bool centred: false
    // Room for the focus ring of what lies at the edge.
    readonly property real edge: Theme.px(10)

    function page(by: real) {
        view.contentY = Math.max(0, Math.min(view.contentHeight - view.height, view.contentY + by));
    }
    function reveal(item: Item) {
        let above = item;
        while (above && above !== column)
            above = above.parent;
        if (!above)
            return;
        const top = item.mapToItem(column, 0, 0).y;
        if (top < view.contentY)
            view.contentY = Math.max(0, top - edge);
        else if (top + item.height + 2 * edge > view.contentY + view.height)
            view.contentY = Math.min(view.contentHeight - view.height,
                                     top + item.height + 2 * edge - view.height);
    }
    readonly property Item focused: Window.activeFocusItem
    onFocusedChanged: if (focused && overflows) reveal(focused)

    Keys.onPressed: (event) => {
        const step = event.key === Qt.Key_PageDown ? 0.8 : event.key === Qt.Key_PageUp ? -0.8
                   : event.key === Qt.Key_Down ? 0.2 : event.key === Qt.Key_Up ? -0.2 : 0;
        if (step !== 0 && overflows) {
            page(step * view.height);
            event.accepted = true;
        }
    }

    Flickable {
        id: view
        anchors { left: parent.left; right: parent.right; top: parent.top }
        anchors.leftMargin: -root.edge
        anchors.rightMargin: -root.edge
        height: parent.height - (root.overflows ? more.height + Theme.tight : 0)
        contentHeight: column.height + 2 * root.edge
        clip: root.overflows
        interactive: root.overflows
        boundsBehavior: Flickable.StopAtBounds
        onContentYChanged: root.look()
        onHeightChanged: root.look()
        onContentHeightChanged: root.look()
        Column {
            id: column
            x: root.edge
            y: root.centred && !root.overflows ? Math.max(root.edge, (view.height - height) / 2) : root.edge
            width: view.width - 2 * root.edge
            spacing: Theme.gap
        }
    }
    Action {
        id: more
        visible: root.overflows
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        kind: "quiet"
        // One line for either of its words, so that its height does not depend on them.
        height: Math.max(Theme.target, Math.round(Theme.small * 1.9))
        //: Button below a page that is longer than the screen: moves the page up to show the rest.
        //% "More below ↓"
        readonly property string onward: qsTrId("common.more_below")
        //: Button below a long page when its end is shown: moves back to the top of the page.
        //% "Back to the top ↑"
        readonly property string upward: qsTrId("common.to_top")
        text: root.atEnd ? upward : onward
        onClicked: root.atEnd ? root.page(-view.contentHeight) : root.page(0.8 * view.height)
    }
}
