// SPDX-License-Identifier: GPL-3.0-or-later
// The owner's week: what came to the counter, whether the plans of before worked, what was used up for it.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "analysis/panel/supplies.h"
#include "station/compare/plan_answer.h"
#include "station/records/progress.h"
#include "station/store/store.h"

namespace brimline {

// Why a reagent wants ordering.
enum class Reorder { no, runs_out, expires, expired };

struct LotUse {
  ReagentLot lot;
  std::int64_t used = 0;             // readings of the week that name it
  std::optional<std::int64_t> left;  // of its pack, at the week's end; absent: nobody told how many it holds
  Reorder reorder = Reorder::no;
};

struct FindingCount {
  std::string id;
  std::optional<AnalyteId> analyte;
  int visits = 0;
};

struct OwnersWeek {
  Instant from, until;  // until: the first moment that is no longer in it
  int bottles = 0;
  int first_visits = 0;                // of their vessel
  int returns = 0;                     // of a vessel that was here before
  int plans = 0, not_at_home = 0;      // told; of which no home plan could be given
  std::map<Worked, int> worked;        // plans of the visit before, judged by this week's readings
  std::vector<FindingCount> findings;  // the most frequent first
  std::map<AnalyteId, int> readings;
  std::vector<LotUse> lots;              // not thrown away, in the order of their names
  std::vector<InstrumentCheck> overdue;  // the last check of each that is due for another
};

// 00:00 of the Monday of `now`'s week, that many weeks before it; ISO 8601 weeks begin on Monday.
Instant week_begin(const Instant& now, int weeks_ago);
// One plan, judged by the findings it was told for: as bad as the worst of them; those that cannot be told
// count only where there is no other.
std::optional<Worked> verdict_of(const std::vector<PlanAnswer>& answers);
// A reagent is ordered when its pack holds less than two weeks of this week's use, or is good for less than
// 30 days, and no closed pack of the same kind stands by. Common practice, no source.
Reorder reorder_of(const LotUse& use, const Supplies& supplies, const Instant& now);
// The last check of each instrument and channel that is older than the shop's interval, or failed.
std::vector<InstrumentCheck> overdue_checks(const Supplies& supplies, const Instant& now);

// `supplies`: what the shop has written down, with its own limits. Stopped by `progress`: refused, "stopped".
Stored<OwnersWeek> week_of(Store& store, const Instant& from, const Supplies& supplies,
                           const Progress& progress = {});

}  // namespace brimline
