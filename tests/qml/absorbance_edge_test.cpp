// SPDX-License-Identifier: GPL-3.0-or-later
// Absorbances at the counter: through the lot's curve to a reading with its error, or to nothing at all.
#include "qml/models/absorbance_edge.h"

#include <cmath>

#include "analysis/calibration/absorbance.h"
#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

class AbsorbancesAtTheCounter : public CounterTest {
 protected:
  void SetUp() override { open_counter("2026-06-14T09:00:00-05:00"); }
  Counter& counter() const { return kiosk_->counter(); }

  void keep_lot_with_curve() {
    ReagentLot lot;
    lot.lot = "Fe-1";
    lot.analyte = "iron";
    lot.opened = Instant::parse("2026-06-01T09:00:00-05:00");
    ASSERT_TRUE(counter().keep_lot(lot));
    kiosk_->desk().back()->setShelf("charts");
    EXPECT_FALSE(kiosk_->desk().charts()->keepCurve("Fe-1", "510", "0 0; 1 one"));
    EXPECT_FALSE(kiosk_->desk().charts()->keepCurve("Fe-2", "510", "0 0; 1 0.197; 2 0.394"));
    EXPECT_FALSE(kiosk_->desk().charts()->keepCurve("Fe-1", "510", "0 0; 1 0.197"));
    ASSERT_TRUE(
        kiosk_->desk().charts()->keepCurve("Fe-1", "510", "0 0.001; 1 0.197; 2 0.394; 3 0.591; 4 0.787"))
        << kiosk_->desk().charts()->lotsSay().toStdString();
  }
  Happening absorbance(const char* analyte, double value, double nm) const {
    InstrumentReading reading{analyte, value, std::nullopt, std::nullopt, std::nullopt, 0.002};
    reading.absorbance = AbsorbanceLight{nm, 1};
    return {counter().now(), "colour_lines", reading};
  }
};

// HJ/T 345-2007: 1 mg/L of iron in 1 cm at 510 nm is 0.197.
TEST_F(AbsorbancesAtTheCounter, IronIsReadThroughTheLotsCurve) {
  kiosk_->desk().startBottle();
  kiosk_->desk().onHappened(absorbance("iron", 0.197, 510));
  EXPECT_TRUE(counter().visit().bottle.readings.empty());  // no curve: nothing is guessed
  EXPECT_TRUE(kiosk_->desk().bench()->trouble().contains("510"))
      << kiosk_->desk().bench()->trouble().toStdString();
  keep_lot_with_curve();
  kiosk_->desk().onHappened(absorbance("iron", 0.197, 510));
  ASSERT_EQ(counter().visit().bottle.readings.size(), 1u);
  const Reading& reading = counter().visit().bottle.readings[0];
  EXPECT_NEAR(reading.value, 1.0, 0.01);
  ASSERT_TRUE(reading.sd);
  EXPECT_GT(*reading.sd, 0);
  EXPECT_LT(*reading.sd, 0.05);
  EXPECT_EQ(reading.lot, "Fe-1");
  kiosk_->desk().onHappened(absorbance("iron", 1.6, 510));
  ASSERT_EQ(counter().visit().bottle.readings.size(), 2u);
  EXPECT_EQ(counter().visit().bottle.readings[1].clipped, Clip::above);
}

// Yao & Byrne 2001 (from memory): the two bands of phenol red as mass action makes them at pH 7.6.
TEST_F(AbsorbancesAtTheCounter, PhNeedsBothColours) {
  const Indicator& red = phenol_red();
  const double base = 1 / (1 + std::pow(10, red.pk(25) - 7.6)), acid = 1 - base;
  kiosk_->desk().startBottle();
  kiosk_->desk().onHappened(absorbance("ph", 0.5 * (acid + red.e3 * base), red.acid_nm));
  EXPECT_TRUE(counter().visit().bottle.readings.empty());
  kiosk_->desk().onHappened(absorbance("ph", 0.5 * (red.e1 * acid + red.e2 * base), red.base_nm));
  ASSERT_EQ(counter().visit().bottle.readings.size(), 1u);
  EXPECT_NEAR(counter().visit().bottle.readings[0].value, 7.6, 1e-9);
  EXPECT_GT(counter().visit().bottle.readings[0].sd.value_or(0), 0);
  kiosk_->desk().onHappened(absorbance("ph", 0.3, 610));
  EXPECT_EQ(counter().visit().bottle.readings.size(), 1u);
}

}  // namespace
}  // namespace brimline::test
