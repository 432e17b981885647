// SPDX-License-Identifier: GPL-3.0-or-later
// Waters of a known demand, dosed by the arithmetic of a mixture, must give that demand back.
#include "analysis/panel/demand.h"

#include <cmath>

#include <gtest/gtest.h>

namespace brimline {
namespace {

// `demand`: of the undiluted water; `stock`: strength in mg/L.
DemandBottle bottle_of(double demand, double free_now, double dose, double stock) {
  DemandBottle bottle;
  bottle.dose_mg_l = dose;
  bottle.stock_share = dose / stock;
  const double left = dose + (free_now - demand) * (1 - bottle.stock_share);
  bottle.free_mg_l = std::max(0.0, left);
  bottle.total_mg_l = *bottle.free_mg_l + (left > 0 ? 0.1 : 0.8);
  bottle.dilution = left > 5 ? 5 : 1;
  return bottle;
}

DemandTest test_of(double demand, double free_now, double stock = 1000) {
  DemandTest test;
  for (const double dose : {0., 2., 5., 10., 20., 30., 40.})
    test.bottles.push_back(bottle_of(demand, free_now, dose, stock));
  return test;
}

// Our procedure's own case: 40 mL of 100 mg/L stock into 100 mL of sample make 28.6 mg/L, not 40.
TEST(Demand, TheDoseIsThatOfTheMixture) {
  DemandBottle bottle;
  bottle.dose_mg_l = 100 * 40. / 140.;
  bottle.stock_share = 40. / 140.;
  // 100 mL of sample took all 4 mg of chlorine in the stock: 40 mg for each litre of it
  EXPECT_NEAR(chlorine_used(bottle, 0, 0), 40, 1e-9);
}

TEST(Demand, AKnownDemandComesBack) {
  for (const double demand : {0.5, 3., 7., 15., 27., 35.})
    for (const double free_now : {0., 1.5})
      for (const double stock : {200., 1000., 5000.}) {
        const DemandResult r = judge_demand(test_of(demand, free_now, stock), {free_now, 0.05}, 3);
        ASSERT_TRUE(r.enough()) << demand;
        EXPECT_NEAR(r.demand->value, demand, 1e-9) << demand << " " << free_now << " " << stock;
        EXPECT_NEAR(*r.dose, std::max(0.0, demand + 3 - free_now), 1e-9);
        EXPECT_TRUE(r.breakpoint_reached);
        EXPECT_FALSE(r.demand_above);
      }
}

TEST(Demand, UsedUpBottlesBoundItFromBelow) {
  const DemandResult r = judge_demand(test_of(55, 0), {0, 0.05}, 3);
  EXPECT_FALSE(r.enough());
  EXPECT_FALSE(r.dose);
  ASSERT_TRUE(r.demand_above);
  EXPECT_NEAR(*r.demand_above, 40 / (1 - 0.04), 1e-9);
  EXPECT_LT(*r.demand_above, 55);
}

TEST(Demand, ABleachedBottleIsNotUsedUp) {
  DemandTest test = test_of(8, 0);
  for (DemandBottle& bottle : test.bottles)
    if (*bottle.free_mg_l > 10) {
      bottle.free_mg_l = bottle.total_mg_l = 0;
      bottle.dilution = 1;
    }
  const DemandResult r = judge_demand(test, {0, 0.05}, 3);
  ASSERT_TRUE(r.enough());
  EXPECT_NEAR(r.demand->value, 8, 1e-9);
  EXPECT_EQ(r.bottles.back().word, DemandWord::nothing);
}

TEST(Demand, AWideStepThatMayBeBleachedProvesNothing) {
  DemandTest test;
  for (const double dose : {0., 5., 40.}) test.bottles.push_back(bottle_of(6, 0, dose, 1e9));
  test.bottles.back().free_mg_l = test.bottles.back().total_mg_l = 0;  // 34 mg/L stand and are bleached
  test.bottles.back().dilution = 1;
  const DemandResult r = judge_demand(test, {0, 0.05}, 3);
  EXPECT_FALSE(r.enough());
  EXPECT_LE(*r.demand_above, 6);
}

TEST(Demand, CombinedChlorineIsNotHeld) {
  DemandTest test = test_of(8, 0);
  test.bottles[3].total_mg_l = *test.bottles[3].free_mg_l + 1.2;  // 10 mg/L: before its breakpoint
  const DemandResult r = judge_demand(test, {0, 0.05}, 3);
  ASSERT_TRUE(r.enough());
  EXPECT_EQ(r.bottles[3].word, DemandWord::lower_bound);
  EXPECT_EQ(r.bottles[4].word, DemandWord::measures);
}

TEST(Demand, OverRangeBottlesBoundItFromAbove) {
  DemandTest test;
  test.bottles = {bottle_of(6, 0, 5, 1e9), bottle_of(6, 0, 20, 1e9)};
  test.bottles.back().free_mg_l = 10;
  test.bottles.back().clipped = Clip::above;
  const DemandResult r = judge_demand(test, {0, 0.05}, 3);
  EXPECT_FALSE(r.enough());
  EXPECT_NEAR(*r.demand_above, 5, 1e-6);
  EXPECT_NEAR(*r.demand_below, 10, 1e-6);
}

// Limited first order: C = C* + (C0 - C*) exp(-k t), as Powell and others 2000 tabulate it (from memory).
TEST(Demand, TheEndOfALimitedFirstOrderIsFound) {
  const std::vector<double> hours = {1, 4, 24};
  std::vector<double> demands;
  for (const double t : hours) demands.push_back(9 * (1 - std::exp(-0.12 * t)));
  const auto end = limited_first_order(demands, hours);
  ASSERT_TRUE(end);
  EXPECT_NEAR(*end, 9, 0.1);
  // a straight line has no end to be seen
  EXPECT_FALSE(limited_first_order(std::vector<double>{1, 2, 3}, std::vector<double>{1, 2, 3}));
  EXPECT_FALSE(limited_first_order(std::vector<double>{1}, std::vector<double>{1}));
}

}  // namespace
}  // namespace brimline
