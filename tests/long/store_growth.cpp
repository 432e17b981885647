// SPDX-License-Identifier: GPL-3.0-or-later
// The store as it grows to a million visits: prints the table that is kept in store_growth.txt. One
// argument: the greatest number of visits, 1000000 if absent.
#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <iostream>

#include <QCoreApplication>
#include <nlohmann/json.hpp>

#include "station/reminder/due.h"
#include "station/visit_json.h"
#include "tests/long/shop_of_many.h"
#include "tests/support/postgresql_server.h"
#include "tests/support/run_program.h"

namespace brimline::tests {
namespace {

using Clock = std::chrono::steady_clock;

double ms_since(Clock::time_point begun) {
  return std::chrono::duration<double, std::milli>(Clock::now() - begun).count();
}

double share(std::vector<double> all, double part) {
  std::sort(all.begin(), all.end());
  return all.empty() ? 0 : all[static_cast<size_t>(part * static_cast<double>(all.size() - 1))];
}

template <class Work>
std::vector<double> times(int count, Work work) {
  std::vector<double> out;
  for (int i = 0; i < count; ++i) {
    const auto begun = Clock::now();
    work(i);
    out.push_back(ms_since(begun));
  }
  return out;
}

// The rows that keeping a visit adds, by SQLite's own C calls: one transaction, as durable.
class RawSaver {
 public:
  explicit RawSaver(const std::string& file) {
    sqlite3_open(file.c_str(), &db_);
    sqlite3_busy_timeout(db_, 10000);
    run("PRAGMA journal_mode = WAL");
    run("PRAGMA synchronous = FULL");
    run("PRAGMA foreign_keys = ON");
    customer_ = prepared(
        "INSERT INTO customers (id, name, phone, street, units) VALUES (?, ?, ?, ?, ?) ON CONFLICT (id) "
        "DO UPDATE SET name = excluded.name");
    vessel_ = prepared(
        "INSERT INTO vessels (id, customer_id, kind, volume_m3) VALUES (?, ?, ?, ?) ON CONFLICT (id) DO "
        "UPDATE SET kind = excluded.kind");
    visit_ = prepared(
        "INSERT INTO visits (id, revision, finished, at_s, bottle, customer_id, vessel_id, circumstances, "
        "due_s) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)");
    reading_ = prepared(
        "INSERT INTO readings (visit_id, position, analyte, value, method, sd, instrument, lot) VALUES "
        "(?, ?, ?, ?, ?, ?, ?, ?)");
    plan_ = prepared("INSERT INTO plans (visit_id, plan) VALUES (?, ?)");
  }
  ~RawSaver() {
    for (sqlite3_stmt* one : {customer_, vessel_, visit_, reading_, plan_}) sqlite3_finalize(one);
    sqlite3_close(db_);
  }
  RawSaver(const RawSaver&) = delete;
  RawSaver& operator=(const RawSaver&) = delete;

  void save(const Visit& visit, const std::string& circumstances, const std::string& plan) {
    const Customer& owner = *visit.customer;
    run("BEGIN IMMEDIATE");
    put(customer_, {owner.id, *owner.name, *owner.phone, *owner.street, "us"});
    put(vessel_, {visit.vessel.id, owner.id, "pool", "60"});
    put(visit_, {visit.id, "1", "1", std::to_string(visit.bottle.taken_at->utc.time_since_epoch().count()),
                 visit.bottle.code, owner.id, visit.vessel.id, circumstances,
                 std::to_string(due_of(visit)->utc.time_since_epoch().count())});
    for (size_t i = 0; i < visit.bottle.readings.size(); ++i) {
      const Reading& one = visit.bottle.readings[i];
      put(reading_, {visit.id, std::to_string(i), one.analyte, std::to_string(one.value), "photometer",
                     std::to_string(one.sd.value_or(0)), one.instrument.value_or(""), one.lot.value_or("")});
    }
    put(plan_, {visit.id, plan});
    run("COMMIT");
  }

