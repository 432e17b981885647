// SPDX-License-Identifier: GPL-3.0-or-later
// Visits, their readings and plans, and the audit trail.
#include <algorithm>
#include <tuple>

#include <nlohmann/json.hpp>

#include "station/plan_json.h"
#include "station/store/people.h"
#include "station/store/row.h"
#include "station/store/waiting_work.h"
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

// When the visit was, as far as is known, in seconds of UTC since 1970.
std::optional<std::int64_t> moment_of(const Visit& visit) {
  for (const auto& at : {visit.bottle.taken_at, visit.bottle.tested_at, visit.home_at})
    if (at) return at->utc.time_since_epoch().count();
  return std::nullopt;
}

QVariant moment_value(const Visit& visit) {
  const auto at = moment_of(visit);
  return at ? whole_value(*at) : QVariant(QMetaType::fromType<qint64>());
}

// The JSON form of a visit, made once: its rows are its parts.
struct Form {
  explicit Form(const Visit& visit) : whole(visit_to_json(visit)) {}
  // Without what stands in rows of its own, which it gives up.
  std::string circumstances() {
    readings = std::move(whole["readings"]);
    if (whole.contains("plan_as_told")) plan = whole["plan_as_told"].dump();
    whole.erase("readings");
    whole.erase("plan_as_told");
    return whole.dump();
  }
  ordered_json whole, readings;
  std::optional<std::string> plan;
};

// A visit that would not come back as it is (a number that is none, a name with no spelling) is
// refused before anything is written.
bool comes_back(const Visit& visit, const Form& form) {
  const auto again = read_visit(form.whole.dump(), "store");
  return again && *again == visit;
}
bool comes_back(const Visit& visit) {
  return comes_back(visit, Form(visit));
}

StoreError cannot_be_kept(const Visit& visit) {
  const auto again = read_visit(visit_to_json(visit).dump(), "store");
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
  auto visit = read_visit(form.dump(-1, ' ', false, ordered_json::error_handler_t::replace), "store");
  if (visit && visit->id == id) return std::move(*visit);
  c.fail(visit ? damaged
               : StoreError{StoreTrouble::damaged, damaged.text + ": " + visit.error().front().what});
  return std::nullopt;
}

void add_row(Connection& c, const std::string& visit_id, size_t position, const ordered_json& reading) {
  static const std::string insert = "INSERT INTO readings (visit_id, position, " +
                                    column_list(reading_columns()) + ") VALUES (" +
                                    marks(reading_columns().size() + 2) + ")";
  QVariantList row = {id_value(visit_id), static_cast<int>(position)};
  row += to_row(reading, reading_columns());
  c.tell(insert, row);
}

