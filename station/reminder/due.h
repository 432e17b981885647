// SPDX-License-Identifier: GPL-3.0-or-later
// When a vessel's next bottle is due, and what will be read of it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "station/visit.h"
#include "station/wording/words.h"

namespace brimline {

// As the plan told: so long after its last step. Where no plan could be given, the next day. Else a month
// after the bottle: calcium hardness, stabilizer, iron and copper want a test a month (common practice, no
// source). Nothing for a visit of no known time.
std::optional<Instant> due_of(const Visit& visit);

// A vessel whose last visit is this one.
struct DueVisit {
  Visit visit;
  Instant due;
};

// What the next bottle is read for: the plan's analytes, else those of the month.
std::vector<AnalyteId> due_analytes(const Visit& visit);
// The name of an analyte in the reader's language, "Free chlorine"; its id where it is none we know.
std::string analyte_name(const Words& words, const AnalyteId& analyte);
// "free chlorine, pH, calcium hardness"
std::string analyte_list(const Words& words, const std::vector<AnalyteId>& analytes);

}  // namespace brimline
