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
  // At constant alkalinity the index never rises faster than the pH, so a step of -SI from below cannot pass
  // the lowest root; a longer, extrapolated one that does brackets it.
  constexpr double kShortest = 0.01, kLongest = 0.25;
  IndexAtPh index(water);
  double ph = detail::kLowestPh, last_ph = ph;
  std::optional<double> at = index(ph);
  if (!at) return std::nullopt;
  if (*at >= 0) return ph;  // saturated as low as the model goes
  double last = *at;
  for (int i = 0; i < 200 && ph < detail::kHighestPh; ++i) {
    last_ph = ph;
    last = *at;
    const double safe = -last;
    ph = std::min(ph + std::max(safe, std::min(kShortest + 0.5 * safe, kLongest)), detail::kHighestPh);
    at = index(ph);
    if (!at) return std::nullopt;
    if (*at >= -1e-10) return *at <= 1e-10 ? ph : root_between(index, last_ph, last, ph, *at);
  }
  return std::nullopt;
}

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
  if (!s) return std::nullopt;
  return CalciteEquilibrium{s->precipitated, -std::log10(s->state.hydrogen)};
}

}  // namespace brimline
