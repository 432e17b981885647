// SPDX-License-Identifier: GPL-3.0-or-later
// Whose next bottle is due.
#include "station/store/row.h"
#include "station/store/store.h"
#include "station/store/visit_rows.h"

namespace brimline {

Stored<std::vector<DueVisit>> Store::due_visits(const Instant& from, const Instant& until, int most) {
  Connection& c = *connection_;
  return c.transact(Access::read, [&] {
    std::vector<DueVisit> out;
    const auto seconds = [](const Instant& at) {
      return QVariant::fromValue<qint64>(at.utc.time_since_epoch().count());
    };
    const Rows rows = c.ask(
        "SELECT v.id FROM visits v JOIN customers c ON c.id = v.customer_id WHERE v.due_s >= ? AND v.due_s "
        "< ? AND v.finished = 1 AND c.name IS NOT NULL AND NOT EXISTS (SELECT 1 FROM visits l WHERE "
        "l.vessel_id = v.vessel_id AND (l.at_s > v.at_s OR (l.at_s = v.at_s AND l.id > v.id))) "
        "ORDER BY v.due_s, v.id LIMIT ?",
        {seconds(from), seconds(until), most});
    for (const auto& row : rows)
      if (auto visit = load(c, Connection::text(row[0])))
        if (const auto due = due_of(*visit)) out.push_back({std::move(*visit), *due});
    return out;
  });
}

}  // namespace brimline
