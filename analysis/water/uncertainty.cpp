// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/water/uncertainty.h"

#include <array>
#include <cmath>
#include <optional>

namespace brimline {
namespace {

// One reading that may be off, and how far it is moved either way.
struct Lever {
  double Sensitivity::*slope;
  double step;
  bool (*move)(WaterReadings&, double);  // false: the reading is absent and stays exact
};

bool move(std::optional<double>& reading, double by) {
  if (reading) *reading += by;
  return reading.has_value();
}

constexpr std::array<Lever, 9> kLevers = {{
    {&Sensitivity::temperature, 0.05,
     [](WaterReadings& r, double by) {
       r.temperature = Temperature::celsius(r.temperature.celsius() + by);
       return true;
     }},
    {&Sensitivity::ph, 1e-3, [](WaterReadings& r, double by) { return r.ph += by, true; }},
    {&Sensitivity::total_alkalinity, 0.05,
     [](WaterReadings& r, double by) { return r.total_alkalinity += by, true; }},
    {&Sensitivity::calcium_hardness, 0.05,
     [](WaterReadings& r, double by) { return move(r.calcium_hardness, by); }},
    {&Sensitivity::cyanuric_acid, 0.02,
     [](WaterReadings& r, double by) { return move(r.cyanuric_acid, by); }},
    {&Sensitivity::borate, 0.02, [](WaterReadings& r, double by) { return move(r.borate, by); }},
    {&Sensitivity::free_chlorine, 0.002,
     [](WaterReadings& r, double by) { return move(r.free_chlorine, by); }},
    {&Sensitivity::total_bromine, 0.002,
     [](WaterReadings& r, double by) { return move(r.total_bromine, by); }},
    {&Sensitivity::salt_or_tds, 1,
     [](WaterReadings& r, double by) {
       if (r.background_nacl) return move(r.background_nacl, by);
       return r.salt ? move(r.salt, by) : move(r.tds, by);
     }},
}};

}  // namespace

tl::expected<Sensitivities, Refusal> sensitivities(const WaterReadings& readings) {
  const auto centre = water_from_readings(readings);
  if (!centre) return tl::unexpected(centre.error());
  Sensitivities out;
  for (const Lever& lever : kLevers) {
    WaterReadings up = readings, down = readings;
    if (!lever.move(up, lever.step) || !lever.move(down, -lever.step)) continue;
    const auto above = water_from_readings(up), below = water_from_readings(down);
    if (!above && !below) return tl::unexpected(above.error());
    // At the edge of what can be, one-sided.
    const Water& a = above ? *above : *centre;
    const Water& b = below ? *below : *centre;
    const double width = lever.step * (above && below ? 2 : 1);
    if (a.si_calcite() && b.si_calcite())
      out.si_calcite.*lever.slope = (*a.si_calcite() - *b.si_calcite()) / width;
    out.hocl.*lever.slope = (a.hocl() - b.hocl()) / width;
    if (a.hocl() > 0 && b.hocl() > 0)
      out.log10_hocl.*lever.slope = (std::log10(a.hocl()) - std::log10(b.hocl())) / width;
  }
  return out;
}

double combined(const Sensitivity& slope, const ReadingErrors& e) {
  const double parts[] = {slope.temperature * e.temperature,
                          slope.ph * e.ph,
                          slope.total_alkalinity * e.total_alkalinity,
                          slope.calcium_hardness * e.calcium_hardness,
                          slope.cyanuric_acid * e.cyanuric_acid,
                          slope.borate * e.borate,
                          slope.free_chlorine * e.free_chlorine,
                          slope.total_bromine * e.total_bromine,
                          slope.salt_or_tds * e.salt_or_tds};
  double sum = 0;
  for (const double part : parts) sum += part * part;
  return std::sqrt(sum);
}

}  // namespace brimline
