// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/calibration/curve.h"

#include <algorithm>
#include <cmath>
#include <set>

#include <Eigen/Dense>
#include <boost/math/distributions/students_t.hpp>

namespace brimline {

namespace {

bool all_finite(std::span<const CalibrationPoint> points) {
  return std::all_of(points.begin(), points.end(), [](const CalibrationPoint& p) {
    return std::isfinite(p.amount) && std::isfinite(p.signal);
  });
}

// The parabola's slope keeps its sign from the weakest standard to the strongest.
bool one_way(const CalibrationCurve& c) {
  return c.slope_at(c.low) * c.slope_at(c.high) > 0;
}

// The slope stands out of its own error, at the mean amount.
bool follows(const CalibrationCurve& c) {
  return std::abs(c.coefficient[1]) > c.residual_sd * std::sqrt(c.spread[1][1]);
}

}  // namespace

double CalibrationCurve::at(double amount) const {
  const double d = amount - amount_mean;
  return coefficient[0] + d * (coefficient[1] + d * coefficient[2]);
}

double CalibrationCurve::slope_at(double amount) const {
  return coefficient[1] + 2 * coefficient[2] * (amount - amount_mean);
}

double CalibrationCurve::method_sd() const {
  return residual_sd / std::abs(coefficient[1]);
}

tl::expected<CalibrationCurve, FitFault> fit_curve(std::span<const CalibrationPoint> points, int degree) {
  CalibrationCurve out;
  out.degree = degree == 2 ? 2 : 1;
  const int terms = out.degree + 1;
  if (static_cast<int>(points.size()) < terms + 1) return tl::unexpected(FitFault::too_few);
  if (!all_finite(points)) return tl::unexpected(FitFault::not_finite);
  std::set<double> amounts;
  for (const CalibrationPoint& p : points) amounts.insert(p.amount);
  if (static_cast<int>(amounts.size()) < terms) return tl::unexpected(FitFault::one_amount);
  const auto n = static_cast<Eigen::Index>(points.size());
  out.points = points.size();
  out.low = *amounts.begin();
  out.high = *amounts.rbegin();
  for (const CalibrationPoint& p : points) out.amount_mean += p.amount / static_cast<double>(n);
  Eigen::MatrixXd x(n, terms);
  Eigen::VectorXd y(n);
  for (Eigen::Index i = 0; i < n; ++i) {
    const CalibrationPoint& p = points[static_cast<size_t>(i)];
    y(i) = p.signal;
    for (int k = 0; k < terms; ++k) x(i, k) = std::pow(p.amount - out.amount_mean, k);
  }
  const Eigen::VectorXd b = x.colPivHouseholderQr().solve(y);
  const Eigen::MatrixXd spread = (x.transpose() * x).inverse();
  for (int k = 0; k < terms; ++k) {
    out.coefficient[static_cast<size_t>(k)] = b(k);
    for (int j = 0; j < terms; ++j) out.spread[static_cast<size_t>(k)][static_cast<size_t>(j)] = spread(k, j);
  }
  out.residual_sd = std::sqrt((y - x * b).squaredNorm() / out.freedom());
  if (!follows(out) || !one_way(out)) return tl::unexpected(FitFault::flat);
  return out;
}

tl::expected<CalibrationCurve, FitFault> fit_best(std::span<const CalibrationPoint> points) {
  const auto straight = linearity(points);
  if (straight && !straight->straight)
    if (auto parabola = fit_curve(points, 2)) return parabola;
  return fit_curve(points, 1);
}

std::optional<ReadBack> read_back(const CalibrationCurve& curve, double signal, int replicates,
                                  double confidence) {
  const double c = curve.coefficient[0] - signal, b = curve.coefficient[1], a = curve.coefficient[2];
  const double root = b * b - 4 * a * c;
  if (!(root >= 0)) return std::nullopt;
  // The branch through the mean amount, in the form that also serves a nearly straight one.
  const double d = -2 * c / (b + std::copysign(std::sqrt(root), b));
  ReadBack out;
  out.amount = curve.amount_mean + d;
  const double slope = curve.slope_at(out.amount);
  if (!std::isfinite(d) || slope == 0) return std::nullopt;
  const double powers[] = {1, d, d * d};
  double variance = 1.0 / std::max(1, replicates);
  for (size_t k = 0; k < 3; ++k)
    for (size_t j = 0; j < 3; ++j) variance += powers[k] * curve.spread[k][j] * powers[j];
  out.sd = curve.residual_sd / std::abs(slope) * std::sqrt(variance);
  out.half_width =
      out.sd * boost::math::quantile(boost::math::students_t(curve.freedom()), 0.5 + confidence / 2);
  return out;
}

}  // namespace brimline
