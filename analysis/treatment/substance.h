// SPDX-License-Identifier: GPL-3.0-or-later
// A chemical of the counter: what it must never meet, how much of it a step may hold and how long
// it waits. One file each in analysis/substances; ids are for ever. What a mole of it does to the
// water is a row of analysis/water/doses.h.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "analysis/fields.h"
#include "analysis/panel/vessel.h"

namespace brimline {

// Hours that must lie between this chemical and any other of `family`, in either order; both
// absent means never in the same plan.
struct Conflict {
  std::string family;  // a family, or the id of one substance
  std::optional<double> gap_h, gap_spa_h;
  std::string why, source;
  friend bool operator==(const Conflict&, const Conflict&) = default;
};

// Limits of one step; what is absent does not limit.
struct StepCap {
  std::optional<double> mmol_per_litre;    // of the substance
  std::optional<double> ph_min, ph_max;    // of the computed water after the step
  std::optional<double> total_alkalinity;  // mg/L CaCO3, largest rise
  std::optional<double> calcium_hardness;  // mg/L CaCO3, largest rise
  std::optional<double> free_chlorine;     // mg/L Cl2, largest rise
  std::optional<double> share;             // of the calculated dose
  std::string source;
  friend bool operator==(const StepCap&, const StepCap&) = default;
};

struct Substance {
  std::string id, name, formula;
  std::optional<double> molar_mass;   // g/mol of the formula; absent: dosed by its label only
  bool dosed = true;                  // false: known in additions, never dosed
  std::vector<std::string> families;  // for conflicts and choice: "acid", "chlorine", "hypochlorite"
  std::vector<Conflict> conflicts;
  StepCap cap;
  double wait_h = 4, wait_spa_h = 1;  // before the next step, pump on; a turnover where that is longer
  bool waits_turnover = false;
  double swim_wait_h = 1;  // before anybody swims
  int portions = 1;        // the whole dose is split into
  double portion_gap_h = 0;
  std::vector<Sanitizer> barred_sanitizers;  // never in a vessel kept by these
  std::vector<VesselKind> barred_kinds;
  std::vector<Place> barred_places;
  std::vector<std::string> hazards;   // GHS statements of the generic substance; the label governs
  std::vector<std::string> cautions;  // ids of sentences in station/wording
  std::string source;

  bool is(std::string_view family) const;
  // Whether this vessel may ever get it, by sanitizer, kind and place.
  bool barred_in(const Vessel& vessel) const;
};

// Every substance built in, by id.
std::span<const Substance> substances();
// Nothing where the id is unknown.
const Substance* find_substance(std::string_view id);
// The conflict between two substances as either of them states it; nothing where they may meet.
const Conflict* conflict_between(const Substance& a, const Substance& b);

// One file; its faults, where it is not sound.
tl::expected<Substance, std::vector<Fault>> read_substance(std::string_view text, std::string_view file);
// Faults of the files built in: none, as a test holds.
std::vector<Fault> substance_faults();

}  // namespace brimline
