// SPDX-License-Identifier: GPL-3.0-or-later
// Invented households of which all is known: the volume, what was put in, how much water was replaced and why
// the readings moved. By mass balance and stoichiometry alone, none of it from the code under test.
#pragma once

#include <map>
#include <random>
#include <string>
#include <string_view>
#include <vector>

#include "station/visit.h"

namespace brimline::tests {

// What happened in the last stretch besides what is told and what every month does.
enum class Truth {
  nothing,
  replaced,
  evaporation,
  acid,
  tablets,
  calcium_hypochlorite,
  demand,
  alkali,      // bicarbonate put in and not told
  not_put_in,  // a dose told and forgotten
};
inline constexpr int kTruths = 9;
const char* name_of(Truth truth);  // as the row of the table

struct SimulatedHousehold {
  std::vector<Visit> visits;  // oldest first
  double volume = 0;          // m3
  double replaced = 0;        // share of the water, in the last stretch
  Truth truth = Truth::nothing;
  bool dosed = false;  // a told dose in any stretch

  // Whether the explanation named first is right; "" where none was given. Where nothing happened that is
  // no explanation, or that what was told worked, or that the volume is wrong where it is (by 1.96 sd).
  bool right(std::string_view first) const;
};

// `everyday`: evaporation, splash, chlorine fed day by day, doses measured out at home, what people forget to
// tell, and earlier stretches with happenings of their own; without it only mass balance and the errors of
// reading, with each reading taken every time.
SimulatedHousehold invent(std::mt19937_64& random, Truth truth, bool everyday, int visits);

}  // namespace brimline::tests
