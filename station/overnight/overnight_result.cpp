// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/overnight/overnight_result.h"

#include "analysis/findings/targets.h"
#include "analysis/panel/panel.h"

namespace brimline {

namespace {

constexpr double kUnreadSd = 0.05;    // mg/L Cl2 of a sample that was not read: as of a reading of none
constexpr double kUsualResidual = 3;  // mg/L Cl2 where the regime has no row for this water

}  // namespace

double residual_wanted(const Visit& visit) {
  const CheckedPanel panel = unchecked_panel(visit.bottle.readings, visit.vessel);
  const TargetSet* household = find_targets("household");
  const auto aim =
      household ? household->find("free_chlorine",
                                  case_of(visit.vessel, panel.value("cyanuric_acid"), panel.value("ph")))
                : std::nullopt;
  return aim ? aim->aim : kUsualResidual;
}

Measured free_now_of(const Visit& visit) {
  const CheckedPanel panel = unchecked_panel(visit.bottle.readings, Vessel{});  // chlorine as read
  const CheckedValue* free = panel.find("free_chlorine");
  return free ? free->measured() : Measured{0, kUnreadSd};
}

DemandResult result_of(const DemandTest& test, const Visit& visit) {
  return judge_demand(test, free_now_of(visit), residual_wanted(visit), stood_at(test, visit.bottle));
}

std::optional<double> known_above_of(const Visit& visit) {
  if (!visit.bottle.demand_test) return std::nullopt;
  const DemandResult result = result_of(*visit.bottle.demand_test, visit);
  return result.enough() ? std::nullopt : result.demand_above;
}

}  // namespace brimline
