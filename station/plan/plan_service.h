// SPDX-License-Identifier: GPL-3.0-or-later
// The plan of a visit, in words: what the water does, what to do about it and in which order, proven
// by the full model. Nothing is stored here; time and randomness come in with the arguments.
#pragma once

#include <span>

#include "analysis/findings/targets.h"
#include "analysis/panel/supplies.h"
#include "analysis/treatment/hand.h"
#include "station/shelf/shelf.h"
#include "station/visit.h"
#include "station/wording/words.h"

namespace brimline {

struct ShopSettings {
  std::string emergency_number = "911";
  // When the bottle's overnight test is read, where one goes on: the customer waits for it then.
  std::optional<Instant> overnight_due;
  Supplies supplies;  // reagents and instrument checks behind the readings; what is not there is not judged
};

// `earlier`: visits of the same vessel, oldest first; they lend the slow readings to the model.
Plan make_plan(const Visit& visit, std::span<const Visit> earlier, const Shelf& shelf,
               const TargetSet& targets, const Words& words, const PlanOptions& options = {},
               const ShopSettings& shop = {});

// The same plan as the trained hand changed it: every cap and conflict holds, the proof is run again, and a
// change that could harm is refused, in words. Who changed what stands in `changes`.
tl::expected<Plan, std::string> make_changed_plan(const Visit& visit, std::span<const Visit> earlier,
                                                  const Shelf& shelf, const TargetSet& targets,
                                                  std::span<const HandOrder> orders, const Words& words,
                                                  const PlanOptions& options = {},
                                                  const ShopSettings& shop = {});

}  // namespace brimline
