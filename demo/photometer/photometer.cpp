// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/photometer/photometer.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <iterator>

namespace brimline::demo {
namespace {

constexpr int kJump = 3600;  // seconds, or readings where no clock is sent

double rounded(double value, int decimals) {
  const double scale = std::pow(10.0, decimals);
  return std::round(value * scale) / scale;
}

// Absorbance of 1 mg/L in 1 cm: that of iron by 1,10-phenanthroline at 510 nm, from memory, for every colour
// of the invented reagents.
constexpr double kSlope = 0.197;

}  // namespace

Photometer::Photometer(Profile profile, BottleFile bottle, unsigned long long seed)
    : profile_(std::move(profile)), bottle_(std::move(bottle)), random_(seed) {}

std::vector<const MethodRow*> Photometer::methods(std::vector<AnalyteId>& without) const {
  std::vector<const MethodRow*> out;
  for (const AnalyteId& id : bottle_.measure) {
    const auto row = std::find_if(profile_.methods.begin(), profile_.methods.end(),
                                  [&](const MethodRow& m) { return m.analyte == id; });
    if (row == profile_.methods.end())
      without.push_back(id);
    else
      out.push_back(&*row);
  }
  return out;
}

// Beyond its range a photometer shows the range's end and a mark.
LineReading Photometer::read(const MethodRow& row, FaultKind fault) {
  if (fault == FaultKind::clock_jump) serial_ -= std::min(serial_, kJump);
  ++serial_;
  char serial[32];
  if (profile_.protocol == "lis")  // a time: LIS2-A's form, from memory
    (void)std::snprintf(serial, sizeof serial, "20260614%02d%02d%02d", serial_ / 3600 % 24, serial_ / 60 % 60,
                        serial_ % 60);
  else
    (void)std::snprintf(serial, sizeof serial, "%06d", serial_);
  LineReading out{serial, bottle_.code, 0, std::nullopt};
  const double truth = bottle_.water.at(row.analyte) / row.factor * (row.absorbance ? kSlope : 1);
  out.value = rounded(std::normal_distribution<double>(truth, row.sd)(random_), row.decimals);
  stuck_ = stuck_ || fault == FaultKind::stuck;
  if (fault == FaultKind::over_range) out.value = row.high * 2;
  if (stuck_) out.value = stuck_at_.value_or(out.value);
  if (stuck_ && !stuck_at_) stuck_at_ = out.value;
  if (out.value > row.high) out.clipped = Clip::above;
  if (out.value < row.low) out.clipped = row.low > 0 ? std::optional(Clip::below) : std::nullopt;
  out.value = std::clamp(out.value, row.low, row.high);
  if (fault == FaultKind::out_of_range) {
    out.value = rounded(row.high * 1.25 + 1, row.decimals);
    out.clipped.reset();
  }
  return out;
}

Sending Photometer::measure(const MethodRow& row, FaultKind fault) {
  Sending out{row, read(row, fault), {}, fault};
  if (fault == FaultKind::unknown_method) out.row.code = profile_.protocol == "modbus_rtu" ? "999" : "ZZ";
  char value[48];
  (void)std::snprintf(value, sizeof value, "%.*f", row.decimals, out.reading.value);
  out.truth = out.reading.serial + " " + row.analyte + " " + value + " " + std::string(name_of(fault));
  return out;
}

std::string Photometer::idle_line() const {
  if (profile_.line.idle.empty()) return {};
  return profile_.line.start + profile_.line.idle.front() + profile_.line.end;
}

FaultKind Photometer::chance_fault(const std::vector<std::pair<FaultKind, double>>& rates) {
  double at = std::uniform_real_distribution<double>(0, 1)(random_);
  for (const auto& [kind, rate] : rates) {
    if (at < rate) return kind;
    at -= rate;
  }
  return FaultKind::none;
}

}  // namespace brimline::demo
