// SPDX-License-Identifier: GPL-3.0-or-later
// The numbers behind the words: each reading with its error, how it was read, and who says how far that spreads.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Counter

Flickable {
    id: page
    property var numbers: []  // {name, number, detail}
    property string about: ""  // of them all
    readonly property bool narrow: width < Ink.px(800)
    readonly property real first: Ink.px(narrow ? 130 : 190)
    readonly property real second: Ink.px(narrow ? 180 : 230)

    clip: true
    contentHeight: column.height
    boundsBehavior: Flickable.StopAtBounds
    ScrollBar.vertical: Bar {}

    Column {
        id: column
        width: page.width - Ink.px(16)
        Prose {
            width: parent.width
            bottomPadding: Ink.px(10)
            font.pixelSize: Ink.small
            text: (page.about.length > 0 ? page.about + " " : "") + qsTr("Behind ± stands one standard deviation: of a hundred such readings about sixty-eight lie that near.")
        }
        Repeater {
            model: page.numbers
            delegate: Item {
                id: entry
                required property var modelData
                width: column.width
                height: Math.max(title.implicitHeight, number.implicitHeight, detail.implicitHeight) + Ink.px(16)
                Accessible.role: Accessible.ListItem
                Accessible.name: modelData.name + ", " + modelData.number + ", " + modelData.detail

                Rectangle { width: parent.width; height: Ink.hair; color: Ink.rule }
                Line { id: title; y: Ink.px(8); width: page.first; text: entry.modelData.name; strong: true; Accessible.ignored: true }
                Line { id: number; x: page.first + Ink.px(16); y: Ink.px(8); width: page.second; text: entry.modelData.number; Accessible.ignored: true }
                Line { id: detail; x: page.first + page.second + Ink.px(32); y: Ink.px(8); width: parent.width - x; text: entry.modelData.detail; font.pixelSize: Ink.small; pale: true; Accessible.ignored: true }
            }
        }
    }
}
