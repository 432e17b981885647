// SPDX-License-Identifier: GPL-3.0-or-later
// A line of plain words or numbers.
import QtQuick
import Counter

Text {
    property bool pale: false
    property bool strong: false

    font.family: Ink.sans
    font.pixelSize: Ink.body
    font.weight: strong ? Font.DemiBold : Font.Normal
    color: pale ? Ink.pale : Ink.ink
    textFormat: Text.PlainText
    wrapMode: Text.WordWrap
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
