// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/planner.h"

#include <algorithm>

#include "analysis/findings/find.h"

namespace brimline {

namespace {

constexpr double kHarmLimit = 0.01;   // of the contract
constexpr double kHarmAimed = 0.006;  // in the quick draws, which are fewer
constexpr int kMostCuts = 8;
constexpr double kLowestShockPh = 7.3, kShockPhStep = 0.2;  // how far acid is brought before a shock
constexpr int kQuickDraws = 400;                            // while cutting
constexpr double kHoldsOff = 10;  // mg/L of stabilizer from which chlorine outlasts a day of sun, from memory
constexpr double kRoutineRetest = 168, kRetest = 24;

bool plaster_cures(const Situation& s) {
  return s.vessel.plaster_age_days && *s.vessel.plaster_age_days < kPlasterCures;
}

bool clipped_or_rejected(const Situation& s, std::string_view analyte) {
  const auto k = s.known.find(analyte);
  return k != s.known.end() && !k->second.usable;
}

// Before anything is poured: heater, tablets, generator, and what the occasion asks.
void plan_first(Draft& d, const std::vector<Finding>& findings) {
  const Situation& s = d.s;
  if (has_finding(findings, "too_hot")) d.act(Action::cool, "cool", {"too_hot"}, 4);
  if (s.bottle.occasion == Occasion::opening) {
    d.act(Action::vacuum, "cover_water_off", {}, 1);
    d.act(Action::clean_filter, "clean_filter", {}, 1);
    d.act(Action::circulate, "circulate", {}, d.turnover_h());
  }
  const bool pours =
      chlorine_plan(d).need == ChlorineNeed::raise || chlorine_plan(d).need == ChlorineNeed::shock;
  if (s.has(Sign::tablets_in_use) && (pours || has_finding(findings, "cyanuric_acid_high")))
    d.act(Action::remove_tablets, "remove_tablets", {"tablets_in_use", "cyanuric_acid_high"}, 0);
  if (s.vessel.sanitizer == Sanitizer::salt_chlorine && has_finding(findings, "free_chlorine_high"))
    d.act(Action::set_generator, "generator_down", {"free_chlorine_high"}, 0);
}

void end_with(Draft& d, const ChlorinePlan& why) {
  d.held_back.emplace("free_chlorine", why.note);
  d.act(Action::retest, why.note, why.for_findings, 0);
  d.ends = true;
}

// Outdoors sunlight takes unstabilised free chlorine within hours: its half-life is about half an hour
// (common practice, no source). One dose does not last until the retest.
void warn_of_sun(Draft& d) {
  const Known* cyanuric = d.s.fresh("cyanuric_acid");
  const bool pool = kind_of(d.s.vessel) == VesselKind::pool && d.s.vessel.place == Place::outdoor;
  if (!pool || !cyanuric || d.amount("cyanuric_acid") >= kHoldsOff) return;
  for (DraftStep& step : d.steps)
    if (step.note == "raise_chlorine") step.step.cautions.push_back("sun_takes_it");
}

// Health comes before scale: chlorine does not wait where pH is near enough for it to work.
void plan_in_order(Draft& d, const std::vector<Finding>& findings) {
  const Situation& s = d.s;
  plan_first(d, findings);
  const ChlorinePlan before = chlorine_plan(d);
  if (before.note == "repeat_diluted") {
    d.held_back.emplace("repeat", "repeat_diluted");
    plan_clearing(d);
    return end_with(d, before);
  }
  plan_dilution(d);
  if (!d.may_dose()) return;
  plan_metals(d);
  const ChlorinePlan first = chlorine_plan(d);
  DoseOrder order;
  order.shock = first.need == ChlorineNeed::shock;
  order.chlorine = s.chlorine() && first.need != ChlorineNeed::not_yet && s.fresh("free_chlorine");
  if (order.shock) {
    order.exactly_mg_l = d.amount("free_chlorine") + first.to_add_mg_l;
    order.chlorine_note = first.note;
    order.chlorine_for = first.for_findings;
  }
  order.chlorine_first =
      first.need == ChlorineNeed::raise || order.shock || has_finding(findings, "total_bromine_low");
  order.stabilizer = !order.shock && first.need != ChlorineNeed::not_yet && stabilizer_may_rise(d);
  order.salt = s.vessel.sanitizer == Sanitizer::salt_chlorine && !plaster_cures(s);
  if (s.vessel.sanitizer == Sanitizer::bromine || has_finding(findings, "biguanide_low")) plan_sanitizer(d);
  if (order.chlorine_first) plan_urgent_acid(d, order.shock ? d.shock_ph : 7.8);
  plan_doses(d, order);
  if (s.vessel.sanitizer == Sanitizer::biguanide && !has_finding(findings, "biguanide_low"))
    plan_sanitizer(d);
  plan_lowered_chlorine(d);
  if (first.need == ChlorineNeed::not_yet) {
    plan_clearing(d);
    return end_with(d, first);
  }
  if (s.vessel.sanitizer == Sanitizer::salt_chlorine && has_finding(findings, "free_chlorine_low"))
    d.act(Action::set_generator, "generator_up", {"free_chlorine_low"}, 0);
  if (!(order.shock && s.algae())) plan_clearing(d);
  if (!order.shock) plan_phosphate(d);
  plan_winter(d);
  warn_of_sun(d);
  if (d.steps.empty() && !s.must_repeat.empty()) d.act(Action::retest, "read_again", {"reading_repeat"}, 0);
}

double end_of(const DraftStep& d) {
  return d.step.start_h + (d.step.portions - 1) * d.step.portion_gap_h + d.step.wait_h;
}

// Closed until a retest: section "home plan, but no swimming until retest" of the trade's rules.
bool needs_retest_to_open(const Situation& s, const std::vector<Finding>& findings) {
  const Known* ph = s.usable("ph");
  if (ph && (ph->value < 7.0 || ph->value > 8.0)) return true;
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
    if (step.note == "raise_chlorine" || step.note == "raise_biguanide" || (biguanide && dose)) last = &step;
    slow = slow || step.note == "raise_bromine";
  }
  const bool gated = needs_retest_to_open(d.s, plan.findings) || slow || d.ends || plan.steps.empty() ||
                     !d.s.fresh(sanitizer_analyte(d.s.vessel).value_or("free_chlorine"));
  if (!gated && last) {
    plan.swim.after_step = last->step.order;
    plan.swim.not_before_h =
        last->step.start_h + std::max(last->swim_wait_h, d.s.is_spa() ? 1.0 : last->step.wait_h);
    return;
  }
  if (plan.steps.empty()) return;
  plan.swim.after_step = plan.steps.back().step.order;
  plan.swim.not_before_h = end_of(plan.steps.back()) + plan.retest.after_h;
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
  if (const auto sanitizer = sanitizer_analyte(d.s.vessel)) want(*sanitizer);
  if (d.s.chlorine()) want("total_chlorine");
  want("ph");
  want("total_alkalinity");
  for (const Finding& f : plan.findings)
    if (f.analyte) want(*f.analyte);
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
      d.s.vessel.place == Place::outdoor)
    want("cyanuric_acid");
  if (occasion != Occasion::routine || plaster_cures(d.s))
    plan.retest.after_h = std::min(plan.retest.after_h, occasion == Occasion::closing ? 72.0 : kRetest);
}

