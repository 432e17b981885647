// SPDX-License-Identifier: GPL-3.0-or-later
// Readings come in here: by themselves from the instrument, or typed on the pad.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Counter

Item {
    id: screen
    required property Desk desk
    readonly property BenchDesk bench: desk.bench
    signal settled  // something was done: digits and Return go to the pad again

    // Not layouts: how high the words stand must follow at once from how wide they are.
    Column {
        id: head
        anchors { left: parent.left; right: pad.left; top: parent.top; leftMargin: Ink.margin; rightMargin: Ink.margin; topMargin: Ink.px(24) }
        spacing: Ink.px(12)

        Item {
            width: parent.width
            height: Math.max(headline.implicitHeight, back.visible ? back.height : 0)
            Title {
                id: headline
                width: parent.width - (back.visible ? back.width + Ink.room : 0)
                text: screen.bench.headline
            }
            Act {
                id: back
                property string said
                objectName: "take_back"
                anchors { right: parent.right; top: parent.top }
                visible: screen.bench.takeBackWord.length > 0
                text: qsTr("Take back")
                Accessible.name: screen.bench.takeBackWord
                // A reading may come in while the finger is on it: only what it said then is taken back.
                onPressed: said = screen.bench.takeBackWord
                onClicked: {
                    if (said.length === 0 || said === screen.bench.takeBackWord)
                        screen.bench.takeBack();
                    said = "";
                }
            }
        }
        TroubleBanner { width: parent.width; text: screen.bench.trouble }
        OrphanLine { width: parent.width; bench: screen.bench; onSettled: screen.settled() }
    }
    ListView {
        id: list
        objectName: "reading_list"
        anchors { left: head.left; right: head.right; top: head.bottom; bottom: foot.top; topMargin: Ink.px(12); bottomMargin: Ink.px(10) }
        clip: true
        model: screen.bench.readings
        boundsBehavior: Flickable.StopAtBounds
        ScrollBar.vertical: Bar {}
        delegate: ReadingRow {
            id: reading
            width: list.width - Ink.px(12)  // beside the bar
            onPicked: analyte => screen.bench.choose(analyte)
        }
    }
    Item {
        id: foot
        anchors { left: head.left; right: head.right; bottom: parent.bottom; bottomMargin: Ink.px(16) }
        height: Math.max(instrument.implicitHeight, overnight.visible ? overnight.height : 0)
        Line {
            id: instrument
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - (overnight.visible ? overnight.width + Ink.room : 0)
            text: screen.bench.instrumentLine
            font.pixelSize: Ink.small
            pale: true
        }
        Act {
            id: overnight
            objectName: "open_overnight"
            anchors { right: parent.right; verticalCenter: parent.verticalCenter }
            visible: screen.desk.overnight.mayTest
            text: screen.desk.overnight.openWord
            onClicked: screen.desk.overnight.shown = true
        }
    }
    PadPanel {
        id: pad
        anchors { right: parent.right; top: parent.top; bottom: parent.bottom; margins: Ink.margin; topMargin: Ink.px(24); bottomMargin: Ink.px(16) }
        width: Ink.px(380)
        bench: screen.bench
        onNext: screen.desk.place = 3
        onSettled: screen.settled()
    }
}
