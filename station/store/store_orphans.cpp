// SPDX-License-Identifier: GPL-3.0-or-later
// Readings without a bottle; settling one is in store_visits.cpp, beside what puts a reading into a visit.
#include <nlohmann/json.hpp>

#include "station/store/waiting_work.h"
#include "station/visit_json.h"

namespace brimline {

namespace {

std::optional<OrphanReading> orphan_of(Connection& c, const QVariantList& row) {
  const std::string id = Connection::text(row[0]);
  const auto at = Instant::parse(Connection::text(row[1]));
  const auto reading = read_reading(Connection::text(row[3]), "orphan reading " + id);
  if (!at || !reading) {
    c.fail({StoreTrouble::damaged, "the reading " + id + " that belongs to no bottle cannot be read"});
    return std::nullopt;
  }
  return OrphanReading{id, *at, row[2].isNull() ? std::nullopt : std::optional(Connection::text(row[2])),
                       *reading};
}

}  // namespace

Stored<void> Store::keep_orphan(const OrphanReading& orphan) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    if (orphan.id.empty()) return c.fail({StoreTrouble::refused, "a reading needs a name of its own"});
    c.tell(
        "INSERT INTO orphan_readings (id, number, heard_at, sample, reading) SELECT CAST(? AS TEXT), "
        "COALESCE(MAX(number), 0) + 1, CAST(? AS TEXT), CAST(? AS TEXT), CAST(? AS TEXT) FROM "
        "orphan_readings",
        {Connection::value(orphan.id), Connection::value(orphan.heard_at.text()),
         Connection::value(orphan.sample), Connection::value(reading_to_json(orphan.reading).dump())});
  });
}

Stored<bool> mirror(Store& store, const OrphanReading& orphan, bool waits) {
  Connection& c = store.connection();
  return c.transact(Access::write, [&] {
    const QVariant id = Connection::value(orphan.id);
    if (!c.ask("SELECT id FROM waiting_work WHERE subject = ? OR content LIKE ? LIMIT 1",
               {id, Connection::value("%\"orphan\":\"" + orphan.id + "\"%")})
             .empty())
      return false;
    const Rows here = c.ask("SELECT settled FROM orphan_readings WHERE id = ?", {id});
    if (here.empty() && waits) return store.keep_orphan(orphan).has_value();
    if (here.empty() || here[0][0].isNull() == waits) return false;
    c.tell(std::string("UPDATE orphan_readings SET settled = ") + (waits ? "NULL" : "''") + " WHERE id = ?",
           {id});
    return true;
  });
}

Stored<std::vector<OrphanReading>> Store::orphans() {
  Connection& c = *connection_;
  return c.transact(Access::read, [&] {
    std::vector<OrphanReading> out;
    for (const QVariantList& row : c.ask("SELECT id, heard_at, sample, reading FROM orphan_readings "
                                         "WHERE settled IS NULL ORDER BY number"))
      if (auto orphan = orphan_of(c, row)) out.push_back(std::move(*orphan));
    return out;
  });
}

}  // namespace brimline
