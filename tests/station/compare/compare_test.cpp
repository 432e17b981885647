// SPDX-License-Identifier: GPL-3.0-or-later
// Invented pairs of visits of which the truth is known: doses by stoichiometry, dilution by mass balance,
// readings with the errors of their methods.
#include "station/compare/compare.h"

#include <algorithm>
#include <cmath>
#include <iostream>
#include <map>
#include <random>

#include <gtest/gtest.h>

#include "analysis/panel/uncertainty.h"

namespace brimline {
namespace {

using Values = std::map<std::string, double>;
using Random = std::mt19937_64;

const Words& english() {
  static const Words words;
  return words;
}

Visit visit_of(const Values& values, const char* taken, double volume = 50) {
  Visit v;
  v.bottle.taken_at = Instant::parse(taken);
  v.bottle.tested_at = v.bottle.taken_at;
  v.vessel.kind = VesselKind::pool;
  v.vessel.sanitizer = Sanitizer::chlorine;
  v.vessel.volume = Volume::cubic_metres(volume);
  v.vessel.volume_relative_sd = 0.1;
  for (const auto& [analyte, value] : values) {
    Reading r;
    r.analyte = analyte;
    r.value = value;
    r.method = Method::photometer;
    v.bottle.readings.push_back(r);
  }
  return v;
}

Visit earlier_of(const Values& values) {
  return visit_of(values, "2026-05-14T08:00:00Z");
}
Visit later_of(const Values& values) {
  return visit_of(values, "2026-06-14T08:00:00Z");
}

void add_noise(Random& random, Visit& visit) {
  for (Reading& r : visit.bottle.readings)
    r.value = std::max(0.0, std::normal_distribution<double>(r.value, reading_sd(r))(random));
}

const Values kPool = {{"free_chlorine", 2.5},    {"ph", 7.5},           {"total_alkalinity", 70},
                      {"calcium_hardness", 300}, {"cyanuric_acid", 60}, {"salt", 1800}};

Values with(Values values, const std::string& analyte, double value) {
  values[analyte] = value;
  return values;
}

Comparison compare_two(const Visit& a, const Visit& b) {
  return compare(std::vector<Visit>{a, b}, english());
}

ChangeVerdict verdict(const Comparison& c, std::string_view analyte) {
  return c.find(analyte)->verdict;
}

bool explains(const Comparison& c, std::string_view id) {
  return std::any_of(c.explanations.begin(), c.explanations.end(),
                     [&](const Explanation& e) { return e.id == id; });
}

// 16.79 g of sodium bicarbonate a m3 raise alkalinity by 10 mg/L CaCO3: 84.01 / 50.04 of it by equivalents.
Addition bicarbonate_for(double rise, double volume) {
  return {"sodium_bicarbonate", rise / 10 * 16.79 / 84.01 * volume, 20.0};
}

TEST(Compare, AToldDoseIsJudgedByWhatItShouldDo) {
  const Visit before = earlier_of(kPool);
  const auto now = [&](double alkalinity) {
    Visit v = later_of(with(kPool, "total_alkalinity", alkalinity));
    v.bottle.additions_since = {bicarbonate_for(40, 50)};
    return compare_two(before, v);
  };
  EXPECT_NEAR(now(110).find("total_alkalinity")->expected, 110, 0.1);
  EXPECT_EQ(verdict(now(110), "total_alkalinity"), ChangeVerdict::as_expected);
  EXPECT_EQ(verdict(now(70), "total_alkalinity"), ChangeVerdict::less);
  EXPECT_EQ(verdict(now(150), "total_alkalinity"), ChangeVerdict::more);
  EXPECT_TRUE(explains(now(110), "told_dose"));
  EXPECT_FALSE(explains(now(70), "told_dose"));
  EXPECT_TRUE(explains(now(70), "dose_not_seen"));
  EXPECT_TRUE(explains(now(150), "dose_beyond"));
}

TEST(Compare, AMoveNobodyToldOfIsCalledThat) {
  const Comparison c = compare_two(earlier_of(kPool), later_of(with(kPool, "total_alkalinity", 120)));
  EXPECT_EQ(verdict(c, "total_alkalinity"), ChangeVerdict::not_told);
  EXPECT_EQ(verdict(c, "calcium_hardness"), ChangeVerdict::as_expected);
  EXPECT_TRUE(explains(c, "alkali_added"));
}

TEST(Compare, ADoseWithoutAnAmountGivesNoExpectation) {
  Visit later = later_of(with(kPool, "total_alkalinity", 100));
  later.bottle.additions_since = {{"sodium_bicarbonate", std::nullopt, std::nullopt}};
  EXPECT_EQ(verdict(compare_two(earlier_of(kPool), later), "total_alkalinity"), ChangeVerdict::not_told);
}

TEST(Compare, ThePlanAsToldCountsWhereNothingWasSaid) {
  Visit before = earlier_of(kPool);
  before.plan_as_told = Plan{};
  Step step;
  step.action = Action::add;
  step.chemical = "sodium_bicarbonate";
  step.active_mol = bicarbonate_for(40, 50).active_mol;
  before.plan_as_told->steps = {step};
  const Comparison c = compare_two(before, later_of(with(kPool, "total_alkalinity", 110)));
  EXPECT_EQ(verdict(c, "total_alkalinity"), ChangeVerdict::as_expected);
}

// Bicarbonate of the visit between counts too, where alkalinity was not read then.
TEST(Compare, DosesAddUpOverVisits) {
  Visit middle = visit_of({{"ph", 7.5}}, "2026-05-28T08:00:00Z");
  middle.bottle.additions_since = {bicarbonate_for(20, 50)};
  Visit later = later_of(with(kPool, "total_alkalinity", 110));
  later.bottle.additions_since = {bicarbonate_for(20, 50)};
  const Comparison c = compare(std::vector<Visit>{earlier_of(kPool), middle, later}, english());
  EXPECT_NEAR(c.find("total_alkalinity")->expected, 110, 0.1);
}

// Dilution by mass balance: C1 = C0 (1 - f) + Cfill f.
Values diluted(const Values& values, double f, const Values& fill) {
  Values out = values;
  for (auto& [analyte, value] : out)
    if (analyte != "ph" && analyte != "free_chlorine")
      value = value * (1 - f) + f * (fill.contains(analyte) ? fill.at(analyte) : 0);
  return out;
}

TEST(Compare, ReplacedWaterIsFoundWithinItsError) {
  const Values fill = {{"total_alkalinity", 90}, {"calcium_hardness", 120}, {"salt", 60}};
  Random random(3);
  int inside = 0, found = 0;
  for (int i = 0; i < 300; ++i) {
    const double f = std::uniform_real_distribution<double>(0.15, 0.6)(random);
    Visit a = earlier_of(kPool), b = later_of(diluted(kPool, f, fill));
    add_noise(random, a);
    add_noise(random, b);
    b.bottle.fill_water = visit_of(fill, "2026-06-14T08:00:00Z").bottle.readings;
    const Comparison c = compare_two(a, b);
    if (!c.water_replaced) continue;
    ++found;
    inside += std::abs(c.water_replaced->fraction - f) <= 1.96 * c.water_replaced->sd;
    EXPECT_TRUE(explains(c, "water_replaced"));
  }
  std::cout << "water replaced: found " << found << " of 300, within 1.96 sd " << inside << "\n";
  EXPECT_GE(found, 270);
  EXPECT_GE(inside, found * 0.92);
}

TEST(Compare, AToldDrainIsExpectedAndSeen) {
  Visit before = earlier_of(kPool);
  before.plan_as_told = Plan{};
  Step drain;
  drain.action = Action::drain_refill;
  drain.fraction = 0.33;
  before.plan_as_told->steps = {drain};
  const Values fill = {{"total_alkalinity", 90}, {"calcium_hardness", 120}, {"salt", 60}};
  const auto now = [&](double f) {
    Visit later = later_of(diluted(kPool, f, fill));
    later.bottle.fill_water = visit_of(fill, "2026-06-14T08:00:00Z").bottle.readings;
    return compare_two(before, later);
  };
  const Comparison done = now(0.33);
  for (const char* analyte : {"cyanuric_acid", "calcium_hardness", "salt", "total_alkalinity"})
    // and what topping up for a month's evaporation brings: 4 % of the volume, of the fill
    EXPECT_NEAR(done.find(analyte)->expected,
                done.find(analyte)->later + 0.04 * 31 / 30 * (fill.contains(analyte) ? fill.at(analyte) : 0),
                1e-9)
        << analyte;
  ASSERT_TRUE(done.water_replaced);
  EXPECT_NEAR(done.water_replaced->fraction, 0.33, 0.02);
  EXPECT_EQ(verdict(now(0), "cyanuric_acid"), ChangeVerdict::more);  // the drain was not done
}

TEST(Compare, NoWaterIsReplacedWhereNoneWas) {
  Random random(4);
  int found = 0;
  for (int i = 0; i < 300; ++i) {
    Visit a = earlier_of(kPool), b = later_of(kPool);
    add_noise(random, a);
    add_noise(random, b);
    found += compare_two(a, b).water_replaced.has_value();
  }
  std::cout << "water replaced where none was: " << found << " of 300\n";
  EXPECT_LE(found, 15);
}

// 1.109 g of calcium chloride a m3 raise calcium hardness by 1 mg/L CaCO3: 110.98 over 100.09.
TEST(Compare, TheVolumeIsFoundFromTheDoses) {
  Random random(5);
  int inside = 0, agrees = 0, disagrees = 0;
  for (int i = 0; i < 100; ++i) {
    const bool wrong = i % 2 == 1;
    const double truth = wrong ? 80 : std::normal_distribution<double>(50, 5)(random);
    const double mol = 120. * 50 / 100.0869;
    Visit a = earlier_of(kPool);
    Visit b = later_of(with(kPool, "calcium_hardness", 300 + mol * 100.0869 / truth));
    b.bottle.additions_since = {{"calcium_chloride", mol, 15.0}, bicarbonate_for(60, 50)};
    for (Reading& r : b.bottle.readings)
      if (r.analyte == "total_alkalinity") r.value += 60 * 50 / truth;
    for (Visit* visit : {&a, &b}) {
      for (Reading& r : visit->bottle.readings) r.sd = 0.01 * r.value;  // read with care
      add_noise(random, *visit);
    }
    const Comparison c = compare_two(a, b);
    ASSERT_TRUE(c.volume) << i;
    if (wrong)
      disagrees += !c.volume->agrees;
    else
      agrees += c.volume->agrees, inside += std::abs(c.volume->m3 - truth) <= 1.96 * c.volume->sd;
  }
  std::cout << "volume: within 1.96 sd " << inside << " of 50, agrees " << agrees
            << " of 50, wrong file caught " << disagrees << " of 50\n";
  EXPECT_GE(inside, 45);
  EXPECT_GE(agrees, 45);
  EXPECT_GE(disagrees, 40);
}

TEST(Compare, WithoutADoseNoVolumeIsClaimed) {
  EXPECT_FALSE(compare_two(earlier_of(kPool), later_of(kPool)).volume);
}

TEST(Compare, CausesAreToldApart) {
  const Visit before = earlier_of(kPool);
  const auto after = [&](const Values& values) { return compare_two(before, later_of(values)); };
  EXPECT_TRUE(explains(after(with(kPool, "total_alkalinity", 40)), "acid_or_tablets"));
  EXPECT_TRUE(explains(after(with(kPool, "free_chlorine", 0)), "chlorine_demand"));
  EXPECT_TRUE(explains(after(with(kPool, "calcium_hardness", 400)), "calcium_hypochlorite"));
  EXPECT_TRUE(explains(after(with(kPool, "cyanuric_acid", 25)), "stabilizer_lost"));
  EXPECT_TRUE(explains(after(with(with(kPool, "calcium_hardness", 390), "salt", 2300)), "evaporation"));
  EXPECT_TRUE(after(kPool).explanations.empty());
  EXPECT_FALSE(explains(after(diluted(kPool, 0.4, {{"total_alkalinity", 0}})), "acid_or_tablets"));
}

// Of pairs in which nothing but the errors of reading differs, 5 % of the changes at most are called a
// change.
TEST(Compare, AnUnchangedWaterIsAsExpected) {
  Random random(6);
  int changes = 0, moved = 0;
  for (int i = 0; i < 300; ++i) {
    Visit a = earlier_of(kPool), b = later_of(kPool);
    add_noise(random, a);
    add_noise(random, b);
    for (const ReadingChange& change : compare_two(a, b).changes) {
      ++changes;
      moved += change.verdict != ChangeVerdict::as_expected;
    }
  }
  std::cout << "unchanged water: " << moved << " of " << changes << " called a change\n";
  EXPECT_LE(moved, changes / 20);
}

TEST(Compare, OneVisitComparesWithNothing) {
  EXPECT_TRUE(compare(std::vector<Visit>{earlier_of(kPool)}, english()).changes.empty());
}

}  // namespace
}  // namespace brimline
