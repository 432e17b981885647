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
    property bool editing: false  // a card that is known
    signal done

    function edit() {
        editing = true;
        show(ticket.beginEdit());
        nameField.forceActiveFocus();
    }

    function show(card: var) {
        nameField.text = card.name;
        phoneField.text = card.phone;
        streetField.text = card.street;
        emailField.text = card.email;
        language = card.language;
        units = card.units;
    }

    function start(text: string) {
        editing = false;
        nameField.text = text;
        units = ticket.usualUnits;
        language = ticket.usualLanguage;
        nameField.forceActiveFocus();
    }

    spacing: Ink.px(12)

    RowLayout {
        Layout.fillWidth: true
        spacing: Ink.room
        Field { id: nameField; name: "new_name"; Layout.fillWidth: true; label: qsTr("Name") }
        Field { id: emailField; name: "new_email"; Layout.fillWidth: true; visible: form.editing; label: qsTr("Email"); inputMethodHints: Qt.ImhEmailCharactersOnly }
    }
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
                const card = {
                    name: nameField.text, phone: phoneField.text, street: streetField.text, email: emailField.text,
                    language: form.language, units: form.units
                };
                if (form.editing && !form.ticket.editCustomer(card))
                    return;
                if (!form.editing)
                    form.ticket.addCustomer(card);
                phoneField.text = "";
                streetField.text = "";
                emailField.text = "";
                form.done();
            }
        }
        Act { objectName: "drop_customer"; text: qsTr("Cancel"); onClicked: form.done() }
    }
}
