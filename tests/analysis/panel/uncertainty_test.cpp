// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/uncertainty.h"

#include <cmath>

#include <gtest/gtest.h>

namespace brimline {
namespace {

Reading reading(AnalyteId analyte, double value, std::optional<Method> method = Method::photometer) {
  Reading r;
  r.analyte = std::move(analyte);
  r.value = value;
  r.method = method;
  return r;
}

// ISO 5725-2:1994, table 5 (from memory): upper critical values of Grubbs' test, one outlier.
TEST(Uncertainty, GrubbsCriticalValuesAreThePublished) {
  const struct {
    int n;
    double five, one;
  } rows[] = {{3, 1.155, 1.155}, {4, 1.481, 1.496}, {5, 1.715, 1.764}, {6, 1.887, 1.973},
              {7, 2.020, 2.139}, {8, 2.126, 2.274}, {9, 2.215, 2.387}, {10, 2.290, 2.482}};
  for (const auto& row : rows) {
    EXPECT_NEAR(grubbs_critical(row.n, 0.05), row.five, 0.0021) << row.n;
    EXPECT_NEAR(grubbs_critical(row.n, 0.01), row.one, 0.0011) << row.n;
  }
}

TEST(Uncertainty, TheToldErrorWins) {
  Reading r = reading("ph", 7.9);
  r.sd = 0.1;
  EXPECT_DOUBLE_EQ(reading_sd(r), 0.1);
  EXPECT_EQ(format_measured(measured(r)), "7.9 +/- 0.1");
}

TEST(Uncertainty, AStripIsWiderThanAPhotometer) {
  for (const AnalyteKind& kind : analyte_kinds())
    if (const MethodKind* strip = kind.method(Method::strip); strip && kind.method(Method::photometer)) {
      const double value = (kind.believable.low + strip->range.high) / 2;
      EXPECT_GT(reading_sd(reading(kind.id, value, Method::strip)), reading_sd(reading(kind.id, value)))
          << kind.id;
    }
}

// The error of a diluted reading is the undiluted reading's times the factor, and a little more.
TEST(Uncertainty, DilutionWidensTheError) {
  Reading diluted = reading("free_chlorine", 10);
  diluted.dilution = 5;
  const double undiluted = reading_sd(reading("free_chlorine", 2));
  EXPECT_GE(reading_sd(diluted), 5 * undiluted);
  EXPECT_LT(reading_sd(diluted), 5.5 * undiluted);
}

// JCGM 100:2008, 4.2.3 (from memory): the mean of n equal repeats is sqrt(n) as exact.
TEST(Uncertainty, RepeatsNarrowTheMean) {
  const double d = 0.05;
  const std::vector<Measured> repeats = {{7.5 - d, d}, {7.5, d}, {7.5 + d, d}};
  const Measured mean = combine(repeats);
  EXPECT_NEAR(mean.value, 7.5, 1e-12);
  EXPECT_NEAR(mean.sd, d / std::sqrt(3.0), 0.1 * d);
}

TEST(Uncertainty, ScatterBeyondTheMethodWidensTheMean) {
  const std::vector<Measured> repeats = {{7.2, 0.05}, {7.8, 0.05}};
  EXPECT_TRUE(scatter(repeats));
  EXPECT_NEAR(combine(repeats).sd, 0.3, 1e-9);  // half the distance: the experimental sd of a mean of two
  EXPECT_FALSE(scatter(std::vector<Measured>{{7.5, 0.05}, {7.55, 0.05}}));
}

TEST(Uncertainty, OneOutlierOfThreeIsFound) {
  const std::vector<Measured> repeats = {{7.5, 0.05}, {8.2, 0.05}, {7.51, 0.05}};
  EXPECT_EQ(outliers(repeats), std::vector<size_t>{1});
  // two equal readings and one a step away are no outlier, whatever Grubbs says of a spread of nought
  EXPECT_TRUE(outliers(std::vector<Measured>{{7.5, 0.05}, {7.5, 0.05}, {7.51, 0.05}}).empty());
}

TEST(Uncertainty, DecimalsFollowTheError) {
  EXPECT_EQ(format_measured({7.9, 0.05}), "7.90 +/- 0.05");
  EXPECT_EQ(format_measured({103.2, 12.3}), "103 +/- 12");
}

}  // namespace
}  // namespace brimline
