// SPDX-License-Identifier: GPL-3.0-or-later
// The bottle on the counter: what was read from it and under which circumstances.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "analysis/instant.h"
#include "analysis/panel/reading.h"
#include "analysis/quantities.h"

namespace brimline {

enum class Occasion { routine, opening, closing, new_fill, after_storm, trouble };

enum class Sign {
  cloudy,
  green_water,
  stains,
  scale,
  eye_irritation,
  strong_smell,
  green_hair,
  foam,
  slimy_walls,
  drain_not_visible,
  chemicals_mixed_or_fuming,
  tablets_in_use
};

enum class Incident { faeces, vomit, blood, dead_animal, flood, sewage, illness };

// Where the bottle was filled.
enum class SampledAt { elbow_deep, surface, skimmer, inlet, pipe };

// A later reading of a demand bottle.
struct DemandLater {
  double hours = 0;
  std::optional<double> free_mg_l, total_mg_l;  // mg/L as Cl2
  friend bool operator==(const DemandLater&, const DemandLater&) = default;
};

// One bottle of a chlorine-demand test.
struct DemandBottle {
  double dose_mg_l = 0;                         // as Cl2, in the finished mixture
  double stock_share = 0;                       // stock / (sample + stock)
  std::optional<double> free_mg_l, total_mg_l;  // at the test's end, corrected for their own dilution only
  std::optional<Clip> clipped;
  double dilution = 1;
  std::vector<DemandLater> later;
  friend bool operator==(const DemandBottle&, const DemandBottle&) = default;
};

struct DemandTest {
  double hours = 24;
  std::vector<DemandBottle> bottles;
  std::optional<Temperature> temperature;  // the bottles stood at; absent: not told, the sample's counts
  friend bool operator==(const DemandTest&, const DemandTest&) = default;
};

// A chemical the customer says was added since the visit before.
struct Addition {
  std::string chemical;               // id of analysis/substances
  std::optional<double> active_mol;   // moles of the anhydrous formula
  std::optional<double> days_before;  // before this bottle was taken
  friend bool operator==(const Addition&, const Addition&) = default;
};

// A product the customer has at home.
struct AtHome {
  std::string chemical;
  std::optional<std::string> assay;  // as on the label: "31.45 % by weight", "12.5 % trade"
  std::optional<double> amount;      // in `unit`; absent: amount not known
  std::optional<std::string> unit;   // L, mL, kg or g
  friend bool operator==(const AtHome&, const AtHome&) = default;
};

struct Bottle {
  std::string code;  // on the label, e.g. "B-0001"
  std::optional<Instant> taken_at, tested_at;
  std::optional<SampledAt> sampled_at;
  std::optional<Occasion> occasion;
  std::vector<Reading> readings;
  std::optional<Temperature> sample_temperature;  // when read; 25 C is assumed where absent
  std::optional<DemandTest> demand_test;
  std::vector<Sign> signs;
  std::optional<Incident> incident;
  std::vector<Addition> additions_since;
  std::vector<AtHome> at_home;
  std::optional<std::vector<Reading>> fill_water;  // absent: the fill water was not read
  friend bool operator==(const Bottle&, const Bottle&) = default;
};

}  // namespace brimline
