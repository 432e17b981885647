// SPDX-License-Identifier: GPL-3.0-or-later
// Equilibrium constants on concentrations at one temperature and ionic strength: extended Debye-Hueckel
// (Truesdell & Jones 1974, J. Res. USGS 2:233) where an ion size is listed, Davies 1962 (0.3 I) elsewhere,
// 10^(0.1 I) for neutral species.
#pragma once

#include "analysis/water/constants.h"

namespace brimline {

// Pairs of one metal, per mole of free metal: with x = [CO3-2], a = activity of H+, s = [SO4-2],
// [MCO3] = m co3 x, [MHCO3] = m hco3 a x, [MSO4] = m so4 s, [MOH] = m oh / a.
struct MetalPairs {
  double co3 = 0, hco3 = 0, so4 = 0, oh = 0;
};

// Cyanurate species per mole of H3Cy, with y = [HOCl]: coefficient of y^chlorines / a^charge.
struct CyanurateTerms {
  double none[4] = {};  // H3Cy, H2Cy-, HCy-2, Cy-3
  double one[3] = {};   // H2ClCy, HClCy-, ClCy-2
  double two[2] = {};   // HCl2Cy, Cl2Cy-
  double three = 0;     // Cl3Cy
};

struct Conditional {
  double hco3 = 0, co2 = 0;                  // [HCO3-] = x a hco3; [CO2] = x a^2 co2
  double oh = 0, h = 0;                      // [OH-] = oh / a; [H+] = a h
  double hso4 = 0;                           // [HSO4-] = s a hso4
  double borate = 0;                         // [B(OH)4-] / [B(OH)3] = borate / a
  double hypochlorite = 0, hypobromite = 0;  // [OX-] / [HOX] = . / a
  MetalPairs calcium, magnesium, sodium;
  CyanurateTerms cyanurate;
  double gamma_ca = 1, gamma_co3 = 1, gamma_hco3 = 1, gamma_neutral = 1;
};

// `ionic_strength` in mol/kgw, 0 or more; `with_cyanurate` false leaves those terms zero.
Conditional conditional_constants(const Constants& constants, double ionic_strength, bool with_cyanurate);

}  // namespace brimline
