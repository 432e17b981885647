// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/compare/year.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "analysis/panel/analyte.h"
#include "station/compare/compare.h"

namespace brimline {
namespace {

constexpr std::array kFirst = {"free_chlorine",    "total_bromine",    "biguanide",    "ph",
                               "total_alkalinity", "calcium_hardness", "cyanuric_acid"};

// Before those of no place on the list, which go by id.
size_t place_of(const AnalyteId& analyte) {
  return static_cast<size_t>(std::find(kFirst.begin(), kFirst.end(), analyte) - kFirst.begin());
}

bool before(const YearOfReading& a, const YearOfReading& b) {
  const size_t one = place_of(a.analyte), other = place_of(b.analyte);
  return one != other ? one < other : a.analyte < b.analyte;
}

Instant hours_after(const Instant& when, double hours) {
  Instant out = when;
  out.utc += std::chrono::seconds(std::llround(hours * 3600));
  return out;
}

// Nothing where the moment lies outside the year.
std::optional<double> share_of(const VesselYear& year, const Instant& when) {
  const double at = hours_between(year.from, when) / kYearHours;
  return at >= 0 && at <= 1 ? std::optional(at) : std::nullopt;
}

void add_readings(VesselYear& year, const Visit& visit, const Instant& when, double at) {
  std::map<AnalyteId, std::vector<const Reading*>> read;
  for (const Reading& reading : visit.bottle.readings)
    if (find_analyte(reading.analyte)) read[reading.analyte].push_back(&reading);
  for (const auto& [analyte, readings] : read) {
    YearPoint point{when, at, {}, {}};
    std::vector<Measured> sound;
    sound.reserve(readings.size());
    for (const Reading* reading : readings)
      if (!reading->clipped) sound.push_back(measured(*reading));
    if (sound.empty()) {
      point.read.value = readings.back()->value;
      point.clipped = readings.back()->clipped;
    } else {
      point.read = combine(sound);
    }
    auto of = std::find_if(year.readings.begin(), year.readings.end(),
                           [&id = analyte](const YearOfReading& r) { return r.analyte == id; });
    if (of == year.readings.end()) of = year.readings.insert(of, {analyte, {}});
    of->points.push_back(point);
  }
}

void add_doses(VesselYear& year, const Visit& visit, const Instant& when) {
  if (!visit.plan_as_told || !visit.plan_as_told->home_plan) return;
  std::map<AnalyteId, double> stood;
  for (const Reading& reading : visit.bottle.readings) stood[reading.analyte] = reading.value;
  const Instant home = visit.home_at.value_or(when);
  for (const Step& step : visit.plan_as_told->steps) {
    ToldDose dose{hours_after(home, step.start_h), 0, {}};
    if (step.after)
      for (const auto& [analyte, value] : step.after->readings) {
        const AnalyteKind* kind = find_analyte(analyte);
        const auto [was, added] = stood.try_emplace(analyte, value);
        if (kind && std::abs(value - was->second) >= 0.5 * std::pow(10, -kind->decimals))
          dose.moves.push_back(analyte);
        was->second = value;
      }
    const auto at = share_of(year, dose.when);
    if (step.action != Action::add || !at) continue;
    dose.at = *at;
    year.doses.push_back(std::move(dose));
  }
}

}  // namespace

const YearOfReading* VesselYear::find(std::string_view analyte) const {
  for (const YearOfReading& one : readings)
    if (one.analyte == analyte) return &one;
  return nullptr;
}

VesselYear year_of(std::span<const Visit> visits, const Instant& until) {
  VesselYear year{hours_after(until, -kYearHours), until, {}, {}};
  for (const Visit& visit : visits) {
    const auto when = time_of(visit);
    if (!when) continue;
    add_doses(year, visit, *when);
    if (const auto at = share_of(year, *when)) add_readings(year, visit, *when, *at);
  }
  std::sort(year.readings.begin(), year.readings.end(), before);
  std::stable_sort(year.doses.begin(), year.doses.end(),
                   [](const ToldDose& a, const ToldDose& b) { return a.at < b.at; });
  return year;
}

}  // namespace brimline
