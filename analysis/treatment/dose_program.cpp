// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/dose_program.h"

#include <glpk.h>

#include <algorithm>
#include <cmath>
#include <memory>

namespace brimline {

namespace {

constexpr double kNegligible = 1e-6;  // mmol/kgw
constexpr int kMostNodes = 3000;      // of branching; the best found by then counts. No clock: the same
                                      // visit has the same plan on every machine

struct Deleter {
  void operator()(glp_prob* p) const { glp_delete_prob(p); }
};

// Rows and columns of GLPK are numbered from 1.
void stop_after_nodes(glp_tree* tree, void* count) {
  if (glp_ios_reason(tree) != GLP_ISELECT) return;
  if (++*static_cast<int*>(count) > kMostNodes) glp_ios_terminate(tree);
}

class Program {
 public:
  Program() : p_(glp_create_prob()) { glp_set_obj_dir(p_.get(), GLP_MIN); }

  int column(double low, double high, double cost, bool whole) {
    const int j = glp_add_cols(p_.get(), 1);
    glp_set_col_bnds(p_.get(), j, high > low ? GLP_DB : GLP_FX, low, high);
    glp_set_obj_coef(p_.get(), j, cost);
    glp_set_col_kind(p_.get(), j, whole ? GLP_IV : GLP_CV);
    return j;
  }

  // low <= sum of factor * column (<= high); an open side is absent.
  void row(const std::vector<std::pair<int, double>>& terms, std::optional<double> low,
           std::optional<double> high) {
    const int i = glp_add_rows(p_.get(), 1);
    const int kind = low && high ? (*high > *low ? GLP_DB : GLP_FX) : low ? GLP_LO : high ? GLP_UP : GLP_FR;
    glp_set_row_bnds(p_.get(), i, kind, low.value_or(0), high.value_or(0));
    std::vector<int> index = {0};
    std::vector<double> factor = {0};
    for (const auto& [column, value] : terms) {
      if (value == 0) continue;
      index.push_back(column);
      factor.push_back(value);
    }
    glp_set_mat_row(p_.get(), i, static_cast<int>(index.size()) - 1, index.data(), factor.data());
  }

  bool solve() {
    glp_term_out(GLP_OFF);
    glp_iocp how;
    glp_init_iocp(&how);
    how.msg_lev = GLP_MSG_OFF;
    how.presolve = GLP_ON;
    int nodes = 0;
    how.cb_func = stop_after_nodes;
    how.cb_info = &nodes;
    how.mip_gap = 1e-4;
    how.mir_cuts = GLP_ON;
    how.gmi_cuts = GLP_ON;
    const int failed = glp_intopt(p_.get(), &how);
    const int status = glp_mip_status(p_.get());
    return (failed == 0 || failed == GLP_ESTOP || failed == GLP_EMIPGAP) &&
           (status == GLP_OPT || status == GLP_FEAS);
  }
  double value(int j) const { return glp_mip_col_val(p_.get(), j); }
  double objective() const { return glp_mip_obj_val(p_.get()); }

 private:
  std::unique_ptr<glp_prob, Deleter> p_;
};

using Terms = std::vector<std::pair<int, double>>;

// The row with slack on each side of `limits` at `cost` a unit.
void soft_row(Program& program, const Terms& terms, double start, const Target& limits, double cost) {
  if (limits.low) {
    Terms with = terms;
    with.emplace_back(program.column(0, 1e6, cost, false), 1);
    program.row(with, *limits.low - start, std::nullopt);
  }
  if (limits.high) {
    Terms with = terms;
    with.emplace_back(program.column(0, 1e6, cost, false), -1);
    program.row(with, std::nullopt, *limits.high - start);
  }
}

double miss(const Target& t, double value) {
  return std::max({0.0, t.low ? *t.low - value : 0.0, t.high ? value - *t.high : 0.0});
}

}  // namespace

std::optional<ProgramAnswer> solve_program(const std::vector<ProgramColumn>& columns,
                                           const std::vector<ProgramRow>& rows) {
  Program program;
  std::vector<int> doses;
  std::vector<std::pair<int, int>> steps;  // column, side
  for (const ProgramColumn& c : columns) {
    const int dose = program.column(0, c.most, c.cost, false);
    const int most_steps = std::max(1, static_cast<int>(std::ceil(c.most / c.step_most - 1e-9)));
    const int step = program.column(0, most_steps, c.step_cost, true);
    program.row({{dose, 1}, {step, -c.step_most}}, std::nullopt, 0.0);
    doses.push_back(dose);
    steps.emplace_back(step, c.side);
  }
  // Of two sides one: steps of a side are possible only where its switch is on.
  if (std::any_of(columns.begin(), columns.end(), [](const ProgramColumn& c) { return c.side == 1; }) &&
      std::any_of(columns.begin(), columns.end(), [](const ProgramColumn& c) { return c.side == 2; })) {
    const int on = program.column(0, 1, 0, true);
    for (const auto& [step, side] : steps) {
      if (side == 1) program.row({{step, 1}, {on, -100}}, std::nullopt, 0.0);
      if (side == 2) program.row({{step, 1}, {on, 100}}, std::nullopt, 100.0);
    }
  }
  for (const ProgramRow& r : rows) {
    Terms terms;
    for (size_t j = 0; j < columns.size(); ++j) terms.emplace_back(doses[j], r.slopes[j]);
    soft_row(program, terms, r.start, r.range, r.weight / r.width);
    soft_row(program, terms, r.start, r.wanted, r.soft_weight / r.width);
  }
  if (!program.solve()) return std::nullopt;
  ProgramAnswer out;
  for (const int j : doses) {
    const double x = program.value(j);
    out.doses.push_back(x > kNegligible ? x : 0);
  }
  out.weighed = program.objective();
  return out;
}

double weigh(const std::vector<ProgramColumn>& columns, const std::vector<ProgramRow>& rows,
             const std::vector<double>& doses, const std::vector<double>& values) {
  double out = 0;
  for (size_t j = 0; j < columns.size(); ++j)
    out +=
        columns[j].cost * doses[j] + columns[j].step_cost * std::ceil(doses[j] / columns[j].step_most - 1e-6);
  for (size_t i = 0; i < rows.size(); ++i)
    out += rows[i].weight / rows[i].width * miss(rows[i].range, values[i]) +
           rows[i].soft_weight / rows[i].width * miss(rows[i].wanted, values[i]);
  return out;
}

}  // namespace brimline
