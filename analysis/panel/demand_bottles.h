// SPDX-License-Identifier: GPL-3.0-or-later
// Inside of the demand test: what each bottle says, and the demand fitted through those that hold.
#pragma once

#include <span>
#include <vector>

#include "analysis/panel/demand.h"

namespace brimline {

// One bottle of the series with its word.
struct JudgedBottle {
  DemandBottle bottle;
  DemandWord word = DemandWord::nothing;
  double kept() const { return 1 - bottle.stock_share; }  // share of the mixture that is sample
};

// sd of a residual of this size in this bottle, mg/L Cl2.
double residual_sd(double residual, const DemandBottle& bottle, Method method);

// By rising dose. A bottle with no end reading takes a `later` one of the test's hours.
std::vector<JudgedBottle> judge_bottles(const DemandTest& test, double free_now, Method method);

// Least squares over the bottles that hold: residual = dose + (free now - demand) kept, and free now as it
// was read.
struct DemandFit {
  Measured demand;        // mg/L Cl2 of the undiluted water
  Measured net;           // demand less free now: what the bottles tell without the sample's own reading
  double chi_square = 0;  // of the residuals
  size_t bottles = 0;
};
// At least one bottle.
DemandFit fit_demand(std::span<const JudgedBottle> held, const Measured& free_now, Method method);

// Where the bottle should stand by the fit, mg/L Cl2; below 0: used up.
double expected_residual(const DemandBottle& bottle, double net);

}  // namespace brimline
