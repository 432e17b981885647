// SPDX-License-Identifier: GPL-3.0-or-later
// A new customer: a name is enough, the rest helps.
import QtQuick
import QtQuick.Layouts
import Counter

ColumnLayout {
    id: form
    required property Ticket ticket
    property string units: "us"
    property string language: "en"
    signal done

    function start(text: string) {
        nameField.text = text;
        units = ticket.usualUnits;
        language = ticket.usualLanguage;
        nameField.forceActiveFocus();
    }

    spacing: Ink.px(12)

    Field { id: nameField; name: "new_name"; Layout.fillWidth: true; label: qsTr("Name") }
    RowLayout {
        Layout.fillWidth: true
        spacing: Ink.room
        Field { id: phoneField; name: "new_phone"; Layout.fillWidth: true; label: qsTr("Phone"); inputMethodHints: Qt.ImhDialableCharactersOnly }
        Field { id: streetField; name: "new_street"; Layout.fillWidth: true; label: qsTr("Street") }
    }
    ChoiceRow {
        Layout.fillWidth: true
        label: qsTr("Reads")
        name: "new_language"
        options: form.ticket.options("language")
        current: form.language
        onPicked: key => form.language = key
    }
    ChoiceRow {
        Layout.fillWidth: true
        label: qsTr("Measures in")
        name: "new_units"
        options: form.ticket.options("units")
        current: form.units
        onPicked: key => form.units = key
    }
    RowLayout {
        spacing: Ink.room
        Act {
            objectName: "save_customer"
            main: true
            text: qsTr("Write down")
            enabled: nameField.text.trim().length > 0
            onClicked: {
                form.ticket.addCustomer({
                    name: nameField.text, phone: phoneField.text, street: streetField.text,
                    language: form.language, units: form.units
                });
                phoneField.text = "";
                streetField.text = "";
                form.done();
            }
        }
        Act { objectName: "drop_customer"; text: qsTr("Leave it"); onClicked: form.done() }
    }
}
