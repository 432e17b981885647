// SPDX-License-Identifier: GPL-3.0-or-later
// The look in one place: calm paper, one ink, one accent, two faces of one type family; three themes of it.
// Sizes are for a counter screen 800 px high and grow with it through `scale`.
pragma Singleton
import QtQuick

QtObject {
    property real scale: 1
    property string theme: "light"  // light, dark or contrast
    property bool motion: true

    readonly property Tones light: Tones { paper: "#fbf9f4"; wash: "#f1ede3"; ink: "#17232c"; pale: "#54606a"; rule: "#c9c5b9"; accent: "#8c3d0a" }
    readonly property Tones dark: Tones { paper: "#151b20"; wash: "#242d34"; ink: "#ece7dc"; pale: "#aab2b5"; rule: "#4b565e"; accent: "#f0a670" }
    readonly property Tones contrast: Tones { paper: "#ffffff"; wash: "#e8e8e8"; ink: "#000000"; pale: "#2b2b2b"; rule: "#000000"; accent: "#6b2500" }
    readonly property Tones tones: theme === "dark" ? dark : theme === "contrast" ? contrast : light

    readonly property color paper: tones.paper
    readonly property color wash: tones.wash      // paper in shade: pressed, or chosen in a list
    readonly property color ink: tones.ink
    readonly property color pale: tones.pale      // the same ink thinned; also the edge of what can be touched
    readonly property color rule: tones.rule      // lines that only part things
    readonly property color accent: tones.accent  // where you are, and what waits for you
    readonly property color clear: Qt.rgba(0, 0, 0, 0)

    // Which words may stand on which ground.
    readonly property var pairs: [["ink", "paper"], ["ink", "wash"], ["pale", "paper"], ["pale", "wash"], ["accent", "paper"], ["accent", "wash"], ["paper", "ink"], ["paper", "accent"]]
    // What is no word and must still be seen: the edge of what can be touched, and the focus.
    readonly property var edges: [["pale", "paper"], ["accent", "paper"], ["accent", "wash"]]

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
    readonly property int beat: motion ? 140 : 0  // ms; nothing moves longer, nothing waits for it

    // The scale that suits a page of this size.
    function fitting(width: real, height: real): real {
        return Math.max(0.94, Math.min(1.5, height / 800, width / 1280));
    }

    function px(n: real): real {
        return Math.round(n * scale);
    }
}
