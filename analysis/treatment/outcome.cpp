// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/outcome.h"

#include <algorithm>

#include "analysis/findings/find.h"
#include "analysis/water/doses.h"

namespace brimline {

namespace {

constexpr double kRoutineRetest = 168, kRetest = 24;  // hours

double end_of(const DraftStep& d) {
  return d.step.start_h + (d.step.portions - 1) * d.step.portion_gap_h + d.step.wait_h;
}

// The first hour from `hour` on in which nothing has just been poured.
double clear_of_doses(const DraftedPlan& plan, double hour, bool spa) {
  const double shut = spa ? 1 : 4;
  for (const DraftStep& d : plan.steps)
    for (int portion = 0; d.step.action == Action::add && portion < d.step.portions; ++portion) {
      const double poured = d.step.start_h + portion * d.step.portion_gap_h;
      if (hour > poured - 0.5 && hour < poured + shut) hour = poured + shut;
    }
  return hour;
}

void set_swim(DraftedPlan& plan, const Draft& d) {
  plan.swim.because = closing_ids(plan.findings);
  plan.swim.now = plan.swim.because.empty();
  if (plan.swim.now) return;
  const DraftStep* last = nullptr;
  const bool biguanide = d.s.vessel.sanitizer == Sanitizer::biguanide;
  bool slow = false;  // tablets give their bromine over a day or more: only a reading tells
  for (const DraftStep& step : plan.steps) {
    const bool dose = step.step.action == Action::add;
    // Peroxide is poured after the sanitizer and keeps everybody out as well.
    if (step.note == "raise_chlorine" || step.note == "raise_biguanide" || (biguanide && dose) ||
        (step.note == "raise_bromine" && !step.tablets))
      last = &step;
    slow = slow || (step.note == "raise_bromine" && step.tablets);
  }
  const bool gated = needs_retest_to_open(d.s, plan.findings) || slow || d.ends || plan.steps.empty() ||
                     !d.s.fresh(sanitizer_analyte(d.s.vessel).value_or("free_chlorine"));
  if (!gated && last) {
    plan.swim.after_step = last->step.order;
    plan.swim.not_before_h = clear_of_doses(
        plan, last->step.start_h + std::max(last->swim_wait_h, d.s.is_spa() ? 1.0 : last->step.wait_h),
        d.s.is_spa());
    return;
  }
  if (plan.steps.empty()) return;
  plan.swim.after_step = plan.steps.back().step.order;
  plan.swim.not_before_h = end_of(plan.steps.back()) + plan.retest.after_h;
}

void set_predicted(DraftedPlan& plan, const Draft& d, const ProofResult& proof) {
  if (plan.steps.empty() || !d.s.vessel.volume) return;
  for (const char* analyte : {"ph", "total_alkalinity", "calcium_hardness", "cyanuric_acid", "free_chlorine",
                              "total_bromine", "salt", "borate", "biguanide", "peroxide"}) {
    if (!d.s.usable(analyte) || (std::string_view(analyte) == "ph" && !d.modelled)) continue;
    Predicted p{d.amount(analyte), std::nullopt};
    if (const auto sd = proof.sd.find(analyte); sd != proof.sd.end()) p.sd = sd->second;
    plan.predicted.emplace(analyte, p);
  }
}

// Whether the proof made a dose smaller that moves this reading, or ended the plan before one.
bool was_cut(const Draft& d, const std::string& analyte) {
  if (d.scales.empty()) return true;
  const std::string name = analyte == "free_chlorine" || analyte == "total_chlorine" ? "chlorine"
                           : analyte == "total_bromine"                              ? "bromine"
                           : analyte == "calcium_hardness"                           ? "calcium"
                           : analyte == "cyanuric_acid"                              ? "stabilizer"
                           : analyte == "total_alkalinity"                           ? "alkalinity"
                                                                                     : analyte;
  const bool ended = d.steps.size() >= d.most_steps;
  return ended || std::any_of(d.scales.begin(), d.scales.end(), [&](const auto& scale) {
           return scale.first.find(name) != std::string::npos ||
                  ((analyte == "si_calcite") && scale.first.find("ph") != std::string::npos);
         });
}

// Why this stands outside its target when the plan is done; the sentence says what comes next.
std::string reason_for(const Draft& d, const std::string& analyte, bool above, bool edge) {
  const Situation& s = d.s;
  if (edge) return "at_edge";
  if (d.cut && was_cut(d, analyte)) return "cut_for_harm";
  if (!s.vessel.volume) return "volume_unknown";
  const bool drains = std::any_of(d.steps.begin(), d.steps.end(),
                                  [](const DraftStep& x) { return x.step.action == Action::drain_refill; });
  if (const auto held = d.held_back.find(analyte);
      held != d.held_back.end() && held->second == "fill_too_high")
    return held->second;
  if (drains && d.ends && !s.fill) return "fill_unknown";
  if (drains && d.ends) return "after_drain";
  if (const auto k = s.known.find(analyte); k != s.known.end() && k->second.doubtful) return "reading_repeat";
  if (d.held_back.contains("repeat"))
    return analyte == "free_chlorine" || analyte == "total_chlorine" ? "repeat_diluted" : "after_repeat";
  if (const auto held = d.held_back.find(analyte); held != d.held_back.end()) return held->second;
  if (analyte == "iron" || analyte == "copper" || analyte == "manganese") {
    const auto brought = in_fill(s, analyte);
    const auto aim = d.aim(analyte);
    return brought && aim && aim->range.high && *brought > *aim->range.high ? "tap_brings_it"
                                                                            : "bound_not_removed";
  }
  if (analyte == "phosphate") return "once_clear";
  if (above && (analyte == "free_chlorine" || analyte == "total_bromine")) return "falls_by_itself";
  const bool balance = analyte == "ph" || analyte == "total_alkalinity" || analyte == "si_calcite";
  if (above && !balance) {
    if (d.held_back.contains("drain")) return "plaster_cures";
    return drains ? "drain_again" : "needs_drain";
  }
  if (analyte == "salt" && plaster_cures(s)) return "plaster_cures";
  if (analyte == "cyanuric_acid")
    return s.bottle.occasion == Occasion::closing ? "at_opening" : "once_chlorine_holds";
  if (balance && !may_balance(d)) return "read_again";
  if (above && analyte == "total_alkalinity" && plaster_cures(s)) return "plaster_first";
  if (!d.not_sold.empty()) return "no_product";
  if (balance && !above && analyte == "total_alkalinity") return "next_bottle";
  return balance ? "lives_with_it" : "next_bottle";
}

// "ph_high" -> "ph_edge".
std::string edge_id(const std::string& id) {
  return id.substr(0, id.rfind('_')) + "_edge";
}

// A step names only findings of this plan; one that prepares another stands for the worst of them.
void keep_found(DraftedPlan& plan) {
  for (DraftStep& d : plan.steps) {
    for (std::string& id : d.step.for_findings)
      if (const std::string edge = edge_id(id);
          !has_finding(plan.findings, id) && has_finding(plan.findings, edge))
        id = edge;
    std::erase_if(d.step.for_findings,
                  [&](const std::string& id) { return !has_finding(plan.findings, id); });
    if (d.step.for_findings.empty() && d.step.action == Action::add && !plan.findings.empty())
      d.step.for_findings = {plan.findings.front().id};
  }
}

}  // namespace

bool plaster_cures(const Situation& s) {
  return s.vessel.plaster_age_days && *s.vessel.plaster_age_days < kPlasterCures;
}

bool needs_retest_to_open(const Situation& s, const std::vector<Finding>& findings) {
  const Known* ph = s.usable("ph");
  if (ph && (ph->value <= 7.0 || ph->value > 8.0)) return true;
  for (const char* analyte : {"free_chlorine", "total_bromine"})
    if (const Known* k = s.fresh(analyte); k && (k->value < 0.2 || k->value > 10)) return true;
  return std::any_of(findings.begin(), findings.end(), [](const Finding& f) {
    return closes_water(f.id) && f.id != "free_chlorine_low" && f.id != "total_bromine_low" &&
           f.id != "biguanide_low";
  });
}

std::vector<std::string> closing_ids(const std::vector<Finding>& findings) {
  std::vector<std::string> out;
  for (const Finding& f : findings) {
    const bool ph = (f.id == "ph_low" || f.id == "ph_high") && f.concern == Concern::health;
    if (ph || closes_water(f.id)) out.push_back(f.id);
  }
  return out;
}

void set_retest(DraftedPlan& plan, const Draft& d) {
  const bool dosed = std::any_of(plan.steps.begin(), plan.steps.end(),
                                 [](const DraftStep& s) { return s.step.action == Action::add; });
  const bool ends_in_retest = !plan.steps.empty() && plan.steps.back().step.action == Action::retest;
  plan.retest.after_h = ends_in_retest                                   ? 0
                        : dosed || !plan.swim.now || !plan.steps.empty() ? kRetest
                                                                         : kRoutineRetest;
  std::vector<AnalyteId>& again = plan.retest.analytes;
  const auto want = [&](const AnalyteId& a) {
    if (std::find(again.begin(), again.end(), a) == again.end()) again.push_back(a);
  };
  // Stabilizer that still dissolves reads low, and would be dosed twice.
  const bool dissolves = std::any_of(plan.steps.begin(), plan.steps.end(),
                                     [](const DraftStep& s) { return s.step.chemical == "cyanuric_acid"; });
  if (const auto sanitizer = sanitizer_analyte(d.s.vessel)) want(*sanitizer);
  if (d.s.chlorine()) want("total_chlorine");
  want("ph");
  want("total_alkalinity");
  for (const Finding& f : plan.findings)
    if (f.analyte) want(*f.analyte);
  if (dissolves) std::erase(again, "cyanuric_acid");
  const bool drained = std::any_of(plan.steps.begin(), plan.steps.end(),
                                   [](const DraftStep& s) { return s.step.action == Action::drain_refill; });
  if (drained) want("calcium_hardness");  // what the fill water brought
  // What the occasion itself may have brought in or taken away.
  const Occasion occasion = d.s.bottle.occasion.value_or(Occasion::routine);
  const bool fresh_water = occasion == Occasion::opening || occasion == Occasion::new_fill;
  if (fresh_water || occasion == Occasion::closing) want("calcium_hardness");
  if (fresh_water)
    for (const char* metal : {"iron", "copper"}) want(metal);
  if ((fresh_water || occasion == Occasion::after_storm) && d.s.chlorine() &&
      d.s.vessel.place == Place::outdoor && !dissolves)
    want("cyanuric_acid");
  if (occasion != Occasion::routine || plaster_cures(d.s))
    plan.retest.after_h = std::min(plan.retest.after_h, occasion == Occasion::closing ? 72.0 : kRetest);
}

void set_remains(DraftedPlan& plan, const Draft& told) {
  Draft d = told;  // as it will be once a shock is used up
  d.totals = told.used_up();
  const auto judge = [&](const std::string& analyte, double value, const Target& t) {
    const bool low = t.low && value < *t.low - 1e-6, high = t.high && value > *t.high + 1e-6;
    const AnalyteId id = analyte == "si_calcite" ? "si_edge" : analyte + "_edge";
    const bool edge = has_finding(plan.findings, id);
    if (low || high) plan.remains.push_back({analyte, value, t, reason_for(d, analyte, high, edge), ""});
  };
  for (const auto& [analyte, k] : d.s.known) {
    const auto aim = d.aim(analyte);
    if (!aim || !k.usable || k.from_earlier || (analyte == "ph" && !d.modelled)) continue;
    if (analyte == "free_chlorine" && d.shocked()) continue;  // stands overnight, and the sheet says so
    judge(analyte, d.amount(analyte), aim->range);
  }
  const auto si = d.aim("si_calcite");
  const auto w = d.water();
  const auto warm =
      w ? at_temperature(*w, d.s.vessel_temperature) : tl::unexpected(Refusal::does_not_balance);
  if (!si || !warm || !d.s.fresh("calcium_hardness")) return;
  if (const auto index = warm->si_calcite()) judge("si_calcite", *index, si->range);
}

// Sun and bathers use up 1 to 3 mg/L of free chlorine a day (common practice, no source): where the next
// bottle is further off than a day, the customer is told what holds it up.
void set_holding(DraftedPlan& plan, const Draft& d) {
  constexpr double kHold = 1.5, kFurther = 36;  // mg/L; hours
  const auto aim = d.aim("free_chlorine");
  const bool outdoor_pool = d.s.vessel.place == Place::outdoor && kind_of(d.s.vessel) == VesselKind::pool;
  if (!outdoor_pool || d.s.vessel.sanitizer != Sanitizer::chlorine || !aim || !aim->range.low) return;
  if (d.s.bottle.occasion == Occasion::closing || plan.steps.empty()) return;
  const double bottle = end_of(plan.steps.back()) + plan.retest.after_h;
  for (auto step = plan.steps.rbegin(); step != plan.steps.rend(); ++step) {
    const Substance* sub = step->step.chemical ? find_substance(*step->step.chemical) : nullptr;
    if (!sub || !sub->is("chlorine") || step->supply < 0) continue;
    const DoseRow* row = find_dose(sub->id);
    if (bottle - step->step.start_h < kFurther || !row) return;
    const double mol = kHold * 1e-3 / weight::kChlorine / row->per_mole.chlorine * d.kilograms();
    step->hold = amount_of(d.supplies()[static_cast<size_t>(step->supply)].product, mol);
    step->hold_below = *aim->range.low;
    return;
  }
}

ProofResult finish_plan(DraftedPlan& plan, const Draft& d, const PlanOptions& options) {
  ProofResult proof = prove(d, options, !needs_retest_to_open(d.s, plan.findings));
  plan.steps = d.steps;
  keep_found(plan);
  if (proof.proof.draws > 0) plan.proof = proof.proof;
  set_retest(plan, d);
  set_holding(plan, d);
  set_predicted(plan, d, proof);
  set_remains(plan, d);
  plan.cost = {d.to_buy, d.weighed.value_or(0)};
  set_swim(plan, d);
  return proof;
}

}  // namespace brimline
