// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/visit_rows.h"

#include <algorithm>

#include "station/json_text.h"
#include "station/reminder/due.h"
#include "station/store/row.h"
#include "station/visit_json.h"

namespace brimline {

using nlohmann::ordered_json;

namespace {

QVariant id_value(const std::string& id) {
  return Connection::value(id);
}

std::optional<std::int64_t> due_second(const Visit& visit) {
  const auto due = due_of(visit);
  return due ? std::optional<std::int64_t>(due->utc.time_since_epoch().count()) : std::nullopt;
}

// The rows of whose water it was: the latest visit's word counts, an older one only fills gaps.
void put_owner(Connection& c, const Visit& visit, const OwnerForm& told, const Visit* earlier) {
  const auto latest = [&](const char* column, const std::string& id) {
    const Rows rows =
        c.ask(std::string("SELECT MAX(at_s) FROM visits WHERE ") + column + " = ?", {id_value(id)});
    const auto at = moment_of(visit);
    return rows.empty() || rows[0][0].isNull() || (at && *at >= rows[0][0].toLongLong());
  };
  put_owner_of(
      c, visit, told, earlier, [&] { return latest("customer_id", visit.customer->id); },
      [&] { return latest("vessel_id", visit.vessel.id); });
}

// The columns that any of the readings fills.
std::vector<Column> filled(const ordered_json& readings) {
  std::vector<Column> out;
  for (const Column& column : reading_columns())
    if (std::any_of(readings.begin(), readings.end(),
                    [&](const ordered_json& one) { return member_of(one, column.name) != nullptr; }))
      out.push_back(column);
  return out;
}

}  // namespace

namespace {

bool reads_back(const ordered_json& form, const Visit& visit) {
  const auto again = visit_from(form, "store");
  return again && *again == visit;
}

}  // namespace

VisitForm::VisitForm(const Visit& visit) {
  ordered_json form = visit_to_json(visit);
  comes_back = reads_back(form, visit);
  readings = std::move(form["readings"]);
  if (form.contains("plan_as_told")) plan = json_text(form["plan_as_told"]);
  form.erase("readings");
  form.erase("plan_as_told");
  circumstances = json_text(form);
  if (form.contains("customer")) owner.customer = std::move(form["customer"]);
  if (form.contains("vessel")) owner.vessel = std::move(form["vessel"]);
}

// When the visit was, as far as is known, in seconds of UTC since 1970.
std::optional<std::int64_t> moment_of(const Visit& visit) {
  for (const auto& at : {visit.bottle.taken_at, visit.bottle.tested_at, visit.home_at})
    if (at) return at->utc.time_since_epoch().count();
  return std::nullopt;
}

bool comes_back(const Visit& visit) {
  return reads_back(visit_to_json(visit), visit);
}

StoreError cannot_be_kept(const Visit& visit) {
  const auto again = visit_from(visit_to_json(visit), "store");
  const std::string why = again ? "it holds something that has no written form" : again.error().front().what;
  return {StoreTrouble::refused, "the visit cannot be kept: " + why};
}

std::optional<Visit> load(Connection& c, const std::string& id) {
  const Rows rows = c.ask(
      "SELECT circumstances, plan FROM visits LEFT JOIN plans ON plans.visit_id = visits.id WHERE visits.id "
      "= ?",
      {id_value(id)});
  if (rows.empty()) return std::nullopt;
  ordered_json form = ordered_json::parse(Connection::text(rows[0][0]), nullptr, false);
  const StoreError damaged{StoreTrouble::damaged, "what is stored of it cannot be read"};
  if (!form.is_object()) {
    c.fail(damaged);
    return std::nullopt;
  }
  form["readings"] = ordered_json::array();
  const Rows readings = c.ask("SELECT position, " + column_list(reading_columns()) +
                                  " FROM readings WHERE visit_id = ? ORDER BY position",
                              {id_value(id)});
  for (const auto& row : readings) {
    if (row[0].toULongLong() != form["readings"].size()) c.fail(damaged);  // one is gone
    form["readings"].push_back(from_row(row, reading_columns(), 1));
  }
  if (!rows[0][1].isNull())
    form["plan_as_told"] = ordered_json::parse(Connection::text(rows[0][1]), nullptr, false);
  auto visit = visit_from(form, "store");
  if (visit && visit->id == id) return std::move(*visit);
  c.fail(visit ? damaged
               : StoreError{StoreTrouble::damaged, damaged.text + ": " + visit.error().front().what});
  return std::nullopt;
}

void add_rows(Connection& c, const std::string& visit_id, size_t position, const ordered_json& readings) {
  constexpr size_t kAtOnce = 64;
  const std::vector<Column> columns = filled(readings);
  for (size_t from = 0; from < readings.size(); from += kAtOnce) {
    const size_t end = std::min(readings.size(), from + kAtOnce);
    std::string sql = "INSERT INTO readings (visit_id, position, " + column_list(columns) + ") VALUES ";
    std::vector<SqlValue> values;
    values.reserve((end - from) * (columns.size() + 2));
    for (size_t i = from; i < end; ++i) {
      sql.append(i == from ? "(" : ", (").append(marks(columns.size() + 2)).append(")");
      values.emplace_back(visit_id);
      values.emplace_back(static_cast<std::int64_t>(position + i));
      add_values(values, readings[i], columns);
    }
    c.put(sql, values);
  }
}

void put_due(Connection& c, const Visit& visit) {
  const SqlValue values[] = {sql_value(due_second(visit)), visit.id};
  c.put("UPDATE visits SET due_s = ? WHERE id = ?", values);
}

void put_plan(Connection& c, const std::string& visit_id, const std::string& plan) {
  const SqlValue values[] = {visit_id, plan};
  c.put(
      "INSERT INTO plans (visit_id, plan) VALUES (?, ?) ON CONFLICT (visit_id) DO UPDATE SET plan = "
      "excluded.plan",
      values);
}

// The row of the visit itself, new or in place of the earlier.
void put_circumstances(Connection& c, const Visit& visit, const Visit* earlier, int revision, bool finished,
                       const VisitForm& form) {
  put_owner(c, visit, form.owner, earlier);
  const SqlValue values[] = {visit.id,
                             std::int64_t{revision},
                             std::int64_t{finished},
                             sql_value(moment_of(visit)),
                             visit.bottle.code,
                             visit.customer ? SqlValue(visit.customer->id) : SqlNull{},
                             visit.vessel.id.empty() ? SqlNull{} : SqlValue(visit.vessel.id),
                             form.circumstances,
                             sql_value(due_second(visit))};
  c.put(
      "INSERT INTO visits (id, revision, finished, at_s, bottle, customer_id, vessel_id, circumstances, "
      "due_s) "
      "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO UPDATE SET revision = excluded.revision, "
      "finished = excluded.finished, at_s = excluded.at_s, bottle = excluded.bottle, "
      "customer_id = excluded.customer_id, vessel_id = excluded.vessel_id, circumstances = "
      "excluded.circumstances, due_s = excluded.due_s",
      values);
}

// `earlier`: what stands there, whose rows go first.
void put_whole(Connection& c, const Visit& visit, const VisitForm& form, const Visit* earlier, int revision,
               bool finished, bool there) {
  put_circumstances(c, visit, earlier, revision, finished, form);
  if (there) {
    c.tell("DELETE FROM readings WHERE visit_id = ?", {id_value(visit.id)});
    c.tell("DELETE FROM plans WHERE visit_id = ?", {id_value(visit.id)});
  }
  add_rows(c, visit.id, 0, form.readings);
  if (form.plan) put_plan(c, visit.id, *form.plan);
}

std::optional<VisitState> state_of(Connection& c, const std::string& id) {
  const Rows rows = c.ask("SELECT revision, finished FROM visits WHERE id = ?", {id_value(id)});
  if (rows.empty()) return std::nullopt;
  return VisitState{rows[0][0].toInt(), rows[0][1].toInt() != 0};
}

}  // namespace brimline
