// SPDX-License-Identifier: GPL-3.0-or-later
// A sentence to be read: the serif face, a little air between the lines.
import QtQuick
import Counter

Text {
    font.family: Ink.serif
    font.pixelSize: Ink.body
    color: Ink.ink
    lineHeight: 1.15
    textFormat: Text.PlainText
    wrapMode: Text.WordWrap
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
