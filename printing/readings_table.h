// SPDX-License-Identifier: GPL-3.0-or-later
// The readings of a visit beside last visit's and the target, as rows of words.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "analysis/findings/targets.h"
#include "analysis/panel/analyte.h"
#include "printing/sheet.h"
#include "station/reminder/due.h"

namespace brimline {

// The reading that stands for the analyte: the last repeat, else the first; null: not read.
const Reading* standing_reading(const Bottle& bottle, const AnalyteId& analyte);

// One standard deviation of a reading, dilution included: the one told, else the method's own;
// nothing where neither is known.
std::optional<double> spread_of(const Reading& reading);

// What the regime named by the plan (its `basis.targets`) asks of each analyte that was read; empty
// where the plan names none, or one that is neither built in nor `own`.
std::map<AnalyteId, Target> regime_targets(const Visit& visit, const TargetSet* own = nullptr);

// Every reading of the visit in the order it was taken, repeats included, then what the plan predicts of
// analytes that were not read and what was read in the fill water alone.
std::vector<SheetRow> readings_table(const Visit& visit, const Visit* earlier, const Words& words,
                                     const std::map<AnalyteId, Target>& targets);

// One end of a target, with no more decimals than it needs: "7.2".
std::string bound_words(const Words& words, const AnalyteId& analyte, double value);
// "7.2–7.6", "up to 0.1"; empty where there is none.
std::string target_words(const Words& words, const AnalyteId& analyte, const Target& target);
// The target a finding or `targets` gives the analyte; nothing where neither does.
std::optional<Target> target_of(const Visit& visit, const AnalyteId& analyte,
                                const std::map<AnalyteId, Target>& targets);

// A value of the analyte with its unit, in the reader's language.
std::string value_words(const Words& words, const AnalyteId& analyte, double value, bool with_unit);

// The finding's sentence with a waterline before its value, under which it is drawn; before the
// sentence where that does not give the value; the bare sentence where the finding is about no reading.
Sentence finding_sentence(const Finding& finding, const Visit& visit, const Visit* earlier,
                          const Words& words);

}  // namespace brimline
