// SPDX-License-Identifier: GPL-3.0-or-later
// A whole visit through the real window: once by finger alone, once by keyboard alone, from a bottle
// handed over to a sheet in a file and a visit in the store; and the same vessel a month later.
#include <QDir>
#include <QFile>

#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

class WholeVisit : public CounterTest {
 protected:
  const Visit& visit() const { return kiosk_->counter().visit(); }
  PlanDesk& plan() const { return *kiosk_->desk().plan(); }

  size_t count(const AnalyteId& analyte) const {
    return static_cast<size_t>(std::count_if(visit().bottle.readings.begin(), visit().bottle.readings.end(),
                                             [&](const Reading& r) { return r.analyte == analyte; }));
  }
  bool all_measured() const {
    for (const char* id : {"free_chlorine", "total_chlorine", "ph", "total_alkalinity", "iron", "copper"})
      if (count(id) == 0) return false;
    return true;
  }
  // The sheet that was made: a PDF file begins with %PDF- (ISO 32000-1:2008, 7.5.2).
  void expect_pdf(const QString& name) {
    ASSERT_TRUE(Hand::wait_for([&] { return !plan().busy() && QFile::exists(path("sheets/" + name)); }))
        << plan().sheetSays().toStdString();
    QFile file(path("sheets/" + name));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.read(5), QByteArray("%PDF-"));
    EXPECT_GT(file.size(), 4000);
  }
  // What the store alone says, with the program closed.
  Visit stored(const std::string& id) {
    auto store = Store::open("sqlite:" + path("counter.db").toStdString());
    EXPECT_TRUE(store);
    auto found = store->visit(id);
    EXPECT_TRUE(found && *found);
    return **found;
  }
  void touch_number(const QString& digits) {
    for (QChar c : digits)
      ASSERT_TRUE(hand_->touch(c == '.' ? "pad_point" : "pad_" + QString(c))) << c.toLatin1();
  }
  // The month before, by typing only, so that there is a then to the now.
  void earlier_visit();
};

void WholeVisit::earlier_visit() {
  auto store = Store::open("sqlite:" + path("counter.db").toStdString());
  ASSERT_TRUE(store);
  Visit visit;
  visit.id = "V-earlier";
  visit.bottle.code = "B-0900";
  visit.bottle.taken_at = visit.bottle.tested_at = Instant::parse("2026-05-14T09:00:00-05:00");
  visit.customer = Customer{"C-1", "Ada Quill", "555-0101", "1 Invented Lane", std::nullopt, "en", Units::us};
  visit.vessel = Vessel{"W-1",
                        VesselKind::pool,
                        VesselUse::household,
                        Place::outdoor,
                        true,
                        Surface::plaster,
                        2400,
                        Volume::cubic_metres(56.8),
                        0.1,
                        std::nullopt,
                        Sanitizer::chlorine,
                        std::nullopt,
                        Temperature::celsius(27),
                        8};
  const std::pair<const char*, double> values[] = {
      {"free_chlorine", 3},      {"total_chlorine", 3.1}, {"ph", 7.5},    {"total_alkalinity", 95},
      {"calcium_hardness", 290}, {"cyanuric_acid", 40},   {"iron", 0.02}, {"copper", 0.04}};
  for (const auto& [analyte, value] : values) {
    Reading reading;
    reading.analyte = analyte;
    reading.value = value;
    visit.bottle.readings.push_back(reading);
  }
  ASSERT_TRUE(store->keep(visit));
}

TEST_F(WholeVisit, ByFingerAlone) {
  earlier_visit();
  open_counter("2026-06-14T09:00:00-05:00", start_photometer());
  ASSERT_TRUE(hand_->touch("new_bottle"));
  // The emulated instrument names its bottle; the same label is scanned here.
  ASSERT_TRUE(hand_->touch("place_arrivals"));
  ASSERT_TRUE(hand_->touch("label_field"));
  hand_->type("B-1012");
  hand_->key(Qt::Key_Return);
  ASSERT_EQ(hand_->text_of("bottle_code"), "B-1012");
  ASSERT_TRUE(hand_->touch("customer_search"));
  hand_->type("quil");
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("customer_0"); }));
  ASSERT_TRUE(hand_->touch("customer_0"));
  EXPECT_EQ(hand_->text_of("bottle_who"), "Ada Quill");
  EXPECT_EQ(visit().vessel.id, "W-1");
  ASSERT_TRUE(hand_->touch("taken_morning"));
  ASSERT_TRUE(hand_->touch("signs_scale"));
  ASSERT_TRUE(hand_->touch("to_bench"));
  photometer_.write("measure\n");  // the button on the instrument
  ASSERT_TRUE(Hand::wait_for([&] { return all_measured(); }))
      << photometer_.readAllStandardOutput().toStdString();
  ASSERT_TRUE(hand_->touch("reading_calcium_hardness"));
  touch_number("318");
  ASSERT_TRUE(hand_->touch("pad_enter"));
  ASSERT_EQ(count("calcium_hardness"), 1u);
  ASSERT_TRUE(hand_->touch("to_findings"));
  ASSERT_TRUE(Hand::wait_for([&] { return plan().ready(); }));
  EXPECT_GT(plan().findings()->count(), 0);
  ASSERT_TRUE(hand_->touch("to_take_home"));
  EXPECT_GT(plan().steps()->count(), 0);
  ASSERT_TRUE(hand_->touch("place_then_now"));
  ASSERT_TRUE(Hand::wait_for([&] { return kiosk_->desk().then()->changes()->count() > 0; }));
  ASSERT_TRUE(hand_->touch("place_take_home"));
  ASSERT_TRUE(Hand::wait_for([&] { return plan().ready(); }));
  ASSERT_TRUE(hand_->touch("make_pdf"));
  expect_pdf("B-1012.pdf");
  const Visit shown = visit();
  close_counter();
  EXPECT_EQ(stored(shown.id), shown);
  EXPECT_TRUE(shown.plan_as_told);
}

