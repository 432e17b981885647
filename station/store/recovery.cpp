// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/recovery.h"

#include <sys/stat.h>

#include <fstream>

#include "analysis/phrase.h"
#include "station/wording/words.h"

namespace brimline {

namespace {

// Does any program hold a lock on the file? Asked of the kernel's list (proc(5), /proc/locks:
// "N: POSIX ADVISORY READ PID MAJOR:MINOR:INODE START END"): opening the file to ask would drop the
// locks that this process itself may hold on it (fcntl(2)).
bool is_locked(const struct stat& info) {
  std::ifstream locks("/proc/locks");
  const std::string inode = ":" + std::to_string(info.st_ino) + " ";
  for (std::string line; std::getline(locks, line);)
    if (line.find(inode) != std::string::npos) return true;
  return false;
}

}  // namespace

std::optional<std::string> unfinished_work(const std::string& file) {
  struct stat log {
  }, shared{};
  if (::stat((file + "-wal").c_str(), &log) != 0 || log.st_size == 0) return std::nullopt;
  if (::stat((file + "-shm").c_str(), &shared) == 0 && is_locked(shared)) return std::nullopt;
  return phrase("store",
                "The program ended without warning last time. What was confirmed is here; a change that was "
                "still being written was left out.");
}

}  // namespace brimline
