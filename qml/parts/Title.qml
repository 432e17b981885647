// SPDX-License-Identifier: GPL-3.0-or-later
// The name of a place, at the top of its page.
import QtQuick
import Counter

Prose {
    font.pixelSize: Ink.title
    lineHeight: 1.0
    Accessible.role: Accessible.Heading
}
