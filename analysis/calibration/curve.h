// SPDX-License-Identifier: GPL-3.0-or-later
// A calibration curve of the first or second degree, and what a signal then says of the amount.
// ISO 8466-1:1990 (straight line) and 8466-2:2001 (parabola), formulas from memory; the error of the curve is
// that of ordinary least squares.
#pragma once

#include <array>
#include <optional>

#include "analysis/calibration/line.h"

namespace brimline {

// signal = sum of coefficient[k] * (amount - amount_mean)^k
struct CalibrationCurve {
  int degree = 1;  // 1 or 2
  size_t points = 0;
  double amount_mean = 0;
  std::array<double, 3> coefficient{};            // about the mean amount
  std::array<std::array<double, 3>, 3> spread{};  // (X'X)^-1, about the mean amount
  double residual_sd = 0;                         // s_y, points - degree - 1 degrees of freedom
  double low = 0, high = 0;                       // weakest and strongest standard: the curve's range

  double at(double amount) const;
  double slope_at(double amount) const;  // sensitivity, signal per amount
  double freedom() const { return static_cast<double>(points) - degree - 1; }
  double method_sd() const;  // s_x0 = s_y / sensitivity at the mean amount, amount's unit
};

// `degree` 1 or 2; a parabola that turns inside its range cannot be read back: FitFault::flat.
[[nodiscard]] tl::expected<CalibrationCurve, FitFault> fit_curve(std::span<const CalibrationPoint> points,
                                                                 int degree);

// The line, or the parabola where Mandel's test (`linearity`) prefers it and it can be read back.
[[nodiscard]] tl::expected<CalibrationCurve, FitFault> fit_best(std::span<const CalibrationPoint> points);

// `signal`: mean of `replicates`. Nothing where the parabola never reaches it. Amounts outside low..high are
// the caller's to refuse.
[[nodiscard]] std::optional<ReadBack> read_back(const CalibrationCurve& curve, double signal,
                                                int replicates = 1, double confidence = 0.95);

}  // namespace brimline
