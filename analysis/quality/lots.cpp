// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/quality/lots.h"

#include <cmath>

#include <boost/math/distributions/students_t.hpp>

namespace brimline {

std::string_view text_of(LotFault fault) {
  switch (fault) {
    case LotFault::too_few:
      return "two waters at least are to be read with both lots";
    case LotFault::not_finite:
      return "a reading is not a number";
    case LotFault::no_allowance:
      return "the allowable difference is to be above zero";
  }
  return {};
}

tl::expected<LotComparison, LotFault> compare_lots(std::span<const LotPair> pairs, double allowable,
                                                   double confidence) {
  if (pairs.size() < 2) return tl::unexpected(LotFault::too_few);
  if (!(allowable > 0) || !std::isfinite(allowable)) return tl::unexpected(LotFault::no_allowance);
  const auto n = static_cast<double>(pairs.size());
  LotComparison out;
  out.pairs = static_cast<int>(pairs.size());
  for (const LotPair& p : pairs) out.difference += (p.after - p.before) / n;
  double squares = 0;
  for (const LotPair& p : pairs) squares += std::pow(p.after - p.before - out.difference, 2);
  if (!std::isfinite(squares)) return tl::unexpected(LotFault::not_finite);
  out.sd = std::sqrt(squares / (n - 1));
  const boost::math::students_t t(n - 1);
  const double half = boost::math::quantile(t, 0.5 + confidence / 2) * out.sd / std::sqrt(n);
  out.low = out.difference - half;
  out.high = out.difference + half;
  if (out.low >= -allowable && out.high <= allowable)
    out.verdict = LotVerdict::alike;
  else if (out.low > allowable || out.high < -allowable)
    out.verdict = LotVerdict::differs;
  return out;
}

}  // namespace brimline
