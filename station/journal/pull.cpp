// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/journal/pull.h"

#include <algorithm>
#include <iterator>
#include <set>

#include "station/store/joining.h"
#include "station/store/tables.h"

namespace brimline {

namespace {

// Tables small enough to be laid beside each other whole. `stays`: rows are only ever added.
struct Book {
  const char* table;
  bool stays;
};
constexpr Book kBooks[] = {
    {"staff", false},           {"reagent_lots", false},   {"instrument_checks", true},
    {"instruments", true},      {"check_standards", true}, {"check_measurements", true},
    {"check_clearances", true}, {"lot_curves", true}};

template <class T>
T take(Stored<T> stored, std::optional<StoreError>& wrong) {
  if (stored) return std::move(*stored);
  if (!wrong) wrong = stored.error();
  return T();
}

struct Pull {
  Store &shared, &own;
  std::optional<StoreError> wrong = {};
  bool changed = false;

  void note(const Stored<bool>& put) {
    if (!put && !wrong) wrong = put.error();
    changed = changed || (put && *put);
  }

  void visits() {
    std::set<std::string> open;
    for (const Visit& visit : take(shared.open_bottles(), wrong)) {
      open.insert(visit.id);
      note(mirror(own, visit, false));
    }
    if (wrong) return;
    for (const Visit& here : take(own.open_bottles(), wrong)) {
      if (open.contains(here.id)) continue;
      const auto there = take(shared.visit(here.id), wrong);
      if (there) note(mirror(own, *there, true));
    }
  }

  void overnights() {
    const auto there = take(shared.open_overnights(), wrong);
    const auto here = take(own.open_overnights(), wrong);
    if (wrong) return;
    for (const OvernightTest& test : there)
      if (std::find(here.begin(), here.end(), test) == here.end()) note(mirror(own, test));
    for (const OvernightTest& test : here)
      if (std::none_of(there.begin(), there.end(), [&](const auto& t) { return t.visit == test.visit; }))
        if (const auto last = take(shared.overnight(test.visit), wrong)) note(mirror(own, *last));
  }

  void orphans() {
    const auto there = take(shared.orphans(), wrong);
    const auto here = take(own.orphans(), wrong);
    if (wrong) return;
    for (const OrphanReading& one : there)
      if (std::find(here.begin(), here.end(), one) == here.end()) note(mirror(own, one, true));
    for (const OrphanReading& one : here)
      if (std::find(there.begin(), there.end(), one) == there.end()) note(mirror(own, one, false));
  }

  void book(const Book& book) {
    const auto tables = stored_tables();
    const auto table = std::find_if(tables.begin(), tables.end(),
                                    [&](const auto& t) { return std::string(t.name) == book.table; });
    const std::string ask =
        std::string("SELECT ") + table->columns + " FROM " + table->name + " ORDER BY 1, 2";
    const std::string by = table->count < 2 ? ask.substr(0, ask.size() - 3) : ask;
    const auto rows_of = [&](Store& store) {
      return take(store.connection().transact(Access::read, [&] { return store.connection().ask(by); }),
                  wrong);
    };
    const Rows there = rows_of(shared), here = rows_of(own);
    if (wrong || there == here) return;
    std::string marks = "?";
    for (int i = 1; i < table->count; ++i) marks += ", ?";
    const std::string put = std::string("INSERT OR ") + (book.stays ? "IGNORE" : "REPLACE") + " INTO " +
                            table->name + " (" + table->columns + ") VALUES (" + marks + ")";
    note(own.connection().transact(Access::write, [&] {
      for (const QVariantList& row : there) own.connection().tell(put, row);
      return true;
    }));
  }

  // Cards joined or taken apart there are so here too, as far as they are known here.
  void joins() {
    const auto there = take(joined_cards(shared), wrong);
    const auto here = take(joined_cards(own), wrong);
    if (wrong || there == here) return;
    const auto has = [](const std::vector<JoinedCard>& all, const JoinedCard& one) {
      return std::find(all.begin(), all.end(), one) != all.end();
    };
    for (const JoinedCard& one : here)
      if (!has(there, one) && take_apart(own, one.id)) changed = true;
    std::vector<JoinedCard> rest;
    std::copy_if(there.begin(), there.end(), std::back_inserter(rest),
                 [&](const JoinedCard& one) { return !has(here, one); });
    // What goes into a card goes before that card goes into another.
    while (!rest.empty() && !wrong) {
      const auto next = std::find_if(rest.begin(), rest.end(), [&](const JoinedCard& one) {
        return std::none_of(rest.begin(), rest.end(),
                            [&](const JoinedCard& other) { return other.into == one.id; });
      });
      if (next == rest.end()) return;  // they go round: a damaged store
      join(*next);
      rest.erase(next);
    }
  }

  void join(const JoinedCard& one) {
    const auto gone = take(own.customer(one.id), wrong);
    if (wrong || !gone || gone->id != one.id) return;
    const auto kept = take(own.customer(one.into), wrong);
    const auto card = kept ? std::optional<Customer>() : take(shared.customer(one.into), wrong);
    if (wrong || (card && !own.save_customer(*card))) return;
    if (join_customers(own, one.into, one.id)) changed = true;
  }

  void erasures() {
    const auto there = take(shared.erased_customers(), wrong);
    const auto here = take(own.erased_customers(), wrong);
    if (wrong) return;
    for (const std::string& id : there) {
      if (std::find(here.begin(), here.end(), id) != here.end()) continue;
      const auto known = take(own.customer(id), wrong);
      if (known && own.erase_customer(id, "erased in the shared store")) changed = true;
    }
  }

  Stored<bool> result() const {
    if (wrong) return tl::unexpected(*wrong);
    return changed;
  }
};

}  // namespace

Stored<bool> pull_bottles(Store& shared, Store& own) {
  Pull pull{shared, own};
  pull.visits();
  if (!pull.wrong) pull.overnights();
  if (!pull.wrong) pull.orphans();
  return pull.result();
}

Stored<bool> pull_books(Store& shared, Store& own) {
  Pull pull{shared, own};
  for (const Book& book : kBooks)
    if (!pull.wrong) pull.book(book);
  if (!pull.wrong) pull.joins();
  if (!pull.wrong) pull.erasures();
  return pull.result();
}

}  // namespace brimline
