// SPDX-License-Identifier: GPL-3.0-or-later
// Backups, restores and moves between SQLite files.
#include "station/store/copy.h"

#include "tests/station/store/workshop.h"

namespace brimline::tests {
namespace {

class CopyTest : public StoreTest {
 protected:
  CopyTest() : store(Store::open(url()).value()) {
    store.keep(whole_visit("a")).value();
    Visit changed = whole_visit("a");
    changed.bottle.incident.reset();
    store.keep(changed).value();
    EXPECT_TRUE(store.set_setting("paper", "a4"));
  }
  void expect_same(const std::string& name) {
    Store copy = Store::open(url(name), Opening::existing).value();
    EXPECT_EQ(copy.counts().value(), store.counts().value());
    EXPECT_EQ(copy.visit("a").value(), store.visit("a").value());
    EXPECT_EQ(copy.earlier_revisions("a").value(), store.earlier_revisions("a").value());
    EXPECT_EQ(copy.setting("paper").value(), "a4");
    EXPECT_EQ(copy.customers_matching("orsted")->size(), 1u);
  }
  std::vector<std::string> files() const {
    std::vector<std::string> out;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
      out.push_back(entry.path().filename());
    std::sort(out.begin(), out.end());
    return out;
  }
  Store store;
};

TEST_F(CopyTest, BackupWhileTheCounterWorks) {
  ASSERT_TRUE(back_up(store, path("backup.db")));
  expect_same("backup.db");
  store.keep(whole_visit("b")).value();
  ASSERT_TRUE(back_up(store, path("backup.db")));  // in place of the earlier one
  EXPECT_EQ(Store::open(url("backup.db"))->counts()->at("visits"), 2);
}

TEST_F(CopyTest, BackupLeavesNothingElse) {
  ASSERT_TRUE(back_up(store, path("backup.db")));
  EXPECT_FALSE(back_up(store, folder.string()));
  EXPECT_FALSE(back_up(store, "/dev/null"));
  EXPECT_FALSE(back_up(store, path("no/such/folder.db")));
  EXPECT_THAT(files(), testing::ElementsAre("backup.db", "shop.db", "shop.db-shm", "shop.db-wal"));
}

TEST_F(CopyTest, RestoreSetsAsideAndNeverDeletes) {
  ASSERT_TRUE(back_up(store, path("backup.db")));
  const std::string before = contents_of(path("backup.db"));
  ASSERT_TRUE(restore(path("backup.db"), url("new.db"), Existing::refuse));
  expect_same("new.db");
  Store::open(url("new.db"))->keep(whole_visit("later")).value();
  EXPECT_FALSE(restore(path("backup.db"), url("new.db"), Existing::refuse));
  const auto aside = restore(path("backup.db"), url("new.db"), Existing::set_aside).value();
  ASSERT_TRUE(aside);
  expect_same("new.db");
  EXPECT_TRUE(Store::open("sqlite:" + *aside)->visit("later").value());
  EXPECT_NE(*restore(path("backup.db"), url("new.db"), Existing::set_aside).value(), *aside);
  EXPECT_EQ(contents_of(path("backup.db")), before);
}

TEST_F(CopyTest, RestoreOfADamagedBackupChangesNothing) {
  ASSERT_TRUE(back_up(store, path("backup.db")));
  std::string bytes = contents_of(path("backup.db"));
  std::fill(bytes.begin() + 4096 * 4, bytes.begin() + 4096 * 12, '\0');
  write_file(path("backup.db"), bytes);
  ASSERT_TRUE(restore(path("shop.db"), url("new.db"), Existing::refuse));
  EXPECT_FALSE(restore(path("backup.db"), url("new.db"), Existing::set_aside));
  expect_same("new.db");
}

TEST_F(CopyTest, RestoreUnderAWorkingCounterIsRefused) {
  ASSERT_TRUE(back_up(store, path("backup.db")));
  const auto refused = restore(path("backup.db"), url(), Existing::set_aside);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().trouble, StoreTrouble::busy);
  EXPECT_TRUE(store.keep(whole_visit("still working")));
}

TEST_F(CopyTest, MoveFillsOnlyAnEmptyStore) {
  Store to = Store::open(url("to.db")).value();
  ASSERT_TRUE(copy_store(store, to));
  expect_same("to.db");
  EXPECT_FALSE(copy_store(store, to));
}

}  // namespace
}  // namespace brimline::tests
