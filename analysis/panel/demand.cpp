// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/demand.h"

#include <algorithm>
#include <cmath>

#include <boost/math/distributions/chi_squared.hpp>

#include "analysis/panel/demand_bottles.h"

namespace brimline {

namespace {

constexpr double kAgree = 0.99;         // chi-square level beyond which the bottles do not agree
constexpr double kPriorFreedom = 10;    // degrees of freedom the method's own sd counts for, as for repeats
constexpr double kLooseDoseSd = 0.03;   // of the dose, where the bottles say that the stock is not as told
constexpr double kLeastExpected = 0.5;  // mg/L Cl2: a residual from which a bottle measures beside others
constexpr double kFastHours = 2;        // readings up to here tell the fast part

bool agree(const DemandFit& fit) {
  if (fit.bottles < 2) return true;
  const boost::math::chi_squared distribution(static_cast<double>(fit.bottles - 1));
  return fit.chi_square <= boost::math::quantile(distribution, kAgree);
}

std::vector<JudgedBottle> that_measure(const std::vector<JudgedBottle>& bottles) {
  std::vector<JudgedBottle> held;
  for (const JudgedBottle& b : bottles)
    if (b.word == DemandWord::measures) held.push_back(b);
  return held;
}

// A bottle with less than a milligram left measures too where stronger ones say that it should: choosing by
// its own reading alone would favour high ones.
void take_in_low_residuals(std::vector<JudgedBottle>& bottles, double net, Method method) {
  for (JudgedBottle& b : bottles) {
    if (b.word != DemandWord::lower_bound || !b.bottle.free_mg_l || *b.bottle.free_mg_l >= kHeldFree)
      continue;
    const double expected = expected_residual(b.bottle, net);
    const double off = std::abs(*b.bottle.free_mg_l - expected);
    const double combined = b.bottle.total_mg_l.value_or(*b.bottle.free_mg_l) - *b.bottle.free_mg_l;
    if (expected >= kLeastExpected && off < 3 * residual_sd(expected, b.bottle, method) &&
        combined < kHeldCombined)
      b.word = DemandWord::measures;
  }
}

Measured used_by(const JudgedBottle& b, const Measured& free_now, Method method) {
  const double end = b.bottle.free_mg_l.value_or(0);
  return {chlorine_used(b.bottle, free_now.value, end),
          std::hypot(free_now.sd, residual_sd(end, b.bottle, method) / b.kept())};
}

// The sd widened or narrowed by the scatter seen, pooled with the method's own.
double pooled(double sd, const DemandFit& fit) {
  const auto freedom = static_cast<double>(fit.bottles - 1);
  return sd * std::sqrt((fit.chi_square + kPriorFreedom) / (freedom + kPriorFreedom));
}

void take_fit(const DemandFit& fit, DemandResult& out) {
  out.demand = Measured{std::max(0.0, fit.demand.value), pooled(fit.demand.sd, fit)};
  out.dose_sd = pooled(fit.net.sd, fit);
}

// The weakest that holds, nearest to the residual wanted, with the error a doubtful stock gives it.
void take_weakest(const JudgedBottle& weakest, const Measured& free_now, Method method, DemandResult& out) {
  const DemandFit fit = fit_demand({&weakest, 1}, free_now, method);
  const double stock = kLooseDoseSd * weakest.bottle.dose_mg_l / weakest.kept();
  out.demand = Measured{std::max(0.0, fit.demand.value), std::hypot(fit.demand.sd, stock)};
  out.dose_sd = std::hypot(fit.net.sd, stock);
}

// A bottle used up, or still combined, beyond what the fit allows.
bool contradicts(const JudgedBottle& b, const Measured& demand, const Measured& free_now, Method method) {
  if (b.word != DemandWord::lower_bound) return false;
  const Measured used = used_by(b, free_now, method);
  const double error = std::hypot(used.sd, demand.sd);
  return used.value > demand.value + std::max(4 * error, 0.1 * demand.value) + kHeldCombined;
}

void find_demand(std::vector<JudgedBottle>& bottles, const Measured& free_now, Method method,
                 DemandResult& out) {
  std::vector<JudgedBottle> held = that_measure(bottles);
  if (held.empty()) return;
  DemandFit fit = fit_demand(held, free_now, method);
  take_in_low_residuals(bottles, fit.net.value, method);
  held = that_measure(bottles);
  fit = fit_demand(held, free_now, method);
  out.bottles_agree = agree(fit);
  if (out.bottles_agree)
    take_fit(fit, out);
  else
    take_weakest(held.front(), free_now, method, out);
  out.contradicted = std::any_of(bottles.begin(), bottles.end(), [&](const JudgedBottle& b) {
    return contradicts(b, *out.demand, free_now, method);
  });
  if (out.contradicted) out.demand.reset();
}

void find_bounds(const std::vector<JudgedBottle>& bottles, const Measured& free_now, Method method,
                 DemandResult& out) {
  out.demand_above = 0;
  for (const JudgedBottle& b : bottles) {
    const Measured reading = used_by(b, free_now, method);
    const double used = reading.value;
    const bool stands = b.bottle.free_mg_l.value_or(0) >= kHeldFree;  // the bound hangs on two readings
    if (b.word == DemandWord::lower_bound)
      out.demand_above = std::max(*out.demand_above, used - (stands ? 3 * reading.sd : 0));
    if (b.word == DemandWord::upper_bound || (out.contradicted && b.word == DemandWord::measures))
      out.demand_below = std::min(out.demand_below.value_or(used), used);
  }
  if (!out.contradicted) return;
  out.demand_above = std::min(*out.demand_above, *out.demand_below);  // which bottle is wrong nobody knows
  out.demand_below.reset();
}

// Readings in between of the bottles that hold. A residual cannot rise: one clearly below the end reading, or
// past the range, was bleached.
std::vector<DemandPoint> readings_in_time(const std::vector<JudgedBottle>& held, double free_now, double end,
                                          Method method) {
  std::vector<DemandPoint> points;
  for (const JudgedBottle& b : held) {
    const double least = *b.bottle.free_mg_l - 3 * residual_sd(*b.bottle.free_mg_l, b.bottle, method);
    for (const DemandLater& later : b.bottle.later) {
      if (!later.free_mg_l || later.hours <= 0 || later.hours == end || *later.free_mg_l < kHeldFree / 2)
        continue;
      if (*later.free_mg_l / b.bottle.dilution > 10 || (later.hours < end && *later.free_mg_l < least))
        continue;
      points.push_back({later.hours,
                        {chlorine_used(b.bottle, free_now, *later.free_mg_l),
                         residual_sd(*later.free_mg_l, b.bottle, method) / b.kept()}});
    }
    points.push_back({end,
                      {chlorine_used(b.bottle, free_now, *b.bottle.free_mg_l),
                       residual_sd(*b.bottle.free_mg_l, b.bottle, method) / b.kept()}});
  }
  return points;
}

void split_fast_and_slow(const std::vector<DemandPoint>& points, DemandResult& out) {
  std::vector<Measured> early;
  double hours = 0;
  for (const DemandPoint& p : points)
    if (p.hours <= kFastHours && p.hours < out.at_hours) hours = std::max(hours, p.hours);
  for (const DemandPoint& p : points)
    if (p.hours == hours && hours > 0) early.push_back(p.used);
  if (early.empty()) return;
  out.fast = combine(early);
  out.fast->value = std::max(0.0, out.fast->value);
  out.fast_hours = hours;
  out.slow = difference(*out.demand, *out.fast);
  out.slow->value = std::max(0.0, out.slow->value);
}

void find_in_time(const std::vector<JudgedBottle>& held, double free_now, Method method, DemandResult& out) {
  const std::vector<DemandPoint> points = readings_in_time(held, free_now, out.at_hours, method);
  split_fast_and_slow(points, out);
  // Chlorine that is met stays met: the curve through noise may end below the day's own demand, the water
  // cannot.
  if (const auto end = demand_at_infinity(points)) out.demand_infinite = std::max(*end, out.demand->value);
  const JudgedBottle& weakest = held.front();
  const double start = weakest.bottle.dose_mg_l + free_now * weakest.kept();
  std::vector<DecayPoint> residuals;
  for (const DemandPoint& p : readings_in_time({weakest}, free_now, out.at_hours, method))
    residuals.push_back({p.hours, {start - p.used.value * weakest.kept(), p.used.sd * weakest.kept()}});
  const std::vector<DecayFit> fits = fit_decays(start, residuals);
  if (!fits.empty()) out.decay = fits.front();
}

}  // namespace

double chlorine_used(const DemandBottle& bottle, double free_now, double free_end) {
  const double kept = 1 - bottle.stock_share;
  return (bottle.dose_mg_l + free_now * kept - free_end) / kept;
}

std::optional<Temperature> stood_at(const DemandTest& test, const Bottle& bottle) {
  return test.temperature ? test.temperature : bottle.sample_temperature;
}

DemandResult judge_demand(const DemandTest& test, const Measured& free_now, double target_residual,
                          std::optional<Temperature> temperature, Method method) {
  DemandResult out;
  out.at_hours = test.hours;
  out.temperature = temperature;
  std::vector<JudgedBottle> bottles = judge_bottles(test, free_now.value, method);
  find_demand(bottles, free_now, method, out);
  for (const JudgedBottle& b : bottles)
    out.bottles.push_back({b.bottle.dose_mg_l, b.word, used_by(b, free_now, method)});
  if (!out.demand) {
    find_bounds(bottles, free_now, method, out);
    return out;
  }
  out.dose = std::max(0.0, out.demand->value + target_residual - free_now.value);
  const std::vector<JudgedBottle> held = that_measure(bottles);
  out.breakpoint_reached = std::any_of(held.begin(), held.end(),
                                       [](const JudgedBottle& b) { return b.bottle.total_mg_l.has_value(); });
  find_in_time(held, free_now.value, method, out);
  return out;
}

}  // namespace brimline