TEST_F(WholeVisit, ByKeyboardAlone) {
  open_counter("2026-06-14T09:00:00-05:00");
  hand_->key(Qt::Key_F1);
  ASSERT_TRUE(hand_->press("new_bottle"));
  ASSERT_EQ(hand_->text_of("bottle_code"), "B-0001");
  ASSERT_TRUE(hand_->press("new_customer"));
  ASSERT_TRUE(hand_->tab_to("new_name"));
  hand_->type("Ivo Brandt");
  ASSERT_TRUE(hand_->press("save_customer"));
  EXPECT_EQ(hand_->text_of("bottle_who"), "Ivo Brandt");
  ASSERT_TRUE(hand_->press("new_vessel"));
  for (const char* fact : {"sanitizer_chlorine", "surface_vinyl", "place_outdoor", "in_ground_yes"})
    ASSERT_TRUE(hand_->press(fact)) << fact;
  ASSERT_TRUE(hand_->tab_to("volume"));
  hand_->type("15000");
  hand_->key(Qt::Key_Return);
  ASSERT_TRUE(visit().vessel.volume);
  // 15,000 US gallons at 3.785411784 L each (NIST SP 811, appendix B; from memory).
  EXPECT_NEAR(visit().vessel.volume->cubic_metres(), 56.78118, 1e-4);
  hand_->key(Qt::Key_F3);
  const std::pair<const char*, const char*> values[] = {
      {"free_chlorine", "1.0"},    {"total_chlorine", "1.2"},   {"ph", "7.9"},
      {"total_alkalinity", "110"}, {"calcium_hardness", "250"}, {"cyanuric_acid", "40"}};
  for (const auto& [analyte, number] : values) {
    ASSERT_TRUE(hand_->press(QString("reading_") + analyte)) << analyte;
    hand_->type(number);
    hand_->key(Qt::Key_Return);
    ASSERT_EQ(count(analyte), 1u) << analyte << ": " << hand_->text_of("pad_says").toStdString();
  }
  hand_->key(Qt::Key_F4);
  ASSERT_TRUE(Hand::wait_for([&] { return plan().ready(); }));
  EXPECT_GT(plan().findings()->count(), 0);
  hand_->key(Qt::Key_F5);
  ASSERT_TRUE(hand_->press("make_pdf"));
  expect_pdf("B-0001.pdf");
  const Visit shown = visit();
  close_counter();
  EXPECT_EQ(stored(shown.id), shown);
}

TEST_F(WholeVisit, EveryTargetTakesAFinger) {
  open_counter("2026-06-14T09:00:00-05:00");
  ASSERT_TRUE(hand_->touch("new_bottle"));
  for (int place = 0; place < 7; ++place) {
    kiosk_->desk().setPlace(place);
    Hand::wait_for([] { return false; }, 50);
    // A row just made has no size before it is laid out.
    Hand::wait_for([&] { return small_targets(kiosk_->window()).isEmpty(); });
    EXPECT_EQ(small_targets(kiosk_->window()).join("; ").toStdString(), "") << "place " << place;
  }
}

TEST_F(WholeVisit, EmergencyIsOneTouchAwayFromEverywhere) {
  open_counter("2026-06-14T09:00:00-05:00");
  for (int place = 0; place < 7; ++place) {
    kiosk_->desk().setPlace(place);
    ASSERT_TRUE(hand_->touch("emergency"));
    ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("emergency_close"); }));
    hand_->key(Qt::Key_Escape);
    ASSERT_TRUE(Hand::wait_for([&] { return !hand_->find("emergency_close"); }));
    hand_->key(Qt::Key_F8);
    ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("emergency_close"); }));
    ASSERT_TRUE(hand_->touch("emergency_close"));
    ASSERT_TRUE(Hand::wait_for([&] { return !hand_->find("emergency_close"); }));
  }
}

}  // namespace
}  // namespace brimline::test
