// SPDX-License-Identifier: GPL-3.0-or-later
// Random household waters for the laws of the plan: invented, seeded, the same on every machine.
#pragma once

#include <random>

#include "station/plan/plan_service.h"

namespace brimline {

class Household {
 public:
  explicit Household(std::uint64_t seed) : engine_(seed) {}

  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(engine_() >> 11) * 0x1.0p-53);
  }
  bool chance(double p) { return between(0, 1) < p; }

  static Reading reading(const char* analyte, double value, double sd) {
    Reading r;
    r.analyte = analyte;
    r.value = value;
    r.method = Method::photometer;
    r.sd = sd;
    return r;
  }

  Visit visit(Sanitizer sanitizer = Sanitizer::chlorine, VesselKind kind = VesselKind::pool) {
    Visit v;
    v.id = "V-1";
    v.bottle.code = "B-1";
    v.home_at = Instant::parse("2026-06-14T17:30:00-05:00");
    Vessel& w = v.vessel;
    w.id = "W-1";
    w.kind = kind;
    w.use = VesselUse::household;
    w.place = Place::outdoor;
    w.in_ground = kind == VesselKind::pool;
    w.surface =
        kind == VesselKind::pool ? (chance(0.5) ? Surface::plaster : Surface::vinyl) : Surface::acrylic;
    const bool pool = kind == VesselKind::pool;
    w.volume = Volume::cubic_metres(pool ? between(15, 90) : between(0.8, 2));
    w.volume_relative_sd = 0.05;
    w.sanitizer = sanitizer;
    w.previous_sanitizer = sanitizer;
    w.water_temperature = Temperature::celsius(pool ? between(18, 32) : between(34, 39));
    w.turnover_h = pool ? 8.0 : 0.5;
    auto& r = v.bottle.readings;
    r.push_back(reading("ph", between(6.9, 8.3), 0.05));
    r.push_back(reading("total_alkalinity", between(45, 170), 4));
    r.push_back(reading("calcium_hardness", pool ? between(100, 380) : between(100, 250), 8));
    if (is_chlorine(sanitizer)) {
      const double free = between(0.3, 4.5);
      r.push_back(reading("free_chlorine", free, 0.08));
      r.push_back(reading("total_chlorine", free + between(0, 0.4), 0.08));
      r.push_back(reading("cyanuric_acid", pool ? between(20, 60) : between(0, 25), 3));
    } else if (sanitizer == Sanitizer::bromine) {
      r.push_back(reading("total_bromine", between(0.5, 6), 0.15));
    } else {
      r.push_back(reading("biguanide", between(15, 50), 2));
      r.push_back(reading("peroxide", between(5, 50), 3));
    }
    v.bottle.sample_temperature = Temperature::celsius(between(20, 26));
    if (pool && chance(0.6))
      v.bottle.fill_water = {reading("ph", 7.6, 0.1), reading("total_alkalinity", 90, 5),
                             reading("calcium_hardness", 110, 8)};
    return v;
  }

 private:
  std::mt19937_64 engine_;
};

inline Plan plan_of(const Visit& v, int draws = 0, const char* targets = "household") {
  return make_plan(v, {}, built_in_shelf(), *find_targets(targets), Words("en"), PlanOptions{draws, 7});
}

inline double value(const Visit& v, const char* analyte) {
  for (const Reading& r : v.bottle.readings)
    if (r.analyte == analyte) return r.value;
  return 0;
}

}  // namespace brimline
