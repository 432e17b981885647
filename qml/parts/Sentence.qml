// SPDX-License-Identifier: GPL-3.0-or-later
// A sentence whose words flow around a waterline set right before the number it shows, as on paper.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Flow {
    id: sentence
    property var words: []      // the sentence, cut at its blanks
    property int markBefore: -1  // the waterline stands before this word; -1: none
    property var line: ({})
    property real size: Ink.large

    spacing: Math.round(size * 0.26)
    Accessible.role: Accessible.Paragraph
    Accessible.name: words.join(" ")

    Repeater {
        model: sentence.words
        delegate: Row {
            id: word
            required property int index
            required property string modelData
            spacing: sentence.spacing
            Waterline {
                visible: word.index === sentence.markBefore
                anchors.verticalCenter: parent.verticalCenter
                line: sentence.line
            }
            Text {
                text: word.modelData
                font.family: Ink.serif
                font.pixelSize: sentence.size
                color: Ink.ink
                textFormat: Text.PlainText
            }
        }
    }
}
