// SPDX-License-Identifier: GPL-3.0-or-later
// The records cannot be read: what can be done about it.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Counter

ApplicationWindow {
    id: window
    required property RescueDesk desk

    title: "Brimline"
    color: Ink.paper
    font.family: Ink.sans
    Binding { target: Ink; property: "scale"; value: Ink.fitting(window.width, window.height) }

    ColumnLayout {
        anchors { fill: parent; margins: Ink.px(64) }
        spacing: Ink.px(24)
        Title { Layout.fillWidth: true; text: qsTr("The records cannot be read") }
        Prose { objectName: "rescue_why"; Layout.fillWidth: true; text: window.desk.why; font.pixelSize: Ink.px(20) }
        Prose {
            Layout.fillWidth: true
            text: qsTr("The file is set aside under another name, whatever you choose: nothing in it is lost for somebody who can mend it.")
        }
        Prose { Layout.fillWidth: true; visible: text.length > 0; text: window.desk.backupLine }
        RowLayout {
            spacing: Ink.room
            Act {
                objectName: "rescue_bring"
                visible: window.desk.backupLine.length > 0
                main: true
                implicitHeight: Ink.px(60)
                text: qsTr("Bring the backup back")
                onClicked: window.desk.bringBack()
            }
            Act {
                objectName: "rescue_empty"
                implicitHeight: Ink.px(60)
                text: qsTr("Begin with empty records")
                onClicked: window.desk.beginEmpty()
            }
        }
        Item { Layout.fillHeight: true }
    }
}
