// SPDX-License-Identifier: GPL-3.0-or-later
// A whole overnight test through the real window: set up one day, read an hour later and a day later, the
// program ended and started again in between, and its result in the plan and on the sheet.
#include <QDir>
#include <QFile>
#include <QProcess>

#include <cmath>

#include "station/overnight/overnight_result.h"
#include "tests/qml/counter_fixture.h"

namespace brimline::test {
namespace {

constexpr const char* kMorning = "2026-06-14T09:00:00-05:00";
constexpr const char* kHourLater = "2026-06-14T10:04:00-05:00";
constexpr const char* kNextDay = "2026-06-15T11:10:00-05:00";

// Of the invented water: chlorine used up in an hour and in a day, mg/L Cl2.
constexpr double kFast = 3, kWhole = 5;

class OvernightVisit : public CounterTest {
 protected:
  OvernightDesk& desk() { return *kiosk_->desk().overnight(); }
  PlanDesk& plan() { return *kiosk_->desk().plan(); }
  const OvernightTest& test() { return *kiosk_->counter().overnight(); }
  const Visit& visit() { return kiosk_->counter().visit(); }

  void known_customer();
  // A bottle of the known customer whose chlorine is used up, typed at the bench.
  void used_up_bottle(const QString& label);
  void set_up();
  void type_number(double value);
  // What bottle `b` still holds of its chlorine, where the water has used up `used`.
  double left(int b, double used);
  // Every place that waits, as the pad marks one after the other.
  void read_all(double used);
  std::string text_of_pdf(const QString& file);
};

void OvernightVisit::known_customer() {
  auto store = Store::open("sqlite:" + path("counter.db").toStdString());
  ASSERT_TRUE(store);
  Visit earlier;
  earlier.id = "V-earlier";
  earlier.bottle.code = "B-0900";
  earlier.bottle.taken_at = Instant::parse("2026-05-14T09:00:00-05:00");
  earlier.customer =
      Customer{"C-1", "Ada Quill", "555-0101", "1 Invented Lane", std::nullopt, "en", Units::us};
  earlier.vessel.id = "W-1";
  earlier.vessel.kind = VesselKind::pool;
  earlier.vessel.use = VesselUse::household;
  earlier.vessel.place = Place::outdoor;
  earlier.vessel.surface = Surface::plaster;
  earlier.vessel.volume = Volume::cubic_metres(56.8);
  earlier.vessel.sanitizer = Sanitizer::chlorine;
  ASSERT_TRUE(store->keep(earlier));
}

void OvernightVisit::used_up_bottle(const QString& label) {
  kiosk_->desk().setPlace(Desk::Arrivals);
  ASSERT_TRUE(hand_->touch("label_field"));
  hand_->type(label);
  hand_->key(Qt::Key_Return);
  ASSERT_EQ(hand_->text_of("bottle_code"), label);
  ASSERT_TRUE(hand_->touch("customer_search"));
  hand_->type("quil");
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("customer_0"); }));
  ASSERT_TRUE(hand_->touch("customer_0"));
  ASSERT_TRUE(hand_->touch("to_bench"));
  const std::pair<const char*, const char*> values[] = {
      {"free_chlorine", "0"},     {"total_chlorine", "0.2"},   {"ph", "7.3"},
      {"total_alkalinity", "95"}, {"calcium_hardness", "290"}, {"cyanuric_acid", "40"}};
  for (const auto& [analyte, number] : values) {
    ASSERT_TRUE(hand_->touch(QString("reading_") + analyte)) << analyte;
    hand_->type(number);
    hand_->key(Qt::Key_Return);
  }
  ASSERT_EQ(visit().bottle.readings.size(), 6u);
}

