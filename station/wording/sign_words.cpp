// SPDX-License-Identifier: GPL-3.0-or-later
// What the customer saw, weighed against what was read: the cause that the readings show, or that they show
// none. Common practice, no source.
#include <algorithm>
#include <iterator>

#include "station/wording/plan_words.h"

namespace brimline {

namespace {

// With `with` among the findings this is the cause; the last row of a sign, with none, is the contradiction:
// it is said only where everything in `read` was read.
struct CauseRow {
  const char* sign;
  std::vector<const char*> with;
  std::vector<const char*> read;
  const char* text;
};

const std::vector<CauseRow>& causes() {
  static const std::vector<CauseRow> rows = {
      {"cloudy",
       {"free_chlorine_low", "total_bromine_low", "biguanide_low", "combined_chlorine_high"},
       {},
       phrase("plan", "So little working sanitizer explains it.")},
      {"cloudy",
       {"sanitizer_doubtful", "sanitizer_not_read"},
       {},
       phrase("plan", "Whether the sanitizer explains it, its next reading shows.")},
      {"cloudy",
       {"si_high", "ph_high", "calcium_hardness_high", "total_alkalinity_high"},
       {},
       phrase("plan", "Calcium coming out of the water explains it.")},
      {"cloudy",
       {},
       {"ph", "total_alkalinity"},
       phrase(
           "plan",
           "The readings do not explain it: look at the filter, its pressure and its running time first.")},
      {"green_water",
       {"copper_high", "iron_high"},
       {},
       phrase("plan",
              "Dissolved metal was found too, which greens clear water: look whether walls are slippery.")},
      {"green_water",
       {"sanitizer_doubtful", "sanitizer_not_read"},
       {},
       phrase("plan", "Whether the sanitizer explains it, its next reading shows.")},
      {"green_water",
       {"free_chlorine_low", "total_bromine_low", "biguanide_low", "stabilizer_ratio",
        "combined_chlorine_high", "chlorine_demand"},
       {},
       phrase("plan", "So little working sanitizer explains it.")},
      {"green_water",
       {},
       {"free_chlorine"},
       phrase(
           "plan",
           "The sanitizer reads in order, which does not fit: if the water is clear and green, have iron and "
           "copper read.")},
      {"strong_smell",
       {"combined_chlorine_high"},
       {},
       phrase("plan", "That is spent (combined) chlorine, not too much fresh chlorine.")},
      {"strong_smell",
       {},
       {"total_chlorine"},
       phrase("plan",
              "It is mostly spent chlorine that smells, and the readings show none: read free and total "
              "again.")},
      {"eye_irritation",
       {"ph_low", "ph_high", "combined_chlorine_high", "free_chlorine_high"},
       {},
       phrase("plan", "The readings explain it.")},
      {"eye_irritation",
       {},
       {"ph", "total_chlorine"},
       phrase("plan",
              "pH and chlorine read in order, which does not fit: read pH again, and ask who else has it.")},
      {"green_hair", {"copper_high"}, {}, phrase("plan", "The reading shows it too.")},
      {"green_hair",
       {},
       {"copper"},
       phrase("plan", "Little copper shows in the water now; it may have been taken up before.")},
      {"stains",
       {"iron_high", "copper_high", "manganese_high"},
       {},
       phrase("plan", "Dissolved metal was found, which explains new ones.")},
      {"stains", {}, {"iron", "copper"}, phrase("plan", "No metal shows in the water now.")},
      {"scale",
       {"si_high", "calcium_hardness_high", "ph_high"},
       {},
       phrase("plan", "The readings explain it.")},
      {"scale",
       {"si_low"},
       {},
       phrase("plan", "This water dissolves scale, which does not fit: it may be old, or no scale.")},
      {"foam", {"tds_high", "biguanide_high"}, {}, phrase("plan", "The readings explain it.")},
      {"slimy_walls",
       {"sanitizer_doubtful", "sanitizer_not_read"},
       {},
       phrase("plan", "Whether the sanitizer explains it, its next reading shows.")},
      {"slimy_walls",
       {"free_chlorine_low", "total_bromine_low", "biguanide_low", "stabilizer_ratio",
        "combined_chlorine_high", "chlorine_demand"},
       {},
       phrase("plan", "So little working sanitizer explains it.")},
      {"slimy_walls",
       {},
       {"free_chlorine"},
       phrase("plan",
              "The sanitizer reads in order, which does not fit: brush first, it may not reach the walls.")},
  };
  return rows;
}

bool found(const std::vector<Finding>& findings, const char* id) {
  return std::any_of(findings.begin(), findings.end(), [&](const Finding& f) { return f.id == id; });
}

bool was_read(const Bottle& bottle, std::string_view analyte) {
  return std::any_of(bottle.readings.begin(), bottle.readings.end(),
                     [&](const Reading& r) { return r.analyte == analyte; });
}

}  // namespace

std::string sign_cause(const Words& words, std::string_view sign, const std::vector<Finding>& findings,
                       const Bottle& bottle) {
  for (const CauseRow& row : causes()) {
    if (sign != row.sign) continue;
    const bool fits = row.with.empty() ? std::all_of(row.read.begin(), row.read.end(),
                                                     [&](const char* a) { return was_read(bottle, a); })
                                       : std::any_of(row.with.begin(), row.with.end(),
                                                     [&](const char* id) { return found(findings, id); });
    if (fits) return words.say("plan", row.text);
  }
  return {};
}

}  // namespace brimline
