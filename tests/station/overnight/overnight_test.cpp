// SPDX-License-Identifier: GPL-3.0-or-later
// The overnight test as a value: what is poured, what is waited for, what counts, and the demand in the end.
#include "station/overnight/overnight_test.h"

#include <cmath>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "analysis/panel/demand.h"
#include "station/overnight/overnight_json.h"

namespace brimline {
namespace {

Instant at(double hours) {
  return {Instant::parse("2026-06-14T10:20:00-05:00")->utc + std::chrono::seconds(std::lround(hours * 3600)),
          std::chrono::minutes(-300)};
}

OvernightTest ready_to_start(double check = 2.0) {
  OvernightTest test;
  test.visit = "V-1";
  test.stage = OvernightStage::pour;
  test.check_mg_l = check;
  return test;
}

OvernightTest running(double check = 2.0) {
  OvernightTest test = ready_to_start(check);
  start(test, at(0));
  return test;
}

void read(OvernightTest& test, double hours, int bottle, const char* analyte, double value,
          double dilution = 1, std::optional<Clip> clipped = {}) {
  test.readings.push_back(
      {at(hours), bottle, due_for(test, at(hours)), analyte, value, dilution, clipped, {}, false});
}

// Every bottle of water that uses up `demand`, read at `hours`.
void read_all(OvernightTest& test, double hours, double demand) {
  const double stock = stock_strength(test);
  for (int b = 0; b < static_cast<int>(test.bottles.size()); ++b) {
    const double ml = test.bottles[static_cast<size_t>(b)].stock_ml;
    const double chlorine_mg = stock * ml / 1000 - demand * test.sample_ml / 1000;
    const double left = std::max(0.0, chlorine_mg * 1000 / (test.sample_ml + ml));
    read(test, hours, b, "free_chlorine", left, left > 5 ? 10 : 1);
    read(test, hours, b, "total_chlorine", left + 0.1, left > 5 ? 10 : 1);
  }
}

TEST(Overnight, StartsOnlyWithASoundStock) {
  OvernightTest test = ready_to_start();
  test.check_mg_l.reset();
  start(test, at(0));
  EXPECT_FALSE(test.started_at);
  test.check_mg_l = 0.4;  // 200 mg/L: spent bleach
  EXPECT_FALSE(may_start(test));
  test.check_mg_l = 1.7;
  start(test, at(0));
  EXPECT_EQ(test.started_at, at(0));
  EXPECT_EQ(test.stage, OvernightStage::running);
}

// A stock weaker than aimed at is poured in larger amounts: the doses stay those of the labels.
TEST(Overnight, DosesAreThoseOfTheStockAsChecked) {
  for (const double check : {1.1, 1.62, 2.0, 3.5}) {
    const OvernightTest test = running(check);
    const DemandTest out = demand_test_of(test);
    const auto doses = demand_doses(test.reach);
    ASSERT_EQ(out.bottles.size(), doses.size());
    for (size_t i = 0; i < doses.size(); ++i) {
      const double step = doses[i] < 9 ? 0.005 : 0.05;  // mL: half of what a syringe shows
      EXPECT_NEAR(out.bottles[i].dose_mg_l, doses[i], step * check * 500 / test.sample_ml + 1e-9) << check;
      EXPECT_NEAR(out.bottles[i].stock_share * check * 500, out.bottles[i].dose_mg_l, 1e-9);
    }
  }
}

TEST(Overnight, WaitsForTheHourThenForTheDay) {
  OvernightTest test = ready_to_start();
  EXPECT_EQ(waits_for(test, at(0)), std::nullopt);
  start(test, at(0));
  EXPECT_EQ(waits_for(test, at(0.5)), OvernightDue::hour);
  EXPECT_EQ(hours_between(*test.started_at, due_at(*test.started_at, OvernightDue::day)), 24);
  EXPECT_EQ(waits_for(test, at(13)), OvernightDue::day);  // the hour was missed
  read_all(test, 1.05, 4);
  EXPECT_EQ(waits_for(test, at(1.1)), OvernightDue::day);
  read_all(test, 24.2, 8);
  EXPECT_EQ(waits_for(test, at(25)), std::nullopt);
}

TEST(Overnight, TheDemandComesBack) {
  for (const double demand : {1.0, 8.0, 25.0})
    for (const double check : {1.4, 2.0}) {
      OvernightTest test = running(check);
      read_all(test, 1, demand / 2);
      read_all(test, 24.5, demand);
      const DemandTest out = demand_test_of(test);
      EXPECT_EQ(out.hours, 24.5);
      const DemandResult result = judge_demand(out, {0, 0.05}, 3);
      ASSERT_TRUE(result.enough()) << demand;
      EXPECT_NEAR(result.demand->value, demand, 1e-6);
      EXPECT_NEAR(*result.dose, demand + 3, 1e-6);
      EXPECT_EQ(out.bottles.back().later.front().hours, 1);
    }
}

TEST(Overnight, TheLastOfAKindCountsAndMayBeTakenBack) {
  OvernightTest test = running();
  EXPECT_FALSE(withdraw_last(test));
  read(test, 24, 2, "free_chlorine", 10, 1, Clip::above);
  read(test, 24.1, 2, "free_chlorine", 2.5, 5);
  EXPECT_EQ(standing(test, 2, OvernightDue::day, "free_chlorine")->value, 2.5);
  EXPECT_FALSE(demand_test_of(test).bottles[2].clipped);
  EXPECT_TRUE(withdraw_last(test));
  EXPECT_EQ(standing(test, 2, OvernightDue::day, "free_chlorine")->value, 10);
  EXPECT_EQ(demand_test_of(test).bottles[2].clipped, Clip::above);
  EXPECT_EQ(test.readings.size(), 2u);  // nothing is lost
}

TEST(Overnight, AnOverRangeTotalProvesCombinedOrNothing) {
  OvernightTest test = running();
  read(test, 24, 3, "free_chlorine", 4.8);
  read(test, 24, 3, "total_chlorine", 5, 1, Clip::above);
  EXPECT_FALSE(demand_test_of(test).bottles[3].total_mg_l);
  read(test, 24, 3, "free_chlorine", 1);
  EXPECT_EQ(demand_test_of(test).bottles[3].total_mg_l, 5);
}

TEST(Overnight, ABottleWithNothingLeftNeedsNoTotal) {
  OvernightTest test = running();
  for (int b = 0; b < 7; ++b) read(test, 24, b, "free_chlorine", 0);
  EXPECT_TRUE(complete(test, OvernightDue::day));
  read(test, 24, 6, "free_chlorine", 3);
  EXPECT_FALSE(complete(test, OvernightDue::day));
}

TEST(Overnight, ItsJsonIsStrict) {
  OvernightTest test = running(1.93);
  test.bleach = Bleach{"liquid_chlorine_125", 125};
  read_all(test, 1, 3);
  withdraw_last(test);
  const std::string text = overnight_to_json(test).dump();
  EXPECT_EQ(read_overnight(text, "x").value(), test);
  auto broken = overnight_to_json(test);
  broken["readings"][0]["analyte"] = "ph";
  EXPECT_FALSE(read_overnight(broken.dump(), "x"));
  broken = overnight_to_json(test);
  broken["extra"] = 1;
  EXPECT_FALSE(read_overnight(broken.dump(), "x"));
  broken = overnight_to_json(test);
  broken["readings"][0].erase("at");
  EXPECT_FALSE(read_overnight(broken.dump(), "x"));
}

}  // namespace
}  // namespace brimline
