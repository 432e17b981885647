// SPDX-License-Identifier: GPL-3.0-or-later
// How often the rules cry where nothing is wrong: a million Gaussian points against the normal integral.
#include "analysis/quality/control.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <map>
#include <random>

#include <gtest/gtest.h>

namespace brimline {
namespace {

constexpr int kPoints = 1'000'000;

// One tail of the normal distribution.
double beyond(double z) {
  return std::erfc(z / std::sqrt(2.0)) / 2;
}

// `each`: points measured together.
std::map<ControlRule, double> counted(int each, double& any) {
  std::mt19937_64 random(20260614);
  std::normal_distribution<double> gauss;
  std::vector<ControlPoint> points;
  std::map<ControlRule, double> out;
  int stopped = 0;
  for (int i = 0; i < kPoints; ++i) {
    if (points.size() == 64) points.erase(points.begin(), points.begin() + 32);
    points.push_back({gauss(random), i / each});
    bool stop = false;
    for (const ControlRule rule : rules_broken(points)) {
      out[rule] += 1.0 / kPoints;
      stop = stop || stops(rule);
    }
    stopped += stop ? 1 : 0;
  }
  any = static_cast<double>(stopped) / kPoints;
  return out;
}

// Chance that a point breaks any stopping rule, each point a run of its own: the stationary state of a chain
// of (points in a row on one side, points in a row beyond 1 sd, last one beyond 2 sd).
double any_by_chain() {
  const double zones[] = {1 - 2 * beyond(1), 2 * (beyond(1) - beyond(2)), 2 * (beyond(2) - beyond(3)),
                          2 * beyond(3)};
  using State = std::array<int, 3>;
  std::map<State, double> chance = {{State{0, 0, 0}, 1.0}};
  double stopped = 0;
  for (int step = 0; step < 200; ++step) {
    std::map<State, double> next;
    stopped = 0;
    for (const auto& [state, p] : chance)
      for (int zone = 0; zone < 4; ++zone)
        for (const bool same : {true, false}) {
          const double share = p * zones[zone] / 2;
          const int side = same ? state[0] + 1 : 1;
          const int ones = zone < 1 ? 0 : same ? state[1] + 1 : 1;
          const bool twice = zone >= 2 && same && state[2] == 1;
          if (zone == 3 || twice || ones >= 4 || side >= 10) stopped += share;
          next[{std::min(side, 9), std::min(ones, 3), zone >= 2 ? 1 : 0}] += share;
        }
    chance = std::move(next);
  }
  return stopped;
}

// Four standard errors of a count that comes in clusters of `together`.
void expect_rate(const char* name, double seen, double theory, double together) {
  std::printf("%-6s  seen %.4f %%  theory %.4f %%\n", name, 100 * seen, 100 * theory);
  EXPECT_NEAR(seen, theory, 4 * std::sqrt(theory * (1 + together) / kPoints)) << name;
}

TEST(FalseAlarms, OnAMillionSoundPoints) {
  double any = 0;
  auto seen = counted(1, any);
  expect_rate("1-2s", seen[ControlRule::beyond_2s], 2 * beyond(2), 0);
  expect_rate("1-3s", seen[ControlRule::beyond_3s], 2 * beyond(3), 0);
  EXPECT_NEAR(seen[ControlRule::beyond_3s], 0.0027, 0.0002);  // 0.27 %: any table of the normal distribution
  EXPECT_NEAR(seen[ControlRule::beyond_2s], 0.0455, 0.0008);  // 4.55 %
  expect_rate("2-2s", seen[ControlRule::two_beyond_2s], 2 * std::pow(beyond(2), 2), 0.1);
  expect_rate("4-1s", seen[ControlRule::four_beyond_1s], 2 * std::pow(beyond(1), 4), 0.5);
  expect_rate("10x", seen[ControlRule::ten_one_side], 2 * std::pow(0.5, 10), 2);
  expect_rate("any", any, any_by_chain(), 1);
  EXPECT_EQ(seen[ControlRule::range_4s], 0);  // never across runs
}

// Two standards a run: the second of a run is opposed to the first.
TEST(FalseAlarms, WithinRunsOfTwo) {
  double any = 0;
  auto seen = counted(2, any);
  expect_rate("R-4s", 2 * seen[ControlRule::range_4s], 2 * std::pow(beyond(2), 2), 1);
}

}  // namespace
}  // namespace brimline
