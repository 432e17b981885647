// SPDX-License-Identifier: GPL-3.0-or-later
// What an instrument on a line tells: a reading, a trouble, or that it is back.
// Values here are already in the analyte's only unit: conversion happens at this edge.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "analysis/instant.h"
#include "analysis/panel/reading.h"

namespace brimline {

enum class TroubleKind { unplugged, silent, garbled, out_of_range, unknown_method, wrong_sample, busy };
std::string_view name_of(TroubleKind kind);

// Of a value that is an absorbance: the light and the way through the water.
struct AbsorbanceLight {
  double wavelength_nm = 0, path_cm = 1;
  friend bool operator==(const AbsorbanceLight&, const AbsorbanceLight&) = default;
};

struct InstrumentReading {
  AnalyteId analyte;
  double value = 0;                   // in the analyte's unit
  std::optional<Clip> clipped;        // an over-range or under-range mark stood beside the value
  std::optional<std::string> sample;  // bottle text as sent
  std::optional<std::string> serial;  // the instrument's own number or time of the reading
  std::optional<double> sd;           // in the analyte's unit
  // Present: value and sd are absorbances, and say nothing without the reagent lot's calibration.
  std::optional<AbsorbanceLight> absorbance = std::nullopt;
};

struct Trouble {
  TroubleKind what = TroubleKind::silent;
  std::string text;  // one plain sentence
};

struct BackAgain {};

struct Happening {
  Instant at;
  std::string instrument;  // the profile's id
  std::variant<InstrumentReading, Trouble, BackAgain> what;
};

}  // namespace brimline
