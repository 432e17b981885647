// SPDX-License-Identifier: GPL-3.0-or-later
// A tenth of the long run of the store's faults (store_faults_main.cpp).
#include <gtest/gtest.h>

#include <QCoreApplication>

#include "tests/long/store_faults.h"
#include "tests/support/postgresql_server.h"
#include "tests/support/run_program.h"

namespace brimline::tests {
namespace {

class StoreFaults : public ::testing::Test {
 protected:
  StoreFaults() {
    static int count = 1;
    static char name[] = "store-faults";
    static char* words[] = {name, nullptr};
    static const QCoreApplication application(count, words);
  }
  // Nothing confirmed is lost, what is left is sound, and every fault was told in one sentence.
  static void expect_survived(const FaultTally& tally, int runs) {
    SCOPED_TRACE(table_head() + table_line(tally));
    EXPECT_EQ(tally.runs, runs);
    EXPECT_GT(tally.faults, runs / 2) << "the fault rarely met work";
    EXPECT_GT(tally.confirmed, runs);
    EXPECT_EQ(tally.lost, 0);
    EXPECT_EQ(tally.unsound, 0);
    EXPECT_GE(tally.said, tally.faults);
    EXPECT_EQ(tally.unsaid, 0);
  }
  brimline::testing::ScratchFolder folder;
};

TEST_F(StoreFaults, ProgramsKilled) {
  expect_survived(kill_programs(folder / "", 200, 11), 200);
}

TEST_F(StoreFaults, DisksFull) {
  expect_survived(fill_disks(folder / "", 10, 12), 10);
}

TEST_F(StoreFaults, LogsTorn) {
  expect_survived(tear_logs(folder / "", 10, 13), 10);
}

TEST_F(StoreFaults, ServersKilled) {
  ASSERT_TRUE(brimline::testing::PostgresqlServer::installed()) << "PostgreSQL 15 is not installed";
  expect_survived(kill_servers(folder / "", 20, 14), 20);
}

}  // namespace
}  // namespace brimline::tests
