// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/long/store_work.h"

#include <unistd.h>

#include <functional>
#include <random>
#include <sstream>
#include <vector>

#include "station/visit_json.h"
#include "tests/station/whole_visit.h"

namespace brimline::tests {

namespace {

constexpr int kMostReadings = 12;

Visit empty_visit(const std::string& id, unsigned customer) {
  static const Visit whole = read_visit(kWholeVisit, "whole.json").value();
  Visit visit = whole;
  visit.id = id;
  visit.customer->id = "C-" + std::to_string(customer);
  visit.vessel.id = "W-" + std::to_string(customer);
  visit.bottle.readings.clear();
  visit.plan_as_told.reset();
  return visit;
}

struct Worker {
  Store& store;
  std::mt19937 random;
  std::string round;
  int answers;
  int number = 0, refusals = 0;
  std::map<std::string, Answered> open = {};
  std::vector<std::string> finished = {};

  unsigned below(unsigned n) { return static_cast<unsigned>(random() % n); }

  void say(const std::string& line) const {
    if (::write(answers, line.data(), line.size()) < 0) ::_exit(1);  // nobody listens any more
  }

  template <class Result>
  bool done(const Result& result, const std::string& id, const Answered& state) {
    if (result) {
      std::ostringstream line;
      line << id << " " << state.readings << " " << state.finished << " " << state.revision << "\n";
      say(line.str());
      return true;
    }
    ++refusals;
    say("! " + result.error().text + "\n");
    return false;
  }

  void begin() {
    const std::string id = round + "-" + std::to_string(number++);
    if (done(store.begin_visit(empty_visit(id, below(50))), id, {})) open[id] = {};
  }
  void read(const std::string& id, Answered& state) {
    if (state.readings >= kMostReadings) return;
    Answered next = state;
    ++next.readings;
    if (done(store.add_reading(id, worked_reading(id, state.readings, 0)), id, next)) state = next;
  }
  void finish(const std::string& id) {
    Answered next = open[id];
    next.finished = true;
    if (!done(store.finish(id), id, next)) return;
    open.erase(id);
    finished.push_back(id);
  }
  void keep_whole(const std::string& id, int revision) {
    Visit visit = empty_visit(id, below(50));
    const int readings = 1 + static_cast<int>(below(kMostReadings));
    for (int i = 0; i < readings; ++i) visit.bottle.readings.push_back(worked_reading(id, i, revision));
    done(store.keep(visit), id, {readings, true, revision});
  }
  void tell(const std::string& id, const Answered& state) {
    static const Visit whole = read_visit(kWholeVisit, "whole.json").value();
    done(store.tell_plan(id, *whole.plan_as_told), id, state);
  }
  void step() {
    const unsigned what = below(20);
    if (open.empty() || what < 3) return begin();
    auto some = open.begin();
    std::advance(some, below(static_cast<unsigned>(open.size())));
    if (what < 14) return read(some->first, some->second);
    if (what < 15) return tell(some->first, some->second);
    if (what < 17) return finish(some->first);
    if (what < 19) return keep_whole(round + "-k" + std::to_string(number++), 1);
    if (!finished.empty()) keep_whole(finished[below(static_cast<unsigned>(finished.size()))], 1 + number++);
  }
};

}  // namespace

Reading worked_reading(const std::string& visit, int position, int revision) {
  static const Visit whole = read_visit(kWholeVisit, "whole.json").value();
  Reading reading = whole.bottle.readings[0];
  const size_t mixed =
      std::hash<std::string>{}(visit + "/" + std::to_string(position) + "/" + std::to_string(revision));
  reading.value = 6.5 + static_cast<double>(mixed % 2000) / 1000;
  return reading;
}

void work_at_random(const std::string& url, unsigned seed, const std::string& round, int answers) {
  auto store = Store::open(url);
  if (!store) {
    const std::string why = "! " + store.error().text + "\n";
    if (::write(answers, why.data(), why.size()) < 0) return;
    return;
  }
  Worker worker{*store, std::mt19937(seed), round, answers};
  while (worker.refusals < 3) worker.step();
}

std::string take_answer(const std::string& line, Ledger& ledger) {
  if (line.starts_with("! ")) return line.substr(2);
  std::istringstream words(line);
  std::string id;
  Answered state;
  words >> id >> state.readings >> state.finished >> state.revision;
  ledger[id] = state;
  return "";
}

Losses losses_of(Store& store, const Ledger& ledger) {
  Losses out;
  for (const auto& [id, answered] : ledger) {
    out.confirmed += answered.readings;
    const auto visit = store.visit(id);
    if (!visit || !*visit) {
      out.lost += answered.readings + 1;
      continue;
    }
    const auto& readings = (*visit)->bottle.readings;
    // The change under way when the end came may be in as well: a later revision is whole, and what
    // it replaced is in the audit trail.
    const auto earlier = store.earlier_revisions(id);
    const auto holds = [&](const std::vector<Reading>& all) {
      if (static_cast<int>(all.size()) < answered.readings) return false;
      for (int i = 0; i < answered.readings; ++i)
        if (all[static_cast<size_t>(i)] != worked_reading(id, i, answered.revision)) return false;
      return true;
    };
    bool held = holds(readings);
    if (earlier)
      for (const Visit& before : *earlier) held = held || holds(before.bottle.readings);
    if (!held) out.lost += answered.readings;
    if (answered.finished) {
      const Rows rows =
          store.connection().ask("SELECT finished FROM visits WHERE id = ?", {Connection::value(id)});
      if (rows.empty() || rows[0][0].toInt() != 1) ++out.lost;
    }
  }
  return out;
}

}  // namespace brimline::tests
