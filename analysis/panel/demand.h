// SPDX-License-Identifier: GPL-3.0-or-later
// The chlorine-demand test: bottles of the sample dosed with rising chlorine and read after a day. The idea
// is that of Standard Methods 2350 (from memory); demand is dose less residual at the end of the time.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "analysis/panel/bottle.h"
#include "analysis/panel/uncertainty.h"

namespace brimline {

// What one bottle says of the undiluted water.
enum class DemandWord {
  measures,     // chlorine stands and little is combined: the demand is met
  lower_bound,  // used up, or still combined: the demand is more
  upper_bound,  // over the method's range: the demand is less
  nothing       // bleached, or not read
};

struct DemandBottleResult {
  double dose_mg_l = 0;
  DemandWord word = DemandWord::nothing;
  Measured used;  // chlorine used by the undiluted water, mg/L Cl2
};

struct DemandResult {
  std::optional<Measured> demand;      // mg/L Cl2, at `at_hours`; absent: not found
  std::optional<double> demand_above;  // greatest lower bound where the demand was not found
  std::optional<double> demand_below;  // least upper bound, of over-range bottles
  double at_hours = 24;
  std::optional<double> demand_infinite;  // limited first order through the readings in time; absent: too few
  bool breakpoint_reached = false;        // chlorine stands, and combined chlorine was read and is low
  std::optional<double> dose;  // demand + target residual - free chlorine now; no margin; not below 0
  std::vector<DemandBottleResult> bottles;  // by rising dose
  bool enough() const { return demand.has_value(); }
  std::string text() const;  // plain English: what was found and what to do
};

// Residuals and the combined chlorine that count as held, mg/L Cl2.
inline constexpr double kHeldFree = 1;
inline constexpr double kHeldCombined = 0.5;

// used = (dose + free_now (1 - share) - free_end) / (1 - share): mass balance of the mixture, per undiluted
// water.
double chlorine_used(const DemandBottle& bottle, double free_now, double free_end);

// `free_now`: the sample's own reading; `target_residual`: mg/L Cl2 wanted at the end.
DemandResult judge_demand(const DemandTest& test, const Measured& free_now, double target_residual);

// D(t) = D (1 - exp(-k t)) through (hours, demand) by least squares; nothing for fewer than two times or
// where the end lies beyond what the times show.
std::optional<double> limited_first_order(std::span<const double> demands, std::span<const double> hours);

}  // namespace brimline
