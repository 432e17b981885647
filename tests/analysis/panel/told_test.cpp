// SPDX-License-Identifier: GPL-3.0-or-later
// What told doses leave behind once spent, against stoichiometry: per 10 mg/L of chlorine, trichlor
// brings 6.07 mg/L of cyanuric acid (129.07 over 212.72 g of Cl2) and takes 7.06 of alkalinity, dichlor 9.10
// and 3.53, calcium hypochlorite brings 7.06 of calcium hardness, sodium hypochlorite leaves alkalinity as it
// was.
#include "analysis/panel/told.h"

#include <gtest/gtest.h>

namespace brimline {
namespace {

// Moles that bring 10 mg/L Cl2 into 1 m3, at `chlorines` Cl2 a mole.
Addition ten_of_chlorine(const char* chemical, double chlorines) {
  return {chemical, 10 / 70.906 / chlorines, std::nullopt};
}
double change(const Addition& addition, const char* analyte) {
  return *told_change(addition, analyte, Volume::cubic_metres(1));
}

TEST(Told, SpentChlorineLeavesItsByProducts) {
  const Addition trichlor = ten_of_chlorine("trichlor", 3), dichlor = ten_of_chlorine("dichlor", 2);
  EXPECT_NEAR(change(trichlor, "cyanuric_acid"), 6.07, 0.01);
  EXPECT_NEAR(change(trichlor, "total_alkalinity"), -7.06, 0.01);
  EXPECT_NEAR(change(dichlor, "cyanuric_acid"), 9.10, 0.01);
  EXPECT_NEAR(change(dichlor, "total_alkalinity"), -3.53, 0.01);
  EXPECT_NEAR(change(ten_of_chlorine("calcium_hypochlorite", 2), "calcium_hardness"), 7.06, 0.01);
  EXPECT_NEAR(change(ten_of_chlorine("sodium_hypochlorite", 1), "total_alkalinity"), 0, 1e-9);
  EXPECT_NEAR(change(trichlor, "free_chlorine"), 0, 1e-12);
}

// 16.79 g of bicarbonate, 10.59 of soda ash, 14.69 of pure calcium chloride dihydrate a m3 make 10 mg/L
// CaCO3.
TEST(Told, SaltsOfAlkalinityAndCalcium) {
  EXPECT_NEAR(change({"sodium_bicarbonate", 16.79 / 84.007, {}}, "total_alkalinity"), 10, 0.01);
  EXPECT_NEAR(change({"sodium_carbonate", 10.59 / 105.989, {}}, "total_alkalinity"), 10, 0.01);
  EXPECT_NEAR(change({"calcium_chloride", 14.69 / 147.01, {}}, "calcium_hardness"), 10, 0.01);
  EXPECT_NEAR(change({"sodium_chloride", 100 / 58.443, {}}, "salt"), 100, 0.01);
}

TEST(Told, TheChangeGoesWithOneOverTheVolume) {
  const Addition acid{"hydrochloric_acid", 10.0, {}};
  EXPECT_NEAR(*told_change(acid, "total_alkalinity", Volume::cubic_metres(40)) * 40,
              change(acid, "total_alkalinity"), 1e-9);
}

TEST(Told, WhatIsNotKnownIsAbsent) {
  EXPECT_FALSE(
      told_change({"sodium_bicarbonate", std::nullopt, {}}, "total_alkalinity", Volume::cubic_metres(50)));
  EXPECT_FALSE(told_change({"sequestrant", 1.0, {}}, "total_alkalinity", Volume::cubic_metres(50)));
  EXPECT_FALSE(told_change({"sodium_bicarbonate", 1.0, {}}, "ph", Volume::cubic_metres(50)));
  EXPECT_FALSE(told_change({"sodium_bicarbonate", 1.0, {}}, "total_alkalinity", Volume::cubic_metres(0)));
  EXPECT_EQ(told_direction("hydrochloric_acid", "total_alkalinity"), -1);
  EXPECT_EQ(told_direction("hydrochloric_acid", "calcium_hardness"), 0);
  EXPECT_EQ(told_direction("trichlor", "cyanuric_acid"), 1);
}

}  // namespace
}  // namespace brimline
