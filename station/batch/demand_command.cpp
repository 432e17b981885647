// SPDX-License-Identifier: GPL-3.0-or-later
// demand VISIT: what the chlorine-demand test of a bottle says.
#include <iostream>

#include <nlohmann/json.hpp>

#include "analysis/findings/targets.h"
#include "analysis/panel/demand.h"
#include "analysis/panel/panel.h"
#include "station/batch/usage.h"
#include "station/batch/visit_input.h"

namespace brimline::batch {

namespace {

using Json = nlohmann::ordered_json;

Json or_null(const std::optional<double>& value) {
  return value ? Json(*value) : Json(nullptr);
}

// Free chlorine of the sample; not read counts as none, and a clipped reading as its limit.
Measured free_now(const CheckedPanel& panel) {
  const CheckedValue* free = panel.find("free_chlorine");
  return free ? free->measured() : Measured{0, 0.1};
}

// Where the household regime sends free chlorine in this water.
double target_residual(const Visit& visit, const CheckedPanel& panel) {
  const TargetSet* household = find_targets("household");
  const auto aim =
      household ? household->find("free_chlorine",
                                  case_of(visit.vessel, panel.value("cyanuric_acid"), panel.value("ph")))
                : std::nullopt;
  return aim ? aim->aim : 3;
}

Json to_json(const DemandResult& result, double target) {
  Json out;
  out["demand_mg_l"] = result.demand ? Json(result.demand->value) : Json(nullptr);
  out["sd"] = result.demand ? Json(result.demand->sd) : Json(nullptr);
  out["demand_above_mg_l"] = or_null(result.demand_above);
  out["demand_below_mg_l"] = or_null(result.demand ? std::nullopt : result.demand_below);
  out["at_hours"] = result.at_hours;
  out["demand_infinite_mg_l"] = or_null(result.demand_infinite);
  out["breakpoint_reached"] = result.breakpoint_reached;
  out["target_residual_mg_l"] = target;
  out["dose_mg_l"] = or_null(result.dose);
  out["enough"] = result.enough();
  out["text"] = result.text();
  return out;
}

}  // namespace

int demand_command(const Arguments& arguments) {
  const auto parsed = parse(arguments, {});
  if (!parsed) return bad_usage("demand", parsed.error());
  if (parsed->positional.size() != 1) return bad_usage("demand", "expected one VISIT");
  const std::string& path = parsed->positional.front();
  const auto visit = read_visit_file(path);
  if (!visit) return bad_input(visit.error());
  if (!visit->bottle.demand_test)
    return bad_input({{path, 1, "the visit has no `demand_test`", "the bottles of a chlorine-demand test"}});
  const CheckedPanel panel = unchecked_panel(visit->bottle.readings, Vessel{});
  const double target = target_residual(*visit, panel);
  std::cout << to_json(judge_demand(*visit->bottle.demand_test, free_now(panel), target), target).dump()
            << "\n";
  return kDone;
}

}  // namespace brimline::batch
