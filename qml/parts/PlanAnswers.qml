// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the plan of then worked, a sentence a finding; the word is in the sentence, the mark beside it is for
// the eye: a filled bar, a half-filled, an empty one, or a dash where it cannot be told.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Column {
    id: answers
    required property ThenDesk then

    visible: answers.then.answers.count > 0
    spacing: Ink.px(8)

    Item { width: 1; height: Ink.px(2) }
    Section { width: answers.width; text: qsTr("Did the plan work?") }
    Repeater {
        model: answers.then.answers
        delegate: Row {
            id: answer
            required property int index
            required property string verdict
            required property string sentence
            readonly property bool known: verdict !== "cannot_tell"
            spacing: Ink.px(14)

            Rectangle {
                y: Ink.px(8)
                width: Ink.px(26)
                height: answer.known ? Ink.px(10) : Ink.stroke
                color: answer.known ? Ink.paper : Ink.pale
                border.color: Ink.ink
                border.width: answer.known ? Ink.stroke : 0
                Rectangle {
                    visible: answer.known
                    height: parent.height
                    width: parent.width * (answer.verdict === "worked" ? 1 : answer.verdict === "partly" ? 0.5 : 0)
                    color: Ink.ink
                }
            }
            Prose {
                objectName: "answer_" + answer.index
                width: answers.width - Ink.px(40)
                text: answer.sentence
            }
        }
    }
}
