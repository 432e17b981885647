// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/wording/amount_words.h"

#include <algorithm>
#include <cmath>

namespace brimline {

namespace {

// What a household can measure.
double rounded(double v) {
  if (v < 1) return std::max(0.05, std::round(v * 20) / 20);
  if (v < 10) return std::round(v * 10) / 10;
  return v < 100 ? std::round(v) : std::round(v / 5) * 5;
}

std::string rounded(const Words& words, double v) {
  return words.number(rounded(v), v < 1 ? 2 : v < 10 ? 1 : 0);
}

constexpr double kGallon = 128, kPound = 16;  // in ounces, of volume and of weight

// Ounces as they are told: below a gallon or a pound as a household measures them, above it whole ones, and
// from twenty pounds whole pounds.
double told_ounces(double ounces, bool liquid) {
  if (ounces < (liquid ? kGallon : kPound)) return rounded(ounces);
  const double whole = std::round(ounces);
  return liquid || whole < 20 * kPound ? whole : std::round(ounces / kPound) * kPound;
}

double ounces_of(const ProductAmount& a, bool liquid) {
  const double base = a.unit == "L" || a.unit == "kg" ? a.value : a.value / 1000;
  return liquid ? Volume::litres(base).us_fluid_ounces() : Mass::kilograms(base).ounces();
}

bool is_liquid(const ProductAmount& a) {
  return a.unit == "L" || a.unit == "mL";
}

std::string us_amount(const Words& words, double ounces, bool liquid) {
  const double told = told_ounces(ounces, liquid), whole = liquid ? kGallon : kPound;
  if (ounces < whole)
    return words.say("plan", liquid ? phrase("plan", "%1 fl oz") : phrase("plan", "%1 oz by weight"),
                     {rounded(words, ounces)});
  const double many = std::floor(told / whole), rest = told - many * whole;
  if (rest < 1)
    return words.say("plan", liquid ? phrase("plan", "%1 gal") : phrase("plan", "%1 lb"),
                     {words.number(many, 0)});
  return words.say("plan", liquid ? phrase("plan", "%1 gal and %2 fl oz") : phrase("plan", "%1 lb %2 oz"),
                   {words.number(many, 0), words.number(rest, 0)});
}

}  // namespace

std::string water_words(const Words& words, Volume volume, double share, Units units) {
  const auto two_digits = [](double v) {
    const double step = std::pow(10, std::max(0.0, std::floor(std::log10(v)) - 1));
    return std::round(v / step) * step;
  };
  if (units == Units::us)
    return words.say("plan", phrase("plan", "about %1 gallons"),
                     {words.number(two_digits(volume.us_gallons() * share), 0)});
  const double m3 = volume.cubic_metres() * share;
  if (m3 < 1)
    return words.say("plan", phrase("plan", "about %1 litres"), {words.number(two_digits(m3 * 1000), 0)});
  return words.say("plan", phrase("plan", "about %1 m³"), {words.number(m3, 1)});
}

std::string temperature_words(const Words& words, double celsius, Units units) {
  if (units == Units::us) return words.number(std::round(celsius * 1.8 + 32), 0) + " °F";
  return words.number(celsius, 0) + " °C";
}

std::string household_amount(const Words& words, const ProductAmount& a, Units units) {
  const bool liquid = is_liquid(a);
  if (units == Units::us) return us_amount(words, ounces_of(a, liquid), liquid);
  const double base = a.unit == "L" || a.unit == "kg" ? a.value : a.value / 1000;
  if (base < 1) return rounded(words, base * 1000) + (liquid ? " mL" : " g");
  return words.number(std::round(base * 100) / 100, 2) + (liquid ? " L" : " kg");
}

ProductAmount as_told(const ProductAmount& a, Units units) {
  const double ounces = ounces_of(a, is_liquid(a));
  if (units != Units::us || ounces <= 0) return a;
  return {a.value * told_ounces(ounces, is_liquid(a)) / ounces, a.unit};
}

}  // namespace brimline
