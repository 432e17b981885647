// SPDX-License-Identifier: GPL-3.0-or-later
// What a trained hand changed in a plan, as a sentence for screen, sheet and staff copy.
#pragma once

#include <string>

#include "analysis/treatment/plan.h"
#include "station/wording/words.h"

namespace brimline {

// "Step 2: 510 g dry acid instead of 2 1/4 cups muriatic acid. N. N.: no liquid acid in this house."
std::string hand_change_line(const Words& words, const HandChange& change);

}  // namespace brimline
