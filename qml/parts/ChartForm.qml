// SPDX-License-Identifier: GPL-3.0-or-later
// A new check standard.
import QtQuick
import QtQuick.Layouts
import Counter

ColumnLayout {
    id: form
    required property ChartDesk charts
    property string analyte: ""
    signal kept

    spacing: Ink.px(12)

    Section { Layout.fillWidth: true; text: qsTr("A new standard") }
    GridLayout {
        Layout.fillWidth: true
        columns: 2
        columnSpacing: Ink.px(32)
        rowSpacing: Ink.px(12)
        Field { id: instrument; Layout.fillWidth: true; Layout.preferredWidth: 1; name: "standard_instrument"; label: qsTr("Instrument, as its readings name it") }
        Field { id: title; Layout.fillWidth: true; Layout.preferredWidth: 1; name: "standard_name"; label: qsTr("What the standard is called") }
        Field { id: value; Layout.fillWidth: true; Layout.preferredWidth: 1; name: "standard_value"; label: qsTr("What it should read") }
        Field { id: sd; Layout.fillWidth: true; Layout.preferredWidth: 1; name: "standard_sd"; label: qsTr("Spread of one measurement (sd)") }
        Field { id: days; Layout.fillWidth: true; Layout.preferredWidth: 1; name: "standard_days"; label: qsTr("Days between checks"); value: "7" }
    }
    ChoiceRow {
        Layout.fillWidth: true
        name: "standard_analyte"
        label: qsTr("It is a standard of")
        options: form.charts.analytes
        current: form.analyte
        onPicked: key => form.analyte = key
    }
    Act {
        objectName: "keep_standard"
        text: qsTr("Keep this standard")
        onClicked: {
            const told = {instrument: instrument.text, analyte: form.analyte, name: title.text, value: value.text, sd: sd.text, days: days.text};
            if (!form.charts.addStandard(told)) return;
            for (const field of [title, value, sd]) field.text = "";
            form.kept();
        }
    }
}
