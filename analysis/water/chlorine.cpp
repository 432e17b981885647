// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/water/chlorine.h"

#include <algorithm>
#include <cmath>

namespace brimline {
namespace {

// Sums over the species of one ring carrying n chlorines: amounts p, amounts times charge q, times charge
// squared r, all relative to [H3Cy] and before the factor [HOCl]^n.
struct Ring {
  double p[4], q[4], r[4];
};

Ring ring_at(const CyanurateTerms& k, double hydrogen) {
  const double i = 1 / hydrogen, i2 = i * i;
  const double n1 = k.none[1] * i, n2 = k.none[2] * i2, n3 = k.none[3] * i2 * i;
  const double o1 = k.one[1] * i, o2 = k.one[2] * i2;
  const double t1 = k.two[1] * i;
  return {{k.none[0] + n1 + n2 + n3, k.one[0] + o1 + o2, k.two[0] + t1, k.three},
          {n1 + 2 * n2 + 3 * n3, o1 + 2 * o2, t1, 0},
          {n1 + 4 * n2 + 9 * n3, o1 + 4 * o2, t1, 0}};
}

struct Sums {
  double d, s, s2;  // sum, times chlorines, times chlorines squared
};

Sums sums_of(const double (&c)[4], double y) {
  const double c1 = y * c[1], c2 = y * y * c[2], c3 = y * y * y * c[3];
  return {c[0] + c1 + c2 + c3, c1 + 2 * c2 + 3 * c3, c1 + 4 * c2 + 9 * c3};
}

// y (1 + o) + Cy N(y) = Cl, N the mean number of chlorines a ring: the left side rises with y.
double solve_hypochlorous(const Ring& ring, double o, double cyanurate, double chlorine, double guess) {
  double low = 0, high = chlorine / (1 + o);
  if (cyanurate <= 0) return high;
  // Every ring can hold a chlorine: the first is bound far more tightly than those after it.
  const double bound = ring.p[1] / ring.p[0] * std::max(cyanurate - chlorine, 0.05 * cyanurate);
  double y = guess > 0 && guess < high ? guess : chlorine / (1 + o + bound);
  for (int i = 0; i < 60; ++i) {
    const Sums sums = sums_of(ring.p, y);
    const double mean = sums.s / sums.d;
    const double f = y * (1 + o) + cyanurate * mean - chlorine;
    (f > 0 ? high : low) = y;
    const double slope = (1 + o) + cyanurate * (sums.s2 / sums.d - mean * mean) / y;
    double next = y - f / slope;
    if (!(next > low && next < high)) next = low > 0 ? 0.5 * (low + high) : 0.1 * y;
    const double change = std::abs(next - y);
    y = next;
    if (change <= 1e-9 * y) break;  // quadratic: the step after would be below rounding
  }
  return y;
}

}  // namespace

ChlorineShare share_chlorine(const Conditional& constants, double hydrogen, double cyanurate, double chlorine,
                             double guess) {
  ChlorineShare out;
  const double o = constants.hypochlorite / hydrogen;
  if (cyanurate <= 0) {
    const double y = chlorine > 0 ? chlorine / (1 + o) : 0;
    out.hypochlorous = y;
    out.hypochlorite_alkalinity = out.charge_squares = y * o;
    out.slope = -y * o / (1 + o);
    return out;
  }
  const Ring ring = ring_at(constants.cyanurate, hydrogen);
  const double y = chlorine > 0 ? solve_hypochlorous(ring, o, cyanurate, chlorine, guess) : 0;
  const Sums p = sums_of(ring.p, y), q = sums_of(ring.q, y), r = sums_of(ring.r, y);
  const double inverse = 1 / p.d, per_ring = cyanurate * inverse;
  const double mean_charge = q.d * inverse, mean_chlorine = p.s * inverse;
  out.hypochlorous = y;
  out.hypochlorite_alkalinity = y * o;
  out.cyanurate_alkalinity = per_ring * q.d;
  out.charge_squares = y * o + per_ring * r.d;
  // With f(ln a, ln y) the chlorine balance and w the charge: dw/dln y = -df/dln a, so the total slope is
  // dw/dln a + (df/dln a)^2 / (df/dln y).
  const double w_a = -y * o - per_ring * r.d + cyanurate * mean_charge * mean_charge;
  const double f_a = -y * o - per_ring * q.s + cyanurate * mean_charge * mean_chlorine;
  const double f_y = y * (1 + o) + per_ring * p.s2 - cyanurate * mean_chlorine * mean_chlorine;
  out.slope = w_a + (f_y > 0 ? f_a * f_a / f_y : 0);
  return out;
}

}  // namespace brimline
