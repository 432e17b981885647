// SPDX-License-Identifier: GPL-3.0-or-later
// The book against the checks of a bottle: what the clerk is told.
#include "station/quality/supplies_of.h"

#include "analysis/panel/check.h"
#include "tests/station/quality/books.h"

namespace brimline::tests {
namespace {

using testing::Contains;
using testing::IsEmpty;

Bottle bottle_on(double days) {
  Bottle bottle;
  bottle.code = "B-1";
  bottle.taken_at = on_day(days - 0.05);
  bottle.tested_at = on_day(days);
  for (const auto& [id, value] : {std::pair("free_chlorine", 2.1), {"total_chlorine", 2.2}, {"ph", 7.43}}) {
    Reading reading;
    reading.analyte = id;
    reading.value = value;
    reading.method = Method::photometer;
    reading.instrument = "photometer 1";
    bottle.readings.push_back(reading);
  }
  return bottle;
}

std::vector<std::string> said(const QualityBook& book, double days) {
  std::vector<std::string> out;
  for (const Check& check :
       check_bottle(bottle_on(days), Vessel{}, {}, on_day(days), with_charts({}, book, on_day(days))))
    if (check.id.find("reagent") == 0 || check.id.find("instrument") == 0)
      out.push_back(std::string(check.id));
  return out;
}

QualityBook sound_book() {
  QualityBook book = book_with_standards();
  measure(book, "weak", 0.2, 1);
  measure(book, "strong", 0.1, 1);
  return book;
}

TEST(SuppliesOf, ASoundBookIsSilent) {
  EXPECT_THAT(said(sound_book(), 2), IsEmpty());
  EXPECT_THAT(said(QualityBook{}, 2), IsEmpty());
}

TEST(SuppliesOf, AStoppedAnalyteIsRejectedUntilCleared) {
  QualityBook book = sound_book();
  measure(book, "weak", -3.4, 2);
  EXPECT_THAT(said(book, 3), Contains("instrument_check_failed"));
  for (const Check& check :
       check_bottle(bottle_on(3), Vessel{}, {}, on_day(3), with_charts({}, book, on_day(3))))
    if (check.id == "instrument_check_failed") {
      EXPECT_EQ(check.verdict, Verdict::reject);
      EXPECT_THAT(check.analytes, testing::ElementsAre("free_chlorine"));  // pH goes on
    }
  measure(book, "weak", 0, 3.5);
  EXPECT_THAT(said(book, 4), Contains("instrument_check_failed"));
  clear(book, 4.5);
  EXPECT_THAT(said(book, 5), IsEmpty());
}

TEST(SuppliesOf, AnOverdueCheckIsNoted) {
  EXPECT_THAT(said(sound_book(), 30.5), IsEmpty());
  EXPECT_THAT(said(sound_book(), 31.5), Contains("instrument_check_overdue"));
  EXPECT_THAT(said(book_with_standards(), 29), IsEmpty());  // new: its first check is still to come
  EXPECT_THAT(said(book_with_standards(), 31), Contains("instrument_check_overdue"));
}

// Neither a check written by hand nor another channel's good one lets a stopped analyte go on.
TEST(SuppliesOf, OnlyAClearanceRedeems) {
  QualityBook book = sound_book();
  book.standards.push_back({"acid", "photometer 1", "ph", "Buffer", 7.0, 0.05, 7, on_day(0)});
  measure(book, "weak", -3.4, 2);
  measure(book, "acid", 0, 3);
  Supplies written;
  written.checks = {{"photometer 1", std::nullopt, on_day(3.5), true},
                    {"photometer 1", "free_chlorine", on_day(3.6), true}};
  const auto failed = [&](double days) {
    std::vector<AnalyteId> out;
    for (const Check& check :
         check_bottle(bottle_on(days), Vessel{}, {}, on_day(days), with_charts(written, book, on_day(days))))
      if (check.id == "instrument_check_failed") out = check.analytes;
    return out;
  };
  EXPECT_THAT(failed(4), testing::ElementsAre("free_chlorine"));
  clear(book, 5);
  EXPECT_THAT(failed(6), IsEmpty());
}

// HJ/T 345-2007: 1,10-phenanthroline at 510 nm, 1.1e4 L/(mol cm): 1 mg/L of iron in 1 cm is 0.197.
TEST(SuppliesOf, TheCurveOfTheLotInUse) {
  Supplies supplies;
  ReagentLot lot;
  lot.lot = "Fe-1";
  lot.analyte = "iron";
  lot.opened = on_day(0);
  supplies.lots = {lot};
  QualityBook book;
  book.curves = {{"u", "Fe-1", 510, on_day(1), {{0, 0.0001}, {1, 0.197}, {2, 0.394}, {3, 0.5909}}}};
  EXPECT_FALSE(calibration_in_use(supplies, book, "iron", 510, on_day(0.5)));
  EXPECT_FALSE(calibration_in_use(supplies, book, "iron", 560, on_day(2)));
  EXPECT_FALSE(calibration_in_use(supplies, book, "copper", 510, on_day(2)));
  const auto found = calibration_in_use(supplies, book, "iron", 508, on_day(2));
  ASSERT_TRUE(found);
  EXPECT_EQ(found->lot, "Fe-1");
  EXPECT_NEAR(amount_of(*found, {.sample = 0.197})->amount.value, 1.0, 0.001);
}

}  // namespace
}  // namespace brimline::tests
