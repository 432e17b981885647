// SPDX-License-Identifier: GPL-3.0-or-later
// Laws that hold whatever the numbers, over random household waters.
#include <gtest/gtest.h>

#include <cmath>

#include "analysis/treatment/substance.h"
#include "analysis/water/doses.h"
#include "tests/station/plan/household.h"

namespace brimline {
namespace {

constexpr int kWaters = 150;

struct Kept {
  Sanitizer sanitizer;
  VesselKind kind;
};
constexpr Kept kKept[] = {{Sanitizer::chlorine, VesselKind::pool},
                          {Sanitizer::salt_chlorine, VesselKind::pool},
                          {Sanitizer::chlorine, VesselKind::spa},
                          {Sanitizer::bromine, VesselKind::spa},
                          {Sanitizer::biguanide, VesselKind::pool}};

template <class Law>
void for_many(Law law) {
  for (const Kept& k : kKept) {
    Household homes(static_cast<std::uint64_t>(k.sanitizer) * 10 + static_cast<std::uint64_t>(k.kind) + 1);
    for (int i = 0; i < kWaters; ++i) {
      const Visit v = homes.visit(k.sanitizer, k.kind);
      SCOPED_TRACE("sanitizer " + std::to_string(static_cast<int>(k.sanitizer)) + " water " +
                   std::to_string(i));
      law(v);
      if (testing::Test::HasFailure()) return;
    }
  }
}

WaterReadings readings_of(const Visit& v) {
  WaterReadings r;
  r.temperature = *v.bottle.sample_temperature;
  r.ph = value(v, "ph");
  r.total_alkalinity = value(v, "total_alkalinity");
  r.calcium_hardness = value(v, "calcium_hardness");
  if (value(v, "cyanuric_acid") > 0) r.cyanuric_acid = value(v, "cyanuric_acid");
  if (value(v, "free_chlorine") > 0) r.free_chlorine = value(v, "free_chlorine");
  if (value(v, "total_bromine") > 0) r.total_bromine = value(v, "total_bromine");
  return r;
}

// What the water model says of the same doses, put together here without the planner.
TEST(PlanLaws, AfterIsWhatTheModelSaysOfTheDoses) {
  for_many([](const Visit& v) {
    auto water = water_from_readings(readings_of(v));
    ASSERT_TRUE(water);
    Totals t = water->totals;
    const double kilograms = v.vessel.volume->cubic_metres() * 1000;
    for (const Step& s : plan_of(v).steps) {
      if (s.action == Action::drain_refill || s.action == Action::aerate) return;  // not doses
      if (s.active_mol) t = add(t, *s.chemical, *s.active_mol / kilograms).value();
      if (!s.after) continue;
      const auto now = solve(t, *v.bottle.sample_temperature);
      ASSERT_TRUE(now);
      const auto warm = at_temperature(*now, *v.vessel.water_temperature);
      EXPECT_NEAR(s.after->readings.at("ph"), now->ph, 1e-6);
      EXPECT_NEAR(s.after->readings.at("total_alkalinity"), now->total_alkalinity(), 1e-6);
      EXPECT_NEAR(s.after->vessel.at("ph"), warm->ph, 1e-6);
      EXPECT_NEAR(s.after->vessel.at("si_calcite"), *warm->si_calcite(), 1e-6);
    }
  });
}

// Chemicals that must keep apart do; those that must never meet are never both there.
TEST(PlanLaws, ConflictsKeepTheirHours) {
  for_many([](const Visit& v) {
    const bool spa = v.vessel.kind == VesselKind::spa;
    const Plan plan = plan_of(v);
    for (const Step& a : plan.steps)
      for (const Step& b : plan.steps) {
        if (!a.chemical || !b.chemical || a.order >= b.order) continue;
        const Conflict* c = conflict_between(*find_substance(*a.chemical), *find_substance(*b.chemical));
        if (!c) continue;
        ASSERT_TRUE(c->gap_h) << *a.chemical << " and " << *b.chemical;
        const double end = a.start_h + (a.portions - 1) * a.portion_gap_h;
        EXPECT_GE(b.start_h + 1e-9, end + (spa ? *c->gap_spa_h : *c->gap_h))
            << *a.chemical << " " << *b.chemical;
      }
  });
}

TEST(PlanLaws, StepsFollowEachOtherAndTheNightIsQuiet) {
  for_many([](const Visit& v) {
    double end = 0;
    int order = 0;
    for (const Step& s : plan_of(v).steps) {
      EXPECT_EQ(s.order, ++order);
      EXPECT_GE(s.start_h + 1e-9, end);
      end = s.start_h + (s.portions - 1) * s.portion_gap_h + s.wait_h;
      for (int i = 0; i < s.portions; ++i) {
        const double clock = std::fmod(17.5 + s.start_h + i * s.portion_gap_h, 24.0);
        EXPECT_TRUE(clock >= 7 - 1e-6 && clock < 22) << s.text << " at " << clock;
      }
    }
  });
}

// The step caps of the trade by their computed effect (from memory: acid a quart in 10,000 US gal and
// pH 7.2; TA +30; CH +80; soda ash pH 7.6; chlorine +10).
TEST(PlanLaws, StepsKeepTheirCaps) {
  for_many([](const Visit& v) {
    std::map<std::string, double> before = {{"total_alkalinity", value(v, "total_alkalinity")},
                                            {"calcium_hardness", value(v, "calcium_hardness")},
                                            {"free_chlorine", value(v, "free_chlorine")}};
    for (const Step& s : plan_of(v).steps) {
      if (!s.after) continue;
      const auto& after = s.after->readings;
      if (s.action == Action::add) {
        EXPECT_LE(after.at("total_alkalinity") - before["total_alkalinity"], 30 + 1e-6);
        EXPECT_LE(after.at("calcium_hardness") - before["calcium_hardness"], 80 + 1e-6);
        if (after.contains("free_chlorine")) {
          EXPECT_LE(after.at("free_chlorine") - before["free_chlorine"], 10 + 1e-6);
        }
      }
      if (s.chemical == "hydrochloric_acid") {
        EXPECT_GE(after.at("ph"), 7.2 - 1e-6);
        EXPECT_LE(*s.active_mol / v.vessel.volume->cubic_metres(), 0.25 + 1e-9);
      }
      if (s.chemical == "sodium_carbonate") {
        EXPECT_LE(after.at("ph"), 7.6 + 1e-6);
      }
      for (auto& [analyte, now] : before)
        if (after.contains(analyte)) now = after.at(analyte);
    }
  });
}

TEST(PlanLaws, NoVesselGetsWhatItMustNever) {
  for_many([](const Visit& v) {
    for (const Step& s : plan_of(v).steps) {
      if (!s.chemical) continue;
      const Substance* sub = find_substance(*s.chemical);
      ASSERT_NE(sub, nullptr);
      EXPECT_NE(sub->id, "copper_sulfate");
      if (v.vessel.sanitizer == Sanitizer::biguanide) {
        for (const char* family : {"chlorine", "bromine_donor", "persulfate", "phosphonate", "copper"})
          EXPECT_FALSE(sub->is(family)) << sub->id;
      }
      if (v.vessel.sanitizer == Sanitizer::bromine) {
        EXPECT_FALSE(sub->is("isocyanurate") || sub->is("stabilizer")) << sub->id;
      }
      if (v.vessel.place == Place::indoor) {
        EXPECT_FALSE(sub->is("isocyanurate") || sub->is("stabilizer")) << sub->id;
      }
    }
  });
}

// The same readings in a larger vessel never want fewer moles.
TEST(PlanLaws, ALargerVesselNeverWantsLess) {
  for_many([](Visit v) {
    const auto moles = [](const Plan& plan) {
      std::map<std::string, double> out;
      for (const Step& s : plan.steps)
        if (s.active_mol) out[*s.chemical] += *s.active_mol;
      return out;
    };
    const auto small = moles(plan_of(v));
    v.vessel.volume = *v.vessel.volume * 1.5;
    const auto large = moles(plan_of(v));
    for (const auto& [chemical, mol] : small) {
      ASSERT_TRUE(large.contains(chemical)) << chemical;
      EXPECT_GE(large.at(chemical), mol * (1 + 1e-9) - 1e-12) << chemical;
    }
  });
}

TEST(PlanLaws, WaterInsideEveryTargetGetsNoDose) {
  Household homes(5);
  for (int i = 0; i < kWaters; ++i) {
    Visit v = homes.visit();
    v.vessel.surface = Surface::plaster;
    v.vessel.water_temperature = Temperature::celsius(26);
    v.bottle.readings = {Household::reading("ph", homes.between(7.45, 7.65), 0.05),
                         Household::reading("total_alkalinity", homes.between(85, 115), 4),
                         Household::reading("calcium_hardness", homes.between(250, 390), 8),
                         Household::reading("free_chlorine", homes.between(2.6, 3.9), 0.08),
                         Household::reading("cyanuric_acid", homes.between(31, 49), 3)};
    const Plan plan = plan_of(v, 50);
    EXPECT_TRUE(plan.swim.now);
    for (const Step& s : plan.steps) EXPECT_NE(s.action, Action::add) << s.text;
  }
}

TEST(PlanLaws, NoDoseHangsOnAClippedReading) {
  Household homes(6);
  for (int i = 0; i < 60; ++i) {
    Visit v = homes.visit();
    for (Reading& r : v.bottle.readings)
      if (r.analyte == "calcium_hardness" || r.analyte == "cyanuric_acid") r.clipped = Clip::below;
    const Plan plan = plan_of(v);
    for (const Step& s : plan.steps) {
      if (!s.chemical) continue;
      EXPECT_NE(*s.chemical, "calcium_chloride");
      EXPECT_NE(*s.chemical, "cyanuric_acid");
      EXPECT_FALSE(find_substance(*s.chemical)->is("acid")) << "buffered by a stabilizer nobody knows";
    }
    v = homes.visit();
    v.bottle.readings[0].clipped = Clip::above;  // pH
    const Plan refused = plan_of(v);
    EXPECT_FALSE(refused.home_plan);
    EXPECT_FALSE(refused.swim.now);
    for (const Step& s : refused.steps) EXPECT_NE(s.action, Action::add);
  }
}

// Of the draws, at most one in a hundred may be harmed: the contract's harm.
TEST(PlanLaws, ThePlanHarmsAtMostOneDrawInAHundred) {
  Household homes(8);
  for (int i = 0; i < 40; ++i) {
    const Plan plan = plan_of(homes.visit(), 300);
    ASSERT_TRUE(plan.proof);
    EXPECT_LE(plan.proof->harm, 0.01) << i;
  }
}

TEST(PlanLaws, TheSameVisitHasTheSamePlan) {
  Household homes(9);
  for (int i = 0; i < 20; ++i) {
    const Visit v = homes.visit();
    EXPECT_EQ(plan_of(v, 100), plan_of(v, 100));
  }
}

}  // namespace
}  // namespace brimline
