// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/station/quality/books.h"

namespace brimline::tests {
namespace {

using testing::Contains;

TEST(Charts, SoundThenDue) {
  QualityBook book = book_with_standards();
  EXPECT_EQ(only_chart(book, 0.1).standing, CheckStanding::due);  // never checked
  measure(book, "weak", 0.3, 1);
  measure(book, "strong", -0.4, 1.01);
  const CheckChart chart = only_chart(book, 2);
  EXPECT_EQ(chart.standing, CheckStanding::sound);
  EXPECT_EQ(chart.due_at, on_day(8));
  EXPECT_NEAR(chart.points[1].z, -0.4, 1e-9);
  EXPECT_EQ(chart.points[0].run, chart.points[1].run);
  EXPECT_EQ(only_chart(book, 8.5).standing, CheckStanding::due);
  EXPECT_EQ(only_chart(book, 0.5).points.size(), 0u);  // not measured yet then
}

// A standard left out makes the whole due, though the other was measured.
TEST(Charts, TheStandardThatWaitsLongestCounts) {
  QualityBook book = book_with_standards();
  for (const double day : {1.0, 7.0}) measure(book, "weak", 0, day);
  EXPECT_EQ(only_chart(book, 7.5).standing, CheckStanding::due);
}

TEST(Charts, AFailedRuleStopsUntilSomebodyClearsIt) {
  QualityBook book = book_with_standards();
  measure(book, "weak", 3.5, 1);
  EXPECT_EQ(only_chart(book, 1.1).stopped_by, ControlRule::beyond_3s);
  measure(book, "weak", 0, 2);  // a good one after it does not clear it
  EXPECT_EQ(only_chart(book, 2.1).standing, CheckStanding::stopped);
  clear(book, 2.2);
  EXPECT_EQ(only_chart(book, 2.15).standing, CheckStanding::stopped);
  EXPECT_NE(only_chart(book, 2.3).standing, CheckStanding::stopped);
  measure(book, "strong", -3.5, 3);
  EXPECT_EQ(only_chart(book, 3.1).standing, CheckStanding::stopped);
  EXPECT_EQ(only_chart(book, 3.1).cleared.size(), 1u);
}

// Two standards together: opposed beyond 2 sd within an hour is R-4s, on two days it is not.
TEST(Charts, ARunIsWhatWasMeasuredWithinAnHour) {
  QualityBook together = book_with_standards(), apart = book_with_standards();
  measure(together, "weak", 2.2, 1);
  measure(together, "strong", -2.2, 1.02);
  measure(apart, "weak", 2.2, 1);
  measure(apart, "strong", -2.2, 2);
  EXPECT_EQ(only_chart(together, 3).stopped_by, ControlRule::range_4s);
  EXPECT_EQ(only_chart(apart, 3).stopped_by, std::nullopt);
  EXPECT_THAT(only_chart(apart, 3).points[1].broken, Contains(ControlRule::beyond_2s));
}

// Ten on one side stop; once cleared, it takes ten more.
TEST(Charts, HistoryBeginsAnewAfterAClearance) {
  QualityBook book = book_with_standards();
  for (int day = 1; day <= 10; ++day) measure(book, "weak", 0.5, day);
  EXPECT_EQ(only_chart(book, 10.1).stopped_by, ControlRule::ten_one_side);
  clear(book, 10.5);
  for (int day = 11; day <= 19; ++day) measure(book, "weak", 0.5, day);
  EXPECT_EQ(only_chart(book, 19.1).stopped_by, std::nullopt);
  measure(book, "weak", 0.5, 20);
  EXPECT_EQ(only_chart(book, 20.1).stopped_by, ControlRule::ten_one_side);
}

}  // namespace
}  // namespace brimline::tests
