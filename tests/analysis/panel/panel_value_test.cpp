// SPDX-License-Identifier: GPL-3.0-or-later
// The one value an analyte is given, and what a bottle is due.
#include "analysis/panel/panel.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "analysis/panel/due.h"

namespace brimline {
namespace {

using testing::ElementsAre;

Reading reading(AnalyteId analyte, double value, Method method = Method::photometer, double dilution = 1) {
  Reading r;
  r.analyte = std::move(analyte);
  r.value = value;
  r.method = method;
  r.dilution = dilution;
  return r;
}

Vessel vessel(Sanitizer sanitizer) {
  Vessel v;
  v.sanitizer = sanitizer;
  return v;
}

TEST(Panel, TheMeanOfRepeatsIsUsed) {
  const std::vector<Reading> readings = {reading("ph", 7.5), reading("ph", 7.6)};
  const CheckedPanel panel = unchecked_panel(readings, {});
  EXPECT_NEAR(panel.find("ph")->value, 7.55, 1e-9);
  EXPECT_EQ(panel.find("ph")->used.size(), 2u);
  EXPECT_TRUE(panel.find("ph")->usable());
}

TEST(Panel, AReadingInsideTheRangeReplacesAClippedOne) {
  Reading clipped = reading("free_chlorine", 10);
  clipped.clipped = Clip::above;
  EXPECT_FALSE(unchecked_panel(std::vector{clipped}, {}).find("free_chlorine")->usable());
  const std::vector<Reading> both = {clipped, reading("free_chlorine", 14, Method::photometer, 5)};
  EXPECT_DOUBLE_EQ(*unchecked_panel(both, {}).usable("free_chlorine"), 14);
}

TEST(Panel, ADilutedRepeatProvesBleaching) {
  const std::vector<Reading> readings = {reading("free_chlorine", 0),
                                         reading("free_chlorine", 15, Method::photometer, 5)};
  EXPECT_DOUBLE_EQ(unchecked_panel(readings, {}).find("free_chlorine")->value, 15);
}

TEST(Panel, TheMostExactMethodIsUsed) {
  const std::vector<Reading> readings = {reading("ph", 7.2, Method::strip), reading("ph", 7.5)};
  EXPECT_DOUBLE_EQ(*unchecked_panel(readings, {}).value("ph"), 7.5);
}

// 159.808 g/mol of Br2 over 70.906 g/mol of Cl2: Model Aquatic Health Code 5.7.3 rounds it to 2.25.
TEST(Panel, ChlorineReadsBromineInABromineVessel) {
  const std::vector<Reading> readings = {reading("free_chlorine", 2)};
  const CheckedPanel panel = unchecked_panel(readings, vessel(Sanitizer::bromine));
  EXPECT_NEAR(*panel.value("total_bromine"), 4.508, 0.001);
  EXPECT_EQ(panel.find("free_chlorine"), nullptr);
}

TEST(Panel, CalciumIsTotalLessMagnesium) {
  const std::vector<Reading> readings = {reading("total_hardness", 300), reading("magnesium_hardness", 80)};
  EXPECT_DOUBLE_EQ(*unchecked_panel(readings, {}).value("calcium_hardness"), 220);
}

TEST(Panel, AVerdictMakesAValueUnfit) {
  Bottle bottle;
  bottle.readings = {reading("ph", 11.5, Method::probe), reading("total_alkalinity", 100)};
  const CheckedPanel panel = checked_panel(bottle, vessel(Sanitizer::chlorine));
  EXPECT_TRUE(panel.find("ph")->doubtful());
  EXPECT_FALSE(panel.usable("ph"));
  EXPECT_TRUE(panel.usable("total_alkalinity"));
  EXPECT_FALSE(panel.usable("iron"));
}

TEST(Panel, CombinedChlorineIsTheDifference) {
  const std::vector<Reading> readings = {reading("free_chlorine", 2), reading("total_chlorine", 2.5)};
  const auto combined = unchecked_panel(readings, {}).combined_chlorine();
  ASSERT_TRUE(combined);
  EXPECT_NEAR(combined->value, 0.5, 1e-9);
  EXPECT_GT(combined->sd, reading_sd(readings[0]));
}

Bottle taken(const char* when) {
  Bottle bottle;
  bottle.taken_at = Instant::parse(when);
  bottle.occasion = Occasion::routine;
  return bottle;
}

TEST(Due, TheFirstBottleIsDueTheWholePanel) {
  EXPECT_THAT(panel_due(taken("2026-06-14T08:00:00Z"), vessel(Sanitizer::salt_chlorine)),
              ElementsAre("free_chlorine", "total_chlorine", "ph", "total_alkalinity", "calcium_hardness",
                          "cyanuric_acid", "iron", "copper", "salt"));
  EXPECT_THAT(panel_due(taken("2026-06-14T08:00:00Z"), vessel(Sanitizer::bromine)),
              ElementsAre("total_bromine", "ph", "total_alkalinity", "calcium_hardness", "iron", "copper"));
}

TEST(Due, MonthlyReadingsWaitFourWeeks) {
  Bottle before = taken("2026-06-14T08:00:00Z");
  for (const AnalyteId& analyte : panel_due(before, vessel(Sanitizer::chlorine)))
    before.readings.push_back(reading(analyte, 1));
  const std::vector<Bottle> earlier = {before};
  EXPECT_THAT(panel_due(taken("2026-06-21T08:00:00Z"), vessel(Sanitizer::chlorine), earlier),
              ElementsAre("free_chlorine", "total_chlorine", "ph", "total_alkalinity"));
  EXPECT_EQ(panel_due(taken("2026-07-14T08:00:00Z"), vessel(Sanitizer::chlorine), earlier).size(), 8u);
  Bottle storm = taken("2026-06-21T08:00:00Z");
  storm.occasion = Occasion::after_storm;
  EXPECT_EQ(panel_due(storm, vessel(Sanitizer::chlorine), earlier).size(), 8u);
}

TEST(Due, SignsAskForMore) {
  Bottle before = taken("2026-06-14T08:00:00Z");
  for (const AnalyteId& analyte : panel_due(before, vessel(Sanitizer::bromine)))
    before.readings.push_back(reading(analyte, 1));
  const std::vector<Bottle> earlier = {before};
  Bottle green = taken("2026-06-21T08:00:00Z");
  green.signs = {Sign::green_water, Sign::green_hair};
  EXPECT_THAT(panel_due(green, vessel(Sanitizer::bromine), earlier),
              ElementsAre("total_bromine", "ph", "total_alkalinity", "phosphate", "nitrate", "copper"));
}

TEST(Due, StabilizerIsNeverAskedForWithBromineOrBiguanide) {
  for (const Sanitizer sanitizer : {Sanitizer::bromine, Sanitizer::biguanide})
    for (const Occasion occasion :
         {Occasion::routine, Occasion::opening, Occasion::new_fill, Occasion::trouble}) {
      Bottle bottle = taken("2026-06-14T08:00:00Z");
      bottle.occasion = occasion;
      bottle.signs = {Sign::green_water, Sign::cloudy, Sign::slimy_walls,
                      Sign::scale,       Sign::foam,   Sign::stains};
      for (const AnalyteId& analyte : panel_due(bottle, vessel(sanitizer)))
        EXPECT_NE(analyte, "cyanuric_acid");
    }
}

TEST(Due, FillWaterIsWantedOnceAndWhenTheWaterIsNew) {
  const std::vector<Bottle> earlier = {taken("2026-05-14T08:00:00Z")};
  Bottle bottle = taken("2026-06-14T08:00:00Z");
  EXPECT_TRUE(fill_water_due(bottle));
  EXPECT_FALSE(fill_water_due(bottle, earlier));
  bottle.occasion = Occasion::new_fill;
  EXPECT_TRUE(fill_water_due(bottle, earlier));
  bottle.fill_water = {reading("ph", 7.8)};
  EXPECT_FALSE(fill_water_due(bottle, earlier));
}

}  // namespace
}  // namespace brimline
