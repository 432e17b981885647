// SPDX-License-Identifier: GPL-3.0-or-later
// A year of a vessel: which visits are in it, what stands for a bottle, and which told doses move a reading.
#include <gtest/gtest.h>

#include <cmath>

#include "station/compare/year.h"

namespace brimline {
namespace {

const Instant kUntil = *Instant::parse("2026-06-14T12:00:00-05:00");

Reading reading_of(const char* analyte, double value, double sd) {
  Reading out;
  out.analyte = analyte;
  out.value = value;
  out.sd = sd;
  return out;
}

Visit visit_on(const char* when, std::vector<Reading> readings) {
  Visit out;
  out.id = when;
  out.bottle.taken_at = Instant::parse(when);
  out.bottle.readings = std::move(readings);
  return out;
}

Step adding(double start_h, double alkalinity, double ph) {
  Step out;
  out.start_h = start_h;
  out.after = After{{{"total_alkalinity", alkalinity}, {"ph", ph}}, {}};
  return out;
}

TEST(Year, HoldsTheVisitsOfTheLast365Days) {
  std::vector<Visit> visits{visit_on("2025-06-14T11:59:00-05:00", {reading_of("ph", 7.0, 0.1)}),
                            visit_on("2025-06-14T12:00:00-05:00", {reading_of("ph", 7.2, 0.1)}),
                            visit_on("2026-06-14T17:00:00Z", {reading_of("ph", 7.4, 0.1)}),
                            visit_on("2026-06-14T12:01:00-05:00", {reading_of("ph", 7.6, 0.1)})};
  visits.emplace_back();  // no time
  visits.back().bottle.readings = {reading_of("ph", 7.8, 0.1)};
  const VesselYear year = year_of(visits, kUntil);
  ASSERT_TRUE(year.find("ph"));
  const auto& points = year.find("ph")->points;
  ASSERT_EQ(points.size(), 2u);
  EXPECT_DOUBLE_EQ(points[0].read.value, 7.2);
  EXPECT_DOUBLE_EQ(points[0].at, 0);
  EXPECT_DOUBLE_EQ(points[1].read.value, 7.4);
  EXPECT_DOUBLE_EQ(points[1].at, 1);
  EXPECT_EQ(year.find("free_chlorine"), nullptr);
}

TEST(Year, GivesTheReadingsInThePanelsOrder) {
  const std::vector<Visit> visits{visit_on(
      "2026-01-01T12:00:00Z",
      {reading_of("copper", 0.1, 0.1), reading_of("ph", 7.2, 0.1), reading_of("free_chlorine", 2, 0.1)})};
  const VesselYear year = year_of(visits, kUntil);
  ASSERT_EQ(year.readings.size(), 3u);
  EXPECT_EQ(year.readings[0].analyte, "free_chlorine");
  EXPECT_EQ(year.readings[1].analyte, "ph");
  EXPECT_EQ(year.readings[2].analyte, "copper");
}

// Two readings of equal error: their mean, and an error smaller than either's (JCGM 100:2008, 4.2.3).
TEST(Year, CombinesRepeatsAndLeavesOutThoseAtTheEndOfTheRange) {
  Reading clipped = reading_of("ph", 8.4, 0.1);
  clipped.clipped = Clip::above;
  const VesselYear year = year_of(
      std::vector<Visit>{
          visit_on("2026-01-01T12:00:00Z", {reading_of("ph", 7.3, 0.1), clipped, reading_of("ph", 7.5, 0.1)}),
          visit_on("2026-02-01T12:00:00Z", {clipped})},
      kUntil);
  const auto& points = year.find("ph")->points;
  ASSERT_EQ(points.size(), 2u);
  EXPECT_NEAR(points[0].read.value, 7.4, 1e-9);
  EXPECT_LT(points[0].read.sd, 0.1);
  EXPECT_FALSE(points[0].clipped);
  EXPECT_EQ(points[1].clipped, Clip::above);
  EXPECT_DOUBLE_EQ(points[1].read.value, 8.4);
  EXPECT_DOUBLE_EQ(points[1].read.sd, 0);
}

TEST(Year, MarksToldDosesAndWhatThePlanSaysTheyMove) {
  Visit told =
      visit_on("2026-05-01T12:00:00Z", {reading_of("ph", 7.2, 0.1), reading_of("total_alkalinity", 60, 5)});
  told.home_at = Instant::parse("2026-05-01T18:00:00Z");
  told.plan_as_told = Plan{};
  Step brush = adding(1, 90, 7.2);
  brush.action = Action::brush;
  told.plan_as_told->steps = {adding(0, 90, 7.2), brush, adding(24, 90.2, 7.5)};
  const VesselYear year = year_of(std::vector<Visit>{told}, kUntil);
  ASSERT_EQ(year.doses.size(), 2u);
  EXPECT_EQ(year.doses[0].when.utc, told.home_at->utc);
  EXPECT_EQ(year.doses[0].moves, std::vector<AnalyteId>{"total_alkalinity"});
  EXPECT_EQ(year.doses[1].when.utc, told.home_at->utc + std::chrono::hours(24));
  EXPECT_EQ(year.doses[1].moves, std::vector<AnalyteId>{"ph"});  // 0.2 mg/L is not shown
  told.plan_as_told->home_plan = false;
  EXPECT_TRUE(year_of(std::vector<Visit>{told}, kUntil).doses.empty());
  // A dose for tomorrow is no part of the year that ends today.
  told.plan_as_told->home_plan = true;
  EXPECT_EQ(year_of(std::vector<Visit>{told}, *told.bottle.taken_at).doses.size(), 0u);
}

}  // namespace
}  // namespace brimline
