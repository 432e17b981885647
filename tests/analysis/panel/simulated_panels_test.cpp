// SPDX-License-Identifier: GPL-3.0-or-later
// Invented waters with the errors of their methods: sound panels must pass, planted faults must be caught on
// the right analyte. Dissolved solids come from the water model, so the sums of a sound panel hold.
#include <algorithm>
#include <cmath>
#include <functional>
#include <iomanip>
#include <iostream>
#include <map>
#include <random>
#include <set>

#include <gtest/gtest.h>

#include "analysis/panel/panel.h"
#include "analysis/water/water.h"

namespace brimline {
namespace {

using Random = std::mt19937_64;
double between(Random& random, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(random);
}
bool chance(Random& random, double p) {
  return between(random, 0, 1) < p;
}

struct Simulated {
  Bottle bottle;
  Vessel vessel;
  std::vector<Bottle> earlier;
  std::map<std::string, double> truth;

  Reading* find(std::string_view analyte) {
    for (Reading& r : bottle.readings)
      if (r.analyte == analyte) return &r;
    return nullptr;
  }
};

// The truth with the method's error, shown in the method's steps.
Reading noisy(Random& random, const AnalyteId& analyte, double truth, Method method) {
  Reading r;
  r.analyte = analyte;
  r.method = method;
  r.value = truth;
  const AnalyteKind& kind = *find_analyte(analyte);
  const double sd = reading_sd(r, kind);
  const double step = std::max(kind.method(method)->step, std::pow(10, -kind.decimals));
  r.value = std::max(0.0, std::round(std::normal_distribution<double>(truth, sd)(random) / step) * step);
  return r;
}

std::map<std::string, double> true_water(Random& random, bool cell) {
  std::map<std::string, double> t;
  t["free_chlorine"] = between(random, 0.8, 4.5);
  t["total_chlorine"] = t["free_chlorine"] + between(random, 0, 0.4);
  t["ph"] = between(random, 7.0, 8.0);
  t["total_alkalinity"] = between(random, 60, 160);
  t["calcium_hardness"] = between(random, 150, 450);
  t["cyanuric_acid"] = chance(random, 0.2) ? 0 : between(random, 20, 80);
  t["iron"] = chance(random, 0.7) ? 0.01 : between(random, 0, 0.2);
  t["copper"] = chance(random, 0.7) ? 0.01 : between(random, 0, 0.3);
  t["salt"] = cell ? between(random, 2800, 3600) : between(random, 350, 1500);
  t["magnesium_hardness"] = between(random, 20, 150);
  t["total_hardness"] = t["calcium_hardness"] + t["magnesium_hardness"];
  WaterReadings w;
  w.ph = t["ph"];
  w.total_alkalinity = t["total_alkalinity"];
  w.calcium_hardness = t["calcium_hardness"];
  w.magnesium_hardness = t["magnesium_hardness"];
  w.cyanuric_acid = t["cyanuric_acid"];
  w.free_chlorine = t["free_chlorine"];
  w.salt = t["salt"];
  const auto water = water_from_readings(w);
  t["tds"] = water ? water->dissolved_solids() : t["salt"] + t["total_alkalinity"];
  t["conductivity"] = t["tds"] / between(random, 0.5, 0.7);
  return t;
}

Method method_for(Random& random, const AnalyteId& analyte, double value) {
  if (analyte == "conductivity" || analyte == "tds") return Method::probe;
  if (analyte == "ph" && chance(random, 0.2)) return Method::probe;
  const bool titrated = find_analyte(analyte)->method(Method::drop_titration) != nullptr;
  const MethodKind* photometer = find_analyte(analyte)->method(Method::photometer);
  if (titrated && photometer && value > 0.9 * photometer->range.high) return Method::drop_titration;
  return titrated && chance(random, 0.25) ? Method::drop_titration : Method::photometer;
}

void read_all(Random& random, const std::map<std::string, double>& truth, Bottle& bottle) {
  for (const auto& [analyte, value] : truth) {
    const bool seldom =
        analyte == "conductivity" || analyte == "magnesium_hardness" || analyte == "total_hardness";
    if (seldom && chance(random, 0.7)) continue;
    bottle.readings.push_back(noisy(random, analyte, value, method_for(random, analyte, value)));
    if (!chance(random, 0.1)) continue;
    Reading repeat = noisy(random, analyte, value, *bottle.readings.back().method);
    repeat.repeat_of = static_cast<int>(bottle.readings.size()) - 1;
    bottle.readings.push_back(repeat);
  }
}

Simulated sound(Random& random) {
  Simulated s;
  const bool cell = chance(random, 0.25);
  s.vessel.sanitizer = cell ? Sanitizer::salt_chlorine : Sanitizer::chlorine;
  s.vessel.kind = VesselKind::pool;
  s.vessel.volume = Volume::cubic_metres(between(random, 20, 120));
  s.bottle.sample_temperature = Temperature::celsius(between(random, 17, 28));
  s.bottle.taken_at = Instant::parse("2026-06-14T08:00:00Z");
  s.bottle.tested_at = s.bottle.taken_at;
  s.bottle.tested_at->utc += std::chrono::minutes(static_cast<int>(between(random, 10, 115)));
  s.truth = true_water(random, cell);
  read_all(random, s.truth, s.bottle);
  if (chance(random, 0.7)) {
    std::map<std::string, double> before = s.truth;
    for (auto& [analyte, value] : before)
      value *= analyte == "ph" ? between(random, 0.97, 1.03) : between(random, 0.85, 1.15);
    before["total_chlorine"] = std::max(before["total_chlorine"], before["free_chlorine"]);
    Bottle earlier;
    earlier.taken_at = Instant::parse("2026-05-15T08:00:00Z");
    earlier.tested_at = earlier.taken_at;
    read_all(random, before, earlier);
    s.earlier = {earlier};
  }
  return s;
}

// The one reading of the analyte, made new.
Reading& only(Simulated& s, const AnalyteId& analyte, double value, Method method = Method::photometer) {
  std::erase_if(s.bottle.readings, [&](const Reading& r) { return r.analyte == analyte; });
  Reading r;
  r.analyte = analyte;
  r.value = value;
  r.method = method;
  s.bottle.readings.push_back(r);
  return s.bottle.readings.back();
}

struct Planted {
  const char* name;
  std::set<AnalyteId> right;  // caught if a check of repeat or worse names one of these
  std::function<void(Random&, Simulated&)> plant;
};

const std::vector<Planted>& planted() {
  static const std::vector<Planted> rows = {
      {"vials exchanged",
       {"free_chlorine", "total_chlorine"},
       [](Random& r, Simulated& s) {
         only(s, "total_chlorine", s.truth["free_chlorine"]);
         only(s, "free_chlorine", s.truth["free_chlorine"] + between(r, 0.8, 2.5));
       }},
      {"over range",
       {"free_chlorine"},
       [](Random&, Simulated& s) { only(s, "free_chlorine", 10).clipped = Clip::above; }},
      {"bleached",
       {"free_chlorine"},
       [](Random& r, Simulated& s) {
         only(s, "free_chlorine", between(r, 0, 0.2));
         only(s, "total_chlorine", between(r, 0, 0.2));
         s.bottle.additions_since = {{"calcium_hypochlorite", 20.0, between(r, 0.5, 1.8)}};
       }},
      {"probe adrift",
       {"ph"},
       [](Random& r, Simulated& s) { only(s, "ph", between(r, 9.5, 12), Method::probe); }},
      {"old bottle",
       {"free_chlorine"},
       [](Random& r, Simulated& s) {
         s.bottle.tested_at->utc += std::chrono::minutes(static_cast<int>(60 * between(r, 6.1, 20)));
       }},
      {"day-old bottle",
       {"total_alkalinity"},
       [](Random& r, Simulated& s) {
         s.bottle.tested_at->utc += std::chrono::minutes(static_cast<int>(60 * between(r, 24.1, 90)));
       }},
      {"monopersulfate",
       {"total_chlorine"},
       [](Random& r, Simulated& s) {
         only(s, "free_chlorine", s.truth["free_chlorine"]);
         only(s, "total_chlorine", s.truth["free_chlorine"] + between(r, 0.6, 4));
         s.bottle.additions_since = {{"potassium_monopersulfate", 5.0, between(r, 0.5, 1.9)}};
       }},
      {"manganese",
       {"free_chlorine"},
       [](Random& r, Simulated& s) { only(s, "manganese", between(r, 0.5, 1.5)); }},
      {"stabilizer past the tube",
       {"cyanuric_acid"},
       [](Random& r, Simulated& s) {
         only(s, "cyanuric_acid", between(r, 102, 180), Method::turbidity_tube);
       }},
      {"last month's numbers",
       {"ph", "total_alkalinity", "calcium_hardness"},
       [](Random&, Simulated& s) {
         Bottle earlier = s.bottle;
         earlier.taken_at = earlier.tested_at = Instant::parse("2026-05-15T08:00:00Z");
         s.earlier = {earlier};
       }},
      {"hardness exchanged",
       {"calcium_hardness", "total_hardness"},
       [](Random& r, Simulated& s) {
         only(s, "total_hardness", s.truth["calcium_hardness"]);
         only(s, "calcium_hardness", s.truth["calcium_hardness"] + between(r, 150, 300),
              Method::drop_titration);
       }},
      {"solids probe at half",
       {"tds"},
       [](Random& r, Simulated& s) {
         only(s, "tds", s.truth["tds"] * between(r, 0.3, 0.55), Method::probe);
       }},
      {"second pH elsewhere",
       {"ph"},
       [](Random& r, Simulated& s) {
         only(s, "ph", 7.4);
         Reading second = s.bottle.readings.back();
         second.value += between(r, 0.4, 0.8);
         s.bottle.readings.push_back(second);
       }},
      {"two methods apart",
       {"calcium_hardness"},
       [](Random& r, Simulated& s) {
         only(s, "calcium_hardness", 250);
         Reading second = s.bottle.readings.back();
         second.method = Method::drop_titration;
         second.value += between(r, 90, 250);
         s.bottle.readings.push_back(second);
       }},
      {"cold sample",
       {"free_chlorine"},
       [](Random& r, Simulated& s) {
         only(s, "free_chlorine", s.truth["free_chlorine"]);
         s.bottle.sample_temperature = Temperature::celsius(between(r, 4, 14.5));
       }},
      {"just dosed",
       {"ph"},
       [](Random& r, Simulated& s) {
         s.bottle.additions_since = {{"hydrochloric_acid", 20.0, between(r, 0.01, 0.3)}};
       }},
      {"much chlorine on the dye",
       {"ph"},
       [](Random& r, Simulated& s) {
         only(s, "free_chlorine", between(r, 11, 25)).dilution = 5;
         only(s, "total_chlorine", s.bottle.readings.back().value).dilution = 5;
         only(s, "ph", 8.1);
       }},
      {"alkalinity a tenth",
       {"total_alkalinity"},
       [](Random& r, Simulated& s) {
         only(s, "cyanuric_acid", between(r, 60, 95));
         only(s, "ph", between(r, 7.3, 7.9));
         only(s, "total_alkalinity", between(r, 6, 13));
       }},
      {"calcium ten times",
       {"calcium_hardness"},
       [](Random&, Simulated& s) {
         only(s, "calcium_hardness", 10 * s.truth["calcium_hardness"], Method::drop_titration);
       }},
      {"calcium leaps",
       {"calcium_hardness"},
       [](Random& r, Simulated& s) {
         Bottle earlier = s.bottle;
         earlier.taken_at = earlier.tested_at = Instant::parse("2026-06-07T08:00:00Z");
         s.earlier = {earlier};
         only(s, "calcium_hardness", s.truth["calcium_hardness"] + between(r, 250, 500),
              Method::drop_titration);
       }},
      {"chlorine in biguanide",
       {"free_chlorine"},
       [](Random&, Simulated& s) {
         s.vessel.sanitizer = Sanitizer::biguanide;
         only(s, "biguanide", 40);
       }},
      {"phosphate in ppb",
       {"phosphate"},
       [](Random& r, Simulated& s) { only(s, "phosphate", between(r, 50, 2000)); }},
      {"borate as boric acid",
       {"borate"},
       [](Random& r, Simulated& s) {
         only(s, "borate", between(r, 30, 50) * 61.83 / 10.81, Method::drop_titration);
       }},
      {"diluted pH", {"ph"}, [](Random&, Simulated& s) { only(s, "ph", 7.4).dilution = 2; }}};
  return rows;
}

std::vector<Check> serious(const Simulated& s) {
  std::vector<Check> checks = check_bottle(s.bottle, s.vessel, s.earlier);
  std::erase_if(checks, [](const Check& c) { return c.verdict < Verdict::repeat; });
  return checks;
}

bool names_any(const std::vector<Check>& checks, const std::set<AnalyteId>& right) {
  return std::any_of(checks.begin(), checks.end(), [&](const Check& check) {
    return std::any_of(check.analytes.begin(), check.analytes.end(),
                       [&](const AnalyteId& a) { return right.contains(a); });
  });
}

TEST(SimulatedPanels, SoundOnesPass) {
  Random random(20260614);
  int alarmed = 0;
  std::map<std::string, int> which;
  for (int i = 0; i < 1000; ++i) {
    const std::vector<Check> checks = serious(sound(random));
    alarmed += !checks.empty();
    for (const Check& check : checks) ++which[check.id];
  }
  std::cout << "sound panels with repeat or worse: " << alarmed << " of 1000\n";
  for (const auto& [id, count] : which) std::cout << "  " << id << " " << count << "\n";
  EXPECT_LT(alarmed, 30);
}

bool fires(const std::vector<Check>& checks, std::string_view id) {
  return std::any_of(checks.begin(), checks.end(), [&](const Check& check) { return check.id == id; });
}

// The same water read twice has equal digits now and then: asked about in at most one pair of twenty.
TEST(SimulatedPanels, EqualDigitsOfAnUnchangedWaterAreSeldomAskedAbout) {
  Random random(99);
  int asked = 0, copied = 0;
  for (int i = 0; i < 1000; ++i) {
    Simulated s = sound(random);
    Bottle earlier;
    earlier.taken_at = earlier.tested_at = Instant::parse("2026-05-15T08:00:00Z");
    read_all(random, s.truth, earlier);
    s.earlier = {earlier};
    const std::vector<Check> checks = check_bottle(s.bottle, s.vessel, s.earlier);
    asked += fires(checks, "value_as_last_time");
    copied += fires(checks, "same_as_last_time");
  }
  std::cout << "equal to last time: asked about in " << asked << " of 1000, called copied in " << copied
            << "\n";
  EXPECT_LT(asked, 70);  // 50 expected at most, and 3 sds of that
  EXPECT_EQ(copied, 0);
}

// Two readings of one sample, apart by the method's own error or by eight times that.
TEST(SimulatedPanels, ScatteredRepeatsAreReadAgain) {
  Random random(314);
  int honest = 0, wild = 0;
  for (int i = 0; i < 1000; ++i) {
    Simulated s = sound(random);
    const double ph = s.truth["ph"];
    only(s, "ph", 0) = noisy(random, "ph", ph, Method::photometer);
    const int first = static_cast<int>(s.bottle.readings.size()) - 1;
    Reading again = noisy(random, "ph", ph, Method::photometer);
    again.repeat_of = first;
    s.bottle.readings.push_back(again);
    honest += fires(check_bottle(s.bottle, s.vessel, s.earlier), "repeats_scatter");
    s.bottle.readings.back().value += (chance(random, 0.5) ? 8 : -8) * reading_sd(again);
    wild += fires(check_bottle(s.bottle, s.vessel, s.earlier), "repeats_scatter");
  }
  std::cout << "repeats said to scatter: honest " << honest << ", eight sds apart " << wild << " of 1000\n";
  EXPECT_LT(honest, 20);
  EXPECT_GT(wild, 970);  // the bound is 4.4 sds apart, so 99.5 % of these lie beyond it
}

TEST(SimulatedPanels, PlantedFaultsAreCaughtOnTheRightAnalyte) {
  struct Count {
    int planted = 0, right = 0, other = 0;
  };
  std::map<std::string, Count> table;
  Random random(7);
  int caught = 0;
  for (int i = 0; i < 1000; ++i) {
    const Planted& fault = planted()[i % planted().size()];
    Simulated s = sound(random);
    fault.plant(random, s);
    const std::vector<Check> checks = serious(s);
    Count& count = table[fault.name];
    ++count.planted;
    const bool right = names_any(checks, fault.right);
    caught += right;
    count.right += right;
    count.other += !right && !checks.empty();
  }
  std::cout << std::left << std::setw(28) << "planted fault"
            << "planted  right  other  missed\n";
  for (const auto& [name, c] : table)
    std::cout << std::setw(28) << name << std::setw(9) << c.planted << std::setw(7) << c.right << std::setw(7)
              << c.other << c.planted - c.right - c.other << "\n";
  std::cout << "caught " << caught << " of 1000\n";
  EXPECT_GE(caught, 950);
}

}  // namespace
}  // namespace brimline
