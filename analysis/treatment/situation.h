// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on the counter when the plan is made: which readings are believed and how well, the
// solved water, the fill water, and what the customer saw.
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string_view>

#include "analysis/findings/targets.h"
#include "analysis/panel/bottle.h"
#include "analysis/panel/panel.h"
#include "analysis/panel/vessel.h"
#include "analysis/water/water.h"

namespace brimline {

// A reading as it is believed.
struct Known {
  double value = 0;       // in the analyte's unit
  double sd = 0;          // of the value, same unit
  bool usable = true;     // false: clipped or rejected, nothing may hang on it
  bool doubtful = false;  // to be read again before anything is dosed on it
  std::optional<Clip> clipped;
  bool from_earlier = false;  // of an earlier bottle: good for the model, never for a dose of its own

  Measured measured() const { return {value, sd}; }
};
using KnownReadings = std::map<AnalyteId, Known, std::less<>>;

struct Situation {
  Vessel vessel;
  Bottle bottle;
  std::optional<Instant> home_at;
  KnownReadings known;
  std::vector<AnalyteId> must_repeat;  // readings that checking wants again before anything hangs on them
  TargetCase where;
  Temperature bottle_temperature = Temperature::celsius(25);
  Temperature vessel_temperature = Temperature::celsius(25);
  std::optional<WaterReadings> readings;  // that the water is solved from; absent: pH or alkalinity not known
  std::optional<Water> water;             // absent: pH or alkalinity not known, or they contradict
  std::optional<Refusal> refusal;         // why, where they contradict
  std::optional<Water> fill;              // absent: the fill water's pH, alkalinity or hardness is not known
  KnownReadings fill_known;
  std::optional<double>
      demand_dose_mg_l;  // chlorine the demand test asks for; absent: none made or not enough
  double demand_mg_l = 0, demand_sd_mg_l = 0;  // what it found, where it found it

  bool demand_open = false;  // a demand test was made and did not find the demand

  bool has(Sign sign) const;
  bool is_spa() const { return where.kind == VesselKind::spa || where.kind == VesselKind::swim_spa; }
  bool chlorine() const { return vessel.sanitizer && is_chlorine(*vessel.sanitizer); }
  // The reading if it is there and usable, of this bottle or an earlier one.
  const Known* usable(std::string_view analyte) const;
  // The same of this bottle only: what a dose may hang on.
  const Known* fresh(std::string_view analyte) const;
  std::optional<Measured> combined_chlorine() const;  // mg/L Cl2; absent: not both read and usable
  bool algae() const { return has(Sign::green_water) || has(Sign::slimy_walls); }
};

// The values of a checked panel.
KnownReadings believe(const CheckedPanel& panel);

// Readings for the model; `fill` readings of the same form.
std::optional<WaterReadings> model_readings(const KnownReadings& known, Temperature at);

// What the demand test asks for, with the residual these targets want.
void weigh_demand(Situation& s, const TargetSet& targets);

Situation make_situation(const Vessel& vessel, const Bottle& bottle, std::span<const Bottle> earlier,
                         const Supplies& supplies = {});

}  // namespace brimline
