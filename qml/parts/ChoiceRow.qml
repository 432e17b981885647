// SPDX-License-Identifier: GPL-3.0-or-later
// A question with a few words to choose from. `options` holds {key, word}; `current` is a key,
// or a list of keys where several may be chosen.
pragma ComponentBehavior: Bound
import QtQuick
import Counter

Column {
    id: row
    property string label
    property string name  // of the fact; also the object name of each choice: name_key
    property var options: []
    property var current
    // The same words told again leave each choice where it is: a finger may be on it.
    property var standing: []
    signal picked(string key)

    function isChosen(key: string): bool {
        return Array.isArray(row.current) ? row.current.indexOf(key) >= 0 : row.current === key;
    }

    onOptionsChanged: {
        if (JSON.stringify(options) !== JSON.stringify(standing))
            standing = options;
    }
    spacing: Ink.px(6)

    Line {
        width: row.width
        visible: row.label.length > 0
        text: row.label
        font.pixelSize: Ink.small
        pale: true
    }
    Flow {
        width: row.width
        spacing: Ink.px(8)
        Repeater {
            model: row.standing
            delegate: Choice {
                required property var modelData
                objectName: row.name + "_" + modelData.key
                most: row.width
                text: modelData.word
                chosen: row.isChosen(modelData.key)
                onClicked: row.picked(modelData.key)
            }
        }
    }
}
