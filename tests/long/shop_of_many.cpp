// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/long/shop_of_many.h"

#include <sqlite3.h>

#include <cstdio>
#include <cstdlib>
#include <set>

#include <nlohmann/json.hpp>

#include "station/store/fold.h"
#include "station/visit_json.h"
#include "tests/station/whole_visit.h"

namespace brimline::tests {

namespace {

constexpr std::int64_t kVisitsEach = 5;
constexpr int kReadingsEach = 10;
constexpr std::int64_t kFirstVisit = 1600000000, kMonth = 2592000;

const char* const kEnds[] = {"Street", "Lane", "Avenue", "Road", "Court", "Drive"};

std::uint64_t mixed(std::uint64_t number, std::uint64_t salt) {  // splitmix64 (Steele, 2014)
  std::uint64_t z = number * 0x9e3779b97f4a7c15u + salt * 0xbf58476d1ce4e5b9u;
  z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
  z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
  return z ^ (z >> 31);
}

// A made-up word, the same for the same number.
std::string word_of(std::uint64_t number, int syllables) {
  static const char* const starts[] = {"b", "d", "f", "g", "h", "k", "l", "m", "n", "p", "r", "s", "t", "v"};
  static const char* const middles[] = {"a", "e", "i", "o", "u", "ar", "en", "il", "on", "ur"};
  std::string out;
  for (int i = 0; i < syllables; ++i, number /= 140) {
    out += starts[number % 14];
    out += middles[number / 14 % 10];
  }
  out[0] = static_cast<char>(out[0] - 'a' + 'A');
  return out;
}

// Few numbers are common, many rare: about one in ten is below `many`/100.
std::uint64_t skewed(std::uint64_t random, std::uint64_t many) {
  const double share = static_cast<double>(random % 1000003) / 1000003;
  return static_cast<std::uint64_t>(share * share * static_cast<double>(many));
}

std::string replaced(std::string text, const std::string& what, const std::string& with) {
  for (size_t at = 0; (at = text.find(what, at)) != std::string::npos; at += with.size())
    text.replace(at, what.size(), with);
  return text;
}

}  // namespace

Customer shop_customer(std::int64_t number) {
  const auto n = static_cast<std::uint64_t>(number);
  Customer out;
  out.id = "C-" + std::to_string(number);
  out.name =
      word_of(skewed(mixed(n, 1), 400) * 37 + 5, 2) + " " + word_of(skewed(mixed(n, 2), 20000) * 41 + 9, 3);
  char phone[16];
  std::snprintf(phone, sizeof phone, "555-%07llu", static_cast<unsigned long long>(mixed(n, 3) % 10000000));
  out.phone = phone;
  out.street = std::to_string(1 + mixed(n, 4) % 200) + " " + word_of(skewed(mixed(n, 5), 1500) * 43 + 3, 2) +
               " " + kEnds[mixed(n, 6) % std::size(kEnds)];
  out.units = Units::us;
  return out;
}

Visit shop_visit(std::int64_t number) {
  static const Visit whole = read_visit(kWholeVisit, "whole.json").value();
  const std::int64_t owner = number / kVisitsEach;
  Visit out;
  out.id = "M-" + std::to_string(number);
  out.bottle.code = "B-" + std::to_string(number);
  out.bottle.taken_at = whole.bottle.taken_at;
  out.bottle.taken_at->utc = std::remove_cvref_t<decltype(out.bottle.taken_at->utc)>(
      std::chrono::seconds(kFirstVisit + (number % kVisitsEach) * kMonth + owner % 86400));
  out.vessel = whole.vessel;
  out.vessel.id = "W-" + std::to_string(owner);
  out.customer = shop_customer(owner);
  for (int i = 0; i < kReadingsEach; ++i) {
    Reading reading = whole.bottle.readings[0];
    reading.value = 7 + 0.01 * static_cast<double>(mixed(static_cast<std::uint64_t>(number), 7 + i) % 100);
    out.bottle.readings.push_back(reading);
  }
  if (number % kVisitsEach == 0) out.plan_as_told = whole.plan_as_told;
  return out;
}

void make_shop(std::int64_t visits, const TableSink& sink) {
  const std::int64_t customers = (visits + kVisitsEach - 1) / kVisitsEach;
  for (std::int64_t i = 0; i < customers; ++i) {
    const Customer one = shop_customer(i);
    sink("customers", "id, name, phone, street, units", {one.id, *one.name, *one.phone, *one.street, "us"});
  }
  for (std::int64_t i = 0; i < customers; ++i) {
    const Customer one = shop_customer(i);
    std::set<std::pair<std::string, std::string>> words;
    for (const auto& word : folded_words(*one.name)) words.emplace(word, "0");
    for (const auto& word : folded_words(*one.street)) words.emplace(word, "1");
    for (const auto& word : folded_number(*one.phone)) words.emplace(word, "1");
    for (const auto& [word, place] : words)
      sink("customer_words", "word, place, customer_id", {word, place, one.id});
  }
  // All that their visits say of them, as keeping those has left it.
  const nlohmann::ordered_json vessel = vessel_to_json(shop_visit(0).vessel);
  std::string columns = "id, customer_id";
  TableRow told;
  for (const auto& [key, value] : vessel.items()) {
    if (key == "id") continue;
    columns.append(", ").append(key);
    told.push_back(value.is_string()    ? value.get<std::string>()
                   : value.is_boolean() ? std::to_string(int{value.get<bool>()})
                                        : value.dump());
  }
  for (std::int64_t i = 0; i < customers; ++i) {
    TableRow row{"W-" + std::to_string(i), "C-" + std::to_string(i)};
    row.insert(row.end(), told.begin(), told.end());
    sink("vessels", columns.c_str(), row);
  }
  // One visit's circumstances with its own words put into places of their own.
  nlohmann::ordered_json form = visit_to_json(shop_visit(0));
  form.erase("readings");
  form.erase("plan_as_told");
  form["id"] = "@id@";
  form["bottle"] = "@bottle@";
  form["taken_at"] = "@at@";
  form["vessel"]["id"] = "@vessel@";
  form["customer"] = "@customer@";
  const std::string pattern = form.dump();
  for (std::int64_t i = 0; i < visits; ++i) {
    const Visit one = shop_visit(i);
    const auto at = one.bottle.taken_at->utc.time_since_epoch().count();
    std::string text = replaced(pattern, "@id@", one.id);
    text = replaced(text, "@bottle@", one.bottle.code);
    text = replaced(text, "@at@", one.bottle.taken_at->text());
    text = replaced(text, "@vessel@", one.vessel.id);
    text = replaced(text, "\"@customer@\"", customer_to_json(*one.customer).dump());
    sink("visits", "id, revision, finished, at_s, bottle, customer_id, vessel_id, circumstances",
         {one.id, "1", "1", std::to_string(at), one.bottle.code, one.customer->id, one.vessel.id, text});
  }
  for (std::int64_t i = 0; i < visits; ++i) {
    const std::string id = "M-" + std::to_string(i);
    for (int k = 0; k < kReadingsEach; ++k)
      sink("readings", "visit_id, position, analyte, value, method",
           {id, std::to_string(k), "ph",
            "7." + std::to_string(100 + mixed(static_cast<std::uint64_t>(i), 7 + k) % 100).substr(1),
            "photometer"});
  }
  const std::string plan =
      visit_to_json(read_visit(kWholeVisit, "whole.json").value())["plan_as_told"].dump();
  for (std::int64_t i = 0; i < visits; i += kVisitsEach)
    sink("plans", "visit_id, plan", {"M-" + std::to_string(i), plan});
}

std::string shop_query(std::mt19937& random, std::int64_t customers) {
  const Customer one = shop_customer(static_cast<std::int64_t>(random() % static_cast<unsigned>(customers)));
  const size_t space = one.name->find(' '), first = one.street->find(' ') + 1;
  const std::string last = one.name->substr(space + 1);
  std::string street = one.street->substr(first);
  switch (random() % 10) {
    case 0:
      return *one.name;
    case 1:
      return one.name->substr(0, 1 + random() % 3);
    case 2:
      return last.substr(0, 2 + random() % 3);
    case 3:
      return one.phone->substr(4);
    case 4:
      return one.phone->substr(0, 3 + random() % 5);
    case 5:
      return last.substr(0, 3) + " " + street.substr(0, 3);
    case 6:
      return street;
    case 7:  // parts of words
      return last.substr(1, 3 + random() % 3);
    case 8:
      return last.substr(2) + " " + street.substr(1, 3);
    default:  // nothing but common words
      return std::string(kEnds[random() % 6]) + " " + one.name->substr(0, 1) + " " + last.substr(0, 1);
  }
}

void fill_sqlite(const std::string& file, std::int64_t visits) {
  if (!Store::open("sqlite:" + file)) std::abort();  // makes the schema
  sqlite3* db = nullptr;
  sqlite3_stmt* put = nullptr;
  const auto must = [](int code) {
    if (code != SQLITE_OK && code != SQLITE_DONE) std::abort();
  };
  must(sqlite3_open(file.c_str(), &db));
  must(sqlite3_exec(db, "PRAGMA synchronous = OFF; PRAGMA cache_size = -500000; BEGIN", nullptr, nullptr,
                    nullptr));
  std::string table;
  make_shop(visits, [&](const char* name, const char* columns, const TableRow& row) {
    if (table != name) {
      table = name;
      sqlite3_finalize(put);
      std::string sql = "INSERT INTO " + table + " (" + columns + ") VALUES (?";
      for (size_t i = 1; i < row.size(); ++i) sql += ", ?";
      must(sqlite3_prepare_v2(db, (sql + ")").c_str(), -1, &put, nullptr));
    }
    for (size_t i = 0; i < row.size(); ++i)
      must(sqlite3_bind_text(put, static_cast<int>(i + 1), row[i].c_str(), -1, SQLITE_TRANSIENT));
    must(sqlite3_step(put));
    must(sqlite3_reset(put));
  });
  sqlite3_finalize(put);
  must(sqlite3_exec(db, "COMMIT; PRAGMA wal_checkpoint(TRUNCATE)", nullptr, nullptr, nullptr));
  must(sqlite3_close(db));
}

void fill_postgresql(const std::string& url, std::int64_t visits) {
  if (!Store::open(url)) std::abort();
  std::string table;
  std::FILE* copy = nullptr;
  const auto close = [&] {
    // NOLINTNEXTLINE(cert-err33-c): aborts on any fault
    if (copy != nullptr && ::pclose(copy) != 0) std::abort();
  };
  make_shop(visits, [&](const char* name, const char* columns, const TableRow& row) {
    if (table != name) {
      close();
      table = name;
      const std::string command =
          "psql -q '" + url + "' -c \"\\copy " + table + " (" + columns + ") from stdin with (format csv)\"";
      // NOLINTNEXTLINE(cert-env33-c): the server's own program, named by the test
      copy = ::popen(command.c_str(), "w");
      if (copy == nullptr) std::abort();
    }
    std::string line;
    for (const std::string& text : row)
      line += (line.empty() ? "\"" : ",\"") + replaced(text, "\"", "\"\"") + "\"";
    line += "\n";
    if (std::fwrite(line.data(), 1, line.size(), copy) != line.size()) std::abort();
  });
  close();
  auto store = Store::open(url);
  // As the server does by itself in time, and would beside what is measured.
  if (store)
    for (const char* rest : {"VACUUM ANALYZE", "CHECKPOINT"}) store->connection().run(rest);
}

}  // namespace brimline::tests
