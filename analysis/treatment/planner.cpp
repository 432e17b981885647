// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/planner.h"

#include <algorithm>

#include "analysis/findings/find.h"
#include "analysis/treatment/outcome.h"
#include "analysis/water/doses.h"

namespace brimline {

namespace {

constexpr double kHarmLimit = 0.01;   // of the contract
constexpr double kHarmAimed = 0.006;  // in the quick draws, which are fewer
constexpr int kMostCuts = 8;
constexpr double kLowestShockPh = 7.3, kShockPhStep = 0.2;  // how far acid is brought before a shock
constexpr int kQuickDraws = 300;                            // while cutting
constexpr double kCutPh = 7.6;    // where chlorine would have to be made smaller for its pH
constexpr double kHoldsOff = 10;  // mg/L of stabilizer from which chlorine outlasts a day of sun, from memory

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
    d.act(Action::circulate, "circulate", {}, d.turnover_h());
    d.act(Action::clean_filter, "clean_filter", {}, 1);
  }
  const bool pours =
      chlorine_plan(d).need == ChlorineNeed::raise || chlorine_plan(d).need == ChlorineNeed::shock;
  if (plaster_cures(s)) d.act(Action::brush, "brush_plaster", {}, 1);
  if (s.has(Sign::tablets_in_use) && (pours || s.algae() || has_finding(findings, "cyanuric_acid_high")))
    d.act(Action::remove_tablets, "remove_tablets", {"tablets_in_use", "cyanuric_acid_high"}, 0, {},
          {"wet_tablets"});
  if (s.vessel.sanitizer == Sanitizer::salt_chlorine && has_finding(findings, "free_chlorine_high"))
    d.act(Action::set_generator, "generator_down", {"free_chlorine_high"}, 0);
}

void end_with(Draft& d, const ChlorinePlan& why) {
  d.held_back.emplace("free_chlorine", why.note);
  std::vector<std::string> cautions;
  if (d.s.vessel.place == Place::indoor && combined_high(d)) cautions = {"cover_off"};
  d.act(Action::retest, why.note, why.for_findings, 0, {}, std::move(cautions));
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

// Whether the chlorine wanted would have to be made smaller for the pH it brings.
bool cut_for_ph(const Draft& d, const ChlorinePlan& chlorine) {
  const double wanted = chlorine.to_add_mg_l * 1e-3 / weight::kChlorine;
  const auto product = d.choose({"sodium_hypochlorite", "calcium_hypochlorite"}, wanted * d.kilograms());
  const auto now = d.ph_with(d.totals);
  if (chlorine.need != ChlorineNeed::raise || !product || !now || wanted <= 0) return false;
  const std::string& id = d.supplies()[*product].product.substance;
  const auto then = add(d.totals, id, wanted);
  const auto ph = then ? d.ph_with(*then) : std::nullopt;
  return ph && *ph > d.safe_high() && *ph > *now;
}

// A reading that is to be taken again and may call for new water: what would be dosed before goes out with
// it.
bool may_be_drained(const Draft& d) {
  return std::any_of(d.s.must_repeat.begin(), d.s.must_repeat.end(), [&](const AnalyteId& analyte) {
    static constexpr std::string_view drains[] = {"cyanuric_acid", "calcium_hardness", "salt", "tds"};
    const Known* k = d.s.usable(analyte);
    const auto aim = d.aim(analyte);
    return std::find(std::begin(drains), std::end(drains), analyte) != std::end(drains) && k && aim &&
           aim->range.high && k->value > *aim->range.high;
  });
}

// Health comes before scale: chlorine does not wait where pH is near enough for it to work.
void plan_in_order(Draft& d, const std::vector<Finding>& findings) {
  const Situation& s = d.s;
  plan_first(d, findings);
  const ChlorinePlan before = chlorine_plan(d);
  if (before.note == "repeat_diluted") {
    d.held_back.emplace("repeat", "repeat_diluted");
    if (s.algae()) d.act(Action::brush, "brush", {"green_water", "slimy_walls"}, 1);
    return end_with(d, before);
  }
  plan_dilution(d);
  if (!d.ends) plan_urgent_air(d);
  if (!d.may_dose()) return;
  plan_debris(d);
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
  d.new_water_likely = may_be_drained(d);
  if (d.new_water_likely)
    for (const char* analyte : {"salt", "calcium_hardness", "cyanuric_acid", "borate"})
      d.held_back.emplace(analyte, "reading_first");
  order.stabilizer =
      !order.shock && first.need != ChlorineNeed::not_yet && !d.new_water_likely && stabilizer_may_rise(d);
  order.salt = s.vessel.sanitizer == Sanitizer::salt_chlorine && !plaster_cures(s) && !d.new_water_likely;
  if (s.vessel.sanitizer == Sanitizer::bromine || has_finding(findings, "biguanide_low")) plan_sanitizer(d);
  const bool cut = has_finding(findings, "ph_high") && cut_for_ph(d, first);
  if (order.chlorine_first)
    plan_urgent_acid(d, order.shock ? d.shock_ph : cut ? kCutPh : std::min(d.near_ph, kNearPh));
  plan_doses(d, order);
  if (s.vessel.sanitizer == Sanitizer::biguanide && !has_finding(findings, "biguanide_low"))
    plan_sanitizer(d);
  plan_lowered_chlorine(d);
  if (first.need == ChlorineNeed::not_yet) {
    if (s.algae()) d.act(Action::brush, "brush", {"green_water", "slimy_walls"}, 1);
    return end_with(d, first);
  }
  if (s.vessel.sanitizer == Sanitizer::salt_chlorine && has_finding(findings, "free_chlorine_low") &&
      !d.new_water_likely)
    d.act(Action::set_generator, "generator_up", {"free_chlorine_low"}, 0);
  if (!(order.shock && s.algae())) plan_clearing(d);
  if (!order.shock) plan_phosphate(d);
  plan_winter(d);
  warn_of_sun(d);
  if (d.steps.empty() && !s.must_repeat.empty()) d.act(Action::retest, "read_again", {"reading_repeat"}, 0);
}

// A step that could harm in more than one draw of a hundred is made smaller and the rest left to the retest.
// Few draws find what to cut, all of them say whether that was enough.
class Cutter {
 public:
  Cutter(const Draft& empty, const std::vector<Finding>& findings, const PlanOptions& options)
      : empty_(empty), findings_(findings), options_(options), most_steps_(empty.most_steps) {}

  Draft drafted() {
    draft_anew();
    // What the doses are compared by is weighed before anything is cut: what is cut hangs on the doses.
    const std::optional<double> weighed = draft_->weighed;
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
    draft_->weighed = weighed;
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
    draft_->near_ph = near_ph_;
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
    if (step.note == "raise_chlorine" && near_ph_ > kCutPh && cuts_ + 2 < kMostCuts) {
      near_ph_ = kCutPh;
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
  double near_ph_ = empty_.near_ph;
  int cuts_ = 0;
  std::optional<Draft> draft_;
};

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
  finish_plan(plan, Cutter(empty, plan.findings, options).drafted(), options);
  return plan;
}

}  // namespace brimline
