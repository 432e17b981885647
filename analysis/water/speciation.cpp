// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/water/speciation.h"

#include <algorithm>
#include <cmath>

#include "analysis/water/chlorine.h"

namespace brimline {
namespace {

// Unknowns, as columns of the Jacobian in logarithms: activity of H+, free carbonate, free sulfate.
enum Unknown { kHydrogen, kCarbonate, kSulfate };
using Row = double[3];

// Balances at one iterate, and how they move with the unknowns.
struct Balances {
  double alkalinity = 0, carbon = 0, sulfate = 0;
  double charge_squares = 0;  // sum of z^2 m
  Row d_alkalinity = {}, d_carbon = {}, d_sulfate = {}, d_charge_squares = {};
  double carbonate_alkalinity = 0;
  double free_calcium = 0;
  double precipitated = 0;
};

// Newton's step in logarithms of the unknowns.
struct Step {
  double hydrogen, carbonate, sulfate;
  double size() const { return std::max({std::abs(hydrogen), std::abs(carbonate), std::abs(sulfate)}); }
};

// One iterate: everything a step needs.
class Iterate {
 public:
  Iterate(const Problem& problem, const Totals& totals, const Constants& k, const Conditional& c,
          State& state)
      : problem_(problem), totals_(totals), k_(k), c_(c), s_(state) {
    add_acids();
    add_carbonate();
    add_metal(totals_.magnesium, c_.magnesium, 2);
    add_metal(totals_.sodium, c_.sodium, 1);
    if (problem_.given == Given::calcite) {
      add_calcium_at_saturation();
    } else {
      b_.free_calcium = add_metal(totals_.calcium, c_.calcium, 2);
    }
  }

  const Balances& balances() const { return b_; }
  const ChlorineShare& chlorine() const { return chlorine_; }
  double borate_alkalinity() const { return borate_; }
  // Both once `step` is taken, to first order.
  double ionic_strength(const Step& step) const {
    const double now = b_.charge_squares + std::abs(totals_.chloride + totals_.bromide);
    return 0.5 * std::clamp(now + moved(b_.d_charge_squares, step), 0.5 * now, 2 * now);
  }
  double carbon(const Step& step) const { return b_.carbon + moved(b_.d_carbon, step); }

 private:
  static double moved(const Row& by, const Step& step) {
    return by[kHydrogen] * step.hydrogen + by[kCarbonate] * step.carbonate + by[kSulfate] * step.sulfate;
  }

  void add_acids() {
    const double a = s_.hydrogen;
    chlorine_ = share_chlorine(c_, a, totals_.cyanurate, totals_.chlorine, s_.hypochlorous);
    s_.hypochlorous = chlorine_.hypochlorous;
    const double oh = c_.oh / a, h = a * c_.h;
    const double kb = c_.borate / a, borate_share = kb / (1 + kb);
    const double kx = c_.hypobromite / a, bromite_share = kx / (1 + kx);
    const double bromite = totals_.bromine * bromite_share;
    borate_ = totals_.borate * borate_share;
    const double hso4 = s_.sulfate * a * c_.hso4;
    b_.alkalinity += oh - h + borate_ + bromite - hso4 + chlorine_.hypochlorite_alkalinity +
                     chlorine_.cyanurate_alkalinity;
    b_.d_alkalinity[kHydrogen] +=
        -oh - h - borate_ * (1 - borate_share) - bromite * (1 - bromite_share) - hso4 + chlorine_.slope;
    b_.d_alkalinity[kSulfate] -= hso4;
    b_.sulfate += s_.sulfate + hso4;
    b_.d_sulfate[kSulfate] += s_.sulfate + hso4;
    b_.d_sulfate[kHydrogen] += hso4;
    b_.charge_squares += oh + h + borate_ + bromite + hso4 + 4 * s_.sulfate + chlorine_.charge_squares;
    b_.d_charge_squares[kHydrogen] += h - oh - borate_ + hso4 + chlorine_.slope;  // nearly
    b_.d_charge_squares[kSulfate] += hso4 + 4 * s_.sulfate;
  }

