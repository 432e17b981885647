// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/long/four_counters.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <map>
#include <mutex>
#include <random>
#include <set>
#include <thread>

#include "station/journal/courier.h"
#include "station/journal/journaled_store.h"
#include "tests/support/cut_proxy.h"
#include "tests/support/postgresql_server.h"

namespace brimline::tests {

namespace {

using Clock = std::chrono::steady_clock;

const Instant kNoon = Instant::parse("2026-06-20T12:00:00-05:00").value();
constexpr int kCommonEvery = 50;
constexpr int kCards = 20;                   // customers that every counter edits
constexpr const char* kCommon = "V-common";  // the bottle that every counter reads

std::string numbered(const std::string& name, int counter, int number) {
  return name + "-" + std::to_string(counter) + "-" + std::to_string(number);
}

Reading reading_of(int counter, int number, int place) {
  Reading out;
  out.analyte = place == 0 ? "ph" : place == 1 ? "total_alkalinity" : "free_chlorine";
  out.value = place == 0 ? 7.0 + 0.0001 * number : 50 + counter + 0.001 * number;
  out.method = Method::photometer;
  return out;
}

Visit begun(int counter, int number) {
  Visit visit;
  visit.id = numbered("V", counter, number);
  visit.bottle.code = numbered("B", counter, number);
  visit.bottle.taken_at = Instant{kNoon.utc + std::chrono::seconds(60 * number), kNoon.offset};
  Customer customer;
  customer.id = numbered("C", counter, number % 500);
  customer.name = "Invented " + std::to_string(number % 500);
  visit.customer = customer;
  visit.vessel.id = numbered("W", counter, number % 500);
  return visit;
}

Plan plan_of(int number) {
  Plan plan;
  plan.home_plan = false;
  plan.why_not = "invented " + std::to_string(number);
  return plan;
}

Visit finished(int counter, int number) {
  Visit visit = begun(counter, number);
  visit.vessel.turnover_h = 6 + number % 5;
  for (int place = 0; place < 3; ++place) visit.bottle.readings.push_back(reading_of(counter, number, place));
  visit.plan_as_told = plan_of(number);
  return visit;
}

// What one counter writes into the common bottle: told from all others by its value.
Reading common_reading(int counter, int number) {
  Reading out;
  out.analyte = "turbidity";
  out.value = 1 + number + 0.1 * counter;
  return out;
}

// Each counter has a field of its own on every card.
void edit(Customer& card, int counter, int round) {
  const std::string text = "edit " + std::to_string(round);
  std::optional<std::string>* fields[] = {&card.name, &card.phone, &card.street, &card.email};
  *fields[counter % 4] = text;
}

struct Counter {
  int number;
  std::string own_url;
  std::vector<double> took;
  std::int64_t written = 0, left = 0;
  std::map<int, int> last_edit;  // card -> round

  void work(const std::string& shared, int visits, unsigned seed) {
    Store own = Store::open(own_url).value();
    own.sign_as([this] { return Signature{"counter " + std::to_string(number), kNoon}; });
    Courier courier({shared, own_url, nullptr, nullptr, std::chrono::milliseconds(500)});
    int ids = 0;
    JournaledStore store(
        own, [&] { return "work-" + std::to_string(number) + "-" + std::to_string(ids++); },
        [&] { courier.wake(); });
    std::mt19937 random(seed + static_cast<unsigned>(number));
    const auto write = [&](WaitingWork work) {
      const auto before = Clock::now();
      if (!store.write(std::move(work))) return;
      took.push_back(std::chrono::duration<double, std::milli>(Clock::now() - before).count());
      ++written;
    };
    // What the shop knew this morning.
    for (int card = 0; card < kCards; ++card) (void)own.save_customer(card_of(card));
    Visit common;
    common.id = kCommon;
    common.bottle.code = "B-common";
    (void)own.begin_visit(common);
    for (int i = 0; i < visits; ++i) {
      const Visit visit = begun(number, i), told = finished(number, i);
      write(work::begin(visit));
      Visit known = visit;
      known.vessel = told.vessel;
      write(work::update(visit, known));
      for (const Reading& reading : told.bottle.readings) write(work::reading(visit.id, reading));
      write(work::tell(visit.id, *told.plan_as_told));
      if (i % kCommonEvery == 0) write(work::reading(kCommon, common_reading(number, i)));
      if (i % 5 == 0) {
        const int card = static_cast<int>(random() % kCards);
        const Customer seen = own.customer(card_of(card).id).value().value();
        Customer now = seen;
        edit(now, number, i);
        write(work::customer(seen, now));
        last_edit[card] = i;
      }
    }
    for (int tries = 0; tries < 5400 && !courier.carried_within(std::chrono::seconds(1)); ++tries) {
    }
    left = static_cast<std::int64_t>(waiting_work(own, 1000000)->size());
  }

