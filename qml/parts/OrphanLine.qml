// SPDX-License-Identifier: GPL-3.0-or-later
// A reading that belongs to no bottle: whose is it? Asked, never guessed.
import QtQuick
import QtQuick.Layouts
import Counter

Item {
    id: orphan
    required property BenchDesk bench

    visible: bench.orphan.length > 0
    implicitHeight: visible ? row.implicitHeight + Ink.px(24) : 0
    Accessible.role: Accessible.AlertMessage
    Accessible.name: bench.orphan

    Rectangle { width: parent.width; height: Ink.hair; color: Ink.rule }
    RowLayout {
        id: row
        anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter }
        spacing: Ink.room
        Prose { objectName: "orphan_text"; Layout.fillWidth: true; text: orphan.bench.orphan }
        Act {
            objectName: "orphan_here"
            visible: text.length > 0
            text: orphan.bench.orphanHere
            onClicked: orphan.bench.settleOrphan(true)
        }
        Act {
            objectName: "orphan_aside"
            text: qsTr("Set aside")
            onClicked: orphan.bench.settleOrphan(false)
        }
    }
    Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.hair; color: Ink.rule }
}