  void add_carbonate() {
    const double x = s_.carbonate, hco3 = x * s_.hydrogen * c_.hco3;
    const double co2 = x * s_.hydrogen * s_.hydrogen * c_.co2;
    add_carbonate_alkalinity(2 * x + hco3);
    b_.d_alkalinity[kHydrogen] += hco3;
    b_.d_alkalinity[kCarbonate] += 2 * x + hco3;
    b_.carbon += x + hco3 + co2;
    b_.d_carbon[kHydrogen] += hco3 + 2 * co2;
    b_.d_carbon[kCarbonate] += x + hco3 + co2;
    b_.charge_squares += 4 * x + hco3;
    b_.d_charge_squares[kHydrogen] += hco3;
    b_.d_charge_squares[kCarbonate] += 4 * x + hco3;
  }

  void add_carbonate_alkalinity(double amount) {
    b_.alkalinity += amount;
    b_.carbonate_alkalinity += amount;
  }

  // Shares of a metal of charge z per mole of it free, and what of them each unknown moves.
  struct Pairs {
    double co3, hco3, so4, oh, sum;
    Row d_sum;
  };
  Pairs pairs_of(const MetalPairs& k) const {
    const double co3 = s_.carbonate * k.co3, hco3 = s_.carbonate * s_.hydrogen * k.hco3;
    const double so4 = s_.sulfate * k.so4, oh = k.oh / s_.hydrogen;
    return {co3, hco3, so4, oh, 1 + co3 + hco3 + so4 + oh, {hco3 - oh, co3 + hco3, so4}};
  }

  // `free` and d ln(free) by each unknown.
  void add_pairs(double free, const Row& d_free, const Pairs& p, int z) {
    const double alkalinity = 2 * p.co3 + p.hco3 + p.oh, carbon = p.co3 + p.hco3;
    add_carbonate_alkalinity(free * (2 * p.co3 + p.hco3));
    b_.alkalinity += free * p.oh;
    b_.carbon += free * carbon;
    b_.sulfate += free * p.so4;
    const Row d_alkalinity = {p.hco3 - p.oh, 2 * p.co3 + p.hco3, 0};
    const Row d_carbon = {p.hco3, carbon, 0};
    const Row d_sulfate = {0, 0, p.so4};
    const int two = (z - 2) * (z - 2),
              one = (z - 1) * (z - 1);  // charge squared with CO3, SO4; with HCO3, OH
    const double charge = z * z + two * (p.co3 + p.so4) + one * (p.hco3 + p.oh);
    const Row d_charge = {one * (p.hco3 - p.oh), two * p.co3 + one * p.hco3, two * p.so4};
    b_.charge_squares += free * charge;
    for (int i = 0; i < 3; ++i) {
      b_.d_alkalinity[i] += free * (d_alkalinity[i] + alkalinity * d_free[i]);
      b_.d_carbon[i] += free * (d_carbon[i] + carbon * d_free[i]);
      b_.d_sulfate[i] += free * (d_sulfate[i] + p.so4 * d_free[i]);
      b_.d_charge_squares[i] += free * (d_charge[i] + charge * d_free[i]);
    }
  }

  double add_metal(double total, const MetalPairs& k, int z) {
    if (total <= 0) return 0;
    const Pairs p = pairs_of(k);
    const double inverse = 1 / p.sum, free = total * inverse;
    add_pairs(free, {-p.d_sum[0] * inverse, -p.d_sum[1] * inverse, -p.d_sum[2] * inverse}, p, z);
    return free;
  }

  // Free calcium is what calcite leaves; the rest of the total has precipitated, taking carbon with it.
  void add_calcium_at_saturation() {
    const Pairs p = pairs_of(c_.calcium);
    const double product = std::exp(k_.log_ksp * 2.302585092994045684) / (c_.gamma_ca * c_.gamma_co3);
    const double free = product / s_.carbonate;
    add_pairs(free, {0, -1, 0}, p, 2);
    b_.free_calcium = free;
    b_.precipitated = totals_.calcium - free * p.sum;
    const Row d_free = {0, -1, 0};
    for (int i = 0; i < 3; ++i) {
      const double d = -free * (p.d_sum[i] + p.sum * d_free[i]);
      b_.d_alkalinity[i] += 2 * d;
      b_.d_carbon[i] += d;
    }
    b_.alkalinity += 2 * b_.precipitated;
    b_.carbon += b_.precipitated;
  }

