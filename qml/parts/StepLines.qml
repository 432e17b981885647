// SPDX-License-Identifier: GPL-3.0-or-later
// Things to do, one below the other with a box each, and the cautions that go with them.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Column {
    id: lines
    property var steps: []
    property var cautions: []
    property real size: Ink.px(19)
    property real cautionSize: Ink.body

    spacing: Ink.px(10)

    Repeater {
        model: lines.cautions
        delegate: Prose {
            required property string modelData
            width: lines.width
            text: modelData
            font.pixelSize: lines.cautionSize
            font.italic: true
        }
    }
    Repeater {
        model: lines.steps
        delegate: Item {
            id: step
            required property int index
            required property string modelData
            width: lines.width
            height: words.implicitHeight + Ink.px(10)
            Accessible.role: Accessible.ListItem
            Accessible.name: modelData
            Rectangle { width: parent.width; height: Ink.hair; color: Ink.rule }
            Prose {
                id: words
                y: Ink.px(8)
                width: parent.width
                text: step.modelData
                font.pixelSize: lines.size
                Accessible.ignored: true
            }
        }
    }
}
