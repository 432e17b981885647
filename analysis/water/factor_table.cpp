// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <span>

#include "analysis/water/saturation.h"

namespace brimline {
namespace {

struct Row {
  double at, factor;
};

// 10 NYCRR 6-1.30; the same rows in Mont. Admin. R. 37.115, Table 7.
constexpr std::array<Row, 11> kFahrenheit = {{{32, 0.0},
                                              {37, 0.1},
                                              {46, 0.2},
                                              {53, 0.3},
                                              {60, 0.4},
                                              {66, 0.5},
                                              {76, 0.6},
                                              {84, 0.7},
                                              {94, 0.8},
                                              {105, 0.9},
                                              {128, 1.0}}};
constexpr std::array<Row, 11> kHardness = {{{5, 0.3},
                                            {25, 1.0},
                                            {50, 1.3},
                                            {75, 1.5},
                                            {100, 1.6},
                                            {150, 1.8},
                                            {200, 1.9},
                                            {300, 2.1},
                                            {400, 2.2},
                                            {800, 2.5},
                                            {1000, 2.6}}};
constexpr std::array<Row, 11> kAlkalinity = {{{5, 0.7},
                                              {25, 1.4},
                                              {50, 1.7},
                                              {75, 1.9},
                                              {100, 2.0},
                                              {150, 2.2},
                                              {200, 2.3},
                                              {300, 2.5},
                                              {400, 2.6},
                                              {800, 2.9},
                                              {1000, 3.0}}};

std::optional<double> interpolated(std::span<const Row> rows, double at) {
  if (!(at >= rows.front().at && at <= rows.back().at)) return std::nullopt;
  const auto above = std::find_if(rows.begin() + 1, rows.end() - 1, [&](const Row& r) { return at <= r.at; });
  const Row& low = *(above - 1);
  return low.factor + (at - low.at) / (above->at - low.at) * (above->factor - low.factor);
}

}  // namespace

std::optional<Factors> table_factors(Temperature temperature, double calcium_hardness, double alkalinity) {
  const auto t = interpolated(kFahrenheit, temperature.fahrenheit());
  const auto c = interpolated(kHardness, calcium_hardness);
  const auto a = interpolated(kAlkalinity, alkalinity);
  if (!t || !c || !a) return std::nullopt;
  return Factors{*t, *c, *a};
}

std::optional<double> factor_table_index(double ph, Temperature temperature, double calcium_hardness,
                                         double alkalinity, double dissolved_solids) {
  const auto f = table_factors(temperature, calcium_hardness, alkalinity);
  if (!f) return std::nullopt;
  const double constant = dissolved_solids < 1000 ? 12.1 : 12.2;
  return ph + f->temperature + f->calcium + f->alkalinity - constant;
}

std::optional<double> factor_table_index(const Water& water) {
  // A water told, or assumed, to hold 1,000 mg/L comes out of the solver within rounding of it: it stands on
  // the upper side of the step.
  constexpr double kRounding = 1e-3;  // mg/L
  return factor_table_index(water.ph, water.temperature, water.calcium_hardness(),
                            water.carbonate_alkalinity(), water.dissolved_solids() + kRounding);
}

}  // namespace brimline
