// SPDX-License-Identifier: GPL-3.0-or-later
// Whose bottle is on the counter: one line over every page, so that nobody reads another's water.
import QtQuick
import QtQuick.Layouts
import Counter

Item {
    id: strip
    property string code
    property string who
    property string vessel
    property string clock
    property string scanning  // a label that comes in from the scanner

    implicitHeight: Ink.px(64)

    RowLayout {
        anchors { fill: parent; leftMargin: Ink.margin; rightMargin: Ink.margin }
        spacing: Ink.room
        Line {
            objectName: "bottle_code"
            text: strip.scanning.length > 2 ? qsTr("Label: %1").arg(strip.scanning)
                : strip.code.length > 0 ? strip.code : qsTr("No bottle on the counter")
            strong: strip.code.length > 0
            pale: strip.code.length === 0
        }
        Line {
            objectName: "bottle_who"
            visible: strip.code.length > 0
            text: strip.who
        }
        Line {
            visible: strip.code.length > 0
            Layout.fillWidth: true
            text: strip.vessel
            pale: true
            wrapMode: Text.NoWrap
            elide: Text.ElideRight
        }
        Item {
            visible: strip.code.length === 0
            Layout.fillWidth: true
        }
        Line {
            text: strip.clock
            pale: true
        }
    }
    Rectangle {
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; leftMargin: Ink.margin; rightMargin: Ink.margin }
        height: Ink.hair
        color: Ink.rule
    }
}
