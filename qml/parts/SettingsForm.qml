// SPDX-License-Identifier: GPL-3.0-or-later
// The few things a shop sets itself; kept as soon as they are written.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Counter

Column {
    id: form
    required property BackDesk back
    property bool acts: true  // whether it is kept from here

    spacing: Ink.px(12)

    Flow {
        id: cells
        width: form.width
        spacing: Ink.px(20)
        Repeater {
            model: form.back.fields
            delegate: Column {
                id: entry
                required property string key
                required property string label
                required property string value
                required property var options
                readonly property bool chosen: options.length > 0
                width: chosen ? cells.width : Math.floor((cells.width - cells.spacing) / 2)
                Field {
                    visible: !entry.chosen
                    width: parent.width
                    name: "set_" + entry.key
                    label: entry.label
                    secret: entry.key === "pin"
                    value: entry.value
                    onEdited: text => form.back.setValue(entry.key, text)
                }
                ChoiceRow {
                    visible: entry.chosen
                    width: parent.width
                    name: "set_" + entry.key
                    label: entry.label
                    options: entry.options
                    current: entry.value
                    onPicked: key => form.back.setValue(entry.key, key)
                }
            }
        }
    }
    RowLayout {
        width: form.width
        visible: form.acts
        spacing: Ink.room
        Act {
            objectName: "apply_settings"
            main: true
            visible: text.length > 0
            text: form.back.actWord
            onClicked: form.back.apply()
        }
        Act {
            objectName: "undo_settings"
            visible: form.back.canUndo
            text: qsTr("Undo")
            onClicked: form.back.undo()
        }
        Prose { Layout.fillWidth: true; text: form.back.says; font.pixelSize: Ink.small }
    }
}
