// SPDX-License-Identifier: GPL-3.0-or-later
// What the water's answers say of the volume; it is taken with one touch and given back with one.
import QtQuick
import QtQuick.Layouts
import Counter

Column {
    id: lesson
    required property ThenDesk then

    visible: lesson.then.volumeSays.length > 0 || lesson.then.lessonSays.length > 0
    spacing: Ink.px(10)

    component Told: RowLayout {
        id: told
        property string sentence
        property string word
        property string handle
        property bool may: true
        signal touched()
        visible: told.sentence.length > 0
        width: parent ? parent.width : 0
        spacing: Ink.room
        Prose { objectName: told.handle + "_says"; Layout.fillWidth: true; text: told.sentence }
        Act {
            objectName: told.handle
            visible: told.may
            text: told.word
            onClicked: told.touched()
        }
    }

    Told {
        sentence: lesson.then.volumeSays
        word: lesson.then.takeWord
        handle: "take_volume"
        may: lesson.then.canTakeVolume
        onTouched: lesson.then.takeVolume()
    }
    Told {
        sentence: lesson.then.lessonSays
        word: qsTr("Undo")
        handle: "give_volume_back"
        onTouched: lesson.then.giveVolumeBack()
    }
    Prose {
        visible: lesson.then.trouble.length > 0
        width: parent ? parent.width : 0
        text: lesson.then.trouble
        color: Ink.accent
    }
}
