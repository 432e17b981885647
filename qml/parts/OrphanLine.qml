// SPDX-License-Identifier: GPL-3.0-or-later
// A reading that belongs to no bottle: whose is it? Asked, never guessed.
import QtQuick
import QtQuick.Layouts
import Counter

Item {
    id: orphan
    required property BenchDesk bench
    signal settled

    onVisibleChanged: if (!visible) settled()

    visible: bench.orphan.length > 0
    implicitHeight: visible ? row.implicitHeight + Ink.px(24) : 0
    Accessible.role: Accessible.AlertMessage
    Accessible.name: bench.orphan

    Rectangle { width: parent.width; height: Ink.hair; color: Ink.rule }
    RowLayout {
        id: row
        anchors { left: parent.left; right: parent.right; top: parent.top; topMargin: Ink.px(12) }
        spacing: Ink.px(10)
        Prose {
            objectName: "orphan_text"
            Layout.fillWidth: true
            Layout.minimumHeight: Ink.px(78)  // three lines, so that the next one moves nothing
            text: orphan.bench.orphan
        }
        Act {
            objectName: "orphan_all"
            Layout.alignment: Qt.AlignTop
            visible: text.length > 0
            text: orphan.bench.orphanAll
            onClicked: orphan.bench.settleOrphans()
        }
        Act {
            objectName: "orphan_here"
            Layout.alignment: Qt.AlignTop
            visible: text.length > 0
            text: orphan.bench.orphanHere
            onClicked: orphan.bench.settleOrphan(true)
        }
        Act {
            objectName: "orphan_aside"
            Layout.alignment: Qt.AlignTop
            text: qsTr("Set aside")
            onClicked: orphan.bench.settleOrphan(false)
        }
    }
    Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.hair; color: Ink.rule }
}
