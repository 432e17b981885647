// SPDX-License-Identifier: GPL-3.0-or-later
// Customers: found again, edited at two counters, made nameless.
#include <algorithm>

#include <nlohmann/json.hpp>

#include "station/store/joining.h"
#include "station/store/people.h"
#include "station/store/row.h"
#include "station/store/store.h"
#include "station/visit_json.h"

namespace brimline {

using nlohmann::ordered_json;

namespace {

constexpr const char* kPersonal[] = {"name", "phone", "street", "email"};

// Takes the person out of a visit's form; whether anything was there.
bool make_nameless(ordered_json& form, const std::string& customer_id) {
  const auto customer = form.find("customer");
  if (customer == form.end() || !customer->is_object() || customer->value("id", "") != customer_id)
    return false;
  bool any = false;
  for (const char* field : kPersonal) any = customer->erase(field) > 0 || any;
  return any;
}

// Every form in `column` of `table` that names the customer, without the person.
void rewrite(Connection& c, const std::string& ask, const std::string& put, const std::string& customer_id,
             const QVariantList& values) {
  for (const QVariantList& row : c.ask(ask, values)) {
    ordered_json form = ordered_json::parse(Connection::text(row[0]), nullptr, false);
    if (!form.is_object() || !make_nameless(form, customer_id)) continue;
    QVariantList key = row.mid(1);
    key.prepend(Connection::value(form.dump()));
    c.tell(put, key);
  }
}

// Of visits that were another customer's later, too.
void forget_in_revisions(Connection& c, const std::string& id) {
  c.tell("DELETE FROM erasing");
  c.tell("INSERT INTO erasing (customer_id) VALUES (?)", {Connection::value(id)});
  QString like = QString::fromStdString(ordered_json(id).dump());
  like.replace('\\', "\\\\").replace('%', "\\%").replace('_', "\\_");
  rewrite(c, "SELECT content, visit_id, revision FROM revisions WHERE content LIKE ? ESCAPE '\\'",
          "UPDATE revisions SET content = ? WHERE visit_id = ? AND revision = ?", id, {"%" + like + "%"});
  c.tell("DELETE FROM erasing");
}

// The cards that were laid by, so that they could be taken apart again: only their ids stay.
void forget_what_was_joined(Connection& c, const std::string& gone) {
  for (const QVariantList& row :
       c.ask("SELECT content FROM joined_customers WHERE id = ?", {Connection::value(gone)})) {
    ordered_json content = ordered_json::parse(Connection::text(row[0]), nullptr, false);
    if (!content.is_object()) content = ordered_json::object();
    for (const char* card : {"kept", "gone"})
      if (content.contains(card) && content[card].is_object())
        for (const char* field : kPersonal) content[card].erase(field);
    c.tell("UPDATE joined_customers SET content = ? WHERE id = ?",
           {Connection::value(content.dump()), Connection::value(gone)});
  }
}

}  // namespace

Stored<void> Store::save_customer(const Customer& customer) {
  return connection_->transact(Access::write, [&] {
    if (const auto into = joined_into(*connection_, customer.id))
      connection_->fail({StoreTrouble::refused, "customer " + customer.id + " was joined with " + *into});
    else
      put_customer(*connection_, customer, Merge::replace);
  });
}

Stored<std::optional<Customer>> Store::customer(const std::string& id) {
  return connection_->transact(Access::read, [&] {
    auto card = card_of(*connection_, id);
    if (card || connection_->failed()) return card;
    const auto into = joined_into(*connection_, id);
    return into ? card_of(*connection_, *into) : std::nullopt;
  });
}

Stored<std::optional<Customer>> Store::edit_customer(const Customer& seen, const Customer& now) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&]() -> std::optional<Customer> {
    auto card = card_of(c, now.id);
    const auto into = card ? std::nullopt : joined_into(c, now.id);
    if (into) card = card_of(c, *into);
    ordered_json was = customer_to_json(seen), is = customer_to_json(now);
    if (into) was["id"] = is["id"] = *into;
    ordered_json out = card ? customer_to_json(*card) : is;
    for (const Column& column : customer_columns()) {
      const std::string key = column.name;
      const auto value = [&](const ordered_json& form) {
        return form.contains(key) ? form[key] : ordered_json(nullptr);
      };
      if (!card || value(was) == value(is)) continue;  // not edited here
      const ordered_json stands = value(out);
      if (stands != value(was) && stands != value(is)) return card;
      if (is.contains(key))
        out[key] = is[key];
      else
        out.erase(key);
      if (stands != value(is))
        write_note({"customer", into.value_or(now.id), key, std::nullopt, std::nullopt, std::nullopt});
    }
    put_card(c, out);
    return std::nullopt;
  });
}

