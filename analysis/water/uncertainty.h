// SPDX-License-Identifier: GPL-3.0-or-later
// How far the errors of readings carry into the derived values: central differences through the full model,
// combined in quadrature (JCGM 100:2008, equation 10; from memory).
#pragma once

#include <tl/expected.hpp>

#include "analysis/water/water.h"

namespace brimline {

// Standard deviations of readings, in the readings' units; 0: exact.
struct ReadingErrors {
  double temperature = 0, ph = 0, total_alkalinity = 0, calcium_hardness = 0, cyanuric_acid = 0, borate = 0,
         free_chlorine = 0, total_bromine = 0, salt_or_tds = 0;
};

// Change of a derived value per unit of each reading.
struct Sensitivity {
  double temperature = 0, ph = 0, total_alkalinity = 0, calcium_hardness = 0, cyanuric_acid = 0, borate = 0,
         free_chlorine = 0, total_bromine = 0, salt_or_tds = 0;
};

struct Sensitivities {
  Sensitivity si_calcite;  // per unit
  Sensitivity log10_hocl;  // of log10(HOCl)
  Sensitivity hocl;        // mg/L Cl2 per unit
};

[[nodiscard]] tl::expected<Sensitivities, Refusal> sensitivities(const WaterReadings& readings);

// Root of the sum of squares of slope times error.
double combined(const Sensitivity& slope, const ReadingErrors& errors);

}  // namespace brimline
