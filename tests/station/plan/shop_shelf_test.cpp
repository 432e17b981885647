// SPDX-License-Identifier: GPL-3.0-or-later
// The shop's own shelf: what is kept is what is read again, what no label can say is refused and nothing is
// lost.
#include "station/shelf/shop_shelf.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "tests/station/plan/household.h"
#include "tests/support/run_program.h"

namespace brimline {
namespace {

Product acid() {
  Product p;
  p.id = "our_acid";
  p.name = "Our \"strong\" acid \\ 31 %";
  p.substance = "hydrochloric_acid";
  p.assay = {31.45, Strength::weight};
  p.liquid = true;
  p.price = 1.95;
  p.packs = {3.785, 9.46};
  p.barcode = "4006381333931";
  p.cautions = {"Keep locked up.", "Do not mix."};
  p.source = "its label";
  return p;
}

TEST(ShopShelf, EveryBuiltInProductSurvivesItsFile) {
  for (const Product& p : built_in_shelf().products) {
    const auto again = read_product(product_to_toml(p), "again.toml");
    ASSERT_TRUE(again) << again.error().front().text();
    EXPECT_EQ(*again, p);
  }
  EXPECT_EQ(*read_product(product_to_toml(acid()), "again.toml"), acid());
}

TEST(ShopShelf, AFirstProductBringsTheBuiltInListAlong) {
  testing::ScratchFolder folder;
  const std::string shelf = (folder / "shelf").string();
  EXPECT_EQ(shop_shelf(shelf)->id, "built_in");
  ASSERT_TRUE(keep_product(shelf, acid()));
  const auto own = shop_shelf(shelf);
  ASSERT_TRUE(own);
  EXPECT_EQ(own->products.size(), built_in_shelf().products.size() + 1);
  EXPECT_EQ(*own->find("our_acid"), acid());
  ASSERT_TRUE(remove_product(shelf, "our_acid"));
  EXPECT_EQ(shop_shelf(shelf)->find("our_acid"), nullptr);
  EXPECT_EQ(new_product_id(*own, "Our acid!"), "our_acid_2");
}

TEST(ShopShelf, WhatNoLabelCanSayIsRefusedAndNothingWritten) {
  testing::ScratchFolder folder;
  const std::string shelf = (folder / "shelf").string();
  for (const auto& spoil : std::vector<std::function<void(Product&)>>{
           [](Product& p) { p.assay.percent = 0; }, [](Product& p) { p.assay.percent = 130; },
           [](Product& p) { p.substance = "gold"; }, [](Product& p) { p.price = -1; },
           [](Product& p) { p.packs = {0}; }, [](Product& p) { p.name = ""; },
           [](Product& p) { p.assay.strength = Strength::trade; },
           [](Product& p) { p.id = "../../etc/passwd"; }, [](Product& p) { p.id = ""; }}) {
    Product p = acid();
    spoil(p);
    EXPECT_FALSE(keep_product(shelf, p));
    EXPECT_FALSE(std::filesystem::exists(shelf));
  }
  EXPECT_FALSE(remove_product(shelf, "../x"));
}

TEST(ShopShelf, APlanPoursFromItAndPrintsItsCautions) {
  Shelf shelf = built_in_shelf();
  std::erase_if(shelf.products, [](const Product& p) { return p.substance == "hydrochloric_acid"; });
  shelf.products.push_back(acid());
  Visit v = Household(4).visit();
  for (Reading& r : v.bottle.readings) {
    if (r.analyte == "ph") r.value = 8.2;
    if (r.analyte == "total_alkalinity") r.value = 110;
  }
  const Plan plan = make_plan(v, {}, shelf, *find_targets("household"), Words("en"), PlanOptions{0, 7});
  const auto step = std::find_if(plan.steps.begin(), plan.steps.end(),
                                 [](const Step& s) { return s.product == "our_acid"; });
  ASSERT_NE(step, plan.steps.end());
  EXPECT_NE(std::find(step->cautions.begin(), step->cautions.end(), "Keep locked up."), step->cautions.end());
}

}  // namespace
}  // namespace brimline
