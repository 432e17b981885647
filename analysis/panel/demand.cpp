// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/panel/demand.h"

#include <algorithm>
#include <cmath>

#include "analysis/panel/check_rules.h"

namespace brimline {

namespace {

constexpr double kStockRelativeSd =
    0.03;  // of the dose: standardised stock and pipette; common practice, no source
constexpr double kBleachedToNothing =
    12;  // mg/L Cl2 that an undiluted dye may show as nothing; from 10, with margin

double residual_sd(double value, double dilution) {
  Reading reading;
  reading.analyte = "free_chlorine";
  reading.value = value;
  reading.dilution = dilution;
  return reading_sd(reading);
}

Measured used_by(const DemandBottle& bottle, const Measured& free_now) {
  const double kept = 1 - bottle.stock_share;
  const double end = bottle.free_mg_l.value_or(0);
  const double sd =
      std::sqrt(std::pow(kStockRelativeSd * bottle.dose_mg_l, 2) + std::pow(kept * free_now.sd, 2) +
                std::pow(residual_sd(end, bottle.dilution), 2));
  return {chlorine_used(bottle, free_now.value, end), sd / kept};
}

bool stands(const DemandBottle& bottle) {
  return bottle.free_mg_l && (bottle.clipped == Clip::above || *bottle.free_mg_l >= kHeldFree);
}

bool combined_is_low(const DemandBottle& bottle) {
  return !bottle.total_mg_l || *bottle.total_mg_l - *bottle.free_mg_l < kHeldCombined;
}

// Shows nothing although a weaker bottle holds, or although more may be left than the dye can show.
bool may_be_bleached(const DemandBottle& bottle, bool weaker_stands, double free_now, double known_used) {
  if (stands(bottle) || bottle.dilution > 1) return false;
  const double most_left = bottle.dose_mg_l + (free_now - known_used) * (1 - bottle.stock_share);
  return weaker_stands || most_left > kBleachedToNothing;
}

DemandWord word_of(const DemandBottle& bottle, bool bleached) {
  if (!bottle.free_mg_l || bleached) return DemandWord::nothing;
  if (bottle.clipped == Clip::above) return DemandWord::upper_bound;
  return stands(bottle) && combined_is_low(bottle) ? DemandWord::measures : DemandWord::lower_bound;
}

std::vector<DemandBottle> by_dose(const DemandTest& test) {
  std::vector<DemandBottle> bottles = test.bottles;
  std::stable_sort(bottles.begin(), bottles.end(),
                   [](const DemandBottle& a, const DemandBottle& b) { return a.dose_mg_l < b.dose_mg_l; });
  return bottles;
}

void judge_bottle(const DemandBottle& bottle, const Measured& free_now, bool& weaker_stands,
                  DemandResult& out) {
  const double known = std::max(0.0, out.demand_above.value_or(0));
  const DemandWord word = word_of(bottle, may_be_bleached(bottle, weaker_stands, free_now.value, known));
  const Measured used = used_by(bottle, free_now);
  out.bottles.push_back({bottle.dose_mg_l, word, used});
  weaker_stands = weaker_stands || stands(bottle);
  if (word == DemandWord::lower_bound && !out.demand)
    out.demand_above = std::max(out.demand_above.value_or(0), used.value);
  if (word == DemandWord::upper_bound)
    out.demand_below = std::min(out.demand_below.value_or(used.value), used.value);
  if (word != DemandWord::measures || out.demand) return;
  out.demand = Measured{std::max(0.0, used.value), used.sd};
  out.breakpoint_reached = bottle.total_mg_l.has_value();
}

// Demand of the deciding bottle at each time it was read.
void demand_in_time(const DemandTest& test, const DemandBottle& bottle, double free_now, DemandResult& out) {
  std::vector<double> hours, demands;
  const auto take = [&](double at, const std::optional<double>& free) {
    if (!free || at <= 0) return;
    hours.push_back(at);
    demands.push_back(chlorine_used(bottle, free_now, *free));
  };
  for (const DemandLater& later : bottle.later) take(later.hours, later.free_mg_l);
  take(test.hours, bottle.free_mg_l);
  out.demand_infinite = limited_first_order(demands, hours);
}

std::string found_text(const DemandResult& r) {
  std::string out = "The water used up " + plain(r.demand->value, 1) + " mg/L of chlorine (+/- " +
                    plain(r.demand->sd, 1) + ") in " + plain(r.at_hours, 0) + " hours. ";
  out += "It takes " + plain(*r.dose, 1) +
         " mg/L, unstabilised, in one evening, to meet that and leave the residual wanted. ";
  if (!r.breakpoint_reached) out += "Total chlorine was not read, so combined chlorine may still be there. ";
  if (r.demand->value > 60)
    out +=
        "That is more than a home can treat: a pool goes to a professional; an above-ground spa may be "
        "emptied.";
  else if (r.demand->value > 30)
    out +=
        "Reckon first what changing part of the water costs: each share changed takes the same share of the "
        "demand.";
  else
    out += "Walls, filter and sun use more than a bottle can show: test again the next day.";
  return out;
}

bool any_bleached(const DemandResult& r) {
  return std::any_of(r.bottles.begin(), r.bottles.end(),
                     [](const DemandBottleResult& b) { return b.word == DemandWord::nothing; });
}

std::string not_found_text(const DemandResult& r) {
  std::string out =
      "The test did not find the demand: it is above " + plain(r.demand_above.value_or(0), 1) + " mg/L";
  if (r.demand_below) out += " and at most about " + plain(*r.demand_below, 1) + " mg/L";
  out += ". Dose nothing on it. ";
  if (r.demand_below || any_bleached(r))
    out +=
        "Read the strong bottles again at 1+4 with chlorine-free water: a bleached bottle looks like an "
        "empty one.";
  else
    out += "Set up the bottles again with higher doses, until one holds chlorine with little of it combined.";
  return out;
}

}  // namespace

double chlorine_used(const DemandBottle& bottle, double free_now, double free_end) {
  const double kept = 1 - bottle.stock_share;
  return (bottle.dose_mg_l + free_now * kept - free_end) / kept;
}

std::optional<double> limited_first_order(std::span<const double> demands, std::span<const double> hours) {
  if (demands.size() < 2 || demands.size() != hours.size()) return std::nullopt;
  const double last = *std::max_element(hours.begin(), hours.end());
  double best = HUGE_VAL, at_end = 0, rate = 0;
  for (double k = 1e-3; k < 50; k *= 1.01) {
    double top = 0, bottom = 0, squares = 0;
    for (size_t i = 0; i < hours.size(); ++i) {
      const double f = 1 - std::exp(-k * hours[i]);
      top += demands[i] * f;
      bottom += f * f;
    }
    for (size_t i = 0; i < hours.size(); ++i)
      squares += std::pow(demands[i] - top / bottom * (1 - std::exp(-k * hours[i])), 2);
    if (squares < best) {
      best = squares;
      at_end = top / bottom;
      rate = k;
    }
  }
  if (rate * last < 0.5 || at_end < 0)
    return std::nullopt;  // the curve does not bend yet: the end is a guess
  return at_end;
}

DemandResult judge_demand(const DemandTest& test, const Measured& free_now, double target_residual) {
  DemandResult out;
  out.at_hours = test.hours;
  bool weaker_stands = false;
  const std::vector<DemandBottle> bottles = by_dose(test);
  for (const DemandBottle& bottle : bottles) judge_bottle(bottle, free_now, weaker_stands, out);
  if (!out.demand) {
    out.demand_above = out.demand_above.value_or(0);
    return out;
  }
  out.demand_above.reset();
  out.dose = std::max(0.0, out.demand->value + target_residual - free_now.value);
  for (size_t i = 0; i < bottles.size(); ++i)
    if (out.bottles[i].word == DemandWord::measures) {
      demand_in_time(test, bottles[i], free_now.value, out);
      break;
    }
  return out;
}

std::string DemandResult::text() const {
  return demand ? found_text(*this) : not_found_text(*this);
}

}  // namespace brimline
