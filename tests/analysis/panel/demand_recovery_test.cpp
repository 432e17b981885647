// SPDX-License-Identifier: GPL-3.0-or-later
// Simulated demand tests with known truth: 95 % intervals must hold it 93 to 97 times in a hundred. The long
// form with 2,000 tests a world and its last table stand in tests/long.
#include <iostream>

#include <gtest/gtest.h>

#include "tests/analysis/panel/simulated_demand.h"

namespace brimline {
namespace {

// 400 tests of a 95 % interval: 1.1 % is one sd of the share, so 91.5 to 98.3 are three sds.
TEST(DemandRecovery, IntervalsHoldTheTruth) {
  const std::vector<DemandWorld> worlds = demand_worlds();
  std::vector<DemandScore> scores;
  for (const DemandWorld& world : worlds) scores.push_back(score_demand(world, 400, 20260614));
  std::cout << demand_table(worlds, scores);
  for (size_t i = 0; i < worlds.size(); ++i) {
    if (worlds[i].stock_relative_sd > 0) continue;  // shown, not asked
    EXPECT_GE(scores[i].coverage(), 91.5) << worlds[i].name;
    EXPECT_LE(scores[i].coverage(), 98.3) << worlds[i].name;
    EXPECT_EQ(scores[i].false_bound, 0) << worlds[i].name;
    EXPECT_GE(scores[i].enough, 300) << worlds[i].name;
  }
}

}  // namespace
}  // namespace brimline
