// SPDX-License-Identifier: GPL-3.0-or-later
// Did the plan work? Each finding of an earlier visit's plan, held against the readings of now.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "station/visit.h"
#include "station/wording/words.h"

namespace brimline {

// worked: inside its target now, and moved there by more than the errors of both readings. partly: moved
// towards it by more than those, and still outside by more than its own. not_at_all: still outside, though
// the way inside was longer than the errors and would have shown. cannot_tell: the errors hide it, or it was
// not read, or stood at the end of the method's range. All at 95 %, as findings are (edge.h).
enum class Worked { worked, partly, not_at_all, cannot_tell };
std::string_view name_of(Worked verdict);

struct PlanAnswer {
  std::string finding;  // its id
  Worked verdict = Worked::cannot_tell;
  std::string text;
};

// In the plan's order; empty where `then` has no plan as told. Findings about a reading's own trust are left
// out: no step was told for them.
std::vector<PlanAnswer> answers_of(const Visit& then, const Visit& now, const Words& words);

}  // namespace brimline
