// SPDX-License-Identifier: GPL-3.0-or-later
// Reagent lots by numbers: the absorbance curve of one, and a new one against the old.
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
        Field { id: lot; Layout.fillWidth: true; Layout.preferredWidth: 1; name: "curve_lot"; label: qsTr("Number of the lot") }
        Field { id: light; Layout.fillWidth: true; Layout.preferredWidth: 1; name: "curve_light"; label: qsTr("Wavelength, nm") }
        Act {
            objectName: "keep_curve"
            Layout.alignment: Qt.AlignBottom
            text: qsTr("Keep")
            onClicked: if (form.charts.keepCurve(lot.text, light.text, points.text)) points.text = ""
        }
    }
    Field { id: points; Layout.fillWidth: true; name: "curve_points"; label: qsTr("Standards: amount and absorbance per cm; the next"); hint: "0 0.001; 1 0.197; 2 0.394" }

    Section { Layout.fillWidth: true; text: qsTr("A new lot against the old") }
    RowLayout {
        Layout.fillWidth: true
        spacing: Ink.room
        Field { id: pairs; Layout.fillWidth: true; Layout.preferredWidth: 2; name: "lot_pairs"; label: qsTr("The same waters: old lot, new lot; the next"); hint: "1.02 1.05; 2.10 2.08" }
        Field { id: allowed; Layout.fillWidth: true; Layout.preferredWidth: 1; name: "lot_allowed"; label: qsTr("Difference that may be") }
        Act {
            objectName: "compare_lots"
            Layout.alignment: Qt.AlignBottom
            text: qsTr("Compare")
            onClicked: form.charts.compareLots(pairs.text, allowed.text)
        }
    }
    Prose { objectName: "lots_say"; Layout.fillWidth: true; visible: text.length > 0; text: form.charts.lotsSay; font.pixelSize: Ink.small; color: Ink.accent }
}
