// SPDX-License-Identifier: GPL-3.0-or-later
// Amounts as a customer measures them.
#pragma once

#include <string>

#include "analysis/quantities.h"
#include "analysis/treatment/plan.h"
#include "station/visit.h"
#include "station/wording/words.h"

namespace brimline {

// "104 °F" or "40 °C".
std::string temperature_words(const Words& words, double celsius, Units units);

// `amount` as the customer measures it: fl oz, oz and lb (never cups), or mL, L, g and kg; rounded to
// what a household can measure.
std::string household_amount(const Words& words, const ProductAmount& amount, Units units);

// The amount that those words tell, in its own unit: what stands in brackets behind them agrees with them.
ProductAmount as_told(const ProductAmount& amount, Units units);

// A share of the vessel, as a meter or a bucket tells it.
std::string water_words(const Words& words, Volume volume, double share, Units units);

}  // namespace brimline
