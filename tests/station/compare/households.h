// SPDX-License-Identifier: GPL-3.0-or-later
// Invented households of which all is known: the volume, what was put in, how much water was replaced and why
// the readings moved. By mass balance and stoichiometry alone, none of it from the code under test.
#pragma once

#include <map>
#include <random>
#include <string>
#include <vector>

#include "station/visit.h"

namespace brimline::tests {

enum class Truth { nothing, replaced, evaporation, acid, tablets, calcium_hypochlorite, demand };
inline constexpr int kTruths = 7;
const char* name_of(Truth truth);         // as the row of the table
const char* explanation_of(Truth truth);  // id of the explanation; "" for nothing

struct SimulatedHousehold {
  std::vector<Visit> visits;  // oldest first
  double volume = 0;          // m3
  double replaced = 0;        // share of the water, in the last stretch
  Truth truth = Truth::nothing;
  bool dosed = false;  // a told dose in any stretch
};

// `everyday`: evaporation, splash, doses measured out at home and a drifting alkalinity besides; without it
// only mass balance and the errors of reading.
SimulatedHousehold invent(std::mt19937_64& random, Truth truth, bool everyday, int visits);

}  // namespace brimline::tests
