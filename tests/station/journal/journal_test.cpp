// SPDX-License-Identifier: GPL-3.0-or-later
// Two changes joined by their laws; a counter that goes on while its server is away.
#include "station/journal/merge.h"

#include <gmock/gmock.h>

#include "station/journal/courier.h"
#include "station/journal/journaled_store.h"
#include "station/journal/pull.h"
#include "station/store/joining.h"
#include "tests/station/store/workshop.h"
#include "tests/support/cut_proxy.h"
#include "tests/support/postgresql_server.h"

namespace brimline::tests {
namespace {

using nlohmann::ordered_json;
using ::testing::IsEmpty;
using ::testing::SizeIs;

ordered_json form(const char* text) {
  return ordered_json::parse(text);
}

const ordered_json kBase = form(R"({"a":1,"b":{"c":"x","d":[1,2]},"e":[1]})");

// The laws of a three-way join: nothing done changes nothing, the same done twice is done once, and what two
// did apart from each other comes out the same whoever is first.
TEST(Join, KeepsItsLaws) {
  const ordered_json ours = form(R"({"a":2,"b":{"c":"x","d":[1,2]},"e":[1]})");
  const ordered_json theirs = form(R"({"a":1,"b":{"c":"y","d":[1,9]},"e":[1],"f":true})");
  EXPECT_EQ(joined(kBase, kBase, theirs, false).value(), theirs);
  EXPECT_EQ(joined(kBase, ours, kBase, false).value(), ours);
  EXPECT_EQ(joined(kBase, ours, ours, false).value(), ours);
  const ordered_json both = form(R"({"a":2,"b":{"c":"y","d":[1,9]},"e":[1],"f":true})");
  EXPECT_EQ(joined(kBase, ours, theirs, false).value(), both);
  EXPECT_TRUE(nlohmann::json(joined(kBase, theirs, ours, false).value()) == nlohmann::json(both));
}

TEST(Join, AddsWhatBothAdded) {
  EXPECT_EQ(joined(form("[1]"), form("[1,2]"), form("[1,3,4]"), false).value(), form("[1,3,4,2]"));
  EXPECT_EQ(joined(form("[1,2]"), form("[1,5]"), form("[7,2]"), false).value(), form("[7,5]"));
}

TEST(Join, SaysWhereBothChangedTheSame) {
  const ordered_json ours = form(R"({"a":1,"b":{"c":"u","d":[1,2]},"e":[1]})");
  const ordered_json theirs = form(R"({"a":1,"b":{"c":"v","d":[1,2]},"e":[1]})");
  const auto clash = joined(kBase, ours, theirs, false);
  ASSERT_FALSE(clash);
  EXPECT_EQ(clash.error().field, "b/c");
  EXPECT_EQ(clash.error().ours, "u");
  EXPECT_EQ(clash.error().theirs, "v");
  EXPECT_EQ(joined(kBase, ours, theirs, true).value(), ours);
  // One took away what the other changed.
  EXPECT_EQ(joined(kBase, form(R"({"b":{"c":"x","d":[1,2]},"e":[1]})"),
                   form(R"({"a":5,"b":{"c":"x","d":[1,2]},"e":[1]})"), false)
                .error()
                .field,
            "a");
}

class Journal : public StoreTest {
 protected:
  void SetUp() override {
    ASSERT_TRUE(brimline::testing::PostgresqlServer::installed()) << "PostgreSQL 15 is not installed";
    server_ = std::make_unique<brimline::testing::PostgresqlServer>(folder);
    auto base = Connection::open(server_->url("postgres"), Opening::existing).value();
    base->run("CREATE DATABASE shop");
    wire_ = std::make_unique<brimline::testing::CutProxy>(server_->port());
    shared_ = std::make_unique<Store>(Store::open(server_->url("shop")).value());
  }
  struct Counter {
    std::unique_ptr<Store> own;
    std::unique_ptr<Courier> courier;
    std::unique_ptr<JournaledStore> store;
    int ids = 0;
    bool carried() { return courier->carried_within(std::chrono::seconds(20)); }
  };
  std::unique_ptr<Counter> counter(const std::string& name) {
    auto out = std::make_unique<Counter>();
    out->own = std::make_unique<Store>(Store::open(url(name)).value());
    out->own->sign_as([name] { return Signature{name, Instant::parse("2026-06-20T12:00:00Z").value()}; });
    out->courier = std::make_unique<Courier>(Courier::Setup{
        server_->url("shop", wire_->port()), url(name), nullptr, nullptr, std::chrono::milliseconds(100)});
    out->store = std::make_unique<JournaledStore>(
        *out->own, [name, c = out.get()] { return name + "-" + std::to_string(c->ids++); },
        [c = out.get()] { c->courier->wake(); });
    return out;
  }
  // Until it holds, ten seconds at most.
  static bool soon(const std::function<bool()>& holds) {
    for (int i = 0; i < 1000 && !holds(); ++i) std::this_thread::sleep_for(std::chrono::milliseconds(10));
    return holds();
  }
  static Visit fresh(const std::string& id) {
    Visit visit = whole_visit(id);
    visit.bottle.readings.clear();
    visit.plan_as_told.reset();
    return visit;
  }
  std::unique_ptr<brimline::testing::PostgresqlServer> server_;
  std::unique_ptr<brimline::testing::CutProxy> wire_;
  std::unique_ptr<Store> shared_;
};

TEST_F(Journal, TheCounterGoesOnWhileTheServerIsAway) {
  auto a = counter("a.db");
  const Visit whole = whole_visit("J-1");
  ASSERT_TRUE(a->store->write(work::begin(fresh("J-1"))));
  ASSERT_TRUE(a->carried());
  wire_->cut();
  Visit known = fresh("J-1");
  known.vessel.turnover_h = 12;
  ASSERT_TRUE(a->store->write(work::update(fresh("J-1"), known)));
  for (const Reading& reading : whole.bottle.readings)
    ASSERT_TRUE(a->store->write(work::reading("J-1", reading)));
  ASSERT_TRUE(a->store->write(work::tell("J-1", *whole.plan_as_told)));
  ASSERT_TRUE(soon([&] { return a->courier->state().away && a->courier->state().waiting == 6; }));
  EXPECT_EQ(a->courier->state().why.find('\n'), std::string::npos);
  Visit told = whole;
  told.vessel.turnover_h = 12;
  EXPECT_EQ(a->own->visit("J-1").value(), told);  // here it is all there
  EXPECT_THAT(shared_->visit("J-1").value()->bottle.readings, IsEmpty());
  EXPECT_EQ(a->courier->ask<int>([](Store&) -> Stored<int> { return 1; }), std::nullopt);
  // The program ends and is started again before the server is back.
  a.reset();
  a = counter("a.db");
  ASSERT_TRUE(soon([&] { return a->courier->state().away; }));
  wire_->mend();
  ASSERT_TRUE(a->carried());
  EXPECT_EQ(shared_->visit("J-1").value(), told);
  EXPECT_THAT(shared_->open_bottles().value(), IsEmpty());
  EXPECT_THAT(shared_->earlier_revisions("J-1").value(), IsEmpty());
  EXPECT_EQ(a->courier->ask<int>([](Store&) -> Stored<int> { return 1; }), 1);
}

// A test taken up again at one counter while another began and closed the next: each keeps what is its own.
TEST_F(Journal, AnEarlierOvernightTestIsNotBegunAgain) {
  auto a = counter("a.db");
  ASSERT_TRUE(a->store->write(work::begin(fresh("J-9"))));
  OvernightTest first;
  first.visit = "J-9";
  ASSERT_TRUE(a->store->write(work::overnight(std::nullopt, first)));
  OvernightTest given_up = first;
  given_up.stage = OvernightStage::closed;
  given_up.given_up = true;
  ASSERT_TRUE(a->store->write(work::overnight(first, given_up)));
  ASSERT_TRUE(a->carried());
  wire_->cut();
  ASSERT_TRUE(soon([&] { return a->courier->state().away; }));
  OvernightTest taken_up = given_up;
  taken_up.stage = OvernightStage::running;
  taken_up.given_up = false;
  taken_up.check_mg_l = 1.9;
  ASSERT_TRUE(a->store->write(work::overnight(given_up, taken_up)));
  EXPECT_EQ(a->own->overnight("J-9").value(), taken_up);
  EXPECT_EQ(shared_->begin_overnight(first).value().number, 2);
  ASSERT_TRUE(
      shared_->change_overnight("J-9", [](OvernightTest& test) { test.stage = OvernightStage::closed; }));
  const auto second = shared_->overnight("J-9").value();
  wire_->mend();
  ASSERT_TRUE(a->carried());
  EXPECT_EQ(shared_->overnight("J-9").value(), second);
  EXPECT_THAT(shared_->open_overnights().value(), IsEmpty());
  const auto kept = shared_->change_overnight(
      "J-9", [](OvernightTest&) {}, 1);
  ASSERT_TRUE(kept);
  EXPECT_EQ(kept->check_mg_l, 1.9) << "what was done of the first is not lost";
}

// Work is signed by who did it, and when, however late it is carried.
TEST_F(Journal, WorkIsSignedByWhoDidIt) {
  auto a = counter("a.db");
  ASSERT_TRUE(a->store->write(work::begin(fresh("J-2"))));
  wire_->cut();
  Visit changed = fresh("J-2");
  changed.vessel.turnover_h = 9;
  ASSERT_TRUE(a->store->write(work::update(fresh("J-2"), changed)));
  wire_->mend();
  ASSERT_TRUE(a->carried());
  const auto trail = shared_->audit_trail(10).value();
  ASSERT_THAT(trail, SizeIs(1));
  EXPECT_EQ(trail[0].by.who, "a.db");
  EXPECT_EQ(trail[0].by.at, Instant::parse("2026-06-20T12:00:00Z"));
}

TEST_F(Journal, WhatAnotherCounterDoesComesIn) {
  auto a = counter("a.db"), b = counter("b.db");
  ASSERT_TRUE(a->store->write(work::begin(fresh("J-3"))));
  ASSERT_TRUE(soon([&] { return b->own->open_bottles()->size() == 1; }));
  Reading ph;
  ph.analyte = "ph";
  ph.value = 7.4;
  ASSERT_TRUE(b->store->write(work::reading("J-3", ph)));
  ASSERT_TRUE(soon([&] { return a->own->visit("J-3").value()->bottle.readings.size() == 1; }));
  // Both read on while the wire is cut: both readings stay, the later one as a repeat.
  wire_->cut();
  Reading alkalinity = ph;
  alkalinity.analyte = "total_alkalinity";
  alkalinity.value = 90;
  Reading second = ph;
  second.value = 7.5;
  second.repeat_of = 0;
  ASSERT_TRUE(a->store->write(work::reading("J-3", second)));
  ASSERT_TRUE(b->store->write(work::reading("J-3", alkalinity)));
  wire_->mend();
  ASSERT_TRUE(a->carried());
  ASSERT_TRUE(b->carried());
  EXPECT_THAT(shared_->visit("J-3").value()->bottle.readings, SizeIs(3));
  ASSERT_TRUE(soon([&] { return a->own->visit("J-3").value() == b->own->visit("J-3").value(); }));
  ASSERT_TRUE(a->store->write(work::tell("J-3", *whole_visit().plan_as_told)));
  ASSERT_TRUE(soon([&] { return b->own->open_bottles()->empty(); }));
}

// The same field of one customer at two counters: a choice, and nothing lost until it is made.
TEST_F(Journal, TheSameFieldAtTwoCountersIsAChoice) {
  auto a = counter("a.db"), b = counter("b.db");
  const Customer card = *whole_visit().customer;
  for (Store* store : {shared_.get(), a->own.get(), b->own.get()}) ASSERT_TRUE(store->save_customer(card));
  wire_->cut();
  Customer here = card, there = card;
  here.phone = "555-0111";
  there.phone = "555-0122";
  there.street = "4 Sample Row";
  ASSERT_TRUE(a->store->write(work::customer(card, here)));
  wire_->mend();
  ASSERT_TRUE(a->carried());
  ASSERT_TRUE(b->store->write(work::customer(card, there)));
  ASSERT_TRUE(soon([&] { return b->courier->state().refused == 1; }));
  EXPECT_EQ(shared_->customer("C-1").value(), here);
  const auto refused = b->store->refused().value();
  ASSERT_THAT(refused, SizeIs(1));
  EXPECT_EQ(refused[0].refusal, "phone: ours 555-0122, theirs 555-0111");
  EXPECT_EQ(b->own->customer("C-1").value(), there);  // not lost here either
  // Other customers' work is not held up by it.
  Customer other = card;
  other.id = "C-2";
  ASSERT_TRUE(b->store->write(work::customer(other, other)));
  ASSERT_TRUE(soon([&] { return b->courier->state().waiting == 1; }));
  ASSERT_TRUE(b->store->insist(refused[0].id));
  ASSERT_TRUE(b->carried());
  EXPECT_EQ(shared_->customer("C-1").value(), there);
}

TEST_F(Journal, GivingWayLeavesTheirs) {
  auto a = counter("a.db");
  const Customer card = *whole_visit().customer;
  ASSERT_TRUE(a->own->save_customer(card));
  Customer theirs = card, ours = card;
  theirs.phone = "555-0133";
  ours.phone = "555-0144";
  ASSERT_TRUE(shared_->save_customer(theirs));
  ASSERT_TRUE(a->store->write(work::customer(card, ours)));
  ASSERT_TRUE(soon([&] { return a->courier->state().refused == 1; }));
  ASSERT_TRUE(a->store->give_way(a->store->refused()->front().id));
  ASSERT_TRUE(a->carried());
  EXPECT_EQ(shared_->customer("C-1").value(), theirs);
}

TEST_F(Journal, BooksAndErasuresComeIn) {
  auto a = counter("a.db");
  Visit visit = whole_visit("J-5");
  ASSERT_TRUE(shared_->keep(visit));
  ASSERT_TRUE(mirror(*a->own, visit, true));
  ReagentLot lot;
  lot.lot = "L-9";
  ASSERT_TRUE(shared_->keep_lot(lot));
  ASSERT_TRUE(shared_->erase_customer("C-1", "asked for it"));
  ASSERT_TRUE(pull_books(*shared_, *a->own));
  EXPECT_EQ(a->own->supplies()->lots, shared_->supplies()->lots);
  EXPECT_EQ(a->own->customer("C-1").value()->name, std::nullopt);
  EXPECT_FALSE(pull_books(*shared_, *a->own).value());  // nothing new
}

// Two cards joined in the shared records while a counter is away: what it wrote meanwhile under the id that
// is gone comes to the card that is kept, and its own records follow.
TEST_F(Journal, CardsJoinedElsewhereAreJoinedHere) {
  auto a = counter("a.db");
  Visit one = whole_visit("J-7"), other = whole_visit("J-8");
  other.customer->id = "C-2";
  other.vessel.id = "W-2";
  for (const Visit& visit : {one, other}) {
    ASSERT_TRUE(shared_->keep(visit));
    ASSERT_TRUE(mirror(*a->own, visit, true));
  }
  wire_->cut();
  Visit begun = fresh("J-9");
  begun.customer->id = "C-2";
  begun.vessel.id = "W-2";
  ASSERT_TRUE(a->store->write(work::begin(begun)));
  Customer seen = *other.customer, now = seen;
  now.phone = "555-0177";
  ASSERT_TRUE(a->store->write(work::customer(seen, now)));
  ASSERT_TRUE(join_customers(*shared_, "C-1", "C-2"));
  wire_->mend();
  ASSERT_TRUE(a->carried());
  EXPECT_EQ(shared_->visit("J-9").value()->customer->id, "C-1");
  EXPECT_EQ(shared_->customer("C-1").value()->phone, "555-0177");
  ASSERT_TRUE(pull_books(*shared_, *a->own));
  EXPECT_EQ(a->own->visit("J-8").value()->customer->id, "C-1");
  EXPECT_EQ(a->own->visit("J-9").value()->customer->id, "C-1");
  EXPECT_EQ(joined_cards(*a->own).value(), joined_cards(*shared_).value());
  EXPECT_FALSE(pull_books(*shared_, *a->own).value());  // nothing new
  ASSERT_TRUE(take_apart(*shared_, "C-2"));
  ASSERT_TRUE(pull_books(*shared_, *a->own).value());
  EXPECT_EQ(a->own->visit("J-8").value()->customer->id, "C-2");
}

// The wire goes silent in the middle of a piece of work: nobody knows whether it was done, and it is done
// once.
TEST_F(Journal, AWireThatGoesSilentDoublesNothing) {
  auto a = counter("a.db");
  ASSERT_TRUE(a->store->write(work::begin(fresh("J-6"))));
  ASSERT_TRUE(a->carried());
  for (int i = 0; i < 30; ++i) {
    Reading reading;
    reading.analyte = "turbidity";
    reading.value = i + 1;
    ASSERT_TRUE(a->store->write(work::reading("J-6", reading)));
    std::this_thread::sleep_for(std::chrono::milliseconds(i % 7));
    if (i % 6 == 3) i % 4 == 1 ? wire_->silence() : wire_->cut();
    if (i % 6 == 5) {
      wire_->cut();
      wire_->mend();
    }
  }
  wire_->cut();
  std::this_thread::sleep_for(std::chrono::milliseconds(50));
  wire_->mend();
  ASSERT_TRUE(a->carried());
  const auto readings = shared_->visit("J-6").value()->bottle.readings;
  ASSERT_THAT(readings, SizeIs(30));
  for (int i = 0; i < 30; ++i) EXPECT_EQ(readings[static_cast<size_t>(i)].value, i + 1);
}

}  // namespace
}  // namespace brimline::tests
