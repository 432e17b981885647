// SPDX-License-Identifier: GPL-3.0-or-later
// What `check` and `demand` answer, one JSON text a visit.
#pragma once

#include <string>
#include <vector>

#include "station/visit.h"
#include "station/wording/words.h"

namespace brimline::batch {

// `earlier`: bottles of the same vessel, oldest first; `now`: the machine's clock.
std::string check_answer(const Visit& visit, const std::vector<Bottle>& earlier, const Instant& now,
                         const Words& words);

// The visit must hold a demand test.
std::string demand_answer(const Visit& visit, const Words& words);

}  // namespace brimline::batch
