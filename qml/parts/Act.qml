// SPDX-License-Identifier: GPL-3.0-or-later
// Something to do. `main` is the one thing a page is for: filled with ink.
import QtQuick
import QtQuick.Templates as T
import Counter

T.Button {
    id: act
    property bool main: false
    property bool urgent: false  // the accent, for emergencies only
    readonly property color tone: urgent ? Ink.accent : Ink.ink

    implicitHeight: Ink.touch
    implicitWidth: Math.max(Ink.px(96), implicitContentWidth + Ink.px(40))
    padding: 0
    font.family: Ink.sans
    font.pixelSize: Ink.body
    font.weight: Font.DemiBold
    opacity: 1
    Accessible.name: text

    Keys.onReturnPressed: if (enabled) clicked()
    Keys.onEnterPressed: if (enabled) clicked()

    contentItem: Text {
        text: act.text
        font: act.font
        color: !act.enabled ? Ink.pale : (act.main !== act.down) ? Ink.paper : act.tone
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        elide: Text.ElideRight
    }
    background: Rectangle {
        color: !act.enabled ? Ink.wash : (act.main !== act.down) ? act.tone : Ink.paper
        border.color: act.enabled ? act.tone : Ink.rule
        border.width: act.enabled ? Ink.stroke : Ink.hair
        radius: Ink.px(3)
        FocusFrame { shown: act.visualFocus }
    }
}
