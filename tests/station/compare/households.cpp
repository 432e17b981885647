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

constexpr const char* kDissolved[] = {"total_alkalinity", "calcium_hardness", "cyanuric_acid", "salt"};

Water some_pool(Random& random, bool salt_cell) {
  return {{"total_alkalinity", between(random, 70, 140)},
          {"calcium_hardness", between(random, 180, 420)},
          {"cyanuric_acid", between(random, 30, 80)},
          {"salt", salt_cell ? between(random, 2700, 3600) : between(random, 600, 2400)},
          {"free_chlorine", between(random, 1.5, 4)},
          {"ph", between(random, 7.2, 7.8)}};
}
Water some_tap(Random& random) {
  return {{"total_alkalinity", between(random, 40, 140)},
          {"calcium_hardness", between(random, 40, 220)},
          {"cyanuric_acid", 0},
          {"salt", between(random, 20, 120)}};
}

void mix_in(Water& water, const Water& fill, double share) {
  for (const char* analyte : kDissolved)
    water[analyte] = water[analyte] * (1 - share) + fill.at(analyte) * share;
}

// Equivalents and formula masses (IUPAC weights): 1 mol of bicarbonate is 50.04 g of alkalinity as CaCO3, of
// CaCl2 100.09 g of hardness and two of chloride (116.89 g as NaCl), of cyanuric acid 129.07 g, which
// titrates as no alkalinity until a base takes its proton.
struct Told {
  const char* chemical;
  const char* analyte;
  double grams;  // of the reading, a mole
  double low, high;
};
constexpr Told kTold[] = {{"sodium_bicarbonate", "total_alkalinity", 50.04, 20, 60},
                          {"calcium_chloride", "calcium_hardness", 100.09, 50, 140},
                          {"cyanuric_acid", "cyanuric_acid", 129.07, 15, 40}};

// Reckoned on the volume on file; lands in the true one, if it is put in.
void tell_dose(Random& random, SimulatedHousehold& h, double on_file, double put_share, Water& water,
               Visit& visit) {
  const Told& told = kTold[std::uniform_int_distribution<size_t>(0, 2)(random)];
  const double mol = between(random, told.low, told.high) * on_file / told.grams;
  const double put = mol * put_share;
  water[told.analyte] += put * told.grams / h.volume;
  if (told.analyte == std::string("calcium_hardness")) water["salt"] += put * 116.89 / h.volume;
  visit.bottle.additions_since.push_back({told.chemical, mol, between(random, 2, 12)});
  h.dosed = true;
}

struct Home {
  Water tap;
  bool salt_cell, salt_read;
  bool titrates;  // alkalinity and hardness by drops, not the photometer
};

// A month: inches of evaporation topped up, splash and backwash, chlorine fed by hand (1.65 mg/L of salt a
// mg/L of it), a little acid for pH or bicarbonate that nobody tells of.
void everyday_month(Random& random, double months, const Home& home, Water& water) {
  const double evaporated = between(random, 0, 0.08) * months, splashed = between(random, 0, 0.04) * months;
  mix_in(water, home.tap, splashed);
  for (const char* analyte : kDissolved) water[analyte] += evaporated * home.tap.at(analyte);
  if (!home.salt_cell) water["salt"] += 1.65 * between(random, 0, 60) * months;
  water["total_alkalinity"] += around(random, 0, 2);
  if (chance(random, 0.25)) water["total_alkalinity"] += around(random, 0, 5);
  water["ph"] = std::clamp(water["ph"] + around(random, 0, 0.1), 7.0, 8.2);
  water["free_chlorine"] = between(random, 1.5, 4);
}

void happen(Random& random, Truth truth, const Home& home, double& replaced, Water& water) {
  switch (truth) {
    case Truth::nothing:
    case Truth::not_put_in:
      break;
    case Truth::replaced: {
      replaced = between(random, 0.12, 0.6);
      const Water rain = {
          {"total_alkalinity", 0}, {"calcium_hardness", 0}, {"cyanuric_acid", 0}, {"salt", 0}};
      mix_in(water, chance(random, 0.2) ? rain : home.tap, replaced);
      break;
    }
    case Truth::evaporation: {  // of a dry spell, topped up from a hard tap
      const double share = between(random, 0.2, 0.4);
      for (const char* analyte : kDissolved) water[analyte] += share * home.tap.at(analyte);
      break;
    }
    case Truth::acid: {  // 36.46 g of HCl: 50.04 g of alkalinity, 58.44 g of salt
      const double fell = std::min(water["total_alkalinity"] - 20, between(random, 22, 60));
      water["total_alkalinity"] -= fell;
      if (chance(random, 0.6)) water["salt"] += fell * 58.44 / 50.04;  // else dry acid
      break;
    }
    case Truth::tablets: {  // a month of 1 to 2 mg/L a day: +6.07 and -7.06 a 10 mg/L of chlorine
      const double fed = std::min(between(random, 30, 60), (water["total_alkalinity"] - 20) / 0.706);
      water["cyanuric_acid"] += 0.607 * fed;
      water["total_alkalinity"] -= 0.706 * fed;
      water["salt"] += 0.824 * fed;
      break;
    }
    case Truth::calcium_hypochlorite: {  // 2 to 4 mg/L a day; +7.06 a 10 mg/L of chlorine
      const double fed = between(random, 60, 120);
      water["calcium_hardness"] += 0.706 * fed;
      water["salt"] += 0.824 * fed;
      break;
    }
    case Truth::demand:
      water["free_chlorine"] = between(random, 0, 0.3);
      if (chance(random, 0.5)) water["cyanuric_acid"] *= between(random, 0.3, 0.6);
      break;
    case Truth::alkali:
      water["total_alkalinity"] += between(random, 25, 60);
      break;
  }
}

