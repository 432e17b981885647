// SPDX-License-Identifier: GPL-3.0-or-later
// One reading at the end of the plan: as told, and as it would be.
import QtQuick
import Counter

Item {
    id: row
    required property string name
    required property string told
    required property string tried
    property bool heading: false

    implicitHeight: Math.max(title.implicitHeight, was.implicitHeight, becomes.implicitHeight) + Ink.px(6)
    Accessible.role: Accessible.ListItem
    Accessible.name: name + ", " + told + ", " + tried

    Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.hair; color: row.heading ? Ink.ink : Ink.rule }
    Line { id: title; width: parent.width * 0.5; text: row.name; font.pixelSize: Ink.small; pale: row.heading }
    Line { id: was; x: parent.width * 0.5; width: parent.width * 0.25; text: row.told; font.pixelSize: Ink.small; pale: row.heading; horizontalAlignment: Text.AlignRight }
    Line { id: becomes; x: parent.width * 0.75; width: parent.width * 0.25; text: row.tried; font.pixelSize: Ink.small; pale: row.heading; strong: !row.heading; horizontalAlignment: Text.AlignRight }
}
