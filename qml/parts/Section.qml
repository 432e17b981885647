// SPDX-License-Identifier: GPL-3.0-or-later
// The small heading of a part of a page, with its rule.
import QtQuick
import Counter

Item {
    id: section
    property string text

    implicitHeight: words.implicitHeight + Ink.px(8)

    Line {
        id: words
        width: parent.width
        text: section.text
        font.pixelSize: Ink.small
        strong: true
        Accessible.role: Accessible.Heading
    }
    Rectangle {
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        height: Ink.hair
        color: Ink.ink
    }
}
