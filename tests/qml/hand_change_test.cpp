// SPDX-License-Identifier: GPL-3.0-or-later
// The trained hand through the real window: a dose tried, refused, used with a name and a reason, told on the
// sheet and kept with the visit; and an earlier sheet printed again as it was.
#include <QFile>
#include <QProcess>

#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

class HandChangeTest : public CounterTest {
 protected:
  HandDesk& hand() { return *kiosk_->desk().hand(); }
  PlanDesk& plan() { return *kiosk_->desk().plan(); }

  // pH 8.0 in a plaster pool of 10,000 gallons: acid, and calcium after it.
  Visit high_ph(const char* id, const char* code, const char* day) {
    Visit visit;
    visit.id = id;
    visit.bottle.code = code;
    visit.bottle.taken_at = visit.bottle.tested_at = Instant::parse(day);
    visit.customer = Customer{"C-1", "Ada Quill", "555-0101", std::nullopt, std::nullopt, "en", Units::us};
    visit.vessel.id = "W-1";
    visit.vessel.kind = VesselKind::pool;
    visit.vessel.use = VesselUse::household;
    visit.vessel.place = Place::outdoor;
    visit.vessel.in_ground = true;
    visit.vessel.surface = Surface::plaster;
    visit.vessel.sanitizer = Sanitizer::chlorine;
    visit.vessel.volume = Volume::us_gallons(10000);
    visit.vessel.water_temperature = Temperature::celsius(26);
    const std::pair<const char*, double> values[] = {
        {"ph", 8.0},          {"total_alkalinity", 105}, {"calcium_hardness", 170},
        {"free_chlorine", 3}, {"total_chlorine", 3.1},   {"cyanuric_acid", 40}};
    for (const auto& [analyte, value] : values) {
      Reading reading;
      reading.analyte = analyte;
      reading.value = value;
      visit.bottle.readings.push_back(reading);
    }
    return visit;
  }
  void keep(const Visit& visit) {
    auto store = Store::open("sqlite:" + path("counter.db").toStdString());
    ASSERT_TRUE(store);
    ASSERT_TRUE(store->begin_visit(visit));
  }
  void open_visit(const char* id) {
    ASSERT_TRUE(kiosk_->counter().open(id));
    kiosk_->desk().setPlace(Desk::TakeHome);
    ASSERT_TRUE(Hand::wait_for([&] { return plan().ready(); }));
  }
  int acid_step() {
    for (const Step& step : plan().plan()->steps)
      if (step.chemical == "hydrochloric_acid") return step.order;
    return 0;
  }
  QString words_of(const QString& pdf) {
    QProcess reader;
    reader.start("pdftotext", {"-layout", pdf, "-"});
    EXPECT_TRUE(reader.waitForFinished());
    return QString::fromUtf8(reader.readAllStandardOutput());
  }
  QString print_sheet(const QString& button) {
    const QString file = path("sheets/B-7.pdf");
    const QString next = QFile::exists(file) ? path("sheets/B-7-2.pdf") : file;
    EXPECT_TRUE(hand_->touch(button));
    EXPECT_TRUE(Hand::wait_for([&] { return !plan().busy() && QFile::exists(next); }, 8000))
        << plan().sheetSays().toStdString();
    return words_of(next);
  }
};

