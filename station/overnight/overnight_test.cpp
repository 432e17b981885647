// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/overnight/overnight_test.h"

#include <algorithm>
#include <cmath>

#include "analysis/panel/demand.h"

namespace brimline {

namespace {

constexpr double kNight = 12;  // hours from which a reading is the day's

bool counts(const OvernightReading& reading, int bottle, OvernightDue due, std::string_view analyte) {
  return !reading.withdrawn && reading.bottle == bottle && reading.due == due && reading.analyte == analyte;
}

double hours_in(const OvernightTest& test, const OvernightReading& reading) {
  return std::round(hours_between(*test.started_at, reading.at) * 100) / 100;
}

// Mean hours of the readings of the day that count; the day itself where there is none.
double hours_of_day(const OvernightTest& test) {
  double sum = 0;
  int count = 0;
  for (int b = 0; b < static_cast<int>(test.bottles.size()); ++b)
    if (const auto* free = standing(test, b, OvernightDue::day, "free_chlorine")) {
      sum += hours_in(test, *free);
      ++count;
    }
  return count == 0 ? kDayDue : std::round(sum / count * 10) / 10;
}

// A total that was over range is at least what was read: it proves combined chlorine, or nothing.
std::optional<double> total_told(const OvernightReading* free, const OvernightReading* total) {
  if (!total) return std::nullopt;
  const bool proves = free && !free->clipped && total->value - free->value >= kHeldCombined;
  if (total->clipped == Clip::above && !proves) return std::nullopt;
  return total->value;
}

void add_hour(const OvernightTest& test, int index, DemandBottle& bottle) {
  const auto* free = standing(test, index, OvernightDue::hour, "free_chlorine");
  const auto* total = standing(test, index, OvernightDue::hour, "total_chlorine");
  const auto* either = free ? free : total;
  if (!either) return;
  DemandLater later;
  later.hours = hours_in(test, *either);
  if (free && !free->clipped) later.free_mg_l = free->value;
  later.total_mg_l = total_told(free, total);
  if (later.free_mg_l || later.total_mg_l) bottle.later.push_back(later);
}

}  // namespace

double stock_strength(const OvernightTest& test) {
  return test.check_mg_l ? checked_stock(*test.check_mg_l) : kStockAimed;
}

std::vector<OvernightBottle> bottles_to_pour(const OvernightTest& test) {
  if (!test.bottles.empty()) return test.bottles;
  std::vector<OvernightBottle> out;
  for (const double dose : demand_doses(test.reach))
    out.push_back({dose, measurable_ml(stock_for(dose, test.sample_ml, stock_strength(test)))});
  return out;
}

double sample_needed_ml(const OvernightTest& test) {
  return test.sample_ml * static_cast<double>(bottles_to_pour(test).size());
}

bool may_start(const OvernightTest& test) {
  return test.stage == OvernightStage::pour && test.check_mg_l && is_sound_stock(stock_strength(test));
}

void start(OvernightTest& test, const Instant& now) {
  if (!may_start(test)) return;
  test.bottles = bottles_to_pour(test);
  test.started_at = now;
  test.stage = OvernightStage::running;
}

Instant due_at(const Instant& started, OvernightDue due) {
  const double hours = due == OvernightDue::hour ? kHourDue : kDayDue;
  return {started.utc + std::chrono::seconds(std::lround(hours * 3600)), started.offset};
}

OvernightDue due_for(const OvernightTest& test, const Instant& now) {
  const bool night = test.started_at && hours_between(*test.started_at, now) >= kNight;
  return night ? OvernightDue::day : OvernightDue::hour;
}

std::optional<OvernightDue> waits_for(const OvernightTest& test, const Instant& now) {
  if (!test.started_at || complete(test, OvernightDue::day)) return std::nullopt;
  if (due_for(test, now) == OvernightDue::hour && !complete(test, OvernightDue::hour))
    return OvernightDue::hour;
  return OvernightDue::day;
}

const OvernightReading* standing(const OvernightTest& test, int bottle, OvernightDue due,
                                 std::string_view analyte) {
  const auto found = std::find_if(test.readings.rbegin(), test.readings.rend(),
                                  [&](const auto& r) { return counts(r, bottle, due, analyte); });
  return found == test.readings.rend() ? nullptr : &*found;
}

bool complete(const OvernightTest& test, OvernightDue due) {
  for (int b = 0; b < static_cast<int>(test.bottles.size()); ++b) {
    const auto* free = standing(test, b, due, "free_chlorine");
    if (!free) return false;
    if (free->value > kNoFreeLeft && !standing(test, b, due, "total_chlorine")) return false;
  }
  return !test.bottles.empty();
}

bool withdraw_last(OvernightTest& test) {
  const auto last = std::find_if(test.readings.rbegin(), test.readings.rend(),
                                 [](const OvernightReading& r) { return !r.withdrawn; });
  if (last == test.readings.rend()) return false;
  last->withdrawn = true;
  return true;
}

DemandTest demand_test_of(const OvernightTest& test) {
  DemandTest out;
  out.hours = hours_of_day(test);
  out.temperature = test.temperature;
  const double stock = stock_strength(test);
  for (int b = 0; b < static_cast<int>(test.bottles.size()); ++b) {
    const double ml = test.bottles[static_cast<size_t>(b)].stock_ml;
    DemandBottle bottle;
    bottle.dose_mg_l = dose_made(ml, test.sample_ml, stock);
    bottle.stock_share = ml / (test.sample_ml + ml);
    const auto* free = standing(test, b, OvernightDue::day, "free_chlorine");
    const auto* total = standing(test, b, OvernightDue::day, "total_chlorine");
    if (free) {
      bottle.free_mg_l = free->value;
      bottle.dilution = free->dilution;
      bottle.clipped = free->clipped;
    }
    bottle.total_mg_l = total_told(free, total);
    add_hour(test, b, bottle);
    out.bottles.push_back(bottle);
  }
  return out;
}

template <>
std::span<const Named<OvernightStage>> names() {
  static constexpr Named<OvernightStage> rows[] = {
      {OvernightStage::bottles, "bottles"}, {OvernightStage::stock, "stock"},
      {OvernightStage::pour, "pour"},       {OvernightStage::running, "running"},
      {OvernightStage::result, "result"},   {OvernightStage::closed, "closed"}};
  return rows;
}

template <>
std::span<const Named<OvernightDue>> names() {
  static constexpr Named<OvernightDue> rows[] = {{OvernightDue::hour, "hour"}, {OvernightDue::day, "day"}};
  return rows;
}

template <>
std::span<const Named<DemandReach>> names() {
  static constexpr Named<DemandReach> rows[] = {
      {DemandReach::little, "little"}, {DemandReach::usual, "usual"}, {DemandReach::much, "much"}};
  return rows;
}

}  // namespace brimline
