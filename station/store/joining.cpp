// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/store/joining.h"

#include <algorithm>
#include <map>
#include <set>

#include <nlohmann/json.hpp>

#include "station/store/fold.h"
#include "station/store/people.h"
#include "station/store/row.h"
#include "station/visit_json.h"

namespace brimline {

using nlohmann::ordered_json;

namespace {

QVariant id_value(const std::string& id) {
  return Connection::value(id);
}

std::vector<std::string> ids(Connection& c, const std::string& sql, const std::string& id) {
  std::vector<std::string> out;
  for (const QVariantList& row : c.ask(sql, {id_value(id)})) out.push_back(Connection::text(row[0]));
  return out;
}

// Visits and vessels under another customer's id; what a visit said of the customer on its day stays.
void hand_visit(Connection& c, const std::string& visit, const std::string& to) {
  for (const QVariantList& row : c.ask("SELECT circumstances FROM visits WHERE id = ?", {id_value(visit)})) {
    ordered_json form = ordered_json::parse(Connection::text(row[0]), nullptr, false);
    if (!form.is_object() || !form.contains("customer")) continue;
    form["customer"]["id"] = to;
    c.tell("UPDATE visits SET customer_id = ?, circumstances = ? WHERE id = ?",
           {id_value(to), Connection::value(form.dump()), id_value(visit)});
  }
}

void hand_vessel(Connection& c, const std::string& vessel, const std::string& to) {
  c.tell("UPDATE vessels SET customer_id = ? WHERE id = ?", {id_value(to), id_value(vessel)});
}

// What is absent of `card` from `other`.
ordered_json filled_from(ordered_json card, const ordered_json& other) {
  for (const auto& item : other.items())
    if (!card.contains(item.key())) card[item.key()] = item.value();
  return card;
}

// The card as it stands without what the join filled in and nobody has changed since.
ordered_json without_filled(ordered_json now, const ordered_json& before, const ordered_json& gone) {
  for (const auto& item : gone.items())
    if (!before.contains(item.key()) && now.contains(item.key()) && now[item.key()] == item.value())
      now.erase(item.key());
  return now;
}

std::pair<std::string, std::string> in_order(const std::string& one, const std::string& other) {
  return std::minmax(one, other);
}

bool told_apart(Connection& c, const std::string& one, const std::string& other) {
  const auto pair = in_order(one, other);
  return !c.ask("SELECT id FROM told_apart WHERE id = ? AND other_id = ?",
                {id_value(pair.first), id_value(pair.second)})
              .empty();
}

void most_alike_first(std::vector<LookAlike>& found) {
  std::stable_sort(found.begin(), found.end(), [](const LookAlike& a, const LookAlike& b) {
    return a.by.front() != b.by.front() ? a.by.front() < b.by.front() : a.by.size() > b.by.size();
  });
}

}  // namespace

std::optional<std::string> joined_into(Connection& connection, const std::string& id) {
  std::optional<std::string> out;
  std::set<std::string> seen{id};  // a damaged store may go round
  for (std::string at = id;;) {
    const Rows rows =
        connection.ask("SELECT into_id FROM joined_customers WHERE id = ?", {Connection::value(at)});
    if (rows.empty()) return out;
    at = Connection::text(rows[0][0]);
    if (!seen.insert(at).second) return out;
    out = at;
  }
}

std::vector<std::string> gone_into(Connection& connection, const std::string& id) {
  std::vector<std::string> out{id};
  for (size_t i = 0; i < out.size(); ++i)
    for (const std::string& one :
         ids(connection, "SELECT id FROM joined_customers WHERE into_id = ? ORDER BY id", out[i]))
      if (std::find(out.begin(), out.end(), one) == out.end()) out.push_back(one);
  out.erase(out.begin());
  return out;
}

std::optional<Visit> of_standing_customer(Connection& connection, const Visit& visit) {
  if (!visit.customer) return std::nullopt;
  const auto into = joined_into(connection, visit.customer->id);
  if (!into) return std::nullopt;
  Visit out = visit;
  out.customer->id = *into;
  return out;
}

Stored<std::string> standing_customer(Store& store, const std::string& id) {
  Connection& c = store.connection();
  return c.transact(Access::read, [&] { return joined_into(c, id).value_or(id); });
}

Stored<std::vector<JoinedCard>> joined_cards(Store& store) {
  Connection& c = store.connection();
  return c.transact(Access::read, [&] {
    std::vector<JoinedCard> out;
    for (const QVariantList& row : c.ask("SELECT id, into_id FROM joined_customers ORDER BY id"))
      out.push_back({Connection::text(row[0]), Connection::text(row[1])});
    return out;
  });
}

Stored<void> join_customers(Store& store, const std::string& kept, const std::string& gone) {
  Connection& c = store.connection();
  return c.transact(Access::write, [&] {
    const auto stays = card_of(c, kept), goes = card_of(c, gone);
    if (kept == gone || !stays || !goes)
      return c.fail({StoreTrouble::refused, "two cards are to be joined; expected the ids of both"});
    const ordered_json stays_form = customer_to_json(*stays), goes_form = customer_to_json(*goes);
    ordered_json content{{"kept", stays_form}, {"gone", goes_form}};
    const auto vessels = ids(c, "SELECT id FROM vessels WHERE customer_id = ? ORDER BY id", gone);
    const auto visits = ids(c, "SELECT id FROM visits WHERE customer_id = ? ORDER BY id", gone);
    content["vessels"] = vessels;
    content["visits"] = visits;
    for (const std::string& vessel : vessels) hand_vessel(c, vessel, kept);
    for (const std::string& visit : visits) hand_visit(c, visit, kept);
    c.tell("DELETE FROM customer_words WHERE customer_id = ?", {id_value(gone)});
    c.tell("DELETE FROM customers WHERE id = ?", {id_value(gone)});
    put_card(c, filled_from(stays_form, goes_form));
    c.tell("INSERT INTO joined_customers (id, into_id, content) VALUES (?, ?, ?)",
           {id_value(gone), id_value(kept), Connection::value(content.dump())});
    if (auto noted = store.note({"customer", gone, "joined", gone, kept, std::nullopt}); !noted)
      c.fail(noted.error());
  });
}

Stored<void> take_apart(Store& store, const std::string& gone) {
  Connection& c = store.connection();
  return c.transact(Access::write, [&] {
    const Rows rows = c.ask("SELECT into_id, content FROM joined_customers WHERE id = ?", {id_value(gone)});
    if (rows.empty()) return c.fail({StoreTrouble::refused, "customer " + gone + " was not joined"});
    const std::string into = Connection::text(rows[0][0]);
    const ordered_json content = ordered_json::parse(Connection::text(rows[0][1]), nullptr, false);
    const auto now = card_of(c, into);
    if (!now)
      return c.fail(
          {StoreTrouble::refused, "the card it went into has itself been joined: take that apart first"});
    if (!content.is_object() || !content.contains("gone"))
      return c.fail({StoreTrouble::damaged, "what was joined cannot be read"});
    c.tell("DELETE FROM joined_customers WHERE id = ?", {id_value(gone)});
    put_card(c, content["gone"]);
    put_card(c, without_filled(customer_to_json(*now), content["kept"], content["gone"]));
    for (const ordered_json& visit : content["visits"]) hand_visit(c, visit.get<std::string>(), gone);
    for (const ordered_json& one : content["vessels"]) {
      const auto vessel = one.get<std::string>();
      hand_vessel(c, vessel, gone);
      for (const std::string& visit : ids(c, "SELECT id FROM visits WHERE vessel_id = ?", vessel))
        hand_visit(c, visit, gone);
    }
    if (auto noted = store.note({"customer", gone, "joined", into, gone, std::nullopt}); !noted)
      c.fail(noted.error());
  });
}

Stored<void> tell_apart(Store& store, const std::string& one, const std::string& other) {
  Connection& c = store.connection();
  return c.transact(Access::write, [&] {
    const auto pair = in_order(one, other);
    c.tell("INSERT INTO told_apart (id, other_id) VALUES (?, ?) ON CONFLICT (id, other_id) DO NOTHING",
           {id_value(pair.first), id_value(pair.second)});
    if (auto noted =
            store.note({"customer", pair.first, "told apart", std::nullopt, pair.second, std::nullopt});
        !noted)
      c.fail(noted.error());
  });
}

Stored<std::vector<LookAlike>> look_alikes(Store& store, const std::string& customer_id) {
  constexpr int kMostMet = 200;  // of one thing in common
  Connection& c = store.connection();
  return c.transact(Access::read, [&] {
    std::vector<LookAlike> out;
    const auto card = card_of(c, customer_id);
    if (!card) return out;
    std::set<std::string> met;
    const auto meet = [&](const std::vector<std::string>& words, int place) {
      if (words.empty()) return;
      std::string sql = "SELECT w.customer_id FROM customer_words w WHERE w.word = ? AND w.place = ?";
      QVariantList values{Connection::value(words.front()), place};
      for (size_t i = 1; i < words.size(); ++i) {
        sql +=
            " AND EXISTS (SELECT 1 FROM customer_words x WHERE x.customer_id = w.customer_id AND x.word = ?)";
        values << Connection::value(words[i]);
      }
      for (const QVariantList& row : c.ask(sql + " LIMIT " + std::to_string(kMostMet), values))
        met.insert(Connection::text(row[0]));
    };
    // The longest word leads: it is the rarest, as a rule.
    const auto longest_first = [](std::vector<std::string> words) {
      std::stable_sort(words.begin(), words.end(),
                       [](const auto& a, const auto& b) { return a.size() > b.size(); });
      return words;
    };
    for (const std::string& number : folded_number(card->phone.value_or("")))
      if (number.size() >= kPhoneDigits) meet({number}, 1);
    meet(longest_first(folded_words(card->email.value_or(""))), 1);
    if (const auto words = folded_words(card->name.value_or("")); words.size() >= 2)
      meet(longest_first(words), 0);
    if (const auto words = folded_words(card->street.value_or("")); words.size() >= 2)
      meet(longest_first(words), 1);
    for (const std::string& id : met) {
      if (id == customer_id || told_apart(c, id, customer_id)) continue;
      const auto other = card_of(c, id);
      if (!other) continue;
      if (auto by = likeness(*card, *other); !by.empty()) out.push_back({*card, *other, std::move(by)});
    }
    most_alike_first(out);
    return out;
  });
}

Stored<std::vector<LookAlike>> all_look_alikes(Store& store, size_t most,
                                               const std::function<bool(double)>& go_on) {
  constexpr size_t kCommon = 50;          // cards that share so much share it by chance
  constexpr std::int64_t kAtOnce = 2000;  // rows between two questions whether to go on
  Connection& c = store.connection();
  bool stopped = false;
  auto found = c.transact(Access::read, [&] {
    std::vector<LookAlike> out;
    const Rows count = c.ask("SELECT COUNT(*) FROM customers");
    const double all = count.empty() ? 1 : std::max(1.0, count[0][0].toDouble());
    std::vector<Customer> cards;
    std::map<std::string, std::vector<size_t>> sharing;
    c.each("SELECT " + column_list(customer_columns()) + " FROM customers ORDER BY id",
           [&](const QVariantList& row) {
             if (stopped || c.failed()) return;
             Customer card = customer_of(c, row);
             for (std::string& key : likeness_keys(card)) sharing[std::move(key)].push_back(cards.size());
             cards.push_back(std::move(card));
             if (static_cast<std::int64_t>(cards.size()) % kAtOnce == 0)
               stopped = !go_on(static_cast<double>(cards.size()) / all);
           });
    std::set<std::pair<size_t, size_t>> seen;
    for (const auto& [key, at] : sharing) {
      if (stopped || at.size() > kCommon) continue;
      for (size_t i = 0; i < at.size(); ++i)
        for (size_t j = i + 1; j < at.size(); ++j) {
          if (!seen.emplace(at[i], at[j]).second) continue;
          auto by = likeness(cards[at[i]], cards[at[j]]);
          if (!by.empty() && !told_apart(c, cards[at[i]].id, cards[at[j]].id))
            out.push_back({cards[at[i]], cards[at[j]], std::move(by)});
        }
    }
    most_alike_first(out);
    if (out.size() > most) out.resize(most);
    return out;
  });
  if (found && stopped) found->clear();
  return found;
}

}  // namespace brimline
