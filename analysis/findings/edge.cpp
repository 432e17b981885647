// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/findings/edge.h"

namespace brimline {

namespace {
constexpr double kUnnoticed = 0.1;  // of a standard deviation: less is no difference at all
}  // namespace

Standing standing(const Measured& m, const Target& t) {
  const double guard = kSureSds * m.sd;
  const double nothing = kUnnoticed * m.sd;
  if (t.low && m.value < *t.low - nothing)
    return m.value < *t.low - guard ? Standing::below : Standing::low_edge;
  if (t.high && m.value > *t.high + nothing)
    return m.value > *t.high + guard ? Standing::above : Standing::high_edge;
  return Standing::inside;
}

bool at_edge(const Measured& m, const Target& t) {
  const Standing s = standing(m, t);
  return s == Standing::low_edge || s == Standing::high_edge;
}

}  // namespace brimline
