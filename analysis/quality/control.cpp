// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/quality/control.h"

#include <algorithm>
#include <cmath>

namespace brimline {

namespace {

// The last `count` points are all beyond `sds` on the side of the last one.
bool in_a_row(std::span<const ControlPoint> points, size_t count, double sds) {
  if (points.size() < count) return false;
  const double side = points.back().z < 0 ? -1 : 1;
  return std::all_of(points.end() - static_cast<std::ptrdiff_t>(count), points.end(),
                     [&](const ControlPoint& p) { return side * p.z > sds; });
}

// Another point of the last one's run lies beyond 2 sd on the other side.
bool opposed_in_run(std::span<const ControlPoint> points) {
  const ControlPoint& last = points.back();
  if (std::abs(last.z) <= 2) return false;
  return std::any_of(points.begin(), points.end(), [&](const ControlPoint& p) {
    return p.run == last.run && (last.z > 0 ? p.z < -2 : p.z > 2);
  });
}

bool breaks(ControlRule rule, std::span<const ControlPoint> points) {
  switch (rule) {
    case ControlRule::beyond_2s:
      return in_a_row(points, 1, 2);
    case ControlRule::beyond_3s:
      return in_a_row(points, 1, 3);
    case ControlRule::two_beyond_2s:
      return in_a_row(points, 2, 2);
    case ControlRule::range_4s:
      return opposed_in_run(points);
    case ControlRule::four_beyond_1s:
      return in_a_row(points, 4, 1);
    case ControlRule::ten_one_side:
      return in_a_row(points, 10, 0);
  }
  return false;
}

}  // namespace

std::string_view name_of(ControlRule rule) {
  switch (rule) {
    case ControlRule::beyond_2s:
      return "1-2s";
    case ControlRule::beyond_3s:
      return "1-3s";
    case ControlRule::two_beyond_2s:
      return "2-2s";
    case ControlRule::range_4s:
      return "R-4s";
    case ControlRule::four_beyond_1s:
      return "4-1s";
    case ControlRule::ten_one_side:
      return "10x";
  }
  return {};
}

bool stops(ControlRule rule) {
  return rule != ControlRule::beyond_2s;
}

std::vector<ControlRule> rules_broken(std::span<const ControlPoint> points) {
  std::vector<ControlRule> out;
  if (points.empty()) return out;
  for (const ControlRule rule : kControlRules)
    if (breaks(rule, points)) out.push_back(rule);
  return out;
}

std::string_view text_of(LimitFault fault) {
  switch (fault) {
    case LimitFault::too_few:
      return "too few measurements for limits of their own";
    case LimitFault::not_finite:
      return "a measurement is not a number";
    case LimitFault::no_spread:
      return "all measurements are the same";
  }
  return {};
}

tl::expected<ControlLimits, LimitFault> limits_of(std::span<const double> values) {
  if (values.size() < static_cast<size_t>(kPointsForLimits)) return tl::unexpected(LimitFault::too_few);
  const auto n = static_cast<double>(values.size());
  double mean = 0, squares = 0;
  for (const double v : values) mean += v / n;
  for (const double v : values) squares += (v - mean) * (v - mean);
  if (!std::isfinite(squares)) return tl::unexpected(LimitFault::not_finite);
  const auto [least, greatest] = std::minmax_element(values.begin(), values.end());
  if (*least == *greatest) return tl::unexpected(LimitFault::no_spread);
  return ControlLimits{mean, std::sqrt(squares / (n - 1))};
}

}  // namespace brimline
