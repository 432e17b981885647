// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/calibration/standards.h"

namespace brimline {

namespace {

// g/mol, IUPAC standard atomic weights 2021, abridged: K 39.098, Mn 54.938, I 126.904, O 15.999, Cl 35.453.
constexpr double kPermanganate = 39.098 + 54.938 + 4 * 15.999;
constexpr double kIodate = 39.098 + 126.904 + 3 * 15.999;
constexpr double kChlorine = 2 * 35.453;

}  // namespace

double chlorine_of_permanganate(double permanganate_mg_l) {
  return permanganate_mg_l * (5.0 / 2.0) * kChlorine / kPermanganate;
}

double chlorine_of_iodate(double iodate_mg_l) {
  return iodate_mg_l * 3 * kChlorine / kIodate;
}

double diluted(double stock, std::span<const MadeUp> chain) {
  for (const MadeUp& step : chain) stock *= step.part / step.whole;
  return stock;
}

}  // namespace brimline
