// SPDX-License-Identifier: GPL-3.0-or-later
// Draining and refilling: the only way down for cyanuric acid (CDC MAHC annex 6.5.2.3), and for
// hardness in ordinary guidance (MIL-HDBK-1027/4A); and metals, which only bind or leave with the water.
//
// C1 = C0 (1 - f) + Cf f; n equal drains: f_n = 1 - r^(1/n), r = (Ct - Cf)/(C0 - Cf).
#include <algorithm>
#include <cmath>

#include "analysis/findings/edge.h"
#include "analysis/treatment/planner.h"

namespace brimline {

namespace {

constexpr double kLeastWorth = 0.1;     // a smaller share is left to splash and top-up
constexpr double kStepShare = 1.0 / 3;  // of a home pool in one step, from memory
constexpr double kLinerShare = 0.25;    // vinyl and fibreglass less, from memory
constexpr double kMetalDilute = 1.0;    // mg/L iron or copper, from memory
constexpr double kDemandCap = 30;

struct Need {
  double fraction = 0;
  std::vector<std::string> for_findings;
  void raise(double f, const std::string& why) {
    if (f < kLeastWorth) return;
    fraction = std::max(fraction, f);
    for_findings.push_back(why);
  }
};

void need_for(Draft& d, Need& need, const char* analyte, const char* finding) {
  const Known* k = d.s.fresh(analyte);
  const auto aim = d.aim(analyte);
  if (!k || !aim || standing(k->measured(), aim->range) != Standing::above || *aim->range.high <= 0) return;
  const double high = *aim->range.high;
  // Stabilizer to its aim: free chlorine rises with what is left of it, and has little room.
  double inside = std::string_view(analyte) == "cyanuric_acid" && aim->range.low
                      ? std::min(aim->aim, 0.9 * high)
                      : high - 0.25 * (high - aim->range.low.value_or(high * 0.6));
  const double fill = in_fill(d.s, analyte).value_or(0);
  if (fill >= 0.98 * high) {  // dilution cannot work
    d.held_back.emplace(analyte, "fill_too_high");
    return;
  }
  if (fill >= inside) inside = (fill + high) / 2;
  need.raise((k->value - inside) / (k->value - fill), finding);
}

void need_for_metals(const Draft& d, Need& need) {
  for (const char* metal : {"iron", "copper"}) {
    const Known* k = d.s.usable(metal);
    if (k && k->value > kMetalDilute && in_fill(d.s, metal).value_or(0) < k->value)
      need.raise(kStepShare, std::string(metal) + "_high");
  }
}

bool may_be_emptied(const Situation& s) {
  const bool small = s.where.kind == VesselKind::spa || s.where.kind == VesselKind::plunge;
  return small && !s.vessel.in_ground.value_or(false);
}

}  // namespace

void plan_dilution(Draft& d) {
  const Situation& s = d.s;
  Need need;
  need_for(d, need, "cyanuric_acid", "cyanuric_acid_high");
  need_for(d, need, "calcium_hardness", "calcium_hardness_high");
  need_for(d, need, "salt", "salt_high");
  need_for(d, need, "tds", "tds_high");
  need_for(d, need, "sulfate", "sulfate_high");
  need_for(d, need, "nitrate", "nitrate_high");
  need_for_metals(d, need);
  if (s.demand_dose_mg_l && *s.demand_dose_mg_l > kDemandCap)
    need.raise(1 - kDemandCap / *s.demand_dose_mg_l, "chlorine_demand");
  if (need.fraction <= 0) return;
  if (s.vessel.plaster_age_days && *s.vessel.plaster_age_days < kPlasterCures) {
    d.held_back.emplace("drain", "plaster_cures");  // an empty shell dries: not while the plaster cures
    return;
  }
  const bool liner = s.vessel.surface == Surface::vinyl || s.vessel.surface == Surface::fibreglass;
  const double cap = may_be_emptied(s) ? 1.0 : liner ? kLinerShare : kStepShare;
  const double whole = may_be_emptied(s) && need.fraction > 0.5 ? 1.0 : std::min(need.fraction, 0.999);
  int drains = whole >= cap
                   ? static_cast<int>(std::ceil(
                         std::log(1 - std::min(whole, 0.999)) / std::log(1 - std::min(cap, 0.999)) - 1e-9))
                   : 1;
  drains = std::clamp(cap >= 1 ? 1 : drains, 1, s.fill ? 3 : 1);
  const double each = cap >= 1 ? whole : std::min(cap, 1 - std::pow(1 - whole, 1.0 / drains));
  for (int i = 0; i < drains; ++i)
    d.act(Action::drain_refill, "drain_refill", need.for_findings, d.turnover_h() + 4,
          Change{"", 0, each, 0});
  if (s.fill && !(s.demand_dose_mg_l && *s.demand_dose_mg_l > kDemandCap)) return;
  d.act(Action::retest, s.fill ? "retest_after_drain" : "fill_unknown", need.for_findings, 0);
  d.ends = true;
}

void plan_metals(Draft& d) {
  const Situation& s = d.s;
  std::vector<std::string> why;
  for (const char* metal : {"iron", "copper", "manganese"}) {
    const auto k = s.known.find(metal);
    const auto aim = d.aim(metal);
    if (k == s.known.end() || !aim || !aim->range.high) continue;
    const bool over_range = k->second.clipped == Clip::above;
    if ((k->second.usable && standing(k->second.measured(), aim->range) == Standing::above) || over_range)
      why.push_back(std::string(metal) + "_high");
  }
  if (why.empty()) return;
  if (const auto product = d.choose({"sequestrant"})) d.add_by_label(*product, {why, "sequester"});
}

}  // namespace brimline
