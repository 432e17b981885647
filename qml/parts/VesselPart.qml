// SPDX-License-Identifier: GPL-3.0-or-later
// Which vessel: one of the customer's, or one written down new; then what is known of it.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Counter

ColumnLayout {
    id: part
    required property Ticket ticket
    readonly property var facts: ticket.facts
    readonly property string workedOut: part.facts.volume_how_word ?? ""
    readonly property bool known: part.facts.vessel !== undefined

    spacing: Ink.px(14)

    Section { Layout.fillWidth: true; text: qsTr("The vessel") }
    ChoiceRow {
        Layout.fillWidth: true
        visible: options.length > 0
        name: "vessel"
        options: part.ticket.vessels
        current: part.facts.vessel
        onPicked: key => part.ticket.chooseVessel(key)
    }
    Act {
        objectName: "new_vessel"
        text: part.ticket.vessels.length > 0 ? qsTr("Another vessel") : qsTr("Write down the vessel")
        onClicked: part.ticket.chooseVessel("new")
    }
    Component {
        id: factRow
        ChoiceRow {
            id: fact
            required property string modelData
            Layout.fillWidth: true
            label: part.ticket.question(modelData)
            name: modelData
            options: part.ticket.options(modelData)
            current: part.facts[modelData]
            onPicked: key => part.ticket.setFact(fact.modelData, key)
        }
    }
    Repeater {
        model: part.known ? ["kind"] : []
        delegate: factRow
    }
    RowLayout {
        visible: part.known
        Layout.fillWidth: true
        spacing: Ink.room
        Field {
            name: "volume"
            Layout.fillWidth: true
            label: part.facts ? part.ticket.question("volume") : ""  // its unit goes with whose it is
            value: part.facts.volume ?? ""
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            of: part.ticket.code
            fault: part.ticket.refused === "volume" ? part.ticket.refusedWhy : ""
            onWritten: text => part.ticket.setFact("volume", text)
        }
        Field {
            name: "water_temperature"
            Layout.fillWidth: true
            label: part.facts ? part.ticket.question("water_temperature") : ""  // its unit goes with whose it is
            value: part.facts.water_temperature ?? ""
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            of: part.ticket.code
            fault: part.ticket.refused === "water_temperature" ? part.ticket.refusedWhy : ""
            onWritten: text => part.ticket.setFact("water_temperature", text)
        }
    }
    ChoiceRow {
        visible: part.known
        Layout.fillWidth: true
        label: part.ticket.question("volume_how")
        name: "volume_how"
        options: part.workedOut.length >= 0 ? part.ticket.options("volume_how") : []  // that is one of them
        current: part.facts.volume_how
        onPicked: key => part.ticket.setFact("volume_how", key)
    }
    VolumePart { Layout.fillWidth: true; visible: part.known; form: part.ticket.volume }
    Repeater {  // after the volume: without that there are no doses
        model: part.known ? ["sanitizer", "use", "surface", "place", "in_ground"] : []
        delegate: factRow
    }
}
