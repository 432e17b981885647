// SPDX-License-Identifier: GPL-3.0-or-later
// A year of a vessel: what was read of it, visit after visit, and when a told plan had something added.
#pragma once

#include <span>
#include <vector>

#include "analysis/panel/uncertainty.h"
#include "station/visit.h"

namespace brimline {

inline constexpr double kYearHours = 365 * 24;

// The readings of one analyte in one bottle, repeats combined.
struct YearPoint {
  Instant when;
  double at = 0;                // share of the year gone by then, 0 to 1
  Measured read;                // in the analyte's unit
  std::optional<Clip> clipped;  // the method stood at the end of its range: the value is no more than a bound
};

struct YearOfReading {
  AnalyteId analyte;
  std::vector<YearPoint> points;  // oldest first, one or more
};

// One step of a told plan that adds something, whether or not anybody did it.
struct ToldDose {
  Instant when;
  double at = 0;                 // share of the year gone by then, 0 to 1
  std::vector<AnalyteId> moves;  // what the plan says it moves by a digit that is shown; sorted
};

struct VesselYear {
  Instant from, to;
  std::vector<YearOfReading> readings;  // as the panel has them weekly, then monthly, then by id
  std::vector<ToldDose> doses;          // oldest first
  const YearOfReading* find(std::string_view analyte) const;  // null: not read in the year
};

// The 365 days up to `until`, of visits of one vessel, oldest first. A visit without a time is left out.
VesselYear year_of(std::span<const Visit> visits, const Instant& until);

}  // namespace brimline
