// SPDX-License-Identifier: GPL-3.0-or-later
// Waters of a known demand, dosed by the arithmetic of a mixture, must give that demand back.
#include "analysis/panel/demand.h"

#include <cmath>
#include <random>
#include <tuple>

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

// The hump before the breakpoint: monochloramine reads as a little free chlorine, then falls away again.
TEST(Demand, TheHumpBeforeTheBreakpointIsNotHeld) {
  DemandTest test;
  for (const auto& [dose, free, total] : {std::tuple{0., 0., 0.2},
                                          {2., 1.1, 1.2},
                                          {5., 0.2, 3.5},
                                          {8., 0.1, 0.3},
                                          {10., 1.6, 1.8},
                                          {15., 6.6, 6.8}}) {
    DemandBottle b;
    b.dose_mg_l = dose;
    b.free_mg_l = free;
    b.total_mg_l = total;
    test.bottles.push_back(b);
  }
  const DemandResult r = judge_demand(test, {0, 0.05}, 3);
  ASSERT_TRUE(r.enough());
  EXPECT_NEAR(r.demand->value, 8.4, 0.2);
  EXPECT_EQ(r.bottles[1].word, DemandWord::lower_bound);
}

TEST(Demand, ExchangedLabelsAreNoDemand) {
  DemandTest test = test_of(7, 0, 1e9);
  std::swap(test.bottles[1].dose_mg_l, test.bottles[3].dose_mg_l);  // 2 and 10
  const DemandResult r = judge_demand(test, {0, 0.05}, 3);
  EXPECT_FALSE(r.enough());
  EXPECT_TRUE(r.contradicted);
  EXPECT_LE(*r.demand_above, 7);
  EXPECT_NE(r.text().find("labels"), std::string::npos);
}

TEST(Demand, AStockThatIsNotAsToldIsSeen) {
  DemandTest test = test_of(7, 0, 1e9);
  for (DemandBottle& b : test.bottles) b.dose_mg_l *= 1.25;  // told stronger than it was
  const DemandResult r = judge_demand(test, {0, 0.05}, 3);
  ASSERT_TRUE(r.enough());
  EXPECT_FALSE(r.bottles_agree);
  EXPECT_NE(r.text().find("strength of the stock"), std::string::npos);
}

// Demand is dose less residual after a time, at a temperature: Standard Methods 2350 (from memory).
TEST(Demand, TimeAndTemperatureBelongToTheResult) {
  DemandTest test = test_of(9, 0);
  test.hours = 36;
  const DemandResult r = judge_demand(test, {0, 0.05}, 3, Temperature::celsius(22));
  EXPECT_EQ(r.at_hours, 36);
  EXPECT_NE(r.text().find("36 hours"), std::string::npos);
  EXPECT_NE(r.text().find("22 C"), std::string::npos);
}

TEST(Demand, TheTwoTimesTellFastAndSlow) {
  DemandTest test = test_of(9, 0);
  for (DemandBottle& b : test.bottles) {
    const double left = b.dose_mg_l - 6 * (1 - b.stock_share);  // 6 of the 9 are met in the first hour
    b.later = {{1, std::max(0.0, left), std::nullopt}};
  }
  const DemandResult r = judge_demand(test, {0, 0.05}, 3);
  ASSERT_TRUE(r.fast && r.slow);
  EXPECT_EQ(r.fast_hours, 1);
  EXPECT_NEAR(r.fast->value, 6, 1e-6);
  EXPECT_NEAR(r.slow->value, 3, 1e-6);
  EXPECT_NEAR(*r.demand_infinite, 9, 0.05);  // 1 - exp(-24 k) is one with the k of 6 of 9 in an hour
  EXPECT_FALSE(r.decay);                     // two times bear no comparison of models
}

// What a day has used up is used up: no noise may take the demand for good below it.
TEST(DemandLaw, TheDemandForGoodIsNeverBelowTheDaysOwn) {
  std::mt19937_64 random(41);
  std::normal_distribution<double> noise(0, 0.1);
  int told = 0;
  for (int i = 0; i < 500; ++i) {
    DemandTest test = test_of(9, 0);
    for (DemandBottle& b : test.bottles) {
      for (const double hours : {0.5, 1.0, 2.0, 4.0})
        b.later.push_back(
            {hours,
             std::max(0.0, b.dose_mg_l - 9 * (1 - std::exp(-hours)) * (1 - b.stock_share) + noise(random)),
             std::nullopt});
      if (b.free_mg_l) *b.free_mg_l = std::max(0.0, *b.free_mg_l + noise(random));
    }
    const DemandResult r = judge_demand(test, {0, 0.05}, 3);
    if (!r.demand || !r.demand_infinite) continue;
    ++told;
    EXPECT_GE(*r.demand_infinite, r.demand->value);
  }
  EXPECT_GT(told, 100);
}

TEST(Demand, TheRoomsTemperatureStandsBeforeTheSamples) {
  DemandTest test = test_of(9, 0);
  Bottle bottle;
  EXPECT_FALSE(stood_at(test, bottle));
  bottle.sample_temperature = Temperature::celsius(24);
  EXPECT_NEAR(stood_at(test, bottle)->celsius(), 24, 1e-9);
  test.temperature = Temperature::celsius(19);
  EXPECT_NEAR(stood_at(test, bottle)->celsius(), 19, 1e-9);
}

// Noise-free series, so that what changes is the bottle added alone.
TEST(DemandLaw, OneBottleMoreNeverWidensTheBounds) {
  std::mt19937_64 random(12);
  const auto between = [&](double a, double b) {
    return std::uniform_real_distribution<double>(a, b)(random);
  };
  for (int i = 0; i < 500; ++i) {
    const double demand = between(0.5, 45), free_now = between(0, 1);
    DemandTest test;
    DemandResult before = judge_demand(test, {free_now, 0.05}, 3);
    for (int k = 0; k < 7; ++k) {
      test.bottles.push_back(bottle_of(demand, free_now, between(0, 40), 2000));
      const DemandResult after = judge_demand(test, {free_now, 0.05}, 3);
      if (before.enough()) {
        ASSERT_TRUE(after.enough());
        EXPECT_LE(after.demand->sd, before.demand->sd * 1.02);  // the pooled sd may breathe
        EXPECT_NEAR(after.demand->value, demand, 1e-6);
      } else if (!after.enough()) {
        EXPECT_GE(*after.demand_above, *before.demand_above);
        EXPECT_LE(*after.demand_above, demand + 1e-9);
      } else {
        EXPECT_GE(after.demand->value, *before.demand_above - 1e-9);
      }
      before = after;
    }
  }
}

TEST(DemandLaw, ScalingDosesScalesDemand) {
  const DemandResult one = judge_demand(test_of(3, 0, 1000), {0, 0.05}, 3);
  for (const double by : {2.0, 3.0}) {
    DemandTest test = test_of(3, 0, 1000);
    for (DemandBottle& b : test.bottles) {
      b.dose_mg_l *= by;  // of a stock as many times stronger, so the share stays
      *b.free_mg_l *= by;
      *b.total_mg_l *= by;
      if (*b.free_mg_l > 8 && b.dilution == 1) b.dilution = 5;
      if (*b.free_mg_l > 45) b.dilution = 10;
    }
    const DemandResult scaled = judge_demand(test, {0, 0.05}, 3);
    ASSERT_TRUE(scaled.enough());
    EXPECT_NEAR(scaled.demand->value, by * one.demand->value, 1e-6);
  }
}

}  // namespace
}  // namespace brimline
