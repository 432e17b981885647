// SPDX-License-Identifier: GPL-3.0-or-later
// What a SQLite store went through before it was opened, as one sentence.
#pragma once

#include <optional>
#include <string>

namespace brimline {

// A log left beside `file` that no program has open: the last one ended without closing it, by a kill
// or a power cut. SQLite brings back what was confirmed when the store is opened. Absent: nothing
// happened, or another counter is at work. To be asked before opening.
std::optional<std::string> unfinished_work(const std::string& file);

}  // namespace brimline
