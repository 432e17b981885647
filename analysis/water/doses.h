// SPDX-License-Identifier: GPL-3.0-or-later
// What a mole of each chemical does to the totals of a water.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include <tl/expected.hpp>

#include "analysis/water/water.h"

namespace brimline {

// One chemical: its change of the totals per mole of anhydrous formula, pure.
struct DoseRow {
  std::string_view id;          // of the contract: "hydrochloric_acid"
  std::string_view formula;     // also understood as a name: "HCl"; may be empty
  double molar_mass = 0;        // g/mol of the anhydrous formula; 0 for what is dosed by label only
  Totals per_mole;              // oxidants counted as present; a reducer's includes the chlorine it removes
  double removes_chlorine = 0;  // mol Cl(+I) a mole reduces, where there is that much
  std::string_view reaction;    // the equation and its source
};
std::span<const DoseRow> dose_rows();

// Row by id or formula; none if unknown.
const DoseRow* find_dose(std::string_view chemical);

// Change per mole by id or formula; none if unknown ("aeration" is not a dose: use aerate()).
std::optional<Totals> dose_vector(std::string_view chemical);

// The totals after `mol_per_kgw` of a chemical. A reducer takes chlorine, then bromine, no more than there is
// (what is left over is oxidised by air), and chlorine turns bromide into bromine. None if the chemical is
// unknown.
std::optional<Totals> add(const Totals& before, std::string_view chemical, double mol_per_kgw);

// Chlorine used up by what it oxidises: HOCl -> Cl- + H+ (the reductant gives the electrons with their
// protons, 3 HOCl + 2 NH3 -> N2 + 3 HCl + 3 H2O), so each mole takes one equivalent of alkalinity.
// At most what there is.
Totals spend_chlorine(const Totals& totals, double mol_per_kgw);
Totals spend_bromine(const Totals& totals, double mol_per_kgw);  // HOBr -> Br- + H+

// HOCl + Br- -> HOBr + Cl-, as far as the lesser of the two lasts. Alkalinity is unchanged.
Totals oxidise_bromide(const Totals& totals);

}  // namespace brimline
