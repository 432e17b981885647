// SPDX-License-Identifier: GPL-3.0-or-later
// The readings of every bottle after an hour and a day; a place is touched to be filled from the pad.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Counter

Item {
    id: page
    required property OvernightDesk test
    property bool told: false  // the result is in; nothing more is read

    signal settled

    readonly property real codeWidth: Ink.px(122)
    readonly property real doseWidth: Ink.px(58)
    readonly property real cellWidth: Ink.px(76)

    component Heading: Line { font.pixelSize: Ink.small; pale: true; wrapMode: Text.NoWrap; horizontalAlignment: Text.AlignRight }

    Column {
        width: (page.told ? page.width : pad.x) - Ink.px(28)
        spacing: Ink.px(8)

        Column {
            id: table
            width: parent.width
            Row {
                Heading { width: page.codeWidth + page.doseWidth; text: "" }
                Heading { width: 2 * page.cellWidth; text: qsTr("after 1 hour") }
                Heading { width: 2 * page.cellWidth; text: qsTr("after 24 hours") }
            }
            Row {
                Heading { width: page.codeWidth; text: qsTr("Bottle"); horizontalAlignment: Text.AlignLeft }
                Heading { width: page.doseWidth; text: qsTr("mg/L") }
                Repeater {
                    model: [qsTr("free"), qsTr("total"), qsTr("free"), qsTr("total")]
                    delegate: Heading {
                        required property string modelData
                        width: page.cellWidth
                        text: modelData
                    }
                }
            }
            Rectangle { width: parent.width; height: Ink.hair; color: Ink.ink }
            Repeater {
                model: page.test.bottles
                delegate: Row {
                    id: row
                    required property int index
                    required property string code
                    required property string dose
                    required property string hourFree
                    required property string hourTotal
                    required property string dayFree
                    required property string dayTotal
                    required property string marked
                    required property string word
                    height: Ink.px(49)

                    Line { width: page.codeWidth; height: parent.height; verticalAlignment: Text.AlignVCenter; wrapMode: Text.NoWrap; text: row.code }
                    Line { width: page.doseWidth; height: parent.height; verticalAlignment: Text.AlignVCenter; horizontalAlignment: Text.AlignRight; text: row.dose; pale: true }
                    Repeater {
                        model: [
                            { key: "hourFree", due: "hour", analyte: "free_chlorine", name: qsTr("free chlorine after 1 hour"), value: row.hourFree },
                            { key: "hourTotal", due: "hour", analyte: "total_chlorine", name: qsTr("total chlorine after 1 hour"), value: row.hourTotal },
                            { key: "dayFree", due: "day", analyte: "free_chlorine", name: qsTr("free chlorine after 24 hours"), value: row.dayFree },
                            { key: "dayTotal", due: "day", analyte: "total_chlorine", name: qsTr("total chlorine after 24 hours"), value: row.dayTotal }
                        ]
                        delegate: AbstractButton {
                            id: cell
                            required property var modelData
                            readonly property bool marked: !page.told && row.marked === modelData.key
                            objectName: "cell_" + row.index + "_" + modelData.key
                            width: page.cellWidth
                            height: Ink.px(49)
                            enabled: !page.told
                            Accessible.role: Accessible.Cell
                            Accessible.name: row.code + ", " + modelData.name + ": " + (modelData.value.length > 0 ? modelData.value : qsTr("not read"))
                            Accessible.selected: marked
                            // On the marked place Return goes on to the pad and keeps what was typed.
                            Keys.onReturnPressed: event => choose(event)
                            Keys.onEnterPressed: event => choose(event)
                            onClicked: page.test.mark(row.index, modelData.due, modelData.analyte)

                            function choose(event: var) {
                                if (marked)
                                    event.accepted = false;
                                else
                                    clicked();
                            }

                            background: Rectangle {
                                color: cell.marked || cell.down ? Ink.wash : Ink.paper
                                Rectangle { visible: cell.marked; anchors.bottom: parent.bottom; width: parent.width; height: Ink.px(4); color: Ink.accent }
                                FocusFrame { shown: cell.visualFocus; anchors.margins: Ink.px(1) }
                            }
                            contentItem: Line {
                                text: cell.modelData.value.length > 0 ? cell.modelData.value : "—"
                                pale: cell.modelData.value.length === 0
                                font.pixelSize: Ink.px(19)
                                wrapMode: Text.NoWrap
                                horizontalAlignment: Text.AlignRight
                                verticalAlignment: Text.AlignVCenter
                                Accessible.ignored: true
                            }
                        }
                    }
                    Line { leftPadding: Ink.px(12); height: parent.height; verticalAlignment: Text.AlignVCenter; wrapMode: Text.NoWrap; text: row.word; font.pixelSize: Ink.small }
                }
            }
            Rectangle { width: parent.width; height: Ink.hair; color: Ink.rule }
        }
        Repeater {
            model: page.test.result
            delegate: Prose {
                required property int index
                required property string modelData
                objectName: "overnight_result_" + index
                width: table.width
                text: modelData
                font.pixelSize: Ink.body
            }
        }
        Prose {
            width: table.width
            visible: page.told && page.test.phone.length > 0
            objectName: "overnight_phone"
            text: qsTr("Call the customer: %1").arg(page.test.phone)
            font.pixelSize: Ink.large
        }
        StepLines {
            width: table.width
            visible: page.told || page.test.result.length === 0
            steps: page.test.steps
            size: page.told ? Ink.px(19) : Ink.small
        }
    }
    OvernightPad {
        id: pad
        anchors.right: parent.right
        visible: !page.told
        width: Ink.px(362)
        test: page.test
        onSettled: page.settled()
    }
}
