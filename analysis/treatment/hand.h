// SPDX-License-Identifier: GPL-3.0-or-later
// The trained hand: staff change a dose, a product or leave a step out, with a reason. The plan is put down
// again step by step, every cap and conflict holds, the proof is run again and harm is still refused.
#pragma once

#include <span>
#include <string>

#include "analysis/treatment/planner.h"

namespace brimline {

struct HandOrder {
  enum class What { dose, product, leave_out };
  int step = 0;  // its order in the plan as drafted
  What what = What::dose;
  double share = 1;     // dose: of what the plan told; 0.5 is half
  std::string product;  // product: id on the shelf, or of what stands at home
  std::string staff, reason;
};

// Why a change is refused; ids, the station gives them words.
struct HandRefusal {
  int step = 0;
  std::string
      why;  // "no_reason", "no_such_step", "not_a_dose", "not_on_shelf", "never_here", "over_cap", "harm"
  double harm = 0;  // share of draws, where that is why
};

// Whether some amount of `substitute` does what a dose of `chemical` does; ids of analysis/substances.
bool can_stand_for(const std::string& substitute, const std::string& chemical);

// The plan with these changes. `drafted` must be of the same situation, targets and shelf.
tl::expected<DraftedPlan, HandRefusal> change_by_hand(const Situation& s, const TargetSet& targets,
                                                      std::span<const Product> shelf,
                                                      const DraftedPlan& drafted,
                                                      std::span<const HandOrder> orders,
                                                      const PlanOptions& options);

}  // namespace brimline
