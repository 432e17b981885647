// SPDX-License-Identifier: GPL-3.0-or-later
// A new reagent lot against the one before: the same waters read with both. Paired difference with its
// confidence interval (Student 1908), laid beside the difference that may be.
#pragma once

#include <span>
#include <string_view>

#include <tl/expected.hpp>

namespace brimline {

// One water read with both lots, analyte's unit.
struct LotPair {
  double before = 0, after = 0;
};

enum class LotVerdict {
  alike,    // the whole interval lies within the allowable difference
  differs,  // the whole interval lies outside it
  not_told  // the interval crosses it: read more waters
};

struct LotComparison {
  int pairs = 0;
  double difference = 0;     // mean of after - before
  double sd = 0;             // of one difference
  double low = 0, high = 0;  // confidence interval of the mean difference, pairs - 1 degrees of freedom
  LotVerdict verdict = LotVerdict::not_told;
};

enum class LotFault {
  too_few,      // fewer than two waters
  not_finite,   // a value is not a number
  no_allowance  // the allowable difference is not above zero
};
std::string_view text_of(LotFault fault);

// `allowable`: the mean difference that may be, either way; analyte's unit.
[[nodiscard]] tl::expected<LotComparison, LotFault> compare_lots(std::span<const LotPair> pairs,
                                                                 double allowable, double confidence = 0.95);

}  // namespace brimline
