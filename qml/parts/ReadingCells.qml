// SPDX-License-Identifier: GPL-3.0-or-later
// The words of one reading's row. Not a layout: how high they stand must follow at once from how wide they are.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Item {
    id: cells
    property string name
    property string value
    property string unit
    property string standing
    property string note
    property bool waits: false

    readonly property real above: Math.max(0, (height - implicitHeight) / 2)
    readonly property real gap: Ink.px(12)
    readonly property real start: Ink.px(14)
    readonly property real free: width - start - number.width - measure.width - 3 * gap
    readonly property real deep: Math.max(title.implicitHeight, number.implicitHeight, measure.implicitHeight, state.implicitHeight)

    implicitHeight: deep + (remark.visible ? remark.implicitHeight : 0)

    component Cell: Line {
        y: cells.above
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
    Cell { id: title; x: cells.start; width: cells.free * 0.52; height: cells.deep; text: cells.name; strong: cells.waits }
    Cell {
        id: number
        x: cells.start + title.width + cells.gap
        width: Ink.px(84)
        height: cells.deep
        text: cells.value.length > 0 ? cells.value : "—"
        font.pixelSize: Ink.large
        horizontalAlignment: Text.AlignRight
    }
    Cell { id: measure; x: number.x + number.width + cells.gap; width: Ink.px(112); height: cells.deep; text: cells.unit; font.pixelSize: Ink.tiny; pale: true }
    Cell {
        id: state
        x: measure.x + measure.width + cells.gap
        width: parent.width - x
        height: cells.deep
        text: cells.standing
        font.pixelSize: Ink.small
        strong: cells.waits
    }
    Prose {
        id: remark
        x: cells.start
        y: cells.above + cells.deep
        width: parent.width - x
        visible: text.length > 0
        text: cells.note
        font.pixelSize: Ink.small
        Accessible.ignored: true
    }
}
