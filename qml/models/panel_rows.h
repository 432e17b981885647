// SPDX-License-Identifier: GPL-3.0-or-later
// The panel as rows for the bench: what is due, what was kept, what is to be read again.
#pragma once

#include <QList>
#include <QVariantMap>

#include <vector>

#include "qml/models/counter.h"

namespace brimline {

std::vector<AnalyteId> due_of(const Counter& counter);
// Due and not read.
std::vector<AnalyteId> still_due(const Bottle& bottle, const std::vector<AnalyteId>& due);

// Due analytes first, in their order, then whatever else was read, then all that could be.
// Roles: analyte, name, value, unit, how, standing, note, waits, chosen.
QList<QVariantMap> panel_rows(const Counter& counter, const std::vector<AnalyteId>& due,
                              const AnalyteId& chosen);

}  // namespace brimline
