// SPDX-License-Identifier: GPL-3.0-or-later
// Values that others have printed, each with its source. Where ours and theirs differ by their rounding or
// their simplification, the comment says why.
#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "analysis/quantities.h"
#include "analysis/water/constants.h"
#include "analysis/water/doses.h"
#include "analysis/water/saturation.h"
#include "analysis/water/water.h"
#include "tests/analysis/water/reference_table.h"

namespace brimline {
namespace {

constexpr double kKilogramsPerCubicMetre = 1000;  // mg/L counted as mg per kg of water

struct TableRow {
  double at, factor;
};

// 10 NYCRR 6-1.30 and Mont. Admin. R. 37.115, Table 7: the whole table.
TEST(FactorTable, HasEveryLegalRow) {
  const TableRow fahrenheit[] = {
      {32, 0.0}, {37, 0.1}, {46, 0.2}, {53, 0.3}, {60, 0.4},
      {66, 0.5}, {76, 0.6}, {84, 0.7}, {94, 0.8}, {105, 0.9}};  // 128 F is beyond the model's 45 C
  const TableRow hardness[] = {{5, 0.3},   {25, 1.0},  {50, 1.3},  {75, 1.5},  {100, 1.6}, {150, 1.8},
                               {200, 1.9}, {300, 2.1}, {400, 2.2}, {800, 2.5}, {1000, 2.6}};
  const TableRow alkalinity[] = {{5, 0.7},   {25, 1.4},  {50, 1.7},  {75, 1.9},  {100, 2.0}, {150, 2.2},
                                 {200, 2.3}, {300, 2.5}, {400, 2.6}, {800, 2.9}, {1000, 3.0}};
  for (const auto& [f, factor] : fahrenheit)
    EXPECT_NEAR(table_factors(Temperature::fahrenheit(f), 100, 100)->temperature, factor, 1e-9) << f;
  for (const auto& [ch, factor] : hardness)
    EXPECT_NEAR(table_factors(Temperature::fahrenheit(76), ch, 100)->calcium, factor, 1e-9) << ch;
  for (const auto& [ta, factor] : alkalinity)
    EXPECT_NEAR(table_factors(Temperature::fahrenheit(76), 100, ta)->alkalinity, factor, 1e-9) << ta;
  EXPECT_NEAR(table_factors(Temperature::fahrenheit(128), 100, 100)->temperature, 1.0, 1e-9);
}

TEST(FactorTable, DoesNotReachBeyondItsRows) {
  EXPECT_FALSE(table_factors(Temperature::fahrenheit(31), 100, 100));
  EXPECT_FALSE(table_factors(Temperature::fahrenheit(129), 100, 100));
  EXPECT_FALSE(table_factors(Temperature::fahrenheit(76), 4.9, 100));
  EXPECT_FALSE(table_factors(Temperature::fahrenheit(76), 100, 1001));
}

double index(double ph, double fahrenheit, double ch, double ta, double solids = 500) {
  return factor_table_index(ph, Temperature::fahrenheit(fahrenheit), ch, ta, solids).value();
}

TEST(FactorTable, WorkedExamples) {
  // 10 NYCRR 6-1.30: pH 7.8, 68 F, total hardness 200 taken as calcium 140, alkalinity 20; printed -0.8, and
  // -0.795 by straight lines between the rows.
  EXPECT_NEAR(index(7.8, 68, 140, 20), -0.795, 0.0006);
  // Delaware Admin. Code 16-4464, appendix A: pH 7.4, TA 50, CH 50, 78 F. Its factors 1.7 and 1.3, and 0.6
  // for the row below 78 F, give -1.1; the line between the rows adds 0.025.
  EXPECT_NEAR(index(7.4, 78, 50, 50), -1.1, 0.03);
  EXPECT_NEAR(index(7.4, 76, 50, 50), -1.1, 1e-9);
  // Problems of a pool-operator course, as reprinted in a secondary text.
  EXPECT_NEAR(index(7.0, 76, 200, 50), -0.9, 1e-9);
  EXPECT_NEAR(index(7.6, 84, 300, 75), 0.2, 1e-9);
  EXPECT_NEAR(index(8.0, 94, 400, 150), 1.1, 1e-9);
  // Mont. Admin. R. 37.115: the constant is 12.2 from 1,000 mg/L of dissolved solids.
  EXPECT_NEAR(index(7.6, 84, 300, 75, 999.9) - index(7.6, 84, 300, 75, 1000), 0.1, 1e-9);
}

// Nearly pure water, so that activities are concentrations, as in the printed shares.
WaterReadings thin(double celsius, double ph) {
  WaterReadings r;
  r.temperature = Temperature::celsius(celsius);
  r.ph = ph;
  r.total_alkalinity = 6;
  r.background_nacl = 0;
  return r;
}

TEST(Chlorine, SharesOfTheHealthCode) {
  // CDC Model Aquatic Health Code, annex to 5.7.3.1.2.2: HOCl 55 % at pH 7.5 and 28 % at 8.0; HOBr 94 % and
  // 83 %.
  for (const auto& [ph, hocl, hobr] : {std::array{7.5, 55.0, 94.0}, std::array{8.0, 28.0, 83.0}}) {
    WaterReadings r = thin(20, ph);
    r.free_chlorine = r.total_bromine = 1;
    const auto water = water_from_readings(r);
    ASSERT_TRUE(water);
    EXPECT_NEAR(100 * water->hocl() / water->free_chlorine(), hocl, 1) << ph;
    EXPECT_NEAR(100 * water->hobr() / water->total_bromine(), hobr, 0.6) << ph;
  }
}

TEST(Chlorine, SharesWithStabilizer) {
  // Service Industry News, January 2021: with 30 mg/L of cyanuric acid the active share is 1.3 % at pH 7.5
  // and 1.1 % at pH 8.
  for (const auto& [ph, share] : {std::array{7.5, 1.3}, std::array{8.0, 1.1}}) {
    WaterReadings r = thin(25, ph);
    r.total_alkalinity = 20;
    r.cyanuric_acid = 30;
    r.free_chlorine = 1;
    const auto water = water_from_readings(r);
    ASSERT_TRUE(water);
    EXPECT_NEAR(100 * water->hocl(), share, 0.05) << ph;
  }
}

TEST(Chlorine, ARatioOfStabilizerToChlorineFixesHocl) {
  // Falk et al. 2019, Water 11(6):1314: at a fixed ratio HOCl varies by only 1.8 % either way. Ratio 20,
  // pH 7.5.
  double least = INFINITY, most = 0;
  for (const double cya : {20.0, 40.0, 60.0, 80.0, 100.0}) {
    WaterReadings r = thin(25, 7.5);
    r.total_alkalinity = 100;
    r.cyanuric_acid = cya;
    r.free_chlorine = cya / 20;
    const double hocl = water_from_readings(r)->hocl();
    least = std::min(least, hocl);
    most = std::max(most, hocl);
  }
  EXPECT_NEAR(100 * (most - least) / (most + least), 1.8, 0.3);
}

// Standard Methods 2330 B, table 2330:II, which is Plummer & Busenberg 1982 rounded to two decimals (the
// functions from secondary texts, T = t + 273.2): t, pK1, pK2, pKs, A.
TEST(Constants, StandardMethods2330) {
  const double rows[][5] = {
      {5, 6.52, 10.55, 8.39, 0.494},  {10, 6.46, 10.49, 8.41, 0.498}, {15, 6.42, 10.43, 8.43, 0.502},
      {20, 6.38, 10.38, 8.45, 0.506}, {25, 6.35, 10.33, 8.48, 0.511}, {30, 6.33, 10.29, 8.51, 0.516},
      {35, 6.31, 10.25, 8.54, 0.520}, {40, 6.30, 10.22, 8.58, 0.526}, {45, 6.29, 10.20, 8.62, 0.531}};
  for (const auto& [t, pk1, pk2, pks, a] : rows) {
    const Constants& k = constants_at(t);
    EXPECT_NEAR(std::log10(k.hco3), pk2, 0.006) << t;
    EXPECT_NEAR(std::log10(k.co2 / k.hco3), pk1, 0.006) << t;
    EXPECT_NEAR(-k.log_ksp, pks, 0.006) << t;
    // A from another permittivity (Malmberg & Maryott 1956); the printed one is 60954/(T+116) - 68.937.
    EXPECT_NEAR(k.debye_a, a, 0.003) << t;
  }
}

// Morris 1966: pK of HOCl by temperature, as tabulated from its equation.
TEST(Constants, Morris1966) {
  for (const auto& [t, pk] :
       {std::array{5.0, 7.754}, std::array{15.0, 7.633}, std::array{25.0, 7.537}, std::array{40.0, 7.434}})
    EXPECT_NEAR(-std::log10(constants_at(t).hypochlorite), pk, 0.0006) << t;
}

double alkalinity_change(std::string_view chemical, double grams, double molar_mass, Volume water) {
  const double mol = grams / molar_mass / (water.cubic_metres() * kKilogramsPerCubicMetre);
  return dose_vector(chemical)->alkalinity * mol * 1e3 * weight::kAlkalinity;
}

TEST(Doses, NewYorkAlkalinityRules) {
  // 10 NYCRR 6-1.30: "1.5 pounds of sodium bicarbonate per 10,000 gallons raises alkalinity 10". The pure
  // salt raises it 10.7: 1.40 lb would do, and the rule rounds up to the half pound.
  const double bicarbonate =
      alkalinity_change("sodium_bicarbonate", Mass::pounds(1.5).grams(), 84.006, Volume::us_gallons(10000));
  EXPECT_NEAR(bicarbonate, 10.7, 0.05);
  EXPECT_NEAR(bicarbonate, 10, 0.8);
  // The same rule: one pint of muriatic acid per 5,000 gallons lowers it 12. At 31.45 % and 1.16 g/mL it
  // lowers it 12.5; 12 is what acid of 30 % does.
  const double pint = Volume::us_fluid_ounces(16).millilitres();
  const double acid =
      alkalinity_change("hydrochloric_acid", pint * 1.16 * 0.3145, 36.458, Volume::us_gallons(5000));
  EXPECT_NEAR(acid, -12.5, 0.1);
  EXPECT_NEAR(acid, -12, 0.6);
}

TEST(Doses, EveryChemicalIsKnownByItsIdAndFormula) {
  for (const DoseRow& row : dose_rows()) {
    EXPECT_EQ(find_dose(row.id), &row) << row.id;
    if (row.formula.empty()) continue;
    EXPECT_EQ(find_dose(row.formula), &row) << row.id;
  }
  EXPECT_FALSE(dose_vector("holy_water"));
  EXPECT_FALSE(dose_vector(""));
}

TEST(Doses, AReducerTakesNoMoreChlorineThanThereIs) {
  const Totals little{.alkalinity = 1e-3, .carbon = 1e-3, .sodium = 1e-3, .chlorine = 2e-5};
  const Totals after = *add(little, "sodium_sulfite", 5e-5);
  EXPECT_EQ(after.chlorine, 0);
  EXPECT_NEAR(after.alkalinity, 1e-3 - 2e-5, 1e-15);
  EXPECT_NEAR(charge_left(after), after.alkalinity, 1e-15);
}

TEST(Doses, AReducerTakesBromineOnceChlorineIsGone) {
  // SO3-2 + HOBr -> SO4-2 + H+ + Br-, as with HOCl.
  const Totals spa{.alkalinity = 1e-3, .carbon = 1e-3, .sodium = 1e-3, .chlorine = 1e-5, .bromine = 3e-5};
  const Totals after = *add(spa, "sodium_sulfite", 3e-5);
  EXPECT_EQ(after.chlorine, 0);
  EXPECT_NEAR(after.bromine, 1e-5, 1e-15);
  EXPECT_NEAR(after.bromide, 2e-5, 1e-15);
  EXPECT_NEAR(after.alkalinity, 1e-3 - 3e-5, 1e-15);
  EXPECT_NEAR(charge_left(after), after.alkalinity, 1e-15);
  const Totals more = *add(spa, "sodium_sulfite", 9e-5);
  EXPECT_EQ(more.bromine, 0);
  EXPECT_NEAR(more.alkalinity, 1e-3 - 4e-5, 1e-15);
}

TEST(Doses, ChlorineTurnsBromideIntoBromine) {
  const Totals bank{.alkalinity = 1e-3, .carbon = 1e-3, .sodium = 1.4e-3, .bromide = 4e-4};
  const Totals after = *add(bank, "sodium_hypochlorite", 1e-4);
  EXPECT_EQ(after.chlorine, 0);
  EXPECT_NEAR(after.bromine, 1e-4, 1e-15);
  EXPECT_NEAR(after.bromide, 3e-4, 1e-15);
}

TEST(Din38404, WorkedWaters1995) {
  // DIN 38404-10:1995-04, table 6: printed to two decimals; another program differs from them by up to 0.02.
  for (const auto& row : reference::rows("din38404_10_1995.csv")) {
    const std::string& id = row.text("id");
    const auto n = [&](const char* column) { return row.need(column); };
    WaterReadings r;
    r.temperature = Temperature::celsius(n("temperature_c"));
    r.ph = n("ph_measured");
    r.total_alkalinity = (n("na") + n("k") + 2 * n("ca") + 2 * n("mg") - n("cl") - n("no3") - 2 * n("so4")) *
                         weight::kAlkalinity;
    r.calcium_hardness = n("ca") * weight::kCaCO3;
    r.magnesium_hardness = n("mg") * weight::kCaCO3;
    r.sulfate = n("so4") * weight::kSulfate;
    r.background_nacl = (n("cl") + n("no3") - 2 * n("ca") - 2 * n("mg")) * weight::kSalt;
    const auto bottle = water_from_readings(r);
    ASSERT_TRUE(bottle) << id << " " << text(bottle.error());
    EXPECT_NEAR(bottle->dic_mmol(), n("dic"), 0.03 * n("dic")) << id;
    const auto water = at_temperature(*bottle, Temperature::celsius(n("evaluation_temperature_c")));
    ASSERT_TRUE(water) << id;
    const auto calcite = calcite_equilibrium(*water);
    ASSERT_TRUE(calcite) << id;
    EXPECT_NEAR(water->ph, n("ph"), 0.03) << id;
    EXPECT_NEAR(water->si_calcite().value(), n("si"), 0.03) << id;
    EXPECT_NEAR(calcite->ph, n("ph_c"), 0.03) << id;
    EXPECT_NEAR(-calcite->precipitated_mol * 1e3, n("d_mmol_l"), 0.04) << id;
  }
}

}  // namespace
}  // namespace brimline
