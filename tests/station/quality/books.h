// SPDX-License-Identifier: GPL-3.0-or-later
// A shop's book for the tests: one instrument, two strengths of chlorine standard, measured daily at 08:00.
#pragma once

#include <gmock/gmock.h>

#include "station/quality/charts.h"

namespace brimline::tests {

// Days after 1 April 2026, 08:00.
inline Instant on_day(double days) {
  Instant at = *Instant::parse("2026-04-01T08:00:00-05:00");
  at.utc += std::chrono::seconds(static_cast<long>(days * 86400));
  return at;
}

inline QualityBook book_with_standards() {
  QualityBook book;
  book.standards = {{"weak", "photometer 1", "free_chlorine", "Weak", 1.0, 0.05, 7, on_day(0)},
                    {"strong", "photometer 1", "free_chlorine", "Strong", 3.0, 0.10, 7, on_day(0)}};
  return book;
}

// `z` standard deviations off, at `days`.
inline void measure(QualityBook& book, const std::string& standard, double z, double days) {
  const CheckStandard& of = *book.standard(standard);
  book.measurements.push_back({"M-" + std::to_string(book.measurements.size()), standard, on_day(days),
                               of.value + z * of.sd, true, ""});
}

inline void clear(QualityBook& book, double days) {
  book.clearances.push_back({"K-" + std::to_string(book.clearances.size()), "photometer 1", "free_chlorine",
                             on_day(days), "A. Sample", "New lamp"});
}

inline CheckChart only_chart(const QualityBook& book, double days) {
  const auto charts = charts_at(book, on_day(days));
  EXPECT_EQ(charts.size(), 1u);
  return charts.at(0);
}

}  // namespace brimline::tests
