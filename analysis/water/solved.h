// SPDX-License-Identifier: GPL-3.0-or-later
// Between the solver and the water's public face; for this folder only.
#pragma once

#include "analysis/water/speciation.h"
#include "analysis/water/water.h"

namespace brimline::detail {

inline constexpr double kColdest = 0, kWarmest = 45;                 // Celsius
inline constexpr double kLowestPh = 4, kHighestPh = 11;              // of readings
inline constexpr double kLowestSolvedPh = 3, kHighestSolvedPh = 12;  // of what doses may lead to

// Ionic strength, mol/kgw, to which the activity model is held good; a little more for what doses, and
// rounding, may lead to. Davies 1962 is commonly given to 0.5 and Truesdell & Jones 1974 to about 1; from
// memory.
inline constexpr double kSaltiest = 1, kSaltiestSolved = 1.1;

inline bool temperature_inside(Temperature t) {
  return t.celsius() >= kColdest && t.celsius() <= kWarmest;
}

// kg/kgw
double dissolved_solids(const Totals& totals);

Water water_of(const Solution& solution, const Constants& constants);
State state_of(const Water& water);

// Solution of a problem whose pH is unknown: Newton, and where that fails or leaves pH 4-11, bisection on pH.
tl::expected<Solution, Refusal> solve_for_ph(const Problem& problem, const Constants& constants,
                                             const State* start = nullptr);

}  // namespace brimline::detail