TEST_F(HandChangeTest, ADoseIsTriedRefusedAndUsedWithNameAndReason) {
  keep(high_ph("V-7", "B-7", "2026-06-14T08:30:00-05:00"));
  open_counter("2026-06-14T09:00:00-05:00");
  ASSERT_NO_FATAL_FAILURE(open_visit("V-7"));
  const int acid = acid_step();
  ASSERT_GT(acid, 0);
  const double told = *plan().plan()->steps[acid - 1].active_mol;
  ASSERT_TRUE(hand_->touch(QString("change_step_%1").arg(acid)));
  ASSERT_TRUE(hand_->find("hand_use"));
  EXPECT_FALSE(hand_->find("hand_use")->isEnabled());
  // The other acid is offered, and no base.
  EXPECT_TRUE(hand_->find("hand_product_dry_acid"));
  EXPECT_FALSE(hand_->find("hand_product_soda_ash"));
  // Sour too, and no acid for a pool: floc, persulfate.
  EXPECT_FALSE(hand_->find("hand_product_floc_alum"));
  EXPECT_FALSE(hand_->find("hand_product_monopersulfate"));

  // More than the caps allow, with the best of reasons.
  hand_->touch("hand_staff");
  hand_->type("N. N.");
  hand_->touch("hand_reason");
  hand_->type("in a hurry");
  hand().setShare(3);
  ASSERT_TRUE(Hand::wait_for([&] { return !hand().busy(); }));
  EXPECT_FALSE(hand().mayUse());
  EXPECT_NE(hand_->text_of("hand_says").toStdString(), "");

  // Half: a higher pH at the end than as told, by the full model.
  hand().setShare(0.5);
  ASSERT_TRUE(Hand::wait_for([&] { return !hand().busy() && hand().mayUse(); }))
      << "step " << hand().step() << " busy " << hand().busy() << " says " << hand().says().toStdString()
      << " staff " << hand_->text_of("hand_staff").toStdString() << " reason "
      << hand_->text_of("hand_reason").toStdString();
  ASSERT_TRUE(hand().mayUse()) << hand().says().toStdString();
  const double ph_told = plan().plan()->predicted.at("ph").value;
  ASSERT_TRUE(hand_->touch("hand_use"));
  ASSERT_TRUE(Hand::wait_for([&] { return plan().ready() && !plan().plan()->changes.empty(); }));
  EXPECT_NEAR(*plan().plan()->steps[acid - 1].active_mol, told / 2, 1e-9);
  EXPECT_GT(plan().plan()->predicted.at("ph").value, ph_told);
  EXPECT_TRUE(hand_->text_of("change_0").contains("N. N."));

  const QString sheet = print_sheet("make_pdf");
  EXPECT_TRUE(sheet.contains("N. N.")) << sheet.toStdString();
  EXPECT_TRUE(sheet.contains("in a hurry"));
  close_counter();
  auto store = Store::open("sqlite:" + path("counter.db").toStdString());
  const auto kept = store->visit("V-7");
  ASSERT_TRUE(kept && *kept && (*kept)->plan_as_told);
  ASSERT_EQ((*kept)->plan_as_told->changes.size(), 1u);
  EXPECT_EQ((*kept)->plan_as_told->changes[0].staff, "N. N.");
}

TEST_F(HandChangeTest, WhatWasLeftOutComesBack) {
  keep(high_ph("V-7", "B-7", "2026-06-14T08:30:00-05:00"));
  open_counter("2026-06-14T09:00:00-05:00");
  ASSERT_NO_FATAL_FAILURE(open_visit("V-7"));
  const std::vector<Step> drafted = plan().plan()->steps;
  int calcium = 0;
  for (const Step& step : drafted)
    if (step.chemical == "calcium_chloride") calcium = step.order;
  ASSERT_GT(calcium, 0);
  ASSERT_TRUE(hand_->touch(QString("change_step_%1").arg(calcium)));
  ASSERT_TRUE(hand_->touch("hand_step_leave"));
  hand_->touch("hand_staff");
  hand_->type("N. N.");
  hand_->touch("hand_reason");
  hand_->type("next month");
  ASSERT_TRUE(Hand::wait_for([&] { return hand().mayUse(); })) << hand().says().toStdString();
  ASSERT_TRUE(hand_->touch("hand_use"));
  ASSERT_TRUE(
      Hand::wait_for([&] { return plan().ready() && plan().plan()->steps.size() == drafted.size() - 1; }));
  ASSERT_TRUE(hand_->touch("as_drafted"));
  ASSERT_TRUE(Hand::wait_for([&] { return plan().ready() && plan().plan()->changes.empty(); }));
  // The same doses; the hours may be others, for the clock goes on.
  const std::vector<Step>& again = plan().plan()->steps;
  ASSERT_EQ(again.size(), drafted.size());
  for (size_t i = 0; i < again.size(); ++i) {
    EXPECT_EQ(again[i].text, drafted[i].text);
    EXPECT_EQ(again[i].active_mol, drafted[i].active_mol);
  }
}

// What was told is stored: printed again a month later it is the same paper, word for word.
TEST_F(HandChangeTest, AnEarlierSheetIsPrintedAgainAsItWas) {
  keep(high_ph("V-7", "B-7", "2026-06-14T08:30:00-05:00"));
  open_counter("2026-06-14T09:00:00-05:00");
  ASSERT_NO_FATAL_FAILURE(open_visit("V-7"));
  const QString first = print_sheet("make_pdf");
  ASSERT_GT(first.size(), 500);
  close_counter();
  keep(high_ph("V-8", "B-8", "2026-07-14T08:30:00-05:00"));
  open_counter("2026-07-14T09:00:00-05:00");
  ASSERT_NO_FATAL_FAILURE(open_visit("V-8"));
  kiosk_->desk().setPlace(Desk::ThenNow);
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("print_again"); }));
  EXPECT_EQ(print_sheet("print_again").toStdString(), first.toStdString());
}

}  // namespace
}  // namespace brimline::test
