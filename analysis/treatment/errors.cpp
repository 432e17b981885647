// SPDX-License-Identifier: GPL-3.0-or-later
#include "analysis/treatment/errors.h"

namespace brimline {

namespace {

// Errors where nothing states one; common practice, no source.
constexpr double kBottleCelsius = 0.5, kVesselCelsius = 1, kAssumedSolidsError = 500;

}  // namespace

ReadingErrors errors_of(const Situation& s) {
  const auto sd = [&](std::string_view analyte, double otherwise = 0) {
    const auto found = s.known.find(analyte);
    return found == s.known.end() ? otherwise : found->second.sd;
  };
  ReadingErrors e;
  e.temperature = kBottleCelsius;
  e.vessel_temperature = kVesselCelsius;
  e.ph = sd("ph");
  e.total_alkalinity = sd("total_alkalinity");
  e.calcium_hardness = sd("calcium_hardness");
  e.magnesium_hardness = sd("magnesium_hardness");
  e.cyanuric_acid = sd("cyanuric_acid");
  e.borate = sd("borate");
  e.free_chlorine = sd("free_chlorine");
  e.total_bromine = sd("total_bromine");
  e.sulfate = sd("sulfate");
  switch (background_reading(*s.readings)) {
    case BackgroundReading::salt:
      e.background = sd("salt");
      break;
    case BackgroundReading::tds:
      e.background = sd("tds");
      break;
    case BackgroundReading::conductivity:
      e.background = sd("conductivity");
      break;
    default:
      e.background = kAssumedSolidsError;
  }
  return e;
}

std::optional<Measured> saturation_of(const Situation& s) {
  if (!s.water || !s.readings || !s.usable("calcium_hardness")) return std::nullopt;
  const auto moved = MovedWaters::of(*s.readings, s.vessel_temperature);
  if (!moved) return std::nullopt;
  const auto index = [](const Water& w) { return w.si_calcite(); };
  const auto value = index(moved->centre());
  const auto sd = combined(moved->slopes(index), errors_of(s));
  return value ? std::optional(Measured{*value, sd.value_or(0)}) : std::nullopt;
}

}  // namespace brimline
