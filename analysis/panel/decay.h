// SPDX-License-Identifier: GPL-3.0-or-later
// How free chlorine goes in a bottle: the decay models of the literature, fitted and compared.
// Powell, West, Hallam, Forster and Simms 2000 compare them on over 200 waters; parallel first order: Haas
// and Karra 1984 (both from memory). The solutions are those of dC/dt = -k C^n.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "analysis/panel/uncertainty.h"

namespace brimline {

enum class DecayModel { first_order, second_order, nth_order, limited_first_order, parallel_first_order };

// C in mg/L Cl2, t in hours, C0 = C(0).
struct Decay {
  DecayModel model = DecayModel::first_order;
  double start = 0;      // C0
  double rate = 0;       // k: 1/h, or (mg/L)^(1-n)/h; of the fast part in parallel_first_order
  double order = 2;      // n of nth_order, above 1
  double rest = 0;       // C* that stays, limited_first_order
  double share = 0;      // x of the fast part, parallel_first_order
  double slow_rate = 0;  // k2 of the slow part, 1/h

  // first C0 e^(-kt); second C0/(1 + k C0 t); nth [C0^(1-n) + (n-1) k t]^(1/(1-n));
  // limited C* + (C0 - C*) e^(-kt); parallel C0 [x e^(-kt) + (1-x) e^(-k2 t)].
  double at(double hours) const;
};

struct DecayPoint {
  double hours = 0;
  Measured residual;  // mg/L Cl2; sd above 0
};

struct DecayFit {
  Decay decay;
  int parameters = 1;     // C0 is known and none of them
  double chi_square = 0;  // sum of squared residuals over their sds
  double aicc = 0;        // chi_square + 2p + 2p(p+1)/(n-p-1): Hurvich and Tsai 1989 (from memory), sds known
};

// Every model there are times enough for (n - p - 1 of at least 1), best first; empty: too few times.
// `start`: the dose with what the sample held, mg/L Cl2.
std::vector<DecayFit> fit_decays(double start, std::span<const DecayPoint> points);

// Demand met for good by what was used up to each time: D(t) = D (1 - exp(-k t)), limited first order, and
// from five times also with a part met at once, the better by AICc.
struct DemandPoint {
  double hours = 0;
  Measured used;  // mg/L Cl2
};
// Nothing for fewer than two times, or where the curve does not bend yet and its end is a guess.
std::optional<double> demand_at_infinity(std::span<const DemandPoint> points);

}  // namespace brimline
