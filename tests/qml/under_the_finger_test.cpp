// SPDX-License-Identifier: GPL-3.0-or-later
// Readings come in by themselves while somebody types and touches: what was meant is what counts.
#include <QtTest/QTest>

#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

class UnderTheFinger : public CounterTest {
 protected:
  BenchDesk& bench() const { return *kiosk_->desk().bench(); }
  const std::vector<Reading>& kept() const { return kiosk_->counter().visit().bottle.readings; }
  void come_in(const char* analyte, double value) {
    InstrumentReading reading;
    reading.analyte = analyte;
    reading.value = value;
    kiosk_->desk().onHappened({kiosk_->counter().now(), "bench 1", reading});
  }
  void start() {
    open_counter("2026-06-14T09:00:00-05:00");
    kiosk_->desk().startBottle();
    kiosk_->desk().setPlace(Desk::Bench);
    ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("pad_7") != nullptr; }));
  }
};

TEST_F(UnderTheFinger, ANumberMeantForWhatCameInIsNotAnothers) {
  start();
  const QString first = bench().analyteName();
  come_in("free_chlorine", 2.1);
  ASSERT_NE(bench().analyteName(), first) << "the pad goes on to what is still due";
  for (const char* key : {"pad_2", "pad_point", "pad_3"}) ASSERT_TRUE(hand_->touch(key));
  EXPECT_EQ(bench().typed(), "");
  EXPECT_TRUE(bench().says().contains(first)) << bench().says().toStdString();
  hand_->touch("pad_enter");
  EXPECT_EQ(kept().size(), 1U);
  // After a moment's rest the pad is the next reading's.
  QTest::qWait(800);
  ASSERT_TRUE(hand_->touch("pad_7"));
  EXPECT_EQ(bench().typed(), "7");
}

TEST_F(UnderTheFinger, WhatSomebodyChoseStaysOnThePad) {
  start();
  bench().choose("cyanuric_acid");
  come_in("cyanuric_acid", 44);
  for (const char* key : {"pad_4", "pad_5", "pad_enter"}) ASSERT_TRUE(hand_->touch(key));
  ASSERT_EQ(kept().size(), 2U);
  EXPECT_EQ(kept().back().analyte, "cyanuric_acid");
  EXPECT_FALSE(kept().back().instrument);
}

TEST_F(UnderTheFinger, AMethodIsChosenThoughAReadingComesIn) {
  start();
  bench().choose("calcium_hardness");
  ASSERT_GT(bench().methods().size(), 1);
  const QString method = bench().methods().last().toMap().value("key").toString();
  const auto at = hand_->reach("method_" + method);
  ASSERT_TRUE(at);
  hand_->put_down(*at);
  come_in("ph", 7.4);
  QTest::qWait(20);
  hand_->lift(*at);
  QTest::qWait(20);
  EXPECT_EQ(bench().how().value("method"), method);
}

TEST_F(UnderTheFinger, ARowThatMovesIsTheOneThatWasTouched) {
  start();
  // The lowest row in sight; one of those beneath it is read meanwhile and moves up above it.
  RowModel& rows = *bench().readings();
  int lowest = rows.count() - 2;
  const auto name_of = [&](int row) { return "reading_" + rows.row(row).value("analyte").toString(); };
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->find(name_of(8)) != nullptr; }));
  while (lowest > 0 && !hand_->find(name_of(lowest))) --lowest;
  const QString touched = name_of(lowest), name = rows.row(lowest).value("name").toString();
  const std::string read = rows.row(rows.count() - 1).value("analyte").toString().toStdString();
  const auto at = hand_->reach(touched);
  ASSERT_TRUE(at);
  hand_->put_down(*at);
  come_in(read.c_str(), 1);
  QTest::qWait(20);
  ASSERT_EQ(kept().size(), 1U) << read;
  ASSERT_NE(name_of(lowest), touched) << "another row stands there now";
  hand_->lift(*at);
  QTest::qWait(20);
  EXPECT_EQ(bench().analyteName(), name);
}

}  // namespace
}  // namespace brimline::test
