// SPDX-License-Identifier: GPL-3.0-or-later
// One reading of the panel: its name, its number, how it was read, and what became of it.
import QtQuick
import QtQuick.Controls.Basic
import Counter

RowButton {
    id: row
    required property string analyte
    required property string name
    required property string value
    required property string unit
    required property string how
    required property string standing
    required property string note
    required property bool waits   // due and not read, or to be read again
    required property bool chosen

    objectName: "reading_" + analyte
    subject: analyte
    implicitHeight: Math.max(Ink.px(50), implicitContentHeight + Ink.px(10))
    Accessible.role: Accessible.ListItem
    Accessible.name: name + ", " + (value.length > 0 ? value + " " + unit + ", " : "") + standing + (note.length > 0 ? ", " + note : "")
    Accessible.selected: chosen
    // On the chosen row Return goes on to the pad and keeps what was typed.
    Keys.onReturnPressed: event => choose(event)
    Keys.onEnterPressed: event => choose(event)

    function choose(event: var) {
        if (chosen)
            event.accepted = false;
        else
            clicked();
    }

    background: Rectangle {
        color: row.chosen || row.down ? Ink.wash : Ink.paper
        Rectangle { visible: row.chosen; width: Ink.px(4); height: parent.height; color: Ink.accent }
        Rectangle { anchors.bottom: parent.bottom; width: parent.width; height: Ink.hair; color: Ink.rule }
        FocusFrame { shown: row.visualFocus; anchors.margins: Ink.px(1) }
    }
    contentItem: ReadingCells {
        name: row.name
        value: row.value
        unit: row.unit
        standing: row.how.length > 0 ? row.standing + ", " + row.how : row.standing
        note: row.note
        waits: row.waits
    }
}
