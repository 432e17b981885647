// SPDX-License-Identifier: GPL-3.0-or-later
// The owner's week against sums made by hand, and its table as an independent reader sees it.
#include <gmock/gmock.h>

#include <QProcess>

#include "station/week/week_words.h"
#include "station/wording/plan_words.h"
#include "tests/station/store/workshop.h"

namespace brimline::tests {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::SizeIs;

Instant at(const std::string& text) {
  return Instant::parse(text).value();
}

Reading reading(const AnalyteId& analyte, double value, const std::string& lot = {}) {
  Reading out;
  out.analyte = analyte;
  out.value = value;
  if (!lot.empty()) out.lot = lot;
  return out;
}

Finding low_ph() {
  Finding out;
  out.id = "ph_low";
  out.analyte = "ph";
  out.value = 6.9;
  out.target = Target{7.2, 7.8};
  return out;
}

Visit visit(const std::string& id, const std::string& vessel, const std::string& taken, double ph) {
  Visit out = whole_visit(id);
  out.bottle.code = id;
  out.vessel.id = vessel;
  out.bottle.tested_at.reset();
  out.bottle.taken_at = at(taken);
  out.bottle.readings = {reading("ph", ph, "L-1"), reading("free_chlorine", 2, "L-2")};
  out.plan_as_told = Plan{};
  out.plan_as_told->findings = {low_ph()};
  return out;
}

// ISO 8601: the week begins on Monday, by the shop's own clock.
TEST(OwnersWeekBegins, OnMondayMidnightByTheShopsClock) {
  EXPECT_EQ(week_begin(at("2026-06-14T23:59:00-05:00"), 0).text(), "2026-06-08T00:00:00-05:00");
  EXPECT_EQ(week_begin(at("2026-06-15T00:00:00-05:00"), 0).text(), "2026-06-15T00:00:00-05:00");
  EXPECT_EQ(week_begin(at("2026-06-15T01:00:00+02:00"), 1).text(), "2026-06-08T00:00:00+02:00");
  EXPECT_EQ(week_begin(at("2026-01-01T12:00:00Z"), 0).text().substr(0, 10), "2025-12-29");
}

TEST(OwnersWeekPlan, IsAsGoodAsItsWorstFinding) {
  const auto answer = [](Worked verdict) { return PlanAnswer{"", verdict, ""}; };
  EXPECT_EQ(verdict_of({}), std::nullopt);
  EXPECT_EQ(verdict_of({answer(Worked::worked), answer(Worked::cannot_tell)}), Worked::worked);
  EXPECT_EQ(verdict_of({answer(Worked::cannot_tell)}), Worked::cannot_tell);
  EXPECT_EQ(verdict_of({answer(Worked::not_at_all), answer(Worked::worked), answer(Worked::partly)}),
            Worked::not_at_all);
}

TEST(OwnersWeekReorder, LooksAheadTwoWeeksAndCountsWhatStandsBy) {
  const Instant now = at("2026-06-15T00:00:00-05:00");
  Supplies supplies;
  ReagentLot lot;
  lot.lot = "L-1";
  lot.analyte = "ph";
  lot.opened = at("2026-05-01T00:00:00-05:00");
  LotUse use{lot, 30, 60, Reorder::no};
  supplies.lots = {lot};
  EXPECT_EQ(reorder_of(use, supplies, now), Reorder::no);
  use.left = 59;
  EXPECT_EQ(reorder_of(use, supplies, now), Reorder::runs_out);
  use.left.reset();  // not told: missing is not zero
  EXPECT_EQ(reorder_of(use, supplies, now), Reorder::no);
  use.lot.expires = at("2026-07-01T00:00:00-05:00");
  EXPECT_EQ(reorder_of(use, supplies, now), Reorder::expires);
  use.lot.expires = at("2026-06-01T00:00:00-05:00");
  EXPECT_EQ(reorder_of(use, supplies, now), Reorder::expired);
  ReagentLot closed = lot;
  closed.lot = "L-9";
  closed.opened.reset();
  supplies.lots.push_back(closed);
  EXPECT_EQ(reorder_of(use, supplies, now), Reorder::no);
  supplies.lots.back().expires = at("2026-06-20T00:00:00-05:00");
  EXPECT_EQ(reorder_of(use, supplies, now), Reorder::expired);
}

TEST(OwnersWeekChecks, AreDueByTheLastOfEachInstrument) {
  Supplies supplies;
  supplies.checks = {{"P-1", std::nullopt, at("2026-04-01T09:00:00Z"), true},
                     {"P-1", std::nullopt, at("2026-06-10T09:00:00Z"), true},
                     {"P-1", "ph", at("2026-04-01T09:00:00Z"), true},
                     {"P-2", std::nullopt, at("2026-06-10T09:00:00Z"), false},
                     {"P-3", "ph", at("2026-07-10T09:00:00Z"), false}};
  const auto due = overdue_checks(supplies, at("2026-06-15T00:00:00Z"));
  ASSERT_THAT(due, SizeIs(2));
  EXPECT_EQ(due[0].analyte, "ph");
  EXPECT_EQ(due[1].instrument, "P-2");
}

class OwnersWeekOfAStore : public StoreTest {
 protected:
  Store open() { return Store::open("sqlite:" + path("shop.db")).value(); }
};

TEST_F(OwnersWeekOfAStore, TellsHowFarItIsAndStopsWhenAsked) {
  Store store = open();
  for (int i = 0; i < 4; ++i)
    ASSERT_TRUE(store.keep(visit("W-" + std::to_string(i), "pool", "2026-06-10T09:00:00-05:00", 7.5)));
  std::vector<double> shares;
  const auto stop_at = [&](size_t count) {
    return [&shares, count](double share) {
      shares.push_back(share);
      return shares.size() < count;
    };
  };
  const Instant monday = at("2026-06-08T00:00:00-05:00");
  const auto week = week_of(store, monday, {}, stop_at(100));
  ASSERT_TRUE(week);
  EXPECT_EQ(week->bottles, 4);
  EXPECT_THAT(shares, ElementsAre(0, 0.25, 0.5, 0.75));
  shares.clear();
  const auto stopped = week_of(store, monday, {}, stop_at(2));
  ASSERT_FALSE(stopped);
  EXPECT_EQ(stopped.error().text, "stopped");
  EXPECT_THAT(shares, SizeIs(2));
}

TEST_F(OwnersWeekOfAStore, CountsWhatCameAndNothingElse) {
  Store store = open();
  ReagentLot lot;
  lot.lot = "L-1";
  lot.analyte = "ph";
  lot.tests = 100;
  lot.opened = at("2026-05-01T00:00:00-05:00");
  ASSERT_TRUE(store.keep_lot(lot));
  ASSERT_TRUE(store.keep(visit("W-1", "pool", "2026-06-07T23:59:59-05:00", 6.9)));  // the Sunday before
  ASSERT_TRUE(store.keep(visit("W-2", "pool", "2026-06-08T00:00:00-05:00", 7.5)));  // Monday, and mended
  ASSERT_TRUE(store.keep(visit("W-3", "other", "2026-06-14T23:59:59-05:00", 6.9)));
  ASSERT_TRUE(store.keep(visit("W-4", "other", "2026-06-15T00:00:00-05:00", 6.9)));  // the Monday after
  const auto supplies = store.supplies();
  ASSERT_TRUE(supplies);
  const auto week = week_of(store, week_begin(at("2026-06-10T12:00:00-05:00"), 0), *supplies);
  ASSERT_TRUE(week);
  EXPECT_EQ(week->bottles, 2);
  EXPECT_EQ(week->first_visits, 1);
  EXPECT_EQ(week->returns, 1);
  EXPECT_EQ(week->plans, 2);
  EXPECT_EQ(week->worked, (std::map<Worked, int>{{Worked::worked, 1}}));
  ASSERT_THAT(week->findings, SizeIs(1));
  EXPECT_EQ(week->findings[0].visits, 2);
  EXPECT_EQ(week->readings, (std::map<AnalyteId, int>{{"free_chlorine", 2}, {"ph", 2}}));
  ASSERT_THAT(week->lots, SizeIs(1));
  EXPECT_EQ(week->lots[0].used, 2);
  EXPECT_EQ(week->lots[0].left, 97);  // three of it up to the week's end
  // The two halves of a week's bottles are all of them.
  EXPECT_EQ(week->first_visits + week->returns, week->bottles);
}

TEST_F(OwnersWeekOfAStore, IsATableThatAnotherProgramReads) {
  Store store = open();
  Visit one = visit("W-2", "pool", "2026-06-08T10:00:00-05:00", 7.5);
  one.bottle.readings[0].lot = "=1+1,\"odd\"";
  ReagentLot lot;
  lot.lot = *one.bottle.readings[0].lot;
  ASSERT_TRUE(store.keep_lot(lot));
  ASSERT_TRUE(store.keep(one));
  const auto week = week_of(store, at("2026-06-08T00:00:00-05:00"), *store.supplies());
  ASSERT_TRUE(week);
  QProcess python;
  python.start("python3", {"-c",
                           "import csv,io,sys\n"
                           "rows=list(csv.DictReader(io.TextIOWrapper(sys.stdin.buffer,newline='')))\n"
                           "for r in rows: print(r['part'],r['name'],r['number'],r['unit'],sep='|')"});
  ASSERT_TRUE(python.waitForStarted());
  python.write(QByteArray::fromStdString(week_csv(*week)));
  python.closeWriteChannel();
  ASSERT_TRUE(python.waitForFinished());
  const std::string out = python.readAllStandardOutput().toStdString();
  EXPECT_THAT(out, HasSubstr("bottles|tested|1|bottles"));
  EXPECT_THAT(out, HasSubstr("reagent_used|'=1+1,\"odd\"|1|tests"));  // no formula
  EXPECT_THAT(out, HasSubstr("finding|ph_low|1|bottles"));
}

// Each finding there is has a name of its own without a reading in it, in every language.
TEST(OwnersWeekWords, NameEveryFinding) {
  for (const char* language : {"en", "es", "fr"}) {
    const Words words(language);
    for (const std::string& id : known_finding_ids()) {
      const std::string name = finding_kind(words, {id, std::nullopt, 1});
      EXPECT_THAT(name, Not(IsEmpty())) << id;
      EXPECT_THAT(name, Not(HasSubstr("_"))) << id;
      EXPECT_THAT(name, Not(HasSubstr("%"))) << id;
      EXPECT_THAT(name, Not(HasSubstr("  "))) << id;
      EXPECT_THAT(name, Not(HasSubstr("()"))) << id;
    }
  }
}

}  // namespace
}  // namespace brimline::tests
