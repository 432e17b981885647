// SPDX-License-Identifier: GPL-3.0-or-later
// The checked panel: for each analyte the one value that findings and plan use.
//
//   const CheckedPanel panel = checked_panel(bottle, vessel);
//   if (const CheckedValue* ph = panel.find("ph"); ph && ph->usable()) ...
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "analysis/panel/bottle.h"
#include "analysis/panel/check.h"
#include "analysis/panel/uncertainty.h"
#include "analysis/panel/vessel.h"

namespace brimline {

struct CheckedValue {
  AnalyteId analyte;
  double value = 0;              // mean of the accepted repeats of the most exact method
  double sd = 0;                 // of that mean
  std::optional<Clip> clipped;   // every reading was: the truth is beyond `value`
  std::optional<Method> method;  // absent: not told
  std::vector<size_t> used;      // indices into Bottle::readings
  std::vector<size_t> outliers;  // left out of the mean
  bool derived = false;  // from other analytes: bromine from a chlorine reading, calcium from hardness
  std::optional<Verdict> verdict;  // worst of the checks that name it; absent: none did

  Measured measured() const { return {value, sd}; }
  // The bottle or the reading was refused: its number says nothing.
  bool rejected() const { return verdict && *verdict >= Verdict::reject; }
  // To be read again before anything is dosed on it.
  bool doubtful() const { return verdict && (*verdict == Verdict::repeat || *verdict == Verdict::dilute); }
  // Fit to dose on: inside the range, and no check asks for more than a note.
  bool usable() const { return !clipped && !rejected() && !doubtful(); }
};

struct CheckedPanel {
  std::vector<CheckedValue> values;  // sorted by analyte
  std::vector<Check> checks;

  const CheckedValue* find(std::string_view analyte) const;      // nullptr: not read
  std::optional<double> value(std::string_view analyte) const;   // read at all, whatever its verdict
  std::optional<double> usable(std::string_view analyte) const;  // fit to dose on
  const Check* check(std::string_view id) const;                 // nullptr: did not fire
  // Total less free chlorine, mg/L Cl2; never below zero. Absent without both.
  std::optional<Measured> combined_chlorine() const;
};

// The values alone, before any check. In a bromine vessel chlorine readings count as bromine, times 2.254;
// where calcium was not read but total and magnesium hardness were, calcium is their difference.
CheckedPanel unchecked_panel(std::span<const Reading> readings, const Vessel& vessel);

// With every check run. `earlier`: bottles of the same vessel, oldest first.
CheckedPanel checked_panel(const Bottle& bottle, const Vessel& vessel, std::span<const Bottle> earlier = {},
                           std::optional<Instant> now = std::nullopt, const Supplies& supplies = {});

}  // namespace brimline