Reading one_reading(Random& random, const std::string& analyte, double value, Method method) {
  Reading r;
  r.analyte = analyte;
  r.method = method;
  r.value = value;
  r.value = std::max(0.0, around(random, value, reading_sd(r)));
  return r;
}

std::vector<Reading> read(Random& random, const Water& water, const Home& home, bool whole_panel) {
  std::vector<Reading> out;
  for (const auto& [analyte, value] : water) {
    const bool weekly = analyte == "free_chlorine" || analyte == "ph" || analyte == "total_alkalinity";
    if (analyte == "salt" && !home.salt_read) continue;
    if (!weekly && !whole_panel && chance(random, 0.3)) continue;
    const bool drops = home.titrates && (analyte == "total_alkalinity" || analyte == "calcium_hardness");
    out.push_back(one_reading(random, analyte, value, drops ? Method::drop_titration : Method::photometer));
  }
  return out;
}

Truth earlier_happening(Random& random) {
  constexpr Truth kMay[] = {Truth::replaced, Truth::acid, Truth::tablets, Truth::calcium_hypochlorite,
                            Truth::alkali};
  return kMay[std::uniform_int_distribution<size_t>(0, std::size(kMay) - 1)(random)];
}

Vessel vessel_of(bool salt_cell, double on_file, double relative_sd) {
  Vessel vessel;
  vessel.kind = VesselKind::pool;
  vessel.place = Place::outdoor;
  vessel.sanitizer = salt_cell ? Sanitizer::salt_chlorine : Sanitizer::chlorine;
  vessel.volume = Volume::cubic_metres(on_file);
  vessel.volume_relative_sd = relative_sd;
  return vessel;
}

}  // namespace

const char* name_of(Truth truth) {
  static const char* names[] = {"nothing",  "replaced", "evaporation", "acid",      "tablets",
                                "cal hypo", "demand",   "alkali",      "not put in"};
  return names[static_cast<int>(truth)];
}

bool SimulatedHousehold::right(std::string_view first) const {
  const Vessel& vessel = visits.back().vessel;
  const double off = (volume / vessel.volume->cubic_metres() - 1) / *vessel.volume_relative_sd;
  switch (truth) {
    case Truth::nothing:
      return first.empty() || first == "told_dose" || (first == "volume_differs" && std::abs(off) > 1.96);
    case Truth::replaced:
      return first == "water_replaced";
    case Truth::evaporation:
      return first == "evaporation";
    case Truth::acid:
      return first == "acid_or_tablets";
    case Truth::tablets:
      return first == "acid_or_tablets" || first == "tablets";
    case Truth::calcium_hypochlorite:
      return first == "calcium_hypochlorite";
    case Truth::demand:
      return first == "chlorine_demand";
    case Truth::alkali:
      return first == "alkali_added";
    case Truth::not_put_in:
      return first == "dose_not_seen";
  }
  return false;
}

SimulatedHousehold invent(Random& random, Truth truth, bool everyday, int visits) {
  SimulatedHousehold h;
  h.truth = truth;
  constexpr double kSds[] = {0.05, 0.1, 0.2};  // metered, measured with a tape, guessed
  const double on_file = between(random, 25, 90);
  const double relative_sd = everyday ? kSds[std::uniform_int_distribution<size_t>(0, 2)(random)] : 0.1;
  do {
    h.volume = on_file * around(random, 1, relative_sd);
  } while (h.volume < 0.3 * on_file);
  Home home{some_tap(random), everyday && chance(random, 0.2), true, everyday && chance(random, 0.3)};
  if (truth == Truth::evaporation) home.tap["calcium_hardness"] = between(random, 180, 350);
  home.salt_read = !everyday || home.salt_cell || chance(random, 0.75);
  Water water = some_pool(random, home.salt_cell);
  const bool tap_read = chance(random, 0.8);
  Instant at = *Instant::parse("2026-04-02T09:00:00Z");
  for (int i = 0; i < visits; ++i) {
    const bool last = i + 1 == visits;
    Visit visit;
    visit.id = "H-" + std::to_string(i);
    visit.vessel = vessel_of(home.salt_cell, on_file, relative_sd);
    if (i > 0) {
      const int days = std::uniform_int_distribution<int>(18, 42)(random);
      at.utc += std::chrono::hours(24 * days);
      if (everyday) everyday_month(random, days / 30.0, home, water);
      double replaced = 0;
      const auto happens = [&] {
        if (last)
          happen(random, truth, home, h.replaced, water);
        else if (everyday && chance(random, 0.2))
          happen(random, earlier_happening(random), home, replaced, water);
      };
      const bool forgotten = last ? truth == Truth::not_put_in : everyday && chance(random, 0.05);
      const bool told = forgotten || chance(random, 0.6), first = everyday && chance(random, 0.5);
      if (first) happens();
      if (told)
        tell_dose(random, h, on_file, forgotten ? 0 : everyday ? around(random, 1, 0.04) : 1, water, visit);
      if (!first) happens();
    }
    visit.bottle.taken_at = visit.bottle.tested_at = at;
    visit.bottle.readings = read(random, water, home, !everyday || i == 0 || last);
    if (tap_read) {
      visit.bottle.fill_water.emplace();
      for (const auto& [analyte, value] : home.tap)
        if (analyte != "cyanuric_acid")
          visit.bottle.fill_water->push_back(one_reading(random, analyte, value, Method::photometer));
    }
    h.visits.push_back(std::move(visit));
  }
  return h;
}

}  // namespace brimline::tests
