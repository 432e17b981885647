// SPDX-License-Identifier: GPL-3.0-or-later
// The numbered steps that make a store and bring an older one up to date: forward only, each in a
// transaction of its own together with its number.
#pragma once

#include <string>
#include <vector>

#include "station/store/connection.h"

namespace brimline {

struct SchemaStep {
  int version = 0;
  std::string name;
  std::string sql;  // statements, each ending with a semicolon and an empty line
};

// The steps built in for this engine: files NNN_name.sql and NNN_name.ENGINE.sql in schema/.
std::vector<SchemaStep> schema_steps(Engine engine);

// Runs the steps that are missing. A database of something else and one with a later step than
// `steps` has are refused and left as they are; a step that fails leaves those before it.
Stored<void> bring_up_to_date(Connection& connection, const std::vector<SchemaStep>& steps);

// Refuses what is not a store and one of a later program; changes nothing.
Stored<void> check_version(Connection& connection);

}  // namespace brimline
