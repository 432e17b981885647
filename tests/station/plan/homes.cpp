// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/station/plan/homes.h"

#include <algorithm>
#include <array>

namespace brimline {

namespace {

constexpr std::array<const char*, kHomes> kNames = {"chlorine, stabilised",
                                                    "chlorine, unstabilised",
                                                    "salt cell",
                                                    "bromine pool",
                                                    "bromine spa",
                                                    "biguanide",
                                                    "chlorine spa",
                                                    "swim spa",
                                                    "plunge",
                                                    "indoor",
                                                    "new plaster",
                                                    "opening",
                                                    "closing",
                                                    "new fill",
                                                    "storm",
                                                    "trouble"};

Reading read(const char* analyte, double value, double sd) {
  return Household::reading(analyte, value, sd);
}

void balance(Household& h, Visit& v, double hardness_low, double hardness_high) {
  auto& r = v.bottle.readings;
  r.push_back(read("ph", h.chance(0.8) ? h.between(7.0, 8.2) : h.between(6.7, 8.5), 0.05));
  r.push_back(read("total_alkalinity", h.chance(0.8) ? h.between(50, 150) : h.between(25, 220), 4));
  r.push_back(read("calcium_hardness", h.between(hardness_low, hardness_high), 8));
}

void chlorine(Household& h, Visit& v, double low, double high, double combined) {
  const double free = h.chance(0.1) ? 0 : h.between(low, high);
  v.bottle.readings.push_back(read("free_chlorine", free, std::max(0.05, 0.03 * free)));
  v.bottle.readings.push_back(read("total_chlorine", free + h.between(0, combined), 0.08));
}

void stabilizer(Household& h, Visit& v, double low, double high) {
  const double value = h.between(low, high);
  v.bottle.readings.push_back(read("cyanuric_acid", value, std::max(2.0, 0.06 * value)));
}

void fill(Household& h, Visit& v) {
  if (!h.chance(0.7)) return;
  v.bottle.fill_water = {read("ph", h.between(7.0, 8.2), 0.1),
                         read("total_alkalinity", h.between(40, 160), 5),
                         read("calcium_hardness", h.between(20, 250), 8)};
}

void at_home(Household& h, Visit& v) {
  if (h.chance(0.3))
    v.bottle.at_home.push_back({"hydrochloric_acid", "31.45 % by weight", h.between(0.2, 8), "L"});
  if (h.chance(0.2)) v.bottle.at_home.push_back({"sodium_bicarbonate", "99 %", h.between(0.5, 10), "kg"});
  if (is_chlorine(*v.vessel.sanitizer) && h.chance(0.2))
    v.bottle.at_home.push_back({"sodium_hypochlorite", "10 % trade", h.between(1, 20), "L"});
}

void vessel_of(Household& h, Visit& v, VesselKind kind, Sanitizer sanitizer, bool indoor) {
  Vessel& w = v.vessel;
  const bool pool = kind == VesselKind::pool;
  w.id = "W-1";
  w.kind = kind;
  w.use = VesselUse::household;
  w.place = indoor ? Place::indoor : Place::outdoor;
  w.in_ground = pool && h.chance(0.8);
  const Surface surfaces[] = {Surface::plaster, Surface::tile, Surface::vinyl, Surface::fibreglass,
                              Surface::painted};
  w.surface = pool ? surfaces[static_cast<int>(h.between(0, 5))] : Surface::acrylic;
  if (w.surface == Surface::plaster) w.plaster_age_days = h.between(60, 3000);
  w.volume = Volume::cubic_metres(pool                           ? h.between(15, 110)
                                  : kind == VesselKind::swim_spa ? h.between(4, 9)
                                                                 : h.between(0.6, 2));
  w.volume_relative_sd = h.between(0.02, 0.12);
  w.sanitizer = sanitizer;
  w.previous_sanitizer = sanitizer;
  const double celsius = pool                           ? h.between(16, 32)
                         : kind == VesselKind::plunge   ? h.between(5, 15)
                         : kind == VesselKind::swim_spa ? h.between(26, 34)
                                                        : h.between(34, 39.5);
  w.water_temperature = Temperature::celsius(celsius);
  if (h.chance(0.7)) w.turnover_h = pool ? h.between(5, 11) : h.between(0.3, 1);
}

}  // namespace

const char* name_of(Home home) {
  return kNames[static_cast<size_t>(home)];
}

Visit random_home(Home home, std::uint64_t seed) {
  Household h(seed * 64 + static_cast<std::uint64_t>(home) + 1);
  Visit v;
  v.id = "V-1";
  v.bottle.code = "B-1";
  const std::array<const char*, 4> times = {"2026-06-14T17:30:00-05:00", "2026-06-14T09:10:00-05:00",
                                            "2026-06-14T20:40:00-05:00", "2026-06-14T23:05:00-05:00"};
  v.home_at = Instant::parse(times[static_cast<size_t>(h.between(0, 4))]);
  v.bottle.sample_temperature = Temperature::celsius(h.between(18, 27));
  switch (home) {
    case Home::salt_cell:
      vessel_of(h, v, VesselKind::pool, Sanitizer::salt_chlorine, false);
      balance(h, v, 100, 450);
      chlorine(h, v, 0.3, 4.5, 0.4);
      stabilizer(h, v, 25, 95);
      v.bottle.readings.push_back(read("salt", h.between(2200, 3900), 120));
      break;
    case Home::bromine_pool:
    case Home::bromine_spa:
      vessel_of(h, v, home == Home::bromine_spa ? VesselKind::spa : VesselKind::pool, Sanitizer::bromine,
                false);
      balance(h, v, 80, home == Home::bromine_spa ? 280 : 450);
      v.bottle.readings.push_back(read("total_bromine", h.chance(0.1) ? 0 : h.between(0.5, 7), 0.15));
      if (h.chance(0.5)) v.bottle.readings.push_back(read("bromide", h.between(5, 60), 3));
      break;
    case Home::biguanide:
      vessel_of(h, v, VesselKind::pool, Sanitizer::biguanide, false);
      balance(h, v, 80, 450);
      v.bottle.readings.push_back(read("biguanide", h.between(10, 55), 2));
      v.bottle.readings.push_back(read("peroxide", h.between(0, 60), 3));
      break;
    case Home::chlorine_spa:
      vessel_of(h, v, VesselKind::spa, Sanitizer::chlorine, h.chance(0.3));
      balance(h, v, 60, 300);
      chlorine(h, v, 0.3, 5.5, 0.4);
      stabilizer(h, v, 0, 45);
      break;
    case Home::swim_spa:
      vessel_of(h, v, VesselKind::swim_spa, Sanitizer::chlorine, false);
      balance(h, v, 60, 300);
      chlorine(h, v, 0.3, 5.5, 0.4);
      stabilizer(h, v, 0, 70);
      break;
    case Home::plunge:
      vessel_of(h, v, VesselKind::plunge, Sanitizer::chlorine, h.chance(0.3));
      balance(h, v, 60, 450);
      chlorine(h, v, 0.3, 4.5, 0.4);
      break;
    case Home::indoor:
      vessel_of(h, v, VesselKind::pool, Sanitizer::chlorine, true);
      balance(h, v, 80, 500);
      chlorine(h, v, 0.3, 4.5, 0.9);
      break;
    default:
      vessel_of(h, v, VesselKind::pool, Sanitizer::chlorine, false);
      balance(h, v, 80, 480);
      chlorine(h, v, 0.3, 4.5, home == Home::trouble ? 1.2 : 0.45);
      if (home == Home::chlorine_unstabilised)
        stabilizer(h, v, 0, 0);
      else
        stabilizer(h, v, 15, 80);
  }
  if (home == Home::new_plaster) {
    v.vessel.surface = Surface::plaster;
    v.vessel.plaster_age_days = h.between(0, 27);
  }
  if (home == Home::new_plaster || home == Home::new_fill) v.bottle.occasion = Occasion::new_fill;
  if (home == Home::opening) v.bottle.occasion = Occasion::opening;
  if (home == Home::closing) v.bottle.occasion = Occasion::closing;
  if (home == Home::after_storm) v.bottle.occasion = Occasion::after_storm;
  if (home == Home::trouble) {
    v.bottle.occasion = Occasion::trouble;
    const Sign signs[] = {Sign::cloudy, Sign::green_water, Sign::slimy_walls, Sign::strong_smell};
    v.bottle.signs = {signs[static_cast<int>(h.between(0, 4))]};
  }
  if (h.chance(0.2)) v.bottle.readings.push_back(read("iron", h.between(0, 0.4), 0.02));
  if (h.chance(0.2)) v.bottle.readings.push_back(read("copper", h.between(0, 0.3), 0.02));
  if (v.vessel.sanitizer != Sanitizer::salt_chlorine && h.chance(0.2))
    v.bottle.readings.push_back(read("tds", h.between(600, 3300), 60));
  fill(h, v);
  at_home(h, v);
  return v;
}

Shelf random_shelf(std::uint64_t seed) {
  Household h(seed);
  Shelf out;
  out.id = "random";
  const std::array<std::string_view, 5> kept = {"muriatic_acid_31", "liquid_chlorine_125", "bicarbonate",
                                                "soda_ash", "calcium_flake_77"};
  for (Product p : built_in_shelf().products) {
    p.price *= h.between(0.5, 2);
    if (std::find(kept.begin(), kept.end(), p.id) != kept.end() || h.chance(0.7)) out.products.push_back(p);
  }
  return out;
}

}  // namespace brimline
