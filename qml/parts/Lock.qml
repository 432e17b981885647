// SPDX-License-Identifier: GPL-3.0-or-later
// The counter is closed: who is there, and their PIN. Emergency stays one touch away.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

Rectangle {
    id: screen
    required property Desk desk
    readonly property LockDesk lock: desk.lock
    signal emergency
    signal settled  // a name is chosen: the keyboard goes to the PIN

    function type(event: var) {
        if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter)
            lock.enter();
        else
            lock.press(event.key === Qt.Key_Backspace ? "back" : event.text);
    }

    Keys.onPressed: event => {
        if (event.key === Qt.Key_Tab || event.key === Qt.Key_Backtab)
            event.accepted = false;
        else
            type(event);
    }
    objectName: "lock_page"
    color: Ink.paper
    Accessible.role: Accessible.Dialog
    Accessible.name: qsTr("The counter is closed")

    MouseArea { anchors.fill: parent }  // nothing below is touched

    ColumnLayout {
        anchors { fill: parent; margins: Ink.px(48); topMargin: Ink.px(36); bottomMargin: Ink.px(24) }
        spacing: Ink.px(20)
        RowLayout {
            Layout.fillWidth: true
            spacing: Ink.room
            Title { Layout.fillWidth: true; text: qsTr("Who is at the counter?") }
            Line { text: screen.desk.shop; pale: true }
            Act { objectName: "lock_emergency"; urgent: true; text: qsTr("Emergency"); onClicked: screen.emergency() }
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            spacing: Ink.px(64)
            Flickable {
                id: names
                Layout.fillWidth: true
                Layout.fillHeight: true
                clip: true
                contentHeight: list.implicitHeight
                boundsBehavior: Flickable.StopAtBounds
                ScrollBar.vertical: Bar {}
                Column {
                    id: list
                    width: names.width - Ink.px(16)
                    Repeater {
                        model: screen.lock.people
                        delegate: AbstractButton {
                            id: person
                            required property var modelData
                            required property int index
                            readonly property bool here: screen.lock.chosen === modelData.key
                            objectName: "lock_person_" + index
                            width: list.width
                            height: Ink.px(64)
                            text: modelData.word
                            Accessible.role: Accessible.RadioButton
                            Accessible.name: text
                            Accessible.checked: here
                            Keys.onReturnPressed: clicked()
                            Keys.onEnterPressed: clicked()
                            onClicked: {
                                screen.lock.choose(modelData.key);
                                screen.settled();
                            }
                            background: Rectangle {
                                color: person.down ? Ink.wash : Ink.paper
                                Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: person.here ? Ink.px(3) : Ink.hair; color: person.here ? Ink.ink : Ink.rule }
                                FocusFrame { shown: person.visualFocus; anchors.margins: Ink.px(1) }
                            }
                            contentItem: Line { text: person.text; strong: person.here; font.pixelSize: Ink.large; verticalAlignment: Text.AlignVCenter; Accessible.ignored: true }
                        }
                    }
                }
            }
            ColumnLayout {
                Layout.fillWidth: false
                Layout.preferredWidth: Ink.px(360)
                Layout.maximumWidth: Ink.px(360)
                Layout.alignment: Qt.AlignTop
                spacing: Ink.px(16)
                Line {
                    objectName: "lock_typed"
                    Layout.fillWidth: true
                    text: screen.lock.chosen.length === 0 ? qsTr("Choose a name, then type the PIN.")
                        : screen.lock.busy ? qsTr("One moment ...")
                        : screen.lock.typed === 0 ? qsTr("PIN") : "•".repeat(screen.lock.typed)
                    font.pixelSize: Ink.large
                    Accessible.name: qsTr("%1 digits typed").arg(screen.lock.typed)
                }
                NumberPad {
                    Layout.fillWidth: true
                    point: false
                    onKey: key => screen.lock.press(key)
                }
                Act {
                    objectName: "lock_enter"
                    Layout.fillWidth: true
                    implicitHeight: Ink.px(60)
                    main: true
                    enabled: screen.lock.chosen.length > 0 && screen.lock.typed > 0 && !screen.lock.busy
                    text: qsTr("Open the counter")
                    onClicked: screen.lock.enter()
                }
                Prose { objectName: "lock_says"; Layout.fillWidth: true; text: screen.lock.says }
            }
        }
    }
}
