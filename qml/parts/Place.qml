// SPDX-License-Identifier: GPL-3.0-or-later
// A page, built when somebody comes to it, or behind the first frame a little at a time.
import QtQuick
import Counter

Item {
    id: place
    required property Desk desk
    required property string page  // its file, without .qml
    required property bool current  // somebody is there
    property bool warm: false  // the first frame is there
    property QtObject item: null
    property Component component: null
    property var making: null

    function build() {
        if (item || !(current || warm))
            return;
        // Somebody waits for a page that is current; the others are read and made beside what goes on.
        if (!component || (current && component.status === Component.Loading))
            component = Qt.createComponent(page + ".qml", current ? Component.PreferSynchronous : Component.Asynchronous, place);
        if (component.status !== Component.Ready)
            return;
        if (making) {
            if (current)
                making.forceCompletion();
        } else if (current) {
            take(component.createObject(place, { "desk": desk }));
        } else {
            making = component.incubateObject(place, { "desk": desk });
            making.onStatusChanged = () => take(making.object);
            if (making.status === Component.Ready)
                take(making.object);
        }
    }

    function take(made: QtObject) {
        if (item || !made)
            return;
        item = made;
        const shown = item as Item;
        if (shown)
            shown.anchors.fill = place;
    }

    onCurrentChanged: build()
    onWarmChanged: build()
    Component.onCompleted: build()
    Connections {
        target: place.component
        ignoreUnknownSignals: true
        function onStatusChanged() {
            place.build();
        }
    }
}
