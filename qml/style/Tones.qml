// SPDX-License-Identifier: GPL-3.0-or-later
// The colours of one theme. What they are for stands in Ink.
import QtQuick

QtObject {
    required property color paper
    required property color wash
    required property color ink
    required property color pale
    required property color rule
    required property color accent
}
