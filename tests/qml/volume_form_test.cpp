// SPDX-License-Identifier: GPL-3.0-or-later
// The vessel's volume worked out through the window: by shape in feet and in metres, by meter, and taken
// back. Exact: a foot is 0.3048 m and a US gallon 231 cubic inches (NIST Special Publication 811, appendix
// B).
#include <cmath>

#include "qml/models/typed_measure.h"
#include "tests/qml/furnished.h"

namespace brimline::test {
namespace {

class VolumeAtTheCounter : public FurnishedCounter {
 protected:
  VolumeForm& form() { return *kiosk_->desk().ticket()->volume(); }
  const Vessel& vessel() { return kiosk_->counter().visit().vessel; }
  bool touch(const QString& name) {
    return Hand::wait_for([&] { return hand_->touch(name); }, 5000);
  }
  // A text that wraps settles late and moves what is below it: touched until it has done.
  bool touch_until(const QString& name, const std::function<bool()>& done) {
    return Hand::wait_for([&] { return done() || (hand_->touch(name) && done()); }, 5000);
  }
  bool has_keyboard(const QString& name) {
    const QQuickItem* item = kiosk_->window()->activeFocusItem();
    return item && item->objectName() == name;
  }
  void write(const QString& field, const QString& text) {
    ASSERT_TRUE(touch_until(field, [&] { return has_keyboard(field); })) << field.toStdString();
    hand_->key(Qt::Key_A, Qt::ControlModifier);
    hand_->type(text);
  }
  bool shows(const QString& name, const QString& words) {
    const bool there = Hand::wait_for([&] { return hand_->text_of(name).contains(words); }, 2000);
    if (!there) ADD_FAILURE() << name.toStdString() << " says: " << hand_->text_of(name).toStdString();
    return there;
  }
  void open_form(const QString& way) {
    ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
    ASSERT_TRUE(kiosk_->counter().open(visit_));
    kiosk_->desk().setPlace(Desk::Bottle);
    ASSERT_TRUE(touch_until("work_volume_out", [&] { return form().shown(); }));
    ASSERT_TRUE(touch_until("volume_way_" + way, [&] { return form().way() == way; }));
  }
  void change_units(Units units) {
    ASSERT_TRUE(kiosk_->counter().change([&](Visit& v) { v.customer->units = units; }));
  }
};

TEST_F(VolumeAtTheCounter, ComesFromTheShapeAndIsGivenBack) {
  ASSERT_NO_FATAL_FAILURE(open_form("rectangle"));
  const Vessel before = vessel();
  ASSERT_TRUE(touch("volume_bottom_sloping"));
  ASSERT_NO_FATAL_FAILURE(write("volume_length", "40"));
  ASSERT_NO_FATAL_FAILURE(write("volume_width", "20"));
  ASSERT_NO_FATAL_FAILURE(write("volume_depth", "3"));
  ASSERT_NO_FATAL_FAILURE(write("volume_deep_depth", "8"));
  // 40 x 20 x 5.5 ft are 4,400 cubic feet, 32,914 gallons
  shows(
      "volume_working",
      QString::fromUtf8("40\u00a0ft × 20\u00a0ft × (3\u00a0ft + 8\u00a0ft) ÷ 2 × 7.48 = 32,900 US gallons"));
  shows("volume_result", QString::fromUtf8("33,000 ± 2,000 US gallons"));
  shows("volume_doubts", "On file: ");  // not half as much there
  EXPECT_EQ(vessel(), before);
  ASSERT_TRUE(touch("keep_volume"));
  EXPECT_NEAR(vessel().volume->us_gallons(), 40.0 * 20 * 5.5 * 1728 / 231, 1e-6);
  // 5 cm and 1 % of 40 and 20 ft; 5 cm and 2 % of each depth, of 5.5 ft; 2 % edges, 5 % slope
  const double ft = 0.3048;
  const double across = std::hypot(std::hypot(0.05 / (40 * ft), 0.01), std::hypot(0.05 / (20 * ft), 0.01));
  const double deep =
      std::hypot(std::hypot(0.05, 0.02 * 3 * ft), std::hypot(0.05, 0.02 * 8 * ft)) / 2 / (5.5 * ft);
  EXPECT_NEAR(*vessel().volume_relative_sd, std::hypot(std::hypot(across, deep), 0.02, 0.05), 1e-4);
  const auto stored = kiosk_->counter().records().vessels_of("C-1");
  ASSERT_EQ(stored.size(), 1u);
  EXPECT_EQ(stored[0].volume, vessel().volume);
  EXPECT_EQ(stored[0].volume_relative_sd, vessel().volume_relative_sd);
  EXPECT_EQ(hand_->find("keep_volume"), nullptr);
  shows("volume_kept_says", "32,900 US gallons. Before, it was ");
  const QString how = "volume_how_" + QString::number(*vessel().volume_relative_sd);
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->find(how) != nullptr; }, 2000));
  EXPECT_EQ(hand_->text_of(how), QString::fromUtf8("By its shape, ± 6 %"));
  ASSERT_TRUE(touch("give_volume_form_back"));
  EXPECT_EQ(vessel(), before);
  EXPECT_EQ(kiosk_->counter().records().vessels_of("C-1")[0].volume, before.volume);
  EXPECT_FALSE(form().kept());
}

