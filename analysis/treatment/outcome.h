// SPDX-License-Identifier: GPL-3.0-or-later
// What a drafted plan leaves behind: who may swim when, what is read again, what stays open.
#pragma once

#include <string>
#include <vector>

#include "analysis/treatment/draft.h"
#include "analysis/treatment/planner.h"

namespace brimline {

bool plaster_cures(const Situation& s);
// Closed until a retest: section "home plan, but no swimming until retest" of the trade's rules.
bool needs_retest_to_open(const Situation& s, const std::vector<Finding>& findings);
// Those of them for which nobody may swim now.
std::vector<std::string> closing_ids(const std::vector<Finding>& findings);
// When the next bottle is wanted, and what is to be read in it.
void set_retest(DraftedPlan& plan, const Draft& d);
// Every reading of this bottle that ends outside its target, and the index they make.
void set_remains(DraftedPlan& plan, const Draft& told);

}  // namespace brimline
