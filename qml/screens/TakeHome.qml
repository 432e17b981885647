// SPDX-License-Identifier: GPL-3.0-or-later
// The timetable the customer takes home, and the making of its paper.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

Item {
    id: screen
    required property Desk desk
    readonly property PlanDesk plan: desk.plan
    property bool behind: false  // the numbers, in place of the steps

    objectName: "take_home_page"

    Item {  // not a layout: how high the sentences stand must not ask how wide the panel is
        id: sides
        anchors { fill: parent; margins: Ink.margin; topMargin: Ink.px(24); bottomMargin: Ink.px(16) }

        ColumnLayout {
            anchors { left: parent.left; right: panel.left; rightMargin: Ink.px(40); top: parent.top; bottom: parent.bottom }
            spacing: Ink.px(12)

            RowLayout {
                Layout.fillWidth: true
                spacing: Ink.px(10)
                Title { objectName: "plan_title"; Layout.fillWidth: true; text: screen.plan.title }
                Act {
                    objectName: "dose_numbers"
                    visible: screen.plan.doseNumbers.length > 0
                    text: screen.behind ? qsTr("The steps") : qsTr("The numbers")
                    onClicked: screen.behind = !screen.behind
                }
            }
            Prose {
                objectName: "swim_line"
                Layout.fillWidth: true
                visible: text.length > 0
                text: screen.plan.swimLine
                font.pixelSize: Ink.large
            }
            Prose {
                objectName: "why_not"
                Layout.fillWidth: true
                visible: text.length > 0
                text: screen.plan.whyNot
                font.pixelSize: Ink.large
            }
            Repeater {
                model: screen.plan.changes
                delegate: Prose {
                    required property string modelData
                    required property int index
                    objectName: "change_" + index
                    Layout.fillWidth: true
                    text: modelData
                    font.pixelSize: Ink.small
                    color: Ink.accent
                }
            }
            Act {
                objectName: "as_drafted"
                visible: screen.plan.changes.length > 0
                text: qsTr("Undo the changes")
                onClicked: screen.desk.hand.asDrafted()
            }
            NumberList {
                objectName: "dose_number_list"
                visible: screen.behind
                Layout.fillWidth: true
                Layout.fillHeight: true
                numbers: screen.plan.doseNumbers
            }
            Flickable {
                id: page
                objectName: "step_list"
                visible: !screen.behind
                Layout.fillWidth: true
                Layout.fillHeight: true
                clip: true
                contentHeight: column.height
                boundsBehavior: Flickable.StopAtBounds
                ScrollBar.vertical: Bar {}

                Column {
                    id: column
                    width: page.width - Ink.px(12)
                    Repeater {
                        model: screen.plan.steps
                        delegate: StepRow {
                            width: column.width
                            mayChange: screen.plan.ready && screen.plan.whyNot.length === 0
                            onChange: order => screen.desk.hand.open(order)
                        }
                    }
                    Item { width: 1; height: Ink.px(16) }
                    Section { width: column.width; visible: screen.plan.stillOpen.length > 0; text: qsTr("Still open") }
                    Repeater {
                        model: screen.plan.stillOpen
                        delegate: Prose {
                            required property string modelData
                            width: column.width
                            bottomPadding: Ink.px(8)
                            text: modelData
                            font.pixelSize: Ink.small
                        }
                    }
                    Repeater {
                        model: screen.plan.cautions
                        delegate: Prose {
                            required property string modelData
                            width: column.width
                            bottomPadding: Ink.px(8)
                            text: modelData
                            font.pixelSize: Ink.small
                        }
                    }
                }
            }
        }
        Item {
            id: panel
            anchors { right: parent.right; top: parent.top; bottom: parent.bottom }
            width: Ink.px(screen.desk.hand.step > 0 ? 400 : 320)
            SheetPanel { anchors.fill: parent; visible: screen.desk.hand.step === 0; plan: screen.plan; onNext: screen.desk.place = 0 }
            HandPanel { anchors.fill: parent; visible: screen.desk.hand.step > 0; hand: screen.desk.hand }
        }
    }
}
