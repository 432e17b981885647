// SPDX-License-Identifier: GPL-3.0-or-later
// One word of several: the chosen one stands in a filled box and carries a tick.
import QtQuick
import QtQuick.Controls.Basic
import Counter

Button {
    id: choice
    property bool chosen: false
    property real most: Infinity  // wider than this, its words wrap

    implicitHeight: Math.max(Ink.px(48), implicitContentHeight + Ink.px(14))
    // The tick has its place whether it stands there or not: nothing moves under the finger.
    implicitWidth: Math.min(most, Math.max(Ink.px(50), Math.ceil(words.advanceWidth) + leftPadding + rightPadding + Ink.px(2)))
    leftPadding: Ink.px(20)
    rightPadding: Ink.px(12)
    padding: 0
    font.family: Ink.sans
    font.pixelSize: Ink.small
    Accessible.role: Accessible.RadioButton
    Accessible.name: text
    Accessible.checkable: true
    Accessible.checked: chosen

    TextMetrics { id: words; font: choice.font; text: choice.text }
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()

    contentItem: Text {
        text: choice.text
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
        Text {
            visible: choice.chosen
            anchors { left: parent.left; leftMargin: Ink.px(4); verticalCenter: parent.verticalCenter }
            text: "✓"
            font: choice.font
            color: Ink.paper
            Accessible.ignored: true
        }
        FocusFrame { shown: choice.visualFocus }
    }
}
