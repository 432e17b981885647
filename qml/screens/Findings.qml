// SPDX-License-Identifier: GPL-3.0-or-later
// What the water is doing, in words; a word-sized waterline stands inside a sentence where it helps.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

Item {
    id: screen
    objectName: "findings_page"
    required property Desk desk
    readonly property PlanDesk plan: desk.plan
    property bool behind: false  // the numbers, in place of the words

    ColumnLayout {
        anchors { fill: parent; margins: Ink.margin; topMargin: Ink.px(24); bottomMargin: Ink.px(16) }
        spacing: Ink.px(16)

        RowLayout {
            Layout.fillWidth: true
            spacing: Ink.px(10)
            Title { objectName: "findings_title"; Layout.fillWidth: true; text: screen.plan.findingsTitle }
            Act {
                objectName: "numbers_behind"
                implicitHeight: Ink.px(60)
                enabled: screen.plan.numbers.length > 0
                text: screen.behind ? qsTr("The words") : qsTr("The numbers")
                onClicked: screen.behind = !screen.behind
            }
            Act {
                objectName: "to_take_home"
                main: true
                implicitHeight: Ink.px(60)
                enabled: screen.plan.ready
                text: qsTr("Take-home")
                onClicked: screen.desk.place = 4
            }
        }
        RowLayout {
            Layout.fillWidth: true
            visible: screen.desk.overnight.offer.length > 0
            spacing: Ink.room
            Prose {
                objectName: "overnight_offered"
                Layout.fillWidth: true
                text: screen.desk.overnight.offer
                font.pixelSize: Ink.px(20)
            }
            Act {
                objectName: "offer_overnight"
                text: screen.desk.overnight.openWord
                onClicked: {
                    screen.desk.overnight.shown = true;
                    screen.desk.place = 2;
                }
            }
        }
        NumberList {
            objectName: "number_list"
            visible: screen.behind
            Layout.fillWidth: true
            Layout.fillHeight: true
            numbers: screen.plan.numbers
        }
        ListView {
            id: list
            objectName: "finding_list"
            visible: !screen.behind
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            spacing: Ink.px(4)
            model: screen.plan.findings
            boundsBehavior: Flickable.StopAtBounds
            ScrollBar.vertical: Bar {}
            delegate: Item {
                id: finding
                required property var words
                required property int markBefore
                required property var line
                required property string concern
                required property bool first  // of its concern
                width: list.width
                height: sentence.height + Ink.px(26)

                Rectangle { visible: finding.first; width: parent.width; height: Ink.hair; color: Ink.ink }
                Line {
                    y: Ink.px(14)
                    width: Ink.px(150)
                    visible: finding.first
                    text: finding.concern
                    font.pixelSize: Ink.small
                    strong: true
                }
                Sentence {
                    id: sentence
                    x: Ink.px(170)
                    y: Ink.px(10)
                    width: Math.min(parent.width - x - Ink.px(16), Ink.px(800))
                    words: finding.words
                    markBefore: finding.markBefore
                    line: finding.line
                    size: Ink.px(20)
                }
            }
        }
        Line {
            Layout.fillWidth: true
            visible: screen.plan.findings.count > 0 && !screen.behind
            text: qsTr("On the thin rule: the bracket is the target, the filled mark this bottle and its uncertainty, the ring the last visit.")
            font.pixelSize: Ink.tiny
            pale: true
        }
    }
}
