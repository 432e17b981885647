// SPDX-License-Identifier: GPL-3.0-or-later
// Standards that colour DPD as chlorine does: what a weighed permanganate or iodate solution stands for, and
// dilution. Stoichiometry; the weights are those of Standard Methods 4500-Cl G and ISO 7393-2 (from memory).
#pragma once

#include <span>

namespace brimline {

// mg/L Cl2 that `permanganate_mg_l` of KMnO4 equals: five electrons, Cl2 takes two. 891 mg/L stands for
// 999.4.
double chlorine_of_permanganate(double permanganate_mg_l);
// mg/L Cl2 that `iodate_mg_l` of KIO3 equals: IO3- + 5 I- + 6 H+ -> 3 I2. 1.006 g/L stands for 1000.0.
double chlorine_of_iodate(double iodate_mg_l);

// `part` of a solution made up to `whole`, same unit: 1 mL in 100 mL.
struct MadeUp {
  double part = 1, whole = 1;
};
// Concentration at the end of a chain of dilutions, in the unit of `stock`.
double diluted(double stock, std::span<const MadeUp> chain);

}  // namespace brimline
