// SPDX-License-Identifier: GPL-3.0-or-later
// An amount to drag: its label and its value in words above a rule with one mark.
import QtQuick
import QtQuick.Controls.Basic
import Counter

Column {
    id: drag
    property string label
    property string word
    property string name
    property real value: 1
    property alias from: slider.from
    property alias to: slider.to
    signal dragged(real value)

    Item {
        width: parent.width
        height: Math.max(caption.implicitHeight, amount.implicitHeight)
        Line { id: caption; width: parent.width - amount.width - Ink.room; text: drag.label; font.pixelSize: Ink.small; pale: true }
        Line { id: amount; anchors.right: parent.right; text: drag.word; font.pixelSize: Ink.small; strong: true }
    }
    Slider {
        id: slider
        objectName: drag.name
        width: parent.width
        height: Ink.touch
        stepSize: 0.05
        value: drag.value
        leftPadding: Ink.px(8)
        rightPadding: Ink.px(8)
        Accessible.name: drag.label + ", " + drag.word
        onMoved: drag.dragged(value)
        background: Item {
            Rectangle { y: slider.height / 2; width: parent.width; height: Ink.hair; color: Ink.ink }
            Rectangle {  // where it was told
                x: slider.leftPadding + (slider.availableWidth - width) * (1 - slider.from) / (slider.to - slider.from)
                y: slider.height / 2 - height / 2
                width: Ink.stroke
                height: Ink.px(16)
                color: Ink.pale
            }
            FocusFrame { shown: slider.visualFocus }
        }
        handle: Rectangle {
            x: slider.leftPadding + slider.visualPosition * (slider.availableWidth - width)
            y: (slider.height - height) / 2
            width: Ink.px(22)
            height: Ink.px(34)
            radius: Ink.px(3)
            color: slider.pressed ? Ink.accent : Ink.ink
        }
    }
}
