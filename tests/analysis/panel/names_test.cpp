// SPDX-License-Identifier: GPL-3.0-or-later
// The spellings are those of the contract's visit, both ways.
#include "analysis/panel/names.h"

#include <gtest/gtest.h>

namespace brimline {
namespace {

TEST(Names, AreTheContracts) {
  EXPECT_EQ(choices<Method>(), "photometer, strip, drop_titration, comparator, probe, turbidity_tube");
  EXPECT_EQ(choices<Clip>(), "above, below");
  EXPECT_EQ(choices<Occasion>(), "routine, opening, closing, new_fill, after_storm, trouble");
  EXPECT_EQ(
      choices<Sign>(),
      "cloudy, green_water, stains, scale, eye_irritation, strong_smell, green_hair, foam, slimy_walls, "
      "drain_not_visible, chemicals_mixed_or_fuming, tablets_in_use");
  EXPECT_EQ(choices<Incident>(), "faeces, vomit, blood, dead_animal, flood, sewage, illness");
  EXPECT_EQ(choices<VesselKind>(), "pool, spa, swim_spa, plunge");
  EXPECT_EQ(choices<VesselUse>(), "household, public");
  EXPECT_EQ(choices<Place>(), "outdoor, indoor");
  EXPECT_EQ(choices<Surface>(), "plaster, tile, vinyl, fibreglass, painted, acrylic");
  EXPECT_EQ(choices<Sanitizer>(), "chlorine, salt_chlorine, bromine, biguanide");
}

TEST(Names, GoBothWays) {
  for (const auto& row : names<Sign>()) EXPECT_EQ(named<Sign>(name_of(row.value)), row.value);
  EXPECT_EQ(named<VesselUse>("public"), VesselUse::public_use);
  EXPECT_FALSE(named<VesselUse>("hotel"));
  EXPECT_FALSE(named<Method>(""));
}

}  // namespace
}  // namespace brimline
