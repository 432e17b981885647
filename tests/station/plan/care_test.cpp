// SPDX-License-Identifier: GPL-3.0-or-later
// What a sheet must never say and always say: common practice, no source, where none is named.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "analysis/findings/find.h"
#include "tests/station/plan/household.h"

namespace brimline {
namespace {

using ::testing::Contains;

Visit pool(const std::vector<std::pair<const char*, double>>& readings) {
  Visit v = Household(3).visit();
  v.vessel.surface = Surface::plaster;
  v.vessel.plaster_age_days = 900;
  v.vessel.volume = Volume::cubic_metres(50);
  v.vessel.water_temperature = Temperature::celsius(27);
  v.bottle.fill_water.reset();
  v.bottle.readings.clear();
  for (const auto& [analyte, value] : readings)
    v.bottle.readings.push_back(
        Household::reading(analyte, value, std::string_view(analyte) == "ph" ? 0.05 : 0.03 * value + 0.03));
  return v;
}

bool says(const Plan& plan, std::string_view id) {
  return std::any_of(plan.findings.begin(), plan.findings.end(),
                     [&](const Finding& f) { return f.id == id; });
}

const Step* step_with(const Plan& plan, std::string_view chemical) {
  for (const Step& s : plan.steps)
    if (s.chemical == chemical) return &s;
  return nullptr;
}

const Step* chlorine_of(const Plan& plan) {
  for (const Step& s : plan.steps)
    if (s.chemical && (s.chemical->ends_with("hypochlorite") || *s.chemical == "dichlor")) return &s;
  return nullptr;
}

// A half breakpoint leaves more combined chlorine than none (breakpoint chemistry, White's Handbook of
// Chlorination; from memory): the whole of it stands in the plan, or none.
TEST(Care, AShockIsGivenWholeOrNotAtAll) {
  for (int i = 0; i < 60; ++i) {
    Household h(static_cast<std::uint64_t>(i));
    const double free = h.between(0.5, 3), combined = h.between(0.6, 0.95);
    Visit v = pool({{"ph", h.between(7.2, 8.1)},
                    {"total_alkalinity", h.between(40, 140)},
                    {"calcium_hardness", 250},
                    {"free_chlorine", free},
                    {"total_chlorine", free + combined},
                    {"cyanuric_acid", 40}});
    v.vessel.volume_relative_sd = h.between(0.02, 0.25);
    const Plan plan = plan_of(v, 1000);
    if (!says(plan, "combined_chlorine_high")) continue;
    const Step* dose = chlorine_of(plan);
    if (!dose) continue;
    ASSERT_TRUE(dose->after);
    EXPECT_NEAR(dose->after->readings.at("free_chlorine"), 10 * combined, 0.15) << i;
  }
}

TEST(Care, TabletsOpenNoSpa) {
  Visit v = Household(5).visit(Sanitizer::bromine, VesselKind::spa);
  v.vessel.volume = Volume::cubic_metres(9);
  for (Reading& r : v.bottle.readings)
    if (r.analyte == "total_bromine") r.value = 1;
  const Plan plan = plan_of(v);
  ASSERT_NE(step_with(plan, "bcdmh"), nullptr);
  EXPECT_EQ(step_with(plan, "bcdmh")->product, "bromine_tablets");
  EXPECT_FALSE(plan.swim.now);
  const Step& last = plan.steps.back();
  EXPECT_GE(plan.swim.not_before_h, last.start_h + last.wait_h + plan.retest->after_h - 1e-9);
}

// A tablet is not broken: a little bromine is poured as grains, and counts in what is predicted.
TEST(Care, LessThanATabletIsPouredAsGrains) {
  Visit v = Household(5).visit(Sanitizer::bromine, VesselKind::spa);
  v.vessel.volume = Volume::cubic_metres(1.2);
  for (Reading& r : v.bottle.readings)
    if (r.analyte == "total_bromine") r.value = 1;
  const Plan plan = plan_of(v);
  const Step* bromine = step_with(plan, "bcdmh");
  ASSERT_NE(bromine, nullptr);
  EXPECT_EQ(bromine->product, "bromine_grains");
  EXPECT_LT(bromine->amount->value, 15);
  EXPECT_EQ(bromine->amount->unit, "g");
  EXPECT_GE(plan.predicted.at("total_bromine").value, 3.0);
}

TEST(Care, PeroxideIsClearedBeforeAnybodySwims) {
  Visit v = Household(8).visit(Sanitizer::biguanide);
  for (Reading& r : v.bottle.readings) {
    if (r.analyte == "biguanide") r.value = 15;
    if (r.analyte == "peroxide") r.value = 2;
  }
  const Plan plan = plan_of(v);
  const Step* peroxide = step_with(plan, "hydrogen_peroxide");
  ASSERT_NE(peroxide, nullptr);
  EXPECT_GE(plan.swim.not_before_h, peroxide->start_h + peroxide->wait_h - 1e-9);
}

TEST(Care, HighAlkalinityWithLowPhGetsAcidAndAir) {
  const Plan plan = plan_of(pool({{"ph", 7.05},
                                  {"total_alkalinity", 220},
                                  {"calcium_hardness", 250},
                                  {"free_chlorine", 3},
                                  {"total_chlorine", 3},
                                  {"cyanuric_acid", 40}}));
  const bool air = std::any_of(plan.steps.begin(), plan.steps.end(),
                               [](const Step& s) { return s.action == Action::aerate; });
  EXPECT_TRUE(air);
}

TEST(Care, MetalsHoldThePhLow) {
  const Plan plan = plan_of(pool({{"ph", 7.0},
                                  {"total_alkalinity", 70},
                                  {"calcium_hardness", 250},
                                  {"free_chlorine", 3},
                                  {"total_chlorine", 3},
                                  {"cyanuric_acid", 40},
                                  {"iron", 0.6}}));
  ASSERT_FALSE(plan.steps.empty());
  const Step* first = step_with(plan, "sequestrant");
  ASSERT_NE(first, nullptr);
  for (const Step& s : plan.steps) {
    EXPECT_TRUE(!s.chemical || s.chemical == "sequestrant" || s.start_h > first->start_h);
    EXPECT_TRUE(!s.after || s.after->readings.at("ph") <= 7.42);
  }
}

// So much stabilizer would want more free chlorine than may be swum in: the target stays below the latter.
TEST(Care, TargetsDoNotContradictEachOther) {
  for (int cyanuric = 0; cyanuric < 200; cyanuric += 5)
    for (const Sanitizer s : {Sanitizer::chlorine, Sanitizer::salt_chlorine}) {
      TargetCase c;
      c.sanitizer = s;
      c.place = Place::outdoor;
      c.cyanuric_acid = cyanuric;
      const auto aim = find_targets("household")->find("free_chlorine", c);
      ASSERT_TRUE(aim && aim->range.low && aim->range.high);
      EXPECT_LT(*aim->range.low, *aim->range.high) << cyanuric;
      EXPECT_LE(aim->aim, *aim->range.high) << cyanuric;
    }
}

TEST(Care, ANewFillWithoutChlorineIsNotCalledBleached) {
  Visit v = pool({{"ph", 8.3},
                  {"total_alkalinity", 90},
                  {"calcium_hardness", 250},
                  {"free_chlorine", 0},
                  {"total_chlorine", 0},
                  {"cyanuric_acid", 0}});
  v.bottle.occasion = Occasion::new_fill;
  EXPECT_FALSE(says(plan_of(v), "sanitizer_doubtful"));
  v.bottle.occasion = Occasion::routine;
  EXPECT_TRUE(says(plan_of(v), "sanitizer_doubtful"));
}

// Leaves and mud use chlorine up: they come out first. Common practice, no source.
TEST(Care, LeavesComeOutBeforeTheFirstDose) {
  Visit v = pool({{"ph", 7.5},
                  {"total_alkalinity", 100},
                  {"calcium_hardness", 250},
                  {"free_chlorine", 0.5},
                  {"total_chlorine", 0.5},
                  {"cyanuric_acid", 40}});
  for (const Occasion occasion : {Occasion::after_storm, Occasion::closing}) {
    v.bottle.occasion = occasion;
    const Plan plan = plan_of(v);
    ASSERT_FALSE(plan.steps.empty());
    EXPECT_EQ(plan.steps.front().action, Action::vacuum);
    EXPECT_NE(chlorine_of(plan), nullptr);
  }
  v.bottle.occasion = Occasion::routine;
  EXPECT_EQ(plan_of(v).steps.front().action, Action::add);
}

// What a jug or a household scale does not show is told to want something finer.
TEST(Care, ASmallAmountSaysWhatMeasuresIt) {
  Visit v = Household(6).visit(Sanitizer::chlorine, VesselKind::plunge);
  v.bottle.readings = {Household::reading("ph", 7.5, 0.05), Household::reading("total_alkalinity", 100, 4),
                       Household::reading("calcium_hardness", 200, 8),
                       Household::reading("free_chlorine", 0.5, 0.05),
                       Household::reading("total_chlorine", 0.6, 0.05)};
  const auto fine = Contains(::testing::HasSubstr("syringe"));
  v.vessel.volume = Volume::cubic_metres(0.9);
  ASSERT_NE(chlorine_of(plan_of(v)), nullptr);
  EXPECT_THAT(chlorine_of(plan_of(v))->cautions, fine);
  v.vessel.volume = Volume::cubic_metres(9);
  EXPECT_THAT(chlorine_of(plan_of(v))->cautions, ::testing::Not(fine));
}

TEST(Care, ASwimSpaGetsNoStabilizer) {
  Visit v = pool({{"ph", 7.5},
                  {"total_alkalinity", 100},
                  {"calcium_hardness", 180},
                  {"free_chlorine", 4},
                  {"total_chlorine", 4},
                  {"cyanuric_acid", 5}});
  v.vessel.kind = VesselKind::swim_spa;
  v.vessel.surface = Surface::acrylic;
  EXPECT_EQ(step_with(plan_of(v), "cyanuric_acid"), nullptr);
}

std::string text_of(const Plan& plan, std::string_view id) {
  for (const Finding& f : plan.findings)
    if (f.id == id) return f.text;
  return "";
}

// What is seen is weighed against what is read, and what does not fit is said.
TEST(Care, SignsAreWeighedAgainstReadings) {
  Visit sound = pool({{"ph", 7.5},
                      {"total_alkalinity", 100},
                      {"calcium_hardness", 250},
                      {"free_chlorine", 3},
                      {"total_chlorine", 3},
                      {"cyanuric_acid", 40}});
  sound.bottle.signs = {Sign::green_water, Sign::cloudy};
  const Plan odd = plan_of(sound);
  EXPECT_NE(text_of(odd, "green_water").find("does not fit"), std::string::npos);
  EXPECT_NE(text_of(odd, "cloudy").find("filter"), std::string::npos);
  Visit used_up = sound;
  for (Reading& r : used_up.bottle.readings)
    if (r.analyte.ends_with("chlorine")) r.value = 0.4;
  const Plan plain = plan_of(used_up);
  EXPECT_NE(text_of(plain, "green_water").find("explains it"), std::string::npos);
  EXPECT_NE(text_of(plain, "cloudy").find("explains it"), std::string::npos);
  used_up.bottle.readings.push_back(Household::reading("copper", 0.8, 0.03));
  EXPECT_NE(text_of(plan_of(used_up), "green_water").find("metal"), std::string::npos);
}

TEST(Care, WhatMustBeReadAgainIsAStep) {
  Visit v = pool({{"ph", 7.5},
                  {"total_alkalinity", 100},
                  {"calcium_hardness", 250},
                  {"free_chlorine", 3},
                  {"total_chlorine", 2},
                  {"cyanuric_acid", 40}});
  const Plan plan = plan_of(v);
  ASSERT_TRUE(says(plan, "reading_repeat"));
  EXPECT_FALSE(plan.steps.empty());
}

TEST(Care, TooMuchBromineHasAnHour) {
  Visit v = Household(5).visit(Sanitizer::bromine, VesselKind::spa);
  for (Reading& r : v.bottle.readings)
    if (r.analyte == "total_bromine") r.value = 8;
  const Plan plan = plan_of(v);
  EXPECT_FALSE(plan.swim.now);
  ASSERT_TRUE(plan.swim.not_before_h);
  EXPECT_GT(*plan.swim.not_before_h, 12);
}

TEST(Care, TheSunIsToldOfWhereNothingHoldsChlorine) {
  Visit v = pool({{"ph", 7.5},
                  {"total_alkalinity", 100},
                  {"calcium_hardness", 250},
                  {"free_chlorine", 0.5},
                  {"total_chlorine", 0.5},
                  {"cyanuric_acid", 0}});
  v.bottle.occasion = Occasion::closing;  // no stabilizer before the winter
  const Plan plan = plan_of(v);
  const Step* dose = chlorine_of(plan);
  ASSERT_NE(dose, nullptr);
  EXPECT_THAT(dose->cautions, Contains(::testing::HasSubstr("sun takes it")));
  v.vessel.place = Place::indoor;
  const Plan indoor = plan_of(v);
  ASSERT_NE(chlorine_of(indoor), nullptr);
  EXPECT_THAT(chlorine_of(indoor)->cautions, ::testing::Not(Contains(::testing::HasSubstr("sun takes it"))));
}

TEST(Care, ASmallVesselGetsItsChlorineByTheMillilitre) {
  Visit v = Household(6).visit(Sanitizer::chlorine, VesselKind::plunge);
  v.vessel.volume = Volume::cubic_metres(0.9);
  v.bottle.readings = {Household::reading("ph", 7.5, 0.05), Household::reading("total_alkalinity", 100, 4),
                       Household::reading("calcium_hardness", 200, 8),
                       Household::reading("free_chlorine", 0.5, 0.05),
                       Household::reading("total_chlorine", 0.6, 0.05)};
  const Step* dose = step_with(plan_of(v), "sodium_hypochlorite");
  ASSERT_NE(dose, nullptr);
  EXPECT_EQ(dose->amount->unit, "mL");
  EXPECT_GT(dose->amount->value, 10);
}

}  // namespace
}  // namespace brimline
