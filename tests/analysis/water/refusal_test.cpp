// SPDX-License-Identifier: GPL-3.0-or-later
// Waters that cannot be computed say why; waters at the edge can.
#include <gtest/gtest.h>

#include "analysis/water/saturation.h"
#include "analysis/water/uncertainty.h"
#include "analysis/water/water.h"

namespace brimline {
namespace {

WaterReadings everyday() {
  WaterReadings r;
  r.temperature = Temperature::celsius(27);
  r.ph = 7.5;
  r.total_alkalinity = 100;
  r.calcium_hardness = 250;
  r.cyanuric_acid = 30;
  r.free_chlorine = 3;
  r.tds = 1000;
  return r;
}

Refusal refusal_of(const WaterReadings& r) {
  return water_from_readings(r).error();
}

TEST(Refusals, SayWhy) {
  WaterReadings r = everyday();
  r.temperature = Temperature::celsius(45.1);
  EXPECT_EQ(refusal_of(r), Refusal::temperature_outside);
  r = everyday();
  r.ph = 11.01;
  EXPECT_EQ(refusal_of(r), Refusal::ph_outside);
  r = everyday();
  r.total_alkalinity = 20;
  r.cyanuric_acid = 150;
  EXPECT_EQ(refusal_of(r), Refusal::alkalinity_contradicts);
  r = everyday();
  r.cyanuric_acid = 0;
  r.total_alkalinity = 5;
  r.ph = 10.8;
  EXPECT_EQ(refusal_of(r), Refusal::alkalinity_below_acids);
  r = everyday();  // hardly any stabilizer: it is not to blame
  r.cyanuric_acid = 2;
  r.borate = 100;
  r.total_alkalinity = 30;
  r.ph = 9;
  EXPECT_EQ(refusal_of(r), Refusal::alkalinity_below_acids);
  r = everyday();
  r.background_nacl = -400;
  EXPECT_EQ(refusal_of(r), Refusal::negative_sodium_chloride);
  for (const double salt : {70e3, 1e9}) {
    r = everyday();
    r.background_nacl = salt;
    EXPECT_EQ(refusal_of(r), Refusal::too_salty) << salt;
  }
  r.background_nacl = 35e3;  // sea water
  EXPECT_TRUE(water_from_readings(r));
  r = everyday();
  r.free_chlorine = -0.1;
  EXPECT_EQ(refusal_of(r), Refusal::negative_reading);
  for (int i = 0; i <= static_cast<int>(Refusal::does_not_balance); ++i)
    EXPECT_FALSE(text(static_cast<Refusal>(i)).empty());
}

TEST(Refusals, DissolvedSolidsTooLowForTheIonsAreRefusedOnlyWhereTold) {
  WaterReadings r = everyday();
  r.calcium_hardness = 1500;
  r.total_alkalinity = 60;
  r.tds = 300;
  EXPECT_EQ(refusal_of(r), Refusal::negative_sodium_chloride);
  r.tds = std::nullopt;  // 1,000 mg/L are assumed, and give way
  EXPECT_TRUE(water_from_readings(r));
}

TEST(Background, EachWayOfTellingItComesOutAsTold) {
  WaterReadings r = everyday();
  r.tds = 1234;
  EXPECT_NEAR(water_from_readings(r)->dissolved_solids(), 1234, 1e-6);
  r.tds = std::nullopt;
  EXPECT_NEAR(water_from_readings(r)->dissolved_solids(), 1000, 1e-6);
  r.conductivity = 2000;
  EXPECT_NEAR(water_from_readings(r)->ionic_strength, 0.032, 1e-9);
  r.salt = 3200;
  EXPECT_NEAR(water_from_readings(r)->salt(), 3200, 1e-9);
  r.background_nacl = 600;
  EXPECT_NEAR(water_from_readings(r)->salt(), 600 + 2 * 250 / weight::kCaCO3 * weight::kSalt, 1e-9);
}

TEST(Background, TheFirstToldWins) {
  WaterReadings r = everyday();
  r.background_nacl = 600;
  const double alone = water_from_readings(r)->ionic_strength;
  r.salt = 5000;
  r.tds = 9000;
  EXPECT_EQ(water_from_readings(r)->ionic_strength, alone);
}

TEST(Water, WithoutCalciumHasNoIndexButDissolvesCalcite) {
  WaterReadings r = everyday();
  r.calcium_hardness = 0;
  const auto water = water_from_readings(r);
  ASSERT_TRUE(water);
  EXPECT_FALSE(water->si_calcite());
  EXPECT_FALSE(saturation_ph(*water));
  const auto calcite = calcite_equilibrium(*water);
  ASSERT_TRUE(calcite);
  EXPECT_LT(calcite->ccpp(), 0);
}

TEST(Water, PureWaterHasItsOwnPh) {
  const auto pure = solve(Totals{}, Temperature::celsius(25));
  ASSERT_TRUE(pure) << text(pure.error());
  EXPECT_NEAR(pure->ph, 7.0, 0.005);  // half of pKw 13.995 at 25 C
}

TEST(Water, AiredWaterHoldsTheCarbonDioxideOfAir) {
  const auto aired = aerate(*water_from_readings(everyday()));
  ASSERT_TRUE(aired);
  EXPECT_NEAR(aired->log10_pco2(), -3.4, 1e-9);
  EXPECT_NEAR(aired->total_alkalinity(), 100, 1e-9);
}

TEST(Background, SaysWhichReadingWasUsed) {
  WaterReadings r = everyday();
  r.tds = std::nullopt;
  EXPECT_EQ(background_reading(r), BackgroundReading::assumed);
  r.conductivity = 2000;
  EXPECT_EQ(background_reading(r), BackgroundReading::conductivity);
  r.tds = 1000;
  EXPECT_EQ(background_reading(r), BackgroundReading::tds);
  r.salt = 600;
  EXPECT_EQ(background_reading(r), BackgroundReading::salt);
  r.background_nacl = 600;
  EXPECT_EQ(background_reading(r), BackgroundReading::background_nacl);
}

// The table's constant steps from 12.1 to 12.2 at 1,000 mg/L, which is also what is assumed: rounding in the
// solver must not decide which side a water stands on.
TEST(FactorTable, AThousandMilligramsAreOnTheUpperSide) {
  for (int i = 0; i < 500; ++i) {
    WaterReadings r = everyday();
    r.ph = 7.0 + 0.002 * i;
    r.calcium_hardness = 100 + i;
    for (const auto& told : {std::optional<double>(1000), std::optional<double>()}) {
      r.tds = told;
      const auto water = water_from_readings(r);
      ASSERT_TRUE(water);
      const auto f = table_factors(r.temperature, *r.calcium_hardness, water->carbonate_alkalinity());
      ASSERT_TRUE(f);
      const double index = r.ph + f->temperature + f->calcium + f->alkalinity - 12.2;
      EXPECT_NEAR(factor_table_index(*water).value(), index, 1e-9) << i;
    }
  }
}

std::optional<double> index_of(const Water& w) {
  return w.si_calcite();
}

TEST(Uncertainty, SlopesOfTheIndexAreThoseOfItsShortForm) {
  // SI = pH + log Ca + log alkalinity + ...: d/dpH is 1 less what cyanurate and carbonate take, d/d(ln CH)
  // 0.434 less pairs and salt; d/dt 0.0138 a degree at 25 C from the Standard Methods 2330 functions.
  const auto moved = MovedWaters::of(everyday());
  ASSERT_TRUE(moved);
  const auto slope = moved->slopes(index_of);
  ASSERT_TRUE(slope);
  EXPECT_NEAR(slope->ph, 0.97, 0.05);
  EXPECT_NEAR(slope->calcium_hardness * 250, 0.434, 0.05);
  EXPECT_NEAR(slope->temperature, 0.0138, 0.003);
  ReadingErrors errors;
  errors.ph = 0.1;
  EXPECT_NEAR(*combined(slope, errors), 0.1 * slope->ph, 1e-12);
}

TEST(Uncertainty, EveryReadingCarriesIntoWhatHangsOnIt) {
  WaterReadings r = everyday();
  r.borate = 30;
  r.magnesium_hardness = 60;
  r.sulfate = 100;
  r.total_bromine = 2;
  const auto moved = MovedWaters::of(r, Temperature::celsius(38));
  ASSERT_TRUE(moved);
  EXPECT_NEAR(moved->centre().temperature.celsius(), 38, 0);
  const auto slope = moved->slopes(index_of);
  for (const auto member : {&PerReading::temperature, &PerReading::vessel_temperature, &PerReading::ph,
                            &PerReading::total_alkalinity, &PerReading::calcium_hardness})
    EXPECT_NE((*slope).*member, 0);
  for (const auto member : {&PerReading::magnesium_hardness, &PerReading::cyanuric_acid, &PerReading::borate,
                            &PerReading::sulfate, &PerReading::background})
    EXPECT_LT((*slope).*member, 0);
  const auto hobr = moved->slopes([](const Water& w) { return std::optional(w.hobr()); });
  EXPECT_NEAR(hobr->total_bromine * 2, moved->centre().hobr(), 1e-3);
  const auto share = moved->slopes([](const Water& w) { return w.hocl_share(); });
  EXPECT_LT(share->cyanuric_acid, 0);
  EXPECT_GT(share->free_chlorine, 0);
  EXPECT_FALSE(moved->slopes([](const Water&) { return std::optional<double>(); }));
}

TEST(Uncertainty, AnAssumedBackgroundAndTheEdgeOfWhatCanBeAreMoved) {
  WaterReadings r = everyday();
  r.tds = std::nullopt;
  r.temperature = Temperature::celsius(45);
  r.free_chlorine = 0;
  const auto moved = MovedWaters::of(r);
  ASSERT_TRUE(moved);
  const auto slope = moved->slopes(index_of);
  EXPECT_LT(slope->background, 0);
  EXPECT_NEAR(slope->temperature, 0.012, 0.004);
  EXPECT_GT(moved->slopes([](const Water& w) { return std::optional(w.hocl()); })->free_chlorine, 0);
}

}  // namespace
}  // namespace brimline