// From the finding on, by finger: the bottles, the stock with its strength check, labels, the clock.
void OvernightVisit::set_up() {
  ASSERT_TRUE(hand_->touch("to_findings"));
  ASSERT_TRUE(Hand::wait_for([&] { return hand_->find("offer_overnight"); }));
  ASSERT_TRUE(hand_->touch("offer_overnight"));
  ASSERT_TRUE(hand_->touch("overnight_go_on"));
  EXPECT_EQ(test().reach, DemandReach::usual);
  ASSERT_TRUE(hand_->touch("sample_ml_200"));
  ASSERT_TRUE(hand_->touch("overnight_go_on"));
  EXPECT_FALSE(desk().canGoOn());  // no stock without its check
  ASSERT_TRUE(hand_->touch("bleach_125"));
  EXPECT_NE(hand_->text_of("overnight_arithmetic").indexOf("= 8.0 mL"), -1)
      << hand_->text_of("overnight_arithmetic").toStdString();
  for (const char* key : {"pad_1", "pad_point", "pad_8"}) ASSERT_TRUE(hand_->touch(key)) << key;
  ASSERT_TRUE(hand_->touch("overnight_keep"));
  EXPECT_EQ(test().check_mg_l, 1.8);
  EXPECT_NE(hand_->text_of("overnight_check").indexOf("900 mg/L"), -1);
  ASSERT_TRUE(hand_->touch("overnight_go_on"));
  ASSERT_TRUE(hand_->touch("warmth_22"));
  ASSERT_TRUE(hand_->touch("labels_pdf"));
  ASSERT_TRUE(Hand::wait_for([&] { return !desk().busy(); }));
  ASSERT_TRUE(hand_->touch("overnight_go_on"));
  ASSERT_TRUE(test().started_at);
}

void OvernightVisit::type_number(double value) {
  hand_->type(QString::number(value, 'f', 2));
  hand_->key(Qt::Key_Return);
}

double OvernightVisit::left(int b, double used) {
  const double ml = test().bottles[static_cast<size_t>(b)].stock_ml, sample = test().sample_ml;
  return std::max(0.0, (stock_strength(test()) * ml - used * sample) / (sample + ml));
}

void OvernightVisit::read_all(double used) {
  for (int i = 0; i < 20; ++i) {
    const auto before = test().readings.size();
    if (complete(test(), due_for(test(), kiosk_->counter().now()))) return;
    const QString name = hand_->text_of("overnight_pad_name");
    const int bottle = name.mid(7, 1).toInt() - 1;
    const double dilution = desk().how().value("dilution").toDouble();
    const double extra = name.contains("total") ? 0.1 : 0;
    const double shown = (left(bottle, used) + extra) / dilution;
    EXPECT_LE(shown, 5) << name.toStdString();  // what a photometer reads: ISO 7393-2:2017
    type_number(shown);
    ASSERT_EQ(test().readings.size(), before + 1) << name.toStdString();
  }
}

std::string OvernightVisit::text_of_pdf(const QString& file) {
  QProcess pdftotext;
  pdftotext.start("pdftotext", {"-layout", path("sheets/" + file), "-"});
  EXPECT_TRUE(pdftotext.waitForFinished());
  return QString::fromUtf8(pdftotext.readAllStandardOutput()).simplified().toStdString();
}

