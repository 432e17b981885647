// SPDX-License-Identifier: GPL-3.0-or-later
// Control charts of check standards: Shewhart limits and the multi-rule set of Westgard, Barry, Hunt & Groth
// 1981, Clin. Chem. 27:493 (citation from memory). "Beyond" is strictly beyond: a point on a limit is inside.
//
//   std::vector<ControlPoint> points;  // one analyte of one instrument, oldest first
//   for (const ControlRule rule : rules_broken(points)) ...
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace brimline {

// Of one strength of check standard, in the analyte's unit.
struct ControlLimits {
  double mean = 0, sd = 1;  // sd above zero
  double z(double value) const { return (value - mean) / sd; }
  double at(double sds) const { return mean + sds * sd; }
};

// One measurement of a check standard, in standard deviations from what it should be, so that standards of
// several strengths stand on one chart.
struct ControlPoint {
  double z = 0;
  int run = 0;  // measured together: the same number
};

enum class ControlRule {
  beyond_2s,       // 1-2s: one beyond 2 sd; a warning only
  beyond_3s,       // 1-3s: one beyond 3 sd
  two_beyond_2s,   // 2-2s: two in a row beyond the same 2 sd
  range_4s,        // R-4s: in one run, one beyond +2 sd and one beyond -2 sd
  four_beyond_1s,  // 4-1s: four in a row beyond the same 1 sd
  ten_one_side     // 10x: ten in a row on one side of the mean
};
inline constexpr ControlRule kControlRules[] = {ControlRule::beyond_2s,      ControlRule::beyond_3s,
                                                ControlRule::two_beyond_2s,  ControlRule::range_4s,
                                                ControlRule::four_beyond_1s, ControlRule::ten_one_side};

std::string_view name_of(ControlRule rule);  // "1-3s"
bool stops(ControlRule rule);                // all but the warning

// What the last point breaks, in the order of the enum. Points oldest first; none breaks nothing.
std::vector<ControlRule> rules_broken(std::span<const ControlPoint> points);

enum class LimitFault {
  too_few,     // fewer than kPointsForLimits
  not_finite,  // a value is not a number
  no_spread    // all values the same
};
std::string_view text_of(LimitFault fault);

inline constexpr int kPointsForLimits = 20;  // common practice, no source
// Mean and standard deviation (n - 1) of measurements made while the instrument was sound.
[[nodiscard]] tl::expected<ControlLimits, LimitFault> limits_of(std::span<const double> values);

}  // namespace brimline
