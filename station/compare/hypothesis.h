// SPDX-License-Identifier: GPL-3.0-or-later
// What may have happened to a water between two bottles, as hypotheses whose weight the readings decide.
//
// A reading moves by mass balance: now = before (1 - f) + fill (f + e) + told / V + causes + error, with f
// the share replaced, e the share evaporated and topped up, V the volume. For a given f and V all the rest is
// linear and its errors normal, so a hypothesis' weight is a normal integral in closed form (Bishop, Pattern
// Recognition and Machine Learning, 2006, equations 2.113 to 2.117; from memory).
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "analysis/panel/uncertainty.h"

namespace brimline {

enum class Cause {
  replaced,
  evaporation,
  acid,
  tablets,
  calcium_hypochlorite,
  stabilizer_eaten,
  alkali,
  salt_added
};
inline constexpr int kCauses = 8;

// A set of causes, a bit each.
using CauseSet = unsigned;
constexpr CauseSet bit(Cause cause) {
  return 1u << static_cast<unsigned>(cause);
}

// One reading over one leg, in its unit; sds of the true values.
struct LegReading {
  AnalyteId analyte;
  Measured before, now, fill;
  double told_per_inverse = 0;  // change by told doses times the volume, unit times m3
  double drift_sd = 0;          // what is left after the causes below
};

struct Leg {
  std::vector<LegReading> readings;
  double months = 1;
  double told_drain = 0;  // share
  bool chlorine = true;
  bool salt_cell = false;
  bool indoor = false;
  bool after_storm = false;     // rain is likely to have replaced water
  bool tablets_in_use = false;  // as the customer says
  bool small_and_warm = false;  // spas, swim spas and plunges are emptied often
};

enum class Detail { coarse, fine };  // of the grid over f

// One hypothesis met by the readings: its weight (log, not normalised) and where each reading's true value
// is then, parallel to the leg's readings.
struct Weighed {
  CauseSet causes = 0;
  double fraction = 0;  // replaced; 0 unless Cause::replaced is among them
  double log_weight = 0;
  const std::vector<Measured>* truth = nullptr;  // absent unless asked for
};

// Weighs every hypothesis of one or two causes at `inverse_volume` (1/m3; 0: no told dose was put in).
void weigh(const Leg& leg, double inverse_volume, Detail detail, bool want_truth,
           const std::function<void(const Weighed&)>& take);

}  // namespace brimline
