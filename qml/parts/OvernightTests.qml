// SPDX-License-Identifier: GPL-3.0-or-later
// Overnight tests that go on: when each is due, and whom to call once the result is in.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Counter

Column {
    id: part
    required property var tests
    signal opened(string visit)

    Section { width: part.width; text: qsTr("Overnight tests") }
    Repeater {
        model: part.tests
        delegate: RowButton {
            id: row
            required property int index
            required property string visitId
            required property string code
            required property string who
            required property string due
            required property bool calls
            required property string phone
            required property string result
            readonly property var words: [code, who, due, phone, result]

            objectName: "overnight_" + index
            width: part.width
            height: Ink.px(76)
            Accessible.role: Accessible.ListItem
            Accessible.name: words.filter(text => text.length > 0).join(", ")
            Keys.onReturnPressed: clicked()
            Keys.onEnterPressed: clicked()
            subject: visitId
            onPicked: visit => part.opened(visit)

            background: Rectangle {
                color: row.down ? Ink.wash : Ink.paper
                Rectangle { visible: row.calls; width: Ink.px(4); height: parent.height; color: Ink.accent }
                Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.hair; color: Ink.rule }
                FocusFrame { shown: row.visualFocus; anchors.margins: Ink.px(1) }
            }
            contentItem: RowLayout {
                spacing: Ink.room
                Line { Layout.leftMargin: Ink.px(12); Layout.preferredWidth: Ink.px(112); text: row.code; strong: true; font.pixelSize: Ink.px(20) }
                ColumnLayout {
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    spacing: 0
                    Line { Layout.fillWidth: true; text: row.who; elide: Text.ElideRight; wrapMode: Text.NoWrap }
                    Line { Layout.fillWidth: true; visible: text.length > 0; text: row.result; font.pixelSize: Ink.small; pale: true; elide: Text.ElideRight; wrapMode: Text.NoWrap }
                }
                Line {
                    objectName: "overnight_phone_" + row.index
                    visible: row.phone.length > 0
                    text: qsTr("call %1").arg(row.phone)
                    font.pixelSize: Ink.px(20)
                    wrapMode: Text.NoWrap
                }
                Line {
                    objectName: "overnight_due_" + row.index
                    Layout.preferredWidth: Ink.px(300)
                    horizontalAlignment: Text.AlignRight
                    text: row.due
                    strong: row.calls
                }
            }
        }
    }
}