TEST_F(VolumeAtTheCounter, IsWorkedOutByTheKeyboardAloneInFeetAndInches) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
  ASSERT_TRUE(kiosk_->counter().open(visit_));
  kiosk_->desk().setPlace(Desk::Bottle);
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("work_volume_out") != nullptr; }, 5000));
  ASSERT_TRUE(hand_->press("work_volume_out"));
  ASSERT_TRUE(hand_->press("volume_way_oval"));
  ASSERT_EQ(form().way(), "oval");
  ASSERT_TRUE(has_keyboard("volume_way_oval"));  // a choice made keeps its place
  for (const auto& [field, text] :
       {std::pair{"volume_length", "16 6"}, {"volume_width", "10"}, {"volume_depth", "4'6\""}}) {
    ASSERT_TRUE(hand_->tab_to(field)) << field;
    hand_->type(text);
  }
  shows("volume_working", QString::fromUtf8("π ÷ 4 × 16 ft 6 in × 10\u00a0ft × 4 ft 6 in × 7.48 = "));
  ASSERT_TRUE(hand_->press("keep_volume"));
  EXPECT_NEAR(vessel().volume->us_gallons(), std::acos(-1.0) / 4 * 16.5 * 10 * 4.5 * 1728 / 231, 1e-6);
}

TEST_F(VolumeAtTheCounter, ComesFromTheMeterAndItsChecksAreToldAtTheirField) {
  ASSERT_NO_FATAL_FAILURE(open_form("meter"));
  EXPECT_EQ(form().meter(), "gallons");
  ASSERT_NO_FATAL_FAILURE(write("volume_before", "120,000"));
  ASSERT_NO_FATAL_FAILURE(write("volume_after", "119,000"));
  const Vessel before = vessel();
  ASSERT_TRUE(touch("keep_volume"));
  shows("volume_after_fault", "Lower than before");
  EXPECT_EQ(vessel(), before);
  EXPECT_TRUE(form().working().isEmpty());
  ASSERT_NO_FATAL_FAILURE(write("volume_after", "13x"));
  shows("volume_after_fault", QString::fromUtf8("“13x” cannot be read"));
  ASSERT_NO_FATAL_FAILURE(write("volume_after", "120,001"));
  shows("volume_after_fault", "Hardly anything went through");
  ASSERT_NO_FATAL_FAILURE(write("volume_after", "135,000"));
  ASSERT_TRUE(Hand::wait_for([&] { return !hand_->find("volume_after_fault"); }, 2000));
  shows("volume_working", "= 15,000 US gallons");
  // 2,005 cubic feet of 1,728 cubic inches
  ASSERT_TRUE(touch("volume_meter_ft3"));
  ASSERT_NO_FATAL_FAILURE(write("volume_before", "4100"));
  ASSERT_NO_FATAL_FAILURE(write("volume_after", "6105"));
  ASSERT_TRUE(touch("keep_volume"));
  EXPECT_NEAR(vessel().volume->us_gallons(), 2005.0 * 1728 / 231, 1e-6);
  EXPECT_NEAR(*vessel().volume_relative_sd, 0.0322, 1e-4);
  EXPECT_EQ(form().how(), QString::fromUtf8("By meter, ± 3 %"));
  // Typed since: the meter's error says nothing of another number.
  kiosk_->desk().ticket()->setFact("volume", "20000");
  EXPECT_FALSE(vessel().volume_relative_sd);
  EXPECT_FALSE(form().kept());
}

