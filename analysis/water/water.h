// SPDX-License-Identifier: GPL-3.0-or-later
// The water: readings in, equilibrium solved, readings and derived values out.
//
//   const auto water = water_from_readings({.temperature = Temperature::celsius(25), .ph = 7.5,
//                                           .total_alkalinity = 100, .calcium_hardness = 300});
//   if (!water) return text(water.error());
//   const auto warm = at_temperature(*water, Temperature::celsius(38));
//   const auto dosed = solve(water->totals + dose_vector("hydrochloric_acid").value() * 0.0003,
//   water->temperature);
//
// All functions are pure, allocate nothing, throw nothing and may run on any thread.
#pragma once

#include <optional>
#include <string_view>

#include <tl/expected.hpp>

#include "analysis/quantities.h"
#include "analysis/water/totals.h"

namespace brimline {

// Why a water cannot be computed.
enum class Refusal {
  temperature_outside,       // not 0-45 C
  ph_outside,                // not 4-11
  negative_reading,          // a reading below zero or not a number
  alkalinity_contradicts,    // what the stabilizer accounts for exceeds it
  alkalinity_below_acids,    // what stabilizer, borate, chlorine and pH account for together exceeds it
  negative_sodium_chloride,  // the salt, dissolved solids or background would make one negative
  too_salty,                 // ionic strength over 1 mol/kgw: beyond the activity model
  does_not_balance           // the solver found no water with these totals
};
std::string_view text(Refusal);  // one English clause

inline constexpr double kAssumedSolids = 1000;  // mg/L of dissolved solids, where nothing was told

// What the bench read. Absent readings count as none of it, except where said.
struct WaterReadings {
  Temperature temperature = Temperature::celsius(25);  // at which pH was read
  double ph = 7.5;
  double total_alkalinity = 0;               // mg/L CaCO3
  std::optional<double> calcium_hardness;    // mg/L CaCO3
  std::optional<double> magnesium_hardness;  // mg/L CaCO3
  std::optional<double> cyanuric_acid;       // mg/L
  std::optional<double> borate;              // mg/L B
  std::optional<double> free_chlorine;       // mg/L Cl2
  std::optional<double> total_bromine;       // mg/L Br2
  std::optional<double> bromide;             // mg/L
  std::optional<double> sulfate;             // mg/L
  // The first of these that is present is used; with none, kAssumedSolids.
  std::optional<double> background_nacl;  // mg/L beyond what hardness and alkalinity bring; may be negative
  std::optional<double> salt;             // mg/L, all chloride as NaCl
  std::optional<double> tds;              // mg/L dissolved solids
  std::optional<double> conductivity;     // uS/cm at 25 C
};

// Which of the readings the background salt of a water follows from.
enum class BackgroundReading { background_nacl, salt, tds, conductivity, assumed };
BackgroundReading background_reading(const WaterReadings&);
std::string_view text(BackgroundReading);  // one English clause

// A solved water: plain numbers, nothing computed lazily. Amounts in mol/kgw, activities molal.
struct Water {
  Totals totals;
  Temperature temperature = Temperature::celsius(25);
  double ph = 7;
  double ionic_strength = 0;  // mol/kgw
  double activity_calcium = 0, activity_carbonate = 0, activity_bicarbonate = 0;
  double co2 = 0;                             // CO2(aq)
  double hypochlorous = 0, hypochlorite = 0;  // free HOCl, OCl-
  double hypobromous = 0, hypobromite = 0;
  double carbonate_alkalinity_eq = 0, cyanurate_alkalinity_eq = 0, borate_alkalinity_eq = 0;
  double log_ksp = 0;                           // calcite, at this temperature
  double free_carbonate = 0, free_sulfate = 0;  // CO3-2, SO4-2 outside pairs
  double henry = 0;  // CO2(aq) mol/kgw per atm, at this temperature and ionic strength

  // As the counter reads it, in the readings' units.
  double total_alkalinity() const { return totals.alkalinity * 1e3 * weight::kAlkalinity; }
  double calcium_hardness() const { return totals.calcium * 1e3 * weight::kCaCO3; }
  double magnesium_hardness() const { return totals.magnesium * 1e3 * weight::kCaCO3; }
  double cyanuric_acid() const { return totals.cyanurate * 1e3 * weight::kCyanuricAcid; }
  double borate() const { return totals.borate * 1e3 * weight::kBoron; }
  double free_chlorine() const { return totals.chlorine * 1e3 * weight::kChlorine; }
  double total_bromine() const { return totals.bromine * 1e3 * weight::kBromine; }
  double bromide() const { return totals.bromide * 1e3 * weight::kBromide; }
  double sulfate() const { return totals.sulfate * 1e3 * weight::kSulfate; }
  double salt() const { return totals.chloride * 1e3 * weight::kSalt; }  // all chloride as NaCl
  double dissolved_solids() const;  // mg/L: ions, carbon as HCO3, H3Cy, H3BO3, OCl
  double dic_mmol() const { return totals.carbon * 1e3; }

  // Derived.
  std::optional<double> si_calcite() const;  // log10(aCa aCO3 / Ksp); none without calcium or carbonate
  double hocl() const { return hypochlorous * 1e3 * weight::kChlorine; }  // mg/L Cl2
  double ocl() const { return hypochlorite * 1e3 * weight::kChlorine; }   // mg/L Cl2
  double chlorinated_cyanurates() const;                                  // mg/L Cl2
  double hobr() const { return hypobromous * 1e3 * weight::kBromine; }    // mg/L Br2
  double obr() const { return hypobromite * 1e3 * weight::kBromine; }     // mg/L Br2
  std::optional<double> hocl_share() const;              // of free chlorine, 0-1; none without chlorine
  std::optional<double> chlorine_to_stabilizer() const;  // mg/L over mg/L; none without stabilizer
  double carbonate_alkalinity() const { return carbonate_alkalinity_eq * 1e3 * weight::kAlkalinity; }
  double cyanurate_alkalinity() const { return cyanurate_alkalinity_eq * 1e3 * weight::kAlkalinity; }
  double borate_alkalinity() const { return borate_alkalinity_eq * 1e3 * weight::kAlkalinity; }
  double log10_pco2() const;  // atm
};

// Solves for the carbon that alkalinity and pH imply.
[[nodiscard]] tl::expected<Water, Refusal> water_from_readings(const WaterReadings& readings);

// Solves for the pH of given totals, closed. `guess` is a pH to start from; the answer does not depend on it
// beyond the solver's tolerance (1e-11).
[[nodiscard]] tl::expected<Water, Refusal> solve(const Totals& totals, Temperature temperature,
                                                 double guess = 7.5);

// The same, starting from a solved water of about these totals: faster, and at that water's temperature.
[[nodiscard]] tl::expected<Water, Refusal> solve(const Totals& totals, const Water& nearby);

// The same water, closed, at another temperature: what the vessel holds when the bottle stood at another.
[[nodiscard]] tl::expected<Water, Refusal> at_temperature(const Water& water, Temperature temperature);

// Open to air of `log10_pco2` atm until CO2 balances; all other totals kept.
[[nodiscard]] tl::expected<Water, Refusal> aerate(const Water& water, double log10_pco2 = -3.4);

// Share `share` of `a` (0-1), the rest `b`, at the temperature of `a`, closed.
[[nodiscard]] tl::expected<Water, Refusal> mix_waters(const Water& a, const Water& b, double share);

}  // namespace brimline
