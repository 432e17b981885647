// SPDX-License-Identifier: GPL-3.0-or-later
// A line to write on: its label above, one rule below.
import QtQuick
import QtQuick.Templates as T
import Counter

FocusScope {
    id: field
    property alias text: input.text
    property string label
    property alias hint: input.placeholderText
    property alias inputMethodHints: input.inputMethodHints
    property string name
    property bool secret: false  // not for others' eyes
    property string fault  // what is wrong with what was written
    property string value  // what is known; shown until something else is written
    property string of     // whose it is: with another what was written goes
    signal accepted
    signal edited(string text)   // with every letter
    signal written(string text)  // once, when the writing is done and differs from what is known

    onValueChanged: input.text = value
    onOfChanged: input.text = value
    Component.onCompleted: if (value.length > 0) input.text = value

    implicitHeight: caption.height + input.height + (field.fault.length > 0 ? wrong.implicitHeight : 0)
    implicitWidth: Ink.px(260)

    Line {
        id: caption
        width: parent.width
        text: field.label
        height: field.label.length > 0 ? implicitHeight : 0
        font.pixelSize: Ink.small
        pale: true
    }
    T.TextField {
        id: input
        objectName: field.name
        focus: true
        anchors { left: parent.left; right: parent.right; top: caption.bottom }
        height: Ink.px(48)
        padding: Ink.px(6)
        leftPadding: Ink.px(2)
        verticalAlignment: TextInput.AlignVCenter
        font.family: Ink.sans
        font.pixelSize: Ink.large
        color: Ink.ink
        placeholderTextColor: Ink.pale
        selectionColor: Ink.ink
        selectedTextColor: Ink.paper
        echoMode: field.secret ? TextInput.Password : TextInput.Normal
        selectByMouse: true
        Accessible.name: field.label.length > 0 ? field.label : placeholderText
        Accessible.description: field.fault
        onAccepted: field.accepted()
        onTextEdited: field.edited(text)
        onEditingFinished: if (text !== field.value) field.written(text)
        background: Item {
            Line {  // the hint
                anchors { fill: parent; leftMargin: input.leftPadding; rightMargin: input.rightPadding }
                visible: input.length === 0 && input.preeditText.length === 0
                text: input.placeholderText
                font.pixelSize: Ink.large
                pale: true
                verticalAlignment: Text.AlignVCenter
                wrapMode: Text.NoWrap
                elide: Text.ElideRight
                Accessible.ignored: true
            }
            Rectangle {
                anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
                height: input.activeFocus || wrong.visible ? Ink.px(3) : Ink.hair
                color: input.activeFocus || wrong.visible ? Ink.accent : Ink.ink
            }
        }
    }
    Line {
        id: wrong
        objectName: field.name + "_fault"
        anchors.top: input.bottom
        width: parent.width
        visible: field.fault.length > 0
        text: field.fault
        font.pixelSize: Ink.small
        color: Ink.accent
    }
}
