// SPDX-License-Identifier: GPL-3.0-or-later
// One word of several: the chosen one stands in a filled box and carries a tick.
import QtQuick
import QtQuick.Controls.Basic
import Counter

Button {
    id: choice
    property bool chosen: false
    readonly property string said: chosen ? "✓ " + text : text
    property real most: Infinity  // wider than this, its words wrap

    implicitHeight: Math.max(Ink.px(48), implicitContentHeight + Ink.px(14))
    implicitWidth: Math.min(most, Math.max(Ink.px(50), Math.ceil(words.advanceWidth) + Ink.px(28)))
    leftPadding: Ink.px(13)
    rightPadding: leftPadding
    padding: 0
    font.family: Ink.sans
    font.pixelSize: Ink.small
    Accessible.role: Accessible.RadioButton
    Accessible.name: text
    Accessible.checkable: true
    Accessible.checked: chosen

    TextMetrics { id: words; font: choice.font; text: choice.said }
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()

    contentItem: Text {
        text: choice.said
        font: choice.font
        color: choice.chosen ? Ink.paper : Ink.ink
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.WordWrap
    }
    background: Rectangle {
        color: choice.chosen ? Ink.ink : choice.down ? Ink.wash : Ink.paper
        border.color: choice.chosen ? Ink.ink : Ink.pale
        border.width: Ink.hair
        radius: Ink.px(3)
        FocusFrame { shown: choice.visualFocus }
    }
}
