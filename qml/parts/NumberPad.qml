// SPDX-License-Identifier: GPL-3.0-or-later
// Twelve keys for wet fingers.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Counter

Grid {
    id: pad
    property bool point: true  // whether the numbers have decimals
    property real keyHeight: Ink.px(60)
    signal key(string key)

    columns: 3
    spacing: Ink.px(8)

    Repeater {
        model: ["7", "8", "9", "4", "5", "6", "1", "2", "3", "0", "point", "back"]
        delegate: Button {
            id: padKey
            required property string modelData
            objectName: "pad_" + modelData
            width: (pad.width - 2 * pad.spacing) / 3
            height: pad.keyHeight
            enabled: pad.point || modelData !== "point"
            opacity: enabled ? 1 : 0
            text: modelData === "point" ? Qt.locale().decimalPoint : modelData === "back" ? qsTr("rub out") : modelData
            Accessible.name: modelData === "point" ? qsTr("decimal point") : text
            Keys.onReturnPressed: clicked()
            Keys.onEnterPressed: clicked()
            onClicked: pad.key(modelData)
            contentItem: Text {
                text: padKey.text
                font.family: Ink.sans
                font.pixelSize: padKey.modelData === "back" ? Ink.small : Ink.px(26)
                color: padKey.down ? Ink.paper : Ink.ink
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
            }
            background: Rectangle {
                color: padKey.down ? Ink.ink : Ink.wash
                radius: Ink.px(3)
                FocusFrame { shown: padKey.visualFocus }
            }
        }
    }
}
