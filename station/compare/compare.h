// SPDX-License-Identifier: GPL-3.0-or-later
// Then and now: each reading against what the earlier one and the told doses lead to expect, how much water
// was replaced, and what volume the water's answer to the doses shows.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "station/visit.h"
#include "station/wording/words.h"

namespace brimline {

// Against the expectation at 1.96 sd: more or less than the told doses make; not_told: it moved and nothing
// told moves it, or a dose that does was told without its amount.
enum class ChangeVerdict { as_expected, more, less, not_told };
std::string_view name_of(ChangeVerdict verdict);

// In the analyte's unit.
struct ReadingChange {
  AnalyteId analyte;
  double earlier = 0, later = 0;
  double expected = 0;     // earlier, told doses and drains; where a dose moves it, water found replaced too
  double expected_sd = 0;  // of later less expected: both readings, volume, weeks of evaporation and splash
  ChangeVerdict verdict = ChangeVerdict::as_expected;
  bool dose_unknown = false;  // one that moves it has no amount, or the volume is not on file
  std::string text;
};

// Share of the water that was replaced, 0 to 1; told drains included.
struct WaterReplaced {
  double fraction = 0, sd = 0;
};

struct VolumeFound {
  double m3 = 0, sd = 0;  // posterior of the volume on file and the water's answer to the doses
  bool agrees = true;     // file and doses alone differ by at most 1.96 combined sd
};

struct Explanation {
  std::string id;
  std::string text;
};

struct Comparison {
  std::vector<ReadingChange> changes;
  std::optional<WaterReplaced> water_replaced;  // absent: nothing shows it
  std::optional<VolumeFound> volume;            // absent: no told dose shows it
  std::vector<Explanation> explanations;
  const ReadingChange* find(std::string_view analyte) const;
};

// When the water was taken; else when it was tested.
std::optional<Instant> time_of(const Visit& visit);

// The vessel with the volume found, for the plans to come, and with what stood before; `until` the bottle
// that it was found with. And as it was before that.
Vessel with_volume(const Vessel& vessel, const VolumeFound& found, const Instant& until);
Vessel without_lesson(const Vessel& vessel);

// The last of `visits` (oldest first, two or more, of one vessel) against those before: each reading against
// the latest earlier one of its analyte. Fewer than two give an empty comparison.
Comparison compare(std::span<const Visit> visits, const Words& words);

}  // namespace brimline
