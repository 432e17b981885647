// SPDX-License-Identifier: GPL-3.0-or-later
// Typing a number of the overnight test: for which bottle, the number, range and dilution, keep.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Column {
    id: panel
    required property OvernightDesk test
    readonly property var how: test.how
    signal settled
    property bool withHow: true  // range and dilution are asked for

    function set(fact: string, key: string) {
        test.setHow(fact, key);
        settled();
    }

    spacing: Ink.px(8)

    Line {
        objectName: "overnight_pad_name"
        width: panel.width
        text: panel.test.padName
        strong: true
    }
    Item {
        width: panel.width
        height: Ink.px(48)
        Line {
            objectName: "overnight_typed"
            anchors { right: parent.right; rightMargin: Ink.px(4); verticalCenter: parent.verticalCenter }
            text: panel.test.typed.length > 0 ? panel.test.typed.replace(".", Qt.locale().decimalPoint) : qsTr("type the number")
            pale: panel.test.typed.length === 0
            font.pixelSize: panel.test.typed.length > 0 ? Ink.px(40) : Ink.body
        }
        Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.stroke; color: Ink.ink }
    }
    NumberPad {
        width: panel.width
        keyHeight: Ink.px(52)
        onKey: key => panel.test.press(key)
    }
    ChoiceRow {
        visible: panel.withHow
        width: panel.width
        name: "overnight_clip"
        options: panel.test.options("clip")
        current: panel.how.clip
        onPicked: key => panel.set("clip", key)
    }
    ChoiceRow {
        visible: panel.withHow
        width: panel.width
        name: "overnight_dilution"
        options: panel.test.options("dilution")
        current: panel.how.dilution
        onPicked: key => panel.set("dilution", key)
    }
    Act {
        objectName: "overnight_keep"
        width: panel.width
        implicitHeight: Ink.touch
        main: true
        enabled: panel.test.canKeep
        text: qsTr("Keep")
        onClicked: panel.test.keep()
    }
}
