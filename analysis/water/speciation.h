// SPDX-License-Identifier: GPL-3.0-or-later
// The equilibrium of one water, solved by Newton on at most three unknowns - activity of H+, free carbonate,
// free sulfate - with the ionic strength made consistent beside it. Metals are eliminated by their mass
// balances and chlorine by a safeguarded Newton of its own, so nothing is left out and nothing allocated.
#pragma once

#include "analysis/water/activity.h"
#include "analysis/water/totals.h"

namespace brimline {

// What closes the system besides the totals.
enum class Given {
  ph,       // pH and alkalinity; carbon follows
  totals,   // alkalinity and carbon; pH follows
  calcite,  // totals, calcite to saturation; pH and the amount precipitated follow
  air       // alkalinity and activity of CO2; pH and carbon follow
};

// How sodium and chloride follow while carbon is not yet known.
enum class Background { fixed, dissolved_solids, ionic_strength };

struct Problem {
  Given given = Given::totals;
  Totals totals;
  double hydrogen = 1e-7;   // activity of H+: given for Given::ph, else where to start
  double co2_activity = 0;  // for Given::air
  Background background = Background::fixed;
  double background_target = 0;  // kg/kgw of dissolved solids without the carbon, or mol/kgw
};

// Iterates of the solver; a solved state is a good start for a water nearby.
struct State {
  double hydrogen = 0;   // activity
  double carbonate = 0;  // free, mol/kgw
  double sulfate = 0;    // free
  double hypochlorous = 0;
  double ionic_strength = 0;
};

struct Solution {
  bool found = false;
  bool too_salty = false;         // found is false because ionic strength ran beyond all use
  bool alkalinity_short = false;  // found is false because nothing is left for carbonate
  State state;
  Conditional constants;
  Totals totals;  // with what followed: carbon, background, calcite taken out
  double free_calcium = 0;
  double precipitated = 0;  // for Given::calcite, mol/kgw
  double carbonate_alkalinity = 0, cyanurate_alkalinity = 0, borate_alkalinity = 0;
};

// `start` may be null. Bounded work whatever the totals.
Solution solve_equilibrium(const Problem& problem, const Constants& constants, const State* start = nullptr);

}  // namespace brimline
