// SPDX-License-Identifier: GPL-3.0-or-later
// Measures of a vessel, as quantities are (analysis/quantities.h). Exact: a foot is 0.3048 m (NIST Special
// Publication 811, appendix B; from memory).
#pragma once

#include "analysis/quantities.h"

namespace brimline {

// Base unit metre.
class Length : public Quantity<Length> {
 public:
  static constexpr Length metres(double v) { return of(v); }
  static constexpr Length feet(double v) { return of(v * 0.3048); }
  constexpr double metres() const { return base(); }
};

// Base unit square metre.
class Area : public Quantity<Area> {
 public:
  static constexpr Area square_metres(double v) { return of(v); }
  static constexpr Area square_feet(double v) { return of(v * 0.3048 * 0.3048); }
  constexpr double square_metres() const { return base(); }
};

}  // namespace brimline
