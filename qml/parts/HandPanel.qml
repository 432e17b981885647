// SPDX-License-Identifier: GPL-3.0-or-later
// The trained hand at one step: try another dose, product or volume, and see the water it would end in.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

ColumnLayout {
    id: panel
    required property HandDesk hand

    spacing: Ink.px(10)

    Flickable {
        id: page
        objectName: "hand_page"
        Layout.fillWidth: true
        Layout.fillHeight: true
        contentHeight: column.implicitHeight
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        ScrollBar.vertical: Bar {}

        Column {
            id: column
            width: page.width - Ink.px(12)
            spacing: Ink.px(10)

            Section { width: parent.width; text: qsTr("Change step %1").arg(panel.hand.step) }
            Prose { objectName: "hand_title"; width: parent.width; text: panel.hand.title; font.pixelSize: Ink.small }
            ChoiceRow {
                width: parent.width
                name: "hand_step"
                options: [{ key: "keep", word: qsTr("In the plan") }, { key: "leave", word: qsTr("Left out") }]
                current: panel.hand.leftOut ? "leave" : "keep"
                onPicked: key => panel.hand.leftOut = key === "leave"
            }
            Drag {
                width: parent.width
                visible: panel.hand.isDose && !panel.hand.leftOut
                name: "hand_share"
                label: qsTr("How much")
                word: panel.hand.shareWord
                from: 0.25
                to: 1.5
                value: panel.hand.share
                onDragged: value => panel.hand.share = value
            }
            Drag {
                width: parent.width
                visible: panel.hand.volumeWord.length > 0
                name: "hand_volume"
                label: qsTr("If it held (only to look at)")
                word: panel.hand.volumeWord
                from: 0.5
                to: 1.5
                value: panel.hand.volume
                onDragged: value => panel.hand.volume = value
            }
            Prose {
                objectName: "hand_says"
                width: parent.width
                visible: text.length > 0
                text: panel.hand.says
                font.pixelSize: Ink.small
                color: Ink.accent
            }
            HandRow { width: parent.width; name: qsTr("In the end"); told: qsTr("as told"); tried: qsTr("changed"); heading: true }
            Repeater {
                model: panel.hand.predicted
                delegate: HandRow { width: column.width }
            }
            ChoiceRow {
                width: parent.width
                visible: panel.hand.isDose && !panel.hand.leftOut && options.length > 1
                name: "hand_product"
                label: qsTr("Of what")
                options: panel.hand.products
                current: panel.hand.product
                onPicked: key => panel.hand.product = key
            }
            Field { name: "hand_staff"; width: parent.width; label: qsTr("Changed by"); value: panel.hand.staff; onEdited: text => panel.hand.staff = text }
            Field { name: "hand_reason"; width: parent.width; label: qsTr("Because"); value: panel.hand.reason; onEdited: text => panel.hand.reason = text }
        }
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: Ink.px(10)
        Act {
            objectName: "hand_use"
            Layout.fillWidth: true
            implicitHeight: Ink.px(60)
            main: true
            enabled: panel.hand.mayUse
            text: qsTr("Use this change")
            onClicked: panel.hand.use()
        }
        Act {
            objectName: "hand_close"
            Layout.fillWidth: true
            implicitHeight: Ink.px(60)
            text: qsTr("Cancel")
            onClicked: panel.hand.close()
        }
    }
}