void set_predicted(DraftedPlan& plan, const Draft& d, const ProofResult& proof) {
  if (plan.steps.empty() || !d.s.vessel.volume) return;
  for (const char* analyte :
       {"ph", "total_alkalinity", "calcium_hardness", "cyanuric_acid", "free_chlorine", "total_bromine"}) {
    if (!d.s.usable(analyte) || (std::string_view(analyte) == "ph" && !d.modelled)) continue;
    Predicted p{d.amount(analyte), std::nullopt};
    if (const auto sd = proof.sd.find(analyte); sd != proof.sd.end()) p.sd = sd->second;
    plan.predicted.emplace(analyte, p);
  }
}

// Why this stands outside its target when the plan is done; the sentence says what comes next.
std::string reason_for(const Draft& d, const std::string& analyte, bool above, bool edge) {
  const Situation& s = d.s;
  if (edge) return "at_edge";
  if (d.cut) return "cut_for_harm";
  if (!s.vessel.volume) return "volume_unknown";
  const bool drains = std::any_of(d.steps.begin(), d.steps.end(),
                                  [](const DraftStep& x) { return x.step.action == Action::drain_refill; });
  if (const auto held = d.held_back.find(analyte);
      held != d.held_back.end() && held->second == "fill_too_high")
    return held->second;
  if (drains && d.ends && !s.fill) return "fill_unknown";
  if (drains && d.ends) return "after_drain";
  if (const auto k = s.known.find(analyte); k != s.known.end() && k->second.doubtful) return "reading_repeat";
  if (d.held_back.contains("repeat")) return "repeat_diluted";
  if (const auto held = d.held_back.find(analyte); held != d.held_back.end()) return held->second;
  if (analyte == "iron" || analyte == "copper" || analyte == "manganese") return "bound_not_removed";
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
  if (!d.not_sold.empty()) return "no_product";
  if (balance && !above && analyte == "total_alkalinity") return "next_bottle";
  return balance ? "lives_with_it" : "next_bottle";
}

// Every reading of this bottle that ends outside its target, and the index they make.
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

// A step that could harm in more than one draw of a hundred is made smaller and the rest left to the retest.
// Few draws find what to cut, all of them say whether that was enough.
class Cutter {
 public:
  Cutter(const Draft& empty, const std::vector<Finding>& findings, const PlanOptions& options)
      : empty_(empty), findings_(findings), options_(options), most_steps_(empty.most_steps) {}