 private:
  sqlite3_stmt* prepared(const char* sql) {
    sqlite3_stmt* out = nullptr;
    if (sqlite3_prepare_v2(db_, sql, -1, &out, nullptr) != SQLITE_OK) std::abort();
    return out;
  }
  void run(const char* sql) {
    if (sqlite3_exec(db_, sql, nullptr, nullptr, nullptr) != SQLITE_OK) std::abort();
  }
  static void put(sqlite3_stmt* statement, const TableRow& row) {
    for (size_t i = 0; i < row.size(); ++i)
      sqlite3_bind_text(statement, static_cast<int>(i + 1), row[i].c_str(), -1, SQLITE_TRANSIENT);
    if (sqlite3_step(statement) != SQLITE_DONE) std::abort();
    sqlite3_reset(statement);
  }
  sqlite3* db_ = nullptr;
  sqlite3_stmt *customer_ = nullptr, *vessel_ = nullptr, *visit_ = nullptr, *reading_ = nullptr,
               *plan_ = nullptr;
};

// A new visit of a customer who is known, as a shop's next one is.
Visit next_visit(std::int64_t visits, int i, const std::string& kind) {
  Visit out = shop_visit(static_cast<std::int64_t>(i) * 7919 % visits / 5 * 5);
  out.id = kind + std::to_string(i);
  out.bottle.taken_at->utc += std::chrono::hours(24 * 400);
  return out;
}

struct Saving {
  double ours = 0, raw = 0;  // ms, medians
};

// Ours and the raw calls take turns, some visits at a time, so that a slow moment of the machine is both's
// and yet neither finds what it remembers of the file undone by the other at every visit.
Saving measure_saving(Store& store, const std::string& file, std::int64_t visits) {
  constexpr int kTurns = 12, kInATurn = 25;
  std::vector<double> ours, raw;
  std::optional<RawSaver> saver;
  if (!file.empty()) saver.emplace(file);
  for (int turn = 0; turn < kTurns; ++turn) {
    for (int i = turn * kInATurn; i < (turn + 1) * kInATurn; ++i) {
      const Visit one = next_visit(visits, i, "N-");
      const auto begun = Clock::now();
      if (!store.keep(one)) std::abort();
      ours.push_back(ms_since(begun));
    }
    for (int i = turn * kInATurn; saver && i < (turn + 1) * kInATurn; ++i) {
      const Visit other = next_visit(visits, i + kTurns * kInATurn, "R-");
      nlohmann::ordered_json form = visit_to_json(other);
      const std::string plan = form["plan_as_told"].dump();
      form.erase("readings");
      form.erase("plan_as_told");
      const std::string circumstances = form.dump();
      const auto begun = Clock::now();
      saver->save(other, circumstances, plan);
      raw.push_back(ms_since(begun));
    }
  }
  return {share(ours, 0.5), share(raw, 0.5)};
}

void measure(const std::string& engine, const std::string& url, const std::string& file, std::int64_t visits,
             double made_s) {
  const std::int64_t customers = visits / 5;
  const auto opening = times(5, [&](int) {
    auto store = Store::open(url);
    if (!store || !store->open_bottles()) std::abort();
  });
  Store store = Store::open(url).value();
  std::mt19937 random(5);
  std::string slowest;
  double slowest_ms = 0;
  std::vector<double> search;
  for (int i = 0; i < 2000; ++i) {
    const std::string query = shop_query(random, customers);
    const auto begun = Clock::now();
    if (!store.customers_matching(query)) std::abort();
    const double ms = ms_since(begun);
    search.push_back(ms);
    if (ms > slowest_ms) slowest_ms = ms, slowest = query;
  }
  const auto history = times(1000, [&](int) {
    const std::string customer = "C-" + std::to_string(random() % static_cast<unsigned>(customers));
    const auto vessels = store.vessels_of(customer);
    for (const Vessel& vessel : *vessels)
      if (store.visits_of_vessel(vessel.id)->size() < 5) std::abort();
  });
  const Saving saving = measure_saving(store, file, visits);
  std::printf("%-11s %8lld %8.1f %7.2f %7.2f %7.2f %8.2f %8.2f %8.2f %6.2f %7.2f  %s\n", engine.c_str(),
              static_cast<long long>(visits), made_s, share(search, 0.5), share(search, 0.99), slowest_ms,
              share(history, 0.99), saving.ours, saving.raw, saving.raw > 0 ? saving.ours / saving.raw : 0,
              share(opening, 0.5), slowest.c_str());
  std::fflush(stdout);
}

void grow(std::int64_t most) {
  const brimline::testing::ScratchFolder folder;
  std::printf("%-11s %8s %8s %7s %7s %7s %8s %8s %8s %6s %7s  %s\n", "engine", "visits", "made s", "find 50",
              "99 %", "most", "hist 99", "save", "raw", "ratio", "open", "slowest query");
  for (std::int64_t visits = 10000; visits <= most; visits *= 10) {
    const std::string file = (folder / ("shop" + std::to_string(visits) + ".db")).string();
    const auto begun = Clock::now();
    fill_sqlite(file, visits);
    measure("sqlite", "sqlite:" + file, file, visits, ms_since(begun) / 1000);
    std::filesystem::remove(file);
  }
  if (!brimline::testing::PostgresqlServer::installed()) return;
  std::filesystem::permissions(folder / "", std::filesystem::perms::all);
  const auto place = folder / "of_server";
  std::filesystem::create_directory(place);
  const brimline::testing::PostgresqlServer server(place);
  for (std::int64_t visits = 10000; visits <= most; visits *= 10) {
    const std::string name = "shop" + std::to_string(visits);
    if (!server.make(name)) std::abort();
    const auto begun = Clock::now();
    fill_postgresql(server.url(name), visits);
    measure("postgresql", server.url(name), "", visits, ms_since(begun) / 1000);
  }
}

}  // namespace
}  // namespace brimline::tests

int main(int count, char** words) {
  const QCoreApplication application(count, words);
  brimline::tests::grow(count > 1 ? std::strtoll(words[1], nullptr, 10) : 1000000);
}
