// SPDX-License-Identifier: GPL-3.0-or-later
// The paper: when the customer gets home, which language, which paper, and making it.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Counter

Item {
    id: panel
    required property PlanDesk plan
    signal next  // the following bottle

    Flickable {
        id: choices
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: foot.top; bottomMargin: Ink.px(12) }
        clip: true
        contentHeight: questions.implicitHeight
        boundsBehavior: Flickable.StopAtBounds
        ScrollBar.vertical: Bar {}
        ColumnLayout {
            id: questions
            width: choices.width - Ink.px(12)
            spacing: Ink.px(12)

            Section { Layout.fillWidth: true; text: qsTr("The sheet") }
            Repeater {
                model: ["home_at", "paper", "language", "print_size"]
                delegate: ChoiceRow {
                    id: choice
                    required property string modelData
                    Layout.fillWidth: true
                    label: panel.plan.question(modelData)
                    name: modelData
                    options: panel.plan.options(modelData)
                    current: panel.plan.choices[modelData]
                    onPicked: key => panel.plan.choose(choice.modelData, key)
                }
            }
            Line { text: qsTr("Other papers"); font.pixelSize: Ink.small; pale: true }
            Flow {
                Layout.fillWidth: true
                spacing: Ink.px(8)
                Repeater {
                    model: [{ key: "shelf_list", word: qsTr("From the shelf") }, { key: "staff_copy", word: qsTr("Staff copy") }, { key: "bottle_label", word: qsTr("Label") }]
                    delegate: Choice {
                        required property var modelData
                        objectName: "paper_" + modelData.key
                        text: modelData.word
                        enabled: panel.plan.ready && !panel.plan.busy && !panel.plan.printWaits
                        onClicked: panel.plan.printPaper(modelData.key)
                    }
                }
            }
        }
    }
    // What is said grows upward: the buttons stay where they are.
    ColumnLayout {
        id: foot
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        spacing: Ink.px(10)
        Prose {
            objectName: "print_says"
            Layout.fillWidth: true
            visible: text.length > 0
            text: panel.plan.printSays
            color: Ink.accent
        }
        Act {
            objectName: "take_back"
            visible: panel.plan.printWaits
            text: qsTr("Do not print it")
            onClicked: panel.plan.takeBack()
        }
        Prose {
            objectName: "sheet_says"
            Layout.fillWidth: true
            visible: text.length > 0
            text: panel.plan.sheetSays
            font.pixelSize: Ink.small
            wrapMode: Text.WrapAtWordBoundaryOrAnywhere
        }
        Act {
            objectName: "next_bottle"
            Layout.fillWidth: true
            visible: panel.plan.told
            text: qsTr("Kept. Next bottle")
            onClicked: panel.next()
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: Ink.px(10)
            Act {
                objectName: "print_sheet"
                Layout.fillWidth: true
                implicitHeight: Ink.px(60)
                main: true
                enabled: panel.plan.ready && !panel.plan.busy && !panel.plan.printWaits
                text: qsTr("Print")
                onClicked: panel.plan.makeSheet(true)
            }
            Act {
                objectName: "make_pdf"
                Layout.fillWidth: true
                implicitHeight: Ink.px(60)
                enabled: panel.plan.ready && !panel.plan.busy
                text: qsTr("Make PDF")
                onClicked: panel.plan.makeSheet(false)
            }
        }
    }
}
