// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/findings/edge.h"

namespace brimline {

Standing standing(const Measured& m, const Target& t) {
  const double guard = kSureSds * m.sd;
  if (t.low && m.value < *t.low) return m.value < *t.low - guard ? Standing::below : Standing::low_edge;
  if (t.high && m.value > *t.high) return m.value > *t.high + guard ? Standing::above : Standing::high_edge;
  return Standing::inside;
}

bool at_edge(const Measured& m, const Target& t) {
  const Standing s = standing(m, t);
  return s == Standing::low_edge || s == Standing::high_edge;
}

}  // namespace brimline
