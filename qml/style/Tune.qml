// SPDX-License-Identifier: GPL-3.0-or-later
// Sets the look before anything is made that uses it: what is made first and tuned after is made twice.
import QtQuick
import Counter

QtObject {
    required property size page
    required property string theme
    required property bool motion

    Component.onCompleted: {
        Ink.scale = Ink.fitting(page.width, page.height);
        Ink.theme = theme;
        Ink.motion = motion;
    }
}
