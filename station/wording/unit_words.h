// SPDX-License-Identifier: GPL-3.0-or-later
// A reading's unit as people read it.
#pragma once

#include <string>

#include "analysis/panel/analyte.h"
#include "station/wording/words.h"

namespace brimline {

// As the words' files know it, in English; empty where the analyte has none.
const char* unit_source(const AnalyteKind& kind);
// The analyte's unit in the reader's language: "mg/L CaCO3"; "µS/cm at 25 °C" where the files of this program
// write it without such letters; empty where it has none.
std::string unit_words(const Words& words, const AnalyteKind& kind);

}  // namespace brimline
