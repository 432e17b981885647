// SPDX-License-Identifier: GPL-3.0-or-later
// The vessel's volume worked out: by its shape or a metered fill, what is measured, and what comes of it.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Column {
    id: part
    required property VolumeForm form

    function faultOf(faults: var, key: string): string {
        return faults[key] ?? "";
    }

    spacing: Ink.px(12)

    Prose {
        objectName: "volume_kept_says"
        width: part.width
        visible: !part.form.shown && part.form.kept
        text: part.form.keptSays
        font.pixelSize: Ink.small
    }
    Flow {
        width: part.width
        visible: !part.form.shown
        spacing: Ink.room
        Act { objectName: "work_volume_out"; text: qsTr("Work the volume out"); onClicked: part.form.shown = true }
        Act { objectName: "give_volume_form_back"; visible: part.form.kept; text: qsTr("Undo"); onClicked: part.form.giveBack() }
    }
    Column {
        width: part.width
        visible: part.form.shown
        spacing: Ink.px(12)
        ChoiceRow {
            width: parent.width
            label: qsTr("The volume by its shape, or by meter")
            name: "volume_way"
            options: part.form.ways
            current: part.form.way
            onPicked: key => part.form.way = key
        }
        ChoiceRow {
            width: parent.width
            visible: !part.form.metered
            label: qsTr("Its bottom")
            name: "volume_bottom"
            options: part.form.bottoms
            current: part.form.bottom
            onPicked: key => part.form.bottom = key
        }
        ChoiceRow {
            width: parent.width
            visible: part.form.metered
            label: qsTr("The meter counts")
            name: "volume_meter"
            options: part.form.meters
            current: part.form.meter
            onPicked: key => part.form.meter = key
        }
        Grid {
            id: grid
            width: parent.width
            columns: 2
            columnSpacing: Ink.room
            rowSpacing: Ink.px(10)
            Repeater {
                model: part.form.shown ? part.form.asked : []
                delegate: Field {
                    id: field
                    required property var modelData
                    width: (grid.width - grid.columnSpacing) / 2
                    name: "volume_" + modelData.key
                    label: modelData.label
                    value: modelData.text
                    fault: part.faultOf(part.form.faults, modelData.key)
                    inputMethodHints: Qt.ImhFormattedNumbersOnly
                    onEdited: text => part.form.write(field.modelData.key, text)
                    onWritten: text => part.form.settle(field.modelData.key, text)
                }
            }
        }
        ChoiceRow {
            width: parent.width
            visible: !part.form.metered
            label: qsTr("Measured")
            name: "volume_gauge"
            options: part.form.gauges
            current: part.form.gauge
            onPicked: key => part.form.gauge = key
        }
        Line { objectName: "volume_working"; width: parent.width; visible: text.length > 0; text: part.form.working }
        Prose { objectName: "volume_result"; width: parent.width; visible: text.length > 0; text: part.form.result }
        Prose { objectName: "volume_doubts"; width: parent.width; visible: text.length > 0; text: part.form.doubts; color: Ink.accent }
        Prose { objectName: "volume_method"; width: parent.width; visible: text.length > 0; text: part.form.method; font.pixelSize: Ink.small }
        Flow {
            width: parent.width
            spacing: Ink.room
            Act { objectName: "keep_volume"; main: true; text: qsTr("Take this volume"); onClicked: part.form.keep() }
            Act { objectName: "leave_volume"; text: qsTr("Leave it"); onClicked: part.form.shown = false }
        }
    }
    Prose { width: part.width; visible: part.form.trouble.length > 0; text: part.form.trouble; color: Ink.accent }
}
