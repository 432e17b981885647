// SPDX-License-Identifier: GPL-3.0-or-later
// The conserved totals of a water: what warming, cooling and any equilibrium leave as it is. A dose
// adds a constant vector per mole, dilution mixes two vectors; pH and all species follow from them.
#pragma once

#include <array>

namespace brimline {

// Mole per kilogram of water (alkalinity: equivalents). Nitrate and other strong anions count as
// chloride, potassium as sodium. Alkalinity is always
// sodium + 2 calcium + 2 magnesium - chloride - bromide - 2 sulfate.
struct Totals {
  double alkalinity = 0;  // proton acceptors above CO2, H2O, H3Cy, B(OH)3, HOCl, HOBr, SO4-2
  double carbon = 0;      // inorganic
  double calcium = 0;
  double magnesium = 0;
  double sodium = 0;
  double chloride = 0;
  double sulfate = 0;
  double cyanurate = 0;  // cyanuric acid ring, chlorinated or not
  double borate = 0;     // boron
  double chlorine = 0;   // Cl(+I): free chlorine, chlorinated cyanurates included
  double bromine = 0;    // Br(+I): hypobromous acid and hypobromite
  double bromide = 0;    // may be negative where the bromide a dose consumed was never measured

  friend bool operator==(const Totals&, const Totals&) = default;
};

// Every member, for what treats all totals alike.
inline constexpr std::array<double Totals::*, 12> kTotalMembers = {
    &Totals::alkalinity, &Totals::carbon,   &Totals::calcium, &Totals::magnesium,
    &Totals::sodium,     &Totals::chloride, &Totals::sulfate, &Totals::cyanurate,
    &Totals::borate,     &Totals::chlorine, &Totals::bromine, &Totals::bromide};

constexpr Totals& operator+=(Totals& a, const Totals& b) {
  for (const auto member : kTotalMembers) a.*member += b.*member;
  return a;
}
constexpr Totals& operator*=(Totals& a, double k) {
  for (const auto member : kTotalMembers) a.*member *= k;
  return a;
}
constexpr Totals operator+(Totals a, const Totals& b) {
  return a += b;
}
constexpr Totals operator*(Totals a, double k) {
  return a *= k;
}
constexpr Totals operator*(double k, Totals a) {
  return a *= k;
}
constexpr Totals operator-(Totals a, const Totals& b) {
  return a += b * -1.0;
}

// `share` of `a` (0 to 1, by mass of water), the rest `b`.
constexpr Totals mix(const Totals& a, const Totals& b, double share) {
  return a * share + b * (1 - share);
}

// What the charges of the strong ions leave over for alkalinity, eq/kgw.
constexpr double charge_left(const Totals& t) {
  return t.sodium + 2 * t.calcium + 2 * t.magnesium - t.chloride - t.bromide - 2 * t.sulfate;
}

// Grams per mole; mg/L in this project is mg per kg of water.
namespace weight {
inline constexpr double kCaCO3 = 100.0869;
inline constexpr double kAlkalinity = kCaCO3 / 2;  // as CaCO3, per equivalent
inline constexpr double kChlorine = 70.906;        // Cl2, per Cl(+I)
inline constexpr double kBromine = 159.808;        // Br2, per Br(+I)
inline constexpr double kBoron = 10.81;
inline constexpr double kCyanuricAcid = 129.0745;
inline constexpr double kSalt = 58.443;  // NaCl
inline constexpr double kSulfate = 96.06;
inline constexpr double kBromide = 79.904;
}  // namespace weight

}  // namespace brimline
