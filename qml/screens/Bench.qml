// SPDX-License-Identifier: GPL-3.0-or-later
// Readings come in here: by themselves from the instrument, or typed on the pad.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

Item {
    id: screen
    required property Desk desk
    readonly property BenchDesk bench: desk.bench

    RowLayout {
        anchors { fill: parent; margins: Ink.margin; topMargin: Ink.px(24); bottomMargin: Ink.px(16) }
        spacing: Ink.px(32)

        ColumnLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            spacing: Ink.px(12)

            Title { Layout.fillWidth: true; text: screen.bench.headline }
            Prose {
                objectName: "due_line"
                Layout.fillWidth: true
                visible: text.length > 0
                text: screen.bench.dueLine
            }
            TroubleBanner { Layout.fillWidth: true; text: screen.bench.trouble }
            OrphanLine { Layout.fillWidth: true; bench: screen.bench }

            ListView {
                id: list
                objectName: "reading_list"
                Layout.fillWidth: true
                Layout.fillHeight: true
                clip: true
                model: screen.bench.readings
                boundsBehavior: Flickable.StopAtBounds
                ScrollBar.vertical: ScrollBar {}
                delegate: ReadingRow {
                    id: reading
                    width: list.width
                    onClicked: screen.bench.choose(reading.analyte)
                }
            }
            RowLayout {
                Layout.fillWidth: true
                spacing: Ink.room
                Line {
                    Layout.fillWidth: true
                    text: screen.bench.instrumentLine
                    font.pixelSize: Ink.small
                    pale: true
                }
                Act {
                    objectName: "open_overnight"
                    visible: screen.desk.overnight.mayTest
                    text: screen.desk.overnight.openWord
                    onClicked: screen.desk.overnight.shown = true
                }
            }
        }

        PadPanel {
            bench: screen.bench
            Layout.preferredWidth: Ink.px(380)
            Layout.fillHeight: true
            onNext: screen.desk.place = 3
        }
    }
}
