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
#include "demo/photometer/line_faults.h"
#include "devices/line_form.h"
#include "devices/profile.h"

namespace brimline::demo {

// One reading as it goes on the line.
struct Sending {
  MethodRow row;
  LineReading reading;
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
  // What the line does to a frame of this reading.
  std::string on_the_line(std::string frame, FaultKind fault, const FrameShape& shape) {
    return damaged(std::move(frame), fault, shape, random_);
  }
  // A share of readings, 0 to 1, at random, with one of `kinds`.
  FaultKind chance_fault(const std::vector<std::pair<FaultKind, double>>& rates);

 private:
  LineReading read(const MethodRow& row, FaultKind fault);
  Profile profile_;
  BottleFile bottle_;
  std::mt19937_64 random_;
  int serial_ = 0;
  bool stuck_ = false;
  std::optional<double> stuck_at_;
};

}  // namespace brimline::demo
