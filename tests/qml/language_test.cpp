// SPDX-License-Identifier: GPL-3.0-or-later
// The clerk's language and the customer's are two: the screen in one, the sheet and the plan as told in the
// other.
#include <QFile>

#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

class TwoLanguages : public CounterTest {
 protected:
  void put_a_visit_on_the_counter(const char* customers_language) {
    kiosk_->desk().startBottle();
    ASSERT_TRUE(kiosk_->counter().change([&](Visit& v) {
      v.customer =
          Customer{"C-1", "Ada Quill", "555-0101", std::nullopt, std::nullopt, customers_language, Units::us};
      v.vessel.id = "W-1";
      v.vessel.kind = VesselKind::pool;
      v.vessel.use = VesselUse::household;
      v.vessel.place = Place::outdoor;
      v.vessel.sanitizer = Sanitizer::chlorine;
      v.vessel.volume = Volume::cubic_metres(50);
    }));
    for (const auto& [analyte, value] : std::vector<std::pair<const char*, double>>{
             {"free_chlorine", 0.8}, {"total_chlorine", 0.9}, {"ph", 8.0}, {"total_alkalinity", 60}}) {
      Reading reading;
      reading.analyte = analyte;
      reading.value = value;
      reading.method = Method::photometer;
      ASSERT_TRUE(kiosk_->counter().add_reading(reading));
    }
    PlanDesk& plan = *kiosk_->desk().plan();
    ASSERT_TRUE(Hand::wait_for([&] { return plan.ready(); }));
  }
  QString first_finding() const {
    RowModel& rows = *kiosk_->desk().plan()->findings();
    return rows.count() ? rows.row(0).value("words").toStringList().join(' ') : QString();
  }
};

TEST_F(TwoLanguages, ANumberHasTheLanguagesOwnMark) {
  open_counter("2026-06-14T09:00:00-05:00");
  kiosk_->desk().back()->setShelf("screen");
  kiosk_->desk().back()->setValue("language", "fr");
  kiosk_->desk().back()->apply();
  ASSERT_TRUE(
      Hand::wait_for([&] { return kiosk_->counter().words().language() == "fr" && kiosk_->window(); }));
  put_a_visit_on_the_counter("fr");
  Hand hand(kiosk_->window());  // made anew with the language
  Ticket& ticket = *kiosk_->desk().ticket();
  ticket.setFact("volume", "15850,3");
  EXPECT_EQ(ticket.facts().value("volume"), "15850,3");
  ticket.setFact("volume", "15850.3");
  EXPECT_EQ(ticket.facts().value("volume"), "15850,3");
  kiosk_->desk().setPlace(Desk::Bench);
  ASSERT_TRUE(Hand::wait_for([&] { return hand.find("pad_point") != nullptr; }));
  EXPECT_EQ(hand.text_of("pad_point"), ",");
  kiosk_->desk().bench()->choose("ph");
  for (const char* key : {"pad_7", "pad_point", "pad_5"}) ASSERT_TRUE(hand.touch(key));
  EXPECT_EQ(hand.text_of("pad_typed"), "7,5");
  ASSERT_TRUE(hand.touch("pad_enter"));
  EXPECT_EQ(kiosk_->counter().visit().bottle.readings.back().value, 7.5);
}

TEST_F(TwoLanguages, TheScreenSpeaksTheClerksAndTheSheetTheCustomers) {
  open_counter("2026-06-14T09:00:00-05:00");
  kiosk_->desk().back()->setShelf("shop");
  kiosk_->desk().back()->setValue("language", "fr");
  kiosk_->desk().back()->apply();
  ASSERT_TRUE(
      Hand::wait_for([&] { return kiosk_->counter().words().language() == "fr" && kiosk_->window(); }));
  EXPECT_EQ(kiosk_->desk().places()->row(1).value("title").toString(), "Flacon");
  const QVariantMap card = kiosk_->desk().emergencyCards().first().toMap();
  EXPECT_NE(card.value("title").toString(), "Fumes breathed in");
  put_a_visit_on_the_counter("es");
  EXPECT_TRUE(first_finding().contains(u"chlore")) << first_finding().toStdString();
  kiosk_->desk().plan()->makeSheet(false);
  ASSERT_TRUE(Hand::wait_for([&] { return !kiosk_->desk().plan()->busy(); }));
  const Visit& told = kiosk_->counter().visit();
  ASSERT_TRUE(told.plan_as_told);
  EXPECT_NE(told.plan_as_told->findings.front().text.find("cloro"), std::string::npos)
      << told.plan_as_told->findings.front().text;
  // and it is the plan that was shown
  const Plan& shown = *kiosk_->desk().plan()->plan();
  ASSERT_EQ(told.plan_as_told->steps.size(), shown.steps.size());
  for (size_t i = 0; i < shown.steps.size(); ++i)
    EXPECT_EQ(told.plan_as_told->steps[i].active_mol, shown.steps[i].active_mol);
  close_counter();
  open_counter("2026-06-14T10:00:00-05:00");
  EXPECT_EQ(kiosk_->counter().words().language(), "fr");  // kept in the settings
  kiosk_->desk().back()->setShelf("shop");
  kiosk_->desk().back()->setValue("language", "en");
  kiosk_->desk().back()->apply();
  ASSERT_TRUE(Hand::wait_for([&] { return kiosk_->counter().words().language() == "en"; }));
  EXPECT_EQ(kiosk_->desk().places()->row(1).value("title").toString(), "Bottle");
}

}  // namespace
}  // namespace brimline::test
