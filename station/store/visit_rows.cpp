// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/visit_rows.h"

#include <algorithm>

#include "station/reminder/due.h"
#include "station/store/people.h"
#include "station/store/row.h"
#include "station/visit_json.h"

namespace brimline {

using nlohmann::ordered_json;

namespace {

QVariant id_value(const std::string& id) {
  return Connection::value(id);
}
QVariant whole_value(qint64 number) {
  return QVariant::fromValue(number);
}

QVariant moment_value(const Visit& visit) {
  const auto at = moment_of(visit);
  return at ? whole_value(*at) : QVariant(QMetaType::fromType<qint64>());
}

QVariant due_value(const Visit& visit) {
  const auto due = due_of(visit);
  return due ? whole_value(due->utc.time_since_epoch().count()) : QVariant(QMetaType::fromType<qint64>());
}

// The rows of whose water it was: the latest visit's word counts, an older one only fills gaps.
void put_owner(Connection& c, const Visit& visit, const Visit* earlier) {
  const auto latest = [&](const char* column, const std::string& id) {
    const Rows rows =
        c.ask(std::string("SELECT MAX(at_s) FROM visits WHERE ") + column + " = ?", {id_value(id)});
    const auto at = moment_of(visit);
    return rows.empty() || rows[0][0].isNull() || (at && *at >= rows[0][0].toLongLong());
  };
  put_owner_of(
      c, visit, earlier, [&] { return latest("customer_id", visit.customer->id); },
      [&] { return latest("vessel_id", visit.vessel.id); });
}

// The columns that any of the readings fills.
std::vector<Column> filled(const ordered_json& readings) {
  std::vector<Column> out;
  for (const Column& column : reading_columns())
    if (std::any_of(readings.begin(), readings.end(),
                    [&](const ordered_json& one) { return one.contains(column.name); }))
      out.push_back(column);
  return out;
}

}  // namespace

namespace {

bool reads_back(const ordered_json& form, const Visit& visit) {
  const auto again = visit_from(form, "store");
  return again && *again == visit;
}

// Of any text: what has no spelling is refused by what asks comes_back.
std::string written(const ordered_json& form) {
  return form.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

}  // namespace

VisitForm::VisitForm(const Visit& visit) {
  ordered_json form = visit_to_json(visit);
  comes_back = reads_back(form, visit);
  readings = std::move(form["readings"]);
  if (form.contains("plan_as_told")) plan = written(form["plan_as_told"]);
  form.erase("readings");
  form.erase("plan_as_told");
  circumstances = written(form);
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
    QVariantList values;
    for (size_t i = from; i < end; ++i) {
      sql.append(i == from ? "(" : ", (").append(marks(columns.size() + 2)).append(")");
      values << id_value(visit_id) << static_cast<int>(position + i);
      values += to_row(readings[i], columns);
    }
    c.tell(sql, values);
  }
}

void put_due(Connection& c, const Visit& visit) {
  c.tell("UPDATE visits SET due_s = ? WHERE id = ?", {due_value(visit), id_value(visit.id)});
}

void put_plan(Connection& c, const std::string& visit_id, const std::string& plan) {
  c.tell(
      "INSERT INTO plans (visit_id, plan) VALUES (?, ?) ON CONFLICT (visit_id) DO UPDATE SET plan = "
      "excluded.plan",
      {id_value(visit_id), Connection::value(plan)});
}

// The row of the visit itself, new or in place of the earlier.
void put_circumstances(Connection& c, const Visit& visit, const Visit* earlier, int revision, bool finished,
                       const std::string& circumstances) {
  put_owner(c, visit, earlier);
  const std::optional<std::string> none;
  c.tell(
      "INSERT INTO visits (id, revision, finished, at_s, bottle, customer_id, vessel_id, circumstances, "
      "due_s) "
      "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO UPDATE SET revision = excluded.revision, "
      "finished = excluded.finished, at_s = excluded.at_s, bottle = excluded.bottle, "
      "customer_id = excluded.customer_id, vessel_id = excluded.vessel_id, circumstances = "
      "excluded.circumstances, due_s = excluded.due_s",
      {id_value(visit.id), revision, int{finished}, moment_value(visit), Connection::value(visit.bottle.code),
       Connection::value(visit.customer ? std::optional(visit.customer->id) : none),
       Connection::value(visit.vessel.id.empty() ? none : std::optional(visit.vessel.id)),
       Connection::value(circumstances), due_value(visit)});
}

// `earlier`: what stands there, whose rows go first.
void put_whole(Connection& c, const Visit& visit, const VisitForm& form, const Visit* earlier, int revision,
               bool finished, bool there) {
  put_circumstances(c, visit, earlier, revision, finished, form.circumstances);
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
