// SPDX-License-Identifier: GPL-3.0-or-later
// Beside what is longer than its place: always there, so that nobody takes the end of the page for the end.
import QtQuick
import QtQuick.Templates as T
import Counter

T.ScrollBar {
    id: bar

    policy: size < 1 ? T.ScrollBar.AlwaysOn : T.ScrollBar.AlwaysOff
    visible: policy === T.ScrollBar.AlwaysOn
    padding: Ink.px(2)
    implicitWidth: implicitContentWidth + leftPadding + rightPadding
    implicitHeight: implicitContentHeight + topPadding + bottomPadding
    minimumSize: orientation === Qt.Horizontal ? height / width : width / height
    contentItem: Rectangle {
        implicitWidth: Ink.px(6)
        implicitHeight: Ink.px(6)
        radius: width / 2
        color: bar.pressed ? Ink.ink : Ink.pale
        opacity: 0.75
    }
}
