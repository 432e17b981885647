// SPDX-License-Identifier: GPL-3.0-or-later
// The command line of brimline-photometer.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include <tl/expected.hpp>

#include "demo/photometer/photometer.h"

namespace brimline::demo {

struct Options {
  std::string bottle, profile, link;
  unsigned long long seed = 1;
  double speed = 1;             // of the line and of the pauses
  double pause_s = 4;           // from one reading to the next: filling, mixing, reaction, reading
  double replug_s = 3;          // how long the fault `unplug` lasts
  int rounds = 1;               // how often the bottle is measured
  bool once = false;            // ends after the last round
  std::vector<FaultKind> next;  // faults of the first readings, one each
  std::vector<std::pair<FaultKind, double>> rates;  // shares of readings with a fault
};

extern const char* const kUsage;

// The error is one line for standard error.
tl::expected<Options, std::string> parse_options(const std::vector<std::string>& words);

}  // namespace brimline::demo
