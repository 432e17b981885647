// SPDX-License-Identifier: GPL-3.0-or-later
// What to do at once; the shop's own numbers in large figures. One touch from everywhere.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

Popup {
    id: popup
    required property Desk desk
    readonly property PlanDesk printing: desk.plan

    objectName: "emergency_page"
    modal: true
    focus: true
    padding: 0
    width: parent ? parent.width : 0
    height: parent ? parent.height : 0
    closePolicy: Popup.CloseOnEscape
    background: Rectangle {
        color: Ink.paper
        border.color: Ink.accent
        border.width: Ink.px(6)
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        RowLayout {
            Layout.fillWidth: true
            Layout.margins: Ink.margin
            Layout.bottomMargin: Ink.px(12)
            spacing: Ink.px(40)
            Title { text: qsTr("Emergency"); font.pixelSize: Ink.display; color: Ink.accent }
            Repeater {
                model: popup.desk.emergencyNumbers  // {name, number}
                delegate: Column {
                    id: call
                    required property var modelData
                    Line { text: call.modelData.name; font.pixelSize: Ink.small; pale: true }
                    Line { text: call.modelData.number; font.pixelSize: Ink.px(32); strong: true }
                }
            }
            Item { Layout.fillWidth: true }
            Act {
                objectName: "emergency_print"
                implicitHeight: Ink.px(60)
                enabled: !popup.printing.busy && !popup.printing.printWaits
                text: qsTr("Print this card")
                onClicked: popup.printing.printPaper("emergency_card")
            }
            Act {
                focus: true
                objectName: "emergency_close"
                implicitHeight: Ink.px(60)
                text: qsTr("Close")
                onClicked: popup.close()
            }
        }
        GridLayout {
            Layout.fillWidth: true
            Layout.margins: Ink.margin
            Layout.topMargin: 0
            columns: 2
            columnSpacing: Ink.px(44)
            rowSpacing: Ink.px(18)
            Repeater {
                model: popup.desk.emergencyCards  // {title, lines}
                delegate: Column {
                    id: card
                    required property var modelData
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.alignment: Qt.AlignTop
                    spacing: Ink.px(4)
                    Rectangle { width: parent.width; height: Ink.px(3); color: Ink.accent }
                    Line { width: parent.width; text: card.modelData.title; strong: true; font.pixelSize: Ink.px(25) }
                    Repeater {
                        model: card.modelData.lines
                        delegate: Prose {
                            required property string modelData
                            width: card.width
                            text: modelData
                            font.pixelSize: Ink.px(22)
                        }
                    }
                }
            }
        }
        Item { Layout.fillHeight: true }
        Prose {
            objectName: "emergency_says"
            Layout.fillWidth: true
            Layout.leftMargin: Ink.margin
            Layout.rightMargin: Ink.margin
            visible: text.length > 0
            text: popup.printing.printSays.length > 0 ? popup.printing.printSays : popup.printing.cardSays
            font.pixelSize: Ink.small
            color: Ink.accent
            wrapMode: Text.WrapAtWordBoundaryOrAnywhere
        }
        Prose {
            Layout.fillWidth: true
            Layout.margins: Ink.margin
            Layout.topMargin: 0
            font.pixelSize: Ink.small
            text: qsTr("The product’s label and its safety data sheet go before anything written here.")
        }
    }
}
