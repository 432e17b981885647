// SPDX-License-Identifier: GPL-3.0-or-later
// Two cards of one person: found, joined, taken apart, forgotten.
#include "station/store/joining.h"
#include "tests/station/store/shared_checks.h"
#include "tests/station/store/workshop.h"

namespace brimline::tests {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

Customer card(const std::string& id, const char* name, const char* phone, const char* street,
              const char* email = nullptr) {
  const auto text = [](const char* value) {
    return value ? std::optional<std::string>(value) : std::nullopt;
  };
  Customer out;
  out.id = id;
  out.name = text(name);
  out.phone = text(phone);
  out.street = text(street);
  out.email = text(email);
  return out;
}

// A visit of that customer to that vessel's water.
Visit visit_of(const std::string& id, const Customer& customer, const std::string& vessel) {
  Visit out = whole_visit(id);
  out.customer = customer;
  out.vessel.id = vessel;
  return out;
}

std::vector<std::string> ids_of(const std::vector<Visit>& visits) {
  std::vector<std::string> out;
  out.reserve(visits.size());
  for (const Visit& one : visits) out.push_back(one.id + " " + one.customer->id);
  return out;
}

std::vector<std::string> pairs_of(const std::vector<LookAlike>& found) {
  std::vector<std::string> out;
  out.reserve(found.size());
  for (const LookAlike& one : found) out.push_back(one.card.id + " " + one.other.id);
  return out;
}

TEST(LikenessTest, SaysWhatTwoCardsHaveInCommon) {
  const Customer ines = card("1", "Ines Ørsted", "(414) 555-0101", "3 Sample Row", "ines@example.invalid");
  EXPECT_THAT(likeness(ines, card("2", "I. Orsted", "+1 414 555 0101", nullptr)),
              ElementsAre(Likeness::phone));
  EXPECT_THAT(likeness(ines, card("2", "ines orsted", nullptr, "3, sample row")),
              ElementsAre(Likeness::name_and_street));
  EXPECT_THAT(likeness(ines, card("2", "Orsted, Ines", nullptr, nullptr, "INES@example.invalid")),
              ElementsAre(Likeness::email));
  EXPECT_THAT(likeness(ines, card("2", "Per Ørsted", "555-0199", "3 Sample Row")),
              ElementsAre(Likeness::street));
  EXPECT_THAT(likeness(ines, card("2", "Ines Ørsted", nullptr, nullptr)), ElementsAre(Likeness::name));
  // One name at two addresses is two people as far as anybody can tell; so is one word, and nothing at all.
  EXPECT_THAT(likeness(ines, card("2", "Ines Ørsted", nullptr, "9 Other Way")), IsEmpty());
  EXPECT_THAT(likeness(card("1", "Ines", nullptr, nullptr), card("2", "Ines", nullptr, nullptr)), IsEmpty());
  EXPECT_THAT(likeness(card("1", nullptr, nullptr, nullptr), card("2", nullptr, nullptr, nullptr)),
              IsEmpty());
  EXPECT_THAT(likeness(card("1", "A B", "0101", nullptr), card("2", "C D", "0101", nullptr)), IsEmpty());
}

// Two cards that are alike share a key, whatever they are: nothing is missed by looking only there.
TEST(LikenessTest, WhatIsAlikeSharesAKeyAndBothSeeIt) {
  std::mt19937 random(11);
  const char* names[] = {nullptr, "Ada Mock", "Mock, Ada", "Bo Mock", "Ada", "Cy Foo Bar"};
  const char* phones[] = {nullptr, "555-0101", "1 414 555-0101", "0101", "555-0102"};
  const char* streets[] = {nullptr, "1 Invented Lane", "invented lane 1", "Lane", "2 Invented Lane"};
  const char* mails[] = {nullptr, "a@example.invalid", "A@Example.invalid", "b@example.invalid"};
  const auto any = [&](const char* id) {
    return card(id, names[random() % 6], phones[random() % 5], streets[random() % 5], mails[random() % 4]);
  };
  int alike = 0;
  for (int i = 0; i < 4000; ++i) {
    const Customer a = any("1"), b = any("2");
    const auto by = likeness(a, b);
    EXPECT_EQ(by, likeness(b, a));
    if (by.empty()) continue;
    ++alike;
    const auto keys = likeness_keys(a), others = likeness_keys(b);
    EXPECT_TRUE(std::any_of(
        keys.begin(), keys.end(),
        [&](const std::string& key) { return std::find(others.begin(), others.end(), key) != others.end(); }))
        << customer_to_json(a).dump() << customer_to_json(b).dump();
  }
  EXPECT_GT(alike, 500);
}

}  // namespace

