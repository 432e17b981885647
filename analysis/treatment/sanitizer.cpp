// SPDX-License-Identifier: GPL-3.0-or-later
// Chlorine, bromine, biguanide and the stabilizer.
//
// Not planned, and why: monopersulfate does not reliably clear combined chlorine, makes its next reading
// untrustworthy and is acid (from memory), and the model counts it as spent, so what it makes of a bromide
// bank is not predicted; trichlor dissolves over days and is upkeep, not a dose; dichlor only where the
// stabilizer it leaves may be (dose_choice). Polyquat stands in clearing.cpp, borate is dosed where a target
// set has a lower bound for it.
#include <algorithm>
#include <cmath>

#include "analysis/findings/edge.h"
#include "analysis/treatment/planner.h"
#include "analysis/water/doses.h"

namespace brimline {

namespace {

constexpr double kPerChlorine = 1e-3 / weight::kChlorine;
constexpr double kAlgaeLevel = 10;    // overnight: US Army TB MED 575
constexpr double kStepCap = 10;       // mg/L a step without a measured demand, from memory
constexpr double kDissolvesDays = 7;  // stabilizer reads low until then; common practice, no source
constexpr double kDemandCap = 30;     // with one; beyond it, dilute first. From memory

bool repeat_wanted(const Situation& s, std::string_view analyte) {
  return std::find(s.must_repeat.begin(), s.must_repeat.end(), analyte) != s.must_repeat.end();
}

ChlorinePlan shock(double free, double to, std::string note, std::vector<std::string> why) {
  const double dose = to - free;
  if (dose <= 0) return {};
  if (dose > kStepCap + 1e-9) return {ChlorineNeed::not_yet, 0, "demand_test_first", std::move(why)};
  return {ChlorineNeed::shock, dose, std::move(note), std::move(why)};
}

// As it was read, and thinned by what has been drained since.
std::optional<Measured> combined_now(const Draft& d) {
  auto combined = d.s.combined_chlorine();
  if (combined)
    for (const DraftStep& step : d.steps) {
      combined->value *= 1 - step.change.drained;
      combined->sd *= 1 - step.change.drained;
    }
  return combined;
}

// The bank that bromine is made from; bromine itself is one of the program's doses.
void plan_bromide(Draft& d) {
  const Known* bromine = d.s.fresh("total_bromine");
  const auto aim = d.aim("total_bromine");
  if (!bromine || !aim || !aim->range.low || d.amount("total_bromine") >= *aim->range.low) return;
  const Known* bromide = d.s.fresh("bromide");
  if (!bromide || bromide->value >= 15) return;
  const double missing = (30 - bromide->value) * 1e-3 / weight::kBromide;
  if (const auto bank = d.choose({"sodium_bromide"}, missing * d.kilograms()))
    d.add(*bank, missing, {{"total_bromine_low"}, "bromide_bank"});
}

void plan_biguanide(Draft& d) {
  const Known* biguanide = d.s.fresh("biguanide");
  const auto aim = d.aim("biguanide");
  // 10 g/m3 of the 20 % product a 10 mg/L: the label's own unit.
  if (biguanide && aim && aim->range.low && biguanide->value < *aim->range.low)
    if (const auto product = d.choose({"phmb"}))
      if (d.add_by_label(*product, {{"biguanide_low"}, "raise_biguanide"}, aim->aim - biguanide->value))
        d.others["biguanide"] = aim->aim;
  const Known* peroxide = d.s.fresh("peroxide");
  const auto peroxide_aim = d.aim("peroxide");
  if (!peroxide || !peroxide_aim || standing(peroxide->measured(), peroxide_aim->range) != Standing::below)
    return;
  const double missing = (peroxide_aim->aim - peroxide->value) * 1e-3 / 34.0147;
  if (const auto product = d.choose({"hydrogen_peroxide"}, missing * d.kilograms()))
    if (d.add(*product, missing, {{"peroxide_low"}, "raise_peroxide"}) > 0)
      d.others["peroxide"] = peroxide_aim->aim;
}

}  // namespace

bool combined_high(const Draft& d) {
  const auto combined = combined_now(d);
  const auto limit = d.aim("combined_chlorine");
  return combined && limit && standing(*combined, limit->range) == Standing::above;
}

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
  const bool breakpoint = combined_high(d);
  const double to = std::max(breakpoint ? 10 * combined_now(d)->value : 0.0, s.algae() ? kAlgaeLevel : 0.0);
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
  if (d.s.vessel.sanitizer == Sanitizer::bromine) plan_bromide(d);
  if (d.s.vessel.sanitizer == Sanitizer::biguanide) plan_biguanide(d);
}

// Too much chlorine falls by itself in the sun; where none shines, half of what a reducer would take, and
// another bottle (facts of the trade, from memory). Above 10 mg/L the reading is not believed.
void plan_lowered_chlorine(Draft& d) {
  const Known* bromine = d.s.fresh("total_bromine");
  const auto most = d.aim("total_bromine");
  if (d.s.vessel.sanitizer == Sanitizer::bromine && bromine && most && most->range.high &&
      bromine->value > *most->range.high)
    return d.act(Action::circulate, "let_bromine_fall", {"total_bromine_high"}, 24);
  const Known* free = d.s.fresh("free_chlorine");
  const auto aim = d.aim("free_chlorine");
  if (!d.s.chlorine() || !free || !aim || !aim->range.high) return;
  const double high = std::max(*aim->range.high, re_entry_mg_l(d.s));
  if (free->value <= high) return;
  const bool sun = d.s.vessel.place != Place::indoor && !d.s.is_spa();
  if (sun || free->value > 10 || free->value < high + 1) {
    d.act(Action::circulate, sun ? "let_chlorine_fall" : "let_chlorine_fall_covered", {"free_chlorine_high"},
          24);
    return;
  }
  const double excess = (free->value - aim->aim) * kPerChlorine;
  const auto product = d.choose({"sodium_thiosulfate", "sodium_sulfite"}, excess * d.kilograms());
  if (!product) return;
  const double each = find_dose(d.supplies()[*product].product.substance)->removes_chlorine;
  d.add(*product, excess / each, {{"free_chlorine_high"}, "lower_chlorine"});
}

bool stabilizer_may_rise(const Draft& d) {
  const Known* free = d.s.fresh("free_chlorine");
  if (!d.s.fresh("cyanuric_acid") || !free || d.s.vessel.place != Place::outdoor) return false;
  if (d.s.bottle.occasion == Occasion::closing) return false;
  if (combined_high(d)) return false;
  // Not while the last one still dissolves.
  for (const Addition& added : d.s.bottle.additions_since)
    if (added.chemical == "cyanuric_acid" && added.days_before.value_or(0) < kDissolvesDays) return false;
  // Not before chlorine holds.
  return !d.s.algae() && !d.s.demand_dose_mg_l && free->value >= 0.5;
}

}  // namespace brimline
