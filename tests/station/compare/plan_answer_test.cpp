// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the last plan worked, a finding at a time: by a drawn truth, the verdict is wrong no oftener than
// the error of the readings allows.
#include "station/compare/plan_answer.h"

#include <algorithm>
#include <iostream>
#include <random>

#include <gtest/gtest.h>

namespace brimline {
namespace {

const Words& english() {
  static const Words words;
  return words;
}

Visit visit_of(const std::vector<std::pair<const char*, double>>& values, double sd) {
  Visit v;
  v.vessel.kind = VesselKind::pool;
  v.vessel.sanitizer = Sanitizer::chlorine;
  v.bottle.taken_at = Instant::parse("2026-06-14T08:00:00Z");
  for (const auto& [analyte, value] : values) {
    Reading r;
    r.analyte = analyte;
    r.value = value;
    r.sd = sd;
    v.bottle.readings.push_back(r);
  }
  return v;
}

Finding finding_of(const char* id, const char* analyte, double value, Target target) {
  Finding f;
  f.id = id;
  f.analyte = analyte;
  f.value = value;
  f.target = target;
  return f;
}

const Target kAlkalinity{80, 120};

Worked alkalinity(double then, double now, double sd) {
  Visit before = visit_of({{"total_alkalinity", then}}, sd);
  before.plan_as_told = Plan{};
  before.plan_as_told->findings = {finding_of("total_alkalinity_low", "total_alkalinity", then, kAlkalinity)};
  const auto answers = answers_of(before, visit_of({{"total_alkalinity", now}}, sd), english());
  EXPECT_EQ(answers.size(), 1u);
  return answers.empty() ? Worked::cannot_tell : answers.front().verdict;
}

TEST(PlanAnswer, SaysWhatTheReadingsShow) {
  EXPECT_EQ(alkalinity(50, 95, 4), Worked::worked);
  EXPECT_EQ(alkalinity(40, 62, 4), Worked::partly);
  EXPECT_EQ(alkalinity(50, 51, 4), Worked::not_at_all);
  EXPECT_EQ(alkalinity(50, 40, 4), Worked::not_at_all);    // it went the wrong way
  EXPECT_EQ(alkalinity(50, 180, 4), Worked::not_at_all);   // and far beyond
  EXPECT_EQ(alkalinity(70, 76, 10), Worked::cannot_tell);  // 6 apart, with 14 of error between them
  EXPECT_EQ(alkalinity(70, 76, 1), Worked::partly);
}

TEST(PlanAnswer, WhatWasNotReadCannotBeTold) {
  Visit then = visit_of({{"ph", 8.2}, {"free_chlorine", 0.1}}, 0.05);
  then.plan_as_told = Plan{};
  then.plan_as_told->findings = {finding_of("ph_high", "ph", 8.2, {7.2, 7.8}),
                                 finding_of("free_chlorine_low", "free_chlorine", 0.1, {1.0, 4.0})};
  Visit now = visit_of({{"free_chlorine", 10}}, 0.05);
  now.bottle.readings[0].clipped = Clip::above;
  for (const PlanAnswer& answer : answers_of(then, now, english()))
    EXPECT_EQ(answer.verdict, Worked::cannot_tell) << answer.text;
  EXPECT_EQ(answers_of(then, now, english()).size(), 2u);
  then.plan_as_told.reset();
  EXPECT_TRUE(answers_of(then, now, english()).empty());
}

TEST(PlanAnswer, SignsAndWhatIsComputedCountToo) {
  Visit then = visit_of({{"ph", 7.0}, {"total_alkalinity", 40.0}, {"calcium_hardness", 60.0}}, 0.02);
  then.plan_as_told = Plan{};
  for (const char* id : {"cloudy", "foam", "si_low"}) {
    Finding f;
    f.id = id;
    then.plan_as_told->findings.push_back(f);
  }
  Finding doubt;  // about a reading's trust: nothing was told to be done
  doubt.id = "reading_repeat";
  doubt.concern = Concern::reading;
  then.plan_as_told->findings.push_back(doubt);
  Visit now = visit_of({{"ph", 7.6}, {"total_alkalinity", 100.0}, {"calcium_hardness", 300.0}}, 0.02);
  now.bottle.signs = {Sign::foam};
  const auto answers = answers_of(then, now, english());
  ASSERT_EQ(answers.size(), 3u);
  EXPECT_EQ(answers[0].verdict, Worked::worked);      // not told of any more
  EXPECT_EQ(answers[1].verdict, Worked::not_at_all);  // foam again
  // pH 7.6, alkalinity 100, hardness 300 at 25 C: 7.6 + 0.7 + 2.1 + 2.0 - 12.1 = +0.3 by the index of the
  // MAHC's table (temperature 84 F 0.7, CH 300 2.1, TA 100 2.0), inside
  EXPECT_EQ(answers[2].verdict, Worked::worked);
}

// Combined chlorine is total less free: its target moves with free chlorine.
TEST(PlanAnswer, CombinedChlorineIsJudgedAsSuch) {
  Visit then = visit_of({{"free_chlorine", 1.0}, {"total_chlorine", 2.2}}, 0.05);
  then.plan_as_told = Plan{};
  then.plan_as_told->findings = {
      finding_of("combined_chlorine_high", "total_chlorine", 2.2, {std::nullopt, 1.4})};
  const auto verdict = [&](double free, double total) {
    return answers_of(then, visit_of({{"free_chlorine", free}, {"total_chlorine", total}}, 0.05), english())
        .front()
        .verdict;
  };
  EXPECT_EQ(verdict(3.0, 3.1), Worked::worked);
  EXPECT_EQ(verdict(1.0, 2.2), Worked::not_at_all);
}

// Waters whose truth is drawn: moved all the way, half the way, or not at all. "Worked" of a water that did
// not move, and "did not work" of one that moved inside, come no oftener than one in twenty.
TEST(PlanAnswer, IsSeldomWrong) {
  std::mt19937_64 random(9);
  const auto read = [&](double truth, double sd) {
    return std::normal_distribution<double>(truth, sd)(random);
  };
  int falsely_worked = 0, falsely_not = 0, told = 0;
  constexpr int kWaters = 2000;
  for (int i = 0; i < kWaters; ++i) {
    const double then = std::uniform_real_distribution<double>(35, 65)(random);
    const double sd = std::uniform_real_distribution<double>(2, 8)(random);
    falsely_worked += alkalinity(read(then, sd), read(then, sd), sd) == Worked::worked;
    const Worked moved = alkalinity(read(then, sd), read(100, sd), sd);
    falsely_not += moved == Worked::not_at_all;
    told += moved == Worked::worked;
  }
  std::cout << "of " << kWaters << " waters: worked, where nothing moved " << falsely_worked
            << "; did not work, where all did " << falsely_not << "; told right " << told << "\n";
  EXPECT_LE(falsely_worked, kWaters / 20);
  EXPECT_LE(falsely_not, kWaters / 20);
  EXPECT_GE(told, 0.8 * kWaters);
}

}  // namespace
}  // namespace brimline
