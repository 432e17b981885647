// SPDX-License-Identifier: GPL-3.0-or-later
// Single cases: what is told when there can be no home plan, and which step comes first.
#include <gmock/gmock.h>

#include <algorithm>

#include "station/wording/plan_words.h"
#include "tests/station/plan/household.h"

namespace brimline {
namespace {

using testing::Contains;

Visit plain() {
  Household homes(1);
  Visit v = homes.visit();
  v.vessel.volume = Volume::us_gallons(10000);
  v.vessel.surface = Surface::plaster;
  v.vessel.water_temperature = Temperature::celsius(26);
  v.bottle.fill_water.reset();
  v.bottle.readings = {Household::reading("ph", 7.5, 0.05),
                       Household::reading("total_alkalinity", 100, 4),
                       Household::reading("calcium_hardness", 300, 8),
                       Household::reading("free_chlorine", 3, 0.08),
                       Household::reading("total_chlorine", 3.1, 0.08),
                       Household::reading("cyanuric_acid", 40, 3)};
  return v;
}

Reading& read(Visit& v, const char* analyte) {
  return *std::find_if(v.bottle.readings.begin(), v.bottle.readings.end(),
                       [&](const Reading& r) { return r.analyte == analyte; });
}

bool adds(const Plan& plan, const char* chemical = nullptr) {
  return std::any_of(plan.steps.begin(), plan.steps.end(), [&](const Step& s) {
    return s.action == Action::add && (!chemical || s.chemical == chemical);
  });
}

int order_of(const Plan& plan, const char* chemical) {
  for (const Step& s : plan.steps)
    if (s.chemical == chemical) return s.order;
  return 0;
}

// The first step of a family of chemicals.
int order_of_any(const Plan& plan, const char* family) {
  for (const Step& s : plan.steps)
    if (s.chemical && find_substance(*s.chemical)->is(family)) return s.order;
  return 0;
}

bool found(const Plan& plan, const char* id) {
  return std::any_of(plan.findings.begin(), plan.findings.end(),
                     [&](const Finding& f) { return f.id == id; });
}

void expect_refused(const Visit& v) {
  const Plan plan = plan_of(v);
  EXPECT_FALSE(plan.home_plan);
  ASSERT_TRUE(plan.why_not);
  EXPECT_FALSE(plan.why_not->empty());
  EXPECT_FALSE(adds(plan));
}

TEST(NoHomePlan, EachReasonSaysWhyAndAddsNothing) {
  Visit v = plain();
  v.vessel.use = VesselUse::public_use;
  expect_refused(v);
  for (const Incident i : {Incident::faeces, Incident::vomit, Incident::blood, Incident::dead_animal,
                           Incident::flood, Incident::sewage, Incident::illness}) {
    v = plain();
    v.bottle.incident = i;
    expect_refused(v);
    EXPECT_FALSE(plan_of(v).swim.now);
  }
  for (const Sign sign : {Sign::drain_not_visible, Sign::chemicals_mixed_or_fuming}) {
    v = plain();
    v.bottle.signs = {sign};
    expect_refused(v);
    EXPECT_FALSE(plan_of(v).swim.now);
  }
  v = plain();
  v.vessel.sanitizer.reset();
  expect_refused(v);
  for (const char* analyte : {"ph", "total_alkalinity", "free_chlorine"}) {
    v = plain();
    read(v, analyte).clipped = Clip::above;
    expect_refused(v);
  }
}

TEST(NoDoses, WhereTheVolumeIsNotKnown) {
  Visit v = plain();
  v.vessel.volume.reset();
  read(v, "ph").value = 7.9;
  const Plan plan = plan_of(v);
  EXPECT_TRUE(plan.home_plan);
  EXPECT_FALSE(adds(plan));
  EXPECT_TRUE(found(plan, "volume_unknown"));
}

TEST(Drain, WithNoFillReadingsTheDosesWait) {
  Visit v = plain();
  read(v, "cyanuric_acid").value = 95;
  read(v, "ph").value = 7.9;
  const Plan plan = plan_of(v);
  EXPECT_FALSE(adds(plan));
  ASSERT_FALSE(plan.steps.empty());
  EXPECT_EQ(plan.steps.front().action, Action::drain_refill);
  EXPECT_LE(*plan.steps.front().fraction, 1.0 / 3 + 1e-9);
  EXPECT_EQ(plan.steps.back().action, Action::retest);
}

// C1 = C0 (1 - f) + Cf f: two steps leave the stabilizer inside, and doses follow on the mixed water.
TEST(Drain, WithFillReadingsTheMixtureIsComputed) {
  Visit v = plain();
  read(v, "cyanuric_acid").value = 80;
  v.bottle.fill_water = {Household::reading("ph", 7.6, 0.1), Household::reading("total_alkalinity", 60, 5),
                         Household::reading("calcium_hardness", 100, 8)};
  const Plan plan = plan_of(v);
  double cyanuric = 80, hardness = 300;
  for (const Step& s : plan.steps) {
    if (s.action != Action::drain_refill) break;
    cyanuric *= 1 - *s.fraction;
    hardness += (100 - hardness) * *s.fraction;
    EXPECT_NEAR(s.after->readings.at("cyanuric_acid"), cyanuric, 1e-6);
    EXPECT_NEAR(s.after->readings.at("calcium_hardness"), hardness, 1e-6);
  }
  EXPECT_LT(cyanuric, 50);
}

TEST(Order, MetalsAreBoundBeforeChlorineOrAPhRise) {
  Visit v = plain();
  v.bottle.readings.push_back(Household::reading("iron", 0.3, 0.02));
  read(v, "free_chlorine").value = 0.5;
  read(v, "total_chlorine").value = 0.6;
  read(v, "ph").value = 7.1;
  const Plan plan = plan_of(v);
  EXPECT_EQ(order_of(plan, "sequestrant"), 1);
  EXPECT_GT(order_of_any(plan, "chlorine"), 1);
}

TEST(Order, ChlorineDoesNotWaitWhereBalanceIsNear) {
  Visit v = plain();
  read(v, "free_chlorine").value = 1.2;
  read(v, "total_chlorine").value = 1.3;
  read(v, "total_alkalinity").value = 70;
  const Plan plan = plan_of(v);
  EXPECT_EQ(order_of_any(plan, "chlorine"), 1);
  EXPECT_GT(order_of_any(plan, "alkali"), 1);
  EXPECT_FALSE(plan.swim.now);
  EXPECT_EQ(plan.swim.after_step, 1);
  EXPECT_GE(*plan.swim.not_before_h, 3);  // NSW public pool guideline: 3 h after a slug dose
}

TEST(Order, HighPhComesDownBeforeChlorine) {
  Visit v = plain();
  read(v, "free_chlorine").value = 0.5;
  read(v, "total_chlorine").value = 0.6;
  read(v, "ph").value = 8.1;
  const Plan plan = plan_of(v);
  EXPECT_EQ(order_of(plan, "hydrochloric_acid"), 1);
  EXPECT_GT(order_of_any(plan, "chlorine"), 1);
}

// KFL&A Public Health: free chlorine up to ten times the combined; all or nothing, so one portion.
TEST(Breakpoint, IsOneDoseUpToTenTimesTheCombined) {
  Visit v = plain();
  read(v, "free_chlorine").value = 2;
  read(v, "total_chlorine").value = 2.9;
  const Plan plan = plan_of(v);
  const auto step = std::find_if(plan.steps.begin(), plan.steps.end(),
                                 [](const Step& s) { return s.chemical == "sodium_hypochlorite"; });
  ASSERT_NE(step, plan.steps.end());
  EXPECT_EQ(step->portions, 1);
  EXPECT_NEAR(step->after->readings.at("free_chlorine"), 9.0, 1e-6);
  EXPECT_FALSE(plan.swim.now);
  EXPECT_GE(*plan.swim.not_before_h, step->start_h + 24);
}

// Demand 8 by the bottle that held (10 dosed, 2 left of none before): 8 and the residual, in one portion.
TEST(Demand, IsMetInOneEvening) {
  Visit v = plain();
  read(v, "free_chlorine").value = 0.3;
  read(v, "total_chlorine").value = 0.4;
  v.bottle.demand_test = DemandTest{24, {}, std::nullopt};
  const auto bottle = [](double dose, double free, double total) {
    DemandBottle b;
    b.dose_mg_l = dose;
    b.free_mg_l = free;
    b.total_mg_l = total;
    return b;
  };
  v.bottle.demand_test->bottles = {bottle(0, 0, 0.2), bottle(5, 0, 0.5), bottle(10, 2.3, 2.5),
                                   bottle(20, 12.3, 12.5)};
  const Plan plan = plan_of(v);
  const auto step = std::find_if(plan.steps.begin(), plan.steps.end(),
                                 [](const Step& s) { return s.chemical == "sodium_hypochlorite"; });
  ASSERT_NE(step, plan.steps.end());
  EXPECT_EQ(step->portions, 1);
  const double aim = find_targets("household")->find("free_chlorine", case_of(v.vessel, 40, 7.5))->aim;
  EXPECT_NEAR(step->after->readings.at("free_chlorine"), 8 + aim, 0.05);
  v.bottle.demand_test->bottles.resize(2);
  EXPECT_FALSE(adds(plan_of(v), "sodium_hypochlorite"));
}

TEST(Breakpoint, BeyondTheCapNothingIsAddedByGuess) {
  Visit v = plain();
  read(v, "free_chlorine").value = 1;
  read(v, "total_chlorine").value = 3;
  const Plan plan = plan_of(v);
  EXPECT_FALSE(adds(plan, "sodium_hypochlorite"));
  EXPECT_EQ(plan.steps.back().action, Action::retest);
}

// A small spa with dichlor in it keeps to unstabilised chlorine.
TEST(Spa, GetsNoStabilizerAndWaitsLess) {
  Household homes(3);
  Visit v = homes.visit(Sanitizer::chlorine, VesselKind::spa);
  v.bottle.readings = {Household::reading("ph", 7.9, 0.05),
                       Household::reading("total_alkalinity", 100, 4),
                       Household::reading("calcium_hardness", 200, 8),
                       Household::reading("free_chlorine", 2, 0.08),
                       Household::reading("total_chlorine", 2.1, 0.08),
                       Household::reading("cyanuric_acid", 0, 3)};
  const Plan plan = plan_of(v);
  EXPECT_FALSE(adds(plan, "cyanuric_acid"));
  ASSERT_TRUE(adds(plan, "hydrochloric_acid"));
  EXPECT_LE(plan.steps.front().wait_h, 1);
}

TEST(Ranks, HealthComesFirst) {
  Visit v = plain();
  read(v, "free_chlorine").value = 0.4;
  read(v, "total_chlorine").value = 0.5;
  read(v, "ph").value = 7.9;
  read(v, "cyanuric_acid").value = 20;
  const Plan plan = plan_of(v);
  ASSERT_GE(plan.findings.size(), 3u);
  EXPECT_EQ(plan.findings.front().concern, Concern::health);
  for (size_t i = 1; i < plan.findings.size(); ++i) {
    EXPECT_LE(plan.findings[i - 1].concern, plan.findings[i].concern);
    EXPECT_EQ(plan.findings[i].rank, static_cast<int>(i) + 1);
  }
}

// A label that says another strength than the shelf's is dosed by the label.
TEST(AtHome, TheLabelAtHomeDecides) {
  Visit v = plain();
  read(v, "ph").value = 8.0;
  const auto litres = [&](const char* assay) {
    v.bottle.at_home = {AtHome{"hydrochloric_acid", assay, 4.0, "L"}};
    for (const Step& s : plan_of(v).steps)
      if (s.chemical == "hydrochloric_acid") return s.amount->value * (s.amount->unit == "mL" ? 1e-3 : 1);
    return 0.0;
  };
  // 10.0 against 4.26 eq/L: half strength needs 2.35 times the volume.
  EXPECT_NEAR(litres("14.5 % by weight") / litres("31.45 % by weight"), 2.35, 0.01);
  EXPECT_NEAR(litres("28 %") / litres("31.45 % by weight"), 22.8 / 19.97, 0.01);
}

TEST(Words, EveryIdOfAPlanHasASentence) {
  const auto notes = known_step_notes();
  const auto cautions = known_caution_ids();
  for (const Substance& s : substances())
    for (const std::string& caution : s.cautions) EXPECT_THAT(cautions, Contains(caution)) << s.id;
  for (const std::string& why : known_why_not_ids()) EXPECT_THAT(notes, Contains(why));
  Household homes(11);
  for (int i = 0; i < 60; ++i) {
    const Visit v = homes.visit();
    const Plan plan = plan_of(v);
    for (const Finding& f : plan.findings) EXPECT_NE(f.text.find(' '), std::string::npos) << f.id;
    for (const Step& s : plan.steps) EXPECT_NE(s.text.find(' '), std::string::npos) << s.text;
  }
}

}  // namespace
}  // namespace brimline
