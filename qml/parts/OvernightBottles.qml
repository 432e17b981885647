// SPDX-License-Identifier: GPL-3.0-or-later
// How many bottles, which doses, how much sample.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Item {
    id: page
    required property OvernightDesk test
    readonly property var choices: test.choices

    Column {
        width: parent.width
        spacing: Ink.px(16)
        Prose {
            objectName: "overnight_reason"
            width: Math.min(parent.width, Ink.px(860))
            text: page.test.reason
            font.pixelSize: Ink.px(20)
        }
        ChoiceRow {
            width: parent.width
            label: qsTr("Doses")
            name: "reach"
            options: page.test.options("reach")
            current: page.choices.reach
            onPicked: key => page.test.choose("reach", key)
        }
        ChoiceRow {
            width: parent.width
            label: qsTr("Sample in each bottle")
            name: "sample_ml"
            options: page.test.options("sample_ml")
            current: page.choices.sample_ml
            onPicked: key => page.test.choose("sample_ml", key)
        }
        StepLines { width: parent.width; steps: page.test.steps; cautions: page.test.cautions }
    }
}
