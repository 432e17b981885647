// SPDX-License-Identifier: GPL-3.0-or-later
// The control rules by their definitions: Westgard, Barry, Hunt & Groth 1981, Clin. Chem. 27:493 (citation
// from memory; definitions as its teaching pages give them).
#include "analysis/quality/control.h"

#include <cmath>
#include <set>

#include <gmock/gmock.h>

namespace brimline {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;

// Each measured by itself, in a run of its own.
std::vector<ControlRule> broken(const std::vector<double>& zs) {
  std::vector<ControlPoint> points;
  for (const double z : zs) points.push_back({z, static_cast<int>(points.size())});
  return rules_broken(points);
}

TEST(Control, OnePointBeyondThree) {
  EXPECT_THAT(broken({3.01}), ElementsAre(ControlRule::beyond_2s, ControlRule::beyond_3s));
  EXPECT_THAT(broken({-3.01}), ElementsAre(ControlRule::beyond_2s, ControlRule::beyond_3s));
  EXPECT_THAT(broken({2.01}), ElementsAre(ControlRule::beyond_2s));
  EXPECT_THAT(broken({}), IsEmpty());
}

// "Exceeds" is strictly greater.
TEST(Control, APointOnALimitIsInside) {
  EXPECT_THAT(broken({3.0}), ElementsAre(ControlRule::beyond_2s));
  EXPECT_THAT(broken({2.0}), IsEmpty());
  EXPECT_THAT(broken({2.0, 2.5}), ElementsAre(ControlRule::beyond_2s));
  EXPECT_THAT(broken({1.0, 1.5, 1.5, 1.5}), IsEmpty());
  EXPECT_THAT(broken({0.0, .1, .1, .1, .1, .1, .1, .1, .1, .1}), IsEmpty());
  EXPECT_THAT(rules_broken(std::vector<ControlPoint>{{2.0, 1}, {-2.5, 1}}),
              ElementsAre(ControlRule::beyond_2s));
}

TEST(Control, TwoInARowBeyondTheSameTwo) {
  EXPECT_THAT(broken({2.1, 2.2}), Contains(ControlRule::two_beyond_2s));
  EXPECT_THAT(broken({-2.1, -2.2}), Contains(ControlRule::two_beyond_2s));
  EXPECT_THAT(broken({2.1, -2.2}), Not(Contains(ControlRule::two_beyond_2s)));
  EXPECT_THAT(broken({2.1, 0.5, 2.2}), Not(Contains(ControlRule::two_beyond_2s)));
}

TEST(Control, ARangeOfFourWithinOneRunOnly) {
  const std::vector<ControlPoint> together = {{2.1, 7}, {-2.1, 7}}, apart = {{2.1, 7}, {-2.1, 8}};
  const std::vector<ControlPoint> three = {{2.1, 7}, {0, 7}, {-2.1, 7}}, wide = {{3.9, 7}, {-0.5, 7}};
  EXPECT_THAT(rules_broken(together), Contains(ControlRule::range_4s));
  EXPECT_THAT(rules_broken(three), Contains(ControlRule::range_4s));
  EXPECT_THAT(rules_broken(apart), Not(Contains(ControlRule::range_4s)));
  EXPECT_THAT(rules_broken(wide), Not(Contains(ControlRule::range_4s)));  // both must be beyond 2 sd
}

TEST(Control, FourInARowBeyondTheSameOne) {
  EXPECT_THAT(broken({1.1, 1.2, 1.1, 1.3}), ElementsAre(ControlRule::four_beyond_1s));
  EXPECT_THAT(broken({-1.1, -1.2, -1.1, -1.3}), ElementsAre(ControlRule::four_beyond_1s));
  EXPECT_THAT(broken({1.1, 1.2, -1.1, 1.3}), IsEmpty());
  EXPECT_THAT(broken({1.1, 1.2, 1.3}), IsEmpty());
}

TEST(Control, TenInARowOnOneSide) {
  const std::vector<double> nine(9, 0.2);
  std::vector<double> ten = nine, crossed = nine;
  ten.push_back(0.1);
  crossed.push_back(-0.1);
  EXPECT_THAT(broken(nine), IsEmpty());
  EXPECT_THAT(broken(ten), ElementsAre(ControlRule::ten_one_side));
  EXPECT_THAT(broken(crossed), IsEmpty());
}

// A law: the chart turned upside down breaks the same rules.
TEST(Control, EitherSideIsTheSame) {
  const std::vector<double> zs = {.2, 1.4, 2.3, 2.6, -3.2, -2.2, 1.2, 1.1, 1.5, 1.9, .3, .2, .1, .4, .2, .6};
  for (size_t n = 1; n <= zs.size(); ++n) {
    std::vector<double> up(zs.begin(), zs.begin() + static_cast<std::ptrdiff_t>(n)), down;
    for (const double z : up) down.push_back(-z);
    EXPECT_EQ(broken(up), broken(down));
  }
}

TEST(Control, OnlyTheWarningDoesNotStop) {
  std::set<std::string_view> names;
  for (const ControlRule rule : kControlRules) {
    EXPECT_EQ(stops(rule), name_of(rule) != "1-2s");
    names.insert(name_of(rule));
  }
  EXPECT_THAT(names, ElementsAre("1-2s", "1-3s", "10x", "2-2s", "4-1s", "R-4s"));
}

// NIST Statistical Reference Datasets, univariate, NumAcc1 (from memory): 10000001, 10000003, 10000002 have
// mean 10000002 and sd 1; here seven times over, sd sqrt(14/20).
TEST(Control, LimitsOfTheirOwn) {
  std::vector<double> values;
  for (int i = 0; i < 7; ++i)
    for (const double v : {10000001., 10000003., 10000002.}) values.push_back(v);
  const auto limits = limits_of(values);
  ASSERT_TRUE(limits);
  EXPECT_NEAR(limits->mean, 10000002, 1e-7);
  EXPECT_NEAR(limits->sd, std::sqrt(14.0 / 20), 1e-9);
  EXPECT_NEAR(limits->z(limits->at(-3)), -3, 1e-9);
  values.resize(19);
  EXPECT_EQ(limits_of(values).error(), LimitFault::too_few);
  EXPECT_EQ(limits_of(std::vector<double>(20, 1.0)).error(), LimitFault::no_spread);
  std::vector<double> broken_one(20, 1.0);
  broken_one[3] = NAN;
  EXPECT_EQ(limits_of(broken_one).error(), LimitFault::not_finite);
  EXPECT_FALSE(text_of(LimitFault::too_few).empty());
}

}  // namespace
}  // namespace brimline
