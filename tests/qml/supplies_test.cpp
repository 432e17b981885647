// SPDX-License-Identifier: GPL-3.0-or-later
// Reagents and instrument checks written down in the Back room speak on the Bench and in the plan.
#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

class SuppliesAtTheCounter : public CounterTest {
 protected:
  BackDesk& back() const { return *kiosk_->desk().back(); }

  void keep_lot(const char* number, const char* analyte, const char* expires, const char* opened) {
    back().setShelf("reagents");
    back().setValue("lot", number);
    back().setValue("lot_analyte", analyte);
    back().setValue("lot_expires", expires);
    back().setValue("lot_opened", opened);
    back().apply();
  }
  QVariantMap bench_row(const QString& analyte) const {
    RowModel& rows = *kiosk_->desk().bench()->readings();
    for (int i = 0; i < rows.count(); ++i)
      if (rows.row(i).value("analyte") == analyte) return rows.row(i);
    return {};
  }
  void read(const char* analyte, double value) {
    Reading reading;
    reading.analyte = analyte;
    reading.value = value;
    reading.method = Method::photometer;
    reading.instrument = "bench 1";
    ASSERT_TRUE(kiosk_->counter().add_reading(reading));
  }
};

TEST_F(SuppliesAtTheCounter, AnExpiredLotIsReadAgainAlsoAfterARestart) {
  open_counter("2026-06-14T09:00:00-05:00");
  keep_lot("L-1", "free_chlorine", "2026-05", "2026-04-02");
  EXPECT_EQ(back().rows()->count(), 1) << back().says().toStdString();
  kiosk_->desk().startBottle();
  read("free_chlorine", 2);
  read("total_alkalinity", 90);
  EXPECT_TRUE(bench_row("free_chlorine").value("note").toString().contains("L-1"));
  EXPECT_TRUE(bench_row("free_chlorine").value("waits").toBool());
  EXPECT_EQ(bench_row("total_alkalinity").value("note").toString().indexOf("L-1"), -1);
  close_counter();
  open_counter("2026-06-14T09:10:00-05:00");
  ASSERT_EQ(kiosk_->counter().supplies().lots.size(), 1U);
  EXPECT_EQ(kiosk_->counter().supplies().lots[0].expires->text(), "2026-05-31T23:59:59-05:00");
  keep_lot("L-2", "free_chlorine", "2027-05", "2026-06-14");
  kiosk_->desk().startBottle();
  read("free_chlorine", 2);
  EXPECT_EQ(kiosk_->counter().visit().bottle.readings[0].lot, "L-2");  // opened last
  EXPECT_EQ(bench_row("free_chlorine").value("note").toString().indexOf("expired"), -1);
}

TEST_F(SuppliesAtTheCounter, AFailedCheckTakesTheReadingOutOfThePlan) {
  open_counter("2026-06-14T09:00:00-05:00");
  back().setShelf("checks");
  back().setValue("check_instrument", "bench 1");
  back().setValue("check_analyte", "ph");
  back().setValue("check_passed", "no");
  back().apply();
  ASSERT_EQ(kiosk_->counter().supplies().checks.size(), 1U) << back().says().toStdString();
  kiosk_->desk().startBottle();
  ASSERT_TRUE(kiosk_->counter().change([](Visit& v) {
    v.vessel.id = "W-1";
    v.vessel.kind = VesselKind::pool;
    v.vessel.use = VesselUse::household;
    v.vessel.place = Place::outdoor;
    v.vessel.sanitizer = Sanitizer::chlorine;
    v.vessel.volume = Volume::cubic_metres(50);
  }));
  read("free_chlorine", 2);
  read("ph", 8.1);
  read("total_alkalinity", 60);
  EXPECT_EQ(bench_row("ph").value("standing").toString(), "kept; says nothing");
  PlanDesk& plan = *kiosk_->desk().plan();
  ASSERT_TRUE(Hand::wait_for([&] { return plan.ready(); }));
  EXPECT_FALSE(plan.plan()->home_plan);  // nothing may hang on it
  // A check made right later redeems no reading taken before it, but the next bottle is believed.
  back().setValue("check_passed", "yes");
  back().apply();
  close_counter();
  open_counter("2026-06-14T10:00:00-05:00");
  kiosk_->desk().startBottle();
  read("ph", 7.5);
  EXPECT_EQ(bench_row("ph").value("standing").toString(), "kept");
}

TEST_F(SuppliesAtTheCounter, WhatIsMistypedIsNotKept) {
  open_counter("2026-06-14T09:00:00-05:00");
  keep_lot("L-1", "free_chlorine", "next spring", "");
  EXPECT_TRUE(back().says().contains("next spring"));
  EXPECT_TRUE(kiosk_->counter().supplies().lots.empty());
  keep_lot("", "free_chlorine", "2027-05", "");
  EXPECT_TRUE(kiosk_->counter().supplies().lots.empty());
}

}  // namespace
}  // namespace brimline::test
