// SPDX-License-Identifier: GPL-3.0-or-later
// An earlier visit beside this one, and what the difference says.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

Item {
    id: screen
    required property Desk desk
    readonly property ThenDesk then: desk.then

    ColumnLayout {
        anchors { fill: parent; margins: Ink.margin; topMargin: Ink.px(24); bottomMargin: Ink.px(16) }
        spacing: Ink.px(14)

        Title { objectName: "then_title"; Layout.fillWidth: true; text: screen.then.title }
        ChoiceRow {
            Layout.fillWidth: true
            visible: options.length > 1
            name: "earlier"
            label: qsTr("Beside the visit of")
            options: screen.then.earlierVisits
            current: screen.then.earlier
            onPicked: key => screen.then.earlier = key
        }
        RowLayout {
            Layout.fillWidth: true
            visible: screen.then.earlier.length > 0
            spacing: Ink.room
            Act {
                objectName: "print_again"
                text: qsTr("Print its sheet again")
                enabled: !screen.desk.plan.busy && !screen.desk.plan.printWaits
                onClicked: screen.desk.plan.printAgain(screen.then.earlier)
            }
            Prose {
                Layout.fillWidth: true
                text: screen.desk.plan.printSays.length > 0 ? screen.desk.plan.printSays : screen.desk.plan.sheetSays
                font.pixelSize: Ink.small
                wrapMode: Text.WrapAtWordBoundaryOrAnywhere
            }
        }
        Flickable {
            id: page
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: screen.then.changes.count > 0
            contentHeight: column.implicitHeight
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            ScrollBar.vertical: Bar {}

            Column {
                id: column
                width: page.width - Ink.px(12)
                spacing: Ink.px(10)

                Repeater {
                    model: screen.then.explanations
                    delegate: Prose {
                        required property int index
                        required property string sentence
                        text: sentence
                        objectName: "explanation_" + index
                        width: Math.min(column.width, Ink.px(860))
                        font.pixelSize: Ink.px(20)
                    }
                }
                VolumeLesson { width: Math.min(column.width, Ink.px(860)); then: screen.then }
                PlanAnswers { width: Math.min(column.width, Ink.px(860)); then: screen.then }
                Item { width: 1; height: Ink.px(6) }
                ChangeRow {
                    width: column.width
                    heading: true
                    name: ""
                    earlier: screen.then.earlierWord
                    now: qsTr("Now")
                    expected: qsTr("Expected")
                    text: ""
                }
                Repeater {
                    model: screen.then.changes
                    delegate: ChangeRow { width: column.width }
                }
                Item { width: 1; height: Ink.px(6) }
                YearPart { width: column.width; year: screen.then.year }
            }
        }
        Item {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: screen.then.changes.count === 0
            Prose {
                objectName: "then_waits"
                width: Math.min(parent.width, Ink.px(620))
                font.pixelSize: Ink.large
                visible: screen.desk.ticket.code.length > 0
                text: screen.then.earlier.length > 0
                    ? qsTr("Once this bottle is read, it stands here beside the earlier visit.")
                    : qsTr("When this water comes again, its new readings stand here beside these: what moved as expected, what did not and why, and how much the vessel really holds.")
            }
        }
    }
}
