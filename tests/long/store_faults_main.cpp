// SPDX-License-Identifier: GPL-3.0-or-later
// The long run of the store's faults: 2,000 kills, 200 servers, 100 disks, 100 logs. Prints the table
// that is kept in store_faults.txt. One argument: a share of that, 0.1 for a tenth.
#include <cstdlib>
#include <iostream>

#include <QCoreApplication>

#include "tests/long/store_faults.h"
#include "tests/support/run_program.h"

int main(int count, char** words) {
  using namespace brimline::tests;
  const QCoreApplication application(count, words);
  const double share = count > 1 ? std::atof(words[1]) : 1;
  const auto part = [&](int whole) { return static_cast<int>(whole * share); };
  const brimline::testing::ScratchFolder folder;
  std::cout << table_head() << std::flush;
  std::cout << table_line(kill_programs(folder / "", part(2000), 1)) << std::flush;
  std::cout << table_line(fill_disks(folder / "", part(100), 2)) << std::flush;
  std::cout << table_line(tear_logs(folder / "", part(100), 3)) << std::flush;
  std::cout << table_line(kill_servers(folder / "", part(200), 4)) << std::flush;
}
