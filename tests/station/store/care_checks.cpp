// SPDX-License-Identifier: GPL-3.0-or-later
// Who changed what, who may, and what is known of people: guarded, and gone when it is to go.
#include "station/store/staff_book.h"
#include "tests/station/store/shared_checks.h"
#include "tests/station/store/workshop.h"

namespace brimline::tests {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;
using testing::UnorderedElementsAre;

namespace {

Instant at(const std::string& text) {
  return Instant::parse(text).value();
}

void sign(Store& store, const std::string& who, const std::string& when = "2026-06-20T10:00:00-05:00") {
  store.sign_as([who, when = at(when)] { return Signature{who, when}; });
}

std::vector<std::string> notes_of(Store& store, const std::string& subject = {}) {
  std::vector<std::string> out;
  const auto rows = store.audit_trail(1000, 0, subject).value();
  out.reserve(rows.size());
  for (const AuditRow& row : rows) out.push_back(in_one_line(row.note));
  return out;
}

std::string whole_trail(Store& store) {
  std::string out;
  store.connection().each("SELECT * FROM audit_trail", [&](const QVariantList& row) {
    for (const QVariant& value : row) out += value.toString().toStdString() + "|";
  });
  return out;
}

}  // namespace

void check_audit_trail(Store& store) {
  sign(store, "Ana");
  Visit visit = whole_visit("A-1");
  ASSERT_TRUE(store.keep(visit));
  EXPECT_THAT(notes_of(store), IsEmpty());  // nothing was changed yet
  Visit second = visit;
  second.bottle.readings[0].value = 7.2;
  second.bottle.readings.pop_back();
  second.customer->phone = "555-0199";
  second.vessel.volume = Volume::cubic_metres(60);
  sign(store, "Ben", "2026-06-21T11:00:00-05:00");
  ASSERT_TRUE(store.keep(second));
  const std::vector<std::string> notes = notes_of(store, "A-1");
  EXPECT_THAT(notes, UnorderedElementsAre(
                         "reading A-1 ph: 7.9, photometer, bench 1, L-7 -> 7.2, photometer, bench 1, L-7",
                         "reading A-1 calcium_hardness: 0, below, strip -> -",
                         "visit A-1 vessel/volume_m3: 56.8 -> 60", "visit A-1 customer/phone"));
  const auto rows = store.audit_trail(10).value();
  for (const AuditRow& row : rows) {
    EXPECT_EQ(row.by.who, "Ben");
    EXPECT_EQ(row.by.at, at("2026-06-21T11:00:00-05:00"));
  }
  // Put right with a reason; what it was stays readable.
  std::vector<Reading> right = second.bottle.readings;
  right[1].value = 0.2;
  ASSERT_TRUE(store.correct_readings("A-1", right, "read the wrong line"));
  EXPECT_EQ(notes_of(store).front(),
            "reading A-1 free_chlorine: 0.1, above, drop_titration, 2 -> 0.2, above, drop_titration, 2 "
            "(read the wrong line)");
  EXPECT_EQ(store.visit("A-1").value()->bottle.readings, right);
  EXPECT_THAT(store.earlier_revisions("A-1").value(), ElementsAre(visit, second));
  // Numbered without gaps, a page at a time.
  const auto newest = store.audit_trail(2).value();
  const auto older = store.audit_trail(10, newest.back().number).value();
  EXPECT_EQ(newest.front().number, 5);
  EXPECT_THAT(older, SizeIs(3));
  // Nobody rewrites it, not even by hand.
  for (const char* sql : {"UPDATE audit_trail SET who = 'nobody'", "DELETE FROM audit_trail"})
    EXPECT_FALSE(store.connection().transact(Access::write, [&] { store.connection().run(sql); })) << sql;
  EXPECT_THAT(store.audit_trail(10).value(), SizeIs(5));
  for (const char* person : {"555-01", "Ines", "Example Lane", "example.org"})
    EXPECT_EQ(whole_trail(store).find(person), std::string::npos) << person;
}

// A failed change leaves no note, and a note no change.
void check_audit_is_whole(Store& store) {
  ASSERT_TRUE(store.keep(whole_visit("W-1")));
  EXPECT_FALSE(store.once("op-1", [&]() -> Stored<void> {
    Visit other = whole_visit("W-1");
    other.bottle.readings[0].value = 7.0;
    if (auto kept = store.keep(other); !kept) return tl::unexpected(kept.error());
    return tl::unexpected(StoreError{StoreTrouble::refused, "in the middle"});
  }));
  EXPECT_EQ(store.visit("W-1").value(), whole_visit("W-1"));
  EXPECT_THAT(notes_of(store), IsEmpty());
  // The same work again is done once.
  int ran = 0;
  for (int i = 0; i < 3; ++i)
    ASSERT_TRUE(store.once("op-2", [&]() -> Stored<void> {
      ++ran;
      return store.set_setting("seen", std::to_string(ran));
    }));
  EXPECT_EQ(ran, 1);
  EXPECT_EQ(store.setting("seen").value(), "1");
}

void check_staff(Store& store) {
  sign(store, "Ana");
  StaffMember ana{"S-1", "Ana", StaffRole::keeper, hash_of_pin("2468").value(), false, 0, std::nullopt};
  StaffMember ben{"S-2", "Ben", StaffRole::clerk, hash_of_pin("1357").value(), false, 0, std::nullopt};
  EXPECT_FALSE(keep_staff(store, ben));  // a keeper first
  ASSERT_TRUE(keep_staff(store, ana));
  ASSERT_TRUE(keep_staff(store, ben));
  EXPECT_THAT(staff(store).value(), ElementsAre(ana, ben));
  StaffMember left = ana;
  left.gone = true;
  EXPECT_FALSE(keep_staff(store, left));
  left = ana;
  left.role = StaffRole::clerk;
  EXPECT_FALSE(keep_staff(store, left));
  EXPECT_THAT(staff(store).value(), ElementsAre(ana, ben));
  EXPECT_FALSE(begin_pin_try(store, "S-9"));
  // Two wrong ones cost nothing, the third five seconds, whoever asks; a try broken off counts.
  for (int i = 0; i < 3; ++i) {
    const auto tried = begin_pin_try(store, "S-2").value();
    EXPECT_EQ(tried.wait_s, 0) << i;
    EXPECT_EQ(tried.hash, ben.pin_hash);
  }
  const auto fourth = begin_pin_try(store, "S-2").value();
  EXPECT_EQ(fourth.wait_s, 5);
  EXPECT_TRUE(fourth.hash.empty());
  sign(store, "Ana", "2026-06-20T10:00:05-05:00");
  EXPECT_EQ(begin_pin_try(store, "S-2")->wait_s, 0);
  ASSERT_TRUE(end_pin_try(store, "S-2", false));
  EXPECT_EQ(begin_pin_try(store, "S-2")->wait_s, 10);
  // The right one ends it; a new PIN too.
  sign(store, "Ana", "2026-06-20T10:01:00-05:00");
  ASSERT_EQ(begin_pin_try(store, "S-2")->wait_s, 0);
  ASSERT_TRUE(end_pin_try(store, "S-2", true));
  EXPECT_EQ(staff(store)->back().failures, 0);
  for (int i = 0; i < 4; ++i) (void)begin_pin_try(store, "S-2");
  ben.pin_hash = hash_of_pin("97531").value();
  ASSERT_TRUE(keep_staff(store, ben));
  EXPECT_EQ(begin_pin_try(store, "S-2")->wait_s, 0);
  EXPECT_THAT(notes_of(store, "S-2"), Contains("staff S-2 pin"));
  EXPECT_THAT(notes_of(store, "S-2"), Contains("staff S-2 wrong PIN: - -> 4 in a row"));
  EXPECT_EQ(whole_trail(store).find("argon2"), std::string::npos);
}

void check_two_counters_edit(Store& one, Store& other) {
  Customer card = *whole_visit().customer;
  ASSERT_TRUE(one.save_customer(card));
  Customer here = card, there = card;
  here.phone = "555-0111";
  there.street = "4 Sample Row";
  EXPECT_EQ(one.edit_customer(card, here).value(), std::nullopt);
  EXPECT_EQ(other.edit_customer(card, there).value(), std::nullopt);  // another field: both stay
  Customer both = here;
  both.street = there.street;
  EXPECT_EQ(one.customer("C-1").value(), both);
  there.phone = "555-0122";
  EXPECT_EQ(other.edit_customer(card, there).value(), both);  // the same field: nothing is stored
  EXPECT_EQ(one.customer("C-1").value(), both);
  EXPECT_EQ(other.edit_customer(both, there).value(), std::nullopt);  // chosen, having seen it
  EXPECT_EQ(one.customer("C-1").value()->phone, "555-0122");
  // A bottle begun before still says the old number: going on with it brings the old number nowhere.
  Visit begun = whole_visit("T-1");
  begun.plan_as_told.reset();
  begun.bottle.readings.clear();
  begun.customer = one.customer("C-1").value();
  ASSERT_TRUE(one.begin_visit(begun));
  Customer later = *begun.customer;
  later.phone = "555-0133";
  ASSERT_EQ(other.edit_customer(*begun.customer, later).value(), std::nullopt);
  Vessel vessel = begun.vessel;
  vessel.volume = Volume::cubic_metres(48);
  ASSERT_TRUE(other.save_vessel(vessel, "C-1"));
  begun.bottle.occasion = Occasion::routine;
  begun.vessel.turnover_h = 10;
  ASSERT_TRUE(one.update_visit(begun));
  EXPECT_EQ(other.customer("C-1").value()->phone, "555-0133");
  EXPECT_EQ(other.vessels_of("C-1")->front().volume, Volume::cubic_metres(48));
  EXPECT_EQ(other.vessels_of("C-1")->front().turnover_h, 10);
  const auto first = one.next_bottle_number().value(), second = other.next_bottle_number().value();
  EXPECT_EQ(second, first + 1);
}

void check_due(Store& store) {
  const auto keep = [&](const std::string& id, const std::string& vessel, const std::string& taken) {
    Visit visit = whole_visit(id);
    visit.plan_as_told.reset();
    visit.home_at.reset();
    visit.bottle.tested_at.reset();
    visit.bottle.taken_at = at(taken);
    visit.vessel.id = vessel;
    ASSERT_TRUE(store.keep(visit));
  };
  const auto due = [&](const std::string& from, const std::string& until, int most = 60) {
    std::vector<std::string> out;
    const std::vector<DueVisit> found = store.due_visits(at(from), at(until), most).value();
    out.reserve(found.size());
    for (const DueVisit& one : found) out.push_back(one.visit.id + " " + one.due.text().substr(0, 10));
    return out;
  };
  keep("D-1", "W-1", "2026-04-01T12:00:00Z");
  keep("D-2", "W-1", "2026-05-01T12:00:00Z");  // the same vessel: this one counts
  keep("D-3", "W-2", "2026-04-20T12:00:00Z");
  keep("D-4", "W-3", "2026-06-10T12:00:00Z");
  const std::string year = "2026-01-01T00:00:00Z", end = "2027-01-01T00:00:00Z";
  EXPECT_THAT(due(year, end), ElementsAre("D-3 2026-05-20", "D-2 2026-05-31", "D-4 2026-07-10"));
  EXPECT_THAT(due(year, "2026-06-01T00:00:00Z"), ElementsAre("D-3 2026-05-20", "D-2 2026-05-31"));
  EXPECT_THAT(due("2026-06-01T00:00:00Z", end), ElementsAre("D-4 2026-07-10"));
  EXPECT_THAT(due(year, end, 1), ElementsAre("D-3 2026-05-20"));
  // A plan told brings the day forward; a bottle in progress is nobody's last visit yet.
  Visit told = whole_visit("D-5");
  told.vessel.id = "W-4";
  told.plan_as_told.reset();
  told.home_at = at("2026-06-14T10:00:00Z");
  ASSERT_TRUE(store.begin_visit(told));
  EXPECT_THAT(due(year, end), SizeIs(3));
  Plan plan = *whole_visit("D-5").plan_as_told;
  ASSERT_TRUE(plan.retest && plan.home_plan);
  ASSERT_TRUE(store.tell_plan("D-5", plan));
  ASSERT_TRUE(store.finish("D-5"));
  EXPECT_THAT(due(year, end),
              ElementsAre("D-3 2026-05-20", "D-2 2026-05-31", "D-5 2026-06-15", "D-4 2026-07-10"));
  // Who was forgotten is reminded of nothing.
  ASSERT_TRUE(store.erase_customer("C-1", "asked for it"));
  EXPECT_THAT(due(year, end), IsEmpty());
}

void check_erasure(Store& store) {
  Visit visit = whole_visit("E-1"), stays = whole_visit("E-2");
  stays.customer->id = "C-2";
  stays.customer->name = "Somebody Else";
  stays.customer->email = "else@example.org";
  ASSERT_TRUE(store.keep(visit));
  visit.bottle.readings[0].value = 7.4;
  ASSERT_TRUE(store.keep(visit));  // a revision with the name in it
  Visit moved = visit;
  moved.id = "E-3";
  ASSERT_TRUE(store.keep(moved));
  moved.customer = stays.customer;  // and one that became somebody else's
  ASSERT_TRUE(store.keep(moved));
  ASSERT_TRUE(store.keep(stays));
  EXPECT_THAT(store.customers_unseen_since(at("2026-06-14T00:00:00Z")).value(), IsEmpty());
  EXPECT_THAT(store.customers_unseen_since(at("2026-06-15T00:00:00Z")).value(), ElementsAre("C-1", "C-2"));
  ASSERT_TRUE(store.erase_customer("C-1", "asked for it"));
  EXPECT_FALSE(store.erase_customer("C-99", "asked for it"));
  EXPECT_THAT(store.customers_matching("ines orsted").value(), IsEmpty());
  EXPECT_THAT(store.customers_matching("5550101").value(), SizeIs(1));  // of the other one
  Visit nameless = visit;
  nameless.customer->name = nameless.customer->phone = std::nullopt;
  nameless.customer->street = nameless.customer->email = std::nullopt;
  EXPECT_EQ(store.visit("E-1").value(), nameless);  // the water is remembered
  EXPECT_EQ(store.visit("E-2").value(), stays);
  EXPECT_THAT(store.earlier_revisions("E-1").value(), SizeIs(1));
  EXPECT_THAT(store.erased_customers().value(), ElementsAre("C-1"));
  EXPECT_THAT(store.customers_unseen_since(at("2026-06-15T00:00:00Z")).value(), ElementsAre("C-2"));
  EXPECT_THAT(store.faults().value(), IsEmpty());
  for (const char* table : {"customers", "customer_words", "visits", "revisions", "audit_trail"})
    store.connection().each(std::string("SELECT * FROM ") + table, [&](const QVariantList& row) {
      for (const QVariant& value : row) EXPECT_FALSE(value.toString().contains("Ines")) << table;
    });
  // The revisions are closed again.
  EXPECT_FALSE(store.connection().transact(
      Access::write, [&] { store.connection().run("UPDATE revisions SET content = '{}'"); }));
}

}  // namespace brimline::tests
