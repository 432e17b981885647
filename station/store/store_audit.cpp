// SPDX-License-Identifier: GPL-3.0-or-later
// The audit trail, who signs, and work that is done once.
#include <chrono>

#include "station/store/store.h"

namespace brimline {

namespace {

std::int64_t seconds_of(const Instant& at) {
  return at.utc.time_since_epoch().count();
}

std::optional<std::string> text_of(const QVariant& value) {
  return value.isNull() ? std::nullopt : std::optional(Connection::text(value));
}

}  // namespace

Signature Store::signature() const {
  if (sign_) return sign_();
  const auto now = std::chrono::time_point_cast<std::chrono::seconds>(std::chrono::system_clock::now());
  return {"the program", {now, {}}};
}

void Store::write_note(const AuditNote& note) {
  Connection& c = *connection_;
  const Signature by = signature();
  const Rows last = c.ask("SELECT COALESCE(MAX(number), 0) FROM audit_trail");
  if (last.empty()) return;
  c.tell(
      "INSERT INTO audit_trail (number, at_s, at, who, what, subject, field, before, after, reason) VALUES "
      "(?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
      {last[0][0].toLongLong() + 1, QVariant::fromValue<qint64>(seconds_of(by.at)),
       Connection::value(by.at.text()), Connection::value(by.who), Connection::value(note.what),
       Connection::value(note.subject), Connection::value(note.field), Connection::value(note.before),
       Connection::value(note.after), Connection::value(note.reason)});
}

Stored<void> Store::note(const AuditNote& note) {
  return connection_->transact(Access::write, [&] { write_note(note); });
}

Stored<std::vector<AuditRow>> Store::audit_trail(int most, std::int64_t before, const std::string& subject) {
  Connection& c = *connection_;
  return c.transact(Access::read, [&] {
    std::vector<AuditRow> out;
    std::string sql = "SELECT number, at, who, what, subject, field, before, after, reason FROM audit_trail";
    QVariantList values;
    if (before > 0) {
      sql += " WHERE number < ?";
      values.push_back(QVariant::fromValue<qint64>(before));
    }
    if (!subject.empty()) {
      sql += std::string(before > 0 ? " AND" : " WHERE") + " subject = ?";
      values.push_back(Connection::value(subject));
    }
    for (const QVariantList& row :
         c.ask(sql + " ORDER BY number DESC LIMIT " + std::to_string(most), values)) {
      const auto at = Instant::parse(Connection::text(row[1]));
      if (!at) c.fail({StoreTrouble::damaged, "the audit trail cannot be read"});
      out.push_back({row[0].toLongLong(),
                     {Connection::text(row[2]), at.value_or(Instant{})},
                     {Connection::text(row[3]), Connection::text(row[4]), text_of(row[5]), text_of(row[6]),
                      text_of(row[7]), text_of(row[8])}});
    }
    return out;
  });
}

Stored<void> Store::once(const std::string& id, const std::function<Stored<void>()>& work) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    if (!c.ask("SELECT id FROM done_work WHERE id = ?", {Connection::value(id)}).empty() || c.failed())
      return;
    if (const auto done = work(); !done) return c.fail(done.error());
    c.tell("INSERT INTO done_work (id, at_s) VALUES (?, ?)",
           {Connection::value(id), QVariant::fromValue<qint64>(seconds_of(signature().at))});
  });
}

}  // namespace brimline
