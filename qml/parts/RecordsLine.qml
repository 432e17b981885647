// SPDX-License-Identifier: GPL-3.0-or-later
// The shared records are away, or another counter changed the same: said, and chosen here.
import QtQuick
import QtQuick.Layouts
import Counter

Item {
    id: records
    required property Desk desk
    readonly property bool asks: desk.choiceAsked.length > 0

    visible: asks || desk.away.length > 0
    implicitHeight: visible ? row.implicitHeight + Ink.px(24) : 0
    Accessible.role: Accessible.AlertMessage
    Accessible.name: words.text

    Rectangle { width: parent.width; height: Ink.hair; color: Ink.rule }
    RowLayout {
        id: row
        anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
        spacing: Ink.room
        Prose {
            id: words
            objectName: "records_text"
            Layout.fillWidth: true
            text: records.asks ? records.desk.choiceAsked : records.desk.away
        }
        Act {
            objectName: "choice_ours"
            visible: records.asks
            text: qsTr("Ours")
            onClicked: records.desk.chooseOurs(true)
        }
        Act {
            objectName: "choice_theirs"
            visible: records.asks
            text: qsTr("Theirs")
            onClicked: records.desk.chooseOurs(false)
        }
    }
    Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.hair; color: Ink.rule }
}
