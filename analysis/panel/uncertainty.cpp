// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/uncertainty.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/students_t.hpp>

namespace brimline {

namespace {

constexpr double kPriorFreedom = 10;    // degrees of freedom the method's own sd counts for
constexpr double kMeasuringOut = 0.01;  // relative sd of one volume of a dilution; counter practice
constexpr double kOutlierAlpha = 0.05;
constexpr double kScatter = 0.998;  // a pair further apart than 3.1 sds of its difference

double sd_by(const MethodKind& method, double value, double dilution) {
  const double undiluted = value / dilution;
  const double sd = dilution * std::hypot(method.sd_constant, method.sd_proportional * undiluted);
  return dilution > 1 ? std::hypot(sd, std::sqrt(2.0) * kMeasuringOut * value) : sd;
}

double weighted_mean(std::span<const Measured> repeats) {
  double sum = 0, weights = 0;
  for (const Measured& m : repeats) {
    sum += m.value / (m.sd * m.sd);
    weights += 1 / (m.sd * m.sd);
  }
  return sum / weights;
}

double chi_square(std::span<const Measured> repeats) {
  const double mean = weighted_mean(repeats);
  double sum = 0;
  for (const Measured& m : repeats) sum += std::pow((m.value - mean) / m.sd, 2);
  return sum;
}

// One value is exact: no weights; the plain mean of the exact ones.
bool any_exact(std::span<const Measured> repeats) {
  return std::any_of(repeats.begin(), repeats.end(), [](const Measured& m) { return m.sd <= 0; });
}

Measured plain_mean(std::span<const Measured> repeats) {
  double sum = 0;
  for (const Measured& m : repeats) sum += m.value;
  const double mean = sum / static_cast<double>(repeats.size());
  double squares = 0;
  for (const Measured& m : repeats) squares += (m.value - mean) * (m.value - mean);
  const double n = static_cast<double>(repeats.size());
  return {mean, n > 1 ? std::sqrt(squares / (n - 1) / n) : 0};
}

// The most extreme reading of those kept, if it is an outlier.
std::optional<size_t> outlier_among(std::span<const Measured> repeats, const std::vector<size_t>& kept) {
  const auto n = static_cast<double>(kept.size());
  double mean = 0, squares = 0;
  for (const size_t i : kept) mean += repeats[i].value / n;
  for (const size_t i : kept) squares += std::pow(repeats[i].value - mean, 2);
  const double s = std::sqrt(squares / (n - 1));
  const auto far = std::max_element(kept.begin(), kept.end(), [&](size_t a, size_t b) {
    return std::abs(repeats[a].value - mean) < std::abs(repeats[b].value - mean);
  });
  const double rest = (mean * n - repeats[*far].value) / (n - 1);
  const double own = repeats[*far].sd * std::sqrt(1 + 1 / (n - 1));
  const bool grubbs = std::abs(repeats[*far].value - mean) > grubbs_critical(int(n), kOutlierAlpha) * s;
  if (grubbs && std::abs(repeats[*far].value - rest) > 3 * own) return *far;
  return std::nullopt;
}

}  // namespace

double reading_sd(const Reading& reading, const AnalyteKind& kind) {
  if (reading.sd) return *reading.sd;
  if (kind.methods.empty()) return 0;
  const double dilution = std::max(1.0, reading.dilution);
  if (!reading.method) return sd_by(kind.methods.front(), reading.value, dilution);
  if (const MethodKind* method = kind.method(*reading.method)) return sd_by(*method, reading.value, dilution);
  double widest = 0;
  for (const MethodKind& method : kind.methods)
    widest = std::max(widest, sd_by(method, reading.value, dilution));
  return widest;
}

double reading_sd(const Reading& reading) {
  const AnalyteKind* kind = find_analyte(reading.analyte);
  return kind ? reading_sd(reading, *kind) : 0;
}

Measured measured(const Reading& reading) {
  return {reading.value, reading_sd(reading)};
}

Measured difference(const Measured& a, const Measured& b) {
  return {a.value - b.value, std::hypot(a.sd, b.sd)};
}

double standard_distance(const Measured& a, const Measured& b) {
  const Measured d = difference(a, b);
  if (d.value == 0) return 0;
  return std::abs(d.value) / d.sd;
}

bool scatter(std::span<const Measured> repeats) {
  if (repeats.size() < 2 || any_exact(repeats)) return false;
  const boost::math::chi_squared distribution(static_cast<double>(repeats.size() - 1));
  return chi_square(repeats) > boost::math::quantile(distribution, kScatter);
}

Measured combine(std::span<const Measured> repeats) {
  if (repeats.empty()) return {};
  if (repeats.size() == 1) return repeats.front();
  if (any_exact(repeats)) return plain_mean(repeats);
  double weights = 0;
  for (const Measured& m : repeats) weights += 1 / (m.sd * m.sd);
  const double freedom = static_cast<double>(repeats.size() - 1);
  const double seen = chi_square(repeats);
  const double pooled = (seen + kPriorFreedom) / (freedom + kPriorFreedom);
  const double factor = scatter(repeats) ? std::max(pooled, seen / freedom) : pooled;
  return {weighted_mean(repeats), std::sqrt(factor / weights)};
}

double grubbs_critical(int n, double alpha) {
  const double k = n;
  const boost::math::students_t distribution(k - 2);
  const double t = boost::math::quantile(boost::math::complement(distribution, alpha / (2 * k)));
  return (k - 1) / std::sqrt(k) * std::sqrt(t * t / (k - 2 + t * t));
}

std::vector<size_t> outliers(std::span<const Measured> repeats) {
  std::vector<size_t> kept(repeats.size()), out;
  std::iota(kept.begin(), kept.end(), size_t{0});
  while (kept.size() >= 3) {
    const auto found = outlier_among(repeats, kept);
    if (!found) break;
    out.push_back(*found);
    std::erase(kept, *found);
  }
  return out;
}

int decimals_for(double sd) {
  if (sd <= 0) return 0;
  return std::clamp(static_cast<int>(-std::floor(std::log10(sd) + 1e-9)), 0, 4);
}

std::string format_measured(const Measured& value) {
  AnalyteKind shape;
  shape.decimals = decimals_for(value.sd);
  return format_value(shape, value.value) + " +/- " + format_value(shape, value.sd);
}

}  // namespace brimline
