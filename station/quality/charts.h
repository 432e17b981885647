// SPDX-License-Identifier: GPL-3.0-or-later
// Control charts: one for each analyte of each instrument that has check standards.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "analysis/quality/control.h"
#include "station/quality/quality_book.h"

namespace brimline {

enum class CheckStanding {
  sound,   // checked in time, no rule broken
  due,     // to be checked now; also where it was never checked
  stopped  // a rule was broken and nobody has cleared it: readings of the analyte do not count
};

struct ChartPoint {
  CheckMeasurement measured;
  double z = 0;                     // standard deviations from the standard's value
  int run = 0;                      // measured within an hour: the same number
  std::vector<ControlRule> broken;  // by this point
  bool counts = true;               // false: before the last clearance, history begins anew after it
};

struct CheckChart {
  std::string instrument;
  AnalyteId analyte;
  std::vector<ChartPoint> points;  // oldest first
  std::vector<Clearance> cleared;
  CheckStanding standing = CheckStanding::due;
  std::optional<ControlRule> stopped_by;  // the first that stopped it
  std::optional<Instant> last;            // last measured; absent: never
  Instant due_at;
};

// In the order of the standards. What was measured after `now` is not seen.
std::vector<CheckChart> charts_at(const QualityBook& book, const Instant& now);

}  // namespace brimline
