// SPDX-License-Identifier: GPL-3.0-or-later
// The choice of doses as a mixed-integer program: how much of each product, and in how many steps, so that
// every goal is met at the least cost. Linear in the doses; whoever asks re-linearises what is not
// (dose_choice).
#pragma once

#include <optional>
#include <vector>

#include "analysis/findings/finding.h"

namespace brimline {

// A product the program may pour. Amounts in mmol per kilogram of water.
struct ProgramColumn {
  double cost = 0;       // a mmol/kgw
  double step_cost = 0;  // a step
  double step_most = 1;  // of a step
  double most = 1;       // of all steps
  int side = 0;          // two products of different sides but 0 are never chosen together
};

// A value that should end in its range: start + sum of slopes * doses.
struct ProgramRow {
  double start = 0;
  std::vector<double> slopes;  // a column each
  Target wanted;               // where the dose goes if it costs little
  Target range;                // where it must end
  double weight = 1;           // of what lies outside `range`, per width
  double soft_weight = 1;      // of what lies outside `wanted`
  double width = 1;            // one unit of the weights
};

struct ProgramAnswer {
  std::vector<double> doses;  // mmol/kgw
  double weighed = 0;         // the objective
};

// Nothing where the solver gave up (never seen: every goal may be missed at its weight).
std::optional<ProgramAnswer> solve_program(const std::vector<ProgramColumn>& columns,
                                           const std::vector<ProgramRow>& rows);

// The objective of given doses, with the rows' values as they truly are.
double weigh(const std::vector<ProgramColumn>& columns, const std::vector<ProgramRow>& rows,
             const std::vector<double>& doses, const std::vector<double>& values);

}  // namespace brimline
