// SPDX-License-Identifier: GPL-3.0-or-later
// Whose bottle: found as you type, or written down new.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

ColumnLayout {
    id: part
    required property Ticket ticket
    property bool writing: false
    readonly property bool known: ticket.customer.length > 0

    // Whose it is comes first: the keyboard is there already.
    function begin() {
        if (!known && !writing)
            search.forceActiveFocus();
    }
    Connections {
        target: part.ticket
        function onSearchChanged() {
            if (part.ticket.search.length === 0)
                search.text = "";
        }
    }

    spacing: Ink.px(12)

    RowLayout {
        Layout.fillWidth: true
        spacing: Ink.px(12)
        Title { Layout.fillWidth: true; font.pixelSize: part.known ? Ink.px(28) : Ink.title; text: part.known ? part.ticket.customer : qsTr("Whose bottle?") }
        Act {
            objectName: "take_back_card"
            visible: part.known && !part.writing && part.ticket.edited
            text: qsTr("Take it back")
            onClicked: part.ticket.takeBack()
        }
        Act {
            objectName: "edit_customer"
            visible: part.known && !part.writing
            text: qsTr("Edit")
            onClicked: {
                part.writing = true;
                form.edit();
            }
        }
        Act {
            objectName: "change_customer"
            visible: part.known && !part.writing
            text: qsTr("Someone else")
            onClicked: part.ticket.chooseCustomer("")
        }
    }
    Line {
        Layout.fillWidth: true
        visible: part.known && !part.writing && text.length > 0
        text: part.ticket.customerLine
        pale: true
    }
    TwinPart {
        Layout.fillWidth: true
        twin: part.ticket.twin
        shown: part.known && !part.writing
    }
    RowLayout {
        Layout.fillWidth: true
        visible: !part.known
        spacing: Ink.room
        Field {
            id: search
            name: "customer_search"
            Layout.fillWidth: true
            label: qsTr("Name, street or phone")
            onEdited: text => part.ticket.search = text
            onAccepted: part.ticket.acceptSearch(search.text)
        }
        Act {
            objectName: "new_customer"
            Layout.alignment: Qt.AlignBottom
            visible: !part.writing
            text: qsTr("New customer")
            onClicked: {
                part.writing = true;
                form.start(search.text);
            }
        }
    }
    Column {
        Layout.fillWidth: true
        visible: !part.known && !part.writing
        Repeater {
            model: part.ticket.customers
            delegate: RowButton {
                id: found
                required property int index
                required property string customerId
                required property string name
                required property string detail
                objectName: "customer_" + index
                width: part.width
                height: Ink.px(60)
                Accessible.role: Accessible.ListItem
                Accessible.name: name + ", " + detail
                Keys.onReturnPressed: clicked()
                Keys.onEnterPressed: clicked()
                subject: customerId
                onPicked: customer => {
                    part.ticket.chooseCustomer(customer);
                    search.text = "";
                }
                background: Rectangle {
                    color: found.down ? Ink.wash : Ink.paper
                    Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.hair; color: Ink.rule }
                    FocusFrame { shown: found.visualFocus; anchors.margins: Ink.px(1) }
                }
                contentItem: Column {
                    Line { width: parent.width; text: found.name; elide: Text.ElideRight; wrapMode: Text.NoWrap }
                    Line { width: parent.width; text: found.detail; font.pixelSize: Ink.tiny; pale: true; elide: Text.ElideRight; wrapMode: Text.NoWrap }
                }
            }
        }
    }
    CustomerForm {
        id: form
        Layout.fillWidth: true
        visible: part.writing
        ticket: part.ticket
        onDone: part.writing = false
    }
}
