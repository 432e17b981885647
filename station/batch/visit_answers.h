// SPDX-License-Identifier: GPL-3.0-or-later
// What `check` and `demand` answer, one JSON text a visit.
#pragma once

#include <string>
#include <vector>

#include "analysis/panel/supplies.h"
#include "station/visit.h"
#include "station/wording/words.h"

namespace brimline::batch {

// `earlier`: bottles of the same vessel, oldest first; `now`: the machine's clock; `supplies`: reagents and
// checks behind the readings, what is not there is not judged.
std::string check_answer(const Visit& visit, const std::vector<Bottle>& earlier, const Instant& now,
                         const Words& words, const Supplies& supplies = {});

// The visit must hold a demand test.
std::string demand_answer(const Visit& visit, const Words& words);

}  // namespace brimline::batch
