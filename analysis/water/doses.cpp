// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/water/doses.h"

#include <algorithm>
#include <array>
#include <utility>

namespace brimline {
namespace {

// Thiosulfate takes 1 to 4 HOCl a mole with the pH, between S2O3-2 + HOCl -> S + SO4-2 + Cl- + H+ and
// S2O3-2 + 4 HOCl + H2O -> 2 SO4-2 + 4 Cl- + 6 H+. Doses here reckon with 1.9 g of Na2S2O3.5H2O (248.18
// g/mol) a gram of chlorine, between a published 2.97 g/g and the 0.875 g/g of the second reaction; a share f
// of the second gives that.
constexpr double kThiosulfateTakes = 248.18 / 1.9 / weight::kChlorine;
constexpr double kThiosulfateFull = (kThiosulfateTakes - 1) / 3;

// alkalinity, carbon, calcium, magnesium, sodium, chloride, sulfate, cyanurate, borate, chlorine, bromine,
// bromide a mole. Masses: IUPAC standard atomic weights, abridged 2021; from memory.
constexpr std::array kRows = {
    DoseRow{"hydrochloric_acid", "HCl", 36.458, {.alkalinity = -1, .chloride = 1}, 0, "HCl -> H+ + Cl-"},
    DoseRow{"sodium_bisulfate",
            "NaHSO4",
            120.05,
            {.alkalinity = -1, .sodium = 1, .sulfate = 1},
            0,
            "NaHSO4 -> Na+ + H+ + SO4-2"},
    DoseRow{"sodium_bicarbonate",
            "NaHCO3",
            84.006,
            {.alkalinity = 1, .carbon = 1, .sodium = 1},
            0,
            "NaHCO3 -> Na+ + HCO3-"},
    DoseRow{"sodium_carbonate",
            "Na2CO3",
            105.988,
            {.alkalinity = 2, .carbon = 1, .sodium = 2},
            0,
            "Na2CO3 -> 2 Na+ + CO3-2"},
    DoseRow{"sodium_sesquicarbonate",
            "Na2CO3.NaHCO3",
            189.994,
            {.alkalinity = 3, .carbon = 2, .sodium = 3},
            0,
            "Na2CO3.NaHCO3 -> 3 Na+ + CO3-2 + HCO3-"},
    DoseRow{"sodium_hydroxide", "NaOH", 39.997, {.alkalinity = 1, .sodium = 1}, 0, "NaOH -> Na+ + OH-"},
    DoseRow{"carbon_dioxide", "CO2", 44.009, {.carbon = 1}, 0, "CO2 + H2O = H2CO3"},
    DoseRow{"calcium_chloride", "CaCl2", 110.98, {.calcium = 1, .chloride = 2}, 0, "CaCl2 -> Ca+2 + 2 Cl-"},
    DoseRow{"cyanuric_acid", "C3H3N3O3", 129.0745, {.cyanurate = 1}, 0, "C3H3N3O3 = H3Cy"},
    DoseRow{"sodium_hypochlorite",
            "NaOCl",
            74.44,
            {.alkalinity = 1, .sodium = 1, .chlorine = 1},
            0,
            "NaOCl -> Na+ + OCl-"},
    DoseRow{"calcium_hypochlorite",
            "Ca(OCl)2",
            142.98,
            {.alkalinity = 2, .calcium = 1, .chlorine = 2},
            0,
            "Ca(OCl)2 -> Ca+2 + 2 OCl-"},
    DoseRow{"dichlor",
            "NaC3N3O3Cl2",
            219.94,
            {.alkalinity = 1, .sodium = 1, .cyanurate = 1, .chlorine = 2},
            0,
            "NaC3N3O3Cl2 -> Na+ + Cl2Cy-"},
    DoseRow{"trichlor", "C3N3O3Cl3", 232.40, {.cyanurate = 1, .chlorine = 3}, 0, "C3N3O3Cl3 = Cl3Cy"},
    DoseRow{"potassium_monopersulfate",
            "KHSO5",
            152.16,
            {.alkalinity = -1, .sodium = 1, .sulfate = 1},
            0,
            "KHSO5 + 2 [H] -> K+ + H+ + SO4-2 + H2O: pure formula, counted as used up at once"},
    DoseRow{"monopersulfate_triple_salt",
            "2KHSO5.KHSO4.K2SO4",
            614.74,
            {.alkalinity = -3, .sodium = 5, .sulfate = 4},
            0,
            "a mole holds two of KHSO5, used up at once"},
    DoseRow{"hydrogen_peroxide",
            "H2O2",
            34.014,
            {.alkalinity = -1, .chloride = 1, .chlorine = -1},
            1,
            "H2O2 + HOCl -> O2 + H+ + Cl- + H2O"},
    DoseRow{"sodium_bromide", "NaBr", 102.894, {.sodium = 1, .bromide = 1}, 0, "NaBr -> Na+ + Br-"},
    DoseRow{"bcdmh",
            "C5H6BrClN2O2",
            241.47,
            {.chloride = 1, .bromine = 2, .bromide = -1},
            0,
            "C5H6BrClN2O2 + 2 H2O -> C5H8N2O2 + HOBr + HOCl; HOCl + Br- -> HOBr + Cl-"},
    DoseRow{"sodium_thiosulfate",
            "Na2S2O3",
            158.10,
            {.alkalinity = -2 * kThiosulfateFull - kThiosulfateTakes,
             .sodium = 2,
             .chloride = kThiosulfateTakes,
             .sulfate = 1 + kThiosulfateFull,
             .chlorine = -kThiosulfateTakes},
            kThiosulfateTakes,
            "1 to 4 HOCl a mole; reckoned at 1.84 (1.9 g of the pentahydrate a gram of Cl2)"},
    DoseRow{"sodium_sulfite",
            "Na2SO3",
            126.04,
            {.alkalinity = -1, .sodium = 2, .chloride = 1, .sulfate = 1, .chlorine = -1},
            1,
            "SO3-2 + HOCl -> SO4-2 + H+ + Cl-"},
    DoseRow{"ascorbic_acid",
            "C6H8O6",
            176.12,
            {.alkalinity = -1, .chloride = 1, .chlorine = -1},
            1,
            "C6H8O6 + HOCl -> C6H6O6 + H+ + Cl- + H2O"},
    DoseRow{"boric_acid", "H3BO3", 61.833, {.borate = 1}, 0, "H3BO3 = B(OH)3"},
    DoseRow{"borax",
            "Na2B4O7",
            201.22,
            {.alkalinity = 2, .sodium = 2, .borate = 4},
            0,
            "Na2B4O7 + 7 H2O -> 2 Na+ + 2 B(OH)3 + 2 B(OH)4-"},
    DoseRow{"sodium_chloride", "NaCl", 58.443, {.sodium = 1, .chloride = 1}, 0, "NaCl -> Na+ + Cl-"},
    DoseRow{"lanthanum_chloride",
            "LaCl3",
            245.26,
            {.alkalinity = -2, .chloride = 2},
            0,
            "La+3 + H2PO4- -> LaPO4 + 2 H+; the phosphate taken out counted as chloride before"},
    DoseRow{"copper_sulfate",
            "CuSO4",
            159.60,
            {.sodium = 2, .sulfate = 1},
            0,
            "CuSO4 -> Cu+2 + SO4-2; copper counted as two sodium"},
    DoseRow{"alum",
            "Al2(SO4)3",
            342.15,
            {.alkalinity = -6, .sulfate = 3},
            0,
            "Al2(SO4)3 + 6 H2O -> 2 Al(OH)3 + 6 H+ + 3 SO4-2"},
    DoseRow{"sequestrant", "", 0, {}, 0, "by label; totals unchanged"},
    DoseRow{"polyquat", "", 0, {}, 0, "by label; totals unchanged"},
    DoseRow{"phmb", "", 0, {}, 0, "by label; totals unchanged"},
    DoseRow{"clarifier", "", 0, {}, 0, "by label; totals unchanged"},
};

// Other names of the same anhydrous formula.
constexpr std::array<std::pair<std::string_view, std::string_view>, 3> kAliases = {
    {{"borax_pentahydrate", "borax"}, {"borax_decahydrate", "borax"}, {"H3Cy", "cyanuric_acid"}}};

}  // namespace

std::span<const DoseRow> dose_rows() {
  return kRows;
}

const DoseRow* find_dose(std::string_view chemical) {
  if (chemical.empty()) return nullptr;
  for (const auto& [alias, id] : kAliases)
    if (alias == chemical) chemical = id;
  const auto found = std::find_if(kRows.begin(), kRows.end(), [&](const DoseRow& row) {
    return row.id == chemical || row.formula == chemical;
  });
  return found == kRows.end() ? nullptr : &*found;
}

std::optional<Totals> dose_vector(std::string_view chemical) {
  const DoseRow* row = find_dose(chemical);
  return row ? std::optional(row->per_mole) : std::nullopt;
}

std::optional<Totals> add(const Totals& before, std::string_view chemical, double mol_per_kgw) {
  const DoseRow* row = find_dose(chemical);
  if (!row) return std::nullopt;
  Totals after = before + row->per_mole * mol_per_kgw;
  if (row->removes_chlorine > 0 && after.chlorine < 0) {
    // Chlorine that was not there to take: its acid and chloride were not made either. Bromine goes the same
    // way, to bromide.
    const double missing = -after.chlorine;
    after.chlorine = 0;
    after.chloride -= missing;
    after.alkalinity += missing;
    after = spend_bromine(after, missing);
  }
  return oxidise_bromide(after);
}

Totals spend_chlorine(const Totals& totals, double mol_per_kgw) {
  const double spent = std::min(mol_per_kgw, totals.chlorine);
  return totals + Totals{.alkalinity = -1, .chloride = 1, .chlorine = -1} * spent;
}

Totals spend_bromine(const Totals& totals, double mol_per_kgw) {
  const double spent = std::min(mol_per_kgw, totals.bromine);
  return totals + Totals{.alkalinity = -1, .bromine = -1, .bromide = 1} * spent;
}

Totals oxidise_bromide(const Totals& totals) {
  const double turned = std::max(std::min(totals.chlorine, totals.bromide), 0.0);
  return totals + Totals{.chloride = 1, .chlorine = -1, .bromine = 1, .bromide = -1} * turned;
}

}  // namespace brimline
