// SPDX-License-Identifier: GPL-3.0-or-later
// The set-up of a demand test: mixtures by mass balance, bleach by its trade percent, doses by what was read.
#include "analysis/panel/demand_setup.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace brimline {
namespace {

Bottle read(std::optional<double> free, std::optional<double> total = {}) {
  Bottle bottle;
  const auto add = [&](const char* analyte, std::optional<double> value) {
    if (!value) return;
    Reading reading;
    reading.analyte = analyte;
    reading.value = *value;
    bottle.readings.push_back(reading);
  };
  add("free_chlorine", free);
  add("total_chlorine", total);
  return bottle;
}

Vessel kept_with(std::optional<Sanitizer> sanitizer) {
  Vessel vessel;
  vessel.sanitizer = sanitizer;
  return vessel;
}

// Our procedure's own case, from the other side: 40 mL of 100 mg/L stock in 100 mL of sample is 28.6 mg/L.
TEST(DemandSetup, StockAndDoseAreTheSameMixture) {
  EXPECT_NEAR(dose_made(40, 100, 100), 28.57, 0.01);
  EXPECT_NEAR(stock_for(28.5714286, 100, 100), 40, 1e-6);
  for (const double dose : {0., 1., 7.5, 40., 80.})
    for (const double sample : {100., 250.})
      for (const double stock : {500., 1000., 2000.})
        EXPECT_NEAR(dose_made(stock_for(dose, sample, stock), sample, stock), dose, 1e-9);
}

// Trade percent is grams of chlorine in 100 mL: 12.5 % trade holds 125 g/L, so that 8 mL hold one gram.
TEST(DemandSetup, BleachByItsTradePercent) {
  EXPECT_DOUBLE_EQ(bleach_for_stock(125), 8);
  EXPECT_DOUBLE_EQ(bleach_for_stock(100), 10);
}

TEST(DemandSetup, TheStrengthCheckIsOneInFiveHundred) {
  EXPECT_DOUBLE_EQ(checked_stock(2.0), kStockAimed);
  EXPECT_TRUE(is_sound_stock(checked_stock(1.6)));
  EXPECT_FALSE(is_sound_stock(checked_stock(0.3)));
  EXPECT_FALSE(is_sound_stock(checked_stock(4.5)));
}

TEST(DemandSetup, DosesRiseFromNothing) {
  for (const DemandReach reach : {DemandReach::little, DemandReach::usual, DemandReach::much}) {
    const auto doses = demand_doses(reach);
    EXPECT_GE(doses.size(), 5u);
    EXPECT_LE(doses.size(), 7u);
    EXPECT_EQ(doses.front(), 0);
    EXPECT_TRUE(std::is_sorted(doses.begin(), doses.end()));
    // the strongest dilution of the pad still shows what the strongest bottle may hold
    for (const double dose : doses) EXPECT_LE(dose, 5 * dilution_to_read(dose, 0)) << dose;
  }
}

TEST(DemandSetup, TheReachFollowsTheReadings) {
  EXPECT_EQ(advise_reach(read(2, 2.1)).reach, DemandReach::little);
  EXPECT_EQ(advise_reach(read(0, 0.1)).reach, DemandReach::usual);
  EXPECT_EQ(advise_reach(read(0, 0.1)).reason, ReachReason::used_up);
  EXPECT_EQ(advise_reach(read(1.5, 4.5)).reason, ReachReason::combined);
  EXPECT_EQ(advise_reach(read(1.5, 4.5)).least, 30);
  EXPECT_EQ(advise_reach(read(1.5, 7.5)).reach, DemandReach::much);
  Bottle green = read(2, 2);
  green.signs = {Sign::green_water};
  EXPECT_EQ(advise_reach(green).reason, ReachReason::algae);
  const DemandReachAdvice again = advise_reach(read(0, 0), 41);
  EXPECT_EQ(again.reach, DemandReach::much);
  EXPECT_EQ(again.reason, ReachReason::known_above);
  // nothing read is not "chlorine holds"
  EXPECT_EQ(advise_reach(Bottle{}).reason, ReachReason::used_up);
}

TEST(DemandSetup, MoreToBeFoundNeverShortensTheLadder) {
  double before = 0;
  for (double combined = 0; combined < 12; combined += 0.5) {
    const double top = demand_doses(advise_reach(read(1, 1 + combined)).reach).back();
    EXPECT_GE(top, before);
    before = top;
  }
}

TEST(DemandSetup, ATestIsWantedWhereChlorineIsUsedUpOrCombinedStays) {
  const Vessel chlorine = kept_with(Sanitizer::chlorine);
  EXPECT_EQ(demand_sign(read(0), chlorine, {}), DemandSign::used_up);
  EXPECT_EQ(demand_sign(read(2, 2.1), chlorine, {}), std::nullopt);
  EXPECT_EQ(demand_sign(read(2, 3), chlorine, {}), std::nullopt);  // its first time
  const std::vector<Bottle> before = {read(1, 2)};
  EXPECT_EQ(demand_sign(read(2, 3), chlorine, before), DemandSign::combined_stays);
  EXPECT_EQ(demand_sign(Bottle{}, chlorine, {}), std::nullopt);
}

TEST(DemandSetup, NeverChlorineWhereSomethingElseKeepsTheWater) {
  for (const auto sanitizer :
       {std::optional(Sanitizer::bromine), std::optional(Sanitizer::biguanide), std::optional<Sanitizer>()}) {
    EXPECT_FALSE(may_test_demand(kept_with(sanitizer)));
    EXPECT_EQ(demand_sign(read(0), kept_with(sanitizer), {}), std::nullopt);
  }
  Vessel changed = kept_with(Sanitizer::chlorine);
  changed.previous_sanitizer = Sanitizer::biguanide;
  EXPECT_FALSE(may_test_demand(changed));
}

}  // namespace
}  // namespace brimline
