// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/plan/plan_service.h"

#include <algorithm>

#include "station/overnight/overnight_result.h"
#include "station/wording/overnight_words.h"
#include "station/wording/plan_words.h"

namespace brimline {

namespace {

constexpr const char* kProgram = "0.1";

constexpr long kManyDoses = 5;  // of a tub that can be emptied

std::vector<std::string> sheet_cautions(const Words& words, const DraftedPlan& drafted, const Visit& visit,
                                        const ShopSettings& shop) {
  const Vessel& vessel = visit.vessel;
  std::vector<std::string> out;
  const auto say = [&](bool when, const char* id) {
    if (when) out.push_back(caution_text(words, id));
  };
  long doses = 0;
  for (const DraftStep& d : drafted.steps) doses += d.step.action == Action::add ? d.step.portions : 0;
  const bool filters = std::any_of(drafted.steps.begin(), drafted.steps.end(),
                                   [](const DraftStep& d) { return d.note == "filter_on"; });
  const bool tub = kind_of(vessel) != VesselKind::pool && !vessel.in_ground.value_or(false);
  for (const std::string& id : drafted.cautions) out.push_back(caution_text(words, id));
  say(vessel.sanitizer == Sanitizer::biguanide, "sheet_biguanide");
  say(vessel.sanitizer == Sanitizer::bromine, "sheet_bromine");
  const bool unclear = std::any_of(visit.bottle.signs.begin(), visit.bottle.signs.end(), [](Sign sign) {
    return sign == Sign::cloudy || sign == Sign::green_water;
  });
  say(drafted.home_plan && (filters || unclear), "sheet_filter_now");
  say(drafted.why_not == "public_vessel" && !drafted.swim.now, "sheet_public");
  const Occasion occasion = visit.bottle.occasion.value_or(Occasion::routine);
  say(drafted.home_plan && occasion == Occasion::opening, "sheet_opening");
  say(drafted.home_plan && occasion == Occasion::closing, "sheet_closing");
  say(drafted.home_plan && occasion == Occasion::after_storm, "sheet_storm");
  say(true, "sheet_label");
  say(true, "sheet_never_mix");
  out.push_back(nobody_in_text(words, vessel));
  say(drafted.home_plan && doses > 0, "sheet_hours");
  say(tub && doses >= kManyDoses, "sheet_small");
  say(true, "sheet_retest");
  say(drafted.home_plan, "sheet_licensed");
  out.push_back(caution_text(words, "sheet_emergency", shop.emergency_number));
  return out;
}

// A liquid that its label doses by weight is measured in a jug all the same.
ProductAmount as_measured(const DraftStep& d, const ProductAmount& portion) {
  if (!d.density || *d.density <= 0) return portion;
  return {portion.value / *d.density, portion.unit == "kg" ? "L" : "mL"};
}

// A portion that a jug or a household scale does not show.
bool measured_small(const Step& step) {
  if (!step.amount) return false;
  const bool whole = step.amount->unit == "L" || step.amount->unit == "kg";
  const double portion = step.amount->value / step.portions * (whole ? 1000 : 1);  // mL or g
  return portion < (step.amount->unit == "L" || step.amount->unit == "mL" ? 15 : 5);
}

// Name and portion of what is poured; one portion, as the customer measures it.
Step in_words(const Words& words, const DraftStep& d, const WaterCase& where) {
  Step step = d.step;
  const std::string name = d.product_name.empty() ? "" : words.say("product", d.product_name.c_str());
  if (step.amount) {
    const ProductAmount portion{step.amount->value / step.portions, step.amount->unit};
    step.amount_household = less_than_a_tablet(d)
                                ? words.say("plan", phrase("plan", "less than one tablet"))
                                : household_amount(words, as_measured(d, portion), where.units);
  }
  step.text = step_text(words, d, name, step.amount_household, where);
  if (const std::string hold = holding_text(words, d, name, where.units); !hold.empty())
    step.text += " " + hold;
  if (measured_small(step)) step.cautions.emplace_back("small_amount");
  for (std::string& caution : step.cautions) caution = caution_text(words, caution);
  return step;
}

// The demand with its interval stands in the finding, not the dose alone.
void say_findings(const Words& words, const Visit& visit, const WaterCase& where,
                  std::vector<Finding>& findings) {
  for (Finding& f : findings) {
    f.text = finding_text(words, f, where);
    if (visit.bottle.demand_test && (f.id == "chlorine_demand" || f.id == "demand_not_found"))
      f.text = demand_finding(words, result_of(*visit.bottle.demand_test, visit));
  }
  for (Finding& f : findings)
    if (const std::string cause = sign_cause(words, f.id, findings, visit.bottle); !cause.empty())
      f.text += " " + cause;
}

Situation situation_of(const Visit& visit, std::span<const Visit> earlier, const TargetSet& targets,
                       const Supplies& supplies) {
  std::vector<Bottle> bottles;
  bottles.reserve(earlier.size());
  for (const Visit& v : earlier) bottles.push_back(v.bottle);
  Situation situation = make_situation(visit.vessel, visit.bottle, bottles, supplies);
  situation.home_at = visit.home_at;
  weigh_demand(situation, targets);
  return situation;
}

Units units_of(const Visit& visit) {
  return visit.customer && visit.customer->units ? *visit.customer->units : Units::metric;
}

Plan plan_in_words(const DraftedPlan& drafted, const Visit& visit, const Words& words,
                   const ShopSettings& shop) {
  WaterCase where{units_of(visit), visit.vessel.volume, visit.vessel.sanitizer, std::nullopt, {}};
  for (const DraftStep& d : drafted.steps)
    if (d.step.action == Action::add)
      where.dosed_for.insert(d.step.for_findings.begin(), d.step.for_findings.end());
  for (const Reading& reading : visit.bottle.readings)
    if (reading.analyte == "ph") where.ph = reading.value;
  Plan plan;
  plan.home_plan = drafted.home_plan;
  if (!drafted.home_plan) plan.why_not = why_not_text(words, drafted.why_not);
  plan.swim = drafted.swim;
  plan.findings = drafted.findings;
  say_findings(words, visit, where, plan.findings);
  for (const DraftStep& d : drafted.steps) {
    plan.steps.push_back(in_words(words, d, where));
    if (d.note == "demand_test_first" && shop.overnight_due)
      plan.steps.back().text =
          test_running_words(words, visit.home_at.value_or(*shop.overnight_due), *shop.overnight_due);
  }
  plan.predicted = drafted.predicted;
  plan.proof = drafted.proof;
  plan.retest = drafted.retest;
  plan.remains = drafted.remains;
  for (Remains& r : plan.remains) r.text = remains_text(words, r);
  if (drafted.home_plan) plan.cost = drafted.cost;
  plan.cautions = sheet_cautions(words, drafted, visit, shop);
  return plan;
}

// What the step told before and after the change, as the customer would measure it.
std::string dose_told(const Words& words, const DraftStep& d, Units units) {
  if (!d.step.amount) return d.note;
  return household_amount(words, *d.step.amount, units) + " " + words.say("product", d.product_name.c_str());
}

HandChange change_told(const Words& words, const HandOrder& o, const DraftedPlan& before,
                       const DraftedPlan& after, int left_out, Units units) {
  const DraftStep& told = before.steps[static_cast<size_t>(o.step) - 1];
  HandChange out{o.step, "dose", o.staff, o.reason, dose_told(words, told, units), ""};
  if (o.what == HandOrder::What::leave_out) {
    out.what = "leave_out";
    return out;
  }
  if (o.what == HandOrder::What::product) out.what = "product";
  const auto index = static_cast<size_t>(o.step - 1 - left_out);
  if (index < after.steps.size()) out.after = dose_told(words, after.steps[index], units);
  return out;
}

}  // namespace

Plan make_plan(const Visit& visit, std::span<const Visit> earlier, const Shelf& shelf,
               const TargetSet& targets, const Words& words, const PlanOptions& options,
               const ShopSettings& shop) {
  const Situation situation = situation_of(visit, earlier, targets, shop.supplies);
  const DraftedPlan drafted = draft_plan(situation, targets, shelf.products, options);
  Plan plan = plan_in_words(drafted, visit, words, shop);
  plan.basis = {kProgram, targets.id, shelf.id};
  return plan;
}

tl::expected<Plan, std::string> make_changed_plan(const Visit& visit, std::span<const Visit> earlier,
                                                  const Shelf& shelf, const TargetSet& targets,
                                                  std::span<const HandOrder> orders, const Words& words,
                                                  const PlanOptions& options, const ShopSettings& shop) {
  const Situation situation = situation_of(visit, earlier, targets, shop.supplies);
  const DraftedPlan drafted = draft_plan(situation, targets, shelf.products, options);
  const auto changed = change_by_hand(situation, targets, shelf.products, drafted, orders, options);
  if (!changed)
    return tl::unexpected(
        refusal_text(words, changed.error().why, changed.error().step, changed.error().harm));
  const Units units = units_of(visit);
  Plan plan = plan_in_words(*changed, visit, words, shop);
  plan.basis = {kProgram, targets.id, shelf.id};
  for (const HandOrder& o : orders) {
    int left_out = 0;
    for (const HandOrder& other : orders)
      if (other.what == HandOrder::What::leave_out && other.step < o.step) ++left_out;
    plan.changes.push_back(change_told(words, o, drafted, *changed, left_out, units));
  }
  return plan;
}

}  // namespace brimline
