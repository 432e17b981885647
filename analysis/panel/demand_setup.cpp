// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/demand_setup.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "analysis/panel/demand.h"

namespace brimline {

namespace {

constexpr double kUsedUp = 0.3;         // mg/L Cl2 that a dye cannot tell from none in daily work
constexpr double kCombinedTimes = 10;   // the trade's reading of breakpoint: 10 to 15 times, from memory
constexpr double kAlgaeReach = 30;      // mg/L
constexpr double kUnknownReach = 20;    // mg/L, where nothing stands and nothing says why
constexpr double kHoldsReach = 5;       // mg/L, where chlorine stands
constexpr double kKnownTimes = 1.5;     // of a demand known only to be above
constexpr double kTopOfPhotometer = 5;  // mg/L Cl2: ISO 7393-2:2017
constexpr double kSmallSyringe = 1;     // mL

constexpr std::array kLittle = {0., 1., 2., 4., 6., 10.};
constexpr std::array kUsual = {0., 2., 5., 10., 20., 30., 40.};
constexpr std::array kMuch = {0., 10., 20., 35., 50., 65., 80.};

// The last reading of the analyte that is no more than its limit.
std::optional<double> last_value(const Bottle& bottle, std::string_view analyte) {
  std::optional<double> out;
  for (const Reading& reading : bottle.readings)
    if (reading.analyte == analyte) out = reading.value;
  return out;
}

std::optional<double> combined_of(const Bottle& bottle) {
  const auto free = last_value(bottle, "free_chlorine"), total = last_value(bottle, "total_chlorine");
  if (!free || !total) return std::nullopt;
  return *total - *free;
}

bool has_sign(const Bottle& bottle, Sign sign) {
  return std::find(bottle.signs.begin(), bottle.signs.end(), sign) != bottle.signs.end();
}

bool is_green(const Bottle& bottle) {
  return has_sign(bottle, Sign::green_water) || has_sign(bottle, Sign::slimy_walls);
}

DemandReach reach_to(double least) {
  for (const DemandReach reach : {DemandReach::little, DemandReach::usual})
    if (demand_doses(reach).back() >= least) return reach;
  return DemandReach::much;
}

}  // namespace

bool may_test_demand(const Vessel& vessel) {
  return vessel.sanitizer && is_chlorine(*vessel.sanitizer) &&
         vessel.previous_sanitizer != Sanitizer::biguanide;
}

std::optional<DemandSign> demand_sign(const Bottle& bottle, const Vessel& vessel,
                                      std::span<const Bottle> earlier) {
  const auto free = last_value(bottle, "free_chlorine");
  if (!may_test_demand(vessel) || !free) return std::nullopt;
  if (*free < kUsedUp) return DemandSign::used_up;
  const auto now = combined_of(bottle);
  const auto before = earlier.empty() ? std::nullopt : combined_of(earlier.back());
  if (now && before && *now >= kHeldCombined && *before >= kHeldCombined) return DemandSign::combined_stays;
  return std::nullopt;
}

DemandReachAdvice advise_reach(const Bottle& bottle, std::optional<double> known_above) {
  DemandReachAdvice out{DemandReach::little, ReachReason::holds, kHoldsReach};
  const auto reckon = [&](double least, ReachReason reason) {
    if (least > out.least) out = {reach_to(least), reason, least};
  };
  if (last_value(bottle, "free_chlorine").value_or(0) < kHeldFree)
    reckon(kUnknownReach, ReachReason::used_up);
  if (const auto combined = combined_of(bottle)) reckon(kCombinedTimes * *combined, ReachReason::combined);
  if (is_green(bottle)) reckon(kAlgaeReach, ReachReason::algae);
  if (known_above) reckon(kKnownTimes * *known_above, ReachReason::known_above);
  return out;
}

std::span<const double> demand_doses(DemandReach reach) {
  switch (reach) {
    case DemandReach::little:
      return kLittle;
    case DemandReach::usual:
      return kUsual;
    case DemandReach::much:
      break;
  }
  return kMuch;
}

double stock_for(double dose_mg_l, double sample_ml, double stock_mg_l) {
  return sample_ml * dose_mg_l / (stock_mg_l - dose_mg_l);
}

double measurable_ml(double ml) {
  const double step = ml < kSmallSyringe ? 0.01 : 0.1;
  return std::round(ml / step) * step;
}

double dose_made(double stock_ml, double sample_ml, double stock_mg_l) {
  return stock_mg_l * stock_ml / (sample_ml + stock_ml);
}

double bleach_for_stock(double available_g_l) {
  return kStockAimed * kStockMadeUp / (available_g_l * 1000);
}

double checked_stock(double reading_mg_l) {
  return reading_mg_l * kCheckMadeUpMl / kCheckStockMl;
}

bool is_sound_stock(double stock_mg_l) {
  return stock_mg_l >= kStockAimed / 2 && stock_mg_l <= kStockAimed * 2;
}

double dilution_to_read(double dose_mg_l, std::optional<double> free_now) {
  const double most_left = dose_mg_l + free_now.value_or(0);
  for (const double dilution : {1., 5., 10.})
    if (most_left <= dilution * kTopOfPhotometer) return dilution;
  return 20;
}

}  // namespace brimline
