// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/photometer/photometer.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <iterator>

namespace brimline::demo {
namespace {

struct FaultName {
  std::string_view name;
  FaultKind kind;
};
constexpr FaultName kFaults[] = {{"none", FaultKind::none},
                                 {"silent", FaultKind::silent},
                                 {"garbled", FaultKind::garbled},
                                 {"lost", FaultKind::lost},
                                 {"doubled", FaultKind::doubled},
                                 {"bad_checksum", FaultKind::bad_checksum},
                                 {"half_frame", FaultKind::half_frame},
                                 {"unplug", FaultKind::unplug},
                                 {"stuck", FaultKind::stuck},
                                 {"out_of_range", FaultKind::out_of_range},
                                 {"over_range", FaultKind::over_range},
                                 {"reset", FaultKind::reset},
                                 {"flood", FaultKind::flood},
                                 {"unknown_method", FaultKind::unknown_method}};

constexpr size_t kFloodBytes = 20000;

double rounded(double value, int decimals) {
  const double scale = std::pow(10.0, decimals);
  return std::round(value * scale) / scale;
}

char other_digit(char digit) {
  return digit == '0' ? '1' : '0';
}

}  // namespace

std::optional<FaultKind> fault_named(std::string_view name) {
  for (const FaultName& row : kFaults)
    if (row.name == name) return row.kind;
  return std::nullopt;
}

std::string_view name_of(FaultKind kind) {
  for (const FaultName& row : kFaults)
    if (row.kind == kind) return row.name;
  return "";
}

std::string fault_names() {
  std::string out;
  for (const FaultName& row : kFaults) {
    if (!out.empty()) out += ", ";
    out += row.name;
  }
  return out;
}

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
  char serial[16];
  (void)std::snprintf(serial, sizeof serial, "%06d", ++serial_);
  LineReading out{serial, bottle_.code, 0, std::nullopt};
  const double truth = bottle_.water.at(row.analyte) / row.factor;
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

// One byte is changed: line noise that every checksum here must find.
std::string Photometer::damaged(std::string frame, FaultKind fault) {
  if (fault == FaultKind::half_frame || fault == FaultKind::reset) return frame.substr(0, frame.size() / 2);
  if (fault == FaultKind::doubled) return frame + frame;
  if (fault == FaultKind::lost || fault == FaultKind::silent || fault == FaultKind::unplug) return {};
  if (fault == FaultKind::bad_checksum) {
    char& digit = frame[frame.size() - profile_.line.end.size() - 1];
    digit = other_digit(digit);
  }
  if (fault == FaultKind::garbled) {
    char& byte = frame[std::uniform_int_distribution<size_t>(0, frame.size() - 1)(random_)];
    byte = static_cast<char>(byte ^ std::uniform_int_distribution<int>(1, 255)(random_));
  }
  if (fault == FaultKind::flood) {
    std::string noise(kFloodBytes, ' ');
    for (char& byte : noise)
      byte = static_cast<char>(std::uniform_int_distribution<int>(0x21, 0x7e)(random_));
    std::erase(noise, profile_.line.start.empty() ? '\n' : profile_.line.start[0]);
    return noise + (profile_.line.start.empty() ? profile_.line.end : "") + frame;
  }
  return frame;
}

Sending Photometer::measure(const MethodRow& row, FaultKind fault) {
  const LineReading reading = read(row, fault);
  MethodRow sent = row;
  if (fault == FaultKind::unknown_method) sent.code = "ZZ";
  Sending out;
  out.fault = fault;
  out.bytes = damaged(line_of(profile_, sent, reading), fault);
  char value[48];
  (void)std::snprintf(value, sizeof value, "%.*f", row.decimals, reading.value);
  out.truth = reading.serial + " " + row.analyte + " " + value + " " + std::string(name_of(fault));
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
