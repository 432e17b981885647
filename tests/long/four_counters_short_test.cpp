// SPDX-License-Identifier: GPL-3.0-or-later
// A hundredth of the long run of four counters (four_counters_main.cpp).
#include <gtest/gtest.h>

#include <QCoreApplication>

#include "tests/long/four_counters.h"
#include "tests/support/postgresql_server.h"
#include "tests/support/run_program.h"

namespace brimline::tests {
namespace {

TEST(FourCounters, EveryVisitIsThereOnce) {
  static int count = 1;
  static char name[] = "four-counters";
  static char* words[] = {name, nullptr};
  static const QCoreApplication application(count, words);
  ASSERT_TRUE(brimline::testing::PostgresqlServer::installed()) << "PostgreSQL 15 is not installed";
  brimline::testing::ScratchFolder folder;
  const CountersTally tally = work_at_counters(folder / "", 4, 100, 7);
  SCOPED_TRACE(table_of(tally));
  EXPECT_GT(tally.cuts, 0);
  EXPECT_GE(tally.written, 4 * 100 * 6);
  EXPECT_EQ(tally.visits, 4 * 100 + 1);
  EXPECT_EQ(tally.missing, 0);
  EXPECT_EQ(tally.readings_lost, 0);
  EXPECT_EQ(tally.readings_doubled, 0);
  EXPECT_EQ(tally.edits_lost, 0);
  EXPECT_EQ(tally.left, 0);
  EXPECT_EQ(tally.faults, 0);
}

}  // namespace
}  // namespace brimline::tests
