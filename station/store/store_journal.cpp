// SPDX-License-Identifier: GPL-3.0-or-later
// Work that waits for the shared store, in a counter's own.
#include "station/store/waiting_work.h"

namespace brimline {

Stored<void> queue_work(Store& store, const WaitingWork& work) {
  Connection& c = store.connection();
  return c.transact(Access::write, [&] {
    const Rows last = c.ask("SELECT COALESCE(MAX(number), 0) FROM waiting_work");
    if (last.empty()) return;
    c.tell(
        "INSERT INTO waiting_work (number, id, kind, subject, content, who, at) VALUES (?, ?, ?, ?, ?, ?, ?)",
        {last[0][0].toLongLong() + 1, Connection::value(work.id), Connection::value(work.kind),
         Connection::value(work.subject), Connection::value(work.content), Connection::value(work.by.who),
         Connection::value(work.by.at.text())});
  });
}

Stored<std::vector<WaitingWork>> waiting_work(Store& store, int most) {
  Connection& c = store.connection();
  return c.transact(Access::read, [&] {
    std::vector<WaitingWork> out;
    for (const QVariantList& row : c.ask(
             "SELECT id, kind, subject, content, who, at, refusal FROM waiting_work ORDER BY number LIMIT " +
             std::to_string(most)))
      out.push_back({Connection::text(row[0]),
                     Connection::text(row[1]),
                     Connection::text(row[2]),
                     Connection::text(row[3]),
                     {Connection::text(row[4]), Instant::parse(Connection::text(row[5])).value_or(Instant{})},
                     row[6].isNull() ? std::nullopt : std::optional(Connection::text(row[6]))});
    return out;
  });
}

Stored<void> drop_work(Store& store, const std::string& id) {
  return store.connection().transact(Access::write, [&] {
    store.connection().tell("DELETE FROM waiting_work WHERE id = ?", {Connection::value(id)});
  });
}

Stored<void> refuse_work(Store& store, const std::string& id, const std::optional<std::string>& why) {
  return store.connection().transact(Access::write, [&] {
    store.connection().tell("UPDATE waiting_work SET refusal = ? WHERE id = ?",
                            {Connection::value(why), Connection::value(id)});
  });
}

}  // namespace brimline
