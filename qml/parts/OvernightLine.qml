// SPDX-License-Identifier: GPL-3.0-or-later
// A line of a small table: a word on the left, numbers on the right.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Item {
    id: line
    property var cells: []
    property bool heading: false

    height: Ink.px(heading ? 34 : 48)
    Accessible.role: Accessible.Row
    Accessible.name: cells.join(", ")

    Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.hair; color: line.heading ? Ink.ink : Ink.rule }
    Repeater {
        model: line.cells
        delegate: Line {
            required property int index
            required property string modelData
            x: index === 0 ? 0 : line.width - (line.cells.length - index) * width
            width: index === 0 ? Ink.px(170) : Ink.px(120)
            anchors.verticalCenter: parent ? parent.verticalCenter : undefined
            text: modelData
            horizontalAlignment: index === 0 ? Text.AlignLeft : Text.AlignRight
            font.pixelSize: line.heading ? Ink.small : Ink.px(20)
            pale: line.heading
            Accessible.ignored: true
        }
    }
}
