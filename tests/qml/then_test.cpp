// SPDX-License-Identifier: GPL-3.0-or-later
// Then and now through the window: the volume that the water tells, and whether the plan worked.
#include <algorithm>

#include "tests/qml/furnished.h"

namespace brimline::test {
namespace {

class ThenAndNow : public FurnishedCounter {
 protected:
  ThenDesk& then() { return *kiosk_->desk().then(); }
  const Vessel& vessel() { return kiosk_->counter().visit().vessel; }

  // 85 mol of calcium chloride are 8,508 g of hardness as CaCO3 (100.09 g a mole): in 47 m3, 181 mg/L. On
  // file stand 56.8 m3.
  void answer_like_less() {
    const Visit& last = kiosk_->counter().earlier().back();
    double hardness = 0;
    for (const Reading& r : last.bottle.readings)
      if (r.analyte == "calcium_hardness") hardness = r.value;
    ASSERT_GT(hardness, 0);
    ASSERT_TRUE(kiosk_->counter().change([&](Visit& visit) {
      visit.bottle.additions_since = {{"calcium_chloride", 85.0, 10.0}};
      std::erase_if(visit.bottle.readings, [](const Reading& r) { return r.analyte == "calcium_hardness"; });
      Reading reading;
      reading.analyte = "calcium_hardness";
      reading.value = hardness + 181;
      reading.method = Method::drop_titration;
      visit.bottle.readings.push_back(reading);
    }));
  }
};

TEST_F(ThenAndNow, TakesTheVolumeThatTheWaterTellsAndGivesItBack) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
  ASSERT_TRUE(kiosk_->counter().open(visit_));
  ASSERT_NO_FATAL_FAILURE(answer_like_less());
  const Vessel before = vessel();
  kiosk_->desk().setPlace(Desk::ThenNow);
  ASSERT_TRUE(Hand::wait_for([&] { return then().canTakeVolume(); }, 20000));
  EXPECT_EQ(hand_->text_of("take_volume_says"), then().volumeSays());
  EXPECT_TRUE(then().volumeSays().contains("US gallons")) << then().volumeSays().toStdString();
  EXPECT_TRUE(then().lessonSays().isEmpty());
  ASSERT_TRUE(hand_->touch("take_volume"));
  EXPECT_LT(vessel().volume->cubic_metres(), 0.95 * before.volume->cubic_metres());
  EXPECT_GT(vessel().volume->cubic_metres(), 44);
  EXPECT_LT(*vessel().volume_relative_sd, *before.volume_relative_sd);
  // stored, not only shown: the next bottle of this vessel has it
  const auto stored = kiosk_->counter().records().vessels_of("C-1");
  ASSERT_EQ(stored.size(), 1u);
  EXPECT_EQ(stored[0].volume, vessel().volume);
  ASSERT_TRUE(
      Hand::wait_for([&] { return then().changes()->count() > 0 && !then().lessonSays().isEmpty(); }));
  EXPECT_FALSE(then().canTakeVolume());
  ASSERT_TRUE(hand_->touch("give_volume_back"));
  EXPECT_EQ(vessel(), before);
  EXPECT_EQ(kiosk_->counter().records().vessels_of("C-1")[0].volume, before.volume);
  EXPECT_TRUE(then().lessonSays().isEmpty());
}

// Against the visits as the counter holds them.
TEST_F(ThenAndNow, DrawsAYearOfTheReadingThatIsChosen) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
  ASSERT_TRUE(kiosk_->counter().open(visit_));
  YearChart& year = *then().year();
  kiosk_->desk().setPlace(Desk::ThenNow);
  ASSERT_TRUE(Hand::wait_for([&] {
    const QQuickItem* picture = hand_->find("year_picture");
    return !year.readings().isEmpty() && picture && picture->width() > 0;
  }));
  for (const char* analyte : {"ph", "total_alkalinity"}) {
    ASSERT_TRUE(hand_->touch(QStringLiteral("year_") + analyte)) << analyte;
    EXPECT_EQ(year.reading(), analyte);
    int read = 0;
    for (const Visit& visit : kiosk_->counter().earlier())
      read += std::any_of(visit.bottle.readings.begin(), visit.bottle.readings.end(),
                          [&](const Reading& r) { return r.analyte == analyte; });
    EXPECT_EQ(year.points().size(), read + 1) << analyte;
    EXPECT_EQ(hand_->text_of("year_says"), year.says());
    // The scale holds every bar, both ends of the target and nothing upside down.
    for (const QVariant& one : year.points()) {
      const double up = one.toMap()["up"].toDouble(), half = one.toMap()["half"].toDouble();
      EXPECT_GT(half, 0);
      EXPECT_GE(up - half, -1e-9);
      EXPECT_LE(up + half, 1 + 1e-9);
    }
    ASSERT_TRUE(year.band().contains("low")) << analyte;
    EXPECT_GE(year.band()["low"].toDouble(), 0);
    EXPECT_LT(year.band()["low"].toDouble(), year.band()["high"].toDouble());
    EXPECT_LE(year.band()["high"].toDouble(), 1);
    EXPECT_NEAR(year.points().last().toMap()["at"].toDouble(), 1, 1e-9);  // the bottle on the counter
  }
  // The bottle was taken on 13 June 2026; no 29 February lies in the year before.
  EXPECT_EQ(year.dates().first().toMap()["word"].toString(), "13 Jun");
  EXPECT_EQ(year.dates().last().toMap()["word"].toString(), "13 Jun");
  EXPECT_TRUE(year.inWords().startsWith("Total alkalinity, mg/L CaCO3. ")) << year.inWords().toStdString();
  // A bottle on the counter that is read again is another point in the same place, not one more.
  const auto points = year.points().size();
  Reading again = *std::find_if(kiosk_->counter().visit().bottle.readings.begin(),
                                kiosk_->counter().visit().bottle.readings.end(),
                                [](const Reading& r) { return r.analyte == "total_alkalinity"; });
  again.value = 4000;
  ASSERT_TRUE(kiosk_->counter().change([&](Visit& visit) {
    std::erase_if(visit.bottle.readings, [](const Reading& r) { return r.analyte == "total_alkalinity"; });
    again.clipped = Clip::above;
    visit.bottle.readings.push_back(again);
  }));
  ASSERT_TRUE(Hand::wait_for([&] { return year.says().contains("4000"); }));
  EXPECT_EQ(year.points().size(), points);
  EXPECT_TRUE(year.inWords().contains("more than 4000")) << year.inWords().toStdString();
  EXPECT_FALSE(year.points().last().toMap()["counts"].toBool());
}

TEST_F(ThenAndNow, SaysWhetherThePlanWorked) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
  ASSERT_TRUE(kiosk_->counter().open(visit_));
  EXPECT_EQ(then().answers()->count(), 0);  // no plan was told then
}

}  // namespace
}  // namespace brimline::test
