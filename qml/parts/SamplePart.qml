// SPDX-License-Identifier: GPL-3.0-or-later
// When it was taken, why it came, and what the customer has seen.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Counter

ColumnLayout {
    id: part
    required property Ticket ticket
    readonly property var facts: ticket.facts

    spacing: Ink.px(18)

    ColumnLayout {
        Layout.fillWidth: true
        spacing: Ink.px(10)
        Section { Layout.fillWidth: true; text: qsTr("The bottle") }
        ChoiceRow {
            Layout.fillWidth: true
            label: part.ticket.takenLine
            name: "taken"
            options: part.ticket.options("taken")
            current: part.facts.taken
            onPicked: key => part.ticket.setFact("taken", key)
        }
        ChoiceRow {
            Layout.fillWidth: true
            label: part.ticket.question("sampled_at")
            name: "sampled_at"
            options: part.ticket.options("sampled_at")
            current: part.facts.sampled_at
            onPicked: key => part.ticket.setFact("sampled_at", key)
        }
        ChoiceRow {
            Layout.fillWidth: true
            label: part.ticket.question("occasion")
            name: "occasion"
            options: part.ticket.options("occasion")
            current: part.facts.occasion
            onPicked: key => part.ticket.setFact("occasion", key)
        }
        Field {
            name: "sample_temperature"
            Layout.preferredWidth: Ink.px(320)
            label: part.facts ? part.ticket.question("sample_temperature") : ""  // its unit goes with whose it is
            value: part.facts.sample_temperature ?? ""
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            of: part.ticket.code
            fault: part.ticket.refused === "sample_temperature" ? part.ticket.refusedWhy : ""
            onWritten: text => part.ticket.setFact("sample_temperature", text)
        }
    }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: Ink.px(10)
        Section { Layout.fillWidth: true; text: qsTr("What they have seen") }
        Repeater {
            model: ["signs", "incident"]
            delegate: ChoiceRow {
                id: seen
                required property string modelData
                Layout.fillWidth: true
                label: part.ticket.question(modelData)
                name: modelData
                options: part.ticket.options(modelData)
                current: part.facts[modelData]
                onPicked: key => part.ticket.setFact(seen.modelData, key)
            }
        }
    }
}
