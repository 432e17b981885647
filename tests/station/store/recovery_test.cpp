// SPDX-License-Identifier: GPL-3.0-or-later
// A log that was left behind is told of; one that somebody is writing is not, and asking takes nobody's
// locks. The locks are those of sqlite.org/walformat.html, section 2.3, and of fcntl(2).
#include "station/store/recovery.h"

#include <gtest/gtest.h>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

#include <filesystem>
#include <optional>
#include <string>

#include "tests/support/run_program.h"

namespace brimline {
namespace {

sqlite3* opened(const std::string& file) {
  sqlite3* database = nullptr;
  EXPECT_EQ(sqlite3_open(file.c_str(), &database), SQLITE_OK);
  EXPECT_EQ(sqlite3_exec(database, "PRAGMA journal_mode = WAL", nullptr, nullptr, nullptr), SQLITE_OK);
  return database;
}

bool write_to(sqlite3* database) {
  return sqlite3_exec(database, "CREATE TABLE IF NOT EXISTS a (b); INSERT INTO a VALUES (1)", nullptr,
                      nullptr, nullptr) == SQLITE_OK;
}

// Another process that has written to the store and has it open, until this goes or lets it die.
class Writer {
 public:
  explicit Writer(const std::string& file) {
    int ready[2];
    if (::pipe(ready) != 0) return;
    pid_ = ::fork();
    if (pid_ == 0) {
      if (!write_to(opened(file))) ::_exit(1);
      (void)!::write(ready[1], "r", 1);
      while (true) ::pause();
    }
    ::close(ready[1]);
    char one = 0;
    ready_ = ::read(ready[0], &one, 1) == 1;
    ::close(ready[0]);
  }
  ~Writer() { die(); }
  Writer(const Writer&) = delete;
  Writer& operator=(const Writer&) = delete;
  bool ready() const { return ready_; }
  void die() {
    if (pid_ <= 0) return;
    ::kill(pid_, SIGKILL);
    ::waitpid(pid_, nullptr, 0);
    pid_ = 0;
  }

 private:
  pid_t pid_ = 0;
  bool ready_ = false;
};

TEST(RecoveryTest, ALogOfAKilledProgramIsToldOfOnce) {
  const testing::ScratchFolder folder;
  const std::string file = (folder / "shop.db").string();
  EXPECT_FALSE(OpenHere(file).unfinished_work()) << "there is no store yet";
  Writer writer(file);
  ASSERT_TRUE(writer.ready());
  EXPECT_FALSE(OpenHere(file).unfinished_work()) << "another program is at work";
  writer.die();
  const OpenHere first(file);
  EXPECT_TRUE(first.unfinished_work());
  EXPECT_FALSE(OpenHere(file).unfinished_work()) << "this process has it open already";
  const std::string other_name = (folder / "x/../shop.db").string();
  std::filesystem::create_directory(folder / "x");
  EXPECT_FALSE(OpenHere(other_name).unfinished_work()) << "by another name";
}

TEST(RecoveryTest, AskingTakesNoLockOfThisProcess) {
  const testing::ScratchFolder folder;
  const std::string file = (folder / "shop.db").string();
  std::optional<OpenHere> here(std::in_place, file);
  sqlite3* database = opened(file);
  ASSERT_TRUE(write_to(database));
  { const OpenHere again(file); }
  // Another process sees the lock that shows a store in use.
  const pid_t looker = ::fork();
  if (looker == 0) {
    here.reset();  // this process has it open no more, but the parent has
    ::_exit(OpenHere(file).unfinished_work() ? 1 : 0);
  }
  int status = -1;
  ASSERT_EQ(::waitpid(looker, &status, 0), looker);
  EXPECT_EQ(status, 0);
  EXPECT_EQ(sqlite3_close(database), SQLITE_OK);
}

}  // namespace
}  // namespace brimline
