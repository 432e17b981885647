// SPDX-License-Identifier: GPL-3.0-or-later
// One of the places, built when somebody comes to it, or behind the first frame a little at a time.
import QtQuick
import Counter

Item {
    id: place
    required property Desk desk
    required property string page  // its file, without .qml
    required property bool current  // somebody is there
    property bool warm: false  // the first frame is there
    property Item item: null
    property var making: null

    function build() {
        if (item || !(current || warm))
            return;
        if (!making) {
            const component = Qt.createComponent(page + ".qml", place);
            making = component.incubateObject(place, { "desk": desk }, current ? Qt.Synchronous : Qt.Asynchronous);
            if (making.status === Component.Loading)
                making.onStatusChanged = take;
        } else if (current) {
            making.forceCompletion();
        }
        take();
    }

    function take() {
        if (item || making.status !== Component.Ready)
            return;
        item = making.object as Item;
        item.anchors.fill = place;
    }

    onCurrentChanged: build()
    onWarmChanged: build()
    Component.onCompleted: build()
}
