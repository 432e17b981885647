// SPDX-License-Identifier: GPL-3.0-or-later
// Four counters on one PostgreSQL server; prints the table that is kept in four_counters.txt. Argument:
// visits each, 10000 if absent.
#include <cstdlib>
#include <iostream>

#include <QCoreApplication>

#include "tests/long/four_counters.h"
#include "tests/support/run_program.h"

int main(int count, char** words) {
  const QCoreApplication application(count, words);
  const int visits = count > 1 ? static_cast<int>(std::strtol(words[1], nullptr, 10)) : 10000;
  brimline::testing::ScratchFolder folder;
  const auto tally = brimline::tests::work_at_counters(folder / "", 4, visits, 20261127);
  std::cout << brimline::tests::table_of(tally);
  return tally.missing + tally.readings_lost + tally.readings_doubled + tally.edits_lost + tally.left +
                     tally.faults ==
                 0
             ? 0
             : 1;
}
