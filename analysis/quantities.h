// SPDX-License-Identifier: GPL-3.0-or-later
// Quantities are types: a number enters and leaves by a function that names its unit.
//
//   const Volume v = Volume::us_gallons(15000);
//   const Mass m = Mass::grams(16.79) * v.cubic_metres();
//
// Exact factors: US gallon 3.785411784 L, imperial gallon 4.54609 L, avoirdupois pound
// 453.59237 g, US fluid ounce 29.5735295625 mL, cubic foot 28.316846592 L (NIST Special Publication 811,
// appendix B; from memory).
#pragma once

#include <chrono>
#include <compare>

namespace brimline {

// Arithmetic shared by every quantity; `base()` is the number in the type's base unit.
template <class Self>
class Quantity {
 public:
  constexpr double base() const { return base_; }
  friend constexpr Self operator+(Self a, Self b) { return Self::of(a.base() + b.base()); }
  friend constexpr Self operator-(Self a, Self b) { return Self::of(a.base() - b.base()); }
  friend constexpr Self operator*(Self a, double k) { return Self::of(a.base() * k); }
  friend constexpr Self operator*(double k, Self a) { return Self::of(a.base() * k); }
  friend constexpr Self operator/(Self a, double k) { return Self::of(a.base() / k); }
  friend constexpr double operator/(Self a, Self b) { return a.base() / b.base(); }
  friend constexpr auto operator<=>(Self a, Self b) { return a.base() <=> b.base(); }
  friend constexpr bool operator==(Self a, Self b) { return a.base() == b.base(); }
  static constexpr Self of(double base) {
    Self q;
    q.base_ = base;
    return q;
  }

 private:
  double base_ = 0;
};

// Temperature of a water; base unit degree Celsius (differences are not a type of their own).
class Temperature : public Quantity<Temperature> {
 public:
  static constexpr Temperature celsius(double t) { return of(t); }
  static constexpr Temperature fahrenheit(double f) { return of((f - 32) / 1.8); }
  constexpr double celsius() const { return base(); }
  constexpr double kelvin() const { return base() + 273.15; }
  constexpr double fahrenheit() const { return base() * 1.8 + 32; }
};

// Volume of a vessel or of a liquid product; base unit cubic metre.
class Volume : public Quantity<Volume> {
 public:
  static constexpr Volume cubic_metres(double v) { return of(v); }
  static constexpr Volume litres(double v) { return of(v * 1e-3); }
  static constexpr Volume millilitres(double v) { return of(v * 1e-6); }
  static constexpr Volume us_gallons(double v) { return of(v * 3.785411784e-3); }
  static constexpr Volume cubic_feet(double v) { return of(v * 28.316846592e-3); }
  static constexpr Volume imperial_gallons(double v) { return of(v * 4.54609e-3); }
  static constexpr Volume us_fluid_ounces(double v) { return of(v * 29.5735295625e-6); }
  constexpr double cubic_metres() const { return base(); }
  constexpr double litres() const { return base() * 1e3; }
  constexpr double millilitres() const { return base() * 1e6; }
  constexpr double us_gallons() const { return base() / 3.785411784e-3; }
  constexpr double us_fluid_ounces() const { return base() / 29.5735295625e-6; }
};

// Mass of a product; base unit gram.
class Mass : public Quantity<Mass> {
 public:
  static constexpr Mass grams(double v) { return of(v); }
  static constexpr Mass kilograms(double v) { return of(v * 1e3); }
  static constexpr Mass pounds(double v) { return of(v * 453.59237); }
  static constexpr Mass ounces(double v) { return of(v * 453.59237 / 16); }
  constexpr double grams() const { return base(); }
  constexpr double kilograms() const { return base() * 1e-3; }
  constexpr double pounds() const { return base() / 453.59237; }
  constexpr double ounces() const { return base() * 16 / 453.59237; }
};

// Amount of substance; base unit mole.
class Moles : public Quantity<Moles> {
 public:
  static constexpr Moles mol(double v) { return of(v); }
  static constexpr Moles mmol(double v) { return of(v * 1e-3); }
  constexpr double mol() const { return base(); }
  constexpr double mmol() const { return base() * 1e3; }
};

using Hours = std::chrono::duration<double, std::ratio<3600>>;

}  // namespace brimline
