// SPDX-License-Identifier: GPL-3.0-or-later
// The owner's week in words, for screen and paper, and as a table.
#pragma once

#include <string>
#include <vector>

#include "station/week/week.h"
#include "station/wording/words.h"

namespace brimline {

struct WeekLine {
  std::string name, detail, number;  // detail: empty where there is none
};

struct WeekPart {
  std::string title;
  std::vector<WeekLine> lines;
};

// "pH too low" of ph_low; for every finding there is.
std::string finding_kind(const Words& words, const FindingCount& finding);
// Only parts that have something to say; the first, of the bottles, always.
std::vector<WeekPart> week_parts(const OwnersWeek& week, const Words& words);
// "Monday 8 June - Sunday 14 June 2026"
std::string week_title(const OwnersWeek& week, const Words& words);
// part,name,of,number,unit: RFC 4180 with the program's own ids, so that weeks can be set side by side.
std::string week_csv(const OwnersWeek& week);

}  // namespace brimline
