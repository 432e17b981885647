// SPDX-License-Identifier: GPL-3.0-or-later
// The stock: from which bleach, how much of it, and how strong it came out.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Item {
    id: page
    required property OvernightDesk test
    readonly property var choices: test.choices
    signal settled

    Column {
        width: pad.x - Ink.px(36)
        spacing: Ink.px(12)
        ChoiceRow {
            width: parent.width
            label: qsTr("Liquid chlorine, as its label says")
            name: "bleach"
            options: page.test.options("bleach")
            current: page.choices.bleach
            onPicked: key => {
                page.test.choose("bleach", key);
                page.settled();
            }
        }
        Prose {
            objectName: "overnight_arithmetic"
            width: parent.width
            visible: text.length > 0
            text: page.test.arithmetic
        }
        StepLines {
            width: parent.width
            steps: page.test.steps
            cautions: page.test.cautions
            size: Ink.body
            cautionSize: Ink.small
        }
        Prose {
            objectName: "overnight_check"
            width: parent.width
            visible: text.length > 0
            text: page.test.checkLine
            font.pixelSize: Ink.px(20)
        }
    }
    OvernightPad {
        id: pad
        anchors.right: parent.right
        width: Ink.px(300)
        test: page.test
        withHow: false
    }
}
