// SPDX-License-Identifier: GPL-3.0-or-later
// What a SQLite store went through before it was opened, as one sentence.
#pragma once

#include <optional>
#include <set>
#include <string>

namespace brimline {

// A store that this process opens: to be made before SQLite touches the file, and kept until it is closed.
class OpenHere {
 public:
  explicit OpenHere(const std::string& file);
  ~OpenHere();
  OpenHere(const OpenHere&) = delete;
  OpenHere& operator=(const OpenHere&) = delete;

  // There was a log beside it that no program had open: the last one ended without closing it, by a kill or a
  // power cut. SQLite brings back what was confirmed. Absent: nothing happened, or another counter is at
  // work.
  const std::optional<std::string>& unfinished_work() const { return unfinished_work_; }

 private:
  std::multiset<std::string>::iterator at_;
  std::optional<std::string> unfinished_work_;
};

}  // namespace brimline
