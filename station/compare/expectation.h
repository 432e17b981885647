// SPDX-License-Identifier: GPL-3.0-or-later
// What an earlier reading and the told doses lead to expect: the inside of the comparison.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "analysis/panel/panel.h"
#include "station/compare/compare.h"

namespace brimline {

// One analyte read now and before, with all that was told in between.
struct Pair {
  AnalyteId analyte;
  Measured before, now;
  double days = 30;             // between the bottles; a month where a date is missing
  double told = 0;              // change by told doses at the volume on file, in the analyte's unit
  double told_per_inverse = 0;  // the same times the volume: unit times m3
  bool told_any = false;        // a told dose moves it
  bool amount_missing = false;  // one that does has no amount, or the volume is not on file
  double drained = 0;           // share replaced by told drains
  Measured fill;                // in the fill water, or what is assumed of it
  bool fill_read = false;
  double lost = 0, lost_sd = 0;  // with water found replaced, where a told dose moves the reading
  double drift_sd = 0;           // weeks of evaporation, splash, and what people do without telling

  double expected() const { return before.value * (1 - drained) + fill.value * drained + told - lost; }
  // Of now less expected; `relative_volume_sd` of the volume on file.
  double expected_sd(double relative_volume_sd) const;
  double distance(double relative_volume_sd) const;  // (now - expected) / sd
};

// Every analyte of the last visit that an earlier one holds too, unclipped in both.
std::vector<Pair> pairs_of(std::span<const Visit> visits);

double relative_volume_sd(const Vessel& vessel);  // 0.1 where not told

// Share of the water replaced, told drains included, from readings nothing but water takes away.
std::optional<WaterReplaced> replaced_water(std::span<const Pair> pairs, const Vessel& vessel);

// From the pairs that told doses move, allowing for the water replaced.
std::optional<VolumeFound> found_volume(std::span<const Pair> pairs, const Vessel& vessel,
                                        const std::optional<WaterReplaced>& replaced);

// What may lie behind the changes, likeliest first.
std::vector<Explanation> explain(std::span<const Pair> pairs, const Comparison& comparison,
                                 const Visit& later, const Words& words);

}  // namespace brimline
