// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/demand_bottles.h"

#include <algorithm>
#include <cmath>

#include <Eigen/Cholesky>

#include "analysis/panel/analyte.h"

namespace brimline {

namespace {

// The stock's strength is checked before and the volumes are pipetted: what is left is small and common to
// all bottles. Counter practice, no source.
constexpr double kDoseRelativeSd = 0.0025;
// mg/L Cl2 that an undiluted dye may show as less, and as nothing; bleaching from 10 (facts of DPD), with
// margin.
constexpr double kMayBleach = 8, kBleachedToNothing = 12;

double range_end(Method method) {
  const AnalyteKind* kind = find_analyte("free_chlorine");
  const MethodKind* row = kind ? kind->method(method) : nullptr;
  return row ? row->range.high : 10;
}

bool over_range(const DemandBottle& b, Method method) {
  return b.clipped == Clip::above || (b.free_mg_l && *b.free_mg_l / b.dilution > range_end(method));
}

bool stands(const DemandBottle& b) {
  return b.free_mg_l && (b.clipped == Clip::above || *b.free_mg_l >= kHeldFree);
}

// Combined chlorine counts as none below three of its sds: one bottle in a thousand is misjudged by chance.
bool combined_is_low(const DemandBottle& b, Method method) {
  if (!b.total_mg_l || !b.free_mg_l) return true;
  const double sd = std::hypot(residual_sd(*b.free_mg_l, b, method), residual_sd(*b.total_mg_l, b, method));
  return *b.total_mg_l - *b.free_mg_l < std::max(kHeldCombined, 3 * sd);
}

DemandWord plain_word(const DemandBottle& b, Method method) {
  if (!b.free_mg_l) return DemandWord::nothing;
  if (over_range(b, method)) return DemandWord::upper_bound;
  return stands(b) && combined_is_low(b, method) ? DemandWord::measures : DemandWord::lower_bound;
}

// Demand less free now, as this bottle alone tells it.
double net_of(const JudgedBottle& b) {
  return (b.bottle.dose_mg_l - *b.bottle.free_mg_l) / b.kept();
}

const JudgedBottle* weakest_that_holds(std::span<const JudgedBottle> bottles) {
  for (const JudgedBottle& b : bottles)
    if (b.word == DemandWord::measures) return &b;
  return nullptr;
}

// Whether the dye may have been bleached: it shows clearly less than the weaker bottles leave, or nothing
// where more than the dye can show may be left. A reading of total chlorine is a colour: that dye was not
// bleached to nothing.
bool may_be_bleached(const DemandBottle& b, const JudgedBottle* holds, double known_net, Method method) {
  if (b.dilution > 1 || over_range(b, method)) return false;
  if (holds) {
    const double expected = expected_residual(b, net_of(*holds));
    const double error = std::max(4 * residual_sd(expected, b, method), 0.1 * expected);
    return expected > kMayBleach && *b.free_mg_l < expected - error;
  }
  const bool coloured = b.total_mg_l.value_or(0) >= kHeldFree;
  return !stands(b) && !coloured && expected_residual(b, known_net) > kBleachedToNothing;
}

// Used up although by the weaker bottle chlorine should stand in it, and not so much as to bleach: then what
// that bottle showed was no free chlorine (the hump before the breakpoint), or the labels are exchanged.
bool refutes(const DemandBottle& b, const JudgedBottle& holds, Method method) {
  const double expected = expected_residual(b, net_of(holds));
  return *b.free_mg_l < kHeldFree / 2 && expected > kHeldFree &&
         expected - *b.free_mg_l > 4 * residual_sd(expected, b, method);
}

void judge_next(std::vector<JudgedBottle>& bottles, size_t i, double& known_net, Method method) {
  JudgedBottle& b = bottles[i];
  b.word = plain_word(b.bottle, method);
  if (b.word == DemandWord::nothing) return;
  const std::span<JudgedBottle> weaker(bottles.data(), i);
  const JudgedBottle* holds = weakest_that_holds(weaker);
  if (may_be_bleached(b.bottle, holds, known_net, method)) {
    b.word = DemandWord::nothing;
    return;
  }
  if (holds && refutes(b.bottle, *holds, method))
    for (JudgedBottle& w : weaker)
      if (w.word == DemandWord::measures) w.word = DemandWord::lower_bound;
  if (b.word == DemandWord::lower_bound) known_net = std::max(known_net, net_of(b));
}

DemandBottle with_end_reading(DemandBottle b, double hours) {
  if (b.free_mg_l) return b;
  for (const DemandLater& later : b.later)
    if (later.hours == hours) {
      b.free_mg_l = later.free_mg_l;
      if (!b.total_mg_l) b.total_mg_l = later.total_mg_l;
    }
  return b;
}

}  // namespace

double residual_sd(double residual, const DemandBottle& bottle, Method method) {
  Reading reading;
  reading.analyte = "free_chlorine";
  reading.method = method;
  reading.value = std::max(0.0, residual);
  reading.dilution = bottle.dilution;
  return reading_sd(reading);
}

double expected_residual(const DemandBottle& bottle, double net) {
  return bottle.dose_mg_l - net * (1 - bottle.stock_share);
}

std::vector<JudgedBottle> judge_bottles(const DemandTest& test, double free_now, Method method) {
  std::vector<JudgedBottle> bottles;
  for (const DemandBottle& b : test.bottles) bottles.push_back({with_end_reading(b, test.hours)});
  std::stable_sort(bottles.begin(), bottles.end(), [](const JudgedBottle& a, const JudgedBottle& b) {
    return a.bottle.dose_mg_l < b.bottle.dose_mg_l;
  });
  double known_net = -std::max(0.0, free_now);
  for (size_t i = 0; i < bottles.size(); ++i) judge_next(bottles, i, known_net, method);
  return bottles;
}

DemandFit fit_demand(std::span<const JudgedBottle> held, const Measured& free_now, Method method) {
  // Unknown: net, free now, and the share by which the stock is stronger than told. Each row over its sd.
  const auto n = static_cast<Eigen::Index>(held.size());
  Eigen::Vector3d x(net_of(held.front()), free_now.value, 0);
  Eigen::Matrix3d covariance;
  double chi_square = 0;
  for (int round = 0; round < 3; ++round) {  // the sds are those of the expected residuals
    Eigen::MatrixXd a = Eigen::MatrixXd::Zero(n + 2, 3);
    Eigen::VectorXd y = Eigen::VectorXd::Zero(n + 2);
    for (Eigen::Index i = 0; i < n; ++i) {
      const JudgedBottle& b = held[static_cast<size_t>(i)];
      const double sd = residual_sd(expected_residual(b.bottle, x(0)), b.bottle, method);
      a.row(i) << -b.kept() / sd, 0, b.bottle.dose_mg_l / sd;
      y(i) = (*b.bottle.free_mg_l - b.bottle.dose_mg_l) / sd;
    }
    const double now_sd = std::max(free_now.sd, 1e-6);
    a(n, 1) = 1 / now_sd;
    y(n) = free_now.value / now_sd;
    a(n + 1, 2) = 1 / kDoseRelativeSd;
    const Eigen::LDLT<Eigen::Matrix3d> normal((a.transpose() * a).eval());
    x = normal.solve(a.transpose() * y);
    covariance = normal.solve(Eigen::Matrix3d::Identity());
    chi_square = (y - a * x).squaredNorm();
  }
  DemandFit fit;
  fit.bottles = held.size();
  fit.chi_square = chi_square;
  fit.net = {x(0), std::sqrt(covariance(0, 0))};
  fit.demand = {x(0) + x(1), std::sqrt(covariance(0, 0) + covariance(1, 1) + 2 * covariance(0, 1))};
  return fit;
}

}  // namespace brimline
