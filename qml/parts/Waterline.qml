// SPDX-License-Identifier: GPL-3.0-or-later
// A word-sized picture of one reading, to stand inside a sentence: a thin rule over the method's
// range, the target as a bracket, this reading as a filled mark as wide as its uncertainty, the last
// visit's as a hollow one. All places are shares of the range, 0 to 1, worked out by the model.
import QtQuick
import Counter

Item {
    id: waterline
    property var line: ({})  // {value, half, low, high, last, says}; a missing place is not drawn

    readonly property real mid: Math.round(height / 2)
    readonly property bool hasLow: line.low !== undefined
    readonly property bool hasHigh: line.high !== undefined

    implicitWidth: Ink.px(148)
    implicitHeight: Ink.px(26)
    Accessible.role: Accessible.Graphic
    Accessible.name: line.says ?? ""

    Rectangle {
        y: waterline.mid
        width: parent.width
        height: Ink.hair
        color: Ink.ink
    }
    component Jaw: Item {
        id: jaw
        property bool opensRight: true
        property real mid: 0
        width: Ink.px(5)
        height: Ink.px(20)
        y: mid - height / 2
        Rectangle { x: jaw.opensRight ? 0 : jaw.width - width; width: Ink.stroke; height: jaw.height; color: Ink.ink }
        Rectangle { width: jaw.width; height: Ink.stroke; color: Ink.ink }
        Rectangle { y: jaw.height - height; width: jaw.width; height: Ink.stroke; color: Ink.ink }
    }
    Jaw {
        mid: waterline.mid
        visible: waterline.hasLow
        x: waterline.hasLow ? waterline.line.low * waterline.width : 0
    }
    Jaw {
        mid: waterline.mid
        visible: waterline.hasHigh
        opensRight: false
        x: waterline.hasHigh ? waterline.line.high * waterline.width - width : 0
    }
    Rectangle {
        visible: waterline.line.last !== undefined
        width: Ink.px(10)
        height: Ink.px(10)
        radius: width / 2
        x: visible ? waterline.line.last * waterline.width - width / 2 : 0
        y: waterline.mid - height / 2
        color: Ink.paper
        border.color: Ink.ink
        border.width: Ink.stroke
    }
    Rectangle {
        visible: waterline.line.value !== undefined
        width: visible ? Math.max(Ink.px(7), 2 * waterline.line.half * waterline.width) : 0
        height: Ink.px(12)
        radius: Ink.px(2)
        x: visible ? waterline.line.value * waterline.width - width / 2 : 0
        y: waterline.mid - height / 2
        color: Ink.accent
    }
}
