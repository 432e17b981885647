// SPDX-License-Identifier: GPL-3.0-or-later
// Pages of the Back room that belong together: their heading, and beneath it the pages while one of them is open.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Counter

Column {
    id: group
    required property BackDesk back
    required property string key
    required property string word
    readonly property bool open: back.group === key

    function pages(all: var): var {
        return all.filter(shelf => shelf.group === key);
    }

    AbstractButton {
        id: heading
        objectName: "group_" + group.key
        width: group.width
        height: Ink.px(52)
        text: group.word
        Accessible.role: Accessible.PageTab
        Accessible.name: text
        Accessible.selected: group.open
        Keys.onReturnPressed: clicked()
        Keys.onEnterPressed: clicked()
        onClicked: group.back.group = group.key
        background: Rectangle {
            color: heading.down ? Ink.wash : Ink.paper
            Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: group.open ? Ink.stroke : Ink.hair; color: Ink.ink }
            FocusFrame { shown: heading.visualFocus; anchors.margins: Ink.px(1) }
        }
        contentItem: Line { text: heading.text; strong: true; verticalAlignment: Text.AlignVCenter; Accessible.ignored: true }
    }
    Repeater {
        model: group.open ? group.pages(group.back.shelves) : []
        delegate: AbstractButton {
            id: entry
            required property var modelData
            readonly property bool here: group.back.shelf === modelData.key
            objectName: "shelf_" + modelData.key
            width: group.width
            height: Ink.px(50)
            text: modelData.word
            Accessible.role: Accessible.PageTab
            Accessible.name: text
            Accessible.selected: here
            Keys.onReturnPressed: clicked()
            Keys.onEnterPressed: clicked()
            onClicked: group.back.shelf = modelData.key
            background: Rectangle {
                color: entry.down || entry.here ? Ink.wash : Ink.paper
                Rectangle { visible: entry.here; width: Ink.px(4); height: parent.height; color: Ink.accent }
                FocusFrame { shown: entry.visualFocus; anchors.margins: Ink.px(1) }
            }
            contentItem: Line {
                leftPadding: Ink.px(14)
                text: entry.text
                strong: entry.here
                font.pixelSize: Ink.small
                lineHeight: 0.9
                verticalAlignment: Text.AlignVCenter
                Accessible.ignored: true
            }
        }
    }
}
