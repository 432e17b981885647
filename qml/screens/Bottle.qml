// SPDX-License-Identifier: GPL-3.0-or-later
// Whose bottle, of which vessel, and how it came.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

Item {
    id: screen
    required property Desk desk
    readonly property Ticket ticket: desk.ticket
    readonly property string code: ticket.code

    function begin() {
        customer.begin();
    }
    onCodeChanged: left.contentY = right.contentY = 0

    RowLayout {
        anchors { fill: parent; margins: Ink.margin; topMargin: Ink.px(24); bottomMargin: Ink.px(16) }
        spacing: Ink.px(44)

        Flickable {
            id: left
            objectName: "bottle_left"
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 1
            contentHeight: who.implicitHeight + Ink.px(16)
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            ScrollBar.vertical: Bar {}
            ColumnLayout {
                id: who
                width: left.width - Ink.px(12)  // beside the bar
                spacing: Ink.px(20)
                CustomerPart { id: customer; Layout.fillWidth: true; ticket: screen.ticket }
                VesselPart { Layout.fillWidth: true; visible: screen.ticket.customer.length > 0; ticket: screen.ticket }
            }
        }

        ColumnLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 1
            spacing: Ink.px(12)
            Flickable {
                id: right
                Layout.fillWidth: true
                Layout.fillHeight: true
                contentHeight: how.implicitHeight + Ink.px(16)
                clip: true
                boundsBehavior: Flickable.StopAtBounds
                ScrollBar.vertical: Bar {}
                SamplePart { id: how; width: right.width - Ink.px(12); ticket: screen.ticket }
            }
            RowLayout {
                Layout.fillWidth: true
                Prose {
                    objectName: "ticket_says"
                    Layout.fillWidth: true
                    text: screen.ticket.says.length > 0 ? screen.ticket.says : screen.ticket.missing
                    font.pixelSize: Ink.small
                }
                Act {
                    objectName: "to_bench"
                    main: true
                    implicitHeight: Ink.px(60)
                    text: qsTr("To the bench")
                    enabled: screen.ticket.code.length > 0
                    onClicked: screen.desk.place = 2
                }
            }
        }
    }
}
