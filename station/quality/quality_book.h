// SPDX-License-Identifier: GPL-3.0-or-later
// What the shop writes down of the checks of its instruments against standards, as values.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "analysis/calibration/line.h"
#include "analysis/instant.h"
#include "analysis/panel/reading.h"

namespace brimline {

// A solution or glass of known value that an instrument is checked with.
struct CheckStandard {
  std::string id;
  std::string instrument;  // as readings name it
  AnalyteId analyte;
  std::string name;       // as the shop calls it
  double value = 0;       // what it should read, analyte's unit
  double sd = 0;          // of one measurement of a sound instrument, analyte's unit; above zero
  double every_days = 7;  // to be measured so often; above zero
  Instant since;          // in use from then
  friend bool operator==(const CheckStandard&, const CheckStandard&) = default;
};

// One measurement of a standard. Never changed, never removed.
struct CheckMeasurement {
  std::string id;
  std::string standard;  // its id
  Instant at;
  double value = 0;    // analyte's unit
  bool typed = false;  // by hand; else it came on the line
  std::string lot;     // reagent lot used; empty: not known
  friend bool operator==(const CheckMeasurement&, const CheckMeasurement&) = default;
};

// A stopped analyte is let go on, by a named member of staff, with what was found and done.
struct Clearance {
  std::string id;
  std::string instrument;
  AnalyteId analyte;
  Instant at;
  std::string by, reason;  // neither empty
  friend bool operator==(const Clearance&, const Clearance&) = default;
};

// The standards an absorbance curve of a lot was measured with. Never changed; the latest counts.
struct LotCurve {
  std::string id;
  std::string lot;  // reagent lot
  double wavelength_nm = 0;
  Instant at;
  std::vector<CalibrationPoint> points;  // amount; net absorbance per cm
};

struct QualityBook {
  std::vector<CheckStandard> standards;
  std::vector<CheckMeasurement> measurements;  // oldest first
  std::vector<Clearance> clearances;           // oldest first
  std::vector<LotCurve> curves;                // oldest first

  const CheckStandard* standard(const std::string& id) const;
};

}  // namespace brimline
