// SPDX-License-Identifier: GPL-3.0-or-later
// Random waters by kind of vessel and occasion, for the laws of the plan: invented, seeded, the same
// on every machine. And the laws themselves, as functions of a visit and its plan, so that the short
// test and the long run judge by the same words.
#pragma once

#include <span>

#include "tests/station/plan/household.h"

namespace brimline {

enum class Home {
  chlorine_stabilised,
  chlorine_unstabilised,
  salt_cell,
  bromine_pool,
  bromine_spa,
  biguanide,
  chlorine_spa,
  swim_spa,
  plunge,
  indoor,
  new_plaster,
  opening,
  closing,
  new_fill,
  after_storm,
  trouble
};
inline constexpr int kHomes = 16;
const char* name_of(Home home);

// A visit of this kind; `wide` also draws waters far out of range.
Visit random_home(Home home, std::uint64_t seed);
// The built-in shelf with other prices and without some of its products, never without all acids,
// hypochlorites, bicarbonate and soda ash.
Shelf random_shelf(std::uint64_t seed);

// Where the readings stand once the plan is done: its last `after`, else the bottle's own.
struct End {
  std::map<AnalyteId, double> readings;
  std::optional<double> si;
};
End end_of(const Visit& visit, const Plan& plan);

// Analytes outside their target at the end ("si_calcite" too); free chlorine is left out where a shock
// or a demand dose stands overnight, and what nothing on a shelf moves (metals, nitrate).
std::vector<AnalyteId> outside(const Visit& visit, const Plan& plan, const TargetSet& targets);

// Whether some doses end inside every target with neither air nor unknown fill water: no total is above
// its target after the plan's own drains, and carbon, which no dose takes away, is at most what the
// highest alkalinity at the lowest pH holds.
bool reachable(const Visit& visit, const Plan& plan, const TargetSet& targets);

// The laws that are broken, in words; empty is right.
std::vector<std::string> broken_laws(const Visit& visit, const Plan& plan, const Shelf& shelf,
                                     const TargetSet& targets);

}  // namespace brimline
