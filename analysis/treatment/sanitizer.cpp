// SPDX-License-Identifier: GPL-3.0-or-later
// Chlorine, bromine, biguanide and the stabilizer.
#include <algorithm>
#include <cmath>

#include "analysis/treatment/planner.h"
#include "analysis/water/doses.h"

namespace brimline {

namespace {

constexpr double kPerChlorine = 1e-3 / weight::kChlorine;
constexpr double kAlgaeLevel = 10;  // overnight: US Army TB MED 575
constexpr double kStepCap = 10;     // mg/L a step without a measured demand, from memory
constexpr double kDemandCap = 30;   // with one; beyond it, dilute first. From memory

bool repeat_wanted(const Situation& s, std::string_view analyte) {
  return std::find(s.must_repeat.begin(), s.must_repeat.end(), analyte) != s.must_repeat.end();
}

ChlorinePlan shock(double free, double to, std::string note, std::vector<std::string> why) {
  const double dose = to - free;
  if (dose <= 0) return {};
  if (dose > kStepCap + 1e-9) return {ChlorineNeed::not_yet, 0, "demand_test_first", std::move(why)};
  return {ChlorineNeed::shock, dose, std::move(note), std::move(why)};
}

void add_chlorine(Draft& d, const ChlorinePlan& plan) {
  const auto product = d.choose({"sodium_hypochlorite", "calcium_hypochlorite"});
  if (!product) return;
  const double each = dose_vector(product->substance)->chlorine;
  const bool whole = plan.need == ChlorineNeed::shock;
  d.add(*product, plan.to_add_mg_l * kPerChlorine / each, {plan.for_findings, plan.note, whole, whole});
}

void plan_bromine(Draft& d) {
  const Known* bromine = d.s.fresh("total_bromine");
  const auto aim = d.aim("total_bromine");
  if (!bromine || !aim || !aim->range.low || d.amount("total_bromine") >= *aim->range.low) return;
  if (const Known* bromide = d.s.fresh("bromide"); bromide && bromide->value < 15)
    if (const auto bank = d.choose({"sodium_bromide"}))
      d.add(*bank, (30 - bromide->value) * 1e-3 / weight::kBromide, {{"total_bromine_low"}, "bromide_bank"});
  const auto product = d.choose({"bcdmh"});
  if (!product) return;
  const double missing = (aim->aim - d.amount("total_bromine")) * 1e-3 / weight::kBromine;
  d.add(*product, missing / 2, {{"total_bromine_low"}, "raise_bromine"});
}

void plan_biguanide(Draft& d) {
  const Known* biguanide = d.s.fresh("biguanide");
  const auto aim = d.aim("biguanide");
  if (biguanide && aim && aim->range.low && biguanide->value < *aim->range.low)
    if (auto product = d.choose({"phmb"})) {
      // 10 g/m3 of the 20 % product a 10 mg/L: the label's own unit.
      product->label_dose = aim->aim - biguanide->value;
      if (d.add_by_label(*product, {{"biguanide_low"}, "raise_biguanide"})) d.others["biguanide"] = aim->aim;
    }
  const Known* peroxide = d.s.fresh("peroxide");
  const auto peroxide_aim = d.aim("peroxide");
  if (!peroxide || !peroxide_aim || !peroxide_aim->range.low || peroxide->value >= *peroxide_aim->range.low)
    return;
  if (const auto product = d.choose({"hydrogen_peroxide"}))
    if (d.add(*product, (peroxide_aim->aim - peroxide->value) * 1e-3 / 34.0147,
              {{"peroxide_low"}, "raise_peroxide"}) > 0)
      d.others["peroxide"] = peroxide_aim->aim;
}

}  // namespace

double re_entry_mg_l(const Situation& s) {
  return s.is_spa() ? 5 : 4;
}

ChlorinePlan chlorine_plan(const Draft& d) {
  const Situation& s = d.s;
  const Known* read = s.fresh("free_chlorine");
  const auto aim = d.aim("free_chlorine");
  if (!s.chlorine() || !aim || !d.may_dose()) return {};
  // A bleached reading looks like none, and the next dose would land on far too much.
  if (repeat_wanted(s, "free_chlorine"))
    return {ChlorineNeed::not_yet, 0, "repeat_diluted", {"reading_repeat"}};
  if (!read) return {};

  const double free = d.amount("free_chlorine");
  if (read->value > 10) return {};
  if (s.demand_open) return {ChlorineNeed::not_yet, 0, "demand_test_again", {"demand_not_found"}};
  if (s.demand_dose_mg_l) {
    if (*s.demand_dose_mg_l > kDemandCap)
      return {ChlorineNeed::not_yet, 0, "demand_too_high", {"chlorine_demand"}};
    if (*s.demand_dose_mg_l > 0.05)
      return {ChlorineNeed::shock, *s.demand_dose_mg_l, "meet_demand", {"chlorine_demand"}};
    return {};
  }
  const auto combined = s.combined_chlorine();
  const auto limit = d.aim("combined_chlorine");
  const bool breakpoint = combined && limit && limit->range.high && *combined > *limit->range.high;
  const double to = std::max(breakpoint ? 10 * *combined : 0.0, s.algae() ? kAlgaeLevel : 0.0);
  if (breakpoint) return shock(free, to, "breakpoint", {"combined_chlorine_high"});
  if (s.algae()) return shock(free, to, "shock_algae", {"green_water", "slimy_walls"});
  if (!aim->range.low || free >= *aim->range.low) return {};
  // Where stabilizer is to be raised too, for the water as it will be then.
  const auto cyanuric = d.aim("cyanuric_acid");
  const bool rises =
      cyanuric && cyanuric->range.low && s.fresh("cyanuric_acid") && s.vessel.place == Place::outdoor;
  const double later = rises ? cyanuric->aim * aim->row->low_per_cyanuric.value_or(0) : 0;
  const double level = std::min(std::max(aim->aim, later), re_entry_mg_l(s) - 0.25);
  return {ChlorineNeed::raise, std::max(0.0, level - free), "raise_chlorine", {"free_chlorine_low"}};
}

void plan_sanitizer(Draft& d) {
  if (!d.may_dose() || !d.s.vessel.sanitizer) return;
  if (d.s.vessel.sanitizer == Sanitizer::bromine) return plan_bromine(d);
  if (d.s.vessel.sanitizer == Sanitizer::biguanide) return plan_biguanide(d);
  const ChlorinePlan plan = chlorine_plan(d);
  if (plan.need == ChlorineNeed::raise || plan.need == ChlorineNeed::shock) {
    if (d.s.has(Sign::tablets_in_use) &&
        (d.steps.empty() || d.steps.front().step.action != Action::remove_tablets))
      d.act(Action::remove_tablets, "remove_tablets", {"tablets_in_use"}, 0);
    add_chlorine(d, plan);
  }
  if (plan.need == ChlorineNeed::not_yet) {
    d.act(Action::retest, plan.note, plan.for_findings, 0);
    d.ends = true;
  }
}

// Granules lower pH: it is lifted first where they would take it below 7.2, and again after them.
void plan_stabilizer(Draft& d) {
  const Known* read = d.s.fresh("cyanuric_acid");
  const auto aim = d.aim("cyanuric_acid");
  const Known* free = d.s.fresh("free_chlorine");
  if (!read || !aim || !aim->range.low || !free || d.s.vessel.place != Place::outdoor) return;
  const auto combined = d.s.combined_chlorine();
  const auto limit = d.aim("combined_chlorine");
  if (combined && limit && limit->range.high && *combined > *limit->range.high) return;
  if (d.s.algae() || d.s.demand_dose_mg_l || free->value < 0.5) return;  // chlorine does not hold yet
  for (int round = 0; round < 3 && d.may_dose(); ++round) {
    if (d.amount("cyanuric_acid") >= *aim->range.low - 0.5) return;
    const auto product = d.choose({"cyanuric_acid"});
    if (!product) return;
    const double missing = (aim->aim - d.amount("cyanuric_acid")) * 1e-3 / weight::kCyanuricAcid;
    const Substance* sub = find_substance(product->substance);
    if (d.capped(*sub, missing) < missing) plan_raised_ph(d, 7.6, "cyanuric_acid_low");
    if (d.add(*product, missing, {{"cyanuric_acid_low"}, "raise_stabilizer"}) <= 0) return;
    plan_raised_ph(d, 7.4, "cyanuric_acid_low");
  }
}

}  // namespace brimline
