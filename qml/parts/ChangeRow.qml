// SPDX-License-Identifier: GPL-3.0-or-later
// One reading then and now, what the plan led us to expect, and the sentence about it.
import QtQuick
import QtQuick.Layouts
import Counter

Item {
    id: row
    property bool heading: false
    required property string name
    required property string earlier
    required property string now
    required property string expected
    required property string text

    implicitHeight: Math.max(Ink.px(heading ? 36 : 50), words.implicitHeight + Ink.px(16))
    Accessible.role: Accessible.Row
    Accessible.name: name + ": " + earlier + ", " + now + ". " + text

    component Number: Line {
        property bool heading: false
        Layout.preferredWidth: Ink.px(116)
        Layout.alignment: Qt.AlignTop
        horizontalAlignment: Text.AlignRight
        font.pixelSize: heading ? Ink.small : Ink.px(20)
        pale: heading
    }

    Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.hair; color: row.heading ? Ink.ink : Ink.rule }
    RowLayout {
        id: words
        anchors { left: parent.left; right: parent.right; top: parent.top; topMargin: Ink.px(8) }
        spacing: Ink.room
        Line { Layout.preferredWidth: Ink.px(176); Layout.alignment: Qt.AlignTop; text: row.name }
        Number { heading: row.heading; text: row.earlier }
        Number { heading: row.heading; text: row.now; strong: !row.heading }
        Number { heading: row.heading; text: row.expected; pale: true }
        Prose { Layout.fillWidth: true; Layout.leftMargin: Ink.room; text: row.text; font.pixelSize: Ink.small }
    }
}
