// SPDX-License-Identifier: GPL-3.0-or-later
// Backups on a schedule: when one is due, what it is called, and which old ones go. Files are named by their
// moment, brimline-20260620T100000.db, so that a folder tells its own story.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "analysis/instant.h"
#include "station/store/store.h"

namespace brimline {

// Kept: the last of each of so many days, weeks (from Monday) and months.
struct Keeping {
  int days = 7, weeks = 4, months = 12;
};

struct BackupFile {
  std::string path;
  Instant at;  // of its name
  friend bool operator==(const BackupFile&, const BackupFile&) = default;
};

std::string backup_name(const Instant& at);
// Those of the folder that are named so, the newest first; other files are nobody's business.
std::vector<BackupFile> backups_in(const std::string& folder);
// Of `all`, those that none of the days, weeks and months needs. The newest is never among them.
std::vector<BackupFile> superseded(const std::vector<BackupFile>& all, const Keeping& keeping = {});
// Once a day of the shop.
bool backup_due(const std::vector<BackupFile>& all, const Instant& now);

// Makes one, opens and counts it, then lets the superseded go; the new one's path. Before a name in use is
// taken the folder is made. A backup that fails lets none go.
Stored<std::string> back_up_to_folder(Store& store, const std::string& folder, const Instant& now,
                                      const Keeping& keeping = {});

// What a backup holds, for a look before it is restored.
struct BackupContents {
  std::int64_t visits = 0, customers = 0;
  std::optional<Instant> last_visit;
};
// Of a copy beside it, so that the backup itself is not written; damaged and foreign files are refused.
Stored<BackupContents> look_into(const std::string& file);

}  // namespace brimline
