// SPDX-License-Identifier: GPL-3.0-or-later
// Overnight tests as rows for the screen: the bottles of one, and all that go on.
#pragma once

#include <QList>
#include <QVariantMap>

#include "analysis/panel/demand.h"
#include "qml/models/counter.h"

namespace brimline {

// One number of the table of readings.
struct OvernightCell {
  int bottle = 0;
  OvernightDue due = OvernightDue::hour;
  AnalyteId analyte = "free_chlorine";
  friend bool operator==(const OvernightCell&, const OvernightCell&) = default;
};

// The next cell that waits for a reading of that time, after `from` and then from the beginning; nothing: all
// are read.
std::optional<OvernightCell> next_cell(const OvernightTest& test, OvernightDue due,
                                       const OvernightCell& from);

// "Bottle 3, 5 mg/L: free chlorine after 24 hours"
QString cell_words(const OvernightTest& test, const OvernightCell& cell);

// The dilution that the pad proposes for the cell, as the key of a choice.
QString dilution_for(const OvernightTest& test, const OvernightCell& cell, double free_now);

// Roles: code, dose, stock, hourFree, hourTotal, dayFree, dayTotal, marked (the key of a column, or empty),
// word.
QList<QVariantMap> bottle_rows(const Words& words, const OvernightTest& test, const Visit& visit,
                               const OvernightCell& marked);

// All that go on, what calls for the clerk first. Roles: visitId, code, who, due, calls, phone, result.
QList<QVariantMap> overnight_rows(const Counter& counter);

// "free" and "total" with the time: the key of a cell's column.
QString column_of(const OvernightCell& cell);

}  // namespace brimline
