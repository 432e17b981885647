// SPDX-License-Identifier: GPL-3.0-or-later
// What a told dose does to the readings once it has mixed and its oxidant is spent.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "analysis/panel/bottle.h"
#include "analysis/quantities.h"
#include "analysis/water/totals.h"

namespace brimline {

// Change of the totals per mole of the chemical, its chlorine or bromine spent (HOCl -> Cl- + H+, one
// equivalent of alkalinity each). Nothing for what is unknown or dosed by label only.
std::optional<Totals> spent_dose(std::string_view chemical);

// A total as the counter reads it, in the analyte's unit; nothing for what is not a total (pH, metals).
// Chlorine and bromine count as `free_chlorine` and `total_bromine`.
std::optional<double> reading_of(const Totals& totals, std::string_view analyte);
bool is_total(std::string_view analyte);

// The change a told dose makes to a reading, in its unit. Nothing where the chemical has no vector or its
// amount was not told.
std::optional<double> told_change(const Addition& addition, std::string_view analyte, Volume volume);

// Whether the chemical moves the reading at all, spent: for doses whose amount nobody knows.
// +1 up, -1 down, 0 not at all.
int told_direction(std::string_view chemical, std::string_view analyte);

}  // namespace brimline
