// SPDX-License-Identifier: GPL-3.0-or-later
// A reading is outside its target only beyond its own error; at the edge it is read again, not dosed on. The
// rule is the guarded rejection of JCGM 106:2012, 8.3.3 (from memory).
#include "analysis/findings/edge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "analysis/findings/find.h"
#include "tests/station/plan/household.h"

namespace brimline {
namespace {

using ::testing::HasSubstr;

const Finding* finding(const Plan& plan, std::string_view id) {
  for (const Finding& f : plan.findings)
    if (f.id == id) return &f;
  return nullptr;
}

bool doses(const Plan& plan) {
  return std::any_of(plan.steps.begin(), plan.steps.end(),
                     [](const Step& s) { return s.action == Action::add; });
}

// A pool with every reading well inside.
Visit sound_pool() {
  Visit v = Household(3).visit();
  v.vessel.surface = Surface::vinyl;
  v.vessel.water_temperature = Temperature::celsius(27);
  v.bottle.readings = {Household::reading("ph", 7.5, 0.05),
                       Household::reading("total_alkalinity", 100, 4),
                       Household::reading("calcium_hardness", 200, 8),
                       Household::reading("free_chlorine", 3, 0.08),
                       Household::reading("total_chlorine", 3.1, 0.08),
                       Household::reading("cyanuric_acid", 40, 3)};
  return v;
}

Visit with(Visit v, const char* analyte, double value, double sd) {
  for (Reading& r : v.bottle.readings)
    if (r.analyte == analyte) r = Household::reading(analyte, value, sd);
  return v;
}

TEST(Edge, OneInTwentyThatConformsIsCalledOutside) {
  std::mt19937_64 engine(5);
  std::normal_distribution<double> error(0, 0.1);
  const Target target{7.2, 7.8};
  int called = 0;
  for (int i = 0; i < 40000; ++i) called += standing({7.8 + error(engine), 0.1}, target) == Standing::above;
  EXPECT_NEAR(called / 40000.0, 0.05, 0.005);
}

TEST(Edge, ALargerErrorIsNeverMoreCertain) {
  const Target target{7.2, 7.8};
  for (double value = 6.8; value < 8.4; value += 0.01)
    for (double sd = 0; sd < 0.4; sd += 0.02) {
      const Standing sure = standing({value, sd}, target), less = standing({value, sd + 0.02}, target);
      const bool certain = less == Standing::below || less == Standing::above;
      EXPECT_TRUE(!certain || sure == less) << value << " " << sd;
      EXPECT_TRUE(sure != Standing::inside || less == Standing::inside) << value << " " << sd;
    }
}

TEST(Edge, AReadingAtTheEdgeIsReadAgainAndNotDosedOn) {
  ASSERT_FALSE(doses(plan_of(sound_pool())));
  const Plan plan = plan_of(with(sound_pool(), "total_alkalinity", 77, 4));
  const Finding* edge = finding(plan, "total_alkalinity_edge");
  ASSERT_NE(edge, nullptr);
  EXPECT_EQ(edge->concern, Concern::reading);
  EXPECT_THAT(edge->text, HasSubstr("77 \u00b1 4 mg/L"));
  EXPECT_EQ(finding(plan, "total_alkalinity_low"), nullptr);
  EXPECT_FALSE(doses(plan));
  ASSERT_EQ(plan.remains.size(), 1U);
  EXPECT_EQ(plan.remains[0].reason, "at_edge");
  ASSERT_TRUE(plan.retest);
  EXPECT_THAT(plan.retest->analytes, ::testing::Contains("total_alkalinity"));
}

TEST(Edge, TheSameValueReadBetterIsDosedOn) {
  const Plan plan = plan_of(with(sound_pool(), "total_alkalinity", 77, 1));
  ASSERT_NE(finding(plan, "total_alkalinity_low"), nullptr);
  EXPECT_TRUE(doses(plan));
  EXPECT_TRUE(plan.remains.empty());
}

TEST(Edge, WhatKeepsSwimmersOutDoesNotWaitToBeSure) {
  const Plan plan = plan_of(with(with(sound_pool(), "free_chlorine", 1.8, 0.5), "total_chlorine", 1.9, 0.5));
  EXPECT_NE(finding(plan, "free_chlorine_low"), nullptr);
  EXPECT_FALSE(plan.swim.now);
  EXPECT_TRUE(doses(plan));
  EXPECT_NE(finding(plan_of(with(sound_pool(), "ph", 6.95, 0.2)), "ph_low"), nullptr);
  EXPECT_NE(finding(plan_of(with(sound_pool(), "ph", 8.05, 0.3)), "ph_high"), nullptr);
}

TEST(Edge, CombinedChlorineWithinItsErrorIsNotBurntOff) {
  const Plan vague = plan_of(with(sound_pool(), "total_chlorine", 3.6, 0.15));
  EXPECT_NE(finding(vague, "combined_chlorine_edge"), nullptr);
  EXPECT_FALSE(doses(vague));
  const Plan sure = plan_of(with(with(sound_pool(), "total_chlorine", 3.9, 0.02), "free_chlorine", 3, 0.02));
  EXPECT_NE(finding(sure, "combined_chlorine_high"), nullptr);
  EXPECT_TRUE(doses(sure));
}

TEST(Edge, StabilizerWithinItsErrorDrainsNoPool) {
  const auto drains = [](const Plan& plan) {
    return std::any_of(plan.steps.begin(), plan.steps.end(),
                       [](const Step& s) { return s.action == Action::drain_refill; });
  };
  const auto aim = find_targets("household")->find("cyanuric_acid", case_of(sound_pool().vessel, 40, 7.5));
  ASSERT_TRUE(aim && aim->range.high);
  const Visit high = with(with(sound_pool(), "free_chlorine", 3.9, 0.05), "total_chlorine", 4, 0.05);
  EXPECT_FALSE(drains(plan_of(with(high, "cyanuric_acid", *aim->range.high + 15, 10))));
  EXPECT_TRUE(drains(plan_of(with(high, "cyanuric_acid", *aim->range.high + 15, 2))));
}

// Over random waters: errors only take findings away or leave them, but for what is said on the safe side.
TEST(Edge, MoreErrorGivesNoMoreFindings) {
  Household homes(17);
  for (int i = 0; i < 200; ++i) {
    Visit v = homes.visit();
    const Plan sure = plan_of(v);
    for (Reading& r : v.bottle.readings) r.sd = 3 * *r.sd;
    for (const Finding& f : plan_of(v).findings)
      EXPECT_TRUE(f.concern == Concern::reading || finding(sure, f.id)) << f.id << " at water " << i;
  }
}

}  // namespace
}  // namespace brimline
