// SPDX-License-Identifier: GPL-3.0-or-later
// A chart of points in a field that goes from 0 at the left and the foot to 1: rules across, each named; a filled
// mark for a point, a square with a frame for one that is out, a hollow one for one that does not count; where
// told, the point's error as a bar, a band behind, ticks at the foot and dates beneath.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Item {
    id: picture
    property var rules: []   // {up, word, weight}: "main", "plain" or "pale"
    property var points: []  // {at, up, half, out, counts}; half: of the bar's length
    property var ticks: []   // {at, tall}
    property var dates: []   // {at, word}
    property var band: ({})  // {low, high}
    property string says     // the same for a screen reader
    readonly property real words: Ink.px(84)
    readonly property real inset: Ink.px(10)
    readonly property real base: height - (dates.length > 0 ? Ink.px(28) : 0)
    readonly property real crown: dates.length > 0 ? Ink.px(12) : 0

    function across(at: real): real { return words + inset + at * (width - words - 2 * inset); }
    function down(up: real): real { return base - up * (base - crown); }

    implicitHeight: Ink.px(200)
    Accessible.role: Accessible.Graphic
    Accessible.name: picture.says

    Rectangle {
        visible: picture.band.high !== undefined
        x: picture.words
        y: visible ? picture.down(picture.band.high) : 0
        width: picture.width - picture.words
        height: visible ? picture.down(picture.band.low) - y : 0
        color: Ink.wash
    }
    Repeater {
        model: picture.rules
        delegate: Item {
            id: rule
            required property var modelData
            y: picture.down(modelData.up)
            width: picture.width
            Line {
                y: -height / 2
                width: picture.words - Ink.px(12)
                horizontalAlignment: Text.AlignRight
                text: rule.modelData.word
                font.pixelSize: Ink.tiny
                pale: true
                Accessible.ignored: true
            }
            Rectangle {
                x: picture.words
                width: picture.width - picture.words
                height: rule.modelData.weight === "main" ? Ink.stroke : Ink.hair
                color: rule.modelData.weight === "pale" ? Ink.rule : Ink.ink
            }
        }
    }
    Repeater {
        model: picture.ticks
        delegate: Rectangle {
            required property var modelData
            width: Ink.stroke
            height: Ink.px(modelData.tall ? 20 : 9)
            x: picture.across(modelData.at) - width / 2
            y: picture.base - height
            color: Ink.ink
        }
    }
    Repeater {
        model: picture.points
        delegate: Item {
            id: mark
            required property var modelData
            readonly property real size: Ink.px(modelData.out ? 15 : 11)
            x: picture.across(modelData.at)
            y: picture.down(modelData.up)
            Rectangle {
                readonly property real half: (mark.modelData.half ?? 0) * (picture.base - picture.crown)
                visible: half > 0
                x: -width / 2
                y: -half
                width: Ink.stroke
                height: 2 * half
                color: Ink.ink
            }
            Rectangle {
                width: mark.size
                height: width
                x: -width / 2
                y: -height / 2
                radius: mark.modelData.out ? 0 : width / 2
                color: !mark.modelData.counts ? Ink.paper : mark.modelData.out ? Ink.accent : Ink.ink
                border.color: Ink.ink
                border.width: Ink.stroke
            }
        }
    }
    Repeater {
        model: picture.dates
        delegate: Line {
            required property var modelData
            x: Math.min(picture.width - width, Math.max(picture.words, picture.across(modelData.at) - width / 2))
            y: picture.height - height
            text: modelData.word
            font.pixelSize: Ink.tiny
            pale: true
            Accessible.ignored: true
        }
    }
}
