// SPDX-License-Identifier: GPL-3.0-or-later
// Lines fitted against published values.
#include "analysis/calibration/line.h"

#include <cmath>
#include <vector>

#include <gtest/gtest.h>

namespace brimline {
namespace {

std::vector<CalibrationPoint> points_of(const std::vector<double>& amounts,
                                        const std::vector<double>& signals) {
  std::vector<CalibrationPoint> out;
  for (size_t i = 0; i < amounts.size(); ++i) out.push_back({amounts[i], signals[i]});
  return out;
}

// NIST Statistical Reference Datasets, linear regression, Norris: 36 points, certified values.
std::vector<CalibrationPoint> norris() {
  return points_of({0.2, 337.4, 118.2, 884.6, 10.1,  226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4,
                    0.6, 775.5, 666.9, 338.0, 447.5, 11.6,  556.0, 228.1, 995.8, 887.6, 120.2, 0.3,
                    0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1,  118.3, 229.2, 669.1, 448.9, 0.5},
                   {0.1, 338.8, 118.1, 888.0, 9.2,   228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3,
                    0.1, 778.1, 668.8, 339.3, 448.9, 10.8,  557.7, 228.3, 998.0, 888.8, 119.6, 0.3,
                    0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2,  117.6, 228.9, 668.4, 449.2, 0.2});
}

void expect_digits(double value, double certified, double digits) {
  EXPECT_LE(std::abs(value / certified - 1), std::pow(10, -digits)) << value << " against " << certified;
}

TEST(Line, NorrisToNineDigits) {
  const auto line = fit_line(norris());
  ASSERT_TRUE(line);
  expect_digits(line->intercept, -0.262323073774029, 9);
  expect_digits(line->slope, 1.00211681802045, 9);
  expect_digits(line->intercept_sd, 0.232818234301152, 9);
  expect_digits(line->slope_sd, 0.429796848199937e-3, 9);
  expect_digits(line->residual_sd, 0.884796396144373, 9);
  expect_digits(line->r_squared(), 0.999993745883712, 9);
  expect_digits(line->regression_squares, 4255954.13232369, 9);
  expect_digits(line->residual_squares, 26.6173985294224, 9);
  expect_digits(line->f_ratio(), 5436385.54079785, 9);
}

// Eurachem/CITAC QUAM:2012, example A5: cadmium by absorbance, five standards three times each; a sample read
// twice at 0.26 mg/L has u = 0.018 mg/L.
TEST(Line, CadmiumOfTheUncertaintyGuide) {
  const auto line = fit_line(
      points_of({.1, .1, .1, .3, .3, .3, .5, .5, .5, .7, .7, .7, .9, .9, .9},
                {.028, .029, .029, .084, .083, .081, .135, .131, .133, .180, .181, .183, .215, .230, .216}));
  ASSERT_TRUE(line);
  EXPECT_NEAR(line->slope, 0.2410, 0.00005);
  EXPECT_NEAR(line->slope_sd, 0.0050, 0.00005);
  EXPECT_NEAR(line->intercept, 0.0087, 0.00005);
  EXPECT_NEAR(line->intercept_sd, 0.0029, 0.00005);
  EXPECT_NEAR(line->residual_sd, 0.005486, 0.0000005);
  EXPECT_NEAR(line->amount_squares, 1.2, 1e-12);
  EXPECT_NEAR(read_back(*line, line->at(0.26), 2).sd, 0.018, 0.0005);
}

// Miller and Miller, Statistics and Chemometrics for Analytical Chemistry, fluorescein (data from memory).
TEST(Line, FluoresceinOfTheTextbook) {
  const auto line = fit_line(points_of({0, 2, 4, 6, 8, 10, 12}, {2.1, 5.0, 9.0, 12.6, 17.3, 21.0, 24.7}));
  ASSERT_TRUE(line);
  EXPECT_NEAR(line->slope, 1.930, 0.0005);
  EXPECT_NEAR(line->intercept, 1.518, 0.0005);
  EXPECT_NEAR(line->residual_sd, 0.4329, 0.0002);
  EXPECT_NEAR(line->slope_sd, 0.0409, 0.00005);
  EXPECT_NEAR(line->method_sd(), 0.224, 0.0005);
  const struct {
    double signal, amount, one, four, half_width;
  } rows[] = {{2.9, 0.72, 0.26, 0.18, 0.68}, {13.5, 6.21, 0.24, 0.14, 0.62}, {23.0, 11.13, 0.26, 0.18, 0.68}};
  for (const auto& row : rows) {
    EXPECT_NEAR(read_back(*line, row.signal).amount, row.amount, 0.005);
    EXPECT_NEAR(read_back(*line, row.signal).sd, row.one, 0.006);
    EXPECT_NEAR(read_back(*line, row.signal, 4).sd, row.four, 0.006);
    EXPECT_NEAR(read_back(*line, row.signal).half_width, row.half_width, 0.006);
  }
}

TEST(Line, ABentCurveIsNotStraight) {
  const std::vector<double> amounts = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
  std::vector<double> straight, bent;
  for (const double x : amounts) {
    const double noise = 0.002 * std::sin(17 * x);
    straight.push_back(0.1 * x + noise);
    bent.push_back(0.1 * x - 0.002 * x * x + noise);
  }
  EXPECT_TRUE(linearity(points_of(amounts, straight))->straight);
  EXPECT_FALSE(linearity(points_of(amounts, bent))->straight);
}

// F(9, 9) at 99 % is 5.35 (tables of the F distribution).
TEST(Line, UnequalSpreadIsSeen) {
  const std::vector<double> narrow = {1, 1.1, .9, 1, 1.1, .9, 1, 1.1, .9, 1};
  std::vector<double> wide, alike;
  for (const double x : narrow) {
    wide.push_back(10 + 4 * (x - 1));
    alike.push_back(10 + 2 * (x - 1));
  }
  const auto unequal = homogeneity(narrow, wide);
  ASSERT_TRUE(unequal);
  EXPECT_NEAR(unequal->critical, 5.35, 0.005);
  EXPECT_NEAR(unequal->test_value, 16, 1e-9);
  EXPECT_FALSE(unequal->homogeneous);
  EXPECT_TRUE(homogeneity(narrow, alike)->homogeneous);
}

TEST(Line, WhatCannotBeFittedIsSaid) {
  using P = std::vector<CalibrationPoint>;
  EXPECT_EQ(fit_line(P{{0, 0}, {1, 1}}).error(), FitFault::too_few);
  EXPECT_EQ(fit_line(P{{1, 0}, {1, 1}, {1, 2}}).error(), FitFault::one_amount);
  EXPECT_EQ(fit_line(P{{0, 0}, {1, NAN}, {2, 2}}).error(), FitFault::not_finite);
  EXPECT_EQ(fit_line(P{{0, 1}, {1, 1}, {2, 1}}).error(), FitFault::flat);
  EXPECT_FALSE(text_of(FitFault::flat).empty());
}

}  // namespace
}  // namespace brimline
