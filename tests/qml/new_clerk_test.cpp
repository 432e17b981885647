// SPDX-License-Identifier: GPL-3.0-or-later
// What a clerk on their first day does with fingers and keyboard, and must not trip over: through the real
// window.
#include <QThread>

#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

class NewClerk : public CounterTest {
 protected:
  void SetUp() override { open_counter("2026-06-14T09:00:00-05:00"); }
  Desk& desk() const { return kiosk_->desk(); }
  BenchDesk& bench() const { return *kiosk_->desk().bench(); }
  void begin(const std::string& name) const {
    desk().startBottle();
    ASSERT_TRUE(kiosk_->counter().change([&](Visit& v) {
      Customer customer;
      customer.id = "C-" + name;
      customer.name = name;
      v.customer = customer;
      v.vessel.id = "W-" + name;
      v.vessel.sanitizer = Sanitizer::chlorine;
    }));
  }
  void hear(const char* analyte, double value) const {
    InstrumentReading reading;
    reading.analyte = analyte;
    reading.value = value;
    desk().onHappened({kiosk_->counter().now(), "bench_lines", reading});
  }
  void slowly(const QString& text) {
    for (const QChar letter : text) {
      hand_->type(letter);
      QThread::msleep(160);
      QGuiApplication::processEvents();
    }
  }
};

TEST_F(NewClerk, WhatIsTypedByHandIsNoLabel) {
  begin("Invented");
  const std::string here = kiosk_->counter().visit().id;
  desk().setPlace(Desk::Findings);
  slowly("Smith");
  hand_->key(Qt::Key_Return);
  EXPECT_EQ(kiosk_->counter().waiting().size(), 1u);
  desk().setPlace(Desk::Bench);
  bench().choose("ph");
  slowly("x7");
  hand_->key(Qt::Key_Return);
  EXPECT_EQ(kiosk_->counter().visit().id, here);
  ASSERT_EQ(kiosk_->counter().visit().bottle.readings.size(), 1u);
  EXPECT_EQ(kiosk_->counter().visit().bottle.readings[0].value, 7);
  // A scanner's keys come fast: they are one.
  hand_->type("B-0815");
  hand_->key(Qt::Key_Return);
  EXPECT_EQ(kiosk_->counter().visit().bottle.code, "B-0815");
}

TEST_F(NewClerk, TheKeyboardIsAtTheNameOfANewBottle) {
  ASSERT_TRUE(hand_->touch("new_bottle"));
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("customer_search")->hasActiveFocus(); }, 3000));
  slowly("Jo");
  EXPECT_EQ(desk().ticket()->search(), "Jo");
  // A label read into it is a label all the same.
  begin("Other");
  const std::string code = kiosk_->counter().visit().bottle.code, other = kiosk_->counter().visit().id;
  ASSERT_TRUE(kiosk_->counter().open(kiosk_->counter().waiting().front().id));
  desk().ticket()->acceptSearch(QString::fromStdString(code));
  EXPECT_EQ(kiosk_->counter().visit().id, other);
}

TEST_F(NewClerk, AskedInTheShopsUnitsAndToldBesideTheField) {
  BackDesk& back = *desk().back();
  back.setShelf("shop");
  back.setValue("units", "us");
  back.apply();
  ASSERT_TRUE(hand_->touch("new_bottle"));
  EXPECT_TRUE(desk().ticket()->question("sample_temperature").contains("°F"));
  desk().ticket()->setFact("sample_temperature", "72");
  EXPECT_NEAR(kiosk_->counter().visit().bottle.sample_temperature->celsius(), 22.222, 0.001);
  auto* field = hand_->find("sample_temperature");
  ASSERT_TRUE(field);
  field->forceActiveFocus();
  field->setProperty("text", "720");
  ASSERT_TRUE(hand_->touch("taken_now") || hand_->touch("to_bench"));
  EXPECT_EQ(desk().ticket()->refused(), "sample_temperature");
  EXPECT_TRUE(desk().ticket()->refusedWhy().contains("32 to 140"))
      << desk().ticket()->refusedWhy().toStdString();
  // The next bottle begins with nothing of this one.
  desk().startBottle();
  QGuiApplication::processEvents();
  EXPECT_EQ(hand_->find("sample_temperature")->property("text").toString(), "");
  EXPECT_EQ(desk().ticket()->refused(), "");
}

