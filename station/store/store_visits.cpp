// SPDX-License-Identifier: GPL-3.0-or-later
// Visits, their readings and plans, and the audit trail.
#include <algorithm>
#include <tuple>

#include <nlohmann/json.hpp>

#include "station/plan_json.h"
#include "station/store/joining.h"
#include "station/store/people.h"
#include "station/store/row.h"
#include "station/store/visit_rows.h"
#include "station/store/waiting_work.h"
#include "station/visit_json.h"

namespace brimline {

using nlohmann::ordered_json;

namespace {

QVariant id_value(const std::string& id) {
  return Connection::value(id);
}
void to_audit_trail(Connection& c, const Visit& earlier, int revision) {
  c.tell("INSERT INTO revisions (visit_id, revision, content) VALUES (?, ?, ?)",
         {id_value(earlier.id), revision, Connection::value(visit_to_json(earlier).dump())});
}

// The visit anew; what it was goes to the audit trail.
void revise(Connection& c, const Visit& earlier, const Visit& later, const VisitState& state) {
  to_audit_trail(c, earlier, state.revision);
  put_whole(c, later, VisitForm(later), &earlier, state.revision + 1, true, true);
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
    add_rows(c, visit_id, position, ordered_json::array({reading_to_json(reading)}));
}

}  // namespace

Stored<Kept> Store::keep(const Visit& visit) {
  const VisitForm form(visit);
  if (!form.comes_back) return tl::unexpected(cannot_be_kept(visit));
  Connection& c = *connection_;
  return c.transact(Access::write, [&]() -> Kept {
    const auto of_standing = of_standing_customer(c, visit);
    const Visit& now = of_standing ? *of_standing : visit;
    const auto state = state_of(c, now.id);
    if (!state) {
      if (of_standing)
        put_whole(c, now, VisitForm(now), nullptr, 1, true, false);
      else
        put_whole(c, now, form, nullptr, 1, true, false);
      return Kept::kept;
    }
    const auto earlier = load(c, now.id);
    if (!earlier || c.failed()) return Kept::same;  // the error ends the transaction
    if (*earlier == now) {
      if (!state->finished) c.tell("UPDATE visits SET finished = 1 WHERE id = ?", {id_value(now.id)});
      return Kept::same;
    }
    revise(c, *earlier, now, *state);
    for (const AuditNote& note : differences(visit_to_json(*earlier), visit_to_json(now), now.id, true))
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
    const Visit now = of_standing_customer(c, visit).value_or(visit);
    const auto state = state_of(c, now.id);
    const auto earlier = state ? load(c, now.id) : std::nullopt;
    if (earlier && *earlier == now && state->finished == finished) return false;
    put_whole(c, now, VisitForm(now), nullptr, state ? state->revision : 1, finished, state.has_value());
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
    const Visit now = of_standing_customer(*connection_, visit).value_or(visit);
    if (state_of(*connection_, now.id))
      connection_->fail({StoreTrouble::refused, "there is a visit " + now.id + " already"});
    else
      put_whole(*connection_, now, VisitForm(now), nullptr, 1, false, false);
  });
}

Stored<void> Store::update_visit(const Visit& visit) {
  if (!comes_back(visit)) return tl::unexpected(cannot_be_kept(visit));
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    const auto state = state_of(c, visit.id);
    const auto earlier = load_open(c, visit.id);
    if (!earlier) return;
    Visit later = of_standing_customer(c, visit).value_or(visit);
    put_circumstances(c, later, &*earlier, state->revision, false, VisitForm(later));
    // What was not known before and is now is no change.
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
      put_whole(c, later, VisitForm(later), &*earlier, state->revision, false, true);
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
    put_due(c, told);
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
