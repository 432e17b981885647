// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet's findings and steps as rows for the screen, so that screen and paper say the same.
#pragma once

#include <QList>
#include <QVariantMap>

#include <set>

#include "printing/sheet.h"

namespace brimline {

// Roles: words, markBefore, line, concern, first.
QList<QVariantMap> finding_rows(const Plan& plan, const Visit& visit, const Visit* earlier,
                                const Words& words);
// Roles: day, clock, text, amount, after, cautions.
QList<QVariantMap> step_rows(const Sheet& sheet, const Plan& plan, const Words& words);

// What the step is for: the analytes of its findings.
std::set<AnalyteId> analytes_of(const Step& step, const Plan& plan);

// A waterline as shares of its range: value, half, low, high, last, and what it says in words.
QVariantMap waterline_shares(const Waterline& line);

}  // namespace brimline
