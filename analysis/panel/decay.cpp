// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/decay.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

#include <Eigen/Cholesky>

namespace brimline {

namespace {

using Vector = Eigen::VectorXd;
using Residuals = std::function<Vector(const Vector&)>;  // weighted, of unbounded parameters

struct Minimum {
  Vector at;
  double squares = HUGE_VAL;
};

Eigen::MatrixXd slopes(const Residuals& f, const Vector& x, const Vector& here) {
  Eigen::MatrixXd j(here.size(), x.size());
  for (Eigen::Index k = 0; k < x.size(); ++k) {
    Vector near = x;
    near(k) += 1e-6;
    j.col(k) = (f(near) - here) / 1e-6;
  }
  return j;
}

// Levenberg 1944, Marquardt 1963: damped least squares from one start.
Minimum descend(const Residuals& f, Vector x) {
  Vector here = f(x);
  double squares = here.squaredNorm(), damping = 1e-3;
  for (int step = 0; step < 100 && damping < 1e12; ++step) {
    const Eigen::MatrixXd j = slopes(f, x, here);
    Eigen::MatrixXd normal = j.transpose() * j;
    normal.diagonal() *= 1 + damping;
    normal.diagonal().array() += 1e-12;
    const Vector next = x - normal.ldlt().solve(j.transpose() * here);
    const Vector there = f(next);
    if (!(there.squaredNorm() < squares)) {
      damping *= 8;
      continue;
    }
    const bool done = squares - there.squaredNorm() < 1e-12 * (squares + 1e-12);
    x = next;
    here = there;
    squares = there.squaredNorm();
    damping *= 0.2;
    if (done) break;
  }
  return {x, squares};
}

Minimum best_of(const Residuals& f, const std::vector<Vector>& starts) {
  Minimum best;
  for (const Vector& start : starts)
    if (Minimum found = descend(f, start); found.squares < best.squares) best = std::move(found);
  return best;
}

double share_of(double unbounded) {
  return 1 / (1 + std::exp(-unbounded));
}
// Rates within what bottles read over hours can show, 1e-7 to 1e3 per hour.
double rate_of(double logarithm) {
  return std::exp(std::clamp(logarithm, -16.0, 7.0));
}

struct Form {
  DecayModel model;
  int parameters;
  Decay (*decay)(const Vector& x, double start);
};

constexpr Form kForms[] = {
    {DecayModel::first_order, 1,
     [](const Vector& x, double start) {
       return Decay{DecayModel::first_order, start, rate_of(x(0)), 1, 0, 0, 0};
     }},
    {DecayModel::second_order, 1,
     [](const Vector& x, double start) {
       return Decay{DecayModel::second_order, start, rate_of(x(0)), 2, 0, 0, 0};
     }},
    {DecayModel::nth_order, 2,
     [](const Vector& x, double start) {
       return Decay{DecayModel::nth_order, start, rate_of(x(0)), 1 + 0.01 + 5 * share_of(x(1)), 0, 0, 0};
     }},
    {DecayModel::limited_first_order, 2,
     [](const Vector& x, double start) {
       return Decay{DecayModel::limited_first_order, start, rate_of(x(0)), 1, start * share_of(x(1)), 0, 0};
     }},
    {DecayModel::parallel_first_order, 3, [](const Vector& x, double start) {
       const double slow = rate_of(x(0));
       return Decay{
           DecayModel::parallel_first_order, start, slow * (1 + rate_of(x(2))), 1, 0, share_of(x(1)), slow};
     }}};

std::vector<Vector> starts_for(int parameters) {
  std::vector<Vector> out;
  for (const double rate : {-5.0, -3.0, -1.0, 1.0})
    for (const double share : {-1.5, 1.0})
      for (const double ratio : {1.5, 4.0}) {
        Vector x(3);
        x << rate, share, ratio;
        if ((parameters < 3 && ratio > 2) || (parameters < 2 && share > 0)) continue;
        out.emplace_back(x.head(parameters));
      }
  return out;
}

double aicc(double chi_square, int parameters, size_t points) {
  const double p = parameters, n = static_cast<double>(points);
  return chi_square + 2 * p + 2 * p * (p + 1) / (n - p - 1);
}

DecayFit fit_one(const Form& form, double start, std::span<const DecayPoint> points) {
  const Residuals off = [&](const Vector& x) {
    const Decay decay = form.decay(x, start);
    Vector out(static_cast<Eigen::Index>(points.size()));
    for (size_t i = 0; i < points.size(); ++i)
      out(static_cast<Eigen::Index>(i)) =
          (decay.at(points[i].hours) - points[i].residual.value) / points[i].residual.sd;
    return out;
  };
  const Minimum best = best_of(off, starts_for(form.parameters));
  return {form.decay(best.at, start), form.parameters, best.squares,
          aicc(best.squares, form.parameters, points.size())};
}

// D (1 - x e^(-kt)) with x = 1 where nothing is met at once.
struct Curve {
  double end = 0, rate = 0, aicc = HUGE_VAL;
};
Curve fit_curve(std::span<const DemandPoint> points, bool at_once) {
  double scale = 1e-6;
  for (const DemandPoint& p : points) scale = std::max(scale, std::abs(p.used.value));
  const int parameters = at_once ? 3 : 2;
  const Residuals off = [&](const Vector& x) {
    const double slow = at_once ? share_of(x(2)) : 1;
    Vector out(static_cast<Eigen::Index>(points.size()));
    for (size_t i = 0; i < points.size(); ++i)
      out(static_cast<Eigen::Index>(i)) =
          (scale * std::exp(x(1)) * (1 - slow * std::exp(-rate_of(x(0)) * points[i].hours)) -
           points[i].used.value) /
          points[i].used.sd;
    return out;
  };
  std::vector<Vector> starts;
  for (const double rate : {-4.0, -2.0, 0.0}) {
    Vector x(3);
    x << rate, 0, 0.5;
    starts.emplace_back(x.head(parameters));
  }
  const Minimum best = best_of(off, starts);
  const size_t counted = std::max<size_t>(points.size(), static_cast<size_t>(parameters) + 2);
  return {scale * std::exp(best.at(1)), rate_of(best.at(0)), aicc(best.squares, parameters, counted)};
}

template <class Point>
size_t times_in(std::span<const Point> points) {
  std::set<double> times;
  for (const Point& p : points) times.insert(p.hours);
  return times.size();
}

}  // namespace

double Decay::at(double hours) const {
  switch (model) {
    case DecayModel::first_order:
      return start * std::exp(-rate * hours);
    case DecayModel::second_order:
      return start / (1 + rate * start * hours);
    case DecayModel::nth_order:
      return std::pow(std::pow(start, 1 - order) + (order - 1) * rate * hours, 1 / (1 - order));
    case DecayModel::limited_first_order:
      return rest + (start - rest) * std::exp(-rate * hours);
    case DecayModel::parallel_first_order:
      return start * (share * std::exp(-rate * hours) + (1 - share) * std::exp(-slow_rate * hours));
  }
  return start;
}

std::vector<DecayFit> fit_decays(double start, std::span<const DecayPoint> points) {
  std::vector<DecayFit> fits;
  if (start <= 0) return fits;
  const size_t times = times_in(points);
  for (const Form& form : kForms)
    if (times >= static_cast<size_t>(form.parameters) + 2) fits.push_back(fit_one(form, start, points));
  std::stable_sort(fits.begin(), fits.end(),
                   [](const DecayFit& a, const DecayFit& b) { return a.aicc < b.aicc; });
  return fits;
}

std::optional<double> demand_at_infinity(std::span<const DemandPoint> points) {
  const size_t times = times_in(points);
  if (times < 2) return std::nullopt;
  double last = 0, most = 0;
  for (const DemandPoint& p : points) {
    last = std::max(last, p.hours);
    most = std::max(most, p.used.value);
  }
  if (most <= 0) return std::nullopt;
  Curve best = fit_curve(points, false);
  if (times >= 5)
    if (const Curve two = fit_curve(points, true); two.aicc < best.aicc) best = two;
  if (best.rate * last < 0.5) return std::nullopt;
  return best.end;
}

}  // namespace brimline
