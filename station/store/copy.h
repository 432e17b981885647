// SPDX-License-Identifier: GPL-3.0-or-later
// Whole stores: copied, backed up to a file, and brought back.
#pragma once

#include <string>

#include "station/store/store.h"

namespace brimline {

// Every row of `from`, audit trail included, into `to`, which must hold none; all or nothing.
Stored<void> copy_store(Store& from, Store& to);

// A copy in a SQLite file of its own, opened and counted before it gets its name, which an earlier
// plain file may have had. Counters may go on working meanwhile.
Stored<void> back_up(Store& from, const std::string& file);

// Before a schema step of a SQLite store that holds something: FILE.before-step-N, once.
Stored<void> keep_before_step(Connection& from, int step);

enum class Existing { refuse, set_aside };

// A SQLite store, sound or not, gets another name, which is returned; nothing: there was none.
Stored<std::optional<std::string>> set_aside(const std::string& url);

// The store in `file` to `url`. A store that is there is refused, or set aside under another name,
// which is returned; nothing returned: there was none.
Stored<std::optional<std::string>> restore(const std::string& file, const std::string& url,
                                           Existing existing);

}  // namespace brimline