TEST_F(OvernightVisit, TwoDaysWithTheProgramEndedInBetween) {
  known_customer();
  open_counter(kMorning);
  used_up_bottle("B-1012");
  set_up();
  const std::string visit_id = visit().id;
  const std::string labels = text_of_pdf("B-1012-labels.pdf");
  for (const char* word : {"B-1012/1", "B-1012/7", "40 mg/L", "Monday 15 June 09:00", "STOCK"})
    EXPECT_NE(labels.find(word), std::string::npos) << word << " in " << labels;
  close_counter();

  open_counter(kHourLater);
  EXPECT_EQ(hand_->text_of("overnight_due_0"), "1-hour readings due now, since 10:00");
  EXPECT_FALSE(hand_->find("overnight_phone_0"));
  ASSERT_TRUE(hand_->touch("overnight_0"));
  read_all(kFast);
  EXPECT_TRUE(complete(test(), OvernightDue::hour));
  close_counter();

  open_counter(kNextDay);
  EXPECT_EQ(hand_->text_of("overnight_due_0"), "24-hour readings overdue by 2 hours");
  ASSERT_TRUE(hand_->touch("overnight_0"));
  EXPECT_FALSE(desk().canGoOn());
  read_all(kWhole);
  ASSERT_TRUE(hand_->touch("overnight_go_on"));
  EXPECT_EQ(desk().stage(), "result");
  EXPECT_TRUE(hand_->text_of("overnight_phone").contains("555-0101"));
  ASSERT_TRUE(visit().bottle.demand_test);
  const DemandResult found = result_of(*visit().bottle.demand_test, visit());
  ASSERT_TRUE(found.enough());
  EXPECT_NEAR(found.demand->value, kWhole, 0.1);  // what was typed has two decimals, times the dilution
  EXPECT_NEAR(found.at_hours, 26.2, 0.1);
  kiosk_->desk().setPlace(Desk::Arrivals);
  EXPECT_TRUE(hand_->text_of("overnight_phone_0").contains("555-0101"));

  kiosk_->desk().setPlace(Desk::TakeHome);
  ASSERT_TRUE(Hand::wait_for([&] { return plan().ready(); }));
  ASSERT_TRUE(hand_->touch("make_pdf"));
  ASSERT_TRUE(Hand::wait_for([&] { return !plan().busy() && QFile::exists(path("sheets/B-1012.pdf")); }))
      << plan().sheetSays().toStdString();
  const Visit told = visit();
  EXPECT_TRUE(kiosk_->counter().overnights().empty());  // told: nobody waits for it any more
  close_counter();

  const std::string sheet = text_of_pdf("B-1012.pdf");
  EXPECT_NE(sheet.find("The overnight test: this water uses up 5.0 mg/L of chlorine in 26 hours"),
            std::string::npos)
      << sheet;
  EXPECT_NE(sheet.find("Meet what the water uses up"), std::string::npos) << sheet;
  auto store = Store::open("sqlite:" + path("counter.db").toStdString());
  EXPECT_EQ(**store->visit(visit_id), told);
  ASSERT_TRUE(told.plan_as_told);
  // The dose: demand + 3 mg/L wanted by the household regime, of 70.906 g/mol, in the whole volume.
  double chlorine_mol = 0;
  for (const Step& step : told.plan_as_told->steps)
    if (step.chemical == "sodium_hypochlorite") chlorine_mol += step.active_mol.value_or(0);
  EXPECT_NEAR(chlorine_mol, *found.dose * 56.8 / 70.906, 0.02 * chlorine_mol);
  EXPECT_EQ(told.plan_as_told->retest->after_h, 24);
}

TEST_F(OvernightVisit, TurningToAnotherBottleLosesNothing) {
  known_customer();
  open_counter(kMorning);
  used_up_bottle("B-1012");
  set_up();
  const std::string first = visit().id;
  hand_->type("0.4");
  EXPECT_EQ(desk().typed(), "0.4");
  used_up_bottle("B-1013");  // another bottle is handed over; a second test is begun
  set_up();
  EXPECT_EQ(kiosk_->counter().overnights().size(), 2u);
  EXPECT_EQ(desk().typed(), "");
  kiosk_->desk().openOvernight(QString::fromStdString(first));
  EXPECT_EQ(desk().typed(), "0.4");
  EXPECT_EQ(hand_->text_of("overnight_typed"), "0.4");
  hand_->key(Qt::Key_Return);
  ASSERT_EQ(test().readings.size(), 1u);
  EXPECT_EQ(test().readings.front().value, 0.4);
  // and by its label from the scanner
  kiosk_->desk().scan("B-1013/4");
  EXPECT_EQ(visit().bottle.code, "B-1013");
  EXPECT_TRUE(hand_->text_of("overnight_pad_name").startsWith("Bottle 4"));
}

TEST_F(OvernightVisit, AReadingIsTakenBackByKeyboard) {
  known_customer();
  open_counter(kMorning);
  used_up_bottle("B-1012");
  set_up();
  ASSERT_TRUE(hand_->press("cell_2_hourFree"));
  type_number(1.5);
  ASSERT_EQ(test().readings.size(), 1u);
  EXPECT_EQ(test().readings.front().bottle, 2);
  ASSERT_TRUE(hand_->press("overnight_undo"));
  EXPECT_TRUE(test().readings.front().withdrawn);
  EXPECT_EQ(standing(test(), 2, OvernightDue::hour, "free_chlorine"), nullptr);
  EXPECT_TRUE(hand_->text_of("overnight_pad_name").startsWith("Bottle 3"));
}

