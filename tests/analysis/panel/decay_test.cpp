// SPDX-License-Identifier: GPL-3.0-or-later
// The decay models against worked values and against themselves.
#include "analysis/panel/decay.h"

#include <cmath>

#include <gtest/gtest.h>

namespace brimline {
namespace {

Decay decay(DecayModel model) {
  Decay d;
  d.model = model;
  d.start = 2;
  d.rate = 0.05;
  d.order = 1.5;
  d.rest = 0.4;
  if (model == DecayModel::parallel_first_order) {
    d.share = 0.3;
    d.rate = 5;
    d.slow_rate = 0.05;
  }
  return d;
}

// Closed solutions of dC/dt = -k C^n (Powell and others 2000 and Haas and Karra 1984 give them; from memory),
// worked by hand for C0 = 2 mg/L and k = 0.05; parallel: x = 0.3, k1 = 5, k2 = 0.05.
TEST(Decay, WorkedValues) {
  const struct {
    double hours, first, second, nth, parallel;
  } rows[] = {{0.5, 1.9506, 1.9048, 1.9311, 1.4147},
              {1, 1.9025, 1.8182, 1.8657, 1.3358},
              {4, 1.6375, 1.4286, 1.5351, 1.1462},
              {24, 0.6024, 0.5882, 0.5853, 0.4217}};
  for (const auto& row : rows) {
    EXPECT_NEAR(decay(DecayModel::first_order).at(row.hours), row.first, 5e-5);
    EXPECT_NEAR(decay(DecayModel::second_order).at(row.hours), row.second, 5e-5);
    EXPECT_NEAR(decay(DecayModel::nth_order).at(row.hours), row.nth, 5e-5);
    EXPECT_NEAR(decay(DecayModel::parallel_first_order).at(row.hours), row.parallel, 5e-5);
  }
}

constexpr DecayModel kAll[] = {DecayModel::first_order, DecayModel::second_order, DecayModel::nth_order,
                               DecayModel::limited_first_order, DecayModel::parallel_first_order};

// dC/dt = -k C^n, by a difference; every model starts at C0 and never rises.
TEST(Decay, TheSolutionsSolveTheirEquation) {
  for (const double t : {0.3, 2.0, 11.0}) {
    const auto slope = [&](DecayModel m) { return (decay(m).at(t + 1e-5) - decay(m).at(t - 1e-5)) / 2e-5; };
    EXPECT_NEAR(slope(DecayModel::first_order), -0.05 * decay(DecayModel::first_order).at(t), 1e-7);
    EXPECT_NEAR(slope(DecayModel::second_order), -0.05 * std::pow(decay(DecayModel::second_order).at(t), 2),
                1e-7);
    EXPECT_NEAR(slope(DecayModel::nth_order), -0.05 * std::pow(decay(DecayModel::nth_order).at(t), 1.5),
                1e-7);
    EXPECT_NEAR(slope(DecayModel::limited_first_order),
                -0.05 * (decay(DecayModel::limited_first_order).at(t) - 0.4), 1e-7);
  }
  for (const DecayModel m : kAll) {
    EXPECT_DOUBLE_EQ(decay(m).at(0), 2);
    EXPECT_LT(decay(m).at(24), decay(m).at(1));
  }
}

std::vector<DecayPoint> read(const Decay& truth, std::initializer_list<double> hours, double sd) {
  std::vector<DecayPoint> out;
  for (const double t : hours) out.push_back({t, {truth.at(t), sd}});
  return out;
}

TEST(Decay, TheModelThatMadeTheReadingsFitsThem) {
  for (const DecayModel m : kAll) {
    const Decay truth = decay(m);
    const auto fits = fit_decays(truth.start, read(truth, {0.25, 0.5, 1, 2, 4, 8, 16, 24, 48}, 0.005));
    ASSERT_EQ(fits.size(), 5u);
    for (const DecayFit& fit : fits)
      if (fit.decay.model == m) {
        EXPECT_LT(fit.chi_square, 0.1) << static_cast<int>(m);
        EXPECT_NEAR(fit.decay.at(12), truth.at(12), 0.01);
      }
    EXPECT_EQ(fits.front().decay.model, m) << static_cast<int>(m);
  }
}

// Hurvich and Tsai 1989 (from memory): n - p - 1 must be 1 at least, so three times bear one parameter.
TEST(Decay, FewTimesBearFewParameters) {
  const Decay truth = decay(DecayModel::first_order);
  EXPECT_TRUE(fit_decays(2, read(truth, {1, 24}, 0.05)).empty());
  const auto fits = fit_decays(2, read(truth, {1, 4, 24}, 0.05));
  ASSERT_EQ(fits.size(), 2u);
  EXPECT_EQ(fits.front().decay.model, DecayModel::first_order);
  EXPECT_NEAR(fits.front().decay.rate, 0.05, 1e-6);
  EXPECT_NEAR(fits.front().aicc, 2 + 2 * 1 * 2.0 / (3 - 1 - 1), 1e-6);
}

std::vector<DemandPoint> used(std::initializer_list<double> hours, double (*of)(double)) {
  std::vector<DemandPoint> out;
  for (const double t : hours) out.push_back({t, {of(t), 0.05}});
  return out;
}

TEST(Decay, TheEndOfADemandIsFound) {
  const auto limited = [](double t) { return 9 * (1 - std::exp(-0.12 * t)); };
  const auto with_fast = [](double t) { return 4 + 6 * (1 - std::exp(-0.1 * t)); };
  EXPECT_NEAR(*demand_at_infinity(used({1, 24}, limited)), 9, 0.01);
  EXPECT_NEAR(*demand_at_infinity(used({1, 4, 24}, limited)), 9, 0.01);
  EXPECT_NEAR(*demand_at_infinity(used({0.5, 1, 4, 8, 16, 24}, with_fast)), 10, 0.05);
  // a straight line has no end to be seen
  EXPECT_FALSE(demand_at_infinity(used({1, 2, 3}, [](double t) { return t; })));
  EXPECT_FALSE(demand_at_infinity(used({1}, limited)));
  EXPECT_FALSE(demand_at_infinity(used({1, 24}, [](double) { return 0.0; })));
}

}  // namespace
}  // namespace brimline
