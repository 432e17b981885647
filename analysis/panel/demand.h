// SPDX-License-Identifier: GPL-3.0-or-later
// The chlorine-demand test: bottles of the sample dosed with rising chlorine and read after a day. Demand is
// dose less residual at the end of the time, and depends on dose, time, temperature and pH: definition of
// Standard Methods 2350 (from memory), so time and temperature belong to the result.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "analysis/panel/bottle.h"
#include "analysis/panel/decay.h"
#include "analysis/panel/statement.h"
#include "analysis/panel/uncertainty.h"

namespace brimline {

// What one bottle says of the undiluted water.
enum class DemandWord {
  measures,     // chlorine stands and little is combined: the demand is met
  lower_bound,  // used up, or still combined: the demand is more
  upper_bound,  // over the method's range: the demand is less
  nothing       // bleached, or not read
};

struct DemandBottleResult {
  double dose_mg_l = 0;
  DemandWord word = DemandWord::nothing;
  Measured used;  // chlorine used by the undiluted water, mg/L Cl2
};

struct DemandResult {
  std::optional<Measured> demand;      // mg/L Cl2, at `at_hours`; absent: not found
  std::optional<double> demand_above;  // greatest lower bound where the demand was not found
  std::optional<double> demand_below;  // least upper bound, of over-range bottles
  double at_hours = 24;
  std::optional<Temperature> temperature;  // the bottles stood at; absent: not told
  std::optional<Measured> fast, slow;  // met by `fast_hours`, and from then on; absent: not read in between
  double fast_hours = 0;
  std::optional<double> demand_infinite;  // met for good, from readings in time; absent: too few
  std::optional<DecayFit> decay;    // of the weakest bottle that holds, best by AICc; absent: too few times
  bool breakpoint_reached = false;  // chlorine stands, and combined chlorine was read and is low
  bool bottles_agree = true;        // those that hold, within their errors
  bool contradicted = false;        // a stronger bottle is used up where a weaker one holds
  std::optional<double> dose;       // demand + target residual - free chlorine now; no margin; not below 0
  double dose_sd = 0;               // of the demand less what is there now: the sample's own reading cancels
  std::vector<DemandBottleResult> bottles;  // by rising dose
  bool enough() const { return demand.has_value(); }
  std::vector<Statement> statements() const;  // what was found and what to do; context "demand"
  std::string text() const;                   // the same in English
};

// Residuals and the combined chlorine that count as held, mg/L Cl2.
inline constexpr double kHeldFree = 1;
inline constexpr double kHeldCombined = 0.5;

// Sizes of a demand that ask for more than a dose, mg/L Cl2; common practice, no source.
inline constexpr double kCleanFirst = 15, kDiluteFirst = 30, kBeyondHome = 60;

// used = (dose + free_now (1 - share) - free_end) / (1 - share): mass balance of the mixture, per undiluted
// water.
double chlorine_used(const DemandBottle& bottle, double free_now, double free_end);

// The temperature the bottles stood at: as told with the test, else the sample's; absent: neither was told.
std::optional<Temperature> stood_at(const DemandTest& test, const Bottle& bottle);

// `free_now`: the sample's own reading; `target_residual`: mg/L Cl2 wanted at the end; `method`: the bottles
// were read with.
DemandResult judge_demand(const DemandTest& test, const Measured& free_now, double target_residual,
                          std::optional<Temperature> temperature = std::nullopt,
                          Method method = Method::photometer);

}  // namespace brimline
