// SPDX-License-Identifier: GPL-3.0-or-later
// The Bench, or the overnight test that is open on it.
import QtQuick
import Counter

Item {
    id: place
    required property Desk desk
    signal settled()

    Bench {
        anchors.fill: parent
        visible: !place.desk.overnight.shown
        desk: place.desk
        onSettled: place.settled()
    }
    Overnight {
        anchors.fill: parent
        visible: place.desk.overnight.shown
        desk: place.desk
        onSettled: place.settled()
    }
}
