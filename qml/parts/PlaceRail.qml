// SPDX-License-Identifier: GPL-3.0-or-later
// The contents of the counter: seven places as words in the margin of the page. The rule beside
// them opens at the place you are in.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Counter

Item {
    id: rail
    property string shop
    property var places: null
    property int current: 0
    signal picked(int place)
    property string who  // at the counter; empty: nobody has said
    signal emergency
    signal leave

    implicitWidth: Ink.px(212)

    Prose {
        id: shopName
        x: Ink.px(28)
        y: Ink.px(26)
        width: parent.width - x - Ink.room
        text: rail.shop
        font.pixelSize: Ink.small
        color: Ink.pale
        maximumLineCount: 2
        elide: Text.ElideRight
    }
    ListView {
        id: list
        anchors { left: parent.left; right: parent.right; top: parent.top; topMargin: Ink.px(92) }
        height: contentHeight
        interactive: false
        model: rail.places
        delegate: T.AbstractButton {
            id: entry
            required property int index
            required property string key
            required property string title
            required property string line
            readonly property bool here: index === rail.current

            objectName: "place_" + key
            width: list.width
            height: Ink.px(74)
            Accessible.role: Accessible.PageTab
            Accessible.name: title + (line.length > 0 ? ", " + line : "")
            Accessible.selected: here
            Keys.onReturnPressed: clicked()
            Keys.onEnterPressed: clicked()
            onClicked: rail.picked(index)

            background: Item {
                Rectangle {  // the margin's rule, open where you are
                    visible: !entry.here
                    anchors { right: parent.right; top: parent.top; bottom: parent.bottom }
                    width: Ink.hair
                    color: Ink.rule
                }
                Rectangle {
                    visible: entry.down
                    anchors.fill: parent
                    color: Ink.wash
                    z: -1
                }
                FocusFrame {
                    shown: entry.visualFocus
                    anchors.margins: Ink.px(4)
                }
            }
            contentItem: Item {
                Line {
                    x: Ink.px(28)
                    y: Ink.px(10)
                    width: parent.width - x - Ink.px(34)
                    text: entry.title
                    font.pixelSize: Ink.px(20)
                    minimumPixelSize: Ink.px(14)
                    fontSizeMode: Text.HorizontalFit
                    wrapMode: Text.NoWrap
                    strong: entry.here
                    Accessible.ignored: true
                }
                Line {
                    anchors { right: parent.right; rightMargin: Ink.px(14) }
                    y: Ink.px(17)
                    text: "F" + (entry.index + 1)
                    font.pixelSize: Ink.px(12)
                    pale: true
                    Accessible.ignored: true
                }
                Line {
                    x: Ink.px(28)
                    y: Ink.px(39)
                    width: parent.width - x - Ink.px(8)
                    text: entry.line
                    font.pixelSize: Ink.tiny
                    pale: true
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                    Accessible.ignored: true
                }
            }
        }
    }
    Rectangle {  // the dash from the edge of the paper, at the place you are in
        objectName: "place_dash"
        y: list.y + rail.current * Ink.px(74) + Ink.px(24)
        width: Ink.px(20)
        height: Ink.px(4)
        color: Ink.accent
        Behavior on y { NumberAnimation { duration: Ink.beat; easing.type: Easing.OutCubic } }
    }
    Rectangle {
        anchors { right: parent.right; top: parent.top; bottom: list.top }
        width: Ink.hair
        color: Ink.rule
    }
    Rectangle {
        anchors { right: parent.right; top: list.bottom; bottom: parent.bottom }
        width: Ink.hair
        color: Ink.rule
    }
    Act {
        objectName: "lock_now"
        visible: rail.who.length > 0
        anchors { left: parent.left; right: parent.right; bottom: urgent.top; margins: Ink.px(24); leftMargin: Ink.px(28); bottomMargin: Ink.px(8) }
        text: qsTr("%1: leave").arg(rail.who)
        Accessible.name: qsTr("%1 leaves the counter").arg(rail.who)
        onClicked: rail.leave()
    }
    Act {
        id: urgent
        objectName: "emergency"
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Ink.px(24); leftMargin: Ink.px(28) }
        implicitHeight: Ink.px(60)
        urgent: true
        text: qsTr("Emergency")
        onClicked: rail.emergency()
    }
}
