// SPDX-License-Identifier: GPL-3.0-or-later
// Control charts: what is to be checked, the chosen chart, and a measurement for it.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

ColumnLayout {
    id: page
    required property ChartDesk charts
    readonly property bool any: charts.charts.count > 0
    property bool adding: false

    spacing: Ink.px(14)

    Repeater {
        model: page.charts.charts
        delegate: AbstractButton {
            id: entry
            required property string key
            required property string name
            required property string detail
            required property string standing
            required property bool waits
            required property bool here
            objectName: "chart_" + key
            Layout.fillWidth: true
            implicitHeight: Ink.touch
            Accessible.role: Accessible.RadioButton
            Accessible.name: name + ", " + detail + ", " + standing
            Accessible.checkable: true
            Accessible.checked: here
            Keys.onReturnPressed: clicked()
            Keys.onEnterPressed: clicked()
            onClicked: page.charts.choose(key)
            background: Rectangle {
                color: entry.here || entry.down ? Ink.wash : Ink.paper
                Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: entry.here ? Ink.px(3) : Ink.hair; color: entry.here ? Ink.ink : Ink.rule }
                FocusFrame { shown: entry.visualFocus; anchors.margins: Ink.px(1) }
            }
            contentItem: RowLayout {
                spacing: Ink.room
                Line { Layout.preferredWidth: Ink.px(230); text: entry.name; strong: entry.here; Accessible.ignored: true }
                Line { Layout.fillWidth: true; text: entry.detail; font.pixelSize: Ink.small; pale: true; Accessible.ignored: true }
                Line { text: entry.standing; color: entry.waits ? Ink.accent : Ink.ink; strong: entry.waits; Accessible.ignored: true }
            }
        }
    }
    Prose { objectName: "chart_story"; Layout.fillWidth: true; text: page.charts.story }
    ChartClear { Layout.fillWidth: true; visible: page.charts.stopped; charts: page.charts }
    ChoiceRow {
        Layout.fillWidth: true
        visible: page.any
        name: "chart_standard"
        label: qsTr("Standard")
        options: page.charts.standards
        current: page.charts.standard
        onPicked: key => page.charts.standard = key
    }
    RowLayout {
        Layout.fillWidth: true
        visible: page.any
        spacing: Ink.room
        Field { id: value; Layout.preferredWidth: Ink.px(200); name: "chart_value"; label: qsTr("It read"); inputMethodHints: Qt.ImhFormattedNumbersOnly; onAccepted: keep.clicked() }
        Act {
            id: keep
            objectName: "keep_measurement"
            Layout.alignment: Qt.AlignBottom
            main: true
            text: qsTr("Keep")
            onClicked: if (page.charts.keepMeasurement(value.text)) value.text = ""
        }
        Act {
            objectName: "measure_on_line"
            Layout.alignment: Qt.AlignBottom
            text: page.charts.listening ? qsTr("Do not wait") : qsTr("Measure on the instrument")
            onClicked: page.charts.listen(!page.charts.listening)
        }
        Item { Layout.fillWidth: true }
    }
    Prose { objectName: "chart_says"; Layout.fillWidth: true; visible: text.length > 0; text: page.charts.says; font.pixelSize: Ink.small; color: Ink.accent }
    ChartPicture {
        Layout.fillWidth: true
        visible: page.any
        rules: page.charts.limits
        points: page.charts.points
        says: page.charts.headline + ". " + page.charts.pointsInWords
    }
    Line {
        objectName: "chart_points"
        Layout.fillWidth: true
        visible: text.length > 0
        text: page.charts.pointsInWords
        font.pixelSize: Ink.small
        pale: true
    }
    Act { objectName: "new_standard"; visible: page.any && !page.adding; text: qsTr("A new standard"); onClicked: page.adding = true }
    ChartForm { Layout.fillWidth: true; visible: page.adding || !page.any; charts: page.charts; onKept: page.adding = false }
    ChartCurve { Layout.fillWidth: true; charts: page.charts }
}
