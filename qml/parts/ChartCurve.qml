// SPDX-License-Identifier: GPL-3.0-or-later
// The absorbance curve of a reagent lot: its standards, as they were measured.
import QtQuick
import QtQuick.Layouts
import Counter

ColumnLayout {
    id: form
    required property ChartDesk charts

    spacing: Ink.px(12)

    Section { Layout.fillWidth: true; text: qsTr("A lot’s absorbance curve") }
    RowLayout {
        Layout.fillWidth: true
        spacing: Ink.room
        Field { id: lot; Layout.preferredWidth: Ink.px(150); name: "curve_lot"; label: qsTr("Number of the lot") }
        Field { id: light; Layout.preferredWidth: Ink.px(150); name: "curve_light"; label: qsTr("Wavelength, nm") }
        Field { id: points; Layout.fillWidth: true; name: "curve_points"; label: qsTr("Standards: amount and absorbance per cm; the next") }
        Act {
            objectName: "keep_curve"
            Layout.alignment: Qt.AlignBottom
            text: qsTr("Keep")
            onClicked: if (form.charts.keepCurve(lot.text, light.text, points.text)) points.text = ""
        }
    }
}
