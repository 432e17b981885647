// SPDX-License-Identifier: GPL-3.0-or-later
// An earlier visit beside this one, and what the difference says.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

Item {
    id: screen
    objectName: "then_page"
    required property Desk desk
    readonly property ThenDesk then: desk.then
    property bool behind: false  // the numbers, in place of the words
    readonly property bool counts: behind && then.numbers.length > 0

    ColumnLayout {
        anchors { fill: parent; margins: Ink.margin; topMargin: Ink.px(24); bottomMargin: Ink.px(16) }
        spacing: Ink.px(14)

        RowLayout {
            Layout.fillWidth: true
            spacing: Ink.room
            Title { objectName: "then_title"; Layout.fillWidth: true; text: screen.then.title }
            Act {
                objectName: "then_numbers"
                implicitHeight: Ink.px(60)
                enabled: screen.then.numbers.length > 0
                text: screen.behind ? qsTr("The words") : qsTr("The numbers")
                onClicked: screen.behind = !screen.behind
            }
        }
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
        NumberList {
            objectName: "then_number_list"
            visible: screen.counts
            Layout.fillWidth: true
            Layout.fillHeight: true
            numbers: screen.then.numbers
            about: qsTr("What was expected: the earlier reading, moved by what was told, drained and lost. Its ± comes from both readings, the volume, and weeks of evaporation and splash.")
        }
        Flickable {
            id: page
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: screen.then.changes.count > 0 && !screen.counts
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
