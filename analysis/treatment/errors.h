// SPDX-License-Identifier: GPL-3.0-or-later
// The errors of a bottle's readings, as the water model takes them.
#pragma once

#include <optional>

#include "analysis/treatment/situation.h"
#include "analysis/water/uncertainty.h"

namespace brimline {

// Standard deviations of the readings that the water was solved from; only where there are some.
ReadingErrors errors_of(const Situation& s);

// The saturation index for calcite in the vessel, with its standard deviation. None without a solved water or
// a usable calcium hardness.
std::optional<Measured> saturation_of(const Situation& s);

}  // namespace brimline
