// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/compare/expectation.h"

#include <algorithm>
#include <cmath>

#include "analysis/panel/told.h"
#include "analysis/water/water.h"

namespace brimline {

namespace {

// What a month does to a reading that nobody tells of, as a sd: share of the value and units. Evaporation
// brings in what the fill holds and splash takes 5 to 6 % a month; the sun, bathers and carbon dioxide do the
// rest.
struct DriftRow {
  std::string_view analyte;
  double share, units;
};
constexpr DriftRow kDrift[] = {{"free_chlorine", 0.25, 0.3},
                               {"total_chlorine", 0.25, 0.3},
                               {"total_bromine", 0.25, 0.6},
                               {"ph", 0, 0.15},
                               {"total_alkalinity", 0.04, 3},
                               {"calcium_hardness", 0.025, 3},
                               {"cyanuric_acid", 0.03, 0.5},
                               {"salt", 0.025, 10},
                               {"tds", 0.04, 30},
                               {"iron", 0.05, 0.02},
                               {"copper", 0.05, 0.02},
                               {"phosphate", 0.1, 0.05}};

double drift_of(std::string_view analyte, double value, double days) {
  const double months = std::sqrt(std::clamp(days, 1.0, 180.0) / 30);
  for (const DriftRow& row : kDrift)
    if (row.analyte == analyte) {
      const bool spent_daily = row.share >= 0.25 || analyte == "ph";
      return std::hypot(row.share * value, row.units) * (spent_daily ? 1 : months);
    }
  return 0.04 * value * months;
}

std::optional<Measured> value_in(const Visit& visit, std::string_view analyte) {
  const CheckedPanel panel = unchecked_panel(visit.bottle.readings, visit.vessel);
  const CheckedValue* value = panel.find(analyte);
  return value && !value->clipped ? std::optional(value->measured()) : std::nullopt;
}

std::optional<double> days_between(const Visit& earlier, const Visit& later) {
  const auto from = time_of(earlier), to = time_of(later);
  if (!from || !to) return std::nullopt;
  return std::max(0.0, hours_between(*from, *to) / 24);
}

// The doses between two neighbouring visits: what the customer says was added; where nothing was said, the
// plan as it was told.
std::vector<Addition> told_between(const Visit& earlier, const Visit& later) {
  if (!later.bottle.additions_since.empty() || !earlier.plan_as_told) return later.bottle.additions_since;
  std::vector<Addition> out;
  for (const Step& step : earlier.plan_as_told->steps)
    if (step.action == Action::add && step.chemical)
      out.push_back({*step.chemical, step.active_mol, std::nullopt});
  return out;
}

double drained_between(const Visit& earlier) {
  double left = 1;
  if (earlier.plan_as_told)
    for (const Step& step : earlier.plan_as_told->steps)
      if (step.action == Action::drain_refill) left *= 1 - step.fraction.value_or(0);
  return 1 - left;
}

// The fill water's own reading from the latest visit that has one; else none of what tap water lacks, and of
// what it may hold something between nothing and what the vessel holds.
void take_fill(std::span<const Visit> visits, Pair& pair) {
  for (auto visit = visits.rbegin(); visit != visits.rend(); ++visit) {
    if (!visit->bottle.fill_water) continue;
    const CheckedPanel panel = unchecked_panel(*visit->bottle.fill_water, Vessel{});
    if (const CheckedValue* value = panel.find(pair.analyte)) {
      pair.fill = value->measured();
      pair.fill_read = true;
      return;
    }
  }
  const bool absent_from_taps = pair.analyte == "cyanuric_acid" || pair.analyte == "borate";
  if (absent_from_taps) return;
  if (pair.analyte == "salt")
    pair.fill = {std::min(80.0, 0.3 * pair.before.value), std::min(60.0, 0.2 * pair.before.value)};
  else
    pair.fill = {0.4 * pair.before.value, 0.25 * pair.before.value};
}

void take_dose(const Addition& addition, const Vessel& vessel, Pair& pair) {
  if (told_direction(addition.chemical, pair.analyte) == 0) return;
  pair.told_any = true;
  const auto per_cubic_metre = told_change(addition, pair.analyte, Volume::cubic_metres(1));
  if (!per_cubic_metre) {
    pair.amount_missing = true;
    return;
  }
  pair.told_per_inverse += *per_cubic_metre;
  if (vessel.volume)
    pair.told += *per_cubic_metre / vessel.volume->cubic_metres();
  else
    pair.amount_missing = true;
}

// What is told of the stretches from `visits[i]` on, its own value and time among it.
Pair told_from(std::span<const Visit> visits, size_t i, const AnalyteId& analyte, Measured before,
               Measured now) {
  Pair pair;
  pair.analyte = analyte;
  pair.before = before;
  pair.now = now;
  pair.days = days_between(visits[i], visits.back()).value_or(30);
  take_fill(visits, pair);
  for (size_t k = i; k + 1 < visits.size(); ++k) {
    for (const Addition& addition : told_between(visits[k], visits[k + 1]))
      take_dose(addition, visits.back().vessel, pair);
    pair.drained = 1 - (1 - pair.drained) * (1 - drained_between(visits[k]));
  }
  return pair;
}

std::optional<Pair> pair_of(std::span<const Visit> visits, const CheckedValue& now) {
  if (now.clipped) return std::nullopt;
  for (size_t i = visits.size() - 1; i-- > 0;) {
    const auto before = value_in(visits[i], now.analyte);
    if (!before) continue;
    Pair pair = told_from(visits, i, now.analyte, *before, now.measured());
    pair.drift_sd = drift_of(now.analyte, before->value, pair.days);
    const bool open_air = in_the_open(visits.back().vessel);
    if (pair.fill_read && is_total(pair.analyte))
      pair.evaporated = (open_air ? kEvaporatedOutdoor : kEvaporatedIndoor) * pair.fill.value *
                        std::clamp(pair.days / 30, 0.0, 6.0);
    return pair;
  }
  return std::nullopt;
}

double reading_or(const std::vector<Pair>& pairs, std::string_view analyte, double otherwise) {
  for (const Pair& pair : pairs)
    if (pair.analyte == analyte) return pair.before.value;
  return otherwise;
}

const Pair* find(const std::vector<Pair>& pairs, std::string_view analyte) {
  for (const Pair& pair : pairs)
    if (pair.analyte == analyte) return &pair;
  return nullptr;
}

// pH after the told doses, through the full model, closed; what carbon dioxide leaves since is in the drift.
void take_ph(std::span<const Visit> visits, std::vector<Pair>& pairs) {
  const auto ph = std::find_if(pairs.begin(), pairs.end(), [](const Pair& p) { return p.analyte == "ph"; });
  const Pair* alkalinity = find(pairs, "total_alkalinity");
  if (ph == pairs.end() || !alkalinity || !visits.back().vessel.volume || visits.size() < 2) return;
  WaterReadings readings;
  readings.ph = ph->before.value;
  readings.total_alkalinity = alkalinity->before.value;
  readings.calcium_hardness = reading_or(pairs, "calcium_hardness", 250);
  readings.cyanuric_acid = reading_or(pairs, "cyanuric_acid", 0);
  readings.borate = reading_or(pairs, "borate", 0);
  const auto water = water_from_readings(readings);
  if (!water) return;
  Totals totals = water->totals;
  bool any = false;
  for (const Addition& addition : told_between(visits[visits.size() - 2], visits.back())) {
    const auto dose = spent_dose(addition.chemical);
    if (!dose || !addition.active_mol) continue;
    totals += *dose * (*addition.active_mol / visits.back().vessel.volume->litres());
    any = true;
  }
  const auto after = any ? solve(totals, water->temperature) : water;
  if (!after || !any) return;
  ph->told = after->ph - ph->before.value;
  ph->told_any = std::abs(ph->told) > 0.02;
  // the told move is partly undone within days as carbon dioxide comes to balance with air
  ph->drift_sd = std::hypot(ph->drift_sd, 0.4 * ph->told);
}

}  // namespace

double Pair::expected_sd(double relative_volume_sd) const {
  const double dose = told * relative_volume_sd;
  const double drain =
      drained > 0 ? std::hypot(drained * fill.sd, 0.1 * drained * (before.value - fill.value)) : 0;
  return std::sqrt(std::pow(before.sd * (1 - drained), 2) + now.sd * now.sd + dose * dose + drain * drain +
                   drift_sd * drift_sd + lost_sd * lost_sd);
}

double Pair::distance(double relative_volume_sd) const {
  const double sd = expected_sd(relative_volume_sd);
  return sd > 0 ? (now.value - expected()) / sd : 0;
}

std::optional<Instant> time_of(const Visit& visit) {
  return visit.bottle.taken_at ? visit.bottle.taken_at : visit.bottle.tested_at;
}

bool in_the_open(const Vessel& vessel) {
  return vessel.place != Place::indoor && kind_of(vessel) == VesselKind::pool;
}

double relative_volume_sd(const Vessel& vessel) {
  return vessel.volume_relative_sd.value_or(0.1);
}

Pair pair_between(std::span<const Visit> visits, const AnalyteId& analyte, Measured before, Measured now) {
  return told_from(visits, visits.size() - 2, analyte, before, now);
}

std::vector<Pair> pairs_of(std::span<const Visit> visits) {
  std::vector<Pair> pairs;
  if (visits.size() < 2) return pairs;
  for (const CheckedValue& now : unchecked_panel(visits.back().bottle.readings, visits.back().vessel).values)
    if (auto pair = pair_of(visits, now)) pairs.push_back(std::move(*pair));
  if (!pairs.empty()) take_ph(visits, pairs);
  return pairs;
}

}  // namespace brimline
