// SPDX-License-Identifier: GPL-3.0-or-later
// A finding: one thing the water does, or one thing about a reading, that the customer should know.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "analysis/panel/reading.h"

namespace brimline {

// Who or what is hurt, worst first.
enum class Concern { health, equipment, surface, clarity, comfort, upkeep, reading };

// A target range in the analyte's unit; either side may be open.
struct Target {
  std::optional<double> low, high;
  friend bool operator==(const Target&, const Target&) = default;
};

struct Finding {
  std::string id;  // "ph_high"; for ever
  int rank = 0;    // 1 is the first to act on
  Concern concern = Concern::upkeep;
  std::optional<AnalyteId> analyte;
  std::optional<double> value;  // in the analyte's unit
  std::optional<Target> target;
  std::string text;          // plain words, in the language of the sheet
  std::optional<double> sd;  // of the value, same unit; absent: not a reading, or its error is not known
  friend bool operator==(const Finding&, const Finding&) = default;
};

}  // namespace brimline
