// SPDX-License-Identifier: GPL-3.0-or-later
// Something is wrong on the line: said in a sentence, between two heavy rules.
import QtQuick
import QtQuick.Layouts
import Counter

Item {
    id: banner
    property string text
    property string says: qsTr("The instrument")

    visible: text.length > 0
    implicitHeight: visible ? row.implicitHeight + Ink.px(24) : 0
    Accessible.role: Accessible.AlertMessage
    Accessible.name: text

    Rectangle { width: parent.width; height: Ink.px(3); color: Ink.accent }
    RowLayout {
        id: row
        anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
        spacing: Ink.room
        Line { text: banner.says; strong: true; color: Ink.accent }
        Prose { objectName: "trouble_text"; Layout.fillWidth: true; text: banner.text }
    }
    Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.px(3); color: Ink.accent }
}
