// SPDX-License-Identifier: GPL-3.0-or-later
// What an overnight test says of the visit's water, as far as its bottles are read.
#pragma once

#include <optional>

#include "analysis/panel/demand.h"
#include "station/overnight/overnight_test.h"
#include "station/visit.h"

namespace brimline {

// Free chlorine of the sample as last read; not read counts as none.
Measured free_now_of(const Visit& visit);

// Where the household regime sends free chlorine in this water, mg/L Cl2.
double residual_wanted(const Visit& visit);

// Judged with the residual that the household regime wants in this water.
DemandResult result_of(const DemandTest& test, const Visit& visit);

// What the visit's own finished test says the demand is above; nothing where it found the demand, or where
// there is none.
std::optional<double> known_above_of(const Visit& visit);

}  // namespace brimline
