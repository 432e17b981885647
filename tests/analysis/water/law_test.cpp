// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold of any water, whatever the numbers: ten thousand drawn waters a law, from a fixed seed.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <sstream>

#include "analysis/water/doses.h"
#include "analysis/water/saturation.h"
#include "analysis/water/water.h"

namespace brimline {
namespace {

double drawn(double low, double high) {
  constexpr int kSteps = 100000;
  return low + (high - low) / kSteps * *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(0, kSteps + 1));
}

// Some quantities are often absent; then they must count as none.
std::optional<double> sometimes(double high) {
  return drawn(0, 1) < 0.4 ? std::nullopt : std::optional(drawn(0, high));
}

WaterReadings drawn_readings() {
  WaterReadings r;
  r.temperature = Temperature::celsius(drawn(0, 45));
  r.ph = drawn(6.2, 9.2);
  r.total_alkalinity = drawn(20, 300);
  r.calcium_hardness = drawn(1, 900);
  r.cyanuric_acid = sometimes(150);
  r.borate = sometimes(60);
  r.free_chlorine = sometimes(12);
  r.total_bromine = sometimes(8);
  r.magnesium_hardness = sometimes(300);
  r.sulfate = sometimes(300);
  r.background_nacl = drawn(0, 5000);
  return r;
}

// A drawn water; readings that contradict each other are drawn again.
Water drawn_water() {
  const auto water = water_from_readings(drawn_readings());
  if (!water) RC_DISCARD();
  return *water;
}

template <class Law>
void holds(const char* name, Law law) {
  rc::detail::TestParams params;
  params.seed = 20260614;
  params.maxSuccess = 10000;
  params.disableShrinking = true;
  rc::detail::TestMetadata metadata;
  metadata.id = metadata.description = name;
  const auto result = rc::detail::checkTestable(law, metadata, params);
  std::ostringstream told;
  rc::detail::printResultMessage(result, told);
  EXPECT_TRUE(result.template is<rc::detail::SuccessResult>()) << name << ": " << told.str();
}

void near(double a, double b, double tolerance) {
  RC_ASSERT(std::abs(a - b) <= tolerance * std::max(1.0, std::abs(b)));
}
void relative(double a, double b, double tolerance) {
  RC_ASSERT(std::abs(a - b) <= tolerance * std::abs(b) + 1e-14);
}

void same_water(const Water& a, const Water& b, double tolerance) {
  for (const auto member : kTotalMembers) relative(a.totals.*member, b.totals.*member, tolerance);
  near(a.ph, b.ph, tolerance);
  near(a.si_calcite().value(), b.si_calcite().value(), tolerance);
  relative(a.hypochlorous, b.hypochlorous, 10 * tolerance);
  relative(a.ionic_strength, b.ionic_strength, tolerance);
}

TEST(WaterLaws, TotalsLeadBackToTheReadings) {
  holds("round trip", [] {
    const Water water = drawn_water();
    const auto again = solve(water.totals, water.temperature);
    RC_ASSERT(again.has_value());
    same_water(*again, water, 1e-9);
  });
}

TEST(WaterLaws, TheGuessDoesNotMatter) {
  holds("guess", [] {
    const Water water = drawn_water();
    const auto low = solve(water.totals, water.temperature, 5),
               high = solve(water.totals, water.temperature, 10);
    RC_ASSERT(low.has_value() && high.has_value());
    same_water(*low, *high, 1e-9);
  });
}

TEST(WaterLaws, ChargesOfStrongIonsAreTheAlkalinity) {
  holds("charge", [] {
    const Water water = drawn_water();
    near(charge_left(water.totals) * 1e3, water.totals.alkalinity * 1e3, 1e-12);
  });
  for (const DoseRow& row : dose_rows())
    EXPECT_NEAR(charge_left(row.per_mole), row.per_mole.alkalinity, 1e-12) << row.id;
}

TEST(WaterLaws, WarmingConservesTheTotals) {
  holds("warming", [] {
    const Water water = drawn_water();
    const auto warm = at_temperature(water, Temperature::celsius(drawn(0, 45)));
    RC_ASSERT(warm.has_value());
    RC_ASSERT(warm->totals == water.totals);
    const auto back = at_temperature(*warm, water.temperature);
    RC_ASSERT(back.has_value());
    same_water(*back, water, 1e-9);
  });
}

TEST(WaterLaws, AnAbsentIonChangesNothing) {
  holds("absent ion", [] {
    WaterReadings r = drawn_readings();
    r.magnesium_hardness = r.sulfate = r.borate = r.cyanuric_acid = r.free_chlorine = r.total_bromine =
        std::nullopt;
    const auto without = water_from_readings(r);
    r.magnesium_hardness = r.sulfate = r.borate = r.cyanuric_acid = r.free_chlorine = r.total_bromine = 0;
    const auto zero = water_from_readings(r);
    r.magnesium_hardness = r.sulfate = r.borate = r.cyanuric_acid = r.free_chlorine = r.total_bromine = 1e-9;
    const auto trace = water_from_readings(r);
    RC_ASSERT(without.has_value() == zero.has_value());
    if (!without) RC_DISCARD();
    RC_ASSERT(without->ph == zero->ph && without->si_calcite() == zero->si_calcite());
    RC_ASSERT(trace.has_value());
    near(trace->si_calcite().value(), without->si_calcite().value(), 1e-8);
  });
}

TEST(WaterLaws, TheOrderOfDosesDoesNotMatter) {
  holds("order", [] {
    const Water water = drawn_water();
    const auto rows = dose_rows();
    const auto pick = [&] {
      return rows[static_cast<size_t>(drawn(0, static_cast<double>(rows.size()) - 0.01))];
    };
    const DoseRow a = pick(), b = pick();
    // What is not there cannot be taken: a reducer's chlorine, and the bromide that nobody read.
    for (const DoseRow& row : {a, b})
      if (row.removes_chlorine > 0 || row.per_mole.bromide != 0) RC_DISCARD();
    const double m = drawn(0, 3e-4), n = drawn(0, 3e-4);
    const auto between = solve(*add(water.totals, a.id, m), water);
    if (!between) RC_DISCARD();
    const auto one = solve(*add(between->totals, b.id, n), *between);
    const auto other = solve(*add(*add(water.totals, b.id, n), a.id, m), water);
    RC_ASSERT(one.has_value() == other.has_value());
    if (!one) RC_DISCARD();
    near(one->ph, other->ph, 1e-9);
    near(one->totals.alkalinity * 1e3, other->totals.alkalinity * 1e3, 1e-12);
  });
}

// pH after a dose minus pH before.
double moved(const Water& water, std::string_view chemical, double mol) {
  const auto after = solve(*add(water.totals, chemical, mol), water);
  if (!after) RC_DISCARD();
  return after->ph - water.ph;
}

TEST(WaterLaws, BasesRaiseAcidsLower) {
  holds("acid and base", [] {
    const Water water = drawn_water();
    const double mol = drawn(1e-5, 5e-4);
    for (const char* base : {"sodium_hydroxide", "sodium_carbonate", "sodium_hypochlorite"})
      RC_ASSERT(moved(water, base, mol) > 0);
    for (const char* acid : {"hydrochloric_acid", "sodium_bisulfate", "carbon_dioxide", "boric_acid"})
      RC_ASSERT(moved(water, acid, mol) < 0);
    // Stabilizer also binds HOCl, and where chlorine is high that can leave less acid than it brought.
    if (water.free_chlorine() < 5) RC_ASSERT(moved(water, "cyanuric_acid", mol) < 0);
  });
}

TEST(WaterLaws, MixedWithItselfAWaterStays) {
  holds("self-mix", [] {
    const Water water = drawn_water();
    const auto mixed = mix_waters(water, water, drawn(0, 1));
    RC_ASSERT(mixed.has_value());
    same_water(*mixed, water, 1e-9);
  });
}

TEST(WaterLaws, TheIndexMovesAsItMust) {
  holds("index", [] {
    WaterReadings r = drawn_readings();
    const auto water = water_from_readings(r);
    // With hardly any carbonate left, salt that moves other equilibria can turn the sign.
    if (!water || water->carbonate_alkalinity() < 10) RC_DISCARD();
    const double si = water->si_calcite().value();
    WaterReadings harder = r, stabilized = r, saltier = r;
    harder.calcium_hardness = *r.calcium_hardness + 20;
    stabilized.cyanuric_acid = r.cyanuric_acid.value_or(0) + 10;
    saltier.background_nacl = *r.background_nacl + 200;
    RC_ASSERT(water_from_readings(harder)->si_calcite().value() > si);
    if (const auto w = water_from_readings(stabilized)) RC_ASSERT(w->si_calcite().value() < si);
    if (const auto w = water_from_readings(saltier)) RC_ASSERT(w->si_calcite().value() < si);
    const auto sour = solve(*add(water->totals, "HCl", 1e-4), *water);
    if (sour && sour->si_calcite()) RC_ASSERT(*sour->si_calcite() < si);
  });
}

TEST(WaterLaws, TheIndexRisesWithAlkalinityAtFixedPh) {
  holds("alkalinity", [] {
    WaterReadings r = drawn_readings();
    const auto water = water_from_readings(r);
    if (!water || water->carbonate_alkalinity() < 1) RC_DISCARD();
    r.total_alkalinity += drawn(0.5, 50);
    RC_ASSERT(water_from_readings(r)->si_calcite().value() > water->si_calcite().value());
  });
}

TEST(WaterLaws, TheIndexRisesWithPhAtConstantCarbon) {
  holds("pH at constant carbon", [] {
    const Water water = drawn_water();
    const auto raised = solve(*add(water.totals, "sodium_hydroxide", drawn(1e-6, 3e-4)), water);
    if (!raised) RC_DISCARD();
    RC_ASSERT(raised->totals.carbon == water.totals.carbon && raised->ph > water.ph);
    RC_ASSERT(raised->si_calcite().value() > water.si_calcite().value());
  });
}

// Not so in general: warmth also takes protons from cyanurate, borate and hydroxide.
TEST(WaterLaws, TheIndexRisesWithTemperatureWhereCarbonateLeads) {
  holds("temperature", [] {
    WaterReadings r = drawn_readings();
    r.ph = drawn(6.2, 8.2);
    const auto water = water_from_readings(r);
    if (!water || water->carbonate_alkalinity() < 0.5 * water->total_alkalinity()) RC_DISCARD();
    const double celsius = r.temperature.celsius();
    r.temperature = Temperature::celsius(std::min(45.0, celsius + drawn(0.1, 10)));
    if (r.temperature.celsius() <= celsius) RC_DISCARD();
    const auto warmer = water_from_readings(r);
    RC_ASSERT(warmer.has_value());
    RC_ASSERT(warmer->si_calcite().value() > water->si_calcite().value());
  });
}

// A dosed water read again - its pH, and the rest as the totals say - has the totals it was dosed to.
TEST(WaterLaws, ThePhFoundLeadsBackToTheTotals) {
  holds("pH to totals", [] {
    const Water water = drawn_water();
    const auto dosed = solve(*add(water.totals, "hydrochloric_acid", drawn(0, 2e-4)), water);
    if (!dosed || dosed->ph < 4 || dosed->total_alkalinity() < 0) RC_DISCARD();
    WaterReadings r;
    r.temperature = dosed->temperature;
    r.ph = dosed->ph;
    r.total_alkalinity = dosed->total_alkalinity();
    r.calcium_hardness = dosed->calcium_hardness();
    r.magnesium_hardness = dosed->magnesium_hardness();
    r.cyanuric_acid = dosed->cyanuric_acid();
    r.borate = dosed->borate();
    r.free_chlorine = dosed->free_chlorine();
    r.total_bromine = dosed->total_bromine();
    r.sulfate = dosed->sulfate();
    r.salt = dosed->salt();
    const auto again = water_from_readings(r);
    RC_ASSERT(again.has_value());
    // Carbon is what other acids leave of the alkalinity: where that is little, rounding of the whole shows.
    const double rounding = 3e-11 * dosed->totals.alkalinity;
    for (const auto member : kTotalMembers) {
      const double is = again->totals.*member, was = dosed->totals.*member;
      RC_ASSERT(std::abs(is - was) <= 1e-9 * std::abs(was) + rounding);
    }
  });
}

TEST(WaterLaws, ChlorineIsAllAccountedFor) {
  holds("chlorine", [] {
    const Water water = drawn_water();
    near(water.hocl() + water.ocl() + water.chlorinated_cyanurates(), water.free_chlorine(), 1e-9);
    const Totals spent = spend_chlorine(*add(water.totals, "sodium_hypochlorite", 1e-4), 1e-4);
    const Totals salted = *add(water.totals, "sodium_chloride", 1e-4);
    for (const auto member : kTotalMembers) RC_ASSERT(std::abs(spent.*member - salted.*member) < 1e-15);
  });
}

TEST(WaterLaws, CalciteTakenOutLeavesSaturation) {
  holds("calcite", [] {
    const Water water = drawn_water();
    const auto equilibrium = calcite_equilibrium(water);
    RC_ASSERT(equilibrium.has_value());
    RC_ASSERT((equilibrium->precipitated_mol > 0) == (*water.si_calcite() > 0));
    const Totals calcite{.alkalinity = 2, .carbon = 1, .calcium = 1};
    const auto left = solve(water.totals - calcite * equilibrium->precipitated_mol, water);
    RC_ASSERT(left.has_value());
    near(left->si_calcite().value(), 0, 1e-7);
    near(left->ph, equilibrium->ph, 1e-8);
  });
}

TEST(WaterLaws, AtTheSaturationPhTheIndexIsZero) {
  holds("saturation pH", [] {
    WaterReadings r = drawn_readings();
    const auto water = water_from_readings(r);
    if (!water) RC_DISCARD();
    const auto ph = saturation_ph(*water);
    const auto index_at = [&](double at) {
      r.ph = at;
      const auto w = water_from_readings(r);
      return w ? w->si_calcite() : std::nullopt;
    };
    if (ph) near(index_at(*ph).value(), 0, 1e-7);
    // Below the root, or anywhere if there is none, no drawn pH is saturated.
    const auto below = index_at(drawn(4, ph.value_or(11)));
    RC_ASSERT(!below || *below <= 1e-7);
  });
}

}  // namespace
}  // namespace brimline
