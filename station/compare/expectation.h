// SPDX-License-Identifier: GPL-3.0-or-later
// What an earlier reading and the told doses lead to expect: the inside of the comparison.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "analysis/panel/panel.h"
#include "station/compare/compare.h"
#include "station/compare/hypothesis.h"

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
  double evaporated = 0;         // what topping up for evaporation brings, where the fill was read
  double drift_sd = 0;           // weeks of evaporation, splash, and what people do without telling

  double expected() const {
    return before.value * (1 - drained) + fill.value * drained + told - lost + evaporated;
  }
  // Of now less expected; `relative_volume_sd` of the volume on file.
  double expected_sd(double relative_volume_sd) const;
  double distance(double relative_volume_sd) const;  // (now - expected) / sd
};

// Share of the volume that evaporates a month: 50 to 80 inches a year off pools of 60 inches would be 7 to 11
// % in a dry summer (trade study); half of that for any month in the open is common practice, no source.
inline constexpr double kEvaporatedOutdoor = 0.04, kEvaporatedIndoor = 0.01;
bool in_the_open(const Vessel& vessel);  // a pool not told to be indoors; spas have covers

// Every analyte of the last visit that an earlier one holds too, unclipped in both.
std::vector<Pair> pairs_of(std::span<const Visit> visits);
// One analyte over the last stretch alone, from what was known before it; two visits or more.
Pair pair_between(std::span<const Visit> visits, const AnalyteId& analyte, Measured before, Measured now);

double relative_volume_sd(const Vessel& vessel);  // 0.1 where not told

// What the visits show of the last stretch between two bottles, and of the volume over all of them.
struct Inference {
  std::optional<WaterReplaced> replaced;  // told drains included; absent: likelier that none was
  std::optional<VolumeFound> volume;      // absent: no told dose shows it
  std::array<double, kCauses> chance{};   // of each cause, 0 to 1
  double acid_or_tablets = 0;             // of either or both
  double not_put_in = 0;                  // that what was told was not put in
  double nothing = 1;                     // of no cause, and what was told put in
  double of(Cause cause) const { return chance[static_cast<size_t>(cause)]; }
};

// Bayes' rule over a grid of volumes, visit after visit: each true value is carried on from stretch to
// stretch.
Inference infer(std::span<const Visit> visits);

// What may lie behind the changes, likeliest first.
std::vector<Explanation> explain(std::span<const Pair> pairs, const Comparison& comparison,
                                 const Inference& inference, const Visit& later, const Words& words);

}  // namespace brimline
