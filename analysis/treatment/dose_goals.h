// SPDX-License-Identifier: GPL-3.0-or-later
// What the doses are to reach: one row of the dose program for each reading that is to be moved, and for the
// saturation index they make.
#pragma once

#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include "analysis/treatment/dose_choice.h"
#include "analysis/treatment/dose_program.h"

namespace brimline {

enum class GoalKind { linear, ph, saturation };

struct DoseGoal {
  AnalyteId analyte;
  GoalKind kind = GoalKind::linear;
  std::vector<std::pair<double Totals::*, double>> terms;  // value = sum of factor * total
  double start = 0;                                        // now, in the analyte's unit
  ProgramRow row;

  // A dose too much can be taken back by another: its upper end limits no single dose.
  bool falls() const { return kind != GoalKind::linear || analyte == "total_alkalinity"; }
};

class DoseGoals {
 public:
  DoseGoals(const Draft& d, const ChlorineGoal& chlorine, bool stabilizer, bool salt);

  std::vector<DoseGoal> all;

  bool balance() const { return balance_; }  // pH and alkalinity may be dosed on
  bool wants(std::string_view analyte) const;
  // Nothing calls for a dose. Before the first one a reading that is outside by no more than its error does
  // not; once water is treated anyway, what is at the edge comes along.
  bool met() const;
  // pH and the calcite index at the vessel's temperature, as judged once a shock is used up; nothing where
  // no water is there.
  std::optional<std::pair<double, double>> ph_and_saturation(const Totals& totals) const;

 private:
  void collect();
  void add_goal(DoseGoal g, const Target& range, const Target& wanted, double weight);
  void ph_goal();
  void saturation_goal();
  void linear(const char* analyte, double margin, double relative_error = 0);
  void chlorine_goal(double sd_volume);
  bool metals() const;
  double residual() const;
  Totals judged(const Totals& t) const;
  std::optional<Aim> chlorine_aim() const;
  double sd_of(const DoseGoal& g) const;

  const Draft& d_;
  const ChlorineGoal& chlorine_;
  const bool stabilizer_, salt_;
  bool balance_ = false;
  bool clamped_ = false;  // its share of the stabilizer would be more free chlorine than may be swum in
};

}  // namespace brimline
