// SPDX-License-Identifier: GPL-3.0-or-later
// Letting a stopped analyte go on: by whom, and what was found and done.
import QtQuick
import QtQuick.Layouts
import Counter

ColumnLayout {
    id: form
    required property ChartDesk charts

    spacing: Ink.px(12)

    Section { Layout.fillWidth: true; text: qsTr("Let it go on") }
    RowLayout {
        Layout.fillWidth: true
        spacing: Ink.room
        Field { id: by; Layout.preferredWidth: Ink.px(220); name: "clear_by"; label: qsTr("Cleared by") }
        Field { id: reason; Layout.fillWidth: true; name: "clear_reason"; label: qsTr("What was found and done") }
        Act {
            objectName: "clear_stop"
            Layout.alignment: Qt.AlignBottom
            text: qsTr("Clear")
            onClicked: {
                if (!form.charts.clearStop(by.text, reason.text)) return;
                by.text = "";
                reason.text = "";
            }
        }
    }
}