  Draft drafted() {
    draft_anew();
    for (; cuts_ < kMostCuts; ++cuts_) {
      const PlanOptions quick{std::min(options_.draws, kQuickDraws), options_.seed};
      ProofResult proof = prove(*draft_, quick, swims_);
      if (proof.proof.harm <= kHarmAimed) {
        if (options_.draws <= quick.draws) break;
        proof = prove(*draft_, options_, swims_);
        if (proof.proof.harm <= kHarmLimit) break;
      }
      cut(proof);
    }
    DraftedPlan probe;
    set_remains(probe, *draft_);
    if (draft_->cut && !draft_->ends && !probe.remains.empty()) {
      draft_->act(Action::retest, "retest_then_rest", {}, 0);
      draft_->ends = true;
    }
    return std::move(*draft_);
  }

 private:
  void draft_anew() {
    draft_.emplace(empty_);
    draft_->scales = scales_;
    draft_->shock_ph = shock_ph_;
    draft_->most_steps = most_steps_;
    draft_->cut = !scales_.empty() || most_steps_ < empty_.most_steps;
    plan_in_order(*draft_, findings_);
  }

  void cut(const ProofResult& proof) {
    const auto worst = std::max_element(proof.harm_by_step.begin(), proof.harm_by_step.end());
    const auto index = static_cast<size_t>(worst - proof.harm_by_step.begin());
    const DraftStep& step = draft_->steps[index];
    if (step.whole) {
      // All of it or none: half a shock makes matters worse. Acid first makes room for the pH it brings.
      if (shock_ph_ > kLowestShockPh && cuts_ + 2 < kMostCuts)
        shock_ph_ -= kShockPhStep;
      else
        most_steps_ = std::min(most_steps_, index);
      return draft_anew();
    }
    double& scale = scales_.emplace(step.note, 1.0).first->second;
    if (step.step.active_mol && scale > 0.5 && cuts_ + 2 < kMostCuts)
      scale *= 0.75;
    else
      most_steps_ = std::min(most_steps_, index);
    draft_anew();
  }

  const Draft& empty_;
  const std::vector<Finding>& findings_;
  const PlanOptions& options_;
  const bool swims_ = !needs_retest_to_open(empty_.s, findings_);
  std::map<std::string, double> scales_;
  size_t most_steps_;
  double shock_ph_ = empty_.shock_ph;
  int cuts_ = 0;
  std::optional<Draft> draft_;
};

}  // namespace

ProofResult finish_plan(DraftedPlan& plan, const Draft& d, const PlanOptions& options) {
  ProofResult proof = prove(d, options, !needs_retest_to_open(d.s, plan.findings));
  plan.steps = d.steps;
  keep_found(plan);
  if (proof.proof.draws > 0) plan.proof = proof.proof;
  set_retest(plan, d);
  set_predicted(plan, d, proof);
  set_remains(plan, d);
  plan.cost = {d.to_buy, d.weighed};
  set_swim(plan, d);
  return proof;
}

std::optional<std::string> why_no_home_plan(const Situation& s) {
  if (s.has(Sign::chemicals_mixed_or_fuming)) return "chemicals_mixed_or_fuming";
  if (s.bottle.incident) {
    const Incident i = *s.bottle.incident;
    return i == Incident::flood || i == Incident::sewage || i == Incident::illness ? "contaminated"
                                                                                   : "incident";
  }
  if (s.has(Sign::drain_not_visible)) return "drain_not_visible";
  if (s.vessel.use == VesselUse::public_use) return "public_vessel";
  if (!s.vessel.sanitizer) return "sanitizer_unknown";
  const bool was_other = s.vessel.previous_sanitizer && s.vessel.previous_sanitizer != s.vessel.sanitizer;
  if (was_other &&
      (s.vessel.sanitizer == Sanitizer::biguanide || s.vessel.previous_sanitizer == Sanitizer::biguanide))
    return "sanitizer_changed";
  for (const AnalyteId& analyte :
       {AnalyteId("ph"), AnalyteId("total_alkalinity"), *sanitizer_analyte(s.vessel)})
    if (clipped_or_rejected(s, analyte)) return "reading_out_of_range";
  if (s.refusal) return "readings_contradict";
  return std::nullopt;
}

DraftedPlan draft_plan(const Situation& s, const TargetSet& targets, std::span<const Product> shelf,
                       const PlanOptions& options) {
  DraftedPlan plan;
  plan.findings = find_all(s, targets);
  const auto why_not = why_no_home_plan(s);
  const Draft empty(s, targets, shelf);
  if (why_not) {
    Draft d = empty;
    plan.home_plan = false;
    plan.why_not = *why_not;
    const bool again = *why_not == "reading_out_of_range" || *why_not == "readings_contradict";
    d.act(again ? Action::retest : Action::call_professional, *why_not, {}, 0);
    plan.steps = d.steps;
    plan.swim.because = closing_ids(plan.findings);
    plan.swim.now = *why_not == "public_vessel" && plan.swim.because.empty();
    if (!plan.swim.now && plan.swim.because.empty() && !plan.findings.empty())
      plan.swim.because = {plan.findings.front().id};
    set_retest(plan, d);
    return plan;
  }
  finish_plan(plan, Cutter(empty, plan.findings, options).drafted(), options);
  return plan;
}

}  // namespace brimline
