// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/dose_choice.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "analysis/treatment/dose_goals.h"
#include "analysis/water/doses.h"

namespace brimline {

namespace {

// Money a cubic metre, not of the whole vessel: the same water in a larger vessel gets the same plan.
constexpr double kStepCost = 0.08;   // a step more is worth this much product
constexpr double kAirCost = 0.3;     // a day of air
constexpr double kHomeShare = 0.02;  // what stands at home has been paid for
constexpr double kSaltCost = 0.01;   // a mmol/kgw of chloride or sulfate left behind
constexpr int kMostRounds = 8;
constexpr double kEnough = 0.004;      // pH or saturation: the linear program agrees with the model
constexpr double kSeemsOutside = 1.0;  // an objective that product and steps alone hardly reach
constexpr double kSmallVessel = 3;     // cubic metres: grains of chlorine for it are too few to weigh at home
constexpr double kAirStep = 0.3;       // mmol/kgw a day

struct Source {
  ChosenDose dose;
  Totals per_mmol;
  ProgramColumn column;
};

struct Limits {
  const char* id;
  double most;  // mmol/kgw: more is no household dose
};
constexpr Limits kBalance[] = {{"hydrochloric_acid", 6},
                               {"sodium_bisulfate", 6},
                               {"sodium_bicarbonate", 4},
                               {"sodium_carbonate", 2},
                               {"sodium_sesquicarbonate", 2}};

class Chooser {
 public:
  Chooser(const Draft& d, const ChlorineGoal& chlorine, bool stabilizer, bool salt)
      : d_(d), chlorine_(chlorine), stabilizer_(stabilizer), goals_(d, chlorine, stabilizer, salt) {}

  DoseChoice choose() {
    if (goals_.all.empty() || goals_.met()) return std::move(out_);
    collect_sources();
    if (sources_.empty()) return std::move(out_);
    refine();
    return std::move(out_);
  }

 private:
  void source(const char* id, double most, int side = 0) {
    const Substance* sub = find_substance(id);
    const auto vector = dose_vector(id);
    if (!sub || !vector || sub->barred_in(d_.s.vessel)) return;
    for (const DoseGoal& g : goals_.all) most = std::min(most, room(g, *vector));
    const std::vector<int> found = d_.best_supplies(id);
    if (found.empty()) out_.no_product.emplace_back(id);
    for (const int index : found) {
      const Supply& supply = d_.supplies()[index];
      const double left = supply.stock_mol ? *supply.stock_mol * 1e3 / d_.kilograms() : most;
      if (left <= 1e-4) continue;
      const double salts = std::max(0.0, vector->chloride) + std::max(0.0, vector->sulfate);
      Source s{{index, id, 0}, *vector * 1e-3, {}};
      s.column = {supply.price_a_mol() * (supply.at_home ? kHomeShare : 1) + kSaltCost * salts, kStepCost,
                  step_most(*sub, *vector, most), std::min(most, left), side};
      sources_.push_back(std::move(s));
    }
  }

  // What this goal's upper end leaves room for; no limit where other doses can bring the value down again.
  double room(const DoseGoal& g, const Totals& vector) const {
    if (g.falls() || g.terms.size() > 1 || !g.row.range.high) return std::numeric_limits<double>::infinity();
    const double a_mmol = vector.*g.terms.front().first * g.terms.front().second * 1e-3;
    if (a_mmol <= 0) return std::numeric_limits<double>::infinity();
    return std::max(1e-4, 1.05 * (*g.row.range.high - g.start) / a_mmol);
  }

  double step_most(const Substance& sub, const Totals& v, double most) const {
    double out = most;
    if (sub.cap.mmol_per_litre) out = std::min(out, *sub.cap.mmol_per_litre);
    if (sub.cap.total_alkalinity && v.alkalinity > 0)
      out = std::min(out, *sub.cap.total_alkalinity / weight::kAlkalinity / v.alkalinity);
    if (sub.cap.calcium_hardness && v.calcium > 0)
      out = std::min(out, *sub.cap.calcium_hardness / weight::kCaCO3 / v.calcium);
    if (sub.cap.free_chlorine && v.chlorine > 0 && !chlorine_.exactly)
      out = std::min(out, *sub.cap.free_chlorine / weight::kChlorine / v.chlorine);
    return out;
  }

