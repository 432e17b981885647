// SPDX-License-Identifier: GPL-3.0-or-later
// Free chlorine shared out between HOCl, OCl- and the chlorinated cyanurates.
#pragma once

#include "analysis/water/activity.h"

namespace brimline {

struct ChlorineShare {
  double hypochlorous = 0;  // [HOCl], mol/kgw
  double hypochlorite_alkalinity = 0;
  double cyanurate_alkalinity = 0;  // charge of all cyanurate species
  double slope = 0;                 // d(both alkalinities) / d ln(activity of H+)
  double charge_squares = 0;        // sum of z^2 m
};

// `guess` of [HOCl] or 0. `cyanurate` and `chlorine` are totals, mol/kgw.
ChlorineShare share_chlorine(const Conditional& constants, double hydrogen, double cyanurate, double chlorine,
                             double guess);

}  // namespace brimline
