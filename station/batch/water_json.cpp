// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/batch/water_json.h"

#include "analysis/treatment/errors.h"
#include "analysis/water/doses.h"
#include "analysis/water/saturation.h"
#include "analysis/water/uncertainty.h"

namespace brimline::batch {
namespace {

using Json = nlohmann::ordered_json;
using Number = std::optional<double>;

struct ResultRow {
  const char* name;
  std::optional<double> WaterReadings::*needs;  // null: nothing beyond pH and alkalinity
  Number (*of)(const Water&);
};

Number spent_ph(const Water& w) {
  const Totals& t = w.totals;
  const auto spent = solve(spend_bromine(spend_chlorine(t, t.chlorine), t.bromine), w);
  return spent ? Number(spent->ph) : std::nullopt;
}

constexpr ResultRow kResults[] = {
    {"ph_vessel", nullptr, [](const Water& w) { return Number(w.ph); }},
    {"si_calcite", &WaterReadings::calcium_hardness, [](const Water& w) { return w.si_calcite(); }},
    {"si_factor_table", &WaterReadings::calcium_hardness,
     [](const Water& w) { return factor_table_index(w); }},
    {"carbonate_alkalinity_mg_l_caco3", nullptr,
     [](const Water& w) { return Number(w.carbonate_alkalinity()); }},
    {"ph_saturation_const_alk", &WaterReadings::calcium_hardness, saturation_ph},
    {"ccpp_mg_l_caco3", &WaterReadings::calcium_hardness,
     [](const Water& w) {
       const auto calcite = calcite_equilibrium(w);
       return calcite ? Number(calcite->ccpp()) : std::nullopt;
     }},
    {"hocl_mg_l_cl2", &WaterReadings::free_chlorine, [](const Water& w) { return Number(w.hocl()); }},
    {"hocl_share", &WaterReadings::free_chlorine, [](const Water& w) { return w.hocl_share(); }},
    {"free_chlorine_to_stabilizer", &WaterReadings::free_chlorine,
     [](const Water& w) { return w.chlorine_to_stabilizer(); }},
    {"hobr_mg_l_br2", &WaterReadings::total_bromine, [](const Water& w) { return Number(w.hobr()); }},
    // Once chlorine and bromine are spent: each leaves an equivalent of acid behind.
    {"acid_when_spent_mmol_kgw", nullptr,
     [](const Water& w) { return Number(1e3 * (w.totals.chlorine + w.totals.bromine)); }},
    {"spent_ph", nullptr, spent_ph},
};

const char* name_of(BackgroundReading from) {
  switch (from) {
    case BackgroundReading::salt:
      return "salt";
    case BackgroundReading::tds:
      return "tds";
    case BackgroundReading::conductivity:
      return "conductivity";
    default:
      return "assumed";
  }
}

Json number(const Number& value) {
  return value ? Json(*value) : Json();
}

Json results_to_json(const MovedWaters& moved, const WaterReadings& readings, const ReadingErrors& errors) {
  Json out = Json::object();
  for (const ResultRow& row : kResults) {
    if (row.needs && !(readings.*row.needs)) continue;
    out[row.name] = {{"value", number(row.of(moved.centre()))},
                     {"sd", number(combined(moved.slopes(row.of), errors))}};
  }
  return out;
}

}  // namespace

Json water_to_json(const Situation& s) {
  if (!s.readings) return nullptr;
  const BackgroundReading from = background_reading(*s.readings);
  Json out = {{"background", name_of(from)},
              {"notes", Json::array({text(from)})},
              {"refused", nullptr},
              {"vessel_temperature_c", s.vessel_temperature.celsius()},
              {"results", Json::object()}};
  const auto moved = MovedWaters::of(*s.readings, s.vessel_temperature);
  if (!moved)
    out["refused"] = text(moved.error());
  else
    out["results"] = results_to_json(*moved, *s.readings, errors_of(s));
  return out;
}

}  // namespace brimline::batch
