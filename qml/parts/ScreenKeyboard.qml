// SPDX-License-Identifier: GPL-3.0-or-later
// The keyboard on the glass; as tall as it is shown, so that the page moves up.
import QtQuick
import QtQuick.VirtualKeyboard

Item {
    implicitHeight: panel.active ? panel.height : 0
    InputPanel {
        id: panel
        width: parent.width
    }
}
