// SPDX-License-Identifier: GPL-3.0-or-later
// Instruments and decoders at the two ends of a pseudo-terminal, at full speed, with faults of every kind on
// one frame in a hundred. The clock is simulated: no timer is waited for.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "demo/photometer/line_faults.h"

namespace brimline::tests {

struct FrameFault {
  std::int64_t met = 0;      // frames it was done to
  std::int64_t wrong = 0;    // readings told that nobody had made, since this fault was the last one
  std::int64_t doubled = 0;  // readings told twice
};

struct FrameTally {
  std::string instrument;
  std::int64_t frames = 0, readings = 0, told = 0, lost = 0, wrong = 0, doubled = 0, troubles = 0;
  std::map<demo::FaultKind, FrameFault> faults;
  double seconds = 0;
};

// `profile`: a built-in one's id. Ends once `frames` have been sent and every reading had its retries.
FrameTally send_frames(const std::string& profile, std::int64_t frames, unsigned seed);

std::string frames_table(const std::vector<FrameTally>& tallies);

}  // namespace brimline::tests
