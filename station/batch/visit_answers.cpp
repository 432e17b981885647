// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/batch/visit_answers.h"

#include <nlohmann/json.hpp>

#include "analysis/panel/demand.h"
#include "analysis/panel/due.h"
#include "analysis/panel/panel.h"
#include "station/batch/water_json.h"
#include "station/overnight/overnight_result.h"
#include "station/wording/statement_words.h"

namespace brimline::batch {

namespace {

using Json = nlohmann::ordered_json;

Json checks_to_json(const std::vector<Check>& checks, const Words& words) {
  Json out = Json::array();
  for (const Check& check : checks)
    out.push_back({{"id", check.id},
                   {"analytes", check.analytes},
                   {"verdict", name_of(check.verdict)},
                   {"text", check_text(words, check)}});
  return out;
}

// Of the readings as read, and of what was derived from them.
Json uncertainty_to_json(const Visit& visit) {
  Json out = Json::object();
  for (const Vessel& vessel : {Vessel{}, visit.vessel})
    for (const CheckedValue& value : unchecked_panel(visit.bottle.readings, vessel).values)
      if (!out.contains(value.analyte)) out[value.analyte] = value.sd;
  return out;
}

Json measured_to_json(const std::optional<Measured>& measured) {
  return measured ? Json{{"value", measured->value}, {"sd", measured->sd}} : Json(nullptr);
}

Json or_null(const std::optional<double>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json to_json(const DemandResult& result, double target, const Words& words) {
  Json out;
  out["demand_mg_l"] = result.demand ? Json(result.demand->value) : Json(nullptr);
  out["sd"] = result.demand ? Json(result.demand->sd) : Json(nullptr);
  out["demand_above_mg_l"] = or_null(result.demand_above);
  out["demand_below_mg_l"] = or_null(result.demand ? std::nullopt : result.demand_below);
  out["at_hours"] = result.at_hours;
  out["at_temperature_c"] = result.temperature ? Json(result.temperature->celsius()) : Json(nullptr);
  out["fast_mg_l"] = result.fast ? Json(result.fast->value) : Json(nullptr);
  out["slow_mg_l"] = result.slow ? Json(result.slow->value) : Json(nullptr);
  out["demand_infinite_mg_l"] = or_null(result.demand_infinite);
  out["breakpoint_reached"] = result.breakpoint_reached;
  out["target_residual_mg_l"] = target;
  out["dose_mg_l"] = or_null(result.dose);
  out["dose_sd"] = result.dose ? Json(result.dose_sd) : Json(nullptr);
  out["enough"] = result.enough();
  out["text"] = demand_text(words, result);
  return out;
}

}  // namespace

std::string check_answer(const Visit& visit, const std::vector<Bottle>& earlier, const Instant& now,
                         const Words& words, const Supplies& supplies) {
  const CheckedPanel panel = unchecked_panel(visit.bottle.readings, visit.vessel);
  const Json answer = {
      {"checks", checks_to_json(check_bottle(visit.bottle, visit.vessel, earlier, now, supplies), words)},
      {"panel_due", panel_due(visit.bottle, visit.vessel, earlier)},
      {"uncertainty", uncertainty_to_json(visit)},
      {"combined_chlorine_mg_l", measured_to_json(panel.combined_chlorine())},
      {"water", water_to_json(make_situation(visit.vessel, visit.bottle, earlier, supplies))},
      {"fill_water_due", fill_water_due(visit.bottle, earlier)}};
  return answer.dump();
}

std::string demand_answer(const Visit& visit, const Words& words) {
  return to_json(result_of(*visit.bottle.demand_test, visit), residual_wanted(visit), words).dump();
}

}  // namespace brimline::batch
