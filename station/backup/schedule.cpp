// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/backup/schedule.h"

#include <algorithm>
#include <filesystem>
#include <set>

#include <QDir>

#include "station/store/copy.h"
#include "station/visit_json.h"

namespace brimline {

namespace {

namespace fs = std::filesystem;
using std::chrono::floor;

constexpr std::string_view kBegins = "brimline-", kEnds = ".db";

std::chrono::local_days day_of(const Instant& at) {
  return floor<std::chrono::days>(at.local());
}

// The Monday of the week.
std::chrono::local_days week_of(const Instant& at) {
  const auto day = day_of(at);
  return day - (std::chrono::weekday(day) - std::chrono::Monday);
}

std::chrono::local_days month_of(const Instant& at) {
  const std::chrono::year_month_day date(day_of(at));
  return std::chrono::local_days(date.year() / date.month() / 1);
}

// brimline-20260620T100000.db; the offset is not in the name: the shop's own clock is what it was named by.
std::optional<Instant> moment_of(const std::string& name) {
  if (name.size() != kBegins.size() + 15 + kEnds.size() || !name.starts_with(kBegins) ||
      !name.ends_with(kEnds))
    return std::nullopt;
  const std::string t = name.substr(kBegins.size(), 15);
  return Instant::parse(t.substr(0, 4) + "-" + t.substr(4, 2) + "-" + t.substr(6, 5) + ":" + t.substr(11, 2) +
                        ":" + t.substr(13, 2) + "Z");
}

// The newest of each of the last `count` spans that hold one.
template <class Span>
void keep_newest(const std::vector<BackupFile>& newest_first, int count, Span span,
                 std::set<std::string>& kept) {
  std::set<std::chrono::local_days> seen;
  for (const BackupFile& file : newest_first) {
    if (static_cast<int>(seen.size()) == count && !seen.contains(span(file.at))) break;
    if (seen.insert(span(file.at)).second) kept.insert(file.path);
  }
}

}  // namespace

std::string backup_name(const Instant& at) {
  std::string text = Instant{std::chrono::sys_seconds(at.local().time_since_epoch()), {}}.text();
  std::erase_if(text, [](char c) { return c == '-' || c == ':'; });
  return std::string(kBegins) + text.substr(0, 15) + std::string(kEnds);
}

std::vector<BackupFile> backups_in(const std::string& folder) {
  std::vector<BackupFile> out;
  std::error_code ignored;
  for (const auto& entry : fs::directory_iterator(folder, ignored)) {
    const auto at = moment_of(entry.path().filename().string());
    if (at && entry.is_regular_file(ignored) && !entry.is_symlink(ignored))
      out.push_back({entry.path().string(), *at});
  }
  std::sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.at.utc > b.at.utc; });
  return out;
}

std::vector<BackupFile> superseded(const std::vector<BackupFile>& all, const Keeping& keeping) {
  std::vector<BackupFile> sorted = all;
  std::sort(sorted.begin(), sorted.end(), [](const auto& a, const auto& b) { return a.at.utc > b.at.utc; });
  std::set<std::string> kept;
  if (!sorted.empty()) kept.insert(sorted.front().path);
  keep_newest(sorted, keeping.days, day_of, kept);
  keep_newest(sorted, keeping.weeks, week_of, kept);
  keep_newest(sorted, keeping.months, month_of, kept);
  std::erase_if(sorted, [&](const BackupFile& file) { return kept.contains(file.path); });
  return sorted;
}

bool backup_due(const std::vector<BackupFile>& all, const Instant& now) {
  // A name holds the shop's own clock.
  const auto today = day_of(now);
  return std::none_of(all.begin(), all.end(),
                      [&](const BackupFile& file) { return day_of(file.at) == today; });
}

Stored<std::string> back_up_to_folder(Store& store, const std::string& folder, const Instant& now,
                                      const Keeping& keeping) {
  if (folder.empty() || !QDir().mkpath(QString::fromStdString(folder)))
    return tl::unexpected(StoreError{StoreTrouble::unreachable, folder + " cannot be made or written"});
  const std::string file = (fs::path(folder) / backup_name(now)).string();
  if (const auto done = back_up(store, file); !done) return tl::unexpected(done.error());
  std::error_code ignored;
  for (const BackupFile& old : superseded(backups_in(folder), keeping))
    if (old.path != file) fs::remove(old.path, ignored);
  return file;
}

Stored<BackupContents> look_into(const std::string& file) {
  auto source = Connection::open("sqlite:" + file, Opening::existing);
  if (!source) return tl::unexpected(source.error());
  if (auto known = check_version(**source); !known) return tl::unexpected(known.error());
  return (*source)->transact(Access::read, [&] {
    Connection& c = **source;
    BackupContents out;
    for (const QVariantList& row : c.run("SELECT COUNT(*) FROM visits")) out.visits = row[0].toLongLong();
    for (const QVariantList& row : c.run("SELECT COUNT(*) FROM customers"))
      out.customers = row[0].toLongLong();
    for (const QVariantList& row :
         c.run("SELECT circumstances FROM visits WHERE at_s IS NOT NULL ORDER BY at_s DESC LIMIT 1")) {
      const auto visit = read_visit(Connection::text(row[0]), file);
      if (visit) out.last_visit = visit->bottle.taken_at ? visit->bottle.taken_at : visit->bottle.tested_at;
    }
    return out;
  });
}

}  // namespace brimline
