// SPDX-License-Identifier: GPL-3.0-or-later
// A row of a list that may be told anew while a finger is on it: what stood there when the finger came down counts.
import QtQuick
import QtQuick.Templates as T

T.AbstractButton {
    id: row
    required property string subject  // what the row is about
    property string held
    signal picked(string subject)

    function pick() {
        const what = held.length > 0 ? held : subject;
        held = "";
        picked(what);
    }

    onPressed: held = subject
    onCanceled: held = ""
    onClicked: pick()
}
