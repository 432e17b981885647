// SPDX-License-Identifier: GPL-3.0-or-later
// The store in a SQLite file: what any store does, its file, its schema steps, damaged and foreign files.
#include <sys/stat.h>

#include <thread>

#include "tests/station/store/shared_checks.h"
#include "tests/station/store/workshop.h"

namespace brimline::tests {
namespace {

using testing::HasSubstr;

class SqliteStore : public StoreTest {
 protected:
  Store open() { return Store::open(url()).value(); }
};

TEST_F(SqliteStore, RoundTrips) {
  Store store = open();
  check_round_trips(store);
}
TEST_F(SqliteStore, Revisions) {
  Store store = open();
  check_revisions(store);
}
TEST_F(SqliteStore, Progress) {
  Store store = open();
  check_progress(store);
}
TEST_F(SqliteStore, People) {
  Store store = open();
  check_people(store);
  check_crowd(store);
}
TEST_F(SqliteStore, Refusals) {
  Store store = open();
  check_refusals(store);
}

TEST_F(SqliteStore, Overnights) {
  Store store = open();
  check_overnights(store);
  check_orphans(store);
  check_supplies(store);
}

TEST_F(SqliteStore, Quality) {
  Store store = open();
  check_quality(store);
}

TEST_F(SqliteStore, AuditTrail) {
  Store store = open();
  check_audit_trail(store);
}
TEST_F(SqliteStore, AuditIsWhole) {
  Store store = open();
  check_audit_is_whole(store);
}
TEST_F(SqliteStore, Staff) {
  Store store = open();
  check_staff(store);
}
TEST_F(SqliteStore, TwoCountersEditOneCustomer) {
  Store one = open(), other = open();
  check_two_counters_edit(one, other);
}
TEST_F(SqliteStore, KnowsWhoseNextBottleIsDue) {
  Store store = open();
  check_due(store);
}
TEST_F(SqliteStore, JoinsTwoCardsOfOnePerson) {
  Store store = open();
  check_joining(store);
}
// Nor in the bytes that are free.
TEST_F(SqliteStore, ErasureLeavesNoNameInTheFile) {
  {
    Store store = open();
    check_erasure(store);
  }
  for (const char* name : {"shop.db", "shop.db-wal"})
    for (const char* person : {"Ines", "ines"})
      EXPECT_EQ(contents_of(path(name)).find(person), std::string::npos) << name;
}

// What was there before a schema step stays beside it, whole, in the step's name.
TEST_F(SqliteStore, IsBackedUpBeforeASchemaStep) {
  auto steps = schema_steps(Engine::sqlite);
  {
    Store store = open();
    ASSERT_TRUE(store.keep(whole_visit()));
  }
  steps.push_back({900, "900_more", "CREATE TABLE more (x INTEGER);\n"});
  ASSERT_TRUE(Store::open(url(), Opening::existing, steps));
  Store before = Store::open(url("shop.db.before-step-900")).value();
  EXPECT_EQ(before.visit("V-1").value(), whole_visit());
  EXPECT_THAT(before.faults().value(), testing::IsEmpty());
}

TEST_F(SqliteStore, NewFileIsItsOwnersAlone) {
  Store store = open();
  store.keep(whole_visit()).value();
  for (const char* name : {"shop.db", "shop.db-wal", "shop.db-shm"}) {
    struct stat info {};
    ASSERT_EQ(::stat(path(name).c_str(), &info), 0) << name;
    EXPECT_EQ(info.st_mode & 0777, 0600u) << name;
  }
}

TEST_F(SqliteStore, WritesAreDurable) {
  Store store = open();
  Connection& c = store.connection();
  EXPECT_EQ(text_of(c.run("PRAGMA journal_mode")), "wal");
  EXPECT_EQ(text_of(c.run("PRAGMA synchronous")), "2");  // FULL, sqlite.org/pragma.html#pragma_synchronous
  EXPECT_EQ(text_of(c.run("PRAGMA foreign_keys")), "1");
}

TEST_F(SqliteStore, OldestFirstWhateverTheOffset) {
  Store store = open();
  const auto at = [&](const std::string& id, const char* taken) {
    Visit visit = whole_visit(id);
    visit.bottle.taken_at = Instant::parse(taken);
    store.keep(visit).value();
  };
  at("third", "2026-06-14T23:00:00-05:00");
  at("second", "2026-06-15T01:00:00+09:00");
  at("first", "2026-06-14T15:59:59Z");
  EXPECT_THAT(store.visit_ids().value(), testing::ElementsAre("first", "second", "third"));
  EXPECT_EQ(store.visits_of_vessel("W-1").value()[0].id, "first");
}

TEST_F(SqliteStore, LatestVisitNamesTheCustomer) {
  Store store = open();
  Visit later = whole_visit("later"), earlier = whole_visit("earlier");
  earlier.bottle.taken_at = Instant::parse("2025-06-14T08:10:00-05:00");
  earlier.customer->name = "Former Name";
  store.keep(later).value();
  store.keep(earlier).value();
  EXPECT_EQ(store.customer("C-1").value()->name, later.customer->name);
  EXPECT_EQ(store.visit("earlier").value()->customer->name, "Former Name");
}

TEST_F(SqliteStore, TwoCountersAtOnce) {
  open();
  const auto work = [&](const std::string& counter) {
    Store store = Store::open(url()).value();
    for (int i = 0; i < 40; ++i) EXPECT_TRUE(store.keep(whole_visit(counter + std::to_string(i))));
  };
  std::thread other(work, "a");
  work("b");
  other.join();
  EXPECT_EQ(open().counts()->at("visits"), 80);
}

TEST_F(SqliteStore, StepsAreNumberedFromOne) {
  for (const Engine engine : {Engine::sqlite, Engine::postgresql}) {
    int version = 0;
    for (const SchemaStep& step : schema_steps(engine)) EXPECT_EQ(step.version, ++version) << step.name;
    EXPECT_GE(version, 3);
  }
}

TEST_F(SqliteStore, OpenedAgainIsTheSame) {
  open().keep(whole_visit()).value();
  Store again = open();
  EXPECT_EQ(again.visit("V-1").value(), whole_visit());
  EXPECT_EQ(text_of(again.connection().run("SELECT COUNT(*) FROM schema_steps")),
            std::to_string(schema_steps(Engine::sqlite).size()));
}

TEST_F(SqliteStore, NewerIsRefusedAndLeftAsItIs) {
  {
    Store store = open();
    store.connection().run("INSERT INTO schema_steps VALUES (900, 'later')");
    store.connection().run("PRAGMA journal_mode = DELETE");
  }
  const std::string before = contents_of(path("shop.db"));
  const auto refused = Store::open(url());
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().trouble, StoreTrouble::newer);
  EXPECT_EQ(contents_of(path("shop.db")), before);
}

TEST_F(SqliteStore, FailingStepIsRolledBackWhole) {
  open().keep(whole_visit()).value();
  auto steps = schema_steps(Engine::sqlite);
  const int last = steps.back().version;
  steps.push_back({last + 1, "bad", "CREATE TABLE extra (x INTEGER);\n\nINSERT INTO nowhere VALUES (1);\n"});
  const auto refused = Store::open(url(), Opening::existing, steps);
  ASSERT_FALSE(refused);
  EXPECT_THAT(refused.error().text, HasSubstr("schema step bad"));
  Store store = open();
  EXPECT_EQ(store.visit("V-1").value(), whole_visit());
  EXPECT_EQ(text_of(store.connection().run("SELECT COUNT(*) FROM sqlite_master WHERE name = 'extra'")), "0");
  EXPECT_EQ(text_of(store.connection().run("SELECT MAX(version) FROM schema_steps")), std::to_string(last));
}

TEST_F(SqliteStore, OlderIsBroughtUpToDate) {
  auto steps = schema_steps(Engine::sqlite);
  steps.pop_back();
  ASSERT_TRUE(Store::open(url(), Opening::make, steps));
  Store store = open();
  EXPECT_EQ(store.keep(whole_visit()).value(), Kept::kept);
}

TEST_F(SqliteStore, ForeignFilesAreRefusedAndLeftAsTheyAre) {
  std::mt19937 random(7);
  std::string noise(20000, '\0');
  for (char& c : noise) c = static_cast<char>(random());
  write_file(path("noise"), noise);
  write_file(path("letter"), "Dear Sir or Madam,\n");
  write_file(path("head"), std::string("SQLite format 3\0", 16) + noise);
  {
    auto other = Connection::open(url("other"), Opening::make).value();
    other->run("CREATE TABLE schema_steps (version INTEGER, name TEXT)");
    other->run("INSERT INTO schema_steps VALUES (1, 'base')");
  }
  for (const char* name : {"noise", "letter", "head", "other"}) {
    const std::string before = contents_of(path(name));
    const auto refused = Store::open(url(name));
    ASSERT_FALSE(refused) << name;
    EXPECT_EQ(contents_of(path(name)), before) << name;
    EXPECT_THAT(refused.error().text, HasSubstr(name));
    EXPECT_EQ(refused.error().text.find('\n'), std::string::npos);
  }
  EXPECT_FALSE(Store::open("sqlite:" + folder.string()));
  EXPECT_FALSE(Store::open("sqlite:/dev/zero"));
  EXPECT_FALSE(Store::open("sqlite:"));
  EXPECT_FALSE(Store::open("mysql://somewhere/else"));
  EXPECT_FALSE(Store::open(url("absent"), Opening::existing));
  EXPECT_FALSE(std::filesystem::exists(path("absent")));
}

// Whatever bytes a store's file holds, it is a sentence and not a crash; whole pages lost are told.
TEST_F(SqliteStore, DamageIsTold) {
  {
    Store store = open();
    for (int i = 0; i < 30; ++i) store.keep(whole_visit("V-" + std::to_string(i))).value();
    store.connection().run("PRAGMA journal_mode = DELETE");
  }
  const std::string sound = contents_of(path("shop.db"));
  std::mt19937 random(11);
  int told = 0;
  for (int round = 0; round < 25; ++round) {
    std::string bytes = sound;
    for (int i = 0; i < 200; ++i) bytes[100 + random() % (bytes.size() - 100)] = static_cast<char>(random());
    if (round == 0) std::fill(bytes.begin() + 4096L * 8, bytes.begin() + 4096L * 20, '\0');
    if (round == 1) bytes.resize(bytes.size() / 2);
    write_file(path("bad.db"), bytes);
    const auto store = Store::open(url("bad.db"));
    auto faults = store ? std::vector<std::string>{} : std::vector{store.error().text};
    if (store) faults = const_cast<Store&>(*store).faults().value();
    for (const auto& fault : faults) EXPECT_EQ(fault.find('\n'), std::string::npos);
    if (!faults.empty()) ++told;
    EXPECT_TRUE(round >= 2 || !faults.empty()) << round;
    for (const char* end : {"-wal", "-shm", "-journal"}) std::filesystem::remove(path("bad.db") + end);
  }
  EXPECT_GT(told, 20);
}

TEST_F(SqliteStore, LostReadingAndChangedTextAreTold) {
  Store store = open();
  store.keep(whole_visit("a")).value();
  store.keep(whole_visit("b")).value();
  store.connection().run("DELETE FROM readings WHERE visit_id = 'a' AND position = 1");
  store.connection().run("UPDATE visits SET circumstances = 'torn' WHERE id = 'b'");
  EXPECT_FALSE(store.visit("a"));
  EXPECT_FALSE(store.visit("b"));
  EXPECT_EQ(store.faults()->size(), 2u);
}

}  // namespace
}  // namespace brimline::tests