TEST_F(OvernightVisit, ATestGivenUpIsTakenUpAgainAsItWas) {
  known_customer();
  open_counter(kMorning);
  used_up_bottle("B-1012");
  set_up();
  ASSERT_TRUE(hand_->press("cell_2_hourFree"));
  type_number(1.5);
  const OvernightTest before = test();
  ASSERT_TRUE(hand_->press("overnight_give_up"));
  EXPECT_TRUE(kiosk_->counter().overnights().empty());
  EXPECT_EQ(desk().stage(), "");
  ASSERT_TRUE(hand_->press("overnight_take_up"));
  EXPECT_EQ(test(), before);
  EXPECT_EQ(desk().stage(), "running");
  EXPECT_EQ(hand_->find("overnight_take_up"), nullptr);
  EXPECT_TRUE(hand_->text_of("overnight_pad_name").startsWith("Bottle 1"));
  // not over another one, begun and closed since at another counter
  ASSERT_TRUE(hand_->press("overnight_give_up"));
  Records& records = kiosk_->counter().records();
  OvernightTest next;
  next.visit = before.visit;
  ASSERT_TRUE(records.begin_overnight(next));
  ASSERT_TRUE(records.change_overnight(next.visit, [](auto& test) { test.stage = OvernightStage::closed; }));
  ASSERT_TRUE(hand_->press("overnight_take_up"));
  EXPECT_TRUE(desk().says().contains("Another test")) << desk().says().toStdString();
  EXPECT_TRUE(records.overnights().empty());
}

TEST_F(OvernightVisit, TheInstrumentFillsTheMarkedPlace) {
  known_customer();
  open_counter(kMorning);
  used_up_bottle("B-1012");
  set_up();
  const auto hear = [&](const char* analyte, double value, std::optional<std::string> sample = {},
                        std::optional<Clip> clipped = {}) {
    InstrumentReading heard;
    heard.analyte = analyte;
    heard.value = value;
    heard.sample = std::move(sample);
    heard.clipped = clipped;
    Happening happening;
    happening.instrument = "bench 1";
    happening.what = heard;
    kiosk_->desk().onHappened(happening);
  };
  const size_t bench = visit().bottle.readings.size();
  ASSERT_TRUE(hand_->touch("cell_6_hourFree"));  // 40 mg/L: read at 1 + 9
  hear("free_chlorine", 3.5);
  ASSERT_EQ(test().readings.size(), 1u);
  EXPECT_EQ(test().readings[0].bottle, 6);
  EXPECT_NEAR(test().readings[0].value, 35, 1e-9);
  hear("total_chlorine", 2, "B-1012/2");
  EXPECT_EQ(test().readings[1].bottle, 1);
  hear("free_chlorine", 5, "B-1012", Clip::above);
  EXPECT_EQ(test().readings[2].clipped, Clip::above);
  hear("ph", 7.4, "B-1012");  // not of the test: the bench's
  EXPECT_EQ(visit().bottle.readings.size(), bench + 1);
  // once the page is left, chlorine without a label of the test is the bench's too
  ASSERT_TRUE(hand_->touch("overnight_leave"));
  hear("free_chlorine", 0.1, "B-1012");
  EXPECT_EQ(visit().bottle.readings.size(), bench + 2);
  EXPECT_EQ(test().readings.size(), 3u);
}

TEST_F(OvernightVisit, EveryTargetTakesAFinger) {
  known_customer();
  open_counter(kMorning);
  used_up_bottle("B-1012");
  ASSERT_TRUE(hand_->touch("open_overnight"));
  for (const char* stage : {"bottles", "stock", "pour", "running"}) {
    ASSERT_TRUE(hand_->touch("overnight_go_on")) << stage;
    ASSERT_EQ(desk().stage(), stage);
    EXPECT_EQ(small_targets(kiosk_->window()).join("; ").toStdString(), "") << stage;
    for (const char* name : {"overnight_go_on", "overnight_give_up", "overnight_keep"})
      if (const QQuickItem* act = hand_->find(name)) {
        const QRectF there = act->mapRectToScene(QRectF(0, 0, act->width(), act->height()));
        EXPECT_TRUE(QRectF(0, 0, 1280, 800).contains(there)) << stage << " " << name << " " << there.bottom();
      }
    if (QLatin1String(stage) != QLatin1String("stock")) continue;
    ASSERT_TRUE(hand_->touch("bleach_100"));
    type_number(2);
  }
}

}  // namespace
}  // namespace brimline::test
