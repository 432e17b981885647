// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/water/saturation.h"

#include <algorithm>
#include <cmath>

#include "analysis/water/solved.h"

namespace brimline {
namespace {

// The index at a pH, all totals but carbon held.
class IndexAtPh {
 public:
  explicit IndexAtPh(const Water& water)
      : constants_(constants_at(water.temperature.celsius())), state_(detail::state_of(water)) {
    problem_.given = Given::ph;
    problem_.totals = water.totals;
    start_ = &state_;
  }

  // None where alkalinity leaves nothing for carbonate.
  std::optional<double> operator()(double ph) {
    problem_.hydrogen = std::pow(10, -ph);
    state_.carbonate *= state_.hydrogen / problem_.hydrogen;  // bicarbonate hardly moves
    Solution s = solve_equilibrium(problem_, constants_, start_);
    if (!s.found && start_) s = solve_equilibrium(problem_, constants_);
    start_ = s.found ? &state_ : nullptr;
    if (!s.found) return std::nullopt;
    state_ = s.state;
    const Conditional& c = s.constants;
    return std::log10(s.free_calcium * c.gamma_ca * s.state.carbonate * c.gamma_co3) - constants_.log_ksp;
  }

 private:
  const Constants constants_;
  Problem problem_;
  State state_;
  const State* start_ = nullptr;
};

// Root between a pH below saturation and one above it: regula falsi with the Illinois step.
double root_between(IndexAtPh& index, double low, double at_low, double high, double at_high) {
  double root = high;
  for (int i = 0; i < 60 && high - low > 1e-9; ++i) {
    root = low - at_low * (high - low) / (at_high - at_low);
    const auto at = index(root);
    if (!at || std::abs(*at) < 1e-10) break;
    if (*at > 0) {
      high = root;
      at_high = *at;
      at_low *= 0.5;
    } else {
      low = root;
      at_low = *at;
      at_high *= 0.5;
    }
  }
  return root;
}

}  // namespace

std::optional<double> saturation_ph(const Water& water) {
  if (!(water.totals.calcium > 0)) return std::nullopt;
  // At constant alkalinity the index rises no faster than the pH, so from below a step of -SI cannot pass the
  // lowest root. Nor does a secant's, where the curve bends down as it does below the root; a step that
  // passes it all the same has bracketed it.
  constexpr double kClose = 1e-10, kShortest = 0.02;
  IndexAtPh index(water);
  double ph = detail::kLowestPh, slope = 1;
  std::optional<double> at = index(ph);
  if (!at) return std::nullopt;
  if (*at >= 0) return ph;  // saturated as low as the model goes
  for (int i = 0; i < 200 && ph < detail::kHighestPh; ++i) {
    const double last = *at, last_ph = ph, safe = -last;
    const double step = slope > 0.02 ? std::clamp(safe / slope, safe, std::max(3 * safe, kShortest))
                                     : std::max(safe, kShortest);
    ph = std::min(ph + step, detail::kHighestPh);
    at = index(ph);
    if (!at) return std::nullopt;
    if (std::abs(*at) <= kClose) return ph;
    if (*at > 0) return root_between(index, last_ph, last, ph, *at);
    slope = (*at - last) / (ph - last_ph);
  }
  return std::nullopt;
}

namespace {

// Index of a water less `mol` of calcite; falls as more is taken. None where that water cannot be.
std::optional<double> index_without(const Water& water, double mol, double& ph) {
  const auto left = solve(water.totals - Totals{.alkalinity = 2, .carbon = 1, .calcium = 1} * mol, water);
  if (!left) return std::nullopt;
  ph = left->ph;
  return left->si_calcite();
}

// Slow and sure, for the few waters where Newton does not settle.
std::optional<CalciteEquilibrium> by_bisection(const Water& water, double si) {
  constexpr double kMostDissolved = 0.1;  // mol/kgw
  double low = si > 0 ? 0 : -kMostDissolved;
  double high = si > 0 ? std::min(water.totals.calcium, water.totals.carbon) : 0;
  double ph = 0;
  for (int i = 0; i < 60; ++i) {
    const double middle = 0.5 * (low + high);
    const auto at = index_without(water, middle, ph);
    // What cannot be lies beyond the root, on the side of the outer end.
    const bool too_little_taken = at ? *at > 0 : si <= 0;
    (too_little_taken ? low : high) = middle;
  }
  const double root = 0.5 * (low + high);
  const auto at = index_without(water, root, ph);
  if (!at || std::abs(*at) > 1e-6) return std::nullopt;
  return CalciteEquilibrium{root, ph};
}

}  // namespace

std::optional<CalciteEquilibrium> calcite_equilibrium(const Water& water) {
  const auto si = water.si_calcite();
  const Constants& k = constants_at(water.temperature.celsius());
  Problem problem;
  problem.given = Given::calcite;
  problem.totals = water.totals;
  // A start with calcium and bicarbonate as they are and carbonate at saturation.
  State start = detail::state_of(water);
  const double shift = std::pow(10, -std::clamp(si.value_or(0), -3.0, 3.0));
  start.carbonate *= shift;
  start.hydrogen /= shift;
  problem.hydrogen = start.hydrogen;
  const auto s = detail::solve_for_ph(problem, k, start.carbonate > 0 ? &start : nullptr);
  if (!s) return by_bisection(water, si.value_or(-1));
  return CalciteEquilibrium{s->precipitated, -std::log10(s->state.hydrogen)};
}

}  // namespace brimline
