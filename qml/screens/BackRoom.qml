// SPDX-License-Identifier: GPL-3.0-or-later
// Behind the counter: the instrument's line, the shop, the records, the shelf, the methods, reagents.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

Item {
    id: screen
    required property Desk desk
    readonly property BackDesk back: desk.back

    RowLayout {
        anchors { fill: parent; margins: Ink.margin; topMargin: Ink.px(24); bottomMargin: Ink.px(16) }
        spacing: Ink.px(40)

        ColumnLayout {
            Layout.fillHeight: true
            Layout.preferredWidth: Ink.px(190)
            spacing: Ink.px(2)
            Title {
                Layout.preferredWidth: Ink.px(190)
                text: qsTr("Back room")
                bottomPadding: Ink.px(14)
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: Ink.px(20)
                wrapMode: Text.NoWrap
            }
            Flickable {
                id: shelves
                objectName: "back_shelves"
                Layout.fillHeight: true
                Layout.preferredWidth: Ink.px(190)
                clip: true
                contentHeight: shelfColumn.implicitHeight
                boundsBehavior: Flickable.StopAtBounds
                ScrollBar.vertical: Bar {}
                Column {
                    id: shelfColumn
                    spacing: Ink.px(2)
                    Repeater {
                        model: screen.back.groups
                        delegate: ShelfGroup {
                            required property var modelData
                            width: Ink.px(190)
                            back: screen.back
                            key: modelData.key
                            word: modelData.word
                        }
                    }
                }
            }
        }
        Flickable {
            id: page
            objectName: "back_page"
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            contentHeight: column.implicitHeight
            boundsBehavior: Flickable.StopAtBounds
            ScrollBar.vertical: Bar {}

            ColumnLayout {
                id: column
                width: page.width - Ink.px(16)
                spacing: Ink.px(12)
                Title { objectName: "back_title"; Layout.fillWidth: true; text: screen.back.title }
                Prose {
                    Layout.fillWidth: true
                    text: screen.back.intro
                }
                SettingsForm { Layout.fillWidth: true; visible: screen.back.fields.count > 0 || screen.back.shelf === "twins"; back: screen.back }
                ChartPage { Layout.fillWidth: true; visible: screen.back.shelf === "charts"; charts: screen.desk.charts }
                ListView {
                    id: rows
                    objectName: "back_list"
                    Layout.fillWidth: true
                    Layout.preferredHeight: contentHeight
                    interactive: false
                    model: screen.back.rows
                    delegate: Item {
                        id: line
                        required property string name
                        required property string detail
                        required property string number
                        width: rows.width - Ink.px(12)
                        height: Math.max(Ink.px(52), texts.implicitHeight + Ink.px(14))
                        Accessible.role: Accessible.ListItem
                        Accessible.name: name + ", " + number + ", " + detail
                        Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.hair; color: Ink.rule }
                        RowLayout {
                            id: texts
                            anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
                            spacing: Ink.room
                            Line { Layout.preferredWidth: Ink.px(230); text: line.name }
                            Line { Layout.fillWidth: true; text: line.detail; font.pixelSize: Ink.small; pale: true }
                            Line { Layout.maximumWidth: Ink.px(250); text: line.number; horizontalAlignment: Text.AlignRight }
                        }
                    }
                }
            }
        }
    }
}
