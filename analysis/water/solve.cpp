// SPDX-License-Identifier: GPL-3.0-or-later
// From totals to the solved water: pH unknown.
#include <cmath>

#include "analysis/water/solved.h"

namespace brimline {
namespace detail {
namespace {

// Carbon that alkalinity implies at a pH less the carbon there is; it falls with pH. Short of alkalinity
// means the pH is too high.
double carbon_excess(const Problem& problem, const Constants& k, double ph, Solution& last) {
  Problem at = problem;
  at.given = Given::ph;
  at.hydrogen = std::pow(10, -ph);
  last = solve_equilibrium(at, k, last.found ? &last.state : nullptr);
  if (!last.found && !last.alkalinity_short) last = solve_equilibrium(at, k);
  if (!last.found) return -1;
  return last.totals.carbon - problem.totals.carbon;
}

bool inside(double hydrogen) {
  const double ph = -std::log10(hydrogen);
  return ph >= kLowestSolvedPh && ph <= kHighestSolvedPh;
}

tl::expected<Solution, Refusal> by_bisection(const Problem& problem, const Constants& k) {
  Solution last;
  double low = kLowestSolvedPh, high = kHighestSolvedPh;
  if (carbon_excess(problem, k, low, last) < 0) return tl::unexpected(Refusal::ph_outside);
  if (carbon_excess(problem, k, high, last) > 0) return tl::unexpected(Refusal::ph_outside);
  for (int i = 0; i < 40; ++i) {
    const double middle = 0.5 * (low + high);
    (carbon_excess(problem, k, middle, last) > 0 ? low : high) = middle;
  }
  Problem near = problem;
  near.hydrogen = std::pow(10, -0.5 * (low + high));
  if (carbon_excess(problem, k, low, last); !last.found) return tl::unexpected(Refusal::does_not_balance);
  const Solution polished = solve_equilibrium(near, k, &last.state);
  if (polished.found && inside(polished.state.hydrogen)) return polished;
  return tl::unexpected(Refusal::does_not_balance);
}

}  // namespace

tl::expected<Solution, Refusal> solve_for_ph(const Problem& problem, const Constants& k, const State* start) {
  Solution s = solve_equilibrium(problem, k, start);
  if (!s.found && start) s = solve_equilibrium(problem, k);
  if (s.found && inside(s.state.hydrogen)) return s;
  if (s.found) return tl::unexpected(Refusal::ph_outside);
  if (problem.given != Given::totals) return tl::unexpected(Refusal::does_not_balance);
  return by_bisection(problem, k);
}

}  // namespace detail

namespace {

// Below zero by more than rounding of sums.
bool impossible(const Totals& t) {
  constexpr double kRounding = -1e-12;
  for (const auto member : kTotalMembers)
    if (!std::isfinite(t.*member)) return true;
  return t.carbon < kRounding || t.calcium < kRounding || t.magnesium < kRounding || t.sulfate < kRounding ||
         t.cyanurate < kRounding || t.borate < kRounding || t.chlorine < kRounding || t.bromine < kRounding;
}

tl::expected<Water, Refusal> solved(const Problem& problem, Temperature temperature, const State* start) {
  if (!detail::temperature_inside(temperature)) return tl::unexpected(Refusal::temperature_outside);
  if (impossible(problem.totals)) return tl::unexpected(Refusal::negative_reading);
  if (problem.totals.sodium < -1e-9 || problem.totals.chloride + problem.totals.bromide < -1e-9)
    return tl::unexpected(Refusal::negative_sodium_chloride);
  // Chloride and bromide pair with nothing here: half of them is a floor of the ionic strength.
  if (0.5 * (problem.totals.chloride + problem.totals.bromide) > detail::kSaltiestSolved)
    return tl::unexpected(Refusal::too_salty);
  const Constants& k = constants_at(temperature.celsius());
  const auto s = detail::solve_for_ph(problem, k, start);
  if (!s) return tl::unexpected(s.error());
  if (s->state.ionic_strength > detail::kSaltiestSolved) return tl::unexpected(Refusal::too_salty);
  return detail::water_of(*s, k);
}

}  // namespace

tl::expected<Water, Refusal> solve(const Totals& totals, Temperature temperature, double guess) {
  Problem problem;
  problem.totals = totals;
  problem.hydrogen = std::pow(10, -guess);
  return solved(problem, temperature, nullptr);
}

tl::expected<Water, Refusal> solve(const Totals& totals, const Water& nearby) {
  Problem problem;
  problem.totals = totals;
  const State start = detail::state_of(nearby);
  problem.hydrogen = start.hydrogen;
  return solved(problem, nearby.temperature, start.carbonate > 0 ? &start : nullptr);
}

tl::expected<Water, Refusal> at_temperature(const Water& water, Temperature temperature) {
  if (temperature == water.temperature) return water;
  Water start = water;
  start.temperature = temperature;
  return solve(water.totals, start);
}

tl::expected<Water, Refusal> aerate(const Water& water, double log10_pco2) {
  if (!detail::temperature_inside(water.temperature)) return tl::unexpected(Refusal::temperature_outside);
  Problem problem;
  problem.given = Given::air;
  problem.totals = water.totals;
  problem.co2_activity = constants_at(water.temperature.celsius()).henry * std::pow(10, log10_pco2);
  problem.hydrogen = 1e-8;
  return solved(problem, water.temperature, nullptr);
}

tl::expected<Water, Refusal> mix_waters(const Water& a, const Water& b, double share) {
  return solve(mix(a.totals, b.totals, share), a);
}

}  // namespace brimline
