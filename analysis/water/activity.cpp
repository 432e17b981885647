// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/water/activity.h"

#include <array>
#include <cmath>

namespace brimline {
namespace {

constexpr double kLn10 = 2.302585092994045684;

double exp10_of(double log10_value) {
  return std::exp(log10_value * kLn10);
}

// Activity coefficients. Ions that share size and charge share one; `four` is the ion size, in angstrom.
struct Gammas {
  double h, oh, ca, mg, na, so4, hco3, co3, ca_pair, mg_oh, four, hso4, borate, davies, neutral;
};

Gammas gammas(const Constants& k, double ionic) {
  const double root = std::sqrt(ionic);
  const double a = -k.debye_a * root * kLn10, b = k.debye_b * root;
  const double linear = ionic * kLn10;
  const auto of = [&](double size) { return a / (1 + b * size); };  // ln gamma of charge one
  const double five = of(5);
  // Ion sizes and b: Truesdell & Jones 1974 and Ball & Nordstrom 1991 (H 9, OH 3.5, Ca 5 .165, Mg 5.5 .2,
  // Na 4 .075, SO4 5 -.04, CO3 and HCO3 5.4, CaHCO3 and CaOH 6, MgOH 6.5, MgHCO3 4, HSO4 4.5, B(OH)4 2.5).
  Gammas g;
  g.h = std::exp(of(9));
  g.oh = std::exp(of(3.5));
  g.ca = std::exp(4 * five + 0.165 * linear);
  g.mg = std::exp(4 * of(5.5) + 0.2 * linear);
  g.four = std::exp(of(4));
  g.na = g.four * std::exp(0.075 * linear);
  g.so4 = std::exp(4 * five - 0.04 * linear);
  g.hco3 = std::exp(of(5.4));
  g.co3 = g.hco3 * g.hco3 * g.hco3 * g.hco3;
  g.ca_pair = std::exp(of(6));
  g.mg_oh = std::exp(of(6.5));
  g.hso4 = std::exp(of(4.5));
  g.borate = std::exp(of(2.5));
  g.davies = std::exp(a / (1 + root) + 0.3 * k.debye_a * linear);
  g.neutral = std::exp(0.1 * linear);
  return g;
}

void set_pairs(Conditional& c, const Constants& k, const Gammas& g) {
  const double caco3 = g.ca * g.co3, mgco3 = g.mg * g.co3, naco3 = g.na * g.co3;
  c.calcium.co3 = k.ca_co3 * caco3 / g.neutral;
  c.calcium.hco3 = k.ca_hco3 * k.hco3 * caco3 / g.ca_pair;
  c.calcium.so4 = k.ca_so4 * g.ca * g.so4 / g.neutral;
  c.calcium.oh = k.ca_oh * g.ca / g.ca_pair;
  c.magnesium.co3 = k.mg_co3 * mgco3 / g.neutral;
  c.magnesium.hco3 = k.mg_hco3 * k.hco3 * mgco3 / g.four;
  c.magnesium.so4 = k.mg_so4 * g.mg * g.so4 / g.neutral;
  c.magnesium.oh = k.mg_oh * g.mg / g.mg_oh;
  c.sodium.co3 = k.na_co3 * naco3 / g.hco3;
  c.sodium.hco3 = k.na_hco3 * k.hco3 * naco3 / g.neutral;
  c.sodium.so4 = k.na_so4 * g.na * g.so4 / g.hco3;
}

// Thermodynamic products of the cyanurate constants, in the order of CyanurateTerms.
CyanurateTerms cyanurate_constants() {
  using namespace cyanurate;
  CyanurateTerms k;
  const auto power = [](double pk) { return exp10_of(-pk); };
  const double chloro[4] = {0, -kPkMonochloro, -kPkMonochloro - kPkDichloro,
                            -kPkMonochloro - kPkDichloro - kPkTrichloro};
  k.none[0] = 1;
  k.none[1] = power(kPkFirst);
  k.none[2] = power(kPkFirst + kPkSecond);
  k.none[3] = power(kPkFirst + kPkSecond + kPkThird);
  k.one[0] = power(chloro[1]);
  k.one[1] = power(chloro[1] + kPkMonochloroAcid);
  k.one[2] = power(chloro[1] + kPkMonochloroAcid + kPkMonochloroSecond);
  k.two[0] = power(chloro[2]);
  k.two[1] = power(chloro[2] + kPkDichloroAcid);
  k.three = power(chloro[3]);
  return k;
}

void set_cyanurate(Conditional& c, const Gammas& g) {
  static const CyanurateTerms k = cyanurate_constants();
  const double n = g.neutral, n2 = n * n;
  const double d1 = 1 / g.davies, d2 = d1 * d1, d4 = d2 * d2;
  CyanurateTerms& out = c.cyanurate;
  out.none[0] = 1;
  out.none[1] = k.none[1] * n * d1;
  out.none[2] = k.none[2] * n * d4;
  out.none[3] = k.none[3] * n * d4 * d4 * d1;
  out.one[0] = k.one[0] * n;
  out.one[1] = k.one[1] * n2 * d1;
  out.one[2] = k.one[2] * n2 * d4;
  out.two[0] = k.two[0] * n2;
  out.two[1] = k.two[1] * n2 * n * d1;
  out.three = k.three * n2 * n;
}

}  // namespace

Conditional conditional_constants(const Constants& k, double ionic, bool with_cyanurate) {
  const Gammas g = gammas(k, ionic);
  Conditional c;
  c.hco3 = k.hco3 * g.co3 / g.hco3;
  c.co2 = k.co2 * g.co3 / g.neutral;
  c.oh = k.water / g.oh;
  c.h = 1 / g.h;
  c.hso4 = k.hso4 * g.so4 / g.hso4;
  c.borate = k.borate * g.neutral / g.borate;
  c.hypochlorite = k.hypochlorite * g.neutral / g.davies;
  c.hypobromite = k.hypobromite * g.neutral / g.davies;
  set_pairs(c, k, g);
  if (with_cyanurate) set_cyanurate(c, g);
  c.gamma_ca = g.ca;
  c.gamma_co3 = g.co3;
  c.gamma_hco3 = g.hco3;
  c.gamma_neutral = g.neutral;
  return c;
}

}  // namespace brimline