void put_plan(Connection& c, const std::string& visit_id, const std::string& plan) {
  c.tell(
      "INSERT INTO plans (visit_id, plan) VALUES (?, ?) ON CONFLICT (visit_id) DO UPDATE SET plan = "
      "excluded.plan",
      {id_value(visit_id), Connection::value(plan)});
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

// The row of the visit itself, new or in place of the earlier.
void put_circumstances(Connection& c, const Visit& visit, const Visit* earlier, int revision, bool finished,
                       const std::string& circumstances) {
  put_owner(c, visit, earlier);
  const std::optional<std::string> none;
  c.tell(
      "INSERT INTO visits (id, revision, finished, at_s, bottle, customer_id, vessel_id, circumstances) "
      "VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO UPDATE SET revision = excluded.revision, "
      "finished = excluded.finished, at_s = excluded.at_s, bottle = excluded.bottle, "
      "customer_id = excluded.customer_id, vessel_id = excluded.vessel_id, circumstances = "
      "excluded.circumstances",
      {id_value(visit.id), revision, int{finished}, moment_value(visit), Connection::value(visit.bottle.code),
       Connection::value(visit.customer ? std::optional(visit.customer->id) : none),
       Connection::value(visit.vessel.id.empty() ? none : std::optional(visit.vessel.id)),
       Connection::value(circumstances)});
}

// `earlier`: what stands there, whose rows go first.
void put_whole(Connection& c, const Visit& visit, Form form, const Visit* earlier, int revision,
               bool finished, bool there) {
  put_circumstances(c, visit, earlier, revision, finished, form.circumstances());
  if (there) {
    c.tell("DELETE FROM readings WHERE visit_id = ?", {id_value(visit.id)});
    c.tell("DELETE FROM plans WHERE visit_id = ?", {id_value(visit.id)});
  }
  for (size_t i = 0; i < form.readings.size(); ++i) add_row(c, visit.id, i, form.readings[i]);
  if (form.plan) put_plan(c, visit.id, *form.plan);
}

void to_audit_trail(Connection& c, const Visit& earlier, int revision) {
  c.tell("INSERT INTO revisions (visit_id, revision, content) VALUES (?, ?, ?)",
         {id_value(earlier.id), revision, Connection::value(visit_to_json(earlier).dump())});
}

struct State {
  int revision = 0;
  bool finished = false;
};

// The visit anew; what it was goes to the audit trail.
void revise(Connection& c, const Visit& earlier, const Visit& later, const State& state) {
  to_audit_trail(c, earlier, state.revision);
  put_whole(c, later, Form(later), &earlier, state.revision + 1, true, true);
}

std::optional<State> state_of(Connection& c, const std::string& id) {
  const Rows rows = c.ask("SELECT revision, finished FROM visits WHERE id = ?", {id_value(id)});
  if (rows.empty()) return std::nullopt;
  return State{rows[0][0].toInt(), rows[0][1].toInt() != 0};
}

// The visit if it is in progress; otherwise the transaction fails.
std::optional<Visit> load_open(Connection& c, const std::string& id) {
  const auto state = state_of(c, id);
  if (!state)
    c.fail({StoreTrouble::refused, "there is no visit " + id});
  else if (state->finished)
    c.fail({StoreTrouble::refused, "visit " + id + " is finished"});
  return c.failed() ? std::nullopt : load(c, id);
}

// Ids in the order of time, those of no known time first, equal ones by id: the same in any store.
std::vector<std::string> ids_in_order(const Rows& rows) {
  std::vector<std::tuple<bool, qint64, std::string>> keys;
  for (const auto& row : rows)
    keys.emplace_back(!row[1].isNull(), row[1].toLongLong(), Connection::text(row[0]));
  std::sort(keys.begin(), keys.end());
  std::vector<std::string> out;
  out.reserve(keys.size());
  for (auto& key : keys) out.push_back(std::move(std::get<2>(key)));
  return out;
}

std::vector<Visit> load_all(Connection& c, const Rows& rows) {
  std::vector<Visit> out;
  for (const std::string& id : ids_in_order(rows))
    if (auto visit = load(c, id)) out.push_back(std::move(*visit));
  return out;
}

void put_reading(Connection& c, const std::string& visit_id, const Reading& reading) {
  auto visit = load_open(c, visit_id);
  if (!visit) return;
  const size_t position = visit->bottle.readings.size();
  visit->bottle.readings.push_back(reading);
  if (!comes_back(*visit))
    c.fail(cannot_be_kept(*visit));
  else
    add_row(c, visit_id, position, reading_to_json(reading));
}

}  // namespace

Stored<Kept> Store::keep(const Visit& visit) {
  Form form(visit);
  if (!comes_back(visit, form)) return tl::unexpected(cannot_be_kept(visit));
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    const auto state = state_of(c, visit.id);
    if (!state) {
      put_whole(c, visit, std::move(form), nullptr, 1, true, false);
      return Kept::kept;
    }
    const auto earlier = load(c, visit.id);
    if (!earlier || c.failed()) return Kept::same;  // the error ends the transaction
    if (*earlier == visit) {
      if (!state->finished) c.tell("UPDATE visits SET finished = 1 WHERE id = ?", {id_value(visit.id)});
      return Kept::same;
    }
    revise(c, *earlier, visit, *state);
    for (const AuditNote& note : differences(visit_to_json(*earlier), visit_to_json(visit), visit.id, true))
      write_note(note);
    return Kept::revised;
  });
}

Stored<bool> mirror(Store& store, const Visit& visit, bool finished) {
  Connection& c = store.connection();
  return c.transact(Access::write, [&] {
    if (!c.ask("SELECT id FROM waiting_work WHERE subject = ? LIMIT 1", {id_value(visit.id)}).empty() ||
        c.failed())
      return false;
    const auto state = state_of(c, visit.id);
    const auto earlier = state ? load(c, visit.id) : std::nullopt;
    if (earlier && *earlier == visit && state->finished == finished) return false;
    put_whole(c, visit, Form(visit), nullptr, state ? state->revision : 1, finished, state.has_value());
    return true;
  });
}

Stored<std::optional<Visit>> Store::visit(const std::string& id) {
  return connection_->transact(Access::read, [&] { return load(*connection_, id); });
}

Stored<std::vector<Visit>> Store::visits_of_vessel(const std::string& vessel_id) {
  return connection_->transact(Access::read, [&] {
    return load_all(*connection_, connection_->ask("SELECT id, at_s FROM visits WHERE vessel_id = ?",
                                                   {id_value(vessel_id)}));
  });
}

Stored<std::vector<std::string>> Store::visit_ids() {
  return connection_->transact(Access::read,
                               [&] { return ids_in_order(connection_->ask("SELECT id, at_s FROM visits")); });
}

Stored<std::vector<Visit>> Store::earlier_revisions(const std::string& id) {
  return connection_->transact(Access::read, [&] {
    std::vector<Visit> out;
    for (const auto& row : connection_->ask(
             "SELECT content FROM revisions WHERE visit_id = ? ORDER BY revision", {id_value(id)})) {
      auto visit = read_visit(Connection::text(row[0]), "audit trail");
      if (visit)
        out.push_back(std::move(*visit));
      else
        connection_->fail(
            {StoreTrouble::damaged, "an earlier revision cannot be read: " + visit.error()[0].what});
    }
    return out;
  });
}

