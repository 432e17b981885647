// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/quality/lots.h"

#include <cmath>
#include <vector>

#include <gtest/gtest.h>

namespace brimline {
namespace {

// Cushny & Peebles 1905, as in Student 1908, Biometrika 6:1: hours of sleep gained with two drugs, ten
// patients. Paired difference 1.58, sd 1.230, 95 % interval 0.700 to 2.460 (from memory; t = 4.062 on 9).
std::vector<LotPair> sleep() {
  const double first[] = {.7, -1.6, -.2, -1.2, -.1, 3.4, 3.7, .8, 0, 2};
  const double second[] = {1.9, .8, 1.1, .1, -.1, 4.4, 5.5, 1.6, 4.6, 3.4};
  std::vector<LotPair> out;
  for (int i = 0; i < 10; ++i) out.push_back({first[i], second[i]});
  return out;
}

TEST(Lots, StudentsPairs) {
  const auto found = compare_lots(sleep(), 1.0);
  ASSERT_TRUE(found);
  EXPECT_EQ(found->pairs, 10);
  EXPECT_NEAR(found->difference, 1.58, 1e-9);
  EXPECT_NEAR(found->sd, 1.230, 0.0005);
  EXPECT_NEAR(found->low, 0.7001, 0.0001);
  EXPECT_NEAR(found->high, 2.4599, 0.0001);
}

TEST(Lots, VerdictByTheWholeInterval) {
  EXPECT_EQ(compare_lots(sleep(), 3.0)->verdict, LotVerdict::alike);
  EXPECT_EQ(compare_lots(sleep(), 1.0)->verdict, LotVerdict::not_told);
  EXPECT_EQ(compare_lots(sleep(), 0.5)->verdict, LotVerdict::differs);
}

// A law: the lots named the other way round differ the other way round.
TEST(Lots, SwappedIsMirrored) {
  auto pairs = sleep();
  const auto one = compare_lots(pairs, 0.5);
  for (LotPair& p : pairs) std::swap(p.before, p.after);
  const auto other = compare_lots(pairs, 0.5);
  EXPECT_DOUBLE_EQ(one->low, -other->high);
  EXPECT_EQ(one->verdict, other->verdict);
}

TEST(Lots, WhatCannotBeComparedIsSaid) {
  EXPECT_EQ(compare_lots(std::vector<LotPair>{{1, 1}}, 1).error(), LotFault::too_few);
  EXPECT_EQ(compare_lots(sleep(), 0).error(), LotFault::no_allowance);
  EXPECT_EQ(compare_lots(std::vector<LotPair>{{1, NAN}, {1, 1}}, 1).error(), LotFault::not_finite);
  EXPECT_FALSE(text_of(LotFault::too_few).empty());
}

}  // namespace
}  // namespace brimline
