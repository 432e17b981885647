// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/station/compare/households_table.h"

#include <algorithm>
#include <cmath>
#include <iomanip>
#include <sstream>
#include <vector>

#include "station/compare/compare.h"

namespace brimline::tests {

namespace {

constexpr double kNinety = 1.6449;

void count(HouseholdTally& tally, bool inside) {
  ++tally.found;
  tally.inside += inside;
}

bool holds(double truth, double value, double sd) {
  return std::abs(value - truth) <= kNinety * sd;
}

void judge(const SimulatedHousehold& h, HouseholdTable& table) {
  static const Words words;
  const Comparison c = compare(h.visits, words);
  const bool truly = h.truth == Truth::replaced;
  // claimed where none was counts too: its interval has to hold nought
  if (c.water_replaced)
    for (HouseholdTally* tally : {&table.replaced, truly ? &table.truly_replaced : nullptr})
      if (tally) count(*tally, holds(h.replaced, c.water_replaced->fraction, c.water_replaced->sd));
  table.missed += truly && !c.water_replaced;
  table.claimed += !truly && c.water_replaced.has_value();
  if (c.volume) {
    const Vessel& vessel = h.visits[0].vessel;
    count(table.volume, holds(h.volume, c.volume->m3, c.volume->sd));
    count(table.narrowed, c.volume->sd < vessel.volume->cubic_metres() * *vessel.volume_relative_sd);
  }
  const std::string first = c.explanations.empty() ? "" : c.explanations.front().id;
  ++table.named[name_of(h.truth)][first.empty() ? "-" : first];
  count(table.right, h.right(first));
  count(table.right_of[name_of(h.truth)], h.right(first));
}

}  // namespace

HouseholdTable compare_households(int count, bool everyday, unsigned seed) {
  std::mt19937_64 random(seed);
  HouseholdTable table;
  for (int i = 0; i < count; ++i)
    judge(invent(random, static_cast<Truth>(i % kTruths), everyday, 2 + i / kTruths % 4), table);
  return table;
}

void print(std::ostream& to, const HouseholdTable& t, const char* title) {
  std::ostringstream out;
  out << "\n" << title << "\n" << std::fixed << std::setprecision(1);
  out << "  share replaced inside its 90 % interval: " << 100 * t.replaced.share() << " % of "
      << t.replaced.found << " (where it was: " << 100 * t.truly_replaced.share() << " % of "
      << t.truly_replaced.found << ", not seen " << t.missed << "; claimed where none was: " << t.claimed
      << ")\n";
  out << "  volume inside its 90 % interval: " << 100 * t.volume.share() << " % of " << t.volume.found
      << "; narrower than the file in " << t.narrowed.inside << "\n";
  out << "  cause named first is the right one: " << 100 * t.right.share() << " % of " << t.right.found
      << "\n";
  out << "  what happened, how often named right, and what was named first\n";
  for (const auto& [truth, row] : t.named) {
    out << "  " << std::left << std::setw(13) << truth << std::right << std::setw(6)
        << 100 * t.right_of.at(truth).share() << " %  ";
    std::vector<std::pair<int, std::string>> sorted;
    for (const auto& [id, times] : row) sorted.emplace_back(-times, id);
    std::sort(sorted.begin(), sorted.end());
    for (const auto& [times, id] : sorted) out << " " << id << ":" << -times;
    out << "\n";
  }
  to << out.str();
}

}  // namespace brimline::tests
