// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/recovery.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <mutex>

#include "analysis/phrase.h"
#include "station/wording/words.h"

namespace brimline {

namespace {

struct Held {
  std::mutex mutex;
  std::multiset<std::string> files;
};

Held& held() {
  static Held all;
  return all;
}

std::string whole_name(const std::string& file) {
  std::error_code wrong;
  const auto name = std::filesystem::weakly_canonical(file, wrong);
  return wrong ? file : name.string();
}

// Does another program hold a lock on the file? Not to be asked of one that this process has open: closing it
// would drop this process's own locks (fcntl(2)). The kernel's list of all locks would tell that too, but
// takes 13 ms to read.
bool is_locked(const std::string& file) {
  const int shared = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
  if (shared < 0) return false;
  struct flock lock {};
  lock.l_type = F_WRLCK;
  lock.l_whence = SEEK_SET;
  const bool told = ::fcntl(shared, F_GETLK, &lock) == 0;
  ::close(shared);
  return told && lock.l_type != F_UNLCK;
}

bool has_unfinished_work(const std::string& file) {
  struct stat log {};
  return ::stat((file + "-wal").c_str(), &log) == 0 && log.st_size > 0 && !is_locked(file + "-shm");
}

}  // namespace

// Asked and written down in one go, so that no other thread begins to open it in between.
OpenHere::OpenHere(const std::string& file) {
  const std::string name = whole_name(file);
  const std::scoped_lock lock(held().mutex);
  if (!held().files.contains(name) && has_unfinished_work(file))
    unfinished_work_ =
        phrase("store",
               "The program ended without warning last time. What was confirmed is here; a change that was "
               "still being written was left out.");
  at_ = held().files.insert(name);
}

OpenHere::~OpenHere() {
  const std::scoped_lock lock(held().mutex);
  held().files.erase(at_);
}

}  // namespace brimline
