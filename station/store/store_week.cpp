// SPDX-License-Identifier: GPL-3.0-or-later
// What the owner's week is counted from.
#include "station/store/row.h"
#include "station/store/store.h"
#include "station/store/visit_rows.h"

namespace brimline {
namespace {

QVariant seconds(const Instant& at) {
  return QVariant::fromValue<qint64>(at.utc.time_since_epoch().count());
}

}  // namespace

Stored<std::vector<std::string>> Store::visit_ids_between(const Instant& from, const Instant& until) {
  Connection& c = *connection_;
  return c.transact(Access::read, [&] {
    std::vector<std::string> out;
    for (const auto& row : c.ask("SELECT id FROM visits WHERE at_s >= ? AND at_s < ? AND finished = 1 ORDER "
                                 "BY at_s, id",
                                 {seconds(from), seconds(until)}))
      out.push_back(Connection::text(row[0]));
    return out;
  });
}

Stored<std::optional<Visit>> Store::visit_before(const Visit& visit) {
  Connection& c = *connection_;
  return c.transact(Access::read, [&]() -> std::optional<Visit> {
    const Rows rows = c.ask(
        "SELECT b.id FROM visits b JOIN visits v ON v.vessel_id = b.vessel_id WHERE v.id = ? AND b.finished "
        "= "
        "1 AND (b.at_s < v.at_s OR (b.at_s = v.at_s AND b.id < v.id)) ORDER BY b.at_s DESC, b.id DESC LIMIT "
        "1",
        {Connection::value(visit.id)});
    if (rows.empty()) return std::nullopt;
    return load(c, Connection::text(rows.front()[0]));
  });
}

Stored<std::map<std::string, std::int64_t>> Store::readings_by_lot(const Instant& until) {
  Connection& c = *connection_;
  return c.transact(Access::read, [&] {
    std::map<std::string, std::int64_t> out;
    for (const auto& row :
         c.ask("SELECT r.lot, COUNT(*) FROM readings r JOIN visits v ON v.id = r.visit_id WHERE r.lot IS NOT "
               "NULL AND v.at_s < ? GROUP BY r.lot",
               {seconds(until)}))
      out[Connection::text(row[0])] = row[1].toLongLong();
    return out;
  });
}

}  // namespace brimline
