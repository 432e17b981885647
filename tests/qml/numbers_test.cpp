// SPDX-License-Identifier: GPL-3.0-or-later
// Behind the words of the findings stands where each number comes from: laws, for the errors themselves are
// tested with analysis/panel.
#include <cmath>

#include "tests/qml/furnished.h"

namespace brimline::test {
namespace {

TEST_F(FurnishedCounter, EveryReadingSaysWhereItComesFrom) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
  ASSERT_TRUE(kiosk_->counter().open(visit_));
  kiosk_->desk().setPlace(Desk::Findings);
  ASSERT_TRUE(hand_->touch("numbers_behind"));
  EXPECT_NE(hand_->find("number_list"), nullptr);
  EXPECT_EQ(hand_->find("finding_list"), nullptr);

  const QVariantList rows = kiosk_->desk().plan()->numbers();
  const auto& readings = kiosk_->counter().visit().bottle.readings;
  ASSERT_EQ(static_cast<size_t>(rows.size()), readings.size());
  for (size_t i = 0; i < readings.size(); ++i) {
    const QVariantMap row = rows[static_cast<qsizetype>(i)].toMap();
    const QStringList parts = row["number"].toString().split(" ± ");
    ASSERT_EQ(parts.size(), 2) << row["number"].toString().toStdString();
    const double sd = parts[1].section(' ', 0, 0).toDouble();
    EXPECT_GT(sd, 0) << readings[i].analyte;
    EXPECT_NEAR(parts[0].toDouble(), readings[i].value, sd) << readings[i].analyte;
    EXPECT_GT(row["detail"].toString().size(), 10) << readings[i].analyte;
  }
}

// Behind each dose and each prediction stands where it comes from; the numbers are the plan's own.
TEST_F(FurnishedCounter, EveryDoseAndPredictionSaysWhereItComesFrom) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
  ASSERT_TRUE(kiosk_->counter().open(visit_));
  PlanDesk& desk = *kiosk_->desk().plan();
  ASSERT_TRUE(Hand::wait_for([&] { return desk.ready(); }, 20000));
  kiosk_->desk().setPlace(Desk::TakeHome);
  ASSERT_TRUE(hand_->touch("dose_numbers"));
  EXPECT_NE(hand_->find("dose_number_list"), nullptr);
  EXPECT_EQ(hand_->find("step_list"), nullptr);
  const Plan& plan = *desk.plan();
  QStringList names, numbers;
  for (const QVariant& row : desk.doseNumbers()) {
    names.append(row.toMap()["name"].toString());
    numbers.append(row.toMap()["number"].toString());
    EXPECT_GT(row.toMap()["detail"].toString().size(), 10) << names.back().toStdString();
  }
  for (const Step& step : plan.steps)
    EXPECT_EQ(names.contains(QString("Step %1").arg(step.order)), step.amount || step.fraction) << step.order;
  size_t predicted = 0;
  for (const QString& number : numbers) predicted += number.contains(" ± ") ? 1 : 0;
  EXPECT_EQ(predicted, plan.predicted.size());
  ASSERT_TRUE(plan.proof);
  EXPECT_EQ(numbers.back(), QString("%1 %").arg(std::lround(plan.proof->in_target * 100)));
}

// Each expectation of Then and now with its error: the verdict beside it follows from the two.
TEST_F(FurnishedCounter, EveryExpectationSaysWhereItComesFrom) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
  ASSERT_TRUE(kiosk_->counter().open(visit_));
  kiosk_->desk().setPlace(Desk::ThenNow);
  ThenDesk& then = *kiosk_->desk().then();
  ASSERT_TRUE(Hand::wait_for([&] { return then.changes()->count() > 0; }, 10000));
  ASSERT_TRUE(hand_->touch("then_numbers"));
  EXPECT_NE(hand_->find("then_number_list"), nullptr);
  const QVariantList rows = then.numbers();
  ASSERT_GT(rows.size(), then.changes()->count());
  for (int i = 0; i < then.changes()->count(); ++i) {
    const QVariantMap row = rows[i].toMap(), change = then.changes()->row(i);
    EXPECT_EQ(row["name"], change["name"]);
    const QStringList parts = row["number"].toString().split(" ± ");
    ASSERT_EQ(parts.size(), 2) << row["number"].toString().toStdString();
    const double expected = parts[0].toDouble(), sd = parts[1].section(' ', 0, 0).toDouble();
    ASSERT_GT(sd, 0) << row["name"].toString().toStdString();
    const double away = std::abs(change["now"].toString().toDouble() - expected) / sd;
    const QString detail = row["detail"].toString();
    if (away > 1.7 && away < 2.3) continue;  // where what is shown is rounded
    EXPECT_EQ(detail.contains("as expected, within 1.96"), away < 2) << away << detail.toStdString();
  }
  ASSERT_TRUE(hand_->touch("then_numbers"));
  EXPECT_EQ(hand_->find("then_number_list"), nullptr);
}

// The clerk's language to the last word: no name or number of the comparison stays English.
TEST_F(FurnishedCounter, ThenAndNowSpeaksTheClerksLanguage) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("fr"));
  ASSERT_TRUE(kiosk_->counter().open(visit_));
  RowModel& rows = *kiosk_->desk().then()->changes();
  ASSERT_TRUE(Hand::wait_for([&] { return rows.count() > 0; }, 10000));
  QStringList names;
  for (int i = 0; i < rows.count(); ++i) {
    const QVariantMap row = rows.row(i);
    names.append(row["name"].toString());
    EXPECT_FALSE(row["now"].toString().contains('.')) << row["now"].toString().toStdString();
    EXPECT_TRUE(row["text"].toString().startsWith(row["name"].toString()))
        << row["text"].toString().toStdString();
  }
  EXPECT_TRUE(kiosk_->desk().bench()->instrumentLine().startsWith("Aucun instrument"))
      << kiosk_->desk().bench()->instrumentLine().toStdString();
  EXPECT_TRUE(names.contains("Chlore libre")) << names.join(", ").toStdString();
}

TEST_F(FurnishedCounter, AReadingOfItsOwnErrorSaysSo) {
  ASSERT_NO_FATAL_FAILURE(open_furnished("en"));
  kiosk_->desk().startBottle();
  EXPECT_TRUE(kiosk_->desk().plan()->numbers().isEmpty());
  Reading reading;
  reading.analyte = "ph";
  reading.value = 7.42;
  reading.method = Method::probe;
  reading.sd = 0.02;
  reading.lot = "L-7";
  ASSERT_TRUE(kiosk_->counter().add_reading(reading));
  const QVariantMap row = kiosk_->desk().plan()->numbers().value(0).toMap();
  EXPECT_EQ(row["number"].toString(), "7.42 ± 0.02");
  EXPECT_TRUE(row["detail"].toString().contains("came with the reading"));
  EXPECT_TRUE(row["detail"].toString().contains("lot L-7"));
}

}  // namespace
}  // namespace brimline::test
