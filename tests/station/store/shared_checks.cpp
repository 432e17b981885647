// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/station/store/shared_checks.h"

#include "tests/station/store/workshop.h"

namespace brimline::tests {

using nlohmann::json;
using testing::ElementsAre;

namespace {

// Drops fields at random, at every depth.
void thin_out(json& value, std::mt19937& random) {
  if (value.is_object()) {
    std::vector<std::string> keys;
    for (const auto& item : value.items()) keys.push_back(item.key());
    for (const auto& key : keys)
      if (key != "id" && key != "format" && random() % 4 == 0)
        value.erase(key);
      else
        thin_out(value[key], random);
  } else if (value.is_array()) {
    for (auto& item : value) thin_out(item, random);
  }
}

std::vector<Visit> sparse_visits(int wanted) {
  std::mt19937 random(19121);
  std::vector<Visit> out;
  while (static_cast<int>(out.size()) < wanted) {
    json form = json::parse(kWholeVisit);
    thin_out(form, random);
    form["id"] = "S-" + std::to_string(out.size());
    if (auto visit = read_visit(form.dump(), "thin.json")) out.push_back(std::move(*visit));
  }
  return out;
}

const std::string kHostileTexts[] = {"'; DROP TABLE visits; --",
                                     "\" OR 1=1 --",
                                     "%_?:name$1",
                                     "\\'; DELETE FROM readings; \\",
                                     "NULL",
                                     "null",
                                     "",
                                     "Zoë 🏊 水 \u0430\u0301",
                                     "a\tb\nc",
                                     std::string(100000, 'x'),
                                     "{\"format\":1}",
                                     "$$;$$"};

}  // namespace

void check_round_trips(Store& store) {
  std::vector<Visit> visits = sparse_visits(60);
  visits.push_back(whole_visit("whole"));
  int number = 0;
  for (const std::string& text : kHostileTexts) {
    Visit visit = whole_visit("hostile-" + std::to_string(number++));
    if (!text.empty() && text.find('\n') == std::string::npos) visit.id = text;
    visit.customer->name = visit.bottle.readings[0].lot = visit.bottle.at_home[0].assay = text;
    visit.bottle.code = text;
    visit.plan_as_told->steps[0].text = text;
    visits.push_back(visit);
  }
  for (const Visit& visit : visits) {
    const auto kept = store.keep(visit);
    ASSERT_TRUE(kept) << kept.error().text;
  }
  for (const Visit& visit : visits) {
    const auto again = store.visit(visit.id);
    ASSERT_TRUE(again) << again.error().text;
    EXPECT_EQ(**again, visit) << visit.id.substr(0, 60);
  }
  EXPECT_EQ(store.counts()->at("visits"), static_cast<std::int64_t>(visits.size()));
  EXPECT_THAT(store.faults().value(), testing::IsEmpty());
}

void check_revisions(Store& store) {
  Visit visit = whole_visit("R-1");
  EXPECT_EQ(store.keep(visit).value(), Kept::kept);
  EXPECT_EQ(store.keep(visit).value(), Kept::same);
  EXPECT_THAT(store.earlier_revisions("R-1").value(), testing::IsEmpty());
  Visit second = visit;
  second.bottle.readings.pop_back();
  second.bottle.readings[0].value = 7.1;
  EXPECT_EQ(store.keep(second).value(), Kept::revised);
  Visit third = second;
  third.plan_as_told.reset();
  EXPECT_EQ(store.keep(third).value(), Kept::revised);
  EXPECT_EQ(store.visit("R-1").value(), third);
  EXPECT_THAT(store.earlier_revisions("R-1").value(), ElementsAre(visit, second));
  // Nobody rewrites the trail, not even by hand.
  for (const char* sql : {"UPDATE revisions SET content = '{}'", "DELETE FROM revisions"}) {
    EXPECT_FALSE(store.connection().transact(Access::write, [&] { store.connection().run(sql); })) << sql;
  }
  EXPECT_THAT(store.earlier_revisions("R-1").value(), ElementsAre(visit, second));
}

void check_progress(Store& store) {
  Visit begun = whole_visit("P-1");
  const Plan plan = *begun.plan_as_told;
  const std::vector<Reading> readings = begun.bottle.readings;
  begun.bottle.readings.clear();
  begun.plan_as_told.reset();
  ASSERT_TRUE(store.begin_visit(begun));
  EXPECT_FALSE(store.begin_visit(begun));
  for (const Reading& reading : readings) ASSERT_TRUE(store.add_reading("P-1", reading));
  begun.bottle.incident.reset();
  ASSERT_TRUE(store.update_visit(begun));
  begun.bottle.readings = readings;
  EXPECT_THAT(store.open_bottles().value(), ElementsAre(begun));
  ASSERT_TRUE(store.tell_plan("P-1", plan));
  ASSERT_TRUE(store.tell_plan("P-1", plan));
  ASSERT_TRUE(store.finish("P-1"));
  EXPECT_THAT(store.open_bottles().value(), testing::IsEmpty());
  begun.plan_as_told = plan;
  EXPECT_EQ(store.visit("P-1").value(), begun);
  EXPECT_THAT(store.earlier_revisions("P-1").value(), testing::IsEmpty());
  Plan other = plan;
  other.cautions.push_back("Another caution.");
  ASSERT_TRUE(store.tell_plan("P-1", other));
  EXPECT_THAT(store.earlier_revisions("P-1").value(), ElementsAre(begun));
}

void check_people(Store& store) {
  ASSERT_TRUE(store.save_customer(customer_named("P-1", "Åse Bjørnsson")));
  ASSERT_TRUE(store.save_customer(customer_named("P-2", "Asea Strauß")));
  Customer third = customer_named("P-3", "Łucja O'Neil");
  third.phone = "(555) 0142-7";
  third.street = "12 Ase Road";
  ASSERT_TRUE(store.save_customer(third));
  const auto ids = [&](const std::string& text) {
    std::vector<std::string> out;
    const std::vector<Found> all = store.customers_matching(text).value();
    out.reserve(all.size());
    for (const Found& found : all) out.push_back(found.customer.id);
    return out;
  };
  EXPECT_THAT(ids("ase"), ElementsAre("P-1", "P-3", "P-2"));  // whole words first, the name before the street
  EXPECT_THAT(ids("BJORN"), ElementsAre("P-1"));
  EXPECT_THAT(ids("bjørns ÅSE"), ElementsAre("P-1"));
  EXPECT_THAT(ids("strauss"), ElementsAre("P-2"));
  EXPECT_THAT(ids("lucja oneil"), ElementsAre("P-3"));
  EXPECT_THAT(ids("55501427"), ElementsAre("P-3"));
  EXPECT_THAT(ids("0142 7"), ElementsAre("P-3"));
  // Any part of a word, of three letters and more; behind those that begin so.
  EXPECT_THAT(ids("jorn"), ElementsAre("P-1"));
  EXPECT_THAT(ids("rauss"), ElementsAre("P-2"));
  EXPECT_THAT(ids("auss stra"), ElementsAre("P-2"));
  EXPECT_THAT(ids("ucja neil"), ElementsAre("P-3"));
  EXPECT_THAT(ids("142"), ElementsAre("P-3"));
  EXPECT_THAT(ids("ucja rauss"), testing::IsEmpty());  // of two people
  EXPECT_THAT(ids("ja"), testing::IsEmpty());
  EXPECT_THAT(ids("_se"), testing::IsEmpty());
  EXPECT_THAT(ids("%"), testing::IsEmpty());
  // By the label of a bottle of theirs, or its number alone.
  Visit labelled = whole_visit("P-V");
  labelled.customer = third;
  labelled.vessel = Vessel{};
  labelled.bottle.code = "B-0815";
  ASSERT_TRUE(store.keep(labelled));
  for (const char* label : {"B-0815", " b-0815 ", "0815", "815"})
    EXPECT_THAT(ids(label), ElementsAre("P-3")) << label;
  EXPECT_THAT(ids("B-0816"), testing::IsEmpty());
  // What is found no more under a word that changed is found no more by a part of it.
  third.name = "Zed";
  ASSERT_TRUE(store.save_customer(third));
  EXPECT_THAT(ids("ucja"), testing::IsEmpty());
  third.name = "Łucja O'Neil Åse";
  ASSERT_TRUE(store.save_customer(third));
  EXPECT_THAT(ids(""), testing::IsEmpty());
  third.name = "Lucy Neilson";
  ASSERT_TRUE(store.save_customer(third));
  EXPECT_THAT(ids("oneil"), testing::IsEmpty());
  EXPECT_EQ(store.customer("P-3").value(), third);

  Vessel spa = whole_visit().vessel;
  spa.id = "spa";
  ASSERT_TRUE(store.save_vessel(spa, "P-3"));
  EXPECT_THAT(store.vessels_of("P-3").value(), ElementsAre(spa));
  EXPECT_EQ(store.setting("paper").value(), std::nullopt);
  ASSERT_TRUE(store.set_setting("paper", "letter"));
  ASSERT_TRUE(store.set_setting("paper", "a4"));
  EXPECT_EQ(store.setting("paper").value(), "a4");
}

// From set-up to told, with a second counter in between and a second test after it.
void check_overnights(Store& store) {
  store.keep(whole_visit("N-1")).value();
  store.keep(whole_visit("N-2")).value();
  OvernightTest test;
  test.visit = "nobody's";
  EXPECT_FALSE(store.begin_overnight(test));
  test.visit = "N-1";
  const OvernightTest begun = store.begin_overnight(test).value();
  EXPECT_EQ(begun.number, 1);
  EXPECT_FALSE(store.begin_overnight(test));  // one goes on
  const auto change = [&](const std::function<void(OvernightTest&)>& edit) {
    return store.change_overnight("N-1", edit).value();
  };
  change([](OvernightTest& t) {
    t.stage = OvernightStage::pour;
    t.reach = DemandReach::much;
    t.sample_ml = 250.5;
    t.bleach = Bleach{"liquid_chlorine_125", 125};
    t.check_mg_l = 1.93;
    t.temperature = Temperature::celsius(21.5);
  });
  change([](OvernightTest& t) { start(t, *Instant::parse("2026-06-14T10:20:00-05:00")); });
  OvernightReading reading{*Instant::parse("2026-06-14T11:21:00-05:00"),
                           3,
                           OvernightDue::hour,
                           "free_chlorine",
                           7.0000000000000009,
                           5,
                           Clip::above,
                           "bench 1",
                           false};
  change([&](OvernightTest& t) { t.readings.push_back(reading); });
  const OvernightTest running = change([](OvernightTest& t) { withdraw_last(t); });
  EXPECT_EQ(running.bottles.size(), demand_doses(DemandReach::much).size());
  EXPECT_EQ(store.overnight("N-1").value(), running);
  EXPECT_THAT(store.open_overnights().value(), ElementsAre(running));
  EXPECT_EQ(store.overnight("N-2").value(), std::nullopt);
  EXPECT_FALSE(store.change_overnight("N-2", [](OvernightTest&) {}));
  // what has no written form is refused, and what was stored stays
  EXPECT_FALSE(store.change_overnight(
      "N-1", [](OvernightTest& t) { t.check_mg_l = std::numeric_limits<double>::quiet_NaN(); }));
  EXPECT_EQ(store.overnight("N-1").value(), running);
  change([](OvernightTest& t) { t.stage = OvernightStage::closed; });
  EXPECT_THAT(store.open_overnights().value(), testing::IsEmpty());
  EXPECT_EQ(store.begin_overnight(test).value().number, 2);
  EXPECT_EQ(store.counts()->at("overnight_tests"), 2);
  EXPECT_THAT(store.faults().value(), testing::IsEmpty());
}

void check_orphans(Store& store) {
  Reading reading;
  reading.analyte = "ph";
  reading.value = 7.4;
  reading.method = Method::photometer;
  const OrphanReading first{"R-1", *Instant::parse("2026-06-14T09:00:00-05:00"), "B-'; --", reading};
  const OrphanReading second{"R-2", *Instant::parse("2026-06-14T09:01:00-05:00"), std::nullopt, reading};
  ASSERT_TRUE(store.keep_orphan(first));
  ASSERT_TRUE(store.keep_orphan(second));
  EXPECT_FALSE(store.keep_orphan(first));  // its name is taken
  EXPECT_FALSE(store.keep_orphan({}));
  EXPECT_THAT(store.orphans().value(), ElementsAre(first, second));
  Visit visit;
  visit.id = "O-1";
  visit.bottle.code = "B-9";
  visit.bottle.taken_at = first.heard_at;
  visit.vessel.id = "O-1-W";
  ASSERT_TRUE(store.begin_visit(visit));
  EXPECT_FALSE(store.settle_orphan("R-1", "nowhere", reading));
  EXPECT_EQ(store.orphans()->size(), 2u);  // refused: it still belongs to nobody
  ASSERT_TRUE(store.settle_orphan("R-1", "O-1", reading));
  EXPECT_FALSE(store.settle_orphan("R-1", "O-1", reading));  // once
  ASSERT_TRUE(store.settle_orphan("R-2", std::nullopt, reading));
  EXPECT_THAT(store.orphans().value(), testing::IsEmpty());
  EXPECT_EQ(store.visit("O-1").value()->bottle.readings, std::vector{reading});
  EXPECT_THAT(store.faults().value(), testing::IsEmpty());
}

void check_supplies(Store& store) {
  ReagentLot lot;
  lot.lot = "L '; DROP TABLE visits; --";
  ASSERT_TRUE(store.keep_lot(lot));
  lot.analyte = "free_chlorine";
  lot.expires = Instant::parse("2027-03-31T23:59:59-05:00");
  lot.opened = Instant::parse("2026-05-02T09:00:00-05:00");
  lot.warmest_c = 24.5;
  lot.beside_chlorine = true;
  lot.tests = 100;
  ASSERT_TRUE(store.keep_lot(lot));
  const InstrumentCheck first{"bench 1", std::nullopt, *Instant::parse("2026-05-01T08:00:00Z"), true};
  const InstrumentCheck second{"bench 1", "copper", *Instant::parse("2026-06-01T08:00:00Z"), false};
  ASSERT_TRUE(store.add_check(first));
  ASSERT_TRUE(store.add_check(second));
  ASSERT_TRUE(store.add_check({"bench 2", std::nullopt, first.at, true}));
  const Supplies found = store.supplies().value();
  EXPECT_THAT(found.lots, ElementsAre(lot));
  ASSERT_EQ(found.checks.size(), 3U);
  EXPECT_EQ(found.checks[0], first);
  EXPECT_EQ(found.checks[1], second);
  EXPECT_FALSE(store.keep_lot({}));
  EXPECT_FALSE(store.add_check({}));
  // what was checked stays as it was found
  store.connection().run("UPDATE instrument_checks SET passed = 1");
  EXPECT_TRUE(store.connection().take_error());
  store.connection().run("DELETE FROM instrument_checks");
  EXPECT_TRUE(store.connection().take_error());
  EXPECT_EQ(store.supplies()->checks.size(), 3U);
  EXPECT_EQ(store.counts()->at("instrument_checks"), 3);
}

void check_refusals(Store& store) {
  const auto before = store.counts().value();
  EXPECT_FALSE(store.save_vessel(whole_visit().vessel, "nobody"));
  EXPECT_FALSE(store.add_reading("no such visit", Reading{}));
  EXPECT_FALSE(store.tell_plan("no such visit", Plan{}));
  EXPECT_FALSE(store.finish("no such visit"));
  Visit odd = whole_visit("odd");
  odd.bottle.readings[1].value = std::numeric_limits<double>::quiet_NaN();
  const auto kept = store.keep(odd);
  ASSERT_FALSE(kept);
  EXPECT_THAT(kept.error().text, testing::HasSubstr("cannot be kept"));
  EXPECT_EQ(store.counts().value(), before);
}

}  // namespace brimline::tests
