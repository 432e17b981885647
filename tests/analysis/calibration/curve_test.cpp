// SPDX-License-Identifier: GPL-3.0-or-later
// Curves of the first and second degree against a certified parabola, the line, and simulation.
#include "analysis/calibration/curve.h"

#include <cmath>
#include <random>
#include <vector>

#include <gtest/gtest.h>

namespace brimline {
namespace {

std::vector<CalibrationPoint> along(double c0, double c1, double c2, double noise, unsigned seed) {
  std::mt19937 random(seed);
  std::normal_distribution<double> gauss(0, noise);
  std::vector<CalibrationPoint> out;
  for (int i = 1; i <= 10; ++i) {
    const double x = 0.4 * i;
    out.push_back({x, c0 + c1 * x + c2 * x * x + (noise > 0 ? gauss(random) : 0)});
  }
  return out;
}

// Eurachem/CITAC QUAM:2012, example A5 (data from memory): u = 0.018 mg/L at 0.26 mg/L, read twice.
std::vector<CalibrationPoint> cadmium() {
  const double x[] = {.1, .1, .1, .3, .3, .3, .5, .5, .5, .7, .7, .7, .9, .9, .9};
  const double y[] = {.028, .029, .029, .084, .083, .081, .135, .131,
                      .133, .180, .181, .183, .215, .230, .216};
  std::vector<CalibrationPoint> out;
  for (size_t i = 0; i < std::size(x); ++i) out.push_back({x[i], y[i]});
  return out;
}

TEST(Curve, FirstDegreeIsTheLine) {
  const auto line = fit_line(cadmium());
  const auto curve = fit_curve(cadmium(), 1);
  ASSERT_TRUE(line && curve);
  EXPECT_NEAR(curve->residual_sd, 0.005486, 0.0000005);
  EXPECT_NEAR(curve->method_sd(), line->method_sd(), 1e-12);
  const auto back = read_back(*curve, curve->at(0.26), 2);
  ASSERT_TRUE(back);
  EXPECT_NEAR(back->amount, 0.26, 1e-12);
  EXPECT_NEAR(back->sd, 0.018, 0.0005);
  EXPECT_NEAR(back->sd, read_back(*line, line->at(0.26), 2).sd, 1e-12);
  EXPECT_NEAR(back->half_width, read_back(*line, line->at(0.26), 2).half_width, 1e-12);
}

// A law: an exact parabola comes back exactly, at every standard and between.
TEST(Curve, ReadBackUndoesTheCurve) {
  const auto curve = fit_curve(along(0.01, 0.2, -0.012, 0, 1), 2);
  ASSERT_TRUE(curve);
  for (double x = 0.4; x <= 4.0; x += 0.1) {
    EXPECT_NEAR(curve->at(x), 0.01 + 0.2 * x - 0.012 * x * x, 1e-12);
    EXPECT_NEAR(read_back(*curve, curve->at(x))->amount, x, 1e-9);
  }
  EXPECT_FALSE(read_back(*curve, 2.0));  // above the parabola's top
}

TEST(Curve, MandelChoosesTheDegree) {
  EXPECT_EQ(fit_best(along(0.01, 0.2, 0, 0.002, 3))->degree, 1);
  EXPECT_EQ(fit_best(along(0.01, 0.2, -0.012, 0.002, 3))->degree, 2);
  // A parabola that turns inside its range cannot be read back.
  EXPECT_EQ(fit_curve(along(0, 0.2, -0.04, 0, 1), 2).error(), FitFault::flat);
}

// The 95 % interval of an amount read through a parabola covers the truth 95 times in a hundred.
TEST(Curve, IntervalCoversTheTruth) {
  std::mt19937 random(77);
  std::normal_distribution<double> gauss(0, 0.004);
  int covered = 0;
  constexpr int kTimes = 4000;
  for (int i = 0; i < kTimes; ++i) {
    const auto curve = fit_curve(along(0.01, 0.2, -0.012, 0.004, 1000u + static_cast<unsigned>(i)), 2);
    ASSERT_TRUE(curve);
    const double truth = 0.8 + 2.4 * (i % 10) / 10.0;
    const auto back = read_back(*curve, 0.01 + 0.2 * truth - 0.012 * truth * truth + gauss(random));
    ASSERT_TRUE(back);
    covered += std::abs(back->amount - truth) <= back->half_width ? 1 : 0;
  }
  EXPECT_NEAR(100.0 * covered / kTimes, 95, 1.5);  // binomial sd 0.34
}

TEST(Curve, WhatCannotBeFittedIsSaid) {
  using P = std::vector<CalibrationPoint>;
  EXPECT_EQ(fit_curve(P{{0, 0}, {1, 1}}, 1).error(), FitFault::too_few);
  EXPECT_EQ(fit_curve(P{{0, 0}, {1, 1}, {2, 2}}, 2).error(), FitFault::too_few);
  EXPECT_EQ(fit_curve(P{{0, 0}, {0, 1}, {1, 1}, {1, 2}}, 2).error(), FitFault::one_amount);
  EXPECT_EQ(fit_curve(P{{0, 0}, {1, NAN}, {2, 2}}, 1).error(), FitFault::not_finite);
}

}  // namespace
}  // namespace brimline
