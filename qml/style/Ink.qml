// SPDX-License-Identifier: GPL-3.0-or-later
// The look in one place: calm paper, one ink, one accent, two faces of one type family.
// Sizes are for a counter screen 800 px high and grow with it through `scale`.
pragma Singleton
import QtQuick

QtObject {
    property real scale: 1

    readonly property color paper: "#fbf9f4"
    readonly property color wash: "#f1ede3"    // paper in shade: pressed, or chosen in a list
    readonly property color ink: "#17232c"
    readonly property color pale: "#54606a"    // the same ink thinned; 6.0:1 on paper, 5.5:1 on wash
    readonly property color rule: "#c9c5b9"
    readonly property color accent: "#8c3d0a"  // where you are, and what waits for you; 7.3:1 on paper

    readonly property string sans: "Noto Sans"
    readonly property string serif: "Noto Serif"

    readonly property real tiny: Math.round(14 * scale)
    readonly property real small: Math.round(16 * scale)
    readonly property real body: Math.round(18 * scale)
    readonly property real large: Math.round(22 * scale)
    readonly property real title: Math.round(34 * scale)
    readonly property real display: Math.round(46 * scale)

    readonly property real touch: Math.round(52 * scale)  // never under 48
    readonly property real gap: Math.round(8 * scale)
    readonly property real room: Math.round(16 * scale)
    readonly property real margin: Math.round(32 * scale)
    readonly property real hair: 1
    readonly property real stroke: Math.max(2, Math.round(2 * scale))

    function px(n: real): real {
        return Math.round(n * scale);
    }
}
