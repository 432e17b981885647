// SPDX-License-Identifier: GPL-3.0-or-later
// The first start through the real window: what is answered is kept in the shop's settings, and is asked only
// where there are none.
#include "qml/models/settings.h"
#include "tests/qml/counter_fixture.h"
#include "tests/qml/page_faults.h"

namespace brimline::test {
namespace {

class AtFirstStart : public CounterTest {
 protected:
  void write(const QString& field, const QString& text) {
    ASSERT_TRUE(hand_->touch(field)) << field.toStdString();
    hand_->type(text);
  }
  bool asks(const QString& sentence) {
    return Hand::wait_for([&] { return hand_->text_of("start_title") == sentence; }, 5000);
  }
};

TEST_F(AtFirstStart, TheShopIsWrittenDownAndKept) {
  open_counter("2026-06-14T09:00:00-05:00");
  kiosk_->desk().firstStart()->begin();
  ASSERT_TRUE(asks("Which language do you read?"));
  ASSERT_TRUE(hand_->touch("set_language_es"));
  ASSERT_TRUE(hand_->touch("start_next"));  // the window is made anew, in Spanish, and goes on
  ASSERT_TRUE(Hand::wait_for([&] { return kiosk_->counter().words().language() == "es"; }, 5000));
  hand_ = std::make_unique<Hand>(kiosk_->window());
  ASSERT_TRUE(asks("¿De quién es este mostrador?"));
  ASSERT_NO_FATAL_FAILURE(write("set_name", "La Tienda Inventada"));
  ASSERT_NO_FATAL_FAILURE(write("set_emergency", "112"));
  ASSERT_TRUE(hand_->touch("set_units_metric"));
  ASSERT_TRUE(hand_->touch("set_paper_a4"));
  ASSERT_TRUE(hand_->touch("start_next"));
  ASSERT_TRUE(asks("¿Con qué se mide aquí?"));
  EXPECT_TRUE(hand_->touch("start_emergency"));  // from here too
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("emergency_close") != nullptr; }, 2000));
  ASSERT_TRUE(hand_->touch("emergency_close"));
  ASSERT_TRUE(hand_->touch("start_next"));
  ASSERT_TRUE(asks("¿Quién puede cambiar lo que se ajusta aquí?"));
  ASSERT_TRUE(hand_->touch("start_next"));  // nobody: it is passed over
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("place_arrivals") != nullptr; }, 2000));

  const Settings kept = load_settings(path("shop.ini"));
  EXPECT_EQ(kept.language, "es");
  EXPECT_EQ(kept.shop.name, "La Tienda Inventada");
  ASSERT_EQ(kept.shop.emergency.size(), 1u);
  EXPECT_EQ(kept.shop.emergency[0].number, "112");
  EXPECT_EQ(kept.units, "metric");
  EXPECT_EQ(kept.paper, "a4");
  EXPECT_EQ(kiosk_->desk().ticket()->usualUnits(), "metric");
}

// What the window begins with is laid out before anybody touches it.
TEST_F(AtFirstStart, TheVeryFirstPageIsLaidOut) {
  first_start_ = true;
  open_counter("2026-06-14T09:00:00-05:00");
  ASSERT_TRUE(asks("Which language do you read?"));
  EXPECT_TRUE(Hand::wait_for([&] { return text_faults(kiosk_->window()).isEmpty(); }, 3000))
      << text_faults(kiosk_->window()).join("\n").toStdString();
  EXPECT_EQ(too_small(kiosk_->window()).join("\n").toStdString(), "");
  ASSERT_TRUE(hand_->touch("set_language_fr"));
}

TEST_F(AtFirstStart, TheFirstKeeperIsWrittenDown) {
  open_counter("2026-06-14T09:00:00-05:00");
  kiosk_->desk().firstStart()->begin();
  for (const char* page :
       {"Whose counter is this?", "What measures here?", "Who may change what is set here?"}) {
    ASSERT_TRUE(hand_->touch("start_next"));
    ASSERT_TRUE(asks(page)) << page;
  }
  EXPECT_EQ(hand_->find("set_staff_role_keeper"), nullptr) << "the first one is a keeper";
  ASSERT_NO_FATAL_FAILURE(write("set_staff_name", "Ana"));
  ASSERT_TRUE(hand_->touch("start_next"));
  EXPECT_TRUE(
      Hand::wait_for([&] { return hand_->text_of("start_says").contains("at least 4 digits"); }, 2000))
      << hand_->text_of("start_says").toStdString();
  ASSERT_NO_FATAL_FAILURE(write("set_pin", "2468"));
  ASSERT_TRUE(hand_->touch("start_next"));
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("place_arrivals") != nullptr; }, 10000));
  const auto staff = kiosk_->counter().records().staff();
  ASSERT_EQ(staff.size(), 1u);
  EXPECT_EQ(staff[0].name, "Ana");
  EXPECT_EQ(staff[0].role, StaffRole::keeper);
  EXPECT_FALSE(kiosk_->desk().lock()->locked());
}

TEST_F(AtFirstStart, ItIsAskedOnlyWhereNoSettingsAre) {
  const QStringList arguments = {"brimline", "--settings", path("none.ini")};
  const auto none = kiosk_options(arguments);
  ASSERT_TRUE(none && *none);
  EXPECT_TRUE((*none)->first_start);
  ASSERT_TRUE(save_settings({}, path("none.ini")));
  const auto some = kiosk_options(arguments);
  ASSERT_TRUE(some && *some);
  EXPECT_FALSE((*some)->first_start);
}

TEST_F(AtFirstStart, ItCanBePassedOver) {
  open_counter("2026-06-14T09:00:00-05:00");
  kiosk_->desk().firstStart()->begin();
  ASSERT_TRUE(hand_->touch("start_leave"));
  EXPECT_NE(hand_->find("place_arrivals"), nullptr);
}

}  // namespace
}  // namespace brimline::test
