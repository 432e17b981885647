// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/calibration/absorbance.h"

#include <cmath>
#include <vector>

#include <gtest/gtest.h>

#include "analysis/calibration/standards.h"

namespace brimline {
namespace {

// HJ/T 345-2007: 1,10-phenanthroline, 510 nm, molar absorptivity 1.1e4 L/(mol cm). Iron weighs 55.845 g/mol.
constexpr double kIronPerMg = 1.1e4 / 55.845e3;

LotCalibration iron() {
  std::vector<CalibrationPoint> points;
  for (const double mg : {0.0, 0.5, 1.0, 2.0, 3.0, 4.0, 5.0}) points.push_back({mg, kIronPerMg * mg});
  return {"F-1", "iron", 510, *fit_curve(points, 1)};
}

TEST(Absorbance, IronAtFiveHundredTen) {
  EXPECT_NEAR(kIronPerMg, 0.197, 0.0005);
  const auto one = amount_of(iron(), {.sample = 0.197});
  ASSERT_TRUE(one);
  EXPECT_NEAR(one->amount.value, 1.0, 0.001);
  EXPECT_FALSE(one->clipped);
}

// Beer's law: the same water in a longer cell, over a coloured blank, or diluted, is the same water.
TEST(Absorbance, PathBlankAndDilutionMakeNoOtherWater) {
  const LotCalibration calibration = iron();
  const double direct = amount_of(calibration, {.sample = 0.394})->amount.value;
  EXPECT_NEAR(direct, 2.0, 0.002);
  EXPECT_NEAR(amount_of(calibration, {.sample = 5 * 0.394, .path_cm = 5})->amount.value, direct, 1e-9);
  EXPECT_NEAR(amount_of(calibration, {.sample = 0.394 + 0.05, .blank = 0.05})->amount.value, direct, 1e-9);
  EXPECT_NEAR(amount_of(calibration, {.sample = 0.394 / 5, .dilution = 5})->amount.value, direct, 1e-9);
}

TEST(Absorbance, OutsideTheStandardsIsClipped) {
  const auto strong = amount_of(iron(), {.sample = 1.5});
  ASSERT_TRUE(strong);
  EXPECT_EQ(strong->clipped, Clip::above);
  EXPECT_NEAR(strong->amount.value, 5.0, 1e-6);
  LotCalibration narrow = iron();
  std::vector<CalibrationPoint> points;
  for (const double mg : {0.5, 1.0, 1.5, 2.0}) points.push_back({mg, kIronPerMg * mg});
  narrow.curve = *fit_curve(points, 1);
  EXPECT_EQ(amount_of(narrow, {.sample = 0.02})->clipped, Clip::below);
}

// Standard Methods 4500-Cl G (from memory): permanganate standards of 0.05 to 4 mg/L colour DPD as chlorine
// does. The absorptivity here is made up; what is checked is that a standard made by the table reads as its
// strength.
TEST(Absorbance, PermanganateSeries) {
  std::vector<CalibrationPoint> points;
  const double stock = chlorine_of_permanganate(891);
  const double noise[] = {.0011, -.0009, .0004, -.0012, .0007};
  int i = 0;
  for (const double millilitres : {1.0, 5.0, 10.0, 20.0, 40.0}) {
    const double mg = diluted(stock, std::vector<MadeUp>{{1, 100}, {millilitres, 100}});
    points.push_back({mg, 0.21 * mg + noise[i++]});
  }
  const LotCalibration dpd{"D-7", "free_chlorine", 515, *fit_best(points)};
  EXPECT_EQ(dpd.curve.degree, 1);
  EXPECT_NEAR(dpd.curve.high, 4.0, 0.005);
  const auto read = amount_of(dpd, {.sample = 0.21 * 1.5});
  ASSERT_TRUE(read);
  EXPECT_NEAR(read->amount.value, 1.5, 2 * read->amount.sd);
  EXPECT_GT(read->amount.sd, 0);
  // Strong water: ISO 7393-2 (scope 0.03 to 5 mg/L) dilutes it; the error grows with it.
  const auto diluted_read = amount_of(dpd, {.sample = 0.21 * 1.5, .dilution = 10});
  EXPECT_NEAR(diluted_read->amount.value, 15, 20 * read->amount.sd);
  EXPECT_GT(diluted_read->amount.sd, 10 * read->amount.sd);
}

TEST(Absorbance, WhatCannotBeReadIsSaid) {
  EXPECT_EQ(amount_of(iron(), {.sample = NAN}).error(), AbsorbanceFault::not_finite);
  EXPECT_EQ(amount_of(iron(), {.sample = 0.1, .path_cm = 0}).error(), AbsorbanceFault::no_path);
  EXPECT_EQ(amount_of(iron(), {.sample = 0.1, .dilution = 0.5}).error(), AbsorbanceFault::no_path);
  EXPECT_EQ(ph_of(phenol_red(), 0, 0.1, 25, 0.001).error(), AbsorbanceFault::unreadable);
  EXPECT_EQ(ph_of(phenol_red(), 0.1, NAN, 25, 0.001).error(), AbsorbanceFault::not_finite);
  EXPECT_FALSE(text_of(AbsorbanceFault::no_path).empty());
}

// Yao & Byrne 2001 (from memory): pK 8.072 at 20 C, 8.034 at 25, 7.997 at 30.
TEST(Absorbance, PhenolRedsConstant) {
  EXPECT_NEAR(phenol_red().pk(20), 8.072, 0.0005);
  EXPECT_NEAR(phenol_red().pk(25), 8.034, 0.0005);
  EXPECT_NEAR(phenol_red().pk(30), 7.997, 0.0005);
}

// The two bands as mass action makes them, of an indicator of any amount in any cell: pH comes back, and the
// amount does not matter.
TEST(Absorbance, PhFromTwoColours) {
  const Indicator& red = phenol_red();
  for (const double ph : {6.9, 7.2, 7.5, 7.8, 8.1})
    for (const double indicator : {0.2, 0.5, 1.0}) {
      const double base = 1 / (1 + std::pow(10, red.pk(25) - ph)), acid = 1 - base;
      // Absorptivities with the acid's at its own band as one.
      const double at_acid = indicator * (acid + red.e3 * base),
                   at_base = indicator * (red.e1 * acid + red.e2 * base);
      const auto read = ph_of(red, at_acid, at_base, 25, 0.002);
      ASSERT_TRUE(read);
      EXPECT_NEAR(read->amount.value, ph, 1e-9);
      // The error by nudging each absorbance (JCGM 100:2008, 5.1.3 note; from memory).
      const double by_acid = ph_of(red, at_acid + 1e-6, at_base, 25, 0)->amount.value - ph;
      const double by_base = ph_of(red, at_acid, at_base + 1e-6, 25, 0)->amount.value - ph;
      EXPECT_NEAR(read->amount.sd, 0.002 * std::hypot(by_acid, by_base) / 1e-6, 1e-5);
    }
}

TEST(Absorbance, PhBeyondTheIndicatorIsClipped) {
  EXPECT_EQ(ph_of(phenol_red(), 0.5, 0.001, 25, 0.002)->clipped, Clip::below);
  EXPECT_EQ(ph_of(phenol_red(), 0.02, 0.6, 25, 0.002)->clipped, Clip::above);
}

}  // namespace
}  // namespace brimline
