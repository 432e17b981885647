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

    RowLayout {
        anchors { fill: parent; margins: Ink.margin; topMargin: Ink.px(24); bottomMargin: Ink.px(16) }
        spacing: Ink.px(40)

        ColumnLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            spacing: Ink.px(12)

            Title { objectName: "plan_title"; Layout.fillWidth: true; text: screen.plan.title }
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
            ListView {
                id: list
                objectName: "step_list"
                Layout.fillWidth: true
                Layout.fillHeight: true
                clip: true
                model: screen.plan.steps
                boundsBehavior: Flickable.StopAtBounds
                ScrollBar.vertical: ScrollBar {}
                delegate: StepRow { width: list.width - Ink.px(12) }
                footer: Column {
                    width: list.width - Ink.px(12)
                    topPadding: Ink.px(16)
                    spacing: Ink.px(8)
                    Repeater {
                        model: screen.plan.cautions
                        delegate: Prose {
                            required property string modelData
                            width: list.width - Ink.px(12)
                            text: modelData
                            font.pixelSize: Ink.small
                        }
                    }
                }
            }
        }
        SheetPanel {
            Layout.preferredWidth: Ink.px(320)
            Layout.fillHeight: true
            plan: screen.plan
        }
    }
}
