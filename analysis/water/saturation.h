// SPDX-License-Identifier: GPL-3.0-or-later
// Saturation beyond the index: the pH at which calcite would be just saturated, the calcite that would fall
// or dissolve, and the legal factor-table index.
#pragma once

#include <optional>

#include <tl/expected.hpp>

#include "analysis/water/water.h"

namespace brimline {

// Lowest pH with SI = 0 at the same total alkalinity and all totals but carbon; none where no pH from 4 to 11
// gets there. Not pH - SI: cyanurate, borate and hydroxide take alkalinity as pH moves.
std::optional<double> saturation_ph(const Water& water);

struct CalciteEquilibrium {
  double precipitated_mol = 0;                                             // mol/kgw; negative: dissolved
  double ph = 0;                                                           // once at equilibrium
  double ccpp() const { return precipitated_mol * 1e3 * weight::kCaCO3; }  // mg/L CaCO3
};
// Calcite to SI = 0, closed. None where no amount does it within pH 4-11.
std::optional<CalciteEquilibrium> calcite_equilibrium(const Water& water);

// pH + TF + CF + AF - 12.1 (12.2 from 1,000 mg/L of dissolved solids), linear between the rows of the table
// of 10 NYCRR 6-1.30 (the same in Mont. Admin. R. 37.115, Table 7); hardness and alkalinity in mg/L CaCO3.
// None outside the rows' range.
std::optional<double> factor_table_index(double ph, Temperature temperature, double calcium_hardness,
                                         double alkalinity, double dissolved_solids);
// The same of a water, with its carbonate alkalinity.
std::optional<double> factor_table_index(const Water& water);

struct Factors {
  double temperature = 0, calcium = 0, alkalinity = 0;
};
std::optional<Factors> table_factors(Temperature temperature, double calcium_hardness, double alkalinity);

}  // namespace brimline
