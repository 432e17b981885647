// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/planner.h"

#include <algorithm>

#include "analysis/findings/find.h"

namespace brimline {

namespace {

constexpr double kHarmAimed = 0.006;  // 0.01 is the limit; the quick draws are fewer
constexpr int kMostCuts = 8;
constexpr int kQuickDraws = 400;  // while cutting
constexpr double kRoutineRetest = 168, kRetest = 24;

bool clipped_or_rejected(const Situation& s, std::string_view analyte) {
  const auto k = s.known.find(analyte);
  return k != s.known.end() && !k->second.usable;
}

// Health comes before scale: chlorine does not wait where pH is near enough for it to work.
void plan_in_order(Draft& d, const std::vector<Finding>& findings) {
  const Situation& s = d.s;
  if (has_finding(findings, "too_hot")) d.act(Action::cool, "cool", {"too_hot"}, 4);
  if (s.bottle.occasion == Occasion::opening) {
    d.act(Action::clean_filter, "clean_filter", {}, 1);
    d.act(Action::circulate, "circulate", {}, d.turnover_h());
  }
  if (s.has(Sign::tablets_in_use) && has_finding(findings, "cyanuric_acid_high"))
    d.act(Action::remove_tablets, "remove_tablets", {"tablets_in_use", "cyanuric_acid_high"}, 0);
  if (s.vessel.sanitizer == Sanitizer::salt_chlorine && has_finding(findings, "free_chlorine_high"))
    d.act(Action::set_generator, "generator_down", {"free_chlorine_high"}, 0);
  if (chlorine_plan(d).note == "repeat_diluted") {
    plan_clearing(d);
    return plan_sanitizer(d);
  }
  plan_dilution(d);
  if (!d.may_dose()) return;
  plan_metals(d);
  const ChlorinePlan first = chlorine_plan(d);
  if (first.need == ChlorineNeed::not_yet) {
    plan_balance(d);
    plan_clearing(d);
    return plan_sanitizer(d);
  }
  const bool unsafe =
      first.need != ChlorineNeed::none || (!s.chlorine() && (has_finding(findings, "total_bromine_low") ||
                                                             has_finding(findings, "biguanide_low")));
  if (unsafe) {
    // Hypochlorous acid is 55 % of free chlorine at pH 7.5 and 28 % at 8.0 (CDC MAHC annex 5.7.3.1.2.2).
    plan_urgent_ph(d, 7.0, first.to_add_mg_l > 5 ? 7.6 : 7.8);
    plan_sanitizer(d);
    if (s.algae()) plan_clearing(d);
    plan_balance(d);
  } else {
    plan_balance(d);
    plan_sanitizer(d);
  }
  plan_calcium(d);
  plan_salt(d);
  if (s.bottle.occasion != Occasion::closing && first.need != ChlorineNeed::shock) plan_stabilizer(d);
  if (s.vessel.sanitizer == Sanitizer::salt_chlorine && has_finding(findings, "free_chlorine_low"))
    d.act(Action::set_generator, "generator_up", {"free_chlorine_low"}, 0);
  if (!(unsafe && s.algae())) plan_clearing(d);
  if (!unsafe) plan_phosphate(d);
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
  const bool gated = needs_retest_to_open(d.s, plan.findings) || d.ends || plan.steps.empty() ||
                     !d.s.fresh(sanitizer_analyte(d.s.vessel).value_or("free_chlorine"));
  const DraftStep* last = nullptr;
  for (const DraftStep& step : plan.steps)
    if (step.note == "raise_chlorine" || step.note == "raise_bromine" || step.note == "raise_biguanide")
      last = &step;
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

// A step names only findings of this plan; one that prepares another stands for the worst of them.
void keep_found(DraftedPlan& plan) {
  for (DraftStep& d : plan.steps) {
    std::erase_if(d.step.for_findings,
                  [&](const std::string& id) { return !has_finding(plan.findings, id); });
    if (d.step.for_findings.empty() && d.step.action == Action::add && !plan.findings.empty())
      d.step.for_findings = {plan.findings.front().id};
  }
}

// A step that could harm in more than one draw of a hundred is made smaller and the rest left to the retest.
void prove_and_cut(DraftedPlan& plan, const Draft& empty, const PlanOptions& options) {
  const bool swims = !needs_retest_to_open(empty.s, plan.findings);
  const PlanOptions quick{std::min(options.draws, kQuickDraws), options.seed};
  std::map<std::string, double> scales;
  size_t most_steps = empty.most_steps;
  std::optional<Draft> draft(empty);
  plan_in_order(*draft, plan.findings);
  ProofResult proof = prove(*draft, quick, swims);
  for (int i = 0; i < kMostCuts && proof.proof.harm > kHarmAimed; ++i) {
    const auto worst = std::max_element(proof.harm_by_step.begin(), proof.harm_by_step.end());
    const auto index = static_cast<size_t>(worst - proof.harm_by_step.begin());
    const DraftStep& step = draft->steps[index];
    double& scale = scales.emplace(step.note, 1.0).first->second;
    if (step.step.active_mol && scale > 0.5 && i + 2 < kMostCuts)
      scale *= 0.75;
    else
      most_steps = std::min(most_steps, index);
    draft.emplace(empty);
    draft->scales = scales;
    draft->most_steps = most_steps;
    draft->cut = true;
    plan_in_order(*draft, plan.findings);
    proof = prove(*draft, quick, swims);
  }
  if (options.draws > quick.draws) proof = prove(*draft, options, swims);
  Draft& d = *draft;
  if (d.cut) {
    d.act(Action::retest, "retest_then_rest", {}, 0);
    d.ends = true;
  }
  plan.steps = d.steps;
  keep_found(plan);
  if (proof.proof.draws > 0) plan.proof = proof.proof;
  set_retest(plan, d);
  set_predicted(plan, d, proof);
  set_swim(plan, d);
}

}  // namespace

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
  prove_and_cut(plan, empty, options);
  return plan;
}

}  // namespace brimline
