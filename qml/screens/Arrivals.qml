// SPDX-License-Identifier: GPL-3.0-or-later
// Bottles that wait, oldest first, and the quick start of a new one.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Counter

Item {
    id: screen
    required property Desk desk

    ColumnLayout {
        anchors { fill: parent; margins: Ink.margin; topMargin: Ink.px(24) }
        spacing: Ink.px(20)

        RowLayout {
            Layout.fillWidth: true
            spacing: Ink.room
            Title {
                Layout.fillWidth: true
                text: screen.desk.arrivals.count === 0 ? qsTr("No bottle is waiting")
                    : screen.desk.arrivals.count === 1 ? qsTr("One bottle is waiting")
                    : qsTr("%1 bottles are waiting").arg(screen.desk.arrivals.count)
            }
            Field {
                id: label
                name: "label_field"
                Layout.preferredWidth: Ink.px(250)
                label: qsTr("Scan or type a label")
                onAccepted: {
                    screen.desk.scan(text);
                    text = "";
                }
            }
            Act {
                objectName: "new_bottle"
                Layout.alignment: Qt.AlignBottom
                implicitHeight: Ink.px(60)
                main: true
                text: qsTr("New bottle")
                onClicked: screen.desk.startBottle()
            }
        }

        RecordsLine { Layout.fillWidth: true; desk: screen.desk }
        Prose { objectName: "arrivals_says"; visible: text.length > 0; Layout.fillWidth: true; text: screen.desk.says }
        RowLayout {
            Layout.fillWidth: true
            visible: screen.desk.bench.orphanCount.length > 0
            spacing: Ink.room
            Prose { objectName: "arrivals_orphans"; Layout.fillWidth: true; text: screen.desk.bench.orphanCount }
            Act { objectName: "to_orphans"; text: qsTr("To the bench"); onClicked: screen.desk.place = 2 }
        }
        OvernightTests {
            visible: screen.desk.overnights.count > 0
            Layout.fillWidth: true
            tests: screen.desk.overnights
            onOpened: visit => screen.desk.openOvernight(visit)
        }
        Section {
            visible: screen.desk.overnights.count > 0 && screen.desk.arrivals.count > 0
            Layout.fillWidth: true
            text: qsTr("Bottles")
        }
        Item {
            visible: screen.desk.arrivals.count === 0
            Layout.fillWidth: true
            Layout.fillHeight: true
            Prose {
                width: Math.min(parent.width, Ink.px(620))
                font.pixelSize: Ink.large
                text: qsTr("When one is handed over, touch “New bottle”, or scan the label on it. Overnight tests that fall due will stand here too.")
            }
        }

        ListView {
            id: list
            visible: count > 0
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            model: screen.desk.arrivals
            boundsBehavior: Flickable.StopAtBounds
            T.ScrollBar.vertical: Bar {}
            delegate: RowButton {
                id: arrival
                required property int index
                required property string visitId
                required property string code
                required property string who
                required property string vessel
                required property string taken
                required property string standing
                required property bool here

                objectName: "arrival_" + index
                width: list.width
                height: Math.max(Ink.px(76), implicitContentHeight + Ink.px(12))
                Accessible.role: Accessible.ListItem
                Accessible.name: code + ", " + who + ", " + vessel + ", " + taken + ", " + standing
                Keys.onReturnPressed: clicked()
                Keys.onEnterPressed: clicked()
                subject: visitId
                onPicked: visit => screen.desk.openVisit(visit)

                background: Rectangle {
                    color: arrival.down ? Ink.wash : Ink.paper
                    Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.hair; color: Ink.rule }
                    FocusFrame { shown: arrival.visualFocus; anchors.margins: Ink.px(1) }
                }
                contentItem: RowLayout {
                    spacing: Ink.room
                    Line {
                        Layout.preferredWidth: Ink.px(124)
                        Layout.maximumWidth: Ink.px(200)
                        Layout.minimumWidth: Math.min(implicitWidth, Ink.px(200))
                        text: arrival.code
                        strong: true
                        font.pixelSize: Ink.px(20)
                        wrapMode: Text.NoWrap
                        elide: Text.ElideRight
                    }
                    ColumnLayout {
                        Layout.fillWidth: true
                        spacing: 0
                        Line { Layout.fillWidth: true; text: arrival.who }
                        Line { Layout.fillWidth: true; text: arrival.vessel; font.pixelSize: Ink.small; pale: true }
                    }
                    Line {
                        Layout.preferredWidth: Ink.px(190)
                        text: arrival.taken
                        font.pixelSize: Ink.small
                        pale: true
                    }
                    Line {
                        Layout.preferredWidth: Ink.px(220)
                        text: arrival.standing
                        strong: arrival.here
                    }
                }
            }
        }
    }
}
