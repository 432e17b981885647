// SPDX-License-Identifier: GPL-3.0-or-later
// The emulated photometer itself: measures a bottle with its methods' scatter and says, reading by
// reading, which bytes go on the line; faults on demand. Pure but for the generator it is given.
#pragma once

#include <deque>
#include <optional>
#include <random>
#include <string>
#include <string_view>
#include <vector>

#include "demo/bottle_file.h"
#include "devices/line_form.h"
#include "devices/profile.h"

namespace brimline::demo {

enum class FaultKind {
  none,
  silent,
  garbled,
  lost,
  doubled,
  bad_checksum,
  half_frame,
  unplug,
  stuck,
  out_of_range,
  over_range,
  reset,
  flood,
  unknown_method
};
std::optional<FaultKind> fault_named(std::string_view name);
std::string_view name_of(FaultKind kind);
std::string fault_names();  // "none, silent, ..."

// One reading as it goes on the line.
struct Sending {
  std::string bytes;
  std::string truth;  // "SERIAL ANALYTE VALUE FAULT" for the record; VALUE as sent, wire's unit
  FaultKind fault = FaultKind::none;
};

class Photometer {
 public:
  Photometer(Profile profile, BottleFile bottle, unsigned long long seed);

  void insert(BottleFile bottle) { bottle_ = std::move(bottle); }
  // The analytes of the bottle that the instrument has a method for, in order; the others by name.
  std::vector<const MethodRow*> methods(std::vector<AnalyteId>& without) const;
  Sending measure(const MethodRow& row, FaultKind fault);
  void unstick() { stuck_ = false, stuck_at_.reset(); }
  // The idle line, or nothing where the instrument has none.
  std::string idle_line() const;
  // A share of readings, 0 to 1, at random, with one of `kinds`.
  FaultKind chance_fault(const std::vector<std::pair<FaultKind, double>>& rates);

 private:
  LineReading read(const MethodRow& row, FaultKind fault);
  std::string damaged(std::string frame, FaultKind fault);

  Profile profile_;
  BottleFile bottle_;
  std::mt19937_64 random_;
  int serial_ = 0;
  bool stuck_ = false;
  std::optional<double> stuck_at_;
};

}  // namespace brimline::demo
