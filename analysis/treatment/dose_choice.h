// SPDX-License-Identifier: GPL-3.0-or-later
// Which doses, and how much of each, bring the water inside its targets: the program of dose_program over
// the conserved totals, re-linearised in pH and saturation until the full model agrees.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "analysis/treatment/draft.h"

namespace brimline {

// One dose chosen. `supply` -1: no product but air, which drives carbon dioxide out.
struct ChosenDose {
  int supply = -1;        // index into Draft::supplies()
  std::string substance;  // empty: air
  double mmol = 0;        // per kilogram of water, of all its steps
};

struct DoseChoice {
  std::vector<ChosenDose> doses;
  double weighed = 0;                   // the objective
  std::vector<std::string> no_product;  // substances that were wanted and nobody sells or has
};

// How the sanitizer enters the choice.
struct ChlorineGoal {
  bool dosed = false;             // chlorine may be poured
  std::optional<double> exactly;  // mg/L Cl2 it must stand at, or stands at: a shock or a demand. All else is
                                  // judged as it will be once that is used up: the alkalinity hypochlorite
                                  // brought goes with it.
};

DoseChoice choose_doses(const Draft& d, const ChlorineGoal& chlorine, bool stabilizer, bool salt);

}  // namespace brimline
