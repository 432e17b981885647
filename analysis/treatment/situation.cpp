// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/situation.h"

#include <algorithm>
#include <cmath>

#include "analysis/panel/demand.h"

namespace brimline {

namespace {

// Analytes that an earlier bottle may lend to the model: they move slowly.
constexpr std::string_view kSlow[] = {
    "calcium_hardness", "magnesium_hardness", "cyanuric_acid", "borate", "salt", "tds",
    "sulfate",          "conductivity"};

std::optional<double> value_of(const KnownReadings& known, std::string_view analyte) {
  const auto found = known.find(analyte);
  if (found == known.end() || !found->second.usable) return std::nullopt;
  return found->second.value;
}

void lend_from_earlier(Situation& s, std::span<const Bottle> earlier) {
  for (auto b = earlier.rbegin(); b != earlier.rend(); ++b) {
    const KnownReadings old = believe(unchecked_panel(b->readings, s.vessel));
    for (const std::string_view analyte : kSlow) {
      const auto found = old.find(analyte);
      if (found == old.end() || !found->second.usable || s.known.contains(analyte)) continue;
      Known lent = found->second;
      lent.from_earlier = true;
      lent.sd = std::hypot(lent.sd, 0.1 * lent.value);
      s.known.emplace(analyte, lent);
    }
  }
}

void solve_water(Situation& s) {
  s.readings = model_readings(s.known, s.bottle_temperature);
  if (!s.readings) return;
  auto water = water_from_readings(*s.readings);
  if (!water && water.error() == Refusal::negative_sodium_chloride) {
    // Salt and dissolved solids hardly move what is dosed: the water is judged without them.
    s.readings->salt.reset();
    s.readings->tds.reset();
    s.readings->conductivity.reset();
    water = water_from_readings(*s.readings);
  }
  if (water)
    s.water = *water;
  else
    s.refusal = water.error();
}

void solve_fill(Situation& s) {
  if (!s.bottle.fill_water) return;
  const Vessel tap;  // tap water is no vessel's
  s.fill_known = believe(unchecked_panel(*s.bottle.fill_water, tap));
  if (!value_of(s.fill_known, "calcium_hardness")) return;
  auto readings = model_readings(s.fill_known, s.bottle_temperature);
  if (!readings) return;
  const bool told = readings->salt || readings->tds || readings->conductivity;
  if (!told) readings->background_nacl = 0;
  auto fill = water_from_readings(*readings);
  if (!fill && told) {
    // A strip's salt or solids that do not fit by a little: the tap water is judged without them.
    readings->salt.reset();
    readings->tds.reset();
    readings->conductivity.reset();
    readings->background_nacl = 0;
    fill = water_from_readings(*readings);
  }
  if (fill) s.fill = *fill;
}

}  // namespace

KnownReadings believe(const CheckedPanel& panel) {
  KnownReadings out;
  for (const CheckedValue& v : panel.values)
    out.emplace(v.analyte, Known{v.value, v.sd, !v.clipped && !v.rejected(), v.doubtful(), v.clipped, false});
  return out;
}

std::optional<WaterReadings> model_readings(const KnownReadings& known, Temperature at) {
  const auto ph = value_of(known, "ph"), alkalinity = value_of(known, "total_alkalinity");
  if (!ph || !alkalinity) return std::nullopt;
  WaterReadings r;
  r.temperature = at;
  r.ph = *ph;
  r.total_alkalinity = *alkalinity;
  r.calcium_hardness = value_of(known, "calcium_hardness");
  r.magnesium_hardness = value_of(known, "magnesium_hardness");
  r.cyanuric_acid = value_of(known, "cyanuric_acid");
  r.borate = value_of(known, "borate");
  r.free_chlorine = value_of(known, "free_chlorine");
  r.total_bromine = value_of(known, "total_bromine");
  r.bromide = value_of(known, "bromide");
  r.sulfate = value_of(known, "sulfate");
  r.salt = value_of(known, "salt");
  r.tds = value_of(known, "tds");
  r.conductivity = value_of(known, "conductivity");
  return r;
}

bool Situation::has(Sign sign) const {
  return std::find(bottle.signs.begin(), bottle.signs.end(), sign) != bottle.signs.end();
}

const Known* Situation::usable(std::string_view analyte) const {
  const auto found = known.find(analyte);
  return found != known.end() && found->second.usable ? &found->second : nullptr;
}

const Known* Situation::fresh(std::string_view analyte) const {
  const Known* k = usable(analyte);
  return k && !k->from_earlier && !k->doubtful ? k : nullptr;
}

std::optional<Measured> Situation::combined_chlorine() const {
  const Known* free = fresh("free_chlorine");
  const Known* total = fresh("total_chlorine");
  if (!free || !total) return std::nullopt;
  Measured combined = difference(total->measured(), free->measured());
  combined.value = std::max(0.0, combined.value);
  return combined;
}

void weigh_demand(Situation& s, const TargetSet& targets) {
  const auto aim = targets.find("free_chlorine", s.where);
  const Known* free = s.fresh("free_chlorine");
  if (!s.bottle.demand_test || !s.chlorine() || !aim || !free) return;
  const DemandResult result = judge_demand(*s.bottle.demand_test, free->measured(), aim->aim,
                                           stood_at(*s.bottle.demand_test, s.bottle));
  s.demand_dose_mg_l = result.dose;
  if (result.demand) {
    s.demand_mg_l = result.demand->value;
    s.demand_sd_mg_l = result.demand->sd;
  }
  s.demand_open = !result.dose;
}

Situation make_situation(const Vessel& vessel, const Bottle& bottle, std::span<const Bottle> earlier,
                         const Supplies& supplies) {
  Situation s;
  s.vessel = vessel;
  s.bottle = bottle;
  s.known = believe(checked_panel(bottle, vessel, earlier, std::nullopt, supplies));
  s.bottle_temperature = bottle.sample_temperature.value_or(Temperature::celsius(25));
  s.vessel_temperature = vessel.water_temperature.value_or(s.bottle_temperature);
  lend_from_earlier(s, earlier);
  for (const auto& [analyte, k] : s.known)
    if (k.usable && k.doubtful) s.must_repeat.push_back(analyte);
  const Known* cyanuric = s.usable("cyanuric_acid");
  const Known* ph = s.usable("ph");
  s.where = case_of(vessel, cyanuric ? std::optional(cyanuric->value) : std::nullopt,
                    ph ? std::optional(ph->value) : std::nullopt);
  solve_water(s);
  solve_fill(s);
  return s;
}

}  // namespace brimline
