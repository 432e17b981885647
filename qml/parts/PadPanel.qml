// SPDX-License-Identifier: GPL-3.0-or-later
// Typing a reading: which, how it was read, the number, keep.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Counter

Item {
    id: panel
    required property BenchDesk bench
    readonly property var how: bench.how
    signal next
    signal settled  // a choice was made: digits and Return are the pad's again

    function pick(fact: string, key: string) {
        bench.setHow(fact, key);
        settled();
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Ink.px(8)

        RowLayout {
            Layout.fillWidth: true
            Layout.minimumHeight: Ink.px(62)
            spacing: Ink.px(10)
            ColumnLayout {
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignBottom
                spacing: 0
                Line {
                    objectName: "pad_name"
                    Layout.fillWidth: true
                    text: panel.bench.analyteName
                    strong: true
                    font.pixelSize: Ink.px(20)
                }
                Line { text: panel.bench.unit; pale: true; font.pixelSize: Ink.small }
            }
            Line {
                objectName: "pad_typed"
                Layout.alignment: Qt.AlignBottom
                Layout.rightMargin: Ink.px(4)
                Layout.maximumWidth: Ink.px(170)
                horizontalAlignment: Text.AlignRight
                text: panel.bench.typed.length > 0 ? panel.bench.typed.replace(".", Qt.locale().decimalPoint) : qsTr("type the number")
                pale: panel.bench.typed.length === 0
                font.pixelSize: panel.bench.typed.length > 0 ? Ink.display : Ink.small
                lineHeight: panel.bench.typed.length > 0 ? 0.9 : 1
            }
        }
        Rectangle { Layout.fillWidth: true; implicitHeight: Ink.stroke; color: Ink.ink }
        ChoiceRow {
            Layout.fillWidth: true
            name: "method"
            options: panel.bench.methods
            current: panel.how.method
            onPicked: key => panel.pick("method", key)
        }
        NumberPad {
            id: keys
            // Longer words beneath and above take from the keys, down to the least a wet finger hits.
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: 4 * Ink.px(48) + 3 * spacing
            Layout.preferredHeight: 4 * Ink.px(60) + 3 * spacing
            Layout.maximumHeight: 4 * Ink.px(60) + 3 * spacing
            keyHeight: (height - 3 * spacing) / 4
            onKey: key => panel.bench.press(key)
        }
        ChoiceRow {
            Layout.fillWidth: true
            name: "clip"
            options: panel.bench.clips
            current: panel.how.clip
            onPicked: key => panel.pick("clip", key)
        }
        ChoiceRow {
            Layout.fillWidth: true
            visible: options.length > 0
            name: "dilution"
            options: panel.bench.dilutions
            current: panel.how.dilution
            onPicked: key => panel.pick("dilution", key)
        }
        Prose {
            objectName: "pad_says"
            Layout.fillWidth: true
            visible: text.length > 0
            text: panel.bench.says
            font.pixelSize: Ink.small
            color: Ink.accent
        }
        Item { Layout.fillHeight: true }
        RowLayout {
            Layout.fillWidth: true
            spacing: Ink.px(10)
            Act {
                objectName: "pad_enter"
                Layout.fillWidth: true
                implicitHeight: Ink.px(54)
                main: enabled || !findings.main
                enabled: panel.bench.canKeep
                text: qsTr("Keep")
                onClicked: panel.bench.keep()
            }
            Act {
                id: findings
                objectName: "to_findings"
                implicitHeight: Ink.px(54)
                main: panel.bench.allKept && !panel.bench.canKeep
                enabled: panel.bench.anyKept
                text: qsTr("Findings")
                onClicked: panel.next()
            }
        }
    }
}