Stored<void> Store::erase_customer(const std::string& id, const std::string& reason) {
  Connection& c = *connection_;
  const bool sqlite = c.engine() == Engine::sqlite;
  auto done = c.transact(Access::write, [&] {
    if (!card_of(c, id)) return c.fail({StoreTrouble::refused, "there is no customer " + id});
    Customer nameless;
    nameless.id = id;
    put_customer(c, nameless, Merge::replace);
    rewrite(c, "SELECT circumstances, id FROM visits WHERE customer_id = ?",
            "UPDATE visits SET circumstances = ? WHERE id = ?", id, {Connection::value(id)});
    forget_in_revisions(c, id);
    write_note({"customer", id, "erased", std::nullopt, std::nullopt, reason});
    for (const std::string& gone : gone_into(c, id)) {
      forget_in_revisions(c, gone);
      forget_what_was_joined(c, gone);
      write_note({"customer", gone, "erased", std::nullopt, std::nullopt, reason});
    }
  });
  if (!done) return done;
  if (sqlite) {
    c.run("PRAGMA wal_checkpoint(TRUNCATE)");  // nor does it stay in the log
  } else {
    c.run("VACUUM customers");
    c.run("VACUUM customer_words");
    c.run("VACUUM customer_tokens");
    c.run("VACUUM visits");
    c.run("VACUUM revisions");
    c.run("VACUUM joined_customers");
  }
  if (auto error = c.take_error(); error && error->trouble != StoreTrouble::busy)
    return tl::unexpected(std::move(*error));
  return {};
}

Stored<std::vector<std::string>> Store::customers_unseen_since(const Instant& day) {
  Connection& c = *connection_;
  return c.transact(Access::read, [&] {
    std::vector<std::string> out;
    for (const QVariantList& row : c.ask(
             "SELECT c.id FROM customers c WHERE (c.name IS NOT NULL OR c.phone IS NOT NULL OR c.street IS "
             "NOT NULL OR c.email IS NOT NULL) AND EXISTS (SELECT 1 FROM visits v WHERE v.customer_id = c.id "
             "AND v.at_s IS NOT NULL) AND NOT EXISTS (SELECT 1 FROM visits v WHERE v.customer_id = c.id AND "
             "(v.at_s IS NULL OR v.at_s >= ? OR v.finished = 0)) ORDER BY c.id",
             {QVariant::fromValue<qint64>(day.utc.time_since_epoch().count())}))
      out.push_back(Connection::text(row[0]));
    return out;
  });
}

Stored<std::vector<std::string>> Store::erased_customers() {
  Connection& c = *connection_;
  return c.transact(Access::read, [&] {
    std::vector<std::string> out;
    for (const QVariantList& row :
         c.ask("SELECT DISTINCT subject FROM audit_trail WHERE what = 'customer' AND "
               "field = 'erased' ORDER BY subject"))
      out.push_back(Connection::text(row[0]));
    return out;
  });
}

Stored<std::int64_t> Store::next_bottle_number() {
  Connection& c = *connection_;
  return c.transact(Access::write, [&]() -> std::int64_t {
    const Rows kept = c.ask("SELECT value FROM settings WHERE name = 'bottles'");
    const Rows visits = kept.empty() ? c.ask("SELECT COUNT(*) FROM visits") : kept;
    const std::int64_t next = visits.empty() ? 1 : visits[0][0].toLongLong() + 1;
    c.tell(
        "INSERT INTO settings (name, value) VALUES ('bottles', ?) ON CONFLICT (name) DO UPDATE SET value = "
        "excluded.value",
        {Connection::value(std::to_string(next))});
    return next;
  });
}

}  // namespace brimline
