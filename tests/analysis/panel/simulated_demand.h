// SPDX-License-Identifier: GPL-3.0-or-later
// Invented demand tests with a known truth, for the short recovery and the long one.
#pragma once

#include <random>
#include <string>

#include "analysis/panel/demand.h"

namespace brimline {

// How a series of simulated tests is made.
struct DemandWorld {
  std::string name;
  double demand_low = 1, demand_high = 28;  // mg/L Cl2, uniform
  std::vector<double> doses = {0, 2, 5, 10, 15, 20, 30, 40};
  double stock_mg_l = 2000;      // 0: no dilution by the stock
  double free_now_high = 0.5;    // uniform from 0
  double stock_relative_sd = 0;  // of the doses, common to all bottles
  double noise = 1;              // times the method's own sd
  double undiluted_to = 5;       // residuals above are read at 1+4, above 25 at 1+9
  bool bleaches = false;         // bottles are read undiluted first: from 12 mg/L they show nothing
  bool in_time = false;          // read at 1 h too: half of the demand is met by then
  bool combined = true;          // before the breakpoint a tenth of the dose stays combined
};

struct SimulatedDemand {
  DemandTest test;
  Measured free_now;
  double demand = 0;  // the truth
};

SimulatedDemand simulate_demand(std::mt19937_64& random, const DemandWorld& world);

struct DemandScore {
  int tests = 0, enough = 0;
  int covered = 0;       // demand within 1.96 sd
  int dose_covered = 0;  // the dose likewise, by its own sd
  int false_bound = 0;   // not enough, and "above X" is above the truth by over 3 sds of a reading
  double squares = 0;    // of the error in sds
  double coverage() const { return enough ? 100.0 * covered / enough : 0; }
};
DemandScore score_demand(const DemandWorld& world, int tests, unsigned seed);

// The worlds both tests go through.
std::vector<DemandWorld> demand_worlds();
// A table of the scores, one world a line.
std::string demand_table(const std::vector<DemandWorld>& worlds, const std::vector<DemandScore>& scores);

}  // namespace brimline
