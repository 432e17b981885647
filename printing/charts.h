// SPDX-License-Identifier: GPL-3.0-or-later
// The readings of every week over the visits of a vessel, for the small charts of the sheet.
#pragma once

#include <map>
#include <vector>

#include "printing/item.h"
#include "printing/sheet.h"

namespace brimline {

// Sanitizer, pH and total alkalinity, each where this bottle and one before have it and neither reading
// stands at the end of its range; at most the last eight visits. `history`: oldest first.
std::vector<Chart> charts_of(const Visit& visit, const std::vector<Visit>& history, const Words& words,
                             const std::map<AnalyteId, Target>& targets);

// The chart, its left top corner at 0, 0: open marks for the visits before, a dark one for this bottle,
// two thin lines for the target, the first and last day beneath. `type` of its words.
std::vector<Item> chart_items(const Chart& chart, double width, const Type& type);
double chart_height(const Type& type);

}  // namespace brimline