void check_joining(Store& store) {
  const Customer stays = card("C-1", "Ines Invented", "555-0101", nullptr);
  const Customer goes = card("C-2", "Ines Invented", nullptr, "3 Sample Row", "ines@example.invalid");
  const Customer other = card("C-3", "Per Invented", "555-0199", "3 Sample Row");
  const Visit a = visit_of("A-1", stays, "W-1"), b = visit_of("B-1", goes, "W-2");
  for (const Visit& one : {a, b, visit_of("D-1", other, "W-3")}) ASSERT_TRUE(store.keep(one));
  const auto twins = [&](const char* id) { return pairs_of(look_alikes(store, id).value()); };
  EXPECT_THAT(twins("C-1"), ElementsAre("C-1 C-2"));
  EXPECT_THAT(twins("C-2"), ElementsAre("C-2 C-3", "C-2 C-1"));
  EXPECT_THAT(twins("C-99"), IsEmpty());
  const auto all = [&] { return pairs_of(all_look_alikes(store, 10, [](double) { return true; }).value()); };
  EXPECT_THAT(all(), ElementsAre("C-2 C-3", "C-1 C-2"));
  ASSERT_TRUE(tell_apart(store, "C-3", "C-2"));
  EXPECT_THAT(all(), ElementsAre("C-1 C-2"));
  EXPECT_THAT(twins("C-2"), ElementsAre("C-2 C-1"));

  EXPECT_FALSE(join_customers(store, "C-1", "C-1"));
  EXPECT_FALSE(join_customers(store, "C-1", "C-99"));
  const auto before = store.counts().value();
  ASSERT_TRUE(join_customers(store, "C-1", "C-2"));
  Customer both = stays;
  both.street = goes.street;
  both.email = goes.email;
  EXPECT_EQ(store.customer("C-1").value(), both);
  EXPECT_EQ(store.customer("C-2").value(), both);  // asked for by the id that is gone
  EXPECT_THAT(all(), ElementsAre("C-1 C-3"));      // the street came along
  EXPECT_THAT(store.customers_matching("sample row").value(), SizeIs(2));
  EXPECT_THAT(store.vessels_of("C-1").value(), SizeIs(2));
  Visit moved = b;
  moved.customer->id = "C-1";  // what the card said on that day stays as it was said
  EXPECT_EQ(store.visit("B-1").value(), moved);
  EXPECT_EQ(store.counts()->at("visits"), before.at("visits"));
  EXPECT_EQ(store.counts()->at("readings"), before.at("readings"));
  EXPECT_THAT(store.faults().value(), IsEmpty());
  // What is still written under the id that is gone, by a counter that was away or a table: to the card kept.
  EXPECT_EQ(store.keep(b).value(), Kept::same);
  Visit later = visit_of("B-2", goes, "W-2");
  ASSERT_TRUE(store.begin_visit(later));
  later.bottle.code = "B-0815";
  ASSERT_TRUE(store.update_visit(later));
  EXPECT_EQ(store.visit("B-2").value()->customer->id, "C-1");
  ASSERT_TRUE(store.save_vessel(b.vessel, "C-2"));
  Customer edited = goes;
  edited.email = "new@example.invalid";
  EXPECT_EQ(store.edit_customer(goes, edited).value(), std::nullopt);
  EXPECT_EQ(store.customer("C-1").value()->email, "new@example.invalid");
  EXPECT_FALSE(store.save_customer(goes));
  EXPECT_THAT(joined_cards(store).value(), ElementsAre(JoinedCard{"C-2", "C-1"}));

  // Apart again: as before, with what was changed since where it was changed, and the visits since.
  ASSERT_TRUE(take_apart(store, "C-2"));
  Customer kept = stays;
  kept.email = "new@example.invalid";
  EXPECT_EQ(store.customer("C-1").value(), kept);
  EXPECT_EQ(store.customer("C-2").value(), goes);
  EXPECT_THAT(ids_of(store.visits_of_vessel("W-1").value()), ElementsAre("A-1 C-1"));
  EXPECT_THAT(ids_of(store.visits_of_vessel("W-2").value()), ElementsAre("B-1 C-2", "B-2 C-2"));
  EXPECT_EQ(store.visit("B-1").value(), b);
  EXPECT_FALSE(take_apart(store, "C-2"));

  // Joined on and on, and then forgotten: no card laid by for taking apart keeps the person.
  ASSERT_TRUE(join_customers(store, "C-1", "C-2"));
  ASSERT_TRUE(join_customers(store, "C-3", "C-1"));
  EXPECT_EQ(store.customer("C-2").value()->id, "C-3");
  EXPECT_FALSE(take_apart(store, "C-2"));  // the one it went into is gone itself
  ASSERT_TRUE(store.erase_customer("C-3", "asked for it"));
  EXPECT_THAT(store.erased_customers().value(), ElementsAre("C-1", "C-2", "C-3"));
  for (const char* table : {"customers", "customer_words", "visits", "revisions", "audit_trail",
                            "joined_customers", "told_apart"})
    store.connection().each(std::string("SELECT * FROM ") + table, [&](const QVariantList& row) {
      for (const QVariant& value : row)
        for (const char* word : {"Ines", "Per", "ines@", "new@", "Sample Row", "555-01"})
          EXPECT_FALSE(value.toString().contains(word)) << table << ": " << value.toString().toStdString();
    });
  ASSERT_TRUE(take_apart(store, "C-1"));
  ASSERT_TRUE(take_apart(store, "C-2"));
  EXPECT_EQ(store.customer("C-2").value()->name, std::nullopt);
  EXPECT_THAT(store.faults().value(), IsEmpty());
}

}  // namespace brimline::tests
