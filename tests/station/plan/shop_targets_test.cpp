// SPDX-License-Identifier: GPL-3.0-or-later
// A shop's own targets: read as strictly as those built in, on top of one of them.
#include "station/plan/shop_targets.h"

#include <gtest/gtest.h>

#include <fstream>

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
  EXPECT_FALSE(targets_named((folder / "none.toml").string()));
  EXPECT_TRUE(targets_named("california"));
}

}  // namespace
}  // namespace brimline
