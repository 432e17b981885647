// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/calibration/line.h"

#include <algorithm>
#include <cmath>
#include <set>

#include <Eigen/QR>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/students_t.hpp>

namespace brimline {

namespace {

constexpr double kLinearityLevel = 0.99, kHomogeneityLevel = 0.99;

bool finite(std::span<const CalibrationPoint> points) {
  return std::all_of(points.begin(), points.end(), [](const CalibrationPoint& p) {
    return std::isfinite(p.amount) && std::isfinite(p.signal);
  });
}

size_t amounts_in(std::span<const CalibrationPoint> points) {
  std::set<double> amounts;
  for (const CalibrationPoint& p : points) amounts.insert(p.amount);
  return amounts.size();
}

double mean_amount(std::span<const CalibrationPoint> points) {
  double sum = 0;
  for (const CalibrationPoint& p : points) sum += p.amount;
  return sum / static_cast<double>(points.size());
}

// Powers of the amount about its mean: well conditioned, and the intercept is the mean signal.
Eigen::MatrixXd design(std::span<const CalibrationPoint> points, double mean, int degree) {
  const auto n = static_cast<Eigen::Index>(points.size());
  Eigen::MatrixXd x(n, degree + 1);
  for (Eigen::Index i = 0; i < n; ++i)
    for (int k = 0; k <= degree; ++k) x(i, k) = std::pow(points[static_cast<size_t>(i)].amount - mean, k);
  return x;
}

Eigen::VectorXd signals(std::span<const CalibrationPoint> points) {
  Eigen::VectorXd y(static_cast<Eigen::Index>(points.size()));
  for (size_t i = 0; i < points.size(); ++i) y(static_cast<Eigen::Index>(i)) = points[i].signal;
  return y;
}

double residual_squares(std::span<const CalibrationPoint> points, double mean, int degree) {
  const Eigen::MatrixXd x = design(points, mean, degree);
  const Eigen::VectorXd y = signals(points);
  const Eigen::VectorXd fitted = x * x.colPivHouseholderQr().solve(y);
  return (y - fitted).squaredNorm();
}

double variance(std::span<const double> values) {
  double mean = 0, squares = 0;
  const auto n = static_cast<double>(values.size());
  for (const double v : values) mean += v / n;
  for (const double v : values) squares += (v - mean) * (v - mean);
  return squares / (n - 1);
}

}  // namespace

double CalibrationLine::r_squared() const {
  return regression_squares / (regression_squares + residual_squares);
}
double CalibrationLine::f_ratio() const {
  return regression_squares / (residual_sd * residual_sd);
}
double CalibrationLine::method_sd() const {
  return residual_sd / std::abs(slope);
}
double CalibrationLine::method_sd_percent() const {
  return 100 * method_sd() / amount_mean;
}

std::string_view text_of(FitFault fault) {
  switch (fault) {
    case FitFault::too_few:
      return "too few standards";
    case FitFault::one_amount:
      return "the standards are all of one strength";
    case FitFault::not_finite:
      return "a standard or a signal is not a number";
    case FitFault::flat:
      return "the signal does not follow the standards";
  }
  return {};
}

tl::expected<CalibrationLine, FitFault> fit_line(std::span<const CalibrationPoint> points) {
  if (points.size() < 3) return tl::unexpected(FitFault::too_few);
  if (!finite(points)) return tl::unexpected(FitFault::not_finite);
  if (amounts_in(points) < 2) return tl::unexpected(FitFault::one_amount);
  CalibrationLine line;
  line.points = points.size();
  line.amount_mean = mean_amount(points);
  const Eigen::MatrixXd x = design(points, line.amount_mean, 1);
  const Eigen::VectorXd y = signals(points);
  const Eigen::VectorXd b = x.colPivHouseholderQr().solve(y);
  const auto n = static_cast<double>(points.size());
  line.signal_mean = y.mean();
  line.slope = b(1);
  line.intercept = b(0) - b(1) * line.amount_mean;
  line.amount_squares = x.col(1).squaredNorm();
  line.residual_squares = (y - x * b).squaredNorm();
  line.regression_squares = b(1) * b(1) * line.amount_squares;
  line.residual_sd = std::sqrt(line.residual_squares / (n - 2));
  line.slope_sd = line.residual_sd / std::sqrt(line.amount_squares);
  line.intercept_sd =
      line.residual_sd * std::sqrt(1 / n + line.amount_mean * line.amount_mean / line.amount_squares);
  if (line.slope == 0 || std::abs(line.slope) <= line.slope_sd) return tl::unexpected(FitFault::flat);
  return line;
}

ReadBack read_back(const CalibrationLine& line, double signal, int replicates, double confidence) {
  const auto n = static_cast<double>(line.points);
  ReadBack out;
  out.amount = (signal - line.intercept) / line.slope;
  const double away = out.amount - line.amount_mean;
  out.sd =
      line.method_sd() * std::sqrt(1.0 / std::max(1, replicates) + 1 / n + away * away / line.amount_squares);
  const boost::math::students_t t(n - 2);
  out.half_width = out.sd * boost::math::quantile(t, 0.5 + confidence / 2);
  return out;
}

tl::expected<Linearity, FitFault> linearity(std::span<const CalibrationPoint> points) {
  if (points.size() < 4 || amounts_in(points) < 3) return tl::unexpected(FitFault::too_few);
  if (!finite(points)) return tl::unexpected(FitFault::not_finite);
  const double mean = mean_amount(points);
  const auto freedom = static_cast<double>(points.size() - 3);
  const double straight = residual_squares(points, mean, 1), bent = residual_squares(points, mean, 2);
  Linearity out;
  out.parabola_residual_sd = std::sqrt(bent / freedom);
  const double gain = std::max(0.0, straight - bent);
  out.test_value = bent > 0 ? gain / (bent / freedom) : (gain > 0 ? HUGE_VAL : 0);
  out.critical = boost::math::quantile(boost::math::fisher_f(1, freedom), kLinearityLevel);
  out.straight = out.test_value <= out.critical;
  return out;
}

tl::expected<Homogeneity, FitFault> homogeneity(std::span<const double> low_signals,
                                                std::span<const double> high_signals) {
  if (low_signals.size() < 2 || high_signals.size() < 2) return tl::unexpected(FitFault::too_few);
  const double low = variance(low_signals), high = variance(high_signals);
  if (!std::isfinite(low) || !std::isfinite(high)) return tl::unexpected(FitFault::not_finite);
  if (low <= 0 || high <= 0) return tl::unexpected(FitFault::flat);
  const bool upper = high >= low;
  const auto top = static_cast<double>((upper ? high_signals : low_signals).size() - 1);
  const auto bottom = static_cast<double>((upper ? low_signals : high_signals).size() - 1);
  Homogeneity out;
  out.test_value = upper ? high / low : low / high;
  out.critical = boost::math::quantile(boost::math::fisher_f(top, bottom), kHomogeneityLevel);
  out.homogeneous = out.test_value <= out.critical;
  return out;
}

}  // namespace brimline
