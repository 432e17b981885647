// SPDX-License-Identifier: GPL-3.0-or-later
// The overnight test, in place of the bench's readings: one page for each thing to do.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Counter

Item {
    id: screen
    required property Desk desk
    readonly property OvernightDesk test: desk.overnight
    readonly property string stage: test.stage
    readonly property var pages: ["bottles", "stock", "pour", "running", "result"]
    signal settled  // something was done: digits and Return go to the pad again

    onStageChanged: if (visible) settled()

    RowLayout {
        id: head
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Ink.margin; topMargin: Ink.px(20) }
        spacing: Ink.room
        Title { objectName: "overnight_title"; Layout.fillWidth: true; text: screen.test.title }
        Line {
            objectName: "overnight_due"
            visible: screen.stage === "running" || screen.stage === "result"
            text: screen.test.dueLine
            strong: true
        }
        Act {
            objectName: "overnight_leave"
            text: qsTr("To the bench")
            onClicked: screen.test.shown = false
        }
    }
    Prose {
        objectName: "overnight_offer"
        anchors { left: head.left; right: head.right; top: head.bottom; topMargin: Ink.px(14) }
        visible: screen.stage.length === 0
        font.pixelSize: Ink.large
        text: (screen.test.offer.length > 0 ? screen.test.offer + " " : "") + qsTr("Some bottles of the sample get rising doses of chlorine and are read after an hour and after a day. What is left tells how much the water uses up.")
    }
    StackLayout {
        anchors { left: head.left; right: head.right; top: head.bottom; bottom: says.visible ? says.top : acts.top; topMargin: Ink.px(12); bottomMargin: Ink.px(8) }
        currentIndex: screen.pages.indexOf(screen.stage)
        visible: screen.stage.length > 0
        OvernightBottles { test: screen.test }
        OvernightStock { test: screen.test; onSettled: screen.settled() }
        OvernightPour { test: screen.test }
        OvernightTable { test: screen.test; onSettled: screen.settled() }
        OvernightTable { test: screen.test; told: true }
    }
    Prose {
        id: says
        objectName: "overnight_says"
        anchors { left: head.left; right: head.right; bottom: acts.top; bottomMargin: Ink.px(10) }
        visible: text.length > 0
        text: screen.test.says
        font.pixelSize: Ink.small
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }
    RowLayout {
        id: acts
        anchors { left: head.left; right: head.right; bottom: parent.bottom; bottomMargin: Ink.px(16) }
        spacing: Ink.px(10)
        Act {
            objectName: "overnight_give_up"
            visible: screen.stage.length > 0
            implicitHeight: Ink.px(60)
            text: screen.stage === "result" ? qsTr("Told: put away") : qsTr("Give it up")
            onClicked: screen.test.giveUp()
        }
        Act {
            objectName: "overnight_take_up"
            visible: screen.test.canTakeUp
            implicitHeight: Ink.px(60)
            text: qsTr("Undo")
            onClicked: screen.test.takeUp()
        }
        Item { Layout.fillWidth: true }
        Act {
            objectName: "overnight_back"
            visible: screen.stage === "stock" || screen.stage === "pour" || screen.stage === "result"
            implicitHeight: Ink.px(60)
            text: screen.stage === "result" ? qsTr("Back to the readings") : qsTr("Back")
            onClicked: screen.test.goBack()
        }
        Act {
            objectName: "overnight_undo"
            visible: screen.stage === "running"
            enabled: screen.test.canUndo
            implicitHeight: Ink.px(60)
            text: qsTr("Take the last reading back")
            onClicked: {
                screen.test.undo();
                screen.settled();
            }
        }
        Act {
            objectName: "overnight_go_on"
            main: true
            implicitHeight: Ink.px(60)
            enabled: screen.test.canGoOn
            text: screen.test.goOnWord
            onClicked: {
                if (screen.stage === "result")
                    screen.desk.place = 4;
                else
                    screen.test.goOn();
            }
        }
    }
}
