// SPDX-License-Identifier: GPL-3.0-or-later
// Laws that hold whatever the numbers, over random household waters of every kind. tests/long/plan_waters
// runs the same over 5,000 and prints where they end.
#include <gtest/gtest.h>

#include <map>

#include "tests/station/plan/homes.h"

namespace brimline {
namespace {

constexpr int kWaters = 1000;

std::string where(int i) {
  return std::string(name_of(static_cast<Home>(i % kHomes))) + " " + std::to_string(i / kHomes);
}
Visit home(int i) {
  return random_home(static_cast<Home>(i % kHomes), static_cast<std::uint64_t>(i / kHomes));
}
Plan plan_from(const Visit& v, const Shelf& shelf, int draws = 0) {
  return make_plan(v, {}, shelf, *find_targets("household"), Words("en"), PlanOptions{draws, 7});
}

std::map<std::string, double> moles(const Plan& plan) {
  std::map<std::string, double> out;
  for (const Step& s : plan.steps)
    if (s.active_mol) out[*s.chemical] += *s.active_mol;
  return out;
}

bool told(const Plan& plan, const AnalyteId& analyte) {
  return std::any_of(plan.remains.begin(), plan.remains.end(),
                     [&](const Remains& r) { return r.analyte == analyte; });
}

// `after` equals what `dose` says, order, clock, conflicts, caps, what a vessel must never get, what stands
// at home, harm, no dose where all is in target, and nothing outside that the plan does not tell. At least 98
// in 100 of the waters that can be reached without air or unknown fill water end inside every target, or say
// that a dose was cut short for harm.
TEST(PlanLaws, HoldForAThousandWaters) {
  const TargetSet& targets = *find_targets("household");
  int reached = 0, inside = 0;
  for (int i = 0; i < kWaters && !HasFailure(); ++i) {
    const Visit v = home(i);
    const bool whole = i % 4 != 0;
    const Shelf shelf = whole ? built_in_shelf() : random_shelf(static_cast<std::uint64_t>(i));
    const Plan plan = plan_from(v, shelf, 200);
    for (const std::string& law : broken_laws(v, plan, shelf, targets))
      ADD_FAILURE() << where(i) << ": " << law;
    const auto out = outside(v, plan, targets);
    for (const AnalyteId& analyte : out)
      EXPECT_TRUE(told(plan, analyte)) << where(i) << ": " << analyte << " is outside and nothing says so";
    if (!whole || !reachable(v, plan, targets)) continue;
    const bool cut = std::any_of(plan.remains.begin(), plan.remains.end(),
                                 [](const Remains& r) { return r.reason == "cut_for_harm"; });
    ++reached;
    inside += out.empty() || cut;
  }
  EXPECT_GT(reached, kWaters / 4);
  EXPECT_GE(inside, 0.98 * reached) << inside << " of " << reached;
}

// The same readings in a larger vessel never want fewer moles.
TEST(PlanLaws, ALargerVesselNeverWantsLess) {
  for (int i = 0; i < kWaters / 4; ++i) {
    Visit v = home(i);
    v.bottle.at_home.clear();
    const auto small = moles(plan_from(v, built_in_shelf()));
    v.vessel.volume = *v.vessel.volume * 1.5;
    const auto large = moles(plan_from(v, built_in_shelf()));
    for (const auto& [chemical, mol] : small) {
      ASSERT_TRUE(large.contains(chemical)) << where(i) << ": " << chemical;
      EXPECT_GE(large.at(chemical), mol * (1 + 1e-9) - 1e-12) << where(i) << ": " << chemical;
    }
  }
}

// To half a percent: pH is linearised anew around each answer.
TEST(PlanLaws, ADearerShelfIsNeverBetter) {
  for (int i = 0; i < kWaters / 4; ++i) {
    const Visit v = home(i);
    const Shelf shelf = random_shelf(static_cast<std::uint64_t>(i) + 1);
    Shelf dearer = shelf;
    Household h(static_cast<std::uint64_t>(i) + 9);
    for (Product& p : dearer.products)
      if (h.chance(0.5)) p.price *= h.between(1, 3);
    const auto before = plan_from(v, shelf).cost, after = plan_from(v, dearer).cost;
    if (!before || !after) continue;
    EXPECT_GE(after->weighed, before->weighed * 0.995 - 1e-6) << where(i);
  }
}

// A plan applied to its own water and planned again asks for nothing but upkeep.
TEST(PlanLaws, PlannedAgainItAsksForNothing) {
  int judged = 0;
  for (int i = 0; i < kWaters / 4; ++i) {
    Visit v = home(i);
    const Plan plan = plan_from(v, built_in_shelf());
    if (!plan.remains.empty() || plan.steps.empty()) continue;
    const End end = end_of(v, plan);
    std::erase_if(v.bottle.readings, [](const Reading& r) {
      return r.analyte == "total_chlorine" || r.analyte == "biguanide" || r.analyte == "peroxide" ||
             r.analyte == "bromide";
    });
    for (Reading& r : v.bottle.readings) r.value = end.readings.at(r.analyte);
    v.bottle.signs.clear();
    if (v.vessel.sanitizer == Sanitizer::bromine && end.readings.at("total_bromine") < 1) continue;
    const Plan again = plan_from(v, built_in_shelf());
    if (std::any_of(again.findings.begin(), again.findings.end(),
                    [](const Finding& f) { return f.id == "free_chlorine_high"; }))
      continue;  // a shock stands
    ++judged;
    for (const Step& s : again.steps) EXPECT_FALSE(s.active_mol) << where(i) << ": " << s.text;
  }
  EXPECT_GT(judged, kWaters / 16);
}

TEST(PlanLaws, NoDoseHangsOnAClippedReading) {
  for (int i = 0; i < kWaters / 10; ++i) {
    Visit v = home(i);
    for (Reading& r : v.bottle.readings)
      if (r.analyte == "calcium_hardness" || r.analyte == "cyanuric_acid") r.clipped = Clip::below;
    const bool stabilised = is_chlorine(*v.vessel.sanitizer) &&
                            std::any_of(v.bottle.readings.begin(), v.bottle.readings.end(),
                                        [](const Reading& r) { return r.analyte == "cyanuric_acid"; });
    for (const Step& s : plan_from(v, built_in_shelf()).steps) {
      if (!s.active_mol) continue;
      EXPECT_NE(*s.chemical, "calcium_chloride") << where(i);
      EXPECT_NE(*s.chemical, "cyanuric_acid") << where(i);
      if (stabilised) {
        EXPECT_FALSE(find_substance(*s.chemical)->is("acid")) << "buffered by a stabilizer nobody knows";
      }
    }
    v = home(i);
    v.bottle.readings[0].clipped = Clip::above;  // pH
    const Plan refused = plan_from(v, built_in_shelf());
    EXPECT_FALSE(refused.home_plan);
    EXPECT_FALSE(refused.swim.now);
    for (const Step& s : refused.steps) EXPECT_NE(s.action, Action::add);
  }
}

TEST(PlanLaws, TheSameVisitHasTheSamePlan) {
  for (int i = 0; i < 40; ++i)
    EXPECT_EQ(plan_from(home(i), built_in_shelf(), 100), plan_from(home(i), built_in_shelf(), 100));
}

}  // namespace
}  // namespace brimline
