// SPDX-License-Identifier: GPL-3.0-or-later
// A hundred invented households of each kind of month; build/long/households runs a thousand, and its last
// table stands in tests/long/households.txt.
#include <algorithm>
#include <cmath>
#include <iostream>

#include <gtest/gtest.h>

#include "station/compare/compare.h"
#include "tests/station/compare/households_table.h"

namespace brimline::tests {
namespace {

constexpr int kHouseholds = 100;

// 87 to 93 % of a thousand; fewer are allowed their binomial spread.
double spread_of(const HouseholdTally& tally, double share) {
  return 2.6 * std::sqrt(share * (1 - share) / std::max(1, tally.found));
}

void expect_calibrated(const HouseholdTally& tally, const char* what) {
  EXPECT_GE(tally.found, 8) << what;
  EXPECT_GE(tally.share(), 0.87 - spread_of(tally, 0.87)) << what;
  EXPECT_LE(tally.share(), 0.93 + spread_of(tally, 0.93)) << what;
}

TEST(Households, OrdinaryMonths) {
  const HouseholdTable table = compare_households(kHouseholds, true, 15);
  print(std::cout, table, kOrdinaryMonths);
  expect_calibrated(table.replaced, "share replaced");
  expect_calibrated(table.volume, "volume");
  EXPECT_GE(table.right.share(), 0.8);
}

TEST(Households, BareMassBalance) {
  const HouseholdTable table = compare_households(kHouseholds, false, 16);
  print(std::cout, table, kBareMonths);
  expect_calibrated(table.replaced, "share replaced");
  expect_calibrated(table.volume, "volume");
  EXPECT_GE(table.right.share(), 0.8);
}

// The same household seen more often: the volume's error shrinks, on average by every visit.
TEST(Households, TheVolumeNarrowsVisitByVisit) {
  std::mt19937_64 random(17);
  std::vector<double> widths(5);
  int counted = 0;
  for (int i = 0; i < 10; ++i) {
    const SimulatedHousehold h = invent(random, Truth::nothing, true, 6);
    std::vector<double> here;
    for (size_t n = 2; n <= 6; ++n) {
      const auto found = compare(std::span(h.visits).first(n), Words()).volume;
      const double on_file = h.visits[0].vessel.volume->cubic_metres();
      here.push_back((found ? found->sd : 0.1 * on_file) / on_file);
    }
    ++counted;
    for (size_t n = 0; n < here.size(); ++n) widths[n] += here[n];
  }
  std::cout << "relative sd of the volume after 2 to 6 visits:";
  for (const double width : widths) std::cout << " " << width / counted;
  std::cout << "\n";
  for (size_t n = 1; n < widths.size(); ++n) EXPECT_LT(widths[n], widths[n - 1]);
}

}  // namespace
}  // namespace brimline::tests
