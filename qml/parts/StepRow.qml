// SPDX-License-Identifier: GPL-3.0-or-later
// One entry of the timetable: the hour on the left, what to do then on the right.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Item {
    id: row
    required property string day    // said only where it changes
    required property string clock
    required property string text
    required property string amount
    required property string after
    required property var cautions
    required property int index
    property bool mayChange: false
    signal change(order: int)

    implicitHeight: Math.max(body.implicitHeight + Ink.px(28), hours.implicitHeight + Ink.px(24), Ink.px(76))
    Accessible.role: Accessible.ListItem
    Accessible.name: day + " " + clock + ", " + text

    Rectangle { width: parent.width; height: Ink.hair; color: row.day.length > 0 ? Ink.ink : Ink.rule }
    Column {
        id: hours
        y: Ink.px(12)
        width: Ink.px(124)
        Line { visible: text.length > 0; text: row.day; font.pixelSize: Ink.small; pale: true }
        Line { width: parent.width; text: row.clock; font.pixelSize: Ink.px(24); strong: true; lineHeight: 0.9 }
        Item { width: 1; height: Ink.px(8); visible: row.mayChange }
        Act {
            id: changes
            objectName: "change_step_" + (row.index + 1)
            visible: row.mayChange
            text: qsTr("Change")
            Accessible.name: qsTr("Change") + ", " + row.text
            onClicked: row.change(row.index + 1)
        }
    }
    Column {
        id: body
        x: Ink.px(140)
        y: Ink.px(14)
        width: parent.width - x - Ink.px(8)
        spacing: Ink.px(6)
        Line { width: parent.width; visible: text.length > 0; text: row.amount; strong: true; font.pixelSize: Ink.px(22) }
        Prose { width: parent.width; text: row.text; font.pixelSize: row.amount.length > 0 ? Ink.body : Ink.px(20) }
        Repeater {
            model: row.cautions
            delegate: Prose {
                required property string modelData
                width: body.width
                text: modelData
                font.pixelSize: Ink.small
                font.italic: true
            }
        }
        Line { width: parent.width; visible: text.length > 0; text: row.after; font.pixelSize: Ink.small; pale: true }
    }
}
