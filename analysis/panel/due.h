// SPDX-License-Identifier: GPL-3.0-or-later
// The panel: which readings a bottle is due.
#pragma once

#include <span>
#include <vector>

#include "analysis/panel/bottle.h"
#include "analysis/panel/vessel.h"

namespace brimline {

// All that this bottle is due, read or not, in the order of the bench: sanitizer, pH and alkalinity with
// every bottle; calcium, stabilizer where chlorine is used, iron and copper (and salt for a salt cell) once a
// month. A vessel's first bottle, an opening, a new fill, a storm and trouble are due the whole panel.
// What the customer saw asks for more: phosphate and nitrate with algae, metals with stains and green hair,
// calcium with scale, dissolved solids with foam; borate where borax or boric acid was given.
// `earlier`: bottles of the same vessel, in any order.
std::vector<AnalyteId> panel_due(const Bottle& bottle, const Vessel& vessel,
                                 std::span<const Bottle> earlier = {});

// Whether a bottle of the fill water is wanted too: first visit, opening, new fill, and none was brought.
bool fill_water_due(const Bottle& bottle, std::span<const Bottle> earlier = {});

}  // namespace brimline
