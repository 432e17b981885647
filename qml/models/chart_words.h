// SPDX-License-Identifier: GPL-3.0-or-later
// Control charts in words.
#pragma once

#include <QString>

#include "station/quality/charts.h"

namespace brimline {

// "two in a row beyond the same 2 sd (2-2s)"
QString rule_words(ControlRule rule);
// "stopped", "to be checked", "right"
QString standing_words(CheckStanding standing);
// How the chart stands and what is to be done, in a sentence or two.
QString chart_story(const CheckChart& chart, const Instant& now);
// "yesterday 08:00: 1.02, +0.4 sd"; what it broke.
QString point_words(const ChartPoint& point, const Instant& now);
// The analyte's name in the clerk's language.
QString analyte_words(const AnalyteId& analyte);

}  // namespace brimline
