// SPDX-License-Identifier: GPL-3.0-or-later
// Each check fires on the fault it is for and none asks for more than a note on a sound panel.
#include <algorithm>
#include <set>

#include <gtest/gtest.h>

#include "tests/analysis/panel/check_cases.h"

namespace brimline {
namespace {

class CheckFires : public testing::TestWithParam<Fires> {};

TEST_P(CheckFires, OnItsFaultAndNotOnSoundWater) {
  const auto has = [&](const std::vector<Check>& checks) {
    return std::find_if(checks.begin(), checks.end(), [&](const Check& c) { return c.id == GetParam().id; });
  };
  Case c = sound();
  const auto before = c.run();
  EXPECT_EQ(has(before), before.end());
  GetParam().fault(c);
  const auto after = c.run();
  const auto found = has(after);
  ASSERT_NE(found, after.end());
  EXPECT_EQ(found->verdict, GetParam().verdict);
  EXPECT_GT(found->text().size(), 30u);
  EXPECT_EQ(found->text().find("%1"), std::string::npos);
}

INSTANTIATE_TEST_SUITE_P(Every, CheckFires, testing::ValuesIn(fires()),
                         [](const auto& row) { return std::string(row.param.id); });

TEST(Check, EveryCheckHasACase) {
  std::set<std::string_view> cases;
  for (const Fires& row : fires()) cases.insert(row.id);
  for (const std::string_view id : check_ids()) EXPECT_TRUE(cases.contains(id)) << id;
  EXPECT_EQ(check_ids().size(), cases.size());
}

TEST(Check, ASoundPanelIsSilent) {
  Case c = sound();
  lot(c);
  checked(c, "2026-06-01T08:00:00Z", true);
  for (const Check& check : c.run()) ADD_FAILURE() << check.id << ": " << check.text();
}

std::vector<AnalyteId> named_by(const std::vector<Check>& checks, std::string_view id) {
  for (const Check& check : checks)
    if (check.id == id) return check.analytes;
  return {};
}

// Only what was read with the lot, and what the failed channel shows.
TEST(Check, SuppliesNameTheReadingsThatRestOnThem) {
  Case c = sound();
  lot(c).beside_chlorine = true;
  EXPECT_EQ(named_by(c.run(), "reagent_beside_chlorine"), std::vector<AnalyteId>{"free_chlorine"});
  checked(c, "2026-06-10T08:00:00Z", true);
  c.supplies.checks.push_back({"photometer 1", "copper", *Instant::parse("2026-06-11T08:00:00Z"), false});
  EXPECT_EQ(named_by(c.run(), "instrument_check_failed"), std::vector<AnalyteId>{"copper"});
  c.supplies.checks.push_back({"photometer 1", "copper", *Instant::parse("2026-06-12T08:00:00Z"), true});
  EXPECT_TRUE(named_by(c.run(), "instrument_check_failed").empty());  // the later one counts
}

// At an inlet the fresh chlorine lies; hardness and metals are the vessel's own. Common practice, no source.
TEST(Check, AWrongPlaceSpoilsOnlyWhatDiffersThere) {
  Case c = sound();
  c.bottle.sampled_at = SampledAt::elbow_deep;
  EXPECT_TRUE(named_by(c.run(), "wrong_place").empty());
  c.bottle.sampled_at = SampledAt::inlet;
  const auto inlet = named_by(c.run(), "wrong_place");
  EXPECT_EQ(inlet, (std::vector<AnalyteId>{"free_chlorine", "ph", "total_chlorine"}));
  c.bottle.sampled_at = SampledAt::skimmer;
  const auto skimmer = named_by(c.run(), "wrong_place");
  EXPECT_TRUE(std::includes(skimmer.begin(), skimmer.end(), inlet.begin(), inlet.end()));
  EXPECT_EQ(std::count(skimmer.begin(), skimmer.end(), "cyanuric_acid"), 1);
  EXPECT_EQ(std::count(skimmer.begin(), skimmer.end(), "calcium_hardness"), 0);
}

// Treatment facts: free chlorine over 10 mg/L counts as out of range, whatever the method not told.
TEST(Check, MuchChlorineOfNoToldMethodIsOutOfRange) {
  Case c = sound();
  c.set("free_chlorine", 12, std::nullopt);
  EXPECT_FALSE(named_by(c.run(), "over_range").empty());
  c.set("free_chlorine", 12, Method::drop_titration);  // FAS-DPD is made for it
  EXPECT_TRUE(named_by(c.run(), "over_range").empty());
}

// The dose of a demand test, demand + target - now, does not depend on what the sample held.
TEST(Check, AFoundDemandNeedsNoRepeatForBleaching) {
  Case c = sound();
  c.set("free_chlorine", 0);
  c.set("total_chlorine", 0.2);
  c.add("sodium_hypochlorite", 1.0);
  EXPECT_FALSE(named_by(c.run(), "bleached").empty());
  DemandBottle held;
  held.dose_mg_l = 10;
  held.free_mg_l = 3;
  held.total_mg_l = 3.1;
  c.bottle.demand_test = DemandTest{24, {held}, std::nullopt};
  EXPECT_TRUE(named_by(c.run(), "bleached").empty());
}

TEST(Check, TheArithmeticOfADilutionIsSpeltOut) {
  Case c = sound();
  c.drop("free_chlorine");
  c.bottle.readings.push_back(clipped("free_chlorine", 10, Clip::above));
  for (const Check& check : c.run()) {
    if (check.id != "clipped_above") continue;
    EXPECT_NE(check.text().find("4 parts"), std::string::npos);
    EXPECT_NE(check.text().find("multiply by 5"), std::string::npos);
    EXPECT_NE(check.text().find("a reading of 2 then means 10"), std::string::npos);
  }
}

}  // namespace
}  // namespace brimline
