// SPDX-License-Identifier: GPL-3.0-or-later
// What stood behind the readings: reagent lots and instrument checks, as the shop's records hold them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "analysis/instant.h"
#include "analysis/panel/reading.h"

namespace brimline {

// A lot of reagent; a reading names it by `lot`.
struct ReagentLot {
  std::string lot;
  std::optional<Instant> expires;    // end of the last day it is good; absent: not printed on it
  std::optional<Instant> opened;     // absent: not known
  std::optional<double> warmest_c;   // degrees Celsius it was kept at; absent: not known
  bool beside_chlorine = false;      // its shelf was shared with chlorine products
  std::optional<AnalyteId> analyte;  // it is for; absent: not told
  bool gone = false;                 // used up or thrown away
  std::optional<int> tests;          // its pack holds; absent: not told
  friend bool operator==(const ReagentLot&, const ReagentLot&) = default;
};

// One check of an instrument against standards; a reading names it by `instrument`.
struct InstrumentCheck {
  std::string instrument;
  std::optional<AnalyteId> analyte;  // the channel checked; absent: the whole instrument
  Instant at;
  bool passed = true;
  friend bool operator==(const InstrumentCheck&, const InstrumentCheck&) = default;
};

// All that the shop has written down; what is not here is not known and not judged.
struct Supplies {
  std::vector<ReagentLot> lots;
  std::vector<InstrumentCheck> checks;  // in any order
  double check_every_days = 30;         // a shop setting
  double good_once_opened_days = 180;   // opened longer ago counts as last season's; a shop setting
  double warm_c = 30;                   // reagents kept warmer are doubted; a shop setting
};

// The last check of each instrument and channel, in the order of their names; they live in `supplies`.
std::vector<const InstrumentCheck*> last_checks(const Supplies& supplies);

// The lot a reading of this analyte is taken with now: of those opened and not gone the one opened last.
const ReagentLot* lot_in_use(const Supplies& supplies, const AnalyteId& analyte);

}  // namespace brimline
