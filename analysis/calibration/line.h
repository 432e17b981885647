// SPDX-License-Identifier: GPL-3.0-or-later
// A straight calibration line through standards, and what a signal then says of the amount.
// Ordinary least squares as in ISO 8466-1:1990 (formulas from memory); the same line and error as
// Eurachem/CITAC QUAM:2012, example A5.
//
//   const auto line = fit_line(standards);
//   if (line) const ReadBack amount = read_back(*line, 0.071, 2);
#pragma once

#include <cstddef>
#include <span>
#include <string_view>

#include <tl/expected.hpp>

namespace brimline {

// One standard measured once; replicates are points of the same amount.
struct CalibrationPoint {
  double amount = 0;  // of the standard, in the analyte's unit; held to be exact
  double signal = 0;  // what the instrument showed: absorbance, millivolts, counts
};

// signal = intercept + slope * amount
struct CalibrationLine {
  size_t points = 0;
  double intercept = 0, slope = 0;        // signal; signal per amount
  double intercept_sd = 0, slope_sd = 0;  // standard errors of the two
  double residual_sd = 0;                 // s_y, of one signal about the line, points - 2 degrees of freedom
  double regression_squares = 0, residual_squares = 0;  // sums of squares, signal squared
  double amount_mean = 0, signal_mean = 0;
  double amount_squares = 0;  // sum of (amount - amount_mean)^2

  double at(double amount) const { return intercept + slope * amount; }
  double r_squared() const;
  double f_ratio() const;            // regression over residual mean square
  double method_sd() const;          // s_x0 = residual_sd / slope, in the amount's unit
  double method_sd_percent() const;  // V_x0, of the mean amount
};

enum class FitFault {
  too_few,     // fewer than three points
  one_amount,  // all standards the same: no slope
  not_finite,  // a value is not a number
  flat         // the signal does not follow the amount: it cannot be read back
};
std::string_view text_of(FitFault fault);  // "fewer than three standards"

[[nodiscard]] tl::expected<CalibrationLine, FitFault> fit_line(std::span<const CalibrationPoint> points);

// The amount behind a signal.
struct ReadBack {
  double amount = 0;
  double sd = 0;          // standard error of the amount: replicates, the line's own error
  double half_width = 0;  // of the confidence interval, Student's t with points - 2 degrees of freedom
};

// `signal`: mean of `replicates` measurements of the sample. sd = s_y/b sqrt(1/p + 1/n + (x - xbar)^2/S_xx):
// ISO 8466-1:1990; QUAM:2012 equation E3.5 (both from memory).
ReadBack read_back(const CalibrationLine& line, double signal, int replicates = 1, double confidence = 0.95);

// ISO 8466-1:1990, 5.1.3 (from memory): whether a parabola fits better than the line, F(1, N - 3) at 99 %.
struct Linearity {
  double parabola_residual_sd = 0;  // s_y2
  double test_value = 0;            // PG = ((N-2) s_y1^2 - (N-3) s_y2^2) / s_y2^2
  double critical = 0;
  bool straight = true;
};
// Four points of three amounts at least.
[[nodiscard]] tl::expected<Linearity, FitFault> linearity(std::span<const CalibrationPoint> points);

// ISO 8466-1:1990, 5.1.2 (from memory): whether replicates at both ends of the range scatter alike, two-sided
// in the larger over the smaller variance, F at 99 %.
struct Homogeneity {
  double test_value = 0, critical = 0;
  bool homogeneous = true;
};
// Two replicates an end at least, and a spread that is not nought at either.
[[nodiscard]] tl::expected<Homogeneity, FitFault> homogeneity(std::span<const double> low_signals,
                                                              std::span<const double> high_signals);

}  // namespace brimline
