// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/station/compare/households.h"

#include <algorithm>
#include <cmath>

#include "analysis/panel/uncertainty.h"

namespace brimline::tests {

namespace {

using Water = std::map<std::string, double>;
using Random = std::mt19937_64;

double between(Random& random, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(random);
}
double around(Random& random, double mean, double sd) {
  return std::normal_distribution<double>(mean, sd)(random);
}
bool chance(Random& random, double share) {
  return between(random, 0, 1) < share;
}

const Water kNone = {{"total_alkalinity", 0}, {"calcium_hardness", 0}, {"cyanuric_acid", 0}, {"salt", 0}};

Water some_pool(Random& random) {
  return {{"total_alkalinity", between(random, 70, 140)}, {"calcium_hardness", between(random, 180, 420)},
          {"cyanuric_acid", between(random, 30, 80)},     {"salt", between(random, 600, 3600)},
          {"free_chlorine", between(random, 1.5, 4)},     {"ph", between(random, 7.2, 7.8)}};
}
Water some_tap(Random& random) {
  return {{"total_alkalinity", between(random, 40, 140)},
          {"calcium_hardness", between(random, 40, 220)},
          {"cyanuric_acid", 0},
          {"salt", between(random, 20, 120)}};
}

// Equivalents and formula masses (IUPAC weights): 1 mol of bicarbonate is 50.04 g of alkalinity as CaCO3, of
// CaCl2 100.09 g of hardness and two of chloride (116.89 g as NaCl), of cyanuric acid 129.07 g.
struct Told {
  const char* chemical;
  const char* analyte;
  double grams;  // of the reading, a mole
  double low, high;
};
constexpr Told kTold[] = {{"sodium_bicarbonate", "total_alkalinity", 50.04, 20, 60},
                          {"calcium_chloride", "calcium_hardness", 100.09, 50, 140},
                          {"cyanuric_acid", "cyanuric_acid", 129.07, 15, 40}};

// The dose is reckoned on the volume on file and lands in the true one.
void dose(Random& random, SimulatedHousehold& h, double on_file, bool everyday, Water& water, Visit& visit) {
  const Told& told = kTold[std::uniform_int_distribution<size_t>(0, 2)(random)];
  const double mol = between(random, told.low, told.high) * on_file / told.grams;
  const double put = mol * (everyday ? around(random, 1, 0.03) : 1);
  water[told.analyte] += put * told.grams / h.volume;
  if (told.analyte == std::string("calcium_hardness")) water["salt"] += put * 116.89 / h.volume;
  if (told.analyte ==
      std::string("cyanuric_acid"))  // titrates as an acid, one equivalent in part: by pKa 6.88
    water["total_alkalinity"] += 0;
  visit.bottle.additions_since.push_back({told.chemical, mol, between(random, 2, 12)});
  h.dosed = true;
}

void everyday_month(Random& random, double months, const Water& tap, Water& water) {
  const double evaporated = between(random, 0, 0.08) * months, splashed = between(random, 0, 0.03) * months;
  for (auto& [analyte, value] : water)
    if (const auto fill = tap.find(analyte); fill != tap.end())
      value = value * (1 - splashed) + fill->second * (splashed + evaporated);
  water["total_alkalinity"] += around(random, 0, 2);
}

void happen(Random& random, Truth truth, const Water& tap, SimulatedHousehold& h, Water& water) {
  switch (truth) {
    case Truth::nothing:
      break;
    case Truth::replaced: {
      h.replaced = between(random, 0.12, 0.6);
      const Water& in = chance(random, 0.2) ? kNone : tap;  // rain, else the hose
      for (auto& [analyte, value] : water)
        if (in.contains(analyte)) value = value * (1 - h.replaced) + in.at(analyte) * h.replaced;
      break;
    }
    case Truth::evaporation: {
      const double share = between(random, 0.2, 0.4);  // topped up from a hard tap
      for (auto& [analyte, value] : water)
        if (tap.contains(analyte)) value += share * tap.at(analyte);
      break;
    }
    case Truth::acid: {  // 36.46 g of HCl: 50.04 g of alkalinity, 58.44 g of salt
      const double fell = std::min(water["total_alkalinity"] - 20, between(random, 22, 60));
      water["total_alkalinity"] -= fell;
      if (chance(random, 0.6)) water["salt"] += fell * 58.44 / 50.04;
      break;
    }
    case Truth::tablets: {  // a month of 1 to 2 mg/L a day: +6.07 and -7.06 a 10 mg/L of chlorine
      const double fed = std::min(between(random, 30, 60), (water["total_alkalinity"] - 20) / 0.706);
      water["cyanuric_acid"] += 0.607 * fed;
      water["total_alkalinity"] -= 0.706 * fed;
      water["salt"] += 0.824 * fed;
      break;
    }
    case Truth::calcium_hypochlorite: {  // +7.06 a 10 mg/L of chlorine
      const double fed = between(random, 50, 110);
      water["calcium_hardness"] += 0.706 * fed;
      water["salt"] += 0.824 * fed;
      break;
    }
    case Truth::demand:
      water["free_chlorine"] = between(random, 0, 0.3);
      if (chance(random, 0.5)) water["cyanuric_acid"] *= between(random, 0.3, 0.6);
      break;
  }
}

std::vector<Reading> read(Random& random, const Water& water) {
  std::vector<Reading> out;
  for (const auto& [analyte, value] : water) {
    Reading r;
    r.analyte = analyte;
    r.method = Method::photometer;
    r.value = value;
    r.value = std::max(0.0, around(random, value, reading_sd(r)));
    out.push_back(r);
  }
  return out;
}

}  // namespace

const char* name_of(Truth truth) {
  static const char* names[] = {"nothing", "replaced", "evaporation", "acid",
                                "tablets", "cal hypo", "demand"};
  return names[static_cast<int>(truth)];
}

const char* explanation_of(Truth truth) {
  static const char* ids[] = {"",
                              "water_replaced",
                              "evaporation",
                              "acid_or_tablets",
                              "acid_or_tablets",
                              "calcium_hypochlorite",
                              "chlorine_demand"};
  return ids[static_cast<int>(truth)];
}

SimulatedHousehold invent(Random& random, Truth truth, bool everyday, int visits) {
  SimulatedHousehold h;
  h.truth = truth;
  const double on_file = between(random, 25, 90);
  h.volume = on_file * std::max(0.6, around(random, 1, 0.1));
  Water water = some_pool(random), tap = some_tap(random);
  if (truth == Truth::evaporation) tap["calcium_hardness"] = between(random, 180, 350);
  const bool tap_read = chance(random, 0.8);
  Instant at = *Instant::parse("2026-04-02T09:00:00Z");
  for (int i = 0; i < visits; ++i) {
    Visit visit;
    visit.id = "H-" + std::to_string(i);
    visit.vessel.kind = VesselKind::pool;
    visit.vessel.place = Place::outdoor;
    visit.vessel.sanitizer = Sanitizer::chlorine;
    visit.vessel.volume = Volume::cubic_metres(on_file);
    visit.vessel.volume_relative_sd = 0.1;
    if (i > 0) {
      const int days = std::uniform_int_distribution<int>(18, 42)(random);
      at.utc += std::chrono::hours(24 * days);
      if (everyday) everyday_month(random, days / 30.0, tap, water);
      if (i + 1 == visits) happen(random, truth, tap, h, water);
      if (chance(random, 0.6)) dose(random, h, on_file, everyday, water, visit);
    }
    visit.bottle.taken_at = visit.bottle.tested_at = at;
    visit.bottle.readings = read(random, water);
    if (tap_read) visit.bottle.fill_water = read(random, tap);
    h.visits.push_back(std::move(visit));
  }
  return h;
}

}  // namespace brimline::tests