TEST_F(VolumeAtTheCounter, AsksForWhatIsMissingAndDoubtsWhatIsUnlikely) {
  ASSERT_NO_FATAL_FAILURE(open_form("kidney"));
  ASSERT_NO_FATAL_FAILURE(change_units(Units::metric));
  ASSERT_FALSE(form().shown());  // what was asked in feet is not asked in metres
  ASSERT_TRUE(touch("work_volume_out"));
  ASSERT_NO_FATAL_FAILURE(write("volume_length", "6,0"));
  ASSERT_TRUE(touch("keep_volume"));
  shows("volume_width_fault", "wanted");
  ASSERT_NO_FATAL_FAILURE(write("volume_width", "3,0"));
  ASSERT_NO_FATAL_FAILURE(write("volume_depth", "1,4"));
  shows("volume_working", QString::fromUtf8("6.0\u00a0m × 3.0\u00a0m × 1.4\u00a0m = 25.2 m³ = 25,200 L"));
  ASSERT_NO_FATAL_FAILURE(write("volume_depth", "4,5"));
  EXPECT_TRUE(form().doubts().contains("That deep is rare")) << form().doubts().toStdString();
  ASSERT_TRUE(kiosk_->counter().change([](Visit& v) { v.vessel.kind = VesselKind::spa; }));
  EXPECT_TRUE(form().doubts().contains("Seats take room")) << form().doubts().toStdString();
  EXPECT_TRUE(form().doubts().contains("Hardly any vessel of this kind")) << form().doubts().toStdString();
  form().setWay("kidney");
  EXPECT_TRUE(form().working().isEmpty());
  form().write("other_width", "2.4");
  EXPECT_TRUE(form().working().startsWith(QString::fromUtf8("0.45 × (3.0")))
      << form().working().toStdString();
  EXPECT_TRUE(form().method().contains("no source")) << form().method().toStdString();
  // Another vessel begins anew.
  kiosk_->desk().ticket()->chooseVessel("new");
  EXPECT_FALSE(form().shown());
  EXPECT_TRUE(form().working().isEmpty());
}

// The volume learnt from the water's answers stands again once the one worked out is given back.
TEST_F(VolumeAtTheCounter, LeavesWhatWasLearntAsItWas) {
  ASSERT_NO_FATAL_FAILURE(open_form("meter"));
  ASSERT_TRUE(kiosk_->counter().change([&](Visit& v) {
    v.vessel.volume = Volume::cubic_metres(48);
    v.vessel.volume_relative_sd = 0.07;
    v.vessel.learnt_volume =
        LearntVolume{*v.vessel.volume, kiosk_->counter().now(), Volume::cubic_metres(56.8), 0.1};
  }));
  const auto how = [&] {
    return kiosk_->desk().ticket()->options("volume_how").last().toMap().value("word").toString();
  };
  EXPECT_EQ(how(), QString::fromUtf8("From the water’s answers, ± 7 %"));
  form().write("before", "0");
  form().write("after", "15000");
  form().keep();
  EXPECT_EQ(standing_lesson(vessel()), nullptr);
  form().giveBack();
  ASSERT_NE(standing_lesson(vessel()), nullptr);
  EXPECT_EQ(vessel().volume_relative_sd, 0.07);
  kiosk_->desk().then()->giveVolumeBack();
  EXPECT_EQ(vessel().volume, Volume::cubic_metres(56.8));
}

// Once 15 gallons were taken for "15,000".
TEST_F(VolumeAtTheCounter, IsTypedWithItsThousandsParted) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
  ASSERT_TRUE(kiosk_->counter().open(visit_));
  kiosk_->desk().ticket()->setFact("volume", "15,000");
  EXPECT_NEAR(vessel().volume->us_gallons(), 15000, 1e-6);
  ASSERT_NO_FATAL_FAILURE(change_units(Units::metric));
  kiosk_->desk().ticket()->setFact("volume", "56,8");
  EXPECT_NEAR(vessel().volume->cubic_metres(), 56.8, 1e-9);
}

TEST(TypedMeasure, IsReadAsItIsWrittenAtACounter) {
  for (const char* text : {"16 6", "16-6", "16'6\"", "16’ 6”", "16 ft 6 in", "16.5", "16,5", " 16.5 ft"}) {
    const auto feet = typed_feet(QString::fromUtf8(text));
    ASSERT_TRUE(feet) << text;
    EXPECT_DOUBLE_EQ(feet->value, 16.5) << text;
  }
  EXPECT_DOUBLE_EQ(typed_feet("16'")->value, 16);
  for (const char* text : {"", "16 12", "six", "16 6 3", "inf", "nan"})
    EXPECT_FALSE(typed_feet(text)) << text;
  EXPECT_DOUBLE_EQ(typed_meter("120,000", true)->value, 120000);
  EXPECT_DOUBLE_EQ(typed_meter("1 210,500", false)->value, 1210.5);
  EXPECT_EQ(typed_meter("1210,500", false)->decimals, 3);
  EXPECT_FALSE(typed_meter("1,210,500", false));
}

}  // namespace
}  // namespace brimline::test
