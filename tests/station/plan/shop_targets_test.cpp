// SPDX-License-Identifier: GPL-3.0-or-later
// A shop's own targets: read as strictly as those built in, on top of one of them.
#include "station/plan/shop_targets.h"

#include <gtest/gtest.h>

#include <fstream>

#include "station/wording/fault_words.h"
#include "tests/station/plan/household.h"
#include "tests/support/run_program.h"

namespace brimline {
namespace {

const char* const kOwn = R"(id = "own"
name = "Our own"
source = "this shop"
builds_on = "household"

[[target]]
analyte = "total_alkalinity"
low = 100
high = 140
aim = 120
source = "this shop, on its own responsibility"
tag = "W"
)";

TEST(ShopTargets, OwnRowsWinOverTheSetBelow) {
  const auto own = read_targets(kOwn, "own.toml");
  ASSERT_TRUE(own) << own.error().front().text();
  const TargetCase c{
      Sanitizer::chlorine, VesselKind::pool, Place::outdoor, Surface::plaster, 40.0, 7.5, 27.0};
  EXPECT_EQ(own->find("total_alkalinity", c)->range, (Target{100.0, 140.0}));
  EXPECT_EQ(own->find("ph", c)->range, find_targets("household")->find("ph", c)->range);
}

TEST(ShopTargets, APlanGoesByThemAndNamesThem) {
  Visit v = Household(3).visit();
  for (Reading& r : v.bottle.readings)
    if (r.analyte == "total_alkalinity") r = Household::reading("total_alkalinity", 90, 1);
  const auto own = read_targets(kOwn, "own.toml");
  const Plan plan = make_plan(v, {}, built_in_shelf(), *own, Words("en"), PlanOptions{0, 7});
  EXPECT_TRUE(std::any_of(plan.findings.begin(), plan.findings.end(),
                          [](const Finding& f) { return f.id == "total_alkalinity_low"; }));
  EXPECT_EQ(plan.basis.targets, "own");
}

TEST(ShopTargets, FaultsNameFileAndLine) {
  testing::ScratchFolder folder;
  const std::string file = (folder / "own.toml").string();
  std::ofstream(file) << "id = \"own\"\nname = \"Our own\"\nsource = \"us\"\n[[target]]\nanalyte = \"ph\"\n"
                         "low = 8\nhigh = 7\nsource = \"us\"\ntag = \"W\"\n";
  const auto own = targets_named(file);
  ASSERT_FALSE(own);
  EXPECT_NE(own.error().front().text().find("own.toml:"), std::string::npos);
  EXPECT_EQ(fault_sentence(Words("fr"), own.error().front().what), "`low` est au-dessus de `high`");
  EXPECT_TRUE(fault_sentence(Words("es"), own.error().front().expected));
  EXPECT_FALSE(targets_named((folder / "none.toml").string()));
  EXPECT_TRUE(targets_named("california"));
}

TEST(ShopTargets, EverySetWrittenReadsBackTheSame) {
  for (const TargetSet& set : target_sets()) {
    const auto again = read_targets(targets_to_toml(set), set.id);
    ASSERT_TRUE(again) << set.id << ": " << again.error().front().text();
    EXPECT_EQ(again->rows, set.rows) << set.id;
  }
}

size_t row_of(const TargetSet& set, const char* analyte) {
  size_t i = 0;
  while (i < set.rows.size() && set.rows[i].analyte != analyte) ++i;
  return i;
}

TEST(ShopTargets, OneRowChangesAndGoesBack) {
  testing::ScratchFolder folder;
  const std::string file = (folder / "targets.toml").string();
  const TargetSet built_in = *shop_targets(file);
  EXPECT_EQ(built_in.id, "household");
  const size_t row = row_of(built_in, "calcium_hardness");
  ASSERT_TRUE(keep_target(file, row, OwnTarget{210, 390, 300, "this town's hard water"}));
  const auto own = shop_targets(file);
  ASSERT_TRUE(own);
  EXPECT_EQ(own->id, "shop");
  EXPECT_EQ(own->rows[row].high, 390);
  EXPECT_EQ(own->rows[row].sanitizers, built_in.rows[row].sanitizers);
  for (size_t i = 0; i < own->rows.size(); ++i) {
    if (i != row) {
      EXPECT_EQ(own->rows[i], built_in.rows[i]);
    }
  }
  ASSERT_TRUE(keep_target(file, row, std::nullopt));
  EXPECT_EQ(shop_targets(file)->rows, built_in.rows);
}

TEST(ShopTargets, WhatCannotBeIsRefusedAndTheFileStays) {
  testing::ScratchFolder folder;
  const std::string file = (folder / "targets.toml").string();
  const size_t row = row_of(*shop_targets(file), "ph");
  ASSERT_TRUE(keep_target(file, row, OwnTarget{7.3, 7.7, 7.5, "us"}));
  const TargetSet before = *shop_targets(file);
  EXPECT_FALSE(keep_target(file, row, OwnTarget{7.9, 7.3, std::nullopt, "us"}));
  EXPECT_FALSE(keep_target(file, row, OwnTarget{{}, {}, {}, "us"}));
  EXPECT_FALSE(keep_target(file, row, OwnTarget{7.2, 7.8, 9.0, "us"}));
  EXPECT_FALSE(keep_target(file, 10000, OwnTarget{7.2, 7.8, 7.5, "us"}));
  EXPECT_FALSE(keep_target((folder / "none" / "targets.toml").string(), row, OwnTarget{7.2, 7.8, 7.5, "us"}));
  EXPECT_EQ(shop_targets(file)->rows, before.rows);
}

// A shop that wishes for what could harm gets no harmful plan for it: the proof goes by the contract's
// bounds.
TEST(ShopTargets, AHarmfulWishMakesNoHarmfulPlan) {
  testing::ScratchFolder folder;
  const std::string file = (folder / "targets.toml").string();
  ASSERT_TRUE(keep_target(file, row_of(*shop_targets(file), "ph"), OwnTarget{8.6, 9.0, 8.8, "a slip"}));
  const Visit v = Household(3).visit();
  const Plan plan =
      make_plan(v, {}, built_in_shelf(), *shop_targets(file), Words("en"), PlanOptions{1000, 7});
  int judged = 0;
  for (const Step& step : plan.steps) {
    if (!step.after || !step.after->readings.contains("ph")) continue;
    EXPECT_LE(step.after->readings.at("ph"), 8.2);
    ++judged;
  }
  EXPECT_GT(judged, 0);
  if (plan.proof) {
    EXPECT_LE(plan.proof->harm, 0.01);
  }
}

}  // namespace
}  // namespace brimline
