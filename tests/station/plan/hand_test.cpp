// SPDX-License-Identifier: GPL-3.0-or-later
// The trained hand: what staff may change, and what is refused however good the reason.
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/station/plan/household.h"

namespace brimline {
namespace {

using What = HandOrder::What;

// pH 8.0 and hardness low: acid, then calcium in the days after.
Visit hard_and_high() {
  Household homes(1);
  Visit v = homes.visit();
  v.vessel.volume = Volume::us_gallons(10000);
  v.vessel.surface = Surface::plaster;
  v.vessel.water_temperature = Temperature::celsius(26);
  v.bottle.readings = {Household::reading("ph", 8.0, 0.03),
                       Household::reading("total_alkalinity", 105, 4),
                       Household::reading("calcium_hardness", 170, 8),
                       Household::reading("free_chlorine", 3, 0.08),
                       Household::reading("total_chlorine", 3.1, 0.08),
                       Household::reading("cyanuric_acid", 40, 3)};
  return v;
}

tl::expected<Plan, std::string> changed(const Visit& v, std::vector<HandOrder> orders) {
  return make_changed_plan(v, {}, built_in_shelf(), *find_targets("household"), orders, Words("en"),
                           PlanOptions{300, 7});
}

int step_of(const Plan& plan, const char* chemical) {
  for (const Step& s : plan.steps)
    if (s.chemical == chemical) return s.order;
  return 0;
}

TEST(Hand, NoChangeIsThePlanItself) {
  const Visit v = hard_and_high();
  const auto plan = changed(v, {});
  ASSERT_TRUE(plan);
  EXPECT_EQ(plan->steps, plan_of(v, 300).steps);
}

TEST(Hand, HalfADoseIsProvenAnew) {
  const Visit v = hard_and_high();
  const Plan told = plan_of(v, 300);
  const int acid = step_of(told, "hydrochloric_acid");
  ASSERT_GT(acid, 0);
  const auto plan = changed(v, {{acid, What::dose, 0.5, "", "S-2", "the bottle stood in the sun"}});
  ASSERT_TRUE(plan) << plan.error();
  const Step& before = told.steps[acid - 1];
  const Step& after = plan->steps[acid - 1];
  EXPECT_NEAR(*after.active_mol, *before.active_mol / 2, 1e-9);
  EXPECT_GT(after.after->readings.at("ph"), before.after->readings.at("ph"));
  EXPECT_NE(plan->proof, told.proof);
  ASSERT_EQ(plan->changes.size(), 1u);
  EXPECT_EQ(plan->changes[0].staff, "S-2");
  EXPECT_EQ(plan->changes[0].what, "dose");
  EXPECT_NE(plan->changes[0].before, plan->changes[0].after);
}

// Dry acid does the work of muriatic acid, mole for mole: both bring one equivalent.
TEST(Hand, AnotherProductDoesTheSameWork) {
  const Visit v = hard_and_high();
  const Plan told = plan_of(v, 300);
  const int acid = step_of(told, "hydrochloric_acid");
  const auto plan = changed(v, {{acid, What::product, 1, "dry_acid", "S-2", "no liquid acid in this house"}});
  ASSERT_TRUE(plan) << plan.error();
  EXPECT_EQ(plan->steps[acid - 1].chemical, "sodium_bisulfate");
  EXPECT_NEAR(*plan->steps[acid - 1].active_mol, *told.steps[acid - 1].active_mol, 1e-9);
  EXPECT_EQ(plan->steps[acid - 1].amount->unit, "g");
}

TEST(Hand, AStepMayBeLeftOut) {
  const Visit v = hard_and_high();
  const Plan told = plan_of(v, 300);
  const int calcium = step_of(told, "calcium_chloride");
  ASSERT_GT(calcium, 0);
  const auto plan = changed(v, {{calcium, What::leave_out, 1, "", "S-2", "customer will wait a month"}});
  ASSERT_TRUE(plan) << plan.error();
  EXPECT_EQ(plan->steps.size(), told.steps.size() - 1);
  EXPECT_TRUE(std::any_of(plan->remains.begin(), plan->remains.end(),
                          [](const Remains& r) { return r.analyte == "calcium_hardness"; }));
}

TEST(Hand, HarmIsRefusedHoweverGoodTheReason) {
  const Visit v = hard_and_high();
  const int acid = step_of(plan_of(v, 300), "hydrochloric_acid");
  const auto refused = [&](HandOrder o) {
    o.staff = o.staff.empty() ? "S-2" : o.staff;
    const auto plan = changed(v, {o});
    EXPECT_FALSE(plan);
    return plan ? "" : plan.error();
  };
  EXPECT_NE(refused({acid, What::dose, 3, "", "", "in a hurry"}), "");
  EXPECT_NE(refused({acid, What::dose, 1, "", "", ""}), "");
  EXPECT_NE(refused({99, What::dose, 1, "", "", "x"}), "");
  EXPECT_NE(refused({acid, What::product, 1, "soda_ash", "", "the other way"}), "");
  EXPECT_NE(refused({acid, What::product, 1, "not_sold", "", "x"}), "");
  for (const char* sour : {"floc_alum", "monopersulfate", "phosphate_remover", "peroxide_27"})
    EXPECT_NE(refused({acid, What::product, 1, sour, "", "it is sour too"}), "") << sour;
}

// In a bromine spa no chlorine, whoever asks.
TEST(Hand, WhatAVesselMustNeverHaveIsRefused) {
  Household homes(2);
  Visit v = homes.visit(Sanitizer::bromine, VesselKind::spa);
  for (Reading& r : v.bottle.readings)
    if (r.analyte == "total_bromine") r.value = 1;
  const int bromine = step_of(plan_of(v), "bcdmh");
  ASSERT_GT(bromine, 0);
  EXPECT_FALSE(changed(v, {{bromine, What::product, 1, "dichlor_55", "S-2", "cheaper"}}));
}

}  // namespace
}  // namespace brimline
