// SPDX-License-Identifier: GPL-3.0-or-later
// A control chart: rules at the limits, each named; a filled mark for a measurement, a square with a frame for
// one that broke a rule, a hollow mark for those before the last clearance.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Item {
    id: picture
    required property ChartDesk charts
    readonly property real words: Ink.px(84)
    readonly property real step: height / 8

    implicitHeight: Ink.px(200)
    Accessible.role: Accessible.Graphic
    Accessible.name: picture.charts.headline + ". " + picture.charts.pointsInWords

    Repeater {
        model: picture.charts.limits
        delegate: Item {
            id: limit
            required property var modelData
            y: picture.height / 2 - modelData.z * picture.step
            width: picture.width
            Line {
                y: -height / 2
                width: picture.words - Ink.px(12)
                horizontalAlignment: Text.AlignRight
                text: limit.modelData.word
                font.pixelSize: Ink.tiny
                pale: true
                Accessible.ignored: true
            }
            Rectangle {
                x: picture.words
                width: picture.width - picture.words
                height: limit.modelData.z === 0 ? Ink.stroke : Ink.hair
                color: Math.abs(limit.modelData.z) === 1 ? Ink.rule : Ink.ink
            }
        }
    }
    Repeater {
        model: picture.charts.points
        delegate: Rectangle {
            id: mark
            required property var modelData
            width: Ink.px(modelData.out ? 15 : 11)
            height: width
            radius: modelData.out ? 0 : width / 2
            x: picture.words + modelData.at * (picture.width - picture.words) - width / 2
            y: picture.height / 2 - modelData.z * picture.step - height / 2
            color: !modelData.counts ? Ink.paper : modelData.out ? Ink.accent : Ink.ink
            border.color: Ink.ink
            border.width: Ink.stroke
        }
    }
}
