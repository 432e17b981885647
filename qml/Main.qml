// SPDX-License-Identifier: GPL-3.0-or-later
// The counter: the contents in the margin, the bottle over the page, the page.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Counter

ApplicationWindow {
    id: window
    required property Desk desk

    // Moves the keyboard to the next thing, or back.
    function step(forward: bool) {
        const next = activeFocusItem ? activeFocusItem.nextItemInFocusChain(forward) : null;
        if (next)
            next.forceActiveFocus(forward ? Qt.TabFocusReason : Qt.BacktabFocusReason);
    }

    // What the keyboard comes to by Tab is brought into sight; what a finger touches stays under it.
    function reveal(item: var) {
        if (!item || (item.focusReason !== Qt.TabFocusReason && item.focusReason !== Qt.BacktabFocusReason))
            return;
        const edge = Ink.px(12);
        for (let above = item.parent; above; above = above.parent) {
            if (!(above instanceof Flickable))
                continue;
            const top = item.mapToItem(above.contentItem, 0, 0).y - edge;
            const bottom = top + item.height + 2 * edge;
            if (top < above.contentY)
                above.contentY = Math.max(above.originY, top);
            else if (bottom > above.contentY + above.height)
                above.contentY = Math.max(above.originY, Math.min(bottom, above.originY + above.contentHeight) - above.height);
        }
    }

    function beginBottle(place: var) {
        if (place)
            place.begin();
    }

    function openEmergency() {
        emergency.open();
    }

    function closeEmergency() {
        emergency.close();
    }

    onActiveFocusItemChanged: reveal(activeFocusItem)

    // Once the first frame is there the other places are built behind it, a little at a time.
    property bool warm: false
    onFrameSwapped: warm = true

    title: "Brimline"
    color: Ink.paper
    font.family: Ink.sans
    Binding {
        target: Ink
        property: "scale"
        value: Math.max(0.94, Math.min(1.5, window.height / 800, window.width / 1280))
    }

    Binding { target: Ink; property: "theme"; value: window.desk.theme }
    Binding { target: Ink; property: "motion"; value: window.desk.motion }

    Item {
        id: page
        anchors.fill: parent
        focus: true
        Keys.onPressed: event => {
            if (event.key === Qt.Key_Down || event.key === Qt.Key_Right)
                window.step(true);
            else if (event.key === Qt.Key_Up || event.key === Qt.Key_Left)
                window.step(false);
            else if (event.key === Qt.Key_Escape)
                page.forceActiveFocus();
            else if (lock.visible)
                lock.type(event);
            else
                event.accepted = window.desk.typeKey(event.text, event.key);
        }

        PlaceRail {
            id: rail
            visible: !window.desk.firstStart.shown && !lock.visible
            anchors { left: parent.left; top: parent.top; bottom: parent.bottom }
            shop: window.desk.shop
            places: window.desk.places
            current: window.desk.place
            onPicked: place => window.desk.place = place
            who: window.desk.lock.who
            onLeave: window.desk.lock.lock()
            onEmergency: emergency.open()
        }
        BottleLine {
            id: strip
            visible: rail.visible
            anchors { left: rail.right; right: parent.right; top: parent.top }
            code: window.desk.ticket.code
            who: window.desk.ticket.customer
            vessel: window.desk.ticket.vesselLine
            clock: window.desk.clockLine
            scanning: window.desk.scanning
        }
        Place {
            id: assistant
            visible: current
            anchors { left: parent.left; right: parent.right; top: parent.top; bottom: keys.top }
            desk: window.desk
            page: "Assistant"
            current: window.desk.firstStart.shown
        }
        StackLayout {
            visible: rail.visible
            anchors { left: rail.right; right: parent.right; top: strip.bottom; bottom: keys.top }
            currentIndex: window.desk.place
            Place { desk: window.desk; page: "Arrivals"; current: window.desk.place === 0; warm: window.warm }
            Place { id: bottle; desk: window.desk; page: "Bottle"; current: window.desk.place === 1; warm: window.warm }
            Place { id: bench; desk: window.desk; page: "BenchPlace"; current: window.desk.place === 2; warm: window.warm }
            Place { desk: window.desk; page: "Findings"; current: window.desk.place === 3; warm: window.warm }
            Place { desk: window.desk; page: "TakeHome"; current: window.desk.place === 4; warm: window.warm }
            Place { desk: window.desk; page: "ThenNow"; current: window.desk.place === 5; warm: window.warm }
            Place { desk: window.desk; page: "BackRoom"; current: window.desk.place === 6; warm: window.warm }
        }
        Loader {  // the screen's own keyboard, where one is wanted and installed
            id: keys
            anchors { left: rail.right; right: parent.right; bottom: parent.bottom }
            active: window.desk.screenKeyboard
            source: "ScreenKeyboard.qml"
            height: item ? implicitHeight : 0
        }
    }

    Lock {
        id: lock
        anchors.fill: parent
        visible: (window.desk.lock.locked || shownAlways) && !window.desk.firstStart.shown
        lock: window.desk.lock
        shop: window.desk.shop
        onEmergency: emergency.open()
        onVisibleChanged: page.forceActiveFocus()
        onSettled: page.forceActiveFocus()
    }
    Connections {
        target: assistant.item
        ignoreUnknownSignals: true
        function onEmergency() {
            emergency.open();
        }
    }
    Connections {
        target: bench.item
        ignoreUnknownSignals: true
        function onSettled() {
            page.forceActiveFocus();
        }
    }
    Connections {
        target: window.desk
        function onPlaceChanged() {
            page.forceActiveFocus();
            if (window.desk.place === 1 && !window.desk.screenKeyboard)
                window.beginBottle(bottle.item);
        }
    }
    Repeater {
        model: 7
        delegate: Item {
            id: jump
            required property int index
            Shortcut {
                sequence: "F" + (jump.index + 1)
                enabled: !lock.visible
                context: Qt.ApplicationShortcut
                onActivated: window.desk.place = jump.index
            }
        }
    }
    Shortcut {
        sequence: "F8"
        context: Qt.ApplicationShortcut
        onActivated: emergency.open()
    }
    Emergency {
        id: emergency
        width: window.width
        height: window.height
        cards: window.desk.emergencyCards
        numbers: window.desk.emergencyNumbers
        printing: window.desk.plan
    }
}
