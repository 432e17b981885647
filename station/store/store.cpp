// SPDX-License-Identifier: GPL-3.0-or-later
// Opening, customers, vessels, settings and soundness.
#include "station/store/store.h"

#include <nlohmann/json.hpp>

#include "station/store/joining.h"
#include "station/store/people.h"
#include "station/store/row.h"
#include "station/store/tables.h"
#include "station/visit_json.h"

namespace brimline {

Store::Store(std::unique_ptr<Connection> connection) : connection_(std::move(connection)) {}
Store::~Store() = default;
Store::Store(Store&&) noexcept = default;
Store& Store::operator=(Store&&) noexcept = default;

Stored<Store> Store::open(const std::string& url, Opening opening) {
  const Engine engine = url.starts_with("sqlite:") ? Engine::sqlite : Engine::postgresql;
  return open(url, opening, schema_steps(engine));
}

Stored<Store> Store::open(const std::string& url, Opening opening, const std::vector<SchemaStep>& steps) {
  auto connection = Connection::open(url, opening);
  if (!connection) return tl::unexpected(connection.error());
  if (auto ready = bring_up_to_date(**connection, steps); !ready) return tl::unexpected(ready.error());
  return Store(std::move(*connection));
}

Stored<void> Store::save_vessel(const Vessel& vessel, const std::string& customer_id) {
  return connection_->transact(Access::write, [&] {
    put_vessel(*connection_, vessel, joined_into(*connection_, customer_id).value_or(customer_id),
               Merge::replace);
  });
}

Stored<std::vector<Vessel>> Store::vessels_of(const std::string& customer_id) {
  return connection_->transact(Access::read, [&] {
    return vessels_of_customer(*connection_, joined_into(*connection_, customer_id).value_or(customer_id));
  });
}

Stored<std::optional<std::string>> Store::setting(const std::string& name) {
  return connection_->transact(Access::read, [&]() -> std::optional<std::string> {
    const Rows rows =
        connection_->ask("SELECT value FROM settings WHERE name = ?", {Connection::value(name)});
    if (rows.empty()) return std::nullopt;
    return Connection::text(rows[0][0]);
  });
}

Stored<void> Store::set_setting(const std::string& name, const std::string& value) {
  return connection_->transact(Access::write, [&] {
    connection_->tell(
        "INSERT INTO settings (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = "
        "excluded.value",
        {Connection::value(name), Connection::value(value)});
  });
}

Stored<std::map<std::string, std::int64_t>> Store::counts() {
  return connection_->transact(Access::read, [&] {
    std::map<std::string, std::int64_t> out;
    for (const StoredTable& table : stored_tables())
      for (const auto& row : connection_->run(std::string("SELECT COUNT(*) FROM ") + table.name))
        out[table.name] = row[0].toLongLong();
    return out;
  });
}

Stored<std::vector<std::string>> Store::faults() {
  std::vector<std::string> out;
  if (connection_->engine() == Engine::sqlite) {
    for (const auto& row : connection_->run("PRAGMA integrity_check"))
      if (row[0].toString() != "ok")
        out.push_back("integrity: " + row[0].toString().simplified().toStdString());
    for (const auto& row : connection_->run("PRAGMA foreign_key_check"))
      out.push_back("foreign key: a row of " + Connection::text(row[0]) + " names a row of " +
                    Connection::text(row[2]) + " that is not there");
    if (auto error = connection_->take_error()) out.push_back(error->text);
  }
  const auto ids = visit_ids();
  if (!ids) {
    out.push_back(ids.error().text);
    return out;
  }
  for (const std::string& id : *ids) {
    const auto one = visit(id);
    if (!one) out.push_back("visit " + id + ": " + one.error().text);
    if (const auto test = overnight(id); !test) out.push_back("visit " + id + ": " + test.error().text);
  }
  if (const auto book = quality_book(); !book) out.push_back(book.error().text);
  return out;
}

}  // namespace brimline
