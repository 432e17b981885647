// SPDX-License-Identifier: GPL-3.0-or-later
// Where an absorbance becomes an amount: by the curve of the reagent lot in use, or by an indicator's two
// colours. Behind it every reading is in the analyte's unit.
#pragma once

#include "devices/happening.h"
#include "qml/models/counter.h"

namespace brimline {

class AbsorbanceEdge {
 public:
  // What is no absorbance passes as it is. An amount carries its sd and is clipped outside the standards;
  // without a curve there is no reading but a trouble that says so. Nothing: the first of an indicator's two
  // colours, which waits for the other.
  std::optional<Happening> pass(const Happening& happening, const Counter& counter);

 private:
  std::optional<Happening> colour(const Happening& happening, double temperature_c);

  std::optional<Happening> first_;  // colour heard
};

}  // namespace brimline
