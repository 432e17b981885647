// SPDX-License-Identifier: GPL-3.0-or-later
// Customers by what is typed: each word of the query is the beginning of a word of theirs.
#include <algorithm>
#include <bit>
#include <set>

#include <nlohmann/json.hpp>

#include "station/store/fold.h"
#include "station/store/people.h"
#include "station/store/row.h"
#include "station/store/store.h"

namespace brimline {

namespace {

constexpr size_t kMostFound = 20;
constexpr size_t kMostMet = 60;   // of one way to meet the words; a customer may count more than once
constexpr size_t kMostWords = 4;  // of a query; those after are left out

const std::string kLast = "\U0010ffff";  // after every letter: ends the range of a beginning

// Which of the query's words must be met whole: bit i for word i. All whole first, none last.
std::vector<unsigned> masks_of(size_t words) {
  std::vector<unsigned> out(1u << words);
  for (unsigned i = 0; i < out.size(); ++i) out[i] = static_cast<unsigned>(out.size()) - 1 - i;
  std::stable_sort(out.begin(), out.end(),
                   [](unsigned a, unsigned b) { return std::popcount(a) > std::popcount(b); });
  return out;
}

// "w.word = ?" or "w.word >= ? AND w.word < ?", with what they are compared with.
std::string condition(const std::string& alias, const std::string& word, bool whole, QVariantList& values) {
  values.push_back(Connection::value(word));
  if (whole) return alias + ".word = ?";
  values.push_back(Connection::value(word + kLast));
  return alias + ".word >= ? AND " + alias + ".word < ?";
}

// A server has no way to know that the first rows suffice: it would rather join whole tables.
void walk_by_index(Connection& c, bool walk = true) {
  if (c.engine() != Engine::postgresql) return;
  c.run(walk ? "SET LOCAL enable_hashjoin = off; SET LOCAL enable_mergejoin = off; "
               "SET LOCAL enable_seqscan = off; SET LOCAL enable_bitmapscan = off"
             : "SET LOCAL enable_bitmapscan = on");
}

// Ends a question about one row that a server is not to turn into a join.
const char* only_asked_of_each(const Connection& c) {
  return c.engine() == Engine::postgresql ? " OFFSET 0" : "";
}

// Rows of the word, counted no further than to tell a rare one from a common one.
int rows_of(Connection& c, const std::string& word, bool whole) {
  constexpr int kCommon = 4000;
  QVariantList values;
  const std::string sql = "SELECT COUNT(*) FROM (SELECT 1 FROM customer_words w WHERE " +
                          condition("w", word, whole, values) + " LIMIT " + std::to_string(kCommon) + ") few";
  const Rows rows = c.ask(sql, values);
  return rows.empty() ? 0 : rows[0][0].toInt();
}

// The first three letters, of one, two or more bytes each.
std::string beginning_of(const std::string& word) {
  size_t end = 0;
  for (int letters = 0; end < word.size() && letters < 3; ++letters) do
      ++end;
    while (end < word.size() && (static_cast<unsigned char>(word[end]) & 0xc0) == 0x80);
  return word.substr(0, end);
}

struct QueryWord {
  std::string text;
  int whole = 0, beginning = 0;  // rows, as `rows_of` counts them
  int rows(bool as_whole) const { return as_whole ? whole : beginning; }
};

// PostgreSQL's form of an array of texts.
QVariant text_array(const std::vector<std::string>& texts) {
  std::string out = "{";
  for (const std::string& text : texts) {
    out += out.size() > 1 ? ",\"" : "\"";
    for (const char c : text) {
      if (c == '"' || c == '\\') out += '\\';
      out += c;
    }
    out += '"';
  }
  return Connection::value(out + "}");
}

// On a server: the first customers, by name, who meet words that are each common, by joined lists of what
// theirs begin with. Nothing where they are so many that the first of a walk are soon found, or a word is so
// rare that few rows are walked over.
std::optional<std::vector<std::string>> few_meeting(Connection& c, const std::vector<QueryWord>& words,
                                                    unsigned whole, size_t lead) {
  constexpr int kShortWalk = 400, kFew = 4000;
  const auto is_whole = [&](size_t i) { return (whole >> i & 1u) != 0; };
  if (c.engine() != Engine::postgresql || words.size() < 2 || words[lead].rows(is_whole(lead)) < kShortWalk)
    return std::nullopt;
  std::vector<std::string> tokens;
  QVariantList longer;
  std::string sql =
      "SELECT customer_id, COUNT(*) OVER () FROM (SELECT customer_id, name FROM customer_tokens t WHERE "
      "tokens @> CAST(? AS TEXT[])";
  for (size_t i = 0; i < words.size(); ++i) {
    const std::string begins = beginning_of(words[i].text);
    tokens.push_back(is_whole(i) ? "=" + words[i].text : begins);
    if (!is_whole(i) && begins != words[i].text)
      sql += " AND EXISTS (SELECT 1 FROM customer_words x WHERE x.customer_id = t.customer_id AND " +
             condition("x", words[i].text, false, longer) + " OFFSET 0)";
  }
  sql +=
      " LIMIT " + std::to_string(kFew) + ") few ORDER BY name, customer_id LIMIT " + std::to_string(kMostMet);
  walk_by_index(c, false);
  const Rows rows = c.ask(sql, QVariantList{text_array(tokens)} + longer);
  walk_by_index(c);
  if (!rows.empty() && rows[0][1].toInt() >= kFew) return std::nullopt;
  std::vector<std::string> out;
  out.reserve(rows.size());
  for (const auto& row : rows) out.push_back(Connection::text(row[0]));
  return out;
}

// Customers that meet all words, in the order of the rarest: it leads, so that few rows are looked at.
std::vector<std::string> meeting(Connection& c, const std::vector<QueryWord>& words, unsigned whole) {
  const auto is_whole = [&](size_t i) { return (whole >> i & 1u) != 0; };
  size_t lead = 0;
  for (size_t i = 0; i < words.size(); ++i) {
    const int rows = words[i].rows(is_whole(i));
    if (rows == 0) return {};
    if (rows < words[lead].rows(is_whole(lead))) lead = i;
  }
  QVariantList values;
  if (auto few = few_meeting(c, words, whole, lead)) return *few;
  std::string sql = "SELECT w.customer_id FROM customer_words w WHERE " +
                    condition("w", words[lead].text, is_whole(lead), values);
  for (size_t i = 0; i < words.size(); ++i)
    if (i != lead)
      sql += " AND EXISTS (SELECT 1 FROM customer_words x WHERE x.customer_id = w.customer_id AND " +
             condition("x", words[i].text, is_whole(i), values) + only_asked_of_each(c) + ")";
  sql += " ORDER BY w.word, w.place, w.customer_id LIMIT " + std::to_string(kMostMet);
  std::vector<std::string> out;
  for (const auto& row : c.ask(sql, values)) out.push_back(Connection::text(row[0]));
  return out;
}

std::vector<std::string> best(Connection& c, std::vector<std::string> texts) {
  std::stable_sort(texts.begin(), texts.end(),
                   [](const auto& a, const auto& b) { return a.size() > b.size(); });
  if (texts.size() > kMostWords) texts.resize(kMostWords);
  std::vector<std::string> out;
  if (texts.empty()) return out;
  std::vector<QueryWord> words;
  for (std::string& text : texts) {
    const int whole = rows_of(c, text, true), beginning = rows_of(c, text, false);
    words.push_back({std::move(text), whole, beginning});
  }
  // Everybody there is to find, where they are few: then the rest need not be looked for.
  const std::vector<std::string> everybody = meeting(c, words, 0);
  const std::set<std::string> all(everybody.begin(), everybody.end());
  const size_t enough = everybody.size() < kMostMet ? std::min(all.size(), kMostFound) : kMostFound;
  std::set<std::string> seen;
  for (const unsigned whole : masks_of(words.size())) {
    if (out.size() >= enough) break;
    for (const std::string& id : whole == 0 ? everybody : meeting(c, words, whole)) {
      if (out.size() == enough) break;
      if (seen.insert(id).second) out.push_back(id);
    }
  }
  return out;
}

std::optional<Instant> last_visit(Connection& c, const std::string& customer_id) {
  for (const auto& row : c.ask("SELECT circumstances FROM visits WHERE customer_id = ? AND at_s IS NOT NULL "
                               "ORDER BY at_s DESC, id DESC LIMIT 1",
                               {Connection::value(customer_id)})) {
    const auto form = nlohmann::json::parse(Connection::text(row[0]), nullptr, false);
    for (const char* key : {"taken_at", "tested_at", "home_at"})
      if (form.is_object() && form.contains(key) && form[key].is_string())
        return Instant::parse(form[key].get<std::string>());
  }
  return std::nullopt;
}

}  // namespace

Stored<std::vector<Found>> Store::customers_matching(const std::string& text) {
  Connection& c = *connection_;
  return c.transact(Access::read, [&] {
    std::vector<Found> out;
    walk_by_index(c);
    for (const std::string& id : best(c, query_words(text)))
      for (const auto& row :
           c.ask("SELECT " + column_list(customer_columns()) + " FROM customers WHERE id = ?",
                 {Connection::value(id)}))
        out.push_back({customer_of(c, row), vessels_of_customer(c, id), last_visit(c, id)});
    return out;
  });
}

}  // namespace brimline
