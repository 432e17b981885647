// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/wording/unit_words.h"

namespace brimline {
namespace {

// Units that are words, or are written otherwise than in the files; the rest are symbols and stay.
struct UnitRow {
  const char *unit, *said;
};
constexpr UnitRow kUnits[] = {
    {"mg/L as 20 % product", phrase("unit", "mg/L as 20 % product")},
    {"uS/cm at 25 C", phrase("unit", "µS/cm at 25 °C")},
};

}  // namespace

const char* unit_source(const AnalyteKind& kind) {
  for (const UnitRow& row : kUnits)
    if (kind.unit == row.unit) return row.said;
  return kind.unit.c_str();
}

std::string unit_words(const Words& words, const AnalyteKind& kind) {
  return kind.unit.empty() ? kind.unit : words.say("unit", unit_source(kind));
}

}  // namespace brimline
