// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/people.h"

#include <algorithm>
#include <set>

#include <nlohmann/json.hpp>

#include "station/store/fold.h"
#include "station/store/row.h"
#include "station/visit_json.h"

namespace brimline {

using nlohmann::ordered_json;

namespace {

std::string upsert(const std::string& table, const std::string& columns, size_t count,
                   std::span<const Column> changed, Merge merge) {
  std::string sql =
      "INSERT INTO " + table + " (" + columns + ") VALUES (" + marks(count) + ") ON CONFLICT (id) DO ";
  if (merge == Merge::leave) return sql + "NOTHING";
  sql += "UPDATE SET ";
  bool first = true;
  for (const Column& column : changed) {
    const std::string name = column_list({&column, 1});
    if (std::string_view(column.name) == "id") continue;
    if (!first) sql += ", ";
    first = false;
    sql.append(name).append(" = ");
    if (merge == Merge::fill)
      sql.append("COALESCE(excluded.")
          .append(name)
          .append(", ")
          .append(table)
          .append(".")
          .append(name)
          .append(")");
    else
      sql.append("excluded.").append(name);
  }
  return sql;
}

StoreError damaged(const std::string& where, const std::vector<Fault>& faults) {
  return {StoreTrouble::damaged, where + " cannot be read: " + faults.front().what};
}

// Renews what the customer is found by.
void put_words(Connection& connection, const Customer& customer) {
  std::set<std::pair<int, std::string>> words;
  const auto add = [&](int place, const std::vector<std::string>& more) {
    for (const std::string& word : more) words.emplace(place, word);
  };
  add(0, folded_words(customer.name.value_or("")));
  add(1, folded_words(customer.street.value_or("")));
  add(1, folded_words(customer.email.value_or("")));
  add(1, folded_number(customer.phone.value_or("")));
  connection.tell("DELETE FROM customer_words WHERE customer_id = ?", {Connection::value(customer.id)});
  if (words.empty()) return;
  // In one statement: a server renews what depends on them once.
  std::string sql = "INSERT INTO customer_words (word, place, customer_id) VALUES ";
  QVariantList values;
  for (const auto& [place, word] : words) {
    sql += values.empty() ? "(?, ?, ?)" : ", (?, ?, ?)";
    values << Connection::value(word) << place << Connection::value(customer.id);
  }
  connection.tell(sql, values);
}

}  // namespace

namespace {

void put_customer_form(Connection& connection, const ordered_json& form, Merge merge) {
  const auto columns = customer_columns();
  const QVariant id = Connection::value(form.value("id", ""));
  const std::string ask = "SELECT " + column_list(columns) + " FROM customers WHERE id = ?";
  const Rows before = connection.ask(ask, {id});
  connection.tell(upsert("customers", column_list(columns), columns.size(), columns, merge),
                  to_row(form, columns));
  const Rows after = connection.ask(ask, {id});
  if (after != before && !after.empty()) put_words(connection, customer_of(connection, after[0]));
}

void put_vessel_form(Connection& connection, const ordered_json& form,
                     const std::optional<std::string>& customer_id, Merge merge) {
  const auto columns = vessel_columns();
  std::string sql =
      upsert("vessels", column_list(columns) + ", customer_id", columns.size() + 1, columns, merge);
  if (merge != Merge::leave) sql += ", customer_id = COALESCE(excluded.customer_id, vessels.customer_id)";
  QVariantList row = to_row(form, columns);
  row.push_back(Connection::value(customer_id));
  connection.tell(sql, row);
}

// `now` without what `before` said the same, and without what the row says otherwise than `before`: somebody
// else has changed that. Of another id all of it stays.
ordered_json news(const ordered_json& before, ordered_json now, const ordered_json& row) {
  if (before.value("id", "") != now.value("id", "")) return now;
  const auto at = [](const ordered_json& form, const std::string& key) {
    const auto found = form.find(key);
    return found == form.end() ? ordered_json(nullptr) : *found;
  };
  ordered_json out = now;
  for (const auto& item : now.items()) {
    const ordered_json was = at(before, item.key());
    if (item.key() != "id" && (was == item.value() || (!row.empty() && at(row, item.key()) != was)))
      out.erase(item.key());
  }
  return out;
}

ordered_json form_of(const Rows& rows, std::span<const Column> columns) {
  return rows.empty() ? ordered_json::object() : from_row(rows[0], columns);
}

}  // namespace

void put_customer(Connection& connection, const Customer& customer, Merge merge) {
  put_customer_form(connection, customer_to_json(customer), merge);
}

void put_vessel(Connection& connection, const Vessel& vessel, const std::optional<std::string>& customer_id,
                Merge merge) {
  put_vessel_form(connection, vessel_to_json(vessel), customer_id, merge);
}

void put_owner_of(Connection& connection, const Visit& visit, const OwnerForm& told, const Visit* earlier,
                  const std::function<bool()>& latest_of_customer,
                  const std::function<bool()>& latest_of_vessel) {
  const auto merge = [](bool latest) { return latest ? Merge::fill : Merge::leave; };
  ordered_json changed;
  if (visit.customer) {
    const auto columns = customer_columns();
    const Rows rows = connection.ask("SELECT " + column_list(columns) + " FROM customers WHERE id = ?",
                                     {Connection::value(visit.customer->id)});
    const bool since = earlier && earlier->customer;
    if (since) changed = news(customer_to_json(*earlier->customer), told.customer, form_of(rows, columns));
    const ordered_json& form = since ? changed : told.customer;
    if (rows.empty() || !says_all(rows[0], columns, form))
      put_customer_form(connection, form, merge(latest_of_customer()));
  }
  if (visit.vessel.id.empty()) return;
  const auto columns = vessel_columns();
  const Rows rows =
      connection.ask("SELECT " + column_list(columns) + ", customer_id FROM vessels WHERE id = ?",
                     {Connection::value(visit.vessel.id)});
  const std::optional<std::string> owner = visit.customer ? std::optional(visit.customer->id) : std::nullopt;
  const bool owned = !owner || (!rows.empty() && Connection::text(rows[0].back()) == *owner);
  if (earlier) changed = news(vessel_to_json(earlier->vessel), told.vessel, form_of(rows, columns));
  const ordered_json& form = earlier ? changed : told.vessel;
  if (!owned || rows.empty() || !says_all(rows[0], columns, form))
    put_vessel_form(connection, form, owner, merge(latest_of_vessel()));
}

void put_card(Connection& connection, const ordered_json& form) {
  const auto card = customer_from(form, "customer");
  if (card)
    put_customer(connection, *card, Merge::replace);
  else
    connection.fail({StoreTrouble::refused, "the card cannot be kept: " + card.error().front().what});
}

std::optional<Customer> card_of(Connection& connection, const std::string& id) {
  const Rows rows = connection.ask(
      "SELECT " + column_list(customer_columns()) + " FROM customers WHERE id = ?", {Connection::value(id)});
  if (rows.empty()) return std::nullopt;
  return customer_of(connection, rows[0]);
}

Customer customer_of(Connection& connection, const QVariantList& row) {
  auto customer = customer_from(from_row(row, customer_columns()), "store");
  if (!customer) connection.fail(damaged("customer " + Connection::text(row[0]), customer.error()));
  return customer.value_or(Customer{});
}

QVariant text_array(const std::vector<std::string>& texts) {
  std::string out = "{";
  for (const std::string& text : texts) {
    out += out.size() > 1 ? ",\"" : "\"";
    for (const char c : text) {
      if (c == '"' || c == '\\') out += '\\';
      out += c;
    }
    out += '"';
  }
  return Connection::value(out + "}");
}

std::string among(const Connection& connection, const std::string& column,
                  const std::vector<std::string>& ids, QVariantList& values) {
  if (connection.engine() == Engine::postgresql) {
    values.push_back(text_array(ids));
    return column + " = ANY (CAST(? AS TEXT[]))";
  }
  for (const std::string& id : ids) values.push_back(Connection::value(id));
  return column + " IN (" + marks(ids.size()) + ")";
}

std::vector<OwnVessel> vessels_of_customers(Connection& connection, const std::vector<std::string>& ids) {
  std::vector<OwnVessel> out;
  if (ids.empty()) return out;
  QVariantList keys;
  const std::string of_them = among(connection, "customer_id", ids, keys);
  for (const auto& row : connection.ask("SELECT " + column_list(vessel_columns()) +
                                            ", customer_id FROM vessels WHERE " + of_them + " ORDER BY id",
                                        keys)) {
    auto vessel = vessel_from(from_row(row, vessel_columns()), "store");
    if (vessel)
      out.push_back({Connection::text(row.back()), std::move(*vessel)});
    else
      connection.fail(damaged("vessel " + Connection::text(row[0]), vessel.error()));
  }
  return out;
}

std::vector<Vessel> vessels_of_customer(Connection& connection, const std::string& customer_id) {
  std::vector<Vessel> out;
  for (OwnVessel& own : vessels_of_customers(connection, {customer_id})) out.push_back(std::move(own.vessel));
  return out;
}

}  // namespace brimline
