// SPDX-License-Identifier: GPL-3.0-or-later
// Thermodynamic constants of the water model at one temperature, ionic strength zero, molal scale.
#pragma once

namespace brimline {

// Each number is the constant itself, not its logarithm, unless named log_.
struct Constants {
  double celsius = -1e9;
  double debye_a = 0, debye_b = 0;                        // of the activity model, for log10 and angstrom
  double water = 0;                                       // H2O = H+ + OH-
  double hco3 = 0, co2 = 0;                               // CO3-2 + H+ = HCO3-; CO3-2 + 2 H+ = CO2 + H2O
  double henry = 0;                                       // CO2(g) = CO2, mol/kgw per atm
  double log_ksp = 0;                                     // calcite
  double ca_hco3 = 0, ca_co3 = 0, ca_so4 = 0, ca_oh = 0;  // Ca+2 + ligand; OH: Ca+2 + H2O = CaOH+ + H+
  double mg_hco3 = 0, mg_co3 = 0, mg_so4 = 0, mg_oh = 0;
  double na_hco3 = 0, na_co3 = 0, na_so4 = 0;
  double hso4 = 0;                           // SO4-2 + H+ = HSO4-
  double borate = 0;                         // B(OH)3 + H2O = B(OH)4- + H+
  double hypochlorite = 0, hypobromite = 0;  // HOX = OX- + H+
};

// Computed once a temperature and kept for the thread's next waters of the same temperature; the reference
// holds until the thread's next call. Celsius within 0-45.
const Constants& constants_at(double celsius);

// Cyanurate constants, 25 C, used at every temperature: O'Brien, Morris & Butler 1974, in Rubin (ed.),
// Chemistry of Water Supply, Treatment, and Distribution, pp. 333-358; from memory. The implied hydrolyses
// of HClCy-, ClCy-2 and Cl2Cy- close three independent cycles exactly. H3Cy is cyanuric acid.
namespace cyanurate {
inline constexpr double kPkFirst = 6.88;              // H3Cy = H2Cy- + H+
inline constexpr double kPkSecond = 11.40;            // H2Cy- = HCy-2 + H+
inline constexpr double kPkThird = 13.5;              // HCy-2 = Cy-3 + H+
inline constexpr double kPkMonochloro = 4.07;         // H2ClCy + H2O = H3Cy + HOCl
inline constexpr double kPkDichloro = 2.93;           // HCl2Cy + H2O = H2ClCy + HOCl
inline constexpr double kPkTrichloro = 1.80;          // Cl3Cy + H2O = HCl2Cy + HOCl
inline constexpr double kPkMonochloroAcid = 5.33;     // H2ClCy = HClCy- + H+
inline constexpr double kPkMonochloroSecond = 10.12;  // HClCy- = ClCy-2 + H+
inline constexpr double kPkDichloroAcid = 3.75;       // HCl2Cy = Cl2Cy- + H+
}  // namespace cyanurate

}  // namespace brimline