  void collect_sources() {
    if (goals_.balance())
      for (const Limits& l : kBalance) source(l.id, l.most);
    if (goals_.wants("calcium_hardness")) source("calcium_chloride", 5);
    if (stabilizer_ && goals_.wants("cyanuric_acid")) source("cyanuric_acid", 1);
    if (goals_.wants("salt")) source("sodium_chloride", 80);
    if (goals_.wants("total_bromine")) source("bcdmh", 0.05);
    if (goals_.wants("borate")) source("boric_acid", 6);
    if (goals_.wants("free_chlorine")) {
      source("sodium_hypochlorite", 0.5, 1);
      // Undissolved grains bleach a liner, and a plunge wants too few to weigh.
      const bool liquid = d_.s.vessel.surface == Surface::vinyl || d_.kilograms() < 1000 * kSmallVessel;
      if (!liquid || d_.best_supplies("sodium_hypochlorite").empty()) source("calcium_hypochlorite", 0.25, 1);
      // Dichlor brings stabilizer: only where that may be; never for a shock. Trichlor dissolves over days:
      // upkeep, not a dose.
      if (!chlorine_.exactly && goals_.wants("cyanuric_acid")) source("dichlor", 0.1, 2);
    }
    if (goals_.balance()) {
      Source air{{-1, "", 0}, Totals{.carbon = -1e-3}, {}};
      air.column = {0.01, kAirCost, kAirStep, 3, 0};
      sources_.push_back(air);
    }
  }

  Totals with(const std::vector<double>& doses) const {
    Totals t = d_.totals;
    for (size_t j = 0; j < sources_.size(); ++j) t += sources_[j].per_mmol * doses[j];
    return oxidise_bromide(t);
  }

  // Slopes of every goal around `doses`; false where no water is there.
  bool linearise(const std::vector<double>& doses) {
    const Totals here = with(doses);
    const auto now = goals_.balance() ? goals_.ph_and_saturation(here) : std::pair(0.0, 0.0);
    if (!now) return false;
    for (DoseGoal& g : goals_.all) g.row.slopes.assign(sources_.size(), 0);
    for (size_t j = 0; j < sources_.size(); ++j) {
      std::pair<double, double> slope{0, 0};
      if (goals_.balance()) {
        const double step = 0.01 * std::min(1.0, sources_[j].column.most);
        const auto up = goals_.ph_and_saturation(oxidise_bromide(here + sources_[j].per_mmol * step));
        if (!up) return false;
        slope = {(up->first - now->first) / step, (up->second - now->second) / step};
      }
      for (DoseGoal& g : goals_.all) {
        if (g.kind == GoalKind::ph) g.row.slopes[j] = slope.first;
        if (g.kind == GoalKind::saturation) g.row.slopes[j] = slope.second;
        for (const auto& [member, factor] : g.terms) g.row.slopes[j] += sources_[j].per_mmol.*member * factor;
      }
    }
    for (DoseGoal& g : goals_.all) {
      g.row.start = g.start;
      if (g.kind == GoalKind::linear) continue;
      g.row.start = g.kind == GoalKind::ph ? now->first : now->second;
      for (size_t j = 0; j < doses.size(); ++j) g.row.start -= g.row.slopes[j] * doses[j];
    }
    return true;
  }

  std::vector<double> true_values(const std::vector<double>& doses) const {
    const Totals t = with(doses);
    const auto now = goals_.balance() ? goals_.ph_and_saturation(t) : std::nullopt;
    std::vector<double> out;
    for (const DoseGoal& g : goals_.all) {
      double v = g.start;
      for (size_t j = 0; j < doses.size() && g.kind == GoalKind::linear; ++j) v += g.row.slopes[j] * doses[j];
      if (g.kind != GoalKind::linear) v = !now ? 99 : g.kind == GoalKind::ph ? now->first : now->second;
      out.push_back(v);
    }
    return out;
  }

