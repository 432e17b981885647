// SPDX-License-Identifier: GPL-3.0-or-later
// A year of one reading: which, what it says, its picture, and how that is read.
import QtQuick
import Counter

Column {
    id: part
    required property YearChart year

    visible: part.year.readings.length > 0
    spacing: Ink.px(10)

    Section { width: part.width; text: qsTr("A year of one reading") }
    ChoiceRow {
        width: part.width
        name: "year"
        options: part.year.readings
        current: part.year.reading
        onPicked: key => part.year.reading = key
    }
    Prose { objectName: "year_says"; width: part.width; text: part.year.says }
    ChartPicture {
        objectName: "year_picture"
        width: part.width
        height: Ink.px(250)
        rules: part.year.rules
        band: part.year.band
        points: part.year.points
        ticks: part.year.ticks
        dates: part.year.dates
        says: part.year.inWords
    }
    Line {
        objectName: "year_legend"
        width: part.width
        text: qsTr("Round: a reading, with its standard deviation as a bar. Square: outside the target beyond its error. Hollow: at the end of what the method can show. Band: the target. Ticks at the foot: doses told, tall where the plan says that they move this reading.")
        font.pixelSize: Ink.small
        pale: true
    }
}
