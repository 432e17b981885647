// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/plan_json.h"

#include <nlohmann/json.hpp>

#include "station/json_fields.h"
#include "station/json_object.h"
#include "station/known_ids.h"
#include "station/visit_json.h"

namespace brimline {

using nlohmann::ordered_json;

namespace {

constexpr std::string_view kFormat = "brimline-plan/1";
constexpr int kMost = std::numeric_limits<int>::max();
constexpr Bounds kShare{0, 1, "a share from 0 to 1"};

std::vector<AnalyteId> read_analytes(JsonFields& from, std::string_view key) {
  auto ids = from.texts_if(key);
  for (size_t i = 0; i < ids.size(); ++i)
    if (!is_analyte(ids[i])) from.fault(key, "unknown analyte \"" + ids[i] + "\"", "a known analyte", i);
  return ids;
}

Swim read_swim(JsonFields& from) {
  Swim out;
  const std::string now = from.text("now");
  if (!now.empty() && now != "yes" && now != "no") from.fault("now", "`now` is \"" + now + "\"", "yes or no");
  out.now = now == "yes";
  out.because = from.texts_if("because");
  out.after_step = from.whole_if("after_step", 0, kMost);
  out.not_before_h = from.number_if("not_before_h");
  return out;
}

std::optional<Target> read_target(JsonFields& from) {
  const auto sides = from.numbers_if("target");
  if (!sides) return std::nullopt;
  if (sides->size() == 2) return Target{(*sides)[0], (*sides)[1]};
  from.fault("target", "`target` has " + std::to_string(sides->size()) + " items", "its two ends");
  return std::nullopt;
}

Finding read_finding(JsonFields& from) {
  Finding out;
  out.id = from.text("id");
  out.rank = from.whole("rank", 0, kMost);
  out.concern = from.choice<Concern>("concern");
  out.analyte = from.text_if("analyte");
  if (out.analyte && !is_analyte(*out.analyte))
    from.fault("analyte", "unknown analyte \"" + *out.analyte + "\"", "a known analyte");
  out.value = from.number_if("value");
  out.target = read_target(from);
  out.text = from.text_if("text").value_or("");
  out.sd = from.number_if("sd", kNotNegative);
  return out;
}

After read_after(JsonFields& from) {
  After out;
  for (const std::string& key : from.keys()) {
    if (key == "vessel") continue;
    if (!is_analyte(key)) continue;  // left for finish(), which says that it is not known
    if (const auto value = from.number_if(key)) out.readings[key] = *value;
  }
  if (auto vessel = from.object_if("vessel"))
    for (const std::string& key : vessel->keys())
      if (const auto value = vessel->number_if(key)) out.vessel[key] = *value;
  return out;
}

Step read_step(JsonFields& from) {
  Step out;
  out.order = from.whole("order", 1, kMost);
  out.action = from.choice<Action>("action");
  out.chemical = from.text_if("chemical");
  if (out.chemical && !is_chemical(*out.chemical))
    from.fault("chemical", "unknown chemical \"" + *out.chemical + "\"", "a known chemical");
  out.product = from.text_if("product");
  out.active_mol = from.number_if("active_mol", kNotNegative);
  if (auto amount = from.object_if("amount")) {
    out.amount = ProductAmount{amount->number("value", kNotNegative), amount->text("unit")};
    if (!out.amount->unit.empty() && !is_product_unit(out.amount->unit))
      amount->fault("unit", "unknown unit \"" + out.amount->unit + "\"", "L, mL, kg or g");
  }
  out.from_home = from.flag_if("from_home").value_or(false);
  out.amount_household = from.text_if("amount_household");
  out.portions = from.whole_if("portions", 1, kMost).value_or(1);
  out.portion_gap_h = from.number_if("portion_gap_h", kNotNegative).value_or(0);
  out.start_h = from.number_if("start_h").value_or(0);
  out.wait_h = from.number_if("wait_h", kNotNegative).value_or(0);
  out.fraction = from.number_if("fraction", kShare);
  out.for_findings = from.texts_if("for");
  out.text = from.text_if("text").value_or("");
  out.cautions = from.texts_if("cautions");
  if (auto after = from.object_if("after")) out.after = read_after(*after);
  return out;
}

std::map<AnalyteId, Predicted> read_predicted(JsonFields& from) {
  std::map<AnalyteId, Predicted> out;
  for (const std::string& key : from.keys())
    if (auto item = is_analyte(key) ? from.object_if(key) : std::nullopt)
      out[key] = {item->number("value"), item->number_if("sd", kNotNegative)};
  return out;
}

ordered_json or_null(const std::optional<std::string>& value) {
  return value ? ordered_json(*value) : ordered_json();
}
ordered_json or_null(const std::optional<double>& value) {
  return value ? number_to_json(*value) : ordered_json();
}
ordered_json or_null(const std::optional<int>& value) {
  return value ? ordered_json(*value) : ordered_json();
}

Remains read_remains(JsonFields& from) {
  Remains out;
  out.analyte = from.text("analyte");
  out.value = from.number("value");
  out.target = read_target(from).value_or(Target{});
  out.reason = from.text("reason");
  out.text = from.text_if("text").value_or("");
  return out;
}

HandChange read_change(JsonFields& from) {
  HandChange out;
  out.step = from.whole("step", 1, kMost);
  out.what = from.text("what");
  out.staff = from.text("staff");
  out.reason = from.text("reason");
  out.before = from.text_if("before").value_or("");
  out.after = from.text_if("after").value_or("");
  return out;
}

ordered_json target_to_json(const std::optional<Target>& target) {
  if (!target) return nullptr;
  return ordered_json::array({or_null(target->low), or_null(target->high)});
}

ordered_json remains_to_json(const Remains& r) {
  return json_object("analyte", r.analyte, "value", number_to_json(r.value), "target",
                     target_to_json(r.target), "reason", r.reason, "text", r.text);
}

ordered_json change_to_json(const HandChange& c) {
  return json_object("step", c.step, "what", c.what, "staff", c.staff, "reason", c.reason, "before", c.before,
                     "after", c.after);
}

ordered_json finding_to_json(const Finding& finding) {
  ordered_json out = json_object_of(8);
  json_add(out, "id", finding.id, "rank", finding.rank);
  json_add(out, "concern", name_of(finding.concern));
  json_add(out, "analyte", or_null(finding.analyte));
  json_add(out, "value", or_null(finding.value));
  json_add(out, "target", target_to_json(finding.target));
  json_add(out, "text", finding.text);
  if (finding.sd) json_add(out, "sd", number_to_json(*finding.sd));
  return out;
}

ordered_json after_to_json(const std::optional<After>& after) {
  if (!after) return nullptr;
  ordered_json vessel = json_object_of(after->vessel.size());
  for (const auto& [id, value] : after->vessel) json_add(vessel, id.c_str(), number_to_json(value));
  ordered_json out = json_object_of(after->readings.size() + 1);
  for (const auto& [id, value] : after->readings) json_add(out, id.c_str(), number_to_json(value));
  json_add(out, "vessel", std::move(vessel));
  return out;
}

ordered_json step_to_json(const Step& step) {
  ordered_json amount;
  if (step.amount)
    amount = json_object("value", number_to_json(step.amount->value), "unit", step.amount->unit);
  ordered_json out = json_object_of(17);
  json_add(out, "order", step.order, "action", name_of(step.action));
  json_add(out, "chemical", or_null(step.chemical));
  json_add(out, "product", or_null(step.product));
  json_add(out, "active_mol", or_null(step.active_mol));
  json_add(out, "amount", std::move(amount));
  json_add(out, "amount_household", or_null(step.amount_household));
  json_add(out, "portions", step.portions);
  json_add(out, "portion_gap_h", number_to_json(step.portion_gap_h));
  json_add(out, "start_h", number_to_json(step.start_h));
  json_add(out, "wait_h", number_to_json(step.wait_h));
  json_add(out, "fraction", or_null(step.fraction));
  json_add(out, "for", step.for_findings);
  json_add(out, "text", step.text);
  json_add(out, "cautions", step.cautions);
  json_add(out, "after", after_to_json(step.after));
  if (step.from_home) json_add(out, "from_home", true);
  return out;
}

}  // namespace

Plan read_plan(JsonFields& from) {
  from.null_is_absent();
  Plan out;
  if (const std::string format = from.text("format"); !format.empty() && format != kFormat)
    from.fault("format", "`format` is \"" + format + "\"", std::string(kFormat));
  out.home_plan = from.flag("home_plan");
  out.why_not = from.text_if("why_not");
  if (auto swim = from.object_if("swim")) out.swim = read_swim(*swim);
  if (auto list = from.objects_if("findings"))
    for (JsonFields& item : *list) out.findings.push_back(read_finding(item));
  if (auto list = from.objects_if("steps"))
    for (JsonFields& item : *list) out.steps.push_back(read_step(item));
  if (auto predicted = from.object_if("predicted")) out.predicted = read_predicted(*predicted);
  if (auto proof = from.object_if("proof"))
    out.proof = Proof{proof->whole("draws", 0, kMost), proof->number("in_target", kShare),
                      proof->number("harm", kShare)};
  if (auto retest = from.object_if("retest"))
    out.retest = Retest{retest->number("after_h", kNotNegative), read_analytes(*retest, "analytes")};
  if (auto list = from.objects_if("remains"))
    for (JsonFields& item : *list) out.remains.push_back(read_remains(item));
  if (auto list = from.objects_if("changes"))
    for (JsonFields& item : *list) out.changes.push_back(read_change(item));
  if (auto cost = from.object_if("cost"))
    out.cost = Cost{cost->number("to_buy", kNotNegative), cost->number("weighed")};
  out.cautions = from.texts_if("cautions");
  if (auto basis = from.object_if("basis"))
    out.basis = Basis{basis->text_if("program").value_or(""), basis->text_if("targets").value_or(""),
                      basis->text_if("shelf").value_or("")};
  return out;
}

ordered_json plan_to_json(const Plan& plan) {
  ordered_json out = json_object_of(14);
  json_add(out, "format", kFormat, "home_plan", plan.home_plan, "why_not", or_null(plan.why_not));
  json_add(out, "swim",
           json_object("now", plan.swim.now ? "yes" : "no", "because", plan.swim.because, "after_step",
                       or_null(plan.swim.after_step), "not_before_h", or_null(plan.swim.not_before_h)));
  json_add(out, "findings", list_to_json(plan.findings, finding_to_json));
  json_add(out, "steps", list_to_json(plan.steps, step_to_json));
  ordered_json predicted = json_object_of(plan.predicted.size());
  for (const auto& [id, value] : plan.predicted)
    json_add(predicted, id.c_str(),
             json_object("value", number_to_json(value.value), "sd", or_null(value.sd)));
  json_add(out, "predicted", std::move(predicted));
  ordered_json proof, retest;
  if (plan.proof)
    proof = json_object("draws", plan.proof->draws, "in_target", number_to_json(plan.proof->in_target),
                        "harm", number_to_json(plan.proof->harm));
  if (plan.retest)
    retest = json_object("after_h", number_to_json(plan.retest->after_h), "analytes", plan.retest->analytes);
  json_add(out, "proof", std::move(proof), "retest", std::move(retest));
  // What the plan of the contract does not name stands there only where it says something.
  if (!plan.remains.empty()) json_add(out, "remains", list_to_json(plan.remains, remains_to_json));
  if (!plan.changes.empty()) json_add(out, "changes", list_to_json(plan.changes, change_to_json));
  if (plan.cost)
    json_add(out, "cost",
             json_object("to_buy", number_to_json(plan.cost->to_buy), "weighed",
                         number_to_json(plan.cost->weighed)));
  json_add(out, "cautions", plan.cautions);
  json_add(
      out, "basis",
      json_object("program", plan.basis.program, "targets", plan.basis.targets, "shelf", plan.basis.shelf));
  return out;
}

}  // namespace brimline