  const Problem& problem_;
  const Totals& totals_;
  const Constants& k_;
  const Conditional& c_;
  State& s_;
  Balances b_;
  ChlorineShare chlorine_;
  double borate_ = 0;
};

// Solves the 3 x 3 system; sulfate, whose own diagonal always dominates, is eliminated first.
void solve_three(Row (&m)[3], double (&r)[3]) {
  for (int i = 0; i < 2; ++i) {
    const double k = m[i][kSulfate] / m[2][kSulfate];
    m[i][0] -= k * m[2][0];
    m[i][1] -= k * m[2][1];
    r[i] -= k * r[2];
  }
  const double determinant = m[0][0] * m[1][1] - m[0][1] * m[1][0];
  const double a = (r[0] * m[1][1] - m[0][1] * r[1]) / determinant;
  const double x = (m[0][0] * r[1] - r[0] * m[1][0]) / determinant;
  r[2] = (r[2] - m[2][0] * a - m[2][1] * x) / m[2][2];
  r[0] = a;
  r[1] = x;
}

void set_row(Row& to, const Row& from) {
  std::copy(from, from + 3, to);
}

Step step_of(const Problem& problem, const Totals& totals, const Conditional& c, const State& s,
             const Balances& b) {
  Row m[3] = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
  double r[3] = {0, 0, 0};
  const double alkalinity = totals.alkalinity - b.alkalinity;
  if (totals.sulfate > 0) {
    set_row(m[2], b.d_sulfate);
    r[2] = totals.sulfate - b.sulfate;
  }
  if (problem.given == Given::ph) {
    set_row(m[1], b.d_alkalinity);
    r[1] = alkalinity;
  } else {
    set_row(m[0], b.d_alkalinity);
    r[0] = alkalinity;
    if (problem.given == Given::air) {
      m[1][kHydrogen] = 2;
      r[1] =
          std::log(problem.co2_activity / (s.carbonate * s.hydrogen * s.hydrogen * c.co2 * c.gamma_neutral));
    } else if (totals.carbon > 0 || problem.given == Given::calcite) {
      set_row(m[1], b.d_carbon);
      r[1] = totals.carbon - b.carbon;
    }
  }
  solve_three(m, r);
  return {r[0], r[1], r[2]};
}

// A balance is nearly linear in an amount, so the amount moves by its share, held above zero.
double moved(double amount, double log_step) {
  return amount * std::clamp(1 + log_step, 0.05, 20.0);
}

void take(const Step& step, State& s) {
  s.hydrogen *= std::exp(std::clamp(step.hydrogen, -2.0, 2.0));
  s.carbonate = moved(s.carbonate, step.carbonate);
  s.sulfate = moved(s.sulfate, step.sulfate);
}

// Far from the answer, pH and carbonate stepping each by itself can chase one another: carbonate then follows
// from carbon at the new pH, pairs as they stand.
void take_far(const Step& step, const Totals& t, const Conditional& c, const Balances& b, State& s) {
  const double before = s.hydrogen, per_carbonate = b.carbon / s.carbonate;
  take({step.hydrogen, 0, step.sulfate}, s);
  const double a = s.hydrogen;
  s.carbonate = t.carbon / (per_carbonate + (a - before) * (c.hco3 + (a + before) * c.co2));
}

State first_state(const Problem& problem, const Totals& t, const Constants& k) {
  State s;
  s.hydrogen = problem.hydrogen;
  s.ionic_strength = std::clamp(0.45 * (std::abs(t.sodium) + std::abs(t.chloride) +
                                        4 * (t.calcium + t.magnesium + t.sulfate) + std::abs(t.alkalinity)),
                                1e-6, 1.0);
  const double h1 = s.hydrogen * k.hco3 * 0.6, h2 = s.hydrogen * s.hydrogen * k.co2 * 0.5;
  switch (problem.given) {
    case Given::ph:
      s.carbonate = std::max(t.alkalinity, 1e-7) / (2 + h1);
      break;
    case Given::air:
      s.carbonate = problem.co2_activity / h2;
      break;
    default:
      s.carbonate = std::max(t.carbon, 1e-30) / (1 + h1 + h2);
  }
  s.sulfate = t.sulfate > 0 ? t.sulfate / (1 + 60 * (t.calcium + t.magnesium)) : 0;
  return s;
}

// Salt to add so that dissolved solids, or ionic strength, come out as told; mol/kgw.
double salt_wanted(const Problem& problem, const Totals& t, double carbon, double ionic_strength) {
  constexpr double kBicarbonate = 61.0168e-3, kSalt = weight::kSalt * 1e-3;  // kg/mol
  switch (problem.background) {
    case Background::dissolved_solids:
      return (problem.background_target - carbon * kBicarbonate) / kSalt - t.chloride;
    case Background::ionic_strength:
      return problem.background_target - ionic_strength;
    case Background::fixed:
      break;
  }
  return 0;
}

// Successive ionic strengths, sped up by the secant of the last two.
class IonicStrength {
 public:
  double next(double used, double found) {
    double share = 0;
    const double moved_by = used - last_used_;
    if (seen_ && std::abs(moved_by) > 1e-14) share = std::clamp((found - last_found_) / moved_by, -0.8, 0.8);
    seen_ = true;
    last_used_ = used;
    last_found_ = found;
    return std::max(used + (found - used) / (1 - share), 0.0);
  }

