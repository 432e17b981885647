// SPDX-License-Identifier: GPL-3.0-or-later
// Overnight tests, from their set-up until the customer is told.
#include <nlohmann/json.hpp>

#include "station/overnight/overnight_json.h"
#include "station/store/waiting_work.h"

namespace brimline {

namespace {

constexpr const char* kColumns = "SELECT content FROM overnight_tests WHERE ";

int open_mark(const OvernightTest& test) {
  return test.stage == OvernightStage::closed ? 0 : 1;
}

QVariant content_of(const OvernightTest& test) {
  return Connection::value(overnight_to_json(test).dump());
}

bool comes_back(const OvernightTest& test) {
  const auto again = read_overnight(overnight_to_json(test).dump(), "store");
  return again && *again == test;
}

std::vector<OvernightTest> tests_of(Connection& c, const Rows& rows) {
  std::vector<OvernightTest> out;
  for (const auto& row : rows) {
    auto test = read_overnight(Connection::text(row[0]), "store");
    if (test)
      out.push_back(std::move(*test));
    else
      c.fail({StoreTrouble::damaged, "an overnight test cannot be read: " + test.error().front().what});
  }
  return out;
}

std::optional<OvernightTest> first_of(std::vector<OvernightTest> found) {
  if (found.empty()) return std::nullopt;
  return std::move(found.front());
}

std::optional<OvernightTest> last_of(Connection& c, const std::string& visit_id) {
  return first_of(tests_of(c, c.ask(std::string(kColumns) + "visit_id = ? ORDER BY number DESC LIMIT 1",
                                    {Connection::value(visit_id)})));
}

std::optional<OvernightTest> numbered(Connection& c, const std::string& visit_id, int number) {
  return first_of(tests_of(c, c.ask(std::string(kColumns) + "visit_id = ? AND number = ?",
                                    {Connection::value(visit_id), number})));
}

}  // namespace

Stored<OvernightTest> Store::begin_overnight(const OvernightTest& test) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    OvernightTest begun = test;
    const auto last = last_of(c, test.visit);
    begun.number = last ? last->number + 1 : 1;
    if (last && open_mark(*last))
      c.fail({StoreTrouble::refused, "an overnight test of this bottle goes on already"});
    else if (!comes_back(begun))
      c.fail({StoreTrouble::refused, "the overnight test has no written form"});
    else
      c.tell("INSERT INTO overnight_tests (visit_id, number, open, content) VALUES (?, ?, ?, ?)",
             {Connection::value(begun.visit), begun.number, open_mark(begun), content_of(begun)});
    return begun;
  });
}

Stored<OvernightTest> Store::change_overnight(const std::string& visit_id,
                                              const std::function<void(OvernightTest&)>& edit,
                                              std::optional<int> number) {
  Connection& c = *connection_;
  return c.transact(Access::write, [&] {
    auto test = last_of(c, visit_id);
    const bool superseded = test && number && *number != test->number;
    if (superseded) test = numbered(c, visit_id, *number);
    if (!test || c.failed()) {
      c.fail({StoreTrouble::refused, "visit " + visit_id + " has no overnight test"});
      return OvernightTest{};
    }
    const OvernightTest before = *test;
    edit(*test);
    test->visit = before.visit;
    test->number = before.number;
    if (superseded) {
      test->stage = before.stage;
      test->given_up = before.given_up;
    }
    if (!comes_back(*test))
      c.fail({StoreTrouble::refused, "the overnight test has no written form"});
    else if (*test != before)
      c.tell("UPDATE overnight_tests SET open = ?, content = ? WHERE visit_id = ? AND number = ?",
             {open_mark(*test), content_of(*test), Connection::value(visit_id), test->number});
    return *test;
  });
}

Stored<bool> mirror(Store& store, const OvernightTest& test) {
  Connection& c = store.connection();
  return c.transact(Access::write, [&] {
    const QVariant visit = Connection::value(test.visit);
    if (!c.ask("SELECT id FROM waiting_work WHERE subject = ? LIMIT 1", {visit}).empty() ||
        c.ask("SELECT id FROM visits WHERE id = ?", {visit}).empty() || last_of(c, test.visit) == test)
      return false;
    c.tell(
        "INSERT INTO overnight_tests (visit_id, number, open, content) VALUES (?, ?, ?, ?) ON CONFLICT "
        "(visit_id, "
        "number) DO UPDATE SET open = excluded.open, content = excluded.content",
        {visit, test.number, open_mark(test), content_of(test)});
    return true;
  });
}

Stored<std::optional<OvernightTest>> Store::overnight(const std::string& visit_id) {
  return connection_->transact(Access::read, [&] { return last_of(*connection_, visit_id); });
}

Stored<std::vector<OvernightTest>> Store::open_overnights() {
  return connection_->transact(Access::read, [&] {
    return tests_of(*connection_, connection_->ask(std::string(kColumns) + "open = 1 ORDER BY visit_id"));
  });
}

}  // namespace brimline
