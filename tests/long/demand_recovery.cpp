// SPDX-License-Identifier: GPL-3.0-or-later
// 2,000 simulated demand tests a world, with known truth: build/long/demand_recovery. The last table stands
// in demand_recovery.txt beside this file. Ends with 1 where a 95 % interval holds the truth less than 93 or
// more than 97 times in a hundred.
#include <iostream>

#include "tests/analysis/panel/simulated_demand.h"

int main() {
  using namespace brimline;
  const std::vector<DemandWorld> worlds = demand_worlds();
  std::vector<DemandScore> scores;
  bool good = true;
  for (const DemandWorld& world : worlds) {
    scores.push_back(score_demand(world, 2000, 7));
    const double coverage = scores.back().coverage();
    good = good && (world.stock_relative_sd > 0 || (coverage >= 93 && coverage <= 97));
  }
  std::cout << demand_table(worlds, scores);
  return good ? 0 : 1;
}
