// SPDX-License-Identifier: GPL-3.0-or-later
// Every part in every state, in one theme. What stands here is invented.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import Counter

ApplicationWindow {
    id: window
    property string theme: "light"

    title: "Brimline: the parts"
    color: Ink.paper
    font.family: Ink.sans
    Binding { target: Ink; property: "theme"; value: window.theme }

    component Part: Column {
        id: part
        property string title
        width: parent.width
        spacing: Ink.px(10)
        Section { width: parent.width; text: part.title }
    }
    component Said: Line { font.pixelSize: Ink.small; pale: true }

    Flickable {
        id: page
        anchors { fill: parent; margins: Ink.margin }
        contentHeight: columns.height
        clip: true
        ScrollBar.vertical: Bar {}

        Column {
            id: columns
            readonly property real gap: Ink.px(48)
            width: page.width - Ink.room
            spacing: Ink.px(28)

            Row {
                spacing: columns.gap
                Column {
                    width: (columns.width - columns.gap) / 2
                    spacing: Ink.px(28)
                    Part {
                        title: "Type: title, sentence, words, small, least"
                        Title { width: parent.width; text: "What this water says" }
                        Prose { width: parent.width; text: "Stabilizer is 45 mg/L, and so little free chlorine beside it is held back." }
                        Line { width: parent.width; text: "Alkalinity" }
                        Line { width: parent.width; text: "Alkalinity, strong"; strong: true }
                        Line { text: "small and pale"; font.pixelSize: Ink.small; pale: true }
                        Line { text: "the least there is"; font.pixelSize: Ink.tiny; pale: true }
                    }
                    Part {
                        title: "Act: main, plain, urgent; at rest, pressed, focused, off"
                        Repeater {
                            model: [{ main: true, urgent: false }, { main: false, urgent: false }, { main: false, urgent: true }]
                            delegate: Flow {
                                id: row
                                required property var modelData
                                width: parent.width
                                spacing: Ink.px(14)
                                Act { text: "Keep"; main: row.modelData.main; urgent: row.modelData.urgent }
                                Act { text: "Keep"; main: row.modelData.main; urgent: row.modelData.urgent; down: true }
                                Act { text: "Keep"; main: row.modelData.main; urgent: row.modelData.urgent; FocusFrame { shown: true } }
                                Act { text: "Keep"; main: row.modelData.main; urgent: row.modelData.urgent; enabled: false }
                            }
                        }
                    }
                    Part {
                        title: "Field: empty, with a hint, filled, with a fault"
                        Field { width: parent.width; name: "gallery_empty"; label: "Name" }
                        Field { width: parent.width; name: "gallery_hint"; label: "Standards"; hint: "0 0.001; 1 0.197" }
                        Field { width: parent.width; name: "gallery_full"; label: "Volume, m³"; value: "56.8" }
                        Field { width: parent.width; name: "gallery_fault"; label: "Deepest, m"; value: "1.1"; fault: "This has to be deeper than the shallowest." }
                        Drag { width: parent.width; name: "gallery_drag"; label: "How much"; word: "75 % of what was told"; from: 0.25; to: 1.5; value: 0.75 }
                    }
                    Part {
                        title: "Waterline: within, above, below, no target, no last visit, unsure"
                        Repeater {
                            model: [
                                { says: "within", value: 0.5, half: 0.02, low: 0.4, high: 0.6, last: 0.45 },
                                { says: "above", value: 0.85, half: 0.02, low: 0.4, high: 0.6, last: 0.5 },
                                { says: "below", value: 0.1, half: 0.01, low: 0.4, high: 0.6, last: 0.3 },
                                { says: "a least only", value: 0.3, half: 0.02, low: 0.2 },
                                { says: "a most only", value: 0.3, half: 0.02, high: 0.7 },
                                { says: "no target", value: 0.3, half: 0.02, last: 0.4 },
                                { says: "very unsure", value: 0.5, half: 0.2, low: 0.4, high: 0.6 },
                                { says: "not read", low: 0.4, high: 0.6, last: 0.5 }
                            ]
                            delegate: RowLayout {
                                id: kind
                                required property var modelData
                                spacing: Ink.room
                                Waterline { line: kind.modelData }
                                Said { text: kind.modelData.says }
                            }
                        }
                        Sentence { width: parent.width; words: "pH is 7.90 ± 0.06; it should be at most 7.80.".split(" "); markBefore: 2; line: ({ says: "pH", value: 0.6, half: 0.02, low: 0.4, high: 0.55 }) }
                    }
                    Part {
                        title: "Timetable: a step with its cautions, one that waits, one that may be changed"
                        StepRow { width: parent.width; index: 0; day: "tonight"; clock: "20:00"; text: "Lower pH: pour 21 fl oz of pool acid slowly in front of a return, pump running."; amount: "21 fl oz (609 mL)"; after: "Afterwards, we expect: pH 7.5"; cautions: ["Acid burns: goggles and gloves on, nobody downwind.", "Always chemical into water, never water into chemical."] }
                        StepRow { width: parent.width; index: 1; day: ""; clock: "22:00"; text: "Wait, pump running."; amount: ""; after: ""; cautions: [] }
                        StepRow { width: parent.width; index: 2; day: "tomorrow"; clock: "08:00"; text: "Test free chlorine and pH."; amount: ""; after: ""; cautions: []; mayChange: true }
                    }
                }
                Column {
                    width: (columns.width - columns.gap) / 2
                    spacing: Ink.px(28)
                    Part {
                        title: "Ink and ground"
                        Repeater {
                            model: Ink.pairs
                            delegate: Rectangle {
                                id: swatch
                                required property var modelData
                                width: parent.width
                                implicitHeight: Ink.px(34)
                                color: Ink.tones[swatch.modelData[1]]
                                Line { anchors.centerIn: parent; text: swatch.modelData[0] + " on " + swatch.modelData[1]; color: Ink.tones[swatch.modelData[0]] }
                            }
                        }
                    }
                    Part {
                        title: "Choice: open, chosen, pressed, focused, long"
                        Flow {
                            width: parent.width
                            spacing: Ink.px(10)
                            Choice { text: "Plaster" }
                            Choice { text: "Plaster"; chosen: true }
                            Choice { text: "Plaster"; down: true }
                            Choice { text: "Plaster"; FocusFrame { shown: true } }
                            Choice { text: "outdoor pool, 15,000 US gallons (56.8 m³), chlorine from salt"; most: Ink.px(300) }
                        }
                        ChoiceRow { width: parent.width; label: "Its surface"; name: "gallery"; options: [{ key: "a", word: "Tile" }, { key: "b", word: "Vinyl" }]; current: "b" }
                    }
                    Part {
                        title: "Trouble banner: short, long"
                        TroubleBanner { width: parent.width; text: "The line is quiet." }
                        TroubleBanner { width: parent.width; says: "The printer"; text: "It is out of paper. The sheet comes out by itself once that is mended: do not print it again." }
                    }
                    Part {
                        title: "Reading: due, typed, kept with a note, chosen"
                        ReadingRow { width: parent.width; analyte: "a"; name: "Free chlorine"; value: ""; unit: "mg/L Cl2"; how: ""; standing: "due"; note: ""; waits: true; chosen: false }
                        ReadingRow { width: parent.width; analyte: "b"; name: "pH"; value: "7.90"; unit: ""; how: "photometer"; standing: "kept"; note: ""; waits: false; chosen: false }
                        ReadingRow { width: parent.width; analyte: "c"; name: "Copper"; value: "0.06"; unit: "mg/L"; how: "photometer"; standing: "read it again"; note: "It is more than the total, which cannot be."; waits: true; chosen: false }
                        ReadingRow { width: parent.width; analyte: "d"; name: "Stabilizer"; value: "45"; unit: "mg/L"; how: "view tube"; standing: "kept"; note: ""; waits: false; chosen: true }
                    }
                    Part {
                        title: "Number pad; a key focused"
                        NumberPad { width: parent.width }
                        Said { text: "The bottle’s tag, with one and with none" }
                        BottleLine { width: parent.width; code: "B-1012"; who: "Ada Quill"; vessel: "outdoor pool"; clock: "10:00" }
                        BottleLine { width: parent.width; clock: "10:00" }
                        BottleLine { width: parent.width; clock: "10:00"; scanning: "B-10" }
                    }
                }
            }
            Part {
                title: "Then and now: its heading, a row"
                ChangeRow { width: parent.width; heading: true; name: ""; earlier: "16 May"; now: "Now"; expected: "Expected"; text: "" }
                ChangeRow { width: parent.width; name: "pH"; earlier: "7.9"; now: "7.5"; expected: "7.5"; text: "As told." }
            }
        }
    }
}
