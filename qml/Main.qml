// SPDX-License-Identifier: GPL-3.0-or-later
// The counter: the contents in the margin, the bottle over the page, the page.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Counter

T.ApplicationWindow {
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

    // The pages know these; a place is built before it is asked.
    function begin(bottle: var) {
        if (bottle)
            bottle.begin();
    }

    function typeTo(lock: var, event: var) {
        if (lock)
            lock.type(event);
    }

    function popUp(card: var) {
        card.open();
    }

    function putAway(card: var) {
        if (card)
            card.close();
    }

    function openEmergency() {
        emergency.current = true;
        popUp(emergency.item);
    }

    function closeEmergency() {
        putAway(emergency.item);
    }

    onActiveFocusItemChanged: if (warm) reveal(activeFocusItem)

    // Once the first frame is there the other places are built behind it, a little at a time.
    property bool warm: false
    property bool lockShown: false  // for pictures of every page
    readonly property bool locked: (desk.lock.locked || lockShown) && !desk.firstStart.shown
    readonly property int shown: locked || desk.firstStart.shown ? -1 : desk.place
    onFrameSwapped: warming.start()
    Timer {
        id: warming
        interval: 1
        onTriggered: window.warm = true
    }

    title: "Brimline"
    color: Ink.paper
    font.family: Ink.sans
    Binding {
        target: Ink
        property: "scale"
        value: Ink.fitting(window.width, window.height)
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
            else if (window.locked)
                window.typeTo(lock.item, event);
            else
                event.accepted = window.desk.typeKey(event.text, event.key);
        }

        PlaceRail {
            id: rail
            visible: !window.desk.firstStart.shown && !window.locked
            anchors { left: parent.left; top: parent.top; bottom: parent.bottom }
            shop: window.desk.shop
            places: window.desk.places
            current: window.desk.place
            onPicked: place => window.desk.place = place
            who: window.desk.lock.who
            onLeave: window.desk.lock.lock()
            onEmergency: window.openEmergency()
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
            Place { desk: window.desk; page: "Arrivals"; current: window.shown === 0; warm: window.warm }
            Place { id: bottle; desk: window.desk; page: "Bottle"; current: window.shown === 1; warm: window.warm }
            Place { id: bench; desk: window.desk; page: "BenchPlace"; current: window.shown === 2; warm: window.warm }
            Place { desk: window.desk; page: "Findings"; current: window.shown === 3; warm: window.warm }
            Place { desk: window.desk; page: "TakeHome"; current: window.shown === 4; warm: window.warm }
            Place { desk: window.desk; page: "ThenNow"; current: window.shown === 5; warm: window.warm }
            Place { desk: window.desk; page: "BackRoom"; current: window.shown === 6; warm: window.warm }
        }
        Loader {  // the screen's own keyboard, where one is wanted and installed
            id: keys
            anchors { left: rail.right; right: parent.right; bottom: parent.bottom }
            active: window.desk.screenKeyboard
            source: "ScreenKeyboard.qml"
            height: item ? implicitHeight : 0
        }
    }

    Place {
        id: lock
        anchors.fill: parent
        visible: window.locked
        desk: window.desk
        page: "Lock"
        current: window.locked
        warm: window.warm
        onVisibleChanged: page.forceActiveFocus()
    }
    Place {
        id: emergency
        anchors.fill: parent
        desk: window.desk
        page: "Emergency"
        current: false
        warm: window.warm
    }
    Connections {
        target: lock.item
        ignoreUnknownSignals: true
        function onEmergency() {
            window.openEmergency();
        }
        function onSettled() {
            page.forceActiveFocus();
        }
    }
    Connections {
        target: assistant.item
        ignoreUnknownSignals: true
        function onEmergency() {
            window.openEmergency();
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
                window.begin(bottle.item);
        }
    }
    Repeater {
        model: 7
        delegate: Item {
            id: jump
            required property int index
            Shortcut {
                sequence: "F" + (jump.index + 1)
                enabled: !window.locked
                context: Qt.ApplicationShortcut
                onActivated: window.desk.place = jump.index
            }
        }
    }
    Shortcut {
        sequence: "F8"
        context: Qt.ApplicationShortcut
        onActivated: window.openEmergency()
    }
}
