// SPDX-License-Identifier: GPL-3.0-or-later
// A thousand invented households of each kind of month: build/long/households [COUNT [SEED]]. The last table
// stands in households.txt beside this file. Ends with 1 where a 90 % interval holds the truth less than 87
// or more than 93 times in a hundred, or the right cause is named first in less than 80.
#include <charconv>
#include <iostream>
#include <string_view>

#include "tests/station/compare/households_table.h"

namespace {

using namespace brimline::tests;

unsigned number(std::string_view text, unsigned otherwise) {
  std::from_chars(text.data(), text.data() + text.size(), otherwise);
  return otherwise;
}

bool calibrated(const HouseholdTally& tally) {
  return tally.share() >= 0.87 && tally.share() <= 0.93;
}

bool run(unsigned count, bool everyday, unsigned seed) {
  const HouseholdTable table = compare_households(static_cast<int>(count), everyday, seed);
  print(std::cout, table, everyday ? kOrdinaryMonths : kBareMonths);
  return calibrated(table.replaced) && calibrated(table.volume) && table.right.share() >= 0.8;
}

}  // namespace

int main(int argc, char** argv) {
  const unsigned count = argc > 1 ? number(argv[1], 1000) : 1000, seed = argc > 2 ? number(argv[2], 15) : 15;
  const bool ordinary = run(count, true, seed), bare = run(count, false, seed + 1);
  return ordinary && bare ? 0 : 1;
}
