// SPDX-License-Identifier: GPL-3.0-or-later
// Labels first, then the stock into each bottle.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Item {
    id: page
    required property OvernightDesk test
    readonly property var choices: test.choices

    Column {
        width: table.x - Ink.px(40)
        spacing: Ink.px(14)
        StepLines { width: parent.width; steps: page.test.steps; cautions: page.test.cautions; cautionSize: Ink.small }
        Row {
            spacing: Ink.px(10)
            Act {
                objectName: "print_labels"
                main: true
                enabled: !page.test.busy
                text: qsTr("Print the labels")
                onClicked: page.test.makeLabels(true)
            }
            Act {
                objectName: "labels_pdf"
                enabled: !page.test.busy
                text: qsTr("Labels as PDF")
                onClicked: page.test.makeLabels(false)
            }
        }
        ChoiceRow {
            width: parent.width
            label: qsTr("They stand at")
            name: "warmth"
            options: page.test.options("warmth")
            current: page.choices.warmth
            onPicked: key => page.test.choose("warmth", key)
        }
    }
    Column {
        id: table
        anchors.right: parent.right
        width: Ink.px(420)
        OvernightLine { width: parent.width; heading: true; cells: [qsTr("Bottle"), qsTr("mg/L"), qsTr("mL of stock")] }
        Repeater {
            model: page.test.bottles
            delegate: OvernightLine {
                required property string code
                required property string dose
                required property string stock
                width: table.width
                cells: [code, dose, stock]
            }
        }
    }
}
