// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/analysis/panel/simulated_demand.h"

#include <algorithm>
#include <cmath>
#include <iomanip>
#include <sstream>

namespace brimline {

namespace {

using Random = std::mt19937_64;

double between(Random& random, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(random);
}

double noisy(Random& random, double truth, double dilution, double noise) {
  Reading r;
  r.analyte = "free_chlorine";
  r.method = Method::photometer;
  r.value = truth;
  r.dilution = dilution;
  const double sd = noise * reading_sd(r);
  return std::max(0.0, std::normal_distribution<double>(truth, sd)(random));
}

DemandBottle read_bottle(Random& random, const DemandWorld& w, const SimulatedDemand& s, double free_now,
                         double dose, double stock_error) {
  DemandBottle b;
  b.dose_mg_l = dose;
  b.stock_share = w.stock_mg_l > 0 ? dose / w.stock_mg_l : 0;
  const double kept = 1 - b.stock_share, real = dose * (1 + stock_error);
  const double left = real + (free_now - s.demand) * kept;
  const double free = std::max(0.0, left);
  const double combined = left > 0 ? 0.05 : (w.combined ? 0.1 * real : 0.1);
  b.dilution = free <= w.undiluted_to ? 1 : (free <= 25 ? 5 : 10);
  if (w.bleaches && free > 12) {
    b.dilution = 1;
    b.free_mg_l = between(random, 0, 0.2);
    b.total_mg_l = between(random, 0, 0.2);
  } else if (w.bleaches && free > 8) {
    b.dilution = 1;
    b.free_mg_l = b.total_mg_l = 10;
    b.clipped = Clip::above;
  } else {
    b.free_mg_l = noisy(random, free, b.dilution, w.noise);
    b.total_mg_l = noisy(random, free + combined, b.dilution, w.noise);
  }
  if (w.in_time) {
    const double then = real + (free_now - 0.5 * s.demand) * kept;
    b.later.push_back({1, noisy(random, std::max(0.0, then), b.dilution, w.noise), std::nullopt});
  }
  return b;
}

}  // namespace

SimulatedDemand simulate_demand(Random& random, const DemandWorld& w) {
  SimulatedDemand s;
  s.demand = between(random, w.demand_low, w.demand_high);
  const double free_now = between(random, 0, w.free_now_high);
  Reading now;
  now.analyte = "free_chlorine";
  now.value = noisy(random, free_now, 1, w.noise);
  s.free_now = measured(now);
  const double stock_error =
      w.stock_relative_sd > 0 ? std::normal_distribution<double>(0, w.stock_relative_sd)(random) : 0;
  for (const double dose : w.doses)
    s.test.bottles.push_back(read_bottle(random, w, s, free_now, dose, stock_error));
  return s;
}

DemandScore score_demand(const DemandWorld& world, int tests, unsigned seed) {
  Random random(seed);
  DemandScore score;
  for (int i = 0; i < tests; ++i) {
    const SimulatedDemand s = simulate_demand(random, world);
    const DemandResult r = judge_demand(s.test, s.free_now, 3);
    ++score.tests;
    if (!r.enough()) {
      score.false_bound += *r.demand_above > s.demand + 0.25;
      continue;
    }
    ++score.enough;
    const double off = (r.demand->value - s.demand) / r.demand->sd;
    score.covered += std::abs(off) <= 1.96;
    score.squares += off * off;
  }
  return score;
}

std::vector<DemandWorld> demand_worlds() {
  std::vector<DemandWorld> worlds(1);
  worlds[0].name = "eight bottles, demand 1 to 28";
  const auto add = [&](const char* name) -> DemandWorld& {
    worlds.push_back(DemandWorld{});
    worlds.back().name = name;
    return worlds.back();
  };
  add("six bottles by five, no stock share").doses = {0, 5, 10, 15, 20, 25};
  worlds.back().stock_mg_l = 0;
  worlds.back().demand_high = 22;
  add("weak stock, 200 mg/L").stock_mg_l = 200;
  add("one bottle that holds").doses = {0, 10, 30};
  worlds.back().demand_low = 11;
  add("chlorine in the sample").free_now_high = 4;
  add("read at 1 h too").in_time = true;
  add("strong bottles bleached").bleaches = true;
  add("nothing stays combined").combined = false;
  add("read undiluted to 10").undiluted_to = 10;
  add("small demand").demand_high = 3;
  worlds.back().doses = {0, 1, 2, 3, 4, 5};
  add("stock off by 1 %").stock_relative_sd = 0.01;
  return worlds;
}

std::string demand_table(const std::vector<DemandWorld>& worlds, const std::vector<DemandScore>& scores) {
  std::ostringstream out;
  out << std::left << std::setw(40) << "simulated demand tests"
      << "tests   enough  covered %  rms of error/sd  "
      << "false bounds\n";
  out << std::fixed;
  for (size_t i = 0; i < worlds.size(); ++i) {
    const DemandScore& s = scores[i];
    out << std::setw(40) << worlds[i].name << std::setw(8) << s.tests << std::setw(8) << s.enough
        << std::setw(11) << std::setprecision(1) << s.coverage() << std::setw(17) << std::setprecision(2)
        << std::sqrt(s.squares / std::max(1, s.enough)) << s.false_bound << "\n";
  }
  return out.str();
}

}  // namespace brimline
