// SPDX-License-Identifier: GPL-3.0-or-later
// Shows where the keyboard is: a frame in the accent, outside what it frames.
import QtQuick
import Counter

Rectangle {
    property bool shown: false

    anchors.fill: parent
    anchors.margins: -Ink.px(4)
    visible: shown
    color: Ink.clear
    border.color: Ink.accent
    border.width: Ink.px(3)
    radius: Ink.px(4)
}
