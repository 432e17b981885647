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

std::string us_volume(const Words& words, Volume v) {
  const double ounces = v.us_fluid_ounces();
  if (ounces < 128) return words.say("plan", phrase("plan", "%1 fl oz"), {rounded(words, ounces)});
  const double whole = std::floor(std::round(ounces) / 128);
  const double rest = std::round(ounces) - whole * 128;
  if (rest < 1) return words.say("plan", phrase("plan", "%1 gal"), {words.number(whole, 0)});
  return words.say("plan", phrase("plan", "%1 gal and %2 fl oz"),
                   {words.number(whole, 0), words.number(rest, 0)});
}

std::string us_mass(const Words& words, Mass m) {
  if (m.ounces() < 16)
    return words.say("plan", phrase("plan", "%1 oz by weight"), {rounded(words, m.ounces())});
  const double total = std::round(m.ounces()), pounds = std::floor(total / 16), rest = total - pounds * 16;
  if (pounds >= 20 || rest < 1)
    return words.say("plan", phrase("plan", "%1 lb"), {words.number(std::round(m.pounds()), 0)});
  return words.say("plan", phrase("plan", "%1 lb %2 oz"), {words.number(pounds, 0), words.number(rest, 0)});
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
  const bool liquid = a.unit == "L" || a.unit == "mL";
  const double base = a.unit == "L" || a.unit == "kg" ? a.value : a.value / 1000;
  if (units == Units::us)
    return liquid ? us_volume(words, Volume::litres(base)) : us_mass(words, Mass::kilograms(base));
  if (base < 1) return rounded(words, base * 1000) + (liquid ? " mL" : " g");
  return words.number(std::round(base * 100) / 100, 2) + (liquid ? " L" : " kg");
}

ProductAmount as_told(const ProductAmount& a, Units units) {
  if (units != Units::us) return a;
  const bool liquid = a.unit == "L" || a.unit == "mL";
  const double base = a.unit == "L" || a.unit == "kg" ? a.value : a.value / 1000;
  const double ounces = liquid ? Volume::litres(base).us_fluid_ounces() : Mass::kilograms(base).ounces();
  const double small = liquid ? 128 : 16;  // told in ounces below a gallon, below a pound
  double told = ounces < small ? rounded(ounces) : std::round(ounces);
  if (!liquid && ounces >= 20 * small) told = std::round(Mass::kilograms(base).pounds()) * 16;
  ProductAmount out = a;
  if (ounces > 0) out.value = a.value * told / ounces;
  return out;
}

}  // namespace brimline
