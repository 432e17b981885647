// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/station/store/shared_checks.h"
#include "tests/station/store/workshop.h"

namespace brimline::tests {

namespace {

Instant day(const char* text) {
  return Instant::parse(text).value();
}

void check_measured(Store& store) {
  const CheckStandard standard{
      "S-1", "photometer 1", "free_chlorine", "Weak glass", 1.02, 0.05, 7, day("2026-04-01T08:00:00-05:00")};
  CheckMeasurement second{"M-2", "S-1", day("2026-04-09T08:00:00-05:00"), 1.0700000000000003, true, "77"};
  CheckMeasurement first{"M-9", "S-1", day("2026-04-09T14:00:00+09:00"), 0.97, false, ""};
  EXPECT_FALSE(store.add_measurement(first));  // no such standard
  ASSERT_TRUE(store.add_standard(standard));
  CheckStandard bad = standard;
  bad.id = "S-2";
  bad.sd = 0;
  EXPECT_FALSE(store.add_standard(bad));
  ASSERT_TRUE(store.add_measurement(second));
  ASSERT_TRUE(store.add_measurement(first));
  EXPECT_FALSE(store.add_measurement(second));  // once
  first.id = "M-3";
  first.value = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(store.add_measurement(first));
  const QualityBook book = store.quality_book().value();
  EXPECT_THAT(book.standards, testing::ElementsAre(standard));
  ASSERT_EQ(book.measurements.size(), 2u);
  EXPECT_EQ(book.measurements[0].id, "M-9");  // oldest first, whatever the offset
  EXPECT_EQ(book.measurements[1], second);
}

void check_evidence_stays(Store& store) {
  Clearance clearance{"K-1",           "photometer 1",
                      "free_chlorine", day("2026-04-09T09:00:00-05:00"),
                      "A. Sample",     "Cell was scratched; new cell"};
  for (std::string Clearance::*field : {&Clearance::by, &Clearance::reason}) {
    Clearance nameless = clearance;
    nameless.*field = "  ";
    EXPECT_FALSE(store.add_clearance(nameless));
  }
  ASSERT_TRUE(store.add_clearance(clearance));
  ReagentLot lot;
  lot.lot = "L-1";
  ASSERT_TRUE(store.keep_lot(lot));
  LotCurve curve{"U-1", "L-1", 515, day("2026-04-09T09:00:00-05:00"), {{0, 0.001}, {1, 0.2110000000000003}}};
  ASSERT_TRUE(store.add_curve(curve));
  EXPECT_FALSE(store.add_curve(curve));
  const QualityBook book = store.quality_book().value();
  EXPECT_THAT(book.clearances, testing::ElementsAre(clearance));
  ASSERT_EQ(book.curves.size(), 1u);
  EXPECT_EQ(book.curves[0].points[1].signal, curve.points[1].signal);
  for (const char* table : {"check_measurements", "check_clearances", "lot_curves"})
    for (const std::string& sql : {"DELETE FROM " + std::string(table),
                                   "UPDATE " + std::string(table) + " SET id = 'x' WHERE id <> 'y'"}) {
      const auto done = store.connection().transact(Access::write, [&] { store.connection().run(sql); });
      ASSERT_FALSE(done) << sql;
      EXPECT_THAT(done.error().text, testing::HasSubstr("never")) << sql;
    }
}

}  // namespace

void check_quality(Store& store) {
  check_measured(store);
  check_evidence_stays(store);
  EXPECT_EQ(store.counts()->at("check_measurements"), 2);
  EXPECT_THAT(store.faults().value(), testing::IsEmpty());
}

}  // namespace brimline::tests
