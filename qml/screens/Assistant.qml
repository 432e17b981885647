// SPDX-License-Identifier: GPL-3.0-or-later
// The first start of a counter: one page a question, each of which can be passed over.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

Item {
    id: screen
    required property Desk desk
    readonly property FirstStart start: desk.firstStart
    signal emergency

    ColumnLayout {
        anchors { fill: parent; margins: Ink.px(48); topMargin: Ink.px(36); bottomMargin: Ink.px(24) }
        spacing: Ink.px(16)

        RowLayout {
            Layout.fillWidth: true
            Layout.fillHeight: false  // a layout in a layout would take what is left
            spacing: Ink.room
            Title { objectName: "start_title"; Layout.fillWidth: true; text: screen.start.title }
            Line { Layout.alignment: Qt.AlignTop; topPadding: Ink.px(12); text: screen.start.progress; pale: true }
            Act { objectName: "start_emergency"; Layout.alignment: Qt.AlignTop; urgent: true; text: qsTr("Emergency"); onClicked: screen.emergency() }
        }
        Prose { Layout.fillWidth: true; text: screen.desk.back.intro; font.pixelSize: Ink.px(20) }
        Flickable {
            id: page
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            contentHeight: form.implicitHeight
            boundsBehavior: Flickable.StopAtBounds
            ScrollBar.vertical: Bar {}
            SettingsForm { id: form; width: page.width - Ink.px(16); back: screen.desk.back; acts: false }
        }
        Prose { objectName: "start_says"; Layout.fillWidth: true; visible: text.length > 0; text: screen.start.last ? screen.desk.back.says : ""; color: Ink.accent }
        Prose { Layout.fillWidth: true; text: qsTr("All of this can be changed later, in the Back room."); font.pixelSize: Ink.small }
        RowLayout {
            Layout.fillWidth: true
            Layout.fillHeight: false
            spacing: Ink.px(10)
            Act { objectName: "start_leave"; implicitHeight: Ink.px(60); text: qsTr("Not now"); onClicked: screen.start.leave() }
            Item { Layout.fillWidth: true }
            Act { objectName: "start_back"; implicitHeight: Ink.px(60); visible: !screen.start.first; text: qsTr("Back"); onClicked: screen.start.back() }
            Act { objectName: "start_next"; implicitHeight: Ink.px(60); main: true; text: screen.start.last ? qsTr("Open the counter") : qsTr("Go on"); onClicked: screen.start.next() }
        }
    }
}