TEST_F(NewClerk, ReadingsFromBeforeTheBottleGoToItAtOnce) {
  for (const auto& [analyte, value] :
       {std::pair("ph", 7.4), std::pair("free_chlorine", 2.0), std::pair("total_alkalinity", 90.0)})
    hear(analyte, value);
  EXPECT_TRUE(hand_->text_of("arrivals_orphans").contains("3 readings"));
  begin("Invented");
  desk().setPlace(Desk::Bench);
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->touch("orphan_all"); }, 3000));
  EXPECT_EQ(kiosk_->counter().visit().bottle.readings.size(), 3u);
  EXPECT_TRUE(kiosk_->counter().orphans().empty());
  // A hidden button answers nothing; the pad is at what is still due.
  hand_->key(Qt::Key_Return);
  EXPECT_EQ(bench().trouble(), "");
  EXPECT_NE(bench().analyteName(), "pH");
  EXPECT_NE(bench().analyteName(), "Free chlorine");
}

TEST_F(NewClerk, EnterKeepsTheNumberAfterAMethodWasTouched) {
  begin("Invented");
  desk().setPlace(Desk::Bench);
  bench().choose("total_alkalinity");
  ASSERT_TRUE(hand_->touch("method_drop_titration"));
  hand_->type("90");
  hand_->key(Qt::Key_Return);
  ASSERT_EQ(kiosk_->counter().visit().bottle.readings.size(), 1u);
  EXPECT_EQ(kiosk_->counter().visit().bottle.readings[0].method, Method::drop_titration);
}

TEST_F(NewClerk, AChosenWordIsAsWideAsBefore) {
  begin("Invented");
  desk().setPlace(Desk::Bottle);
  auto* chip = Hand::wait_for([&] { return hand_->find("kind_spa") != nullptr; }, 3000)
                   ? hand_->find("kind_spa")
                   : nullptr;
  ASSERT_TRUE(chip);
  ASSERT_TRUE(Hand::wait_for([&] { return chip->width() > 0; }, 3000));
  const double width = chip->width();
  desk().ticket()->setFact("kind", "spa");
  QGuiApplication::processEvents();
  EXPECT_TRUE(chip->property("chosen").toBool());
  EXPECT_EQ(chip->width(), width);
}

TEST_F(NewClerk, EveryPageOfTheBackRoomIsInAGroupThatLeadsToIt) {
  BackDesk& back = *desk().back();
  desk().setPlace(Desk::BackRoom);
  QStringList groups;
  for (const QVariant& group : back.groups()) groups.append(group.toMap().value("key").toString());
  for (const QVariant& shelf : back.shelves()) {
    const QVariantMap row = shelf.toMap();
    ASSERT_TRUE(groups.contains(row.value("group").toString())) << row.value("key").toString().toStdString();
    ASSERT_TRUE(hand_->touch("group_" + row.value("group").toString()));
    ASSERT_TRUE(Hand::wait_for([&] { return hand_->touch("shelf_" + row.value("key").toString()); }, 2000))
        << row.value("key").toString().toStdString();
    EXPECT_EQ(back.shelf(), row.value("key").toString());
  }
}

TEST_F(NewClerk, ThePinIsTypedOnTheKeyboardAfterANameIsTouched) {
  BackDesk& back = *desk().back();
  back.setShelf("staff");
  back.setValue("staff_name", "Ana");
  back.setValue("pin", "2468");
  back.setValue("staff_role", "keeper");
  back.apply();
  ASSERT_TRUE(Hand::wait_for([&] { return back.says().contains("Ana is kept"); }, 10000));
  LockDesk& lock = *desk().lock();
  lock.lock();
  EXPECT_FALSE(lock.chosen().isEmpty());  // there is nobody else
  ASSERT_TRUE(hand_->touch("lock_person_0"));
  hand_->type("2468");
  hand_->key(Qt::Key_Return);
  EXPECT_TRUE(Hand::wait_for([&] { return !lock.locked(); }, 10000)) << lock.says().toStdString();
}

}  // namespace
}  // namespace brimline::test
