// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/water/constants.h"

#include <array>
#include <bit>
#include <cmath>
#include <cstdint>

namespace brimline {
namespace {

constexpr double kLn10 = 2.302585092994045684;

double exp10_of(double log10_value) {
  return std::exp(log10_value * kLn10);
}

// Powers of the temperature that the fits are made of.
struct Powers {
  double t, inverse, inverse2, log10, from_25;  // kelvin; from_25 = 1/298.15 - 1/T
};

// a + b T + c/T + d log10 T + e/T^2
double fit(const Powers& p, double a, double b, double c, double d, double e) {
  return a + b * p.t + c * p.inverse + d * p.log10 + e * p.inverse2;
}

// van 't Hoff from 25 C; enthalpy in kcal/mol, gas constant 1.98720e-3 kcal/(mol K).
double van_t_hoff(const Powers& p, double log_k_25, double enthalpy) {
  return log_k_25 + enthalpy / (kLn10 * 1.98720e-3) * p.from_25;
}

// Permittivity: Malmberg & Maryott 1956, J. Res. NBS 56:1; density and the constants A and B as in
// Truesdell & Jones 1974, J. Res. USGS 2:233.
void set_debye_hueckel(Constants& k, double c, double kelvin) {
  const double permittivity = 87.740 + c * (-0.4008 + c * (9.398e-4 - c * 1.410e-6));
  const double density = 1 - (c + 288.9414) * (c - 3.9863) * (c - 3.9863) / (508929.2 * (c + 68.12963));
  const double et = permittivity * kelvin;
  const double root = std::sqrt(et), root_density = std::sqrt(density);
  k.debye_a = 1.8248e6 * root_density / (et * root);
  k.debye_b = 50.29 * root_density / root;
}

// Plummer & Busenberg 1982, Geochim. Cosmochim. Acta 46:1011-1040, table 9: carbonate, calcite and the
// calcium carbonate pairs, 0-90 C.
void set_carbonate(Constants& k, const Powers& p) {
  k.hco3 = exp10_of(fit(p, 107.8871, 0.03252849, -5151.79, -38.92561, 563713.9));
  k.co2 = exp10_of(fit(p, 464.1965, 0.09344813, -26986.16, -165.75951, 2248628.9));
  k.henry = exp10_of(fit(p, 108.3865, 0.01985076, -6919.53, -40.45154, 669365));
  k.log_ksp = fit(p, -171.9065, -0.077993, 2839.319, 71.595, 0);
  k.ca_hco3 = exp10_of(fit(p, 1209.12, 0.31294, -34765.05, -478.782, 0));
  k.ca_co3 = exp10_of(fit(p, -1228.732, -0.299444, 35512.75, 485.818, 0));
}

// As compiled by Ball & Nordstrom 1991, USGS Open-File Report 91-183 (public domain).
void set_other_pairs(Constants& k, const Powers& p) {
  k.ca_so4 = exp10_of(van_t_hoff(p, 2.30, 1.65));
  k.ca_oh = 1.6595869074375607e-13;  // 10^-12.78
  k.mg_oh = exp10_of(van_t_hoff(p, -11.44, 15.952));
  k.mg_hco3 = exp10_of(fit(p, -59.215, 0, 2537.455, 20.92298, 0));
  k.mg_co3 = exp10_of(fit(p, 0.991, 0.00667, 0, 0, 0));
  k.mg_so4 = exp10_of(van_t_hoff(p, 2.37, 4.55));
  k.na_hco3 = 0.56234132519034908;  // 10^-0.25
  k.na_co3 = exp10_of(van_t_hoff(p, 1.27, 8.91));
  k.na_so4 = exp10_of(van_t_hoff(p, 0.70, 1.12));
  k.hso4 = exp10_of(fit(p, -56.889, 0.006473, 2307.9, 19.8858, 0));
}

// Water and borate as in the same compilation. HOCl: Morris 1966, J. Phys. Chem. 70:3798-3805.
// HOBr: pK 8.69, which gives the 94 % and 83 % HOBr at pH 7.5 and 8.0 of the annex to the CDC Model
// Aquatic Health Code, 5.7.3.1.2.2; no temperature dependence.
void set_acids(Constants& k, const Powers& p) {
  k.water = exp10_of(fit(p, -283.971, -0.05069842, 13323, 102.24447, -1119669));
  k.borate = exp10_of(van_t_hoff(p, -9.24, 3.224));
  k.hypochlorite = exp10_of(fit(p, 10.0686, -0.0253, -3000, 0, 0));
  k.hypobromite = 2.0417379446695274e-9;  // 10^-8.69
}

Constants constants_of(double celsius) {
  const double kelvin = celsius + 273.15;
  const Powers p{kelvin, 1 / kelvin, 1 / (kelvin * kelvin), std::log10(kelvin), 1 / 298.15 - 1 / kelvin};
  Constants k;
  k.celsius = celsius;
  set_debye_hueckel(k, celsius, kelvin);
  set_carbonate(k, p);
  set_other_pairs(k, p);
  set_acids(k, p);
  return k;
}

}  // namespace

const Constants& constants_at(double celsius) {
  // Sixty-four temperatures by a hash of their bits: a thread that meets few of them computes each once.
  thread_local std::array<Constants, 64> kept;
  const auto bits = std::bit_cast<std::uint64_t>(celsius) * 0x9E3779B97F4A7C15u;
  Constants& slot = kept[bits >> 58];
  if (slot.celsius != celsius) slot = constants_of(celsius);
  return slot;
}

}  // namespace brimline
