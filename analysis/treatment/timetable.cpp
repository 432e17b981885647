// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "analysis/treatment/draft.h"

namespace brimline {

namespace {
constexpr double kMorning = 7, kDusk = 20, kNight = 22;
constexpr double kOpens = 9, kCloses = 17;  // of a shop; common practice, no source
}  // namespace

double Timetable::hour_of_day(double hours) const {
  const double at_home = static_cast<double>((home_->local().time_since_epoch()).count()) / 3600.0;
  const double hour = std::fmod(at_home + hours, 24.0);
  return hour < 0 ? hour + 24 : hour;
}

bool Timetable::quiet(double hours) const {
  const double hour = hour_of_day(hours);
  return hour >= kNight - 1e-9 || hour < kMorning - 1e-9;
}

double Timetable::start(double hours, int portions, double gap_h) const {
  if (!home_) return hours;
  const auto fits = [&](double at) {
    for (int i = 0; i < portions; ++i)
      if (quiet(at + i * gap_h)) return false;
    return true;
  };
  if (fits(hours)) return hours;
  double morning = hours + std::fmod(kMorning - hour_of_day(hours) + 24, 24.0);
  if (quiet(morning)) morning += 1e-6;
  return morning;
}

double Timetable::dusk(double hours) const {
  if (!home_) return hours;
  const double hour = hour_of_day(hours);
  if (hour >= kDusk && hour < kNight) return hours;
  return hours + std::fmod(kDusk - hour + 24, 24.0);
}

double Timetable::shop_hours(double hours) const {
  if (!home_) return hours;
  const double hour = hour_of_day(hours);
  if (hour >= kOpens - 1e-9 && hour < kCloses) return hours;
  return hours + std::fmod(kOpens - hour + 24, 24.0);
}

}  // namespace brimline