Stored<std::vector<Visit>> Store::open_bottles() {
  return connection_->transact(Access::read, [&] {
    return load_all(*connection_, connection_->ask("SELECT id, at_s FROM visits WHERE finished = 0"));
  });
}

Stored<void> Store::begin_visit(const Visit& visit) {
  if (!comes_back(visit)) return tl::unexpected(cannot_be_kept(visit));
  return connection_->transact(Access::write, [&] {
    if (state_of(*connection_, visit.id))
      connection_->fail({StoreTrouble::refused, "there is a visit " + visit.id + " already"});
    else
      put_whole(*connection_, visit, Form(visit), nullptr, 1, false, false);
  });
}

Stored<void> Store::update_visit(const Visit& visit) {
  if (!comes_back(visit)) return tl::unexpected(cannot_be_kept(visit));
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    const auto state = state_of(c, visit.id);
    const auto earlier = load_open(c, visit.id);
    if (!earlier) return;
    put_circumstances(c, visit, &*earlier, state->revision, false, Form(visit).circumstances());
    // What was not known before and is now is no change.
    Visit later = visit;
    later.bottle.readings = earlier->bottle.readings;
    later.plan_as_told = earlier->plan_as_told;
    for (const AuditNote& note : differences(visit_to_json(*earlier), visit_to_json(later), visit.id, false))
      write_note(note);
  });
}

Stored<void> Store::correct_readings(const std::string& visit_id, const std::vector<Reading>& readings,
                                     const std::string& reason) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    const auto state = state_of(c, visit_id);
    const auto earlier = state ? load(c, visit_id) : std::nullopt;
    if (!state) c.fail({StoreTrouble::refused, "there is no visit " + visit_id});
    if (!earlier || c.failed() || earlier->bottle.readings == readings) return;
    Visit later = *earlier;
    later.bottle.readings = readings;
    if (!comes_back(later)) return c.fail(cannot_be_kept(later));
    // A visit in progress was shown to nobody: its trail is enough.
    if (state->finished)
      revise(c, *earlier, later, *state);
    else
      put_whole(c, later, Form(later), &*earlier, state->revision, false, true);
    for (AuditNote& note : differences(visit_to_json(*earlier), visit_to_json(later), visit_id, true)) {
      note.reason = reason;
      write_note(note);
    }
  });
}

Stored<void> Store::add_reading(const std::string& visit_id, const Reading& reading) {
  return connection_->transact(Access::write, [&] { put_reading(*connection_, visit_id, reading); });
}

Stored<void> Store::settle_orphan(const std::string& id, const std::optional<std::string>& visit_id,
                                  const Reading& as) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    const Rows open =
        c.ask("SELECT id FROM orphan_readings WHERE id = ? AND settled IS NULL", {id_value(id)});
    if (open.empty()) return c.fail({StoreTrouble::refused, "whose reading that is has been said already"});
    if (visit_id) put_reading(c, *visit_id, as);
    c.tell("UPDATE orphan_readings SET settled = ? WHERE id = ?",
           {id_value(visit_id.value_or("")), id_value(id)});
  });
}

Stored<void> Store::tell_plan(const std::string& visit_id, const Plan& plan) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    const auto state = state_of(c, visit_id);
    const auto earlier = state ? load(c, visit_id) : std::nullopt;
    if (!state) c.fail({StoreTrouble::refused, "there is no visit " + visit_id});
    if (!earlier || c.failed() || earlier->plan_as_told == plan) return;
    Visit told = *earlier;
    told.plan_as_told = plan;
    if (!comes_back(told)) {
      c.fail(cannot_be_kept(told));
      return;
    }
    if (earlier->plan_as_told) {
      to_audit_trail(c, *earlier, state->revision);
      for (const AuditNote& note : differences(visit_to_json(*earlier), visit_to_json(told), visit_id, true))
        write_note(note);
      c.tell("UPDATE visits SET revision = revision + 1 WHERE id = ?", {id_value(visit_id)});
    }
    put_plan(c, visit_id, plan_to_json(plan).dump());
    for (const HandChange& change : plan.changes)
      write_note({"plan", visit_id, "step " + std::to_string(change.step) + " " + change.what, change.before,
                  change.after, change.staff + ": " + change.reason});
  });
}

Stored<void> Store::finish(const std::string& visit_id) {
  return connection_->transact(Access::write, [&] {
    if (!state_of(*connection_, visit_id))
      connection_->fail({StoreTrouble::refused, "there is no visit " + visit_id});
    connection_->tell("UPDATE visits SET finished = 1 WHERE id = ?", {id_value(visit_id)});
  });
}

}  // namespace brimline
