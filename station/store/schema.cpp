// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/schema.h"

#include <algorithm>
#include <charconv>
#include <utility>

#include "analysis/embedded.h"
#include "station/store/copy.h"

namespace brimline {

namespace embedded {
std::span<const Text> schema();
}

namespace {

// "Brim": tells a store from other SQLite files.
constexpr int kApplicationId = 0x4272696d;

std::vector<std::string> statements_of(const std::string& sql) {
  std::vector<std::string> out;
  size_t from = 0;
  while (from < sql.size()) {
    const size_t end = std::min(sql.find(";\n\n", from), sql.size());
    const std::string part = sql.substr(from, end - from);
    if (part.find_first_not_of(" \n") != std::string::npos) out.push_back(part);
    from = end + 1;
  }
  return out;
}

// The last step that was run, 0 for an empty database; anything else in it is not a store.
int version_of(Connection& connection) {
  const bool sqlite = connection.engine() == Engine::sqlite;
  const Rows tables = connection.run(
      sqlite ? "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
             : "SELECT tablename FROM pg_tables WHERE schemaname = current_schema()");
  const bool ours = std::any_of(tables.begin(), tables.end(),
                                [](const QVariantList& row) { return row[0].toString() == "schema_steps"; });
  int mark = kApplicationId;
  if (sqlite)
    for (const QVariantList& row : connection.run("PRAGMA application_id")) mark = row[0].toInt();
  if (tables.empty() && (mark == 0 || mark == kApplicationId)) return 0;
  if (!ours || mark != kApplicationId) {
    connection.fail(
        {StoreTrouble::not_a_store, sqlite ? connection.file().toStdString() + " is not a Brimline store"
                                           : "the database holds something else"});
    return 0;
  }
  const Rows last = connection.run("SELECT MAX(version) FROM schema_steps");
  int version = last.empty() ? 0 : last[0][0].toInt();
  // SQLite's own mark counts too: whichever says later is believed.
  if (sqlite)
    for (const QVariantList& row : connection.run("PRAGMA user_version"))
      version = std::max(version, row[0].toInt());
  return version;
}

void run_step(Connection& connection, const SchemaStep& step) {
  for (const std::string& statement : statements_of(step.sql)) connection.run(statement);
  connection.tell("INSERT INTO schema_steps (version, name) VALUES (?, ?)",
                  {step.version, Connection::value(step.name)});
  if (connection.engine() == Engine::sqlite)
    connection.run("PRAGMA user_version = " + std::to_string(step.version));
}

}  // namespace

std::vector<SchemaStep> schema_steps(Engine engine) {
  const std::string own = engine == Engine::sqlite ? "sqlite" : "postgresql";
  std::vector<SchemaStep> out;
  for (const auto& file : embedded::schema()) {
    std::string_view name = file.name.substr(file.name.rfind('/') + 1);
    name.remove_suffix(std::string_view(".sql").size());
    const size_t dot = name.find('.');
    if (dot != std::string_view::npos && name.substr(dot + 1) != own) continue;
    SchemaStep step{0, std::string(name.substr(0, dot)), std::string(file.text)};
    std::from_chars(name.data(), name.data() + 3, step.version);
    out.push_back(std::move(step));
  }
  return out;
}

namespace {
Stored<int> known_version(Connection& connection, int last) {
  auto version = connection.transact(Access::read, [&] { return version_of(connection); });
  if (version && *version > last)
    return tl::unexpected(
        StoreError{StoreTrouble::newer, "the store was written by a later version of the program (step " +
                                            std::to_string(*version) + ", this one knows " +
                                            std::to_string(last) + "); it was left as it is"});
  return version;
}
}  // namespace

Stored<void> check_version(Connection& connection) {
  const auto version = known_version(connection, schema_steps(connection.engine()).back().version);
  if (!version) return tl::unexpected(version.error());
  if (*version == 0) return tl::unexpected(StoreError{StoreTrouble::not_a_store, "nothing is stored there"});
  return {};
}

Stored<void> bring_up_to_date(Connection& connection, const std::vector<SchemaStep>& steps) {
  const auto version = known_version(connection, steps.empty() ? 0 : steps.back().version);
  if (!version) return tl::unexpected(version.error());
  if (auto ready = connection.make_durable(); !ready) return ready;
  const bool filled = *version > 0 && connection.engine() == Engine::sqlite;
  bool kept = false;
  for (const SchemaStep& step : steps) {
    if (step.version <= *version) continue;
    if (filled && !std::exchange(kept, true))
      if (auto backed_up = keep_before_step(connection, step.version); !backed_up) return backed_up;
    const auto done = connection.transact(Access::write, [&] {
      // Another counter may have run the step while this one waited for its turn.
      if (version_of(connection) >= step.version) return;
      if (step.version == 1) {
        if (connection.engine() == Engine::sqlite)
          connection.run("PRAGMA application_id = " + std::to_string(kApplicationId));
        connection.run(
            "CREATE TABLE schema_steps (version INTEGER NOT NULL PRIMARY KEY, name TEXT NOT NULL)");
      }
      run_step(connection, step);
    });
    if (!done)
      return tl::unexpected(
          StoreError{done.error().trouble, "schema step " + step.name + ": " + done.error().text});
  }
  return {};
}

}  // namespace brimline