 private:
  bool seen_ = false;
  double last_used_ = 0, last_found_ = 0;
};

// Balances once more at the solved state, so that what follows from them has the last step in it.
void finish(Solution& out, const Problem& problem, const Constants& k) {
  const Iterate last(problem, out.totals, k, out.constants, out.state);
  const Balances& b = last.balances();
  out.found = true;
  out.free_calcium = b.free_calcium;
  out.carbonate_alkalinity = b.carbonate_alkalinity;
  out.cyanurate_alkalinity = last.chlorine().cyanurate_alkalinity;
  out.borate_alkalinity = last.borate_alkalinity();
  if (problem.given == Given::ph || problem.given == Given::air) out.totals.carbon = b.carbon;
  if (problem.given != Given::calcite) return;
  out.precipitated = b.precipitated;
  out.totals.alkalinity -= 2 * b.precipitated;
  out.totals.calcium -= b.precipitated;
  out.totals.carbon -= b.precipitated;
}

}  // namespace

Solution solve_equilibrium(const Problem& problem, const Constants& k, const State* start) {
  constexpr int kMost = 60;
  constexpr double kFar = 0.5;
  constexpr double kTolerance = 1e-11, kSquared = 3e-6;  // a step this small leaves an error of its square
  Solution out;
  out.totals = problem.totals;
  State& s = out.state;
  s = start ? *start : first_state(problem, out.totals, k);
  if (problem.given == Given::ph) s.hydrogen = problem.hydrogen;
  if (problem.totals.sulfate <= 0) s.sulfate = 0;
  IonicStrength ionic;
  for (int i = 0; i < kMost; ++i) {
    out.constants = conditional_constants(k, s.ionic_strength, out.totals.cyanurate > 0);
    const Iterate now(problem, out.totals, k, out.constants, s);
    const Step step = step_of(problem, out.totals, out.constants, s, now.balances());
    const double salt = salt_wanted(problem, out.totals, now.carbon(step), now.ionic_strength(step));
    const double found = now.ionic_strength(step) + salt, scale = std::max(found, 1e-9);
    // What the acids take already exceeds the alkalinity: carbonate would have to be negative.
    out.alkalinity_short = problem.given == Given::ph && (step.carbonate < -1e6 || s.carbonate < 1e-22);
    out.too_salty = found >= 10;
    out.cyanurate_alkalinity = now.chlorine().cyanurate_alkalinity;
    if (out.alkalinity_short || !(step.size() < 1e9) || !(found < 10)) return out;
    if (problem.given == Given::totals && out.totals.carbon > 0 && std::abs(step.hydrogen) > kFar) {
      take_far(step, out.totals, out.constants, now.balances(), s);
    } else {
      take(step, s);
    }
    out.totals.sodium += salt;
    out.totals.chloride += salt;
    const double drift = std::abs(found - s.ionic_strength) + std::abs(salt);
    if (step.size() < kSquared && drift < kTolerance * scale) {
      finish(out, problem, k);
      return out;
    }
    s.ionic_strength = ionic.next(s.ionic_strength, found);
  }
  return out;
}

}  // namespace brimline
