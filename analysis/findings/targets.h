// SPDX-License-Identifier: GPL-3.0-or-later
// A regime of targets: what a reading should be, by sanitizer, vessel kind, place, surface and
// whether the water is stabilised; each row with its source. One file each in analysis/targets.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "analysis/fields.h"
#include "analysis/findings/finding.h"
#include "analysis/panel/vessel.h"

namespace brimline {

// One row; a condition that is absent holds for every vessel.
struct TargetRow {
  AnalyteId analyte;                       // also "combined_chlorine", "si_calcite", "water_temperature"
  std::optional<double> low, high, aim;    // in the analyte's unit
  std::optional<double> low_per_cyanuric;  // low is at least this times cyanuric acid (mg/L)
  std::vector<Sanitizer> sanitizers;       // empty: any
  std::vector<VesselKind> kinds;
  std::vector<Place> places;
  std::vector<Surface> surfaces;
  std::optional<bool> stabilised;  // cyanuric acid present
  std::optional<double> above_ph, above_celsius;
  std::string source,
      tag;  // who says so; R read, R2 second hand, W common practice, M from memory, C computed
  friend bool operator==(const TargetRow&, const TargetRow&) = default;
};

// What of the vessel and the water a row asks about.
struct TargetCase {
  std::optional<Sanitizer> sanitizer;
  VesselKind kind = VesselKind::pool;
  std::optional<Place> place;
  std::optional<Surface> surface;
  std::optional<double> cyanuric_acid;  // mg/L; absent: not known, counts as unstabilised
  std::optional<double> ph, celsius;
};

struct Aim {
  Target range;
  double aim = 0;  // where a dose goes: given, else the middle, else the only bound
  const TargetRow* row = nullptr;
};

struct TargetSet {
  std::string id, name, source;
  std::vector<TargetRow> rows;  // those of the set it builds on come first; the last that holds wins

  // Nothing where the regime has no target for this analyte in this case.
  std::optional<Aim> find(std::string_view analyte, const TargetCase& c) const;
};

TargetCase case_of(const Vessel& vessel, std::optional<double> cyanuric_acid, std::optional<double> ph);

// Every set built in, by id; nothing where the id is unknown.
std::span<const TargetSet> target_sets();
const TargetSet* find_targets(std::string_view id);
// A shop's own set, from the text of a file of the same form; it may build on any that is built in.
tl::expected<TargetSet, std::vector<Fault>> read_targets(std::string_view text, std::string_view file);
// Faults of the files built in: none, as a test holds.
std::vector<Fault> target_faults();

}  // namespace brimline