  static Customer card_of(int number) {
    Customer out;
    out.id = "card-" + std::to_string(number);
    out.name = "Card " + std::to_string(number);
    return out;
  }
};

void compare(CountersTally& tally, Store& shared, const std::vector<Counter>& counters) {
  tally.visits = shared.counts()->at("visits");
  for (const Counter& counter : counters)
    for (int i = 0; i < tally.visits_each; ++i) {
      const auto there = shared.visit(numbered("V", counter.number, i));
      if (!there || *there != finished(counter.number, i)) ++tally.missing;
    }
  std::map<double, int> seen;
  const auto common = shared.visit(kCommon).value().value();
  for (const Reading& reading : common.bottle.readings) ++seen[reading.value];
  for (const Counter& counter : counters) {
    for (int i = 0; i < tally.visits_each; i += kCommonEvery) {
      const int count = seen[common_reading(counter.number, i).value];
      tally.readings_lost += count == 0 ? 1 : 0;
      tally.readings_doubled += count > 1 ? 1 : 0;
    }
    for (const auto& [card, round] : counter.last_edit) {
      const Customer there = shared.customer(Counter::card_of(card).id).value().value();
      Customer wanted = there;
      edit(wanted, counter.number, round);
      tally.edits_lost += there == wanted ? 0 : 1;
    }
  }
  tally.faults = static_cast<int>(shared.faults()->size());
}

}  // namespace

CountersTally work_at_counters(const std::filesystem::path& folder, int counters, int visits_each,
                               unsigned seed) {
  CountersTally tally{counters, visits_each};
  std::filesystem::create_directories(folder);
  brimline::testing::PostgresqlServer server(folder);
  auto base = Connection::open(server.url("postgres"), Opening::existing).value();
  base->run("CREATE DATABASE shop");
  Store shared = Store::open(server.url("shop")).value();
  for (int card = 0; card < kCards; ++card) (void)shared.save_customer(Counter::card_of(card));
  Visit common;
  common.id = kCommon;
  common.bottle.code = "B-common";
  (void)shared.begin_visit(common);

  brimline::testing::CutProxy wire(server.port());
  std::vector<Counter> all;
  all.reserve(static_cast<size_t>(counters));
  for (int i = 0; i < counters; ++i)
    all.push_back({i, "sqlite:" + (folder / ("counter" + std::to_string(i) + ".db")).string(), {}, 0, 0, {}});
  const auto begun_at = Clock::now();
  std::vector<std::thread> threads;
  threads.reserve(all.size());
  for (Counter& counter : all)
    threads.emplace_back([&] { counter.work(server.url("shop", wire.port()), visits_each, seed); });
  std::atomic<bool> working{true};
  std::thread cutting([&] {
    std::mt19937 random(seed);
    while (working) {
      std::this_thread::sleep_for(std::chrono::milliseconds(300 + random() % 3000));
      random() % 4 == 0 ? wire.silence() : wire.cut();
      std::this_thread::sleep_for(std::chrono::milliseconds(100 + random() % 1500));
      wire.mend();
    }
  });
  for (std::thread& thread : threads) thread.join();
  working = false;
  cutting.join();
  tally.seconds = std::chrono::duration<double>(Clock::now() - begun_at).count();
  tally.cuts = wire.cuts();
  std::vector<double> took;
  for (const Counter& counter : all) {
    took.insert(took.end(), counter.took.begin(), counter.took.end());
    tally.written += counter.written;
    tally.left += counter.left;
  }
  std::sort(took.begin(), took.end());
  if (!took.empty()) {
    tally.slowest_ms = took.back();
    tally.usual_ms = took[took.size() / 2];
  }
  compare(tally, shared, all);
  return tally;
}

std::string table_of(const CountersTally& t) {
  std::string out;
  const auto line = [&](const char* name, const std::string& value) {
    std::string text(name);
    text.resize(48, ' ');
    out += text + value + "\n";
  };
  const auto number = [](auto value) { return std::to_string(value); };
  line("counters, visits each", number(t.counters) + ", " + number(t.visits_each));
  line("cuts and silences of the wire", number(t.cuts));
  line("pieces of work answered for", number(t.written));
  line("visits in the shared store", number(t.visits));
  line("visits missing or otherwise than written", number(t.missing));
  line("readings of the common bottle lost, doubled",
       number(t.readings_lost) + ", " + number(t.readings_doubled));
  line("edits of common cards lost", number(t.edits_lost));
  line("work left in a journal", number(t.left));
  line("faults of the shared store's own checks", number(t.faults));
  char text[80];
  std::snprintf(text, sizeof text, "%.1f ms, %.1f ms", t.usual_ms, t.slowest_ms);
  line("a piece of work at the counter: median, longest", text);
  std::snprintf(text, sizeof text, "%.0f", t.seconds);
  line("seconds", text);
  return out;
}

}  // namespace brimline::tests
