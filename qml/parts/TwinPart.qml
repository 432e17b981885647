// SPDX-License-Identifier: GPL-3.0-or-later
// Another card that may be the same person's, and what was joined just now.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Counter

ColumnLayout {
    id: part
    required property CardTwin twin
    property bool shown: true

    visible: shown && (twin.line.length > 0 || twin.joined.length > 0)
    spacing: Ink.px(8)

    Prose {
        objectName: "twin_line"
        Layout.fillWidth: true
        visible: part.twin.line.length > 0
        font.pixelSize: Ink.small
        text: qsTr("There is another card: %1 (%2). Is it the same person?").arg(part.twin.line).arg(part.twin.why)
    }
    Flow {
        Layout.fillWidth: true
        visible: part.twin.line.length > 0
        spacing: Ink.px(10)
        Act { objectName: "twin_join"; text: qsTr("Join the cards"); onClicked: part.twin.join() }
        Act { objectName: "twin_leave"; text: qsTr("Two people"); onClicked: part.twin.leave() }
    }
    RowLayout {
        Layout.fillWidth: true
        visible: part.twin.joined.length > 0
        spacing: Ink.px(10)
        Prose {
            objectName: "twin_joined"
            Layout.fillWidth: true
            font.pixelSize: Ink.small
            text: qsTr("Joined with this card: %1.").arg(part.twin.joined)
        }
        Act { objectName: "twin_apart"; text: qsTr("Take apart"); onClicked: part.twin.takeApart() }
    }
}
