// SPDX-License-Identifier: GPL-3.0-or-later
// From readings to the solved water: pH known, carbon unknown.
#include <algorithm>
#include <cmath>

#include "analysis/water/solved.h"

namespace brimline {
namespace {

constexpr double kStrengthPerConductivity = 1.6e-5;  // mol/kgw per uS/cm: Langelier 1936; from memory

bool usable(const std::optional<double>& v, bool may_be_negative = false) {
  return !v || (std::isfinite(*v) && (may_be_negative || *v >= 0));
}

bool usable(const WaterReadings& r) {
  return std::isfinite(r.total_alkalinity) && r.total_alkalinity >= 0 && usable(r.calcium_hardness) &&
         usable(r.magnesium_hardness) && usable(r.cyanuric_acid) && usable(r.borate) &&
         usable(r.free_chlorine) && usable(r.total_bromine) && usable(r.bromide) && usable(r.sulfate) &&
         usable(r.background_nacl, true) && usable(r.salt) && usable(r.tds) && usable(r.conductivity);
}

double moles(const std::optional<double>& mg_per_l, double grams_per_mole) {
  return mg_per_l.value_or(0) * 1e-3 / grams_per_mole;
}

// Totals with no background: calcium and magnesium as chlorides, alkalinity, sulfate and bromide with sodium.
Totals totals_without_background(const WaterReadings& r) {
  Totals t;
  t.alkalinity = r.total_alkalinity * 1e-3 / weight::kAlkalinity;
  t.calcium = moles(r.calcium_hardness, weight::kCaCO3);
  t.magnesium = moles(r.magnesium_hardness, weight::kCaCO3);
  t.cyanurate = moles(r.cyanuric_acid, weight::kCyanuricAcid);
  t.borate = moles(r.borate, weight::kBoron);
  t.chlorine = moles(r.free_chlorine, weight::kChlorine);
  t.bromine = moles(r.total_bromine, weight::kBromine);
  t.bromide = moles(r.bromide, weight::kBromide);
  t.sulfate = moles(r.sulfate, weight::kSulfate);
  t.chloride = 2 * (t.calcium + t.magnesium);
  t.sodium = t.alkalinity + 2 * t.sulfate + t.bromide;
  return t;
}

void add_salt(Totals& t, double mol) {
  t.sodium += mol;
  t.chloride += mol;
}

// Least salt, mostly negative, that leaves sodium and chloride at or above zero.
double least_salt(const Totals& t) {
  return -std::min(t.sodium, t.chloride);
}

void set_background(Problem& problem, const WaterReadings& r) {
  Totals& t = problem.totals;
  const BackgroundReading from = background_reading(r);
  if (from == BackgroundReading::background_nacl)
    return add_salt(t, *r.background_nacl * 1e-3 / weight::kSalt);
  if (from == BackgroundReading::salt) return add_salt(t, *r.salt * 1e-3 / weight::kSalt - t.chloride);
  if (from == BackgroundReading::conductivity) {
    problem.background = Background::ionic_strength;
    problem.background_target = *r.conductivity * kStrengthPerConductivity;
    return add_salt(t, std::max(problem.background_target - 3 * t.calcium - t.alkalinity, least_salt(t)));
  }
  problem.background = Background::dissolved_solids;
  const double told = r.tds.value_or(kAssumedSolids) * 1e-6;
  problem.background_target = told - detail::dissolved_solids(t) + t.chloride * weight::kSalt * 1e-3;
  const double carbon = t.alkalinity;  // for a first guess
  const double salt = (problem.background_target - carbon * 61.0168e-3) / (weight::kSalt * 1e-3) - t.chloride;
  add_salt(t, std::max(salt, least_salt(t)));
}

bool salt_negative(const Totals& t) {
  return t.sodium < -1e-9 || t.chloride < -1e-9;
}

}  // namespace

BackgroundReading background_reading(const WaterReadings& r) {
  if (r.background_nacl) return BackgroundReading::background_nacl;
  if (r.salt) return BackgroundReading::salt;
  if (r.tds) return BackgroundReading::tds;
  return r.conductivity ? BackgroundReading::conductivity : BackgroundReading::assumed;
}

tl::expected<Water, Refusal> water_from_readings(const WaterReadings& r) {
  if (!detail::temperature_inside(r.temperature)) return tl::unexpected(Refusal::temperature_outside);
  if (!(r.ph >= detail::kLowestPh && r.ph <= detail::kHighestPh)) return tl::unexpected(Refusal::ph_outside);
  if (!usable(r)) return tl::unexpected(Refusal::negative_reading);
  const Constants& k = constants_at(r.temperature.celsius());
  Problem problem;
  problem.given = Given::ph;
  problem.hydrogen = std::pow(10, -r.ph);
  problem.totals = totals_without_background(r);
  set_background(problem, r);
  if (problem.background == Background::fixed && salt_negative(problem.totals))
    return tl::unexpected(Refusal::negative_sodium_chloride);
  Solution s = solve_equilibrium(problem, k);
  if (background_reading(r) == BackgroundReading::assumed && !s.alkalinity_short &&
      (!s.found || salt_negative(s.totals))) {
    // The assumed solids are less than hardness and alkalinity bring: as little salt as there can be.
    problem.totals = totals_without_background(r);
    add_salt(problem.totals, least_salt(problem.totals));
    problem.background = Background::fixed;
    s = solve_equilibrium(problem, k);
  }
  if (s.alkalinity_short)
    return tl::unexpected(s.cyanurate_alkalinity >= problem.totals.alkalinity && problem.totals.cyanurate > 0
                              ? Refusal::alkalinity_contradicts
                              : Refusal::alkalinity_below_acids);
  if (s.too_salty || s.state.ionic_strength > detail::kSaltiest) return tl::unexpected(Refusal::too_salty);
  if (!s.found) return tl::unexpected(Refusal::does_not_balance);
  if (salt_negative(s.totals)) return tl::unexpected(Refusal::negative_sodium_chloride);
  return detail::water_of(s, k);
}

}  // namespace brimline
