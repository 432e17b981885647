// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/water/water.h"

#include <cmath>

#include "analysis/water/solved.h"

namespace brimline {

std::string_view text(Refusal refusal) {
  switch (refusal) {
    case Refusal::temperature_outside:
      return "the temperature is outside 0-45 C";
    case Refusal::ph_outside:
      return "the pH is outside 4-11 (a dosed water: 3-12)";
    case Refusal::negative_reading:
      return "a reading is negative or not a number";
    case Refusal::alkalinity_contradicts:
      return "the readings contradict: alkalinity is less than the stabilizer alone accounts for";
    case Refusal::alkalinity_below_acids:
      return "the readings contradict: alkalinity is less than stabilizer, borate, chlorine and pH account "
             "for";
    case Refusal::negative_sodium_chloride:
      return "the salt or dissolved solids are too low for the hardness and alkalinity: sodium or chloride "
             "would "
             "be negative";
    case Refusal::too_salty:
      return "the water is too salty for the model: its ionic strength is over 1 mol/kg, about 58,000 mg/L "
             "of salt";
    case Refusal::does_not_balance:
      return "no water has these totals";
  }
  return "";
}

std::string_view text(BackgroundReading from) {
  switch (from) {
    case BackgroundReading::background_nacl:
      return "the background salt is as told";
    case BackgroundReading::salt:
      return "the background salt follows from the salt reading, all chloride counted as NaCl";
    case BackgroundReading::tds:
      return "the background salt follows from the dissolved solids";
    case BackgroundReading::conductivity:
      return "the background salt follows from the conductivity, by 1.6e-5 mol/kgw of ionic strength per "
             "uS/cm";
    case BackgroundReading::assumed:
      return "no salt, dissolved solids or conductivity was read: 1,000 mg/L of dissolved solids are assumed";
  }
  return "";
}

double Water::dissolved_solids() const {
  return detail::dissolved_solids(totals) * 1e6;
}

std::optional<double> Water::si_calcite() const {
  const double product = activity_calcium * activity_carbonate;
  if (!(product > 0) || !(totals.calcium > 0)) return std::nullopt;
  return std::log10(product) - log_ksp;
}

double Water::chlorinated_cyanurates() const {
  const double bound = totals.chlorine - hypochlorous - hypochlorite;
  return totals.cyanurate > 0 ? std::max(bound, 0.0) * 1e3 * weight::kChlorine : 0;
}

std::optional<double> Water::hocl_share() const {
  return totals.chlorine > 0 ? std::optional(hypochlorous / totals.chlorine) : std::nullopt;
}

std::optional<double> Water::chlorine_to_stabilizer() const {
  return totals.cyanurate > 0 ? std::optional(free_chlorine() / cyanuric_acid()) : std::nullopt;
}

double Water::log10_pco2() const {
  return std::log10(co2 / henry);
}

namespace detail {

double dissolved_solids(const Totals& t) {
  // kg/mol: Na, Ca, Mg, Cl, SO4, carbon as HCO3, H3Cy, H3BO3, OCl, and for bromine OBr and Br.
  return (22.990 * t.sodium + 40.078 * t.calcium + 24.305 * t.magnesium + 35.453 * t.chloride +
          weight::kSulfate * t.sulfate + 61.0168 * t.carbon + weight::kCyanuricAcid * t.cyanurate +
          61.833 * t.borate + 51.452 * t.chlorine + 95.903 * t.bromine + weight::kBromide * t.bromide) *
         1e-3;
}

State state_of(const Water& w) {
  return {std::pow(10, -w.ph), w.free_carbonate, w.free_sulfate, w.hypochlorous, w.ionic_strength};
}

Water water_of(const Solution& s, const Constants& k) {
  Water w;
  const Conditional& c = s.constants;
  const double a = s.state.hydrogen, x = s.state.carbonate;
  w.totals = s.totals;
  w.temperature = Temperature::celsius(k.celsius);
  w.ph = -std::log10(a);
  w.ionic_strength = s.state.ionic_strength;
  w.activity_calcium = s.free_calcium * c.gamma_ca;
  w.activity_carbonate = x * c.gamma_co3;
  w.activity_bicarbonate = x * a * c.hco3 * c.gamma_hco3;
  w.co2 = x * a * a * c.co2;
  w.hypochlorous = s.state.hypochlorous;
  w.hypochlorite = w.hypochlorous * c.hypochlorite / a;
  w.hypobromite = s.totals.bromine * c.hypobromite / (a + c.hypobromite);
  w.hypobromous = s.totals.bromine - w.hypobromite;
  w.carbonate_alkalinity_eq = s.carbonate_alkalinity;
  w.cyanurate_alkalinity_eq = s.cyanurate_alkalinity;
  w.borate_alkalinity_eq = s.borate_alkalinity;
  w.log_ksp = k.log_ksp;
  w.henry = k.henry / c.gamma_neutral;
  w.free_carbonate = x;
  w.free_sulfate = s.state.sulfate;
  return w;
}

}  // namespace detail
}  // namespace brimline
