// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/water/uncertainty.h"

#include <cmath>

namespace brimline {
namespace {

struct Bottle {
  WaterReadings readings;
  std::optional<Temperature> vessel;
};

// One reading that may be off, and how far it is moved either way.
struct Lever {
  double step;
  bool (*move)(Bottle&, double);  // false: the reading is absent and stays exact
};

bool move(std::optional<double>& reading, double by) {
  if (reading) *reading += by;
  return reading.has_value();
}

template <std::optional<double> WaterReadings::*member>
bool move_reading(Bottle& b, double by) {
  return move(b.readings.*member, by);
}

bool move_background(Bottle& b, double by) {
  WaterReadings& r = b.readings;
  switch (background_reading(r)) {
    case BackgroundReading::background_nacl:
      return move(r.background_nacl, by);
    case BackgroundReading::salt:
      return move(r.salt, by);
    case BackgroundReading::tds:
      return move(r.tds, by);
    case BackgroundReading::conductivity:
      return move(r.conductivity, by);
    case BackgroundReading::assumed:
      break;
  }
  r.tds = kAssumedSolids + by;
  return true;
}

Temperature warmer(Temperature t, double by) {
  return Temperature::celsius(t.celsius() + by);
}

// In the order of kReadingMembers.
constexpr std::array<Lever, kReadingMembers.size()> kLevers = {{
    {0.05,
     [](Bottle& b, double by) { return b.readings.temperature = warmer(b.readings.temperature, by), true; }},
    {0.05,
     [](Bottle& b, double by) {
       if (b.vessel) b.vessel = warmer(*b.vessel, by);
       return b.vessel.has_value();
     }},
    {1e-3, [](Bottle& b, double by) { return b.readings.ph += by, true; }},
    {0.05, [](Bottle& b, double by) { return b.readings.total_alkalinity += by, true; }},
    {0.05, move_reading<&WaterReadings::calcium_hardness>},
    {0.05, move_reading<&WaterReadings::magnesium_hardness>},
    {0.02, move_reading<&WaterReadings::cyanuric_acid>},
    {0.02, move_reading<&WaterReadings::borate>},
    {0.002, move_reading<&WaterReadings::free_chlorine>},
    {0.002, move_reading<&WaterReadings::total_bromine>},
    {0.05, move_reading<&WaterReadings::sulfate>},
    {1, move_background},
}};

tl::expected<Water, Refusal> solved(const Bottle& b) {
  auto water = water_from_readings(b.readings);
  return water && b.vessel ? at_temperature(*water, *b.vessel) : water;
}

std::optional<Water> moved(Bottle bottle, const Lever& lever, double by) {
  if (!lever.move(bottle, by)) return std::nullopt;
  const auto water = solved(bottle);
  return water ? std::optional(*water) : std::nullopt;
}

}  // namespace

tl::expected<MovedWaters, Refusal> MovedWaters::of(const WaterReadings& readings,
                                                   std::optional<Temperature> vessel) {
  const Bottle bottle{readings, vessel};
  const auto centre = solved(bottle);
  if (!centre) return tl::unexpected(centre.error());
  MovedWaters out;
  out.centre_ = *centre;
  for (size_t i = 0; i < kLevers.size(); ++i)
    out.moved_[i] = {moved(bottle, kLevers[i], kLevers[i].step), moved(bottle, kLevers[i], -kLevers[i].step)};
  return out;
}

std::optional<Sensitivity> MovedWaters::slopes_of(const Results& results) {
  if (!results.centre) return std::nullopt;
  const double centre = *results.centre;
  Sensitivity out;
  for (size_t i = 0; i < kLevers.size(); ++i) {
    const auto& [up, down] = results.moved[i];
    const int sides = (up ? 1 : 0) + (down ? 1 : 0);
    if (sides == 0) continue;
    out.*kReadingMembers[i] = (up.value_or(centre) - down.value_or(centre)) / (sides * kLevers[i].step);
  }
  return out;
}

std::optional<double> combined(const std::optional<Sensitivity>& slope, const ReadingErrors& errors) {
  if (!slope) return std::nullopt;
  double sum = 0;
  for (const auto member : kReadingMembers) {
    const double part = (*slope).*member * errors.*member;
    sum += part * part;
  }
  return std::sqrt(sum);
}

}  // namespace brimline
