// SPDX-License-Identifier: GPL-3.0-or-later
// One word of several: the chosen one stands in a filled box and carries a tick.
import QtQuick
import QtQuick.Controls.Basic
import Counter

Button {
    id: choice
    property bool chosen: false

    implicitHeight: Ink.px(48)
    implicitWidth: implicitContentWidth + Ink.px(30)
    padding: 0
    font.family: Ink.sans
    font.pixelSize: Ink.small
    Accessible.role: Accessible.RadioButton
    Accessible.name: text
    Accessible.checkable: true
    Accessible.checked: chosen

    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()

    contentItem: Text {
        text: choice.chosen ? "✓ " + choice.text : choice.text
        font: choice.font
        color: choice.chosen ? Ink.paper : Ink.ink
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
    }
    background: Rectangle {
        color: choice.chosen ? Ink.ink : choice.down ? Ink.wash : Ink.paper
        border.color: choice.chosen ? Ink.ink : Ink.pale
        border.width: Ink.hair
        radius: Ink.px(3)
        FocusFrame { shown: choice.visualFocus }
    }
}
