// SPDX-License-Identifier: GPL-3.0-or-later
// Customers by what is typed: a bottle's label, else each word of the query as the beginning of a word of
// theirs, and where those are few as any part of one.
#include <algorithm>
#include <bit>
#include <cctype>
#include <charconv>
#include <map>
#include <set>

#include <nlohmann/json.hpp>

#include "station/bottle_label.h"
#include "station/store/fold.h"
#include "station/store/people.h"
#include "station/store/row.h"
#include "station/store/store.h"

namespace brimline {

namespace {

constexpr size_t kMostFound = 20;
constexpr size_t kMostMet = 60;      // of one way to meet the words; a customer may count more than once
constexpr size_t kShortestPart = 3;  // letters that are looked for further in than a word's beginning
constexpr size_t kMostWords = 4;     // of a query; those after are left out

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

// Rows; a common word is not told from a more common one. On a server only whether lists pay hangs on it.
constexpr int kCommon = 2000, kCommonOnServer = 500;

// Rows of the word, counted no further than to tell a rare one from a common one.
int rows_of(Connection& c, const std::string& word, bool whole) {
  QVariantList values;
  const std::string sql = "SELECT COUNT(*) FROM (SELECT 1 FROM customer_words w WHERE " +
                          condition("w", word, whole, values) + " LIMIT " +
                          std::to_string(c.engine() == Engine::sqlite ? kCommon : kCommonOnServer) + ") few";
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

// On a server: customers who meet words that are each common, by joined lists of what theirs begin with. So
// many are looked at, as they come, and those shown in the order of their names: where more meet them, which
// of them is not said.
std::vector<std::string> listed(Connection& c, const std::vector<QueryWord>& words, unsigned whole) {
  constexpr int kLookedAt = 1000;
  const auto is_whole = [&](size_t i) { return (whole >> i & 1u) != 0; };
  std::vector<std::string> tokens;
  QVariantList longer;
  std::string sql =
      "SELECT customer_id FROM (SELECT customer_id, name FROM customer_tokens t WHERE tokens @> CAST(? AS "
      "TEXT[])";
  for (size_t i = 0; i < words.size(); ++i) {
    const std::string begins = beginning_of(words[i].text);
    tokens.push_back(is_whole(i) ? "=" + words[i].text : begins);
    if (!is_whole(i) && begins != words[i].text)
      sql += " AND EXISTS (SELECT 1 FROM customer_words x WHERE x.customer_id = t.customer_id AND " +
             condition("x", words[i].text, false, longer) + " OFFSET 0)";
  }
  sql += " LIMIT " + std::to_string(kLookedAt) + ") few ORDER BY name, customer_id LIMIT " +
         std::to_string(kMostMet);
  walk_by_index(c, false);
  const Rows rows = c.ask(sql, QVariantList{text_array(tokens)} + longer);
  walk_by_index(c);
  std::vector<std::string> out;
  out.reserve(rows.size());
  for (const auto& row : rows) out.push_back(Connection::text(row[0]));
  return out;
}

// Customers that meet all words, in the order of the one that leads.
std::vector<std::string> walked(Connection& c, const std::vector<QueryWord>& words, unsigned whole,
                                size_t lead) {
  const auto is_whole = [&](size_t i) { return (whole >> i & 1u) != 0; };
  QVariantList values;
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

// On a server a long walk costs more than joined lists do; a word so rare that few rows are walked over does
// not.
bool lists_pay(const Connection& c, const std::vector<QueryWord>& words, int rows) {
  constexpr int kShortWalk = 400;
  return c.engine() == Engine::postgresql && words.size() > 1 && rows >= kShortWalk;
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
  if (lists_pay(c, words, words[lead].rows(is_whole(lead)))) return listed(c, words, whole);
  return walked(c, words, whole, lead);
}

size_t letters_of(const std::string& word) {
  return static_cast<size_t>(std::count_if(
      word.begin(), word.end(), [](char byte) { return (static_cast<unsigned char>(byte) & 0xc0) != 0x80; }));
}

// Customers one of whose words holds the lead further in, and the other words of the query anywhere. So many
// rows of the lead are looked at and no more: of what is common not everybody is found.
std::vector<std::string> holding(Connection& c, const std::vector<QueryWord>& words, size_t lead) {
  constexpr int kLookedAt = 1000;
  const std::string holds = c.engine() == Engine::sqlite ? "instr" : "strpos";
  QVariantList values{Connection::value(words[lead].text), Connection::value(words[lead].text + kLast)};
  std::string sql =
      "SELECT DISTINCT e.customer_id FROM (SELECT ending, customer_id FROM customer_endings "
      "WHERE ending >= ? AND ending < ? ORDER BY ending, customer_id LIMIT " +
      std::to_string(kLookedAt) + ") e WHERE 1 = 1";
  for (size_t i = 0; i < words.size(); ++i) {
    if (i == lead) continue;
    sql += " AND EXISTS (SELECT 1 FROM customer_words x WHERE x.customer_id = e.customer_id AND " + holds +
           "(x.word, ?) > 0" + only_asked_of_each(c) + ")";
    values.push_back(Connection::value(words[i].text));
  }
  std::vector<std::string> out;
  for (const auto& row : c.ask(sql + " ORDER BY e.customer_id LIMIT " + std::to_string(kMostFound), values))
    out.push_back(Connection::text(row[0]));
  return out;
}

// Whose bottle the label is, the last first; a number alone is a label's number.
std::vector<std::string> of_bottle(Connection& c, std::string text) {
  constexpr size_t kLongest = 40;
  text.erase(0, std::min(text.find_first_not_of(" \t"), text.size()));
  text.erase(text.find_last_not_of(" \t") + 1);
  if (text.empty() || text.size() > kLongest || text.find_first_of("0123456789") == std::string::npos)
    return {};
  std::transform(text.begin(), text.end(), text.begin(), [](unsigned char letter) {
    return static_cast<char>(letter < 0x80 ? std::toupper(letter) : letter);
  });
  std::string numbered = text;
  std::int64_t number = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
  if (read.ec == std::errc() && read.ptr == text.data() + text.size() && number > 0)
    numbered = bottle_label(number);
  std::vector<std::string> out;
  for (const auto& row : c.ask("SELECT customer_id FROM visits WHERE bottle IN (?, ?) AND customer_id IS NOT "
                               "NULL ORDER BY at_s DESC, id LIMIT 10",
                               {Connection::value(text), Connection::value(numbered)}))
    if (std::string id = Connection::text(row[0]); std::find(out.begin(), out.end(), id) == out.end())
      out.push_back(std::move(id));
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
  const auto rarest = std::min_element(
      words.begin(), words.end(), [](const auto& x, const auto& y) { return x.beginning < y.beginning; });
  // Everybody there is to find, where they are few: then the rest need not be looked for. Not where looking
  // for them all is what takes long.
  std::optional<std::vector<std::string>> everybody;
  size_t enough = kMostFound;
  if (!lists_pay(c, words, rarest->beginning)) {
    everybody = meeting(c, words, 0);
    const std::set<std::string> all(everybody->begin(), everybody->end());
    if (everybody->size() < kMostMet) enough = std::min(all.size(), kMostFound);
  }
  std::set<std::string> seen;
  for (const unsigned whole : masks_of(words.size())) {
    if (out.size() >= enough) break;
    for (const std::string& id : whole == 0 && everybody ? *everybody : meeting(c, words, whole)) {
      if (out.size() == enough) break;
      if (seen.insert(id).second) out.push_back(id);
    }
  }
  for (size_t lead = 0; lead < words.size() && out.size() < kMostFound; ++lead) {
    if (letters_of(words[lead].text) < kShortestPart) continue;
    for (std::string& id : holding(c, words, lead))
      if (out.size() < kMostFound && seen.insert(id).second) out.push_back(std::move(id));
  }
  return out;
}

// When a visit was, from its form.
std::optional<Instant> moment_in(const QVariant& circumstances) {
  const auto form = nlohmann::json::parse(Connection::text(circumstances), nullptr, false);
  for (const char* key : {"taken_at", "tested_at", "home_at"})
    if (form.is_object() && form.contains(key) && form[key].is_string())
      return Instant::parse(form[key].get<std::string>());
  return std::nullopt;
}

// Those customers, in that order, with what is shown of them.
std::vector<Found> cards_of(Connection& c, const std::vector<std::string>& ids) {
  std::vector<Found> out;
  if (ids.empty()) return out;
  QVariantList keys;
  const std::string of_them = among(c, "id", ids, keys);
  std::map<std::string, Found> found;
  for (const auto& row :
       c.ask("SELECT " + column_list(customer_columns()) +
                 ", (SELECT circumstances FROM visits WHERE customer_id = customers.id AND at_s IS NOT NULL "
                 "ORDER BY at_s DESC, id DESC LIMIT 1) FROM customers WHERE " +
                 of_them,
             keys)) {
    Customer card = customer_of(c, row);
    const std::string id = card.id;
    found[id] = {std::move(card), {}, moment_in(row.back())};
  }
  for (auto& [owner, vessel] : vessels_of_customers(c, ids))
    found[owner].vessels.push_back(std::move(vessel));
  for (const std::string& id : ids)
    if (const auto at = found.find(id); at != found.end()) out.push_back(std::move(at->second));
  return out;
}

}  // namespace

Stored<std::vector<Found>> Store::customers_matching(const std::string& text) {
  Connection& c = *connection_;
  return c.transact(Access::read, [&] {
    walk_by_index(c);
    std::vector<std::string> ids = of_bottle(c, text);
    for (std::string& id : best(c, query_words(text)))
      if (ids.size() < kMostFound && std::find(ids.begin(), ids.end(), id) == ids.end())
        ids.push_back(std::move(id));
    return cards_of(c, ids);
  });
}

}  // namespace brimline
