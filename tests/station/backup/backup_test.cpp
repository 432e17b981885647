// SPDX-License-Identifier: GPL-3.0-or-later
// Backups by the calendar: seven days, four weeks, twelve months, and what becomes of files that are none.
#include "station/backup/schedule.h"

#include <gmock/gmock.h>

#include "station/store/copy.h"
#include "tests/station/store/workshop.h"

namespace brimline::tests {
namespace {

using std::chrono::days;
using std::chrono::hours;
using ::testing::SizeIs;

Instant at(const std::string& text) {
  return Instant::parse(text).value();
}

// A year and a half, twice a day, kept as the shop keeps it: what is there at its end.
TEST(BackupSchedule, KeepsSevenDaysFourWeeksTwelveMonths) {
  std::vector<BackupFile> there;
  const Instant first = at("2025-01-01T08:00:00Z");
  Instant now = first;
  for (int half_day = 0; half_day < 2 * 540; ++half_day) {
    now = {first.utc + hours(12 * half_day), {}};
    there.insert(there.begin(), {backup_name(now), now});
    for (const BackupFile& old : superseded(there)) std::erase(there, old);
  }
  EXPECT_EQ(there.front().at, now);
  // The calendar itself: days, Mondays and firsts of months counted back from today.
  const auto today = std::chrono::floor<days>(now.utc);
  std::set<std::string> days_there, weeks_there, months_there;
  for (const BackupFile& file : there) {
    const auto day = std::chrono::floor<days>(file.at.utc);
    if (today - day < days(7)) days_there.insert(file.at.text().substr(0, 10));
    const auto monday = day - (std::chrono::weekday(day) - std::chrono::Monday);
    const auto this_monday = today - (std::chrono::weekday(today) - std::chrono::Monday);
    if (this_monday - monday < days(28))
      weeks_there.insert(std::to_string(monday.time_since_epoch().count()));
    months_there.insert(file.at.text().substr(0, 7));
  }
  EXPECT_THAT(days_there, SizeIs(7));
  EXPECT_THAT(weeks_there, SizeIs(4));
  EXPECT_THAT(months_there, SizeIs(12));
  EXPECT_LE(there.size(), 7u + 4 + 12);
}

TEST(BackupSchedule, IsDueOnceADayOfTheShop) {
  // 23:30 and 00:30 of the shop's own clock are two days, though UTC has one.
  const Instant evening = at("2026-06-20T23:30:00-05:00"), night = at("2026-06-21T00:30:00-05:00");
  EXPECT_EQ(backup_name(evening), "brimline-20260620T233000.db");
  const std::vector<BackupFile> made{{"x", at("2026-06-20T23:30:00Z")}};
  EXPECT_FALSE(backup_due(made, evening));
  EXPECT_TRUE(backup_due(made, night));
  EXPECT_TRUE(backup_due({}, evening));
}

class BackupFolder : public StoreTest {};

TEST_F(BackupFolder, IsMadeReadBackAndLeftAlone) {
  Store store = Store::open(url()).value();
  ASSERT_TRUE(store.keep(whole_visit()));
  const std::string to = path("stick/backups");
  const auto made = back_up_to_folder(store, to, at("2026-06-20T10:00:00-05:00"));
  ASSERT_TRUE(made) << made.error().text;
  write_file(folder / "stick/backups/holiday.db", "a picture");
  write_file(folder / "stick/backups/brimline-20260620T1000.db", "named almost so");
  std::filesystem::create_symlink(path("shop.db"), to + "/brimline-20200101T000000.db");
  EXPECT_THAT(backups_in(to), SizeIs(1));
  ASSERT_TRUE(store.keep(whole_visit("V-2")));
  for (int day = 0; day < 20; ++day)
    ASSERT_TRUE(
        back_up_to_folder(store, to, Instant{at("2026-06-21T10:00:00-05:00").utc + days(day), hours(-5)}));
  EXPECT_LE(backups_in(to).size(), 7u + 4 + 2);
  EXPECT_TRUE(std::filesystem::exists(to + "/holiday.db"));
  EXPECT_TRUE(std::filesystem::exists(path("shop.db")));  // a link is nobody's backup
  const auto newest = look_into(backups_in(to).front().path);
  ASSERT_TRUE(newest) << newest.error().text;
  EXPECT_EQ(newest->visits, 2);
  EXPECT_EQ(newest->customers, 1);
  EXPECT_EQ(newest->last_visit, at("2026-06-14T08:10:00-05:00"));
}

TEST_F(BackupFolder, WhatFailsLetsNoneGo) {
  Store store = Store::open(url()).value();
  ASSERT_TRUE(store.keep(whole_visit()));
  const std::string to = path("backups");
  ASSERT_TRUE(back_up_to_folder(store, to, at("2026-06-20T10:00:00Z"), {1, 0, 0}));
  std::filesystem::create_directory(to + "/brimline-20260621T100000.db");  // in the way
  EXPECT_FALSE(back_up_to_folder(store, to, at("2026-06-21T10:00:00Z"), {1, 0, 0}));
  EXPECT_THAT(backups_in(to), SizeIs(1));
  EXPECT_FALSE(back_up_to_folder(store, path("shop.db") + "/below", at("2026-06-22T10:00:00Z")));
}

TEST_F(BackupFolder, ALookRefusesWhatIsNoStore) {
  write_file(folder / "poem.db", "Roses are red");
  write_file(folder / "torn.db", std::string("SQLite format 3\0", 16) + std::string(5000, 'x'));
  for (const char* name : {"poem.db", "torn.db", "missing.db"}) EXPECT_FALSE(look_into(path(name))) << name;
  EXPECT_EQ(contents_of(folder / "poem.db"), "Roses are red");
}

}  // namespace
}  // namespace brimline::tests
