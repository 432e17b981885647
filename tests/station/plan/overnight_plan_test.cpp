// SPDX-License-Identifier: GPL-3.0-or-later
// The overnight test in the plan: its result with the interval in the finding, and what the customer is told
// while it goes on.
#include <gmock/gmock.h>

#include <regex>

#include "station/overnight/overnight_result.h"
#include "tests/station/plan/household.h"

namespace brimline {
namespace {

using testing::HasSubstr;

Visit used_up_water() {
  Household homes(1);
  Visit v = homes.visit();
  v.vessel.volume = Volume::cubic_metres(50);
  v.vessel.water_temperature = Temperature::celsius(26);
  v.bottle.fill_water.reset();
  v.bottle.readings = {Household::reading("ph", 7.3, 0.05), Household::reading("total_alkalinity", 95, 4),
                       Household::reading("free_chlorine", 0, 0.05),
                       Household::reading("total_chlorine", 0.1, 0.05),
                       Household::reading("cyanuric_acid", 40, 3)};
  return v;
}

// Bottles of water that uses up `demand`, dosed up to 40 mg/L from a stock that takes no room.
DemandTest bottles(double demand) {
  DemandTest test;
  for (const double dose : {0., 2., 5., 10., 20., 30., 40.}) {
    DemandBottle b;
    b.dose_mg_l = dose;
    b.free_mg_l = std::max(0.0, dose - demand);
    b.total_mg_l = *b.free_mg_l + 0.1;
    b.dilution = *b.free_mg_l > 5 ? 10 : 1;
    test.bottles.push_back(b);
  }
  return test;
}

std::string text_of(const Plan& plan, const std::string& id) {
  for (const Finding& f : plan.findings)
    if (f.id == id) return f.text;
  return {};
}

TEST(OvernightPlan, TheFindingGivesTheDemandAndTheDose) {
  Visit v = used_up_water();
  v.bottle.demand_test = bottles(6);
  const std::string text = text_of(plan_of(v), "chlorine_demand");
  EXPECT_THAT(text, HasSubstr("uses up 6.0 mg/L of chlorine in 24 hours (most likely 5."));
  // The sum stands with it: dose = demand + what is to stand - what stands now.
  std::smatch sum;
  ASSERT_TRUE(std::regex_search(text, sum, std::regex("takes ([0-9.]+) mg/L.* and ([0-9.]+) mg/L more")))
      << text;
  EXPECT_NEAR(std::stod(sum[1]), 6.0 + std::stod(sum[2]), 0.11);
  EXPECT_THAT(text, HasSubstr("it takes 9.0 mg/L"));  // the household regime aims at 3
  EXPECT_THAT(text, testing::Not(HasSubstr("very much")));
}

TEST(OvernightPlan, WhatWasNotFoundIsABoundAndNoDose) {
  Visit v = used_up_water();
  v.bottle.demand_test = bottles(60);
  const Plan plan = plan_of(v);
  EXPECT_THAT(text_of(plan, "demand_not_found"), HasSubstr("more than 40.0 mg/L"));
  for (const Step& step : plan.steps) EXPECT_NE(step.chemical, "sodium_hypochlorite");
  EXPECT_EQ(known_above_of(v), 40);
}

TEST(OvernightPlan, AVeryHighDemandAsksForNewWaterFirst) {
  Visit v = used_up_water();
  v.bottle.demand_test = bottles(37);
  const Plan plan = plan_of(v);
  EXPECT_THAT(text_of(plan, "chlorine_demand"), HasSubstr("Changing part of the water first"));
  for (const Step& step : plan.steps) EXPECT_NE(step.chemical, "sodium_hypochlorite");
}

TEST(OvernightPlan, NobodyIsAskedForALitreWhileItsBottleStandsOvernight) {
  Visit v = used_up_water();
  v.bottle.readings[2].value = 0.5;
  v.bottle.readings[3].value = 3;  // combined: more than a dose by guess may break
  ShopSettings shop;
  const auto first_step = [&] {
    const Plan plan =
        make_plan(v, {}, built_in_shelf(), *find_targets("household"), Words("en"), PlanOptions{0, 7}, shop);
    return plan.steps.empty() ? std::string() : plan.steps.back().text;
  };
  EXPECT_THAT(first_step(), HasSubstr("Bring a litre of the water"));
  shop.overnight_due = Instant::parse("2026-06-15T10:20:00-05:00");
  EXPECT_THAT(first_step(), HasSubstr("tomorrow 10:20"));
  EXPECT_THAT(first_step(), testing::Not(HasSubstr("Bring a litre")));
}

}  // namespace
}  // namespace brimline