  // A water of the aimed pH and alkalinity as near as acid, soda ash and bicarbonate come to it: where the
  // first linear picture is drawn.
  std::vector<double> first_guess() const {
    std::vector<double> x(sources_.size(), 0.0);
    if (!goals_.balance()) return x;
    const auto aim = d_.aim("total_alkalinity");
    const auto index = [&](std::string_view id) {
      for (size_t j = 0; j < sources_.size(); ++j)
        if (sources_[j].dose.substance == id) return static_cast<int>(j);
      return -1;
    };
    const int bicarbonate = index("sodium_bicarbonate");
    if (bicarbonate >= 0 && aim)
      x[bicarbonate] = std::clamp((aim->aim - d_.amount("total_alkalinity")) / weight::kAlkalinity, 0.0, 2.0);
    const double target = d_.aim("ph")->aim;
    const auto start = goals_.ph_and_saturation(with(x));
    if (!start) return x;
    int lever = start->first > target ? index("hydrochloric_acid") : index("sodium_carbonate");
    if (lever < 0) lever = start->first > target ? index("sodium_bisulfate") : -1;
    if (lever < 0) return x;
    double low = 0, high = sources_[lever].column.most;
    for (int i = 0; i < 16; ++i) {
      x[lever] = (low + high) / 2;
      const auto p = goals_.ph_and_saturation(with(x));
      const bool past = !p || (p->first > target) != (start->first > target);
      (past ? high : low) = x[lever];
    }
    return x;
  }

  // From two first pictures, as the steps chosen depend on where it is drawn.
  void refine() {
    std::vector<ProgramColumn> columns;
    for (const Source& s : sources_) columns.push_back(s.column);
    std::vector<double> best;
    double best_weighed = std::numeric_limits<double>::infinity();
    const std::vector<double> guess = first_guess();
    refine_from(guess, columns, best, best_weighed);
    if (!best.empty() && goals_.balance()) refine_from(middle_of(guess, best), columns, best, best_weighed);
    // Something stays outside: perhaps only so, and another product leads elsewhere.
    if (goals_.balance() && !best.empty() && (best_weighed > kSeemsOutside || chlorine_.exactly)) {
      const std::vector<double> first = best;
      for (size_t j = 0; j < columns.size(); ++j) {
        if (first[j] <= 1e-5) continue;
        std::vector<ProgramColumn> others = columns;
        others[j].most = 0;
        refine_from(guess, others, best, best_weighed);
      }
    }
    if (best.empty()) return;
    out_.weighed = best_weighed;
    for (size_t j = 0; j < sources_.size(); ++j)
      if (best[j] > 1e-5) {
        out_.doses.push_back(sources_[j].dose);
        out_.doses.back().mmol = best[j];
      }
  }

  static std::vector<double> middle_of(std::vector<double> a, const std::vector<double>& b) {
    for (size_t j = 0; j < a.size(); ++j) a[j] = (a[j] + b[j]) / 2;
    return a;
  }

  void refine_from(std::vector<double> around, const std::vector<ProgramColumn>& columns,
                   std::vector<double>& best, double& best_weighed) {
    for (int round = 0; round < kMostRounds; ++round) {
      if (!linearise(around)) return;
      std::vector<ProgramRow> rows;
      for (const DoseGoal& g : goals_.all) rows.push_back(g.row);
      const auto answer = solve_program(columns, rows);
      if (!answer) return;
      const std::vector<double> values = true_values(answer->doses);
      const double weighed = weigh(columns, rows, answer->doses, values);
      if (weighed < best_weighed) {
        best_weighed = weighed;
        best = answer->doses;
      }
      if (agrees(rows, answer->doses, values)) return;
      around = round < 2 ? answer->doses : middle_of(std::move(around), answer->doses);
    }
  }

  bool agrees(const std::vector<ProgramRow>& rows, const std::vector<double>& doses,
              const std::vector<double>& values) const {
    for (size_t i = 0; i < rows.size(); ++i) {
      double v = rows[i].start;
      for (size_t j = 0; j < doses.size(); ++j) v += rows[i].slopes[j] * doses[j];
      if (goals_.all[i].kind != GoalKind::linear && std::abs(v - values[i]) > kEnough) return false;
    }
    return true;
  }

  const Draft& d_;
  const ChlorineGoal& chlorine_;
  const bool stabilizer_;
  DoseGoals goals_;
  std::vector<Source> sources_;
  DoseChoice out_;
};

}  // namespace

bool may_balance(const Draft& d) {
  const auto cyanuric = d.s.known.find("cyanuric_acid");
  // A stabilizer beyond the range hides the buffer.
  if (cyanuric != d.s.known.end() && (!cyanuric->second.usable || cyanuric->second.doubtful)) return false;
  return d.s.fresh("ph") && d.s.fresh("total_alkalinity");
}

DoseChoice choose_doses(const Draft& d, const ChlorineGoal& chlorine, bool stabilizer, bool salt) {
  return Chooser(d, chlorine, stabilizer, salt).choose();
}

}  // namespace brimline
