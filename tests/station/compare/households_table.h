// SPDX-License-Identifier: GPL-3.0-or-later
// Comparison against invented households of which all is known: how often the truth lies in the 90 %
// interval, and how often the cause named first is the right one.
#pragma once

#include <map>
#include <ostream>
#include <string>

#include "tests/station/compare/households.h"

namespace brimline::tests {

struct HouseholdTally {
  int found = 0, inside = 0;
  double share() const { return found > 0 ? double(inside) / found : 0; }
};

struct HouseholdTable {
  HouseholdTally replaced, truly_replaced, volume, narrowed;
  int missed = 0, claimed = 0;  // water replaced
  HouseholdTally right;
  std::map<std::string, std::map<std::string, int>> named;  // truth -> named first
  std::map<std::string, HouseholdTally> right_of;           // truth
};

// As many of each truth, with 2 to 5 visits each.
HouseholdTable compare_households(int count, bool everyday, unsigned seed);
void print(std::ostream& to, const HouseholdTable& table, const char* title);

inline constexpr const char* kOrdinaryMonths =
    "ordinary months: evaporation, splash, doses by the cup, what people forget to tell";
inline constexpr const char* kBareMonths = "mass balance and errors of reading alone";

}  // namespace brimline::tests
